package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.WaddingLayer;
import padwright.material.Catalogue;
import padwright.material.Foam;
import padwright.measure.InputRefused;
import padwright.pattern.FitAnswer.Change;
import padwright.pattern.FitWish.Freedom;

/** Foam for a height, against sums worked by hand: height = board + foam + wadding + covering. */
class HeightFitTest {
  private static final double INCH = 25.4;

  /** What the catalogue's firm foam is sold in, copied here by hand; 1/4 to 3 in among them. */
  private static final double[] FIRM = {
    6, 6.35, 10, 12, 12.7, 15, 20, 25, 25.4, 30, 31.75, 40, 50, 50.8, 60, 75, 76.2, 80, 100
  };

  private static FitResult fit(Pads pads, double height, int most) {
    return new HeightFit(Pads.CATALOGUE).find(pads.pad(), FitWish.height(height, most));
  }

  private static List<Double> sheets(FitAnswer a) {
    return a.pad().foam().stream().map(FoamLayer::thickness).toList();
  }

  @Test
  void answersComeNearestFirstAndAFoamIsDoubledOnlyWhereNoSingleSheetDoes() {
    // Board 12, covering 1: 37 high leaves 37 - 12 - 1 = 24 of foam. 12 + 12 is exact. The single
    // sheets come to 25 - 24 = +1, 25.4 - 24 = +1.4, 20 - 24 = -4, 30 - 24 = +6. No other two are
    // within half a millimetre better than +1: 12 + 12.7 is +0.7, 10 + 12.7 is -1.3.
    FitResult r = fit(new Pads(), 37, 5);
    assertThat(r.answers().stream().map(HeightFitTest::sheets).toList())
        .containsExactly(
            List.of(12.0, 12.0), List.of(25.0), List.of(25.4), List.of(20.0), List.of(30.0));
    double[] errors = {0, 1, 1.4, -4, 6};
    for (int i = 0; i < errors.length; i++) {
      FitAnswer a = r.answers().get(i);
      assertThat(a.error()).isCloseTo(errors[i], within(1e-9));
      assertThat(a.result().figures().finished().height()).isCloseTo(37 + errors[i], within(1e-9));
      assertThat(a.sheets()).isEqualTo(i == 0 ? 2 : 1);
    }
    assertThat(r.answers().get(0).fewer()).hasValueCloseTo(1.0, within(1e-9));
    assertThat(r.answers().get(1).fewer()).isEmpty();
    assertThat(r.rejected()).isEmpty();
  }

  @Test
  void anErrorBelowASheetsOwnToleranceIsSaidNotToMatter() {
    // Joint Industry Foam Standards 10.2.1: thickness 1/16 in either way = 1.5875 mm.
    assertThat(HeightFit.tolerance()).isCloseTo(INCH / 16, within(1e-12));
    List<FitAnswer> answers = fit(new Pads(), 37, 5).answers();
    assertThat(answers.stream().map(FitAnswer::withinTolerance).toList())
        .containsExactly(true, true, true, false, false);
  }

  @Test
  void theTradesWorkedBoardKeepsItsFoam() {
    // Board 12 x 48 x 1, foam 1 1/4, covering thickness 0 (trade page, "Vinyl layout tips"):
    // 1 + 1 1/4 = 2 1/4 in high; its cover with a turn-under of 3 is 22 1/2 x 58 1/2 in.
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(48 * INCH, 12 * INCH);
    pads.board = "softwood-plywood";
    pads.thickness = INCH;
    pads.foam = List.of(Pads.layer(1.25 * INCH, 0));
    pads.coverThickness = OptionalDouble.of(0);
    pads.turnUnder = OptionalDouble.of(3 * INCH);
    FitAnswer best = fit(pads, 2.25 * INCH, 3).answers().get(0);
    assertThat(sheets(best)).containsExactly(1.25 * INCH);
    assertThat(best.asItStands()).isTrue();
    assertThat(best.error()).isCloseTo(0, within(1e-9));
    assertThat(best.result().figures().base().length()).isCloseTo(48 * INCH, within(1e-9));
    assertThat(best.result().figures().base().width()).isCloseTo(12 * INCH, within(1e-9));
    assertThat(best.result().figures().cover().length()).isCloseTo(58.5 * INCH, within(1e-9));
    assertThat(best.result().figures().cover().width()).isCloseTo(22.5 * INCH, within(1e-9));
  }

  @Test
  void waysOfEqualHeightAreOfferedSideBySide() {
    // 58 - 12 - 1 = 45 of foam: 20 + 25 and 15 + 30; the nearest single sheets are 40 and 50.
    List<FitAnswer> answers = fit(wide(), 58, 3).answers();
    assertThat(answers.stream().limit(2).map(HeightFitTest::sheets).toList())
        .containsExactlyInAnyOrder(List.of(25.0, 20.0), List.of(30.0, 15.0));
    assertThat(Math.abs(answers.get(0).fewer().getAsDouble())).isCloseTo(5, within(1e-9));
    // 25.4 + 20 would be +0.4, but a third pair would crowd out the single sheet.
    assertThat(answers.get(2).sheets()).isEqualTo(1);
    assertThat(Math.abs(answers.get(2).error())).isCloseTo(5, within(1e-9));
  }

  private static Pads wide() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(500, 400);
    return pads;
  }

  @Test
  void threeSheetsAreTakenWhereTwoDoNotReach() {
    // Sheets of 10 alone: 12 + 3 x 10 + 1 = 43 high; two leave 33, 10 short.
    HeightFit fit = new HeightFit(selling(foam("firm", 180, true, 10)));
    FitAnswer best = fit.find(wide().pad(), FitWish.height(43, 3)).answers().get(0);
    assertThat(sheets(best)).containsExactly(10.0, 10.0, 10.0);
    assertThat(best.error()).isCloseTo(0, within(1e-9));
    assertThat(best.fewer()).hasValueCloseTo(-10.0, within(1e-9));
    // A fourth sheet is never glued on: 12 + 30 + 1 = 43 is the most, 12 + 10 + 1 = 23 the least.
    assertThatThrownBy(() -> fit.find(wide().pad(), FitWish.height(53, 3)))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("the least is 23.0 mm")
        .hasMessageContaining("the most 43.0 mm");
  }

  private static Foam foam(String id, double hardness, boolean firm, Double... sheets) {
    Foam row = Pads.CATALOGUE.foam("firm").orElseThrow();
    return new Foam(id, id, row.density(), hardness, firm, Arrays.asList(sheets), row.origin());
  }

  private static Foam foam(String id, double hardness, boolean firm, int... sheets) {
    return foam(
        id, hardness, firm, Arrays.stream(sheets).asDoubleStream().boxed().toArray(Double[]::new));
  }

  private static Catalogue selling(Foam... foams) {
    Catalogue c = Pads.CATALOGUE;
    return new Catalogue(
        c.boards(),
        List.of(foams),
        c.waddings(),
        c.coverings(),
        c.staples(),
        c.screws(),
        c.papers());
  }

  @Test
  void aHeightNoSheetIsThinEnoughForIsRefusedWithTheLeastAndTheMost() {
    // Firm foam is sold from 6 to 100: 12 + 6 + 1 = 19 at least, 12 + 3 x 100 + 1 = 313 at most.
    assertThatThrownBy(() -> fit(new Pads(), 15, 5))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("15.0 mm (19/32 in)")
        .hasMessageContaining("the least is 19.0 mm (3/4 in)")
        .hasMessageContaining("the most 313.0 mm (12 5/16 in)")
        .hasMessageContaining("thinner board");
    assertThatThrownBy(() -> fit(new Pads(), 400, 5))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("thicker board");
    // 19 - 17.5 = 1.5 is within a sheet's own 1.5875; 19 - 17.4 = 1.6 is not.
    assertThat(sheets(fit(new Pads(), 17.5, 1).answers().get(0))).containsExactly(6.0);
    assertThatThrownBy(() -> fit(new Pads(), 17.4, 1)).isInstanceOf(InputRefused.class);
  }

  @Test
  void anOpeningKeepsThePublishedThreeSixteenthsASide() {
    // E. A. Johnson, Furniture Upholstery for Schools (1919), ch. IV: at least 3/16 in a side with
    // the covering in it: 420 - 2 x 4.7625 = 410.475, 390 - 9.525 = 380.475. Height 12 + 40 + 0.6.
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(600, 300);
    pads.covering = "woven-cotton";
    pads.coverThickness = OptionalDouble.of(0.6);
    FitWish wish =
        new FitWish(
            52.6,
            OptionalDouble.of(420),
            OptionalDouble.of(390),
            Optional.of(SizeMeaning.OPENING),
            Set.of(),
            1);
    FitAnswer best = new HeightFit(Pads.CATALOGUE).find(pads.pad(), wish).answers().get(0);
    assertThat(sheets(best)).containsExactly(40.0);
    assertThat(best.error()).isCloseTo(0, within(1e-9));
    assertThat(best.result().figures().base().length()).isCloseTo(410.475, within(1e-9));
    assertThat(best.result().figures().base().width()).isCloseTo(380.475, within(1e-9));
    assertThat(best.result().figures().bareGap())
        .allSatisfy(gap -> assertThat(gap).isGreaterThanOrEqualTo(3.0 / 16 * INCH - 1e-9));
  }

  @Test
  void aFinishedSizeLosesTheCoveringOnEachSide() {
    // Flush square foam, covering 1: base = 500 - 2 x 1 by 50 - 2 x 1.
    FitWish wish =
        new FitWish(
            37,
            OptionalDouble.of(500),
            OptionalDouble.of(50),
            Optional.of(SizeMeaning.FINISHED),
            Set.of(),
            1);
    Pads pads = new Pads();
    pads.turnUnder = OptionalDouble.of(15);
    FitAnswer best = new HeightFit(Pads.CATALOGUE).find(pads.pad(), wish).answers().get(0);
    assertThat(best.result().figures().base().length()).isCloseTo(498, within(1e-9));
    assertThat(best.result().figures().base().width()).isCloseTo(48, within(1e-9));
    assertThat(best.result().figures().finished().length()).isCloseTo(500, within(1e-9));
    assertThat(best.pad().base().outline()).isEqualTo(Pads.rectangle(500, 50));
  }

  @Test
  void ofTwoFoamsEachHasASheetAndTheSplitNearestToThePartsComesFirst() {
    // 12 + 1 leaves 27 of 40: 12 + 15 moves one layer by 3; 6 + 21 and the like are not sold.
    Pads pads = new Pads();
    OptionalDouble flush = OptionalDouble.of(0);
    pads.foam = List.of(Pads.layer(12, 0), new FoamLayer("medium", 12, flush));
    List<FitAnswer> answers = fit(pads, 40, 2).answers();
    assertThat(answers.stream().map(HeightFitTest::sheets).toList())
        .containsExactlyInAnyOrder(List.of(12.0, 15.0), List.of(15.0, 12.0));
    assertThat(answers.get(0).pad().foam().stream().map(FoamLayer::foam).toList())
        .containsExactly("firm", "medium");
    // 12 + 12 + 12 + 1 = 37 is the part itself.
    assertThat(fit(pads, 37, 1).answers().get(0).asItStands()).isTrue();
  }

  @Test
  void aThickerStackKeepsTheShareOfEachFoam() {
    // Firm 40 under medium 10 is 4 to 1; 68 - 13 = 55 is 44 and 11. 40 + 15 misses that by 4 each,
    // 30 + 25 by 14 each, 15 + 40 by 29 each.
    Pads pads = wide();
    pads.foam = List.of(Pads.layer(40, 0), new FoamLayer("medium", 10, OptionalDouble.of(0)));
    List<FitAnswer> answers = fit(pads, 68, 2).answers();
    assertThat(sheets(answers.get(0))).containsExactly(40.0, 15.0);
    assertThat(sheets(answers.get(1))).containsExactly(30.0, 25.0);
    assertThat(answers.get(0).pad().foam().get(1).foam()).isEqualTo("medium");
  }

  @Test
  void anAnswerIsItsOwnBestAnswer() {
    for (double height : new double[] {37, 58, 70.3, 96.4, 150}) {
      FitAnswer first = fit(wide(), height, 1).answers().get(0);
      FitAnswer again =
          new HeightFit(Pads.CATALOGUE)
              .find(first.pad(), FitWish.height(height, 1))
              .answers()
              .get(0);
      assertThat(again.pad().foam()).isEqualTo(first.pad().foam());
      assertThat(again.asItStands()).isTrue();
    }
  }

  @Test
  void aStopIsNoAnswerButIsListed() {
    // A board of 4 may be 3.5 thin: a leg of 4 through 1 of covering goes in 3 and leaves 0.5.
    Pads pads = new Pads();
    pads.thickness = 4;
    FitResult r = fit(pads, 29, 3);
    assertThat(r.answers()).isEmpty();
    assertThat(r.rejected().get(0).stops()).anyMatch(f -> f.rule().equals("staple-none"));
    assertThat(r.rejected().get(0).error()).isCloseTo(0, within(1e-9));
  }

  @Test
  void foamThatIsLowerThanItsEdgeIsRoundIsListedWithTheReason() {
    // 23 - 12 - 1 = 10 of foam cannot be rounded to 12; the next, 12, is 2 too high.
    Pads pads = new Pads();
    pads.edge = new EdgeShape.Round(12);
    FitResult r = fit(pads, 23, 1);
    assertThat(sheets(r.answers().get(0))).containsExactly(12.0);
    assertThat(r.answers().get(0).error()).isCloseTo(2, within(1e-9));
    assertThat(r.rejected().get(0).pad().foam().get(0).thickness()).isEqualTo(10);
    assertThat(r.rejected().get(0).refusal()).contains("more than the foam is high");
  }

  @Test
  void anotherBoardIsTakenOnlyWhenItIsFree() {
    // 41 - 1 = 40 = 15 + 25. On the board of 12 the nearest single sheet is 30: +2.
    Pads pads = new Pads();
    pads.measured = OptionalDouble.of(11.8);
    FitWish free =
        new FitWish(
            41,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Set.of(Freedom.BOARD),
            1);
    FitAnswer best = new HeightFit(Pads.CATALOGUE).find(pads.pad(), free).answers().get(0);
    assertThat(best.pad().base().thickness()).isEqualTo(15);
    assertThat(best.pad().base().measured()).as("was of the other board").isEmpty();
    assertThat(sheets(best)).containsExactly(25.0);
    assertThat(best.changed()).containsExactly(Change.BOARD);
    assertThat(fit(pads, 41, 5).answers())
        .allSatisfy(a -> assertThat(a.pad().base()).isEqualTo(pads.pad().base()));
  }

  @Test
  void waddingMayGoOrComeWhenItIsFree() {
    // 12 + 20 + 1 = 33 without the wadding of 2 that the part has; with it 20 comes to 35.
    Pads pads = wide();
    pads.wadding = Optional.of(new WaddingLayer("polyester-150", OptionalDouble.of(2), false));
    FitWish free =
        new FitWish(
            33,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Set.of(Freedom.WADDING),
            9);
    List<FitAnswer> answers = new HeightFit(Pads.CATALOGUE).find(pads.pad(), free).answers();
    assertThat(answers)
        .anySatisfy(
            a -> {
              assertThat(a.pad().wadding()).isEmpty();
              assertThat(sheets(a)).containsExactly(20.0);
              assertThat(a.error()).isCloseTo(0, within(1e-9));
            });
  }

  @Test
  void anotherFoamIsOfferedWhereItIsAsHardAndComesNearer() {
    // Joint Industry Foam Standards 10.2.1: hardness 10 % either way, so 180 takes 198, not 199.
    Foam own = foam("firm", 180, true, 10, 50);
    FitWish wish = FitWish.height(12 + 25 + 1, 1);
    FitAnswer alike =
        new HeightFit(selling(own, foam("other", 198, true, 25)))
            .find(new Pads().pad(), wish)
            .answers()
            .get(0);
    assertThat(alike.pad().foam().get(0).foam()).isEqualTo("other");
    assertThat(alike.changed()).containsExactly(Change.FOAM);
    for (Foam not : List.of(foam("other", 199, true, 25), foam("other", 180, false, 25))) {
      FitAnswer kept =
          new HeightFit(selling(own, not)).find(new Pads().pad(), wish).answers().get(0);
      assertThat(kept.pad().foam()).allMatch(f -> f.foam().equals("firm"));
    }
  }

  @Test
  void aRoundPartHasNoWidth() {
    Pads round = new Pads();
    round.outline = new OutlineShape.Circle(320);
    FitWish wish =
        new FitWish(
            50, OptionalDouble.empty(), OptionalDouble.of(300), Optional.empty(), Set.of(), 1);
    assertThatThrownBy(() -> new HeightFit(Pads.CATALOGUE).find(round.pad(), wish))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("round");
  }

  @Test
  void theBestAnswerIsAsNearAsTryingEverySheetByHand() {
    Consumer<Double> gained = g -> assertThat(g < 1e-9 || g > 0.5 - 1e-9).isTrue();
    Random random = new Random(20260307);
    for (int k = 0; k < 60; k++) {
      double height = 20 + random.nextInt(2000) / 10.0;
      double foam = height - 13;
      double single = Double.MAX_VALUE;
      double two = Double.MAX_VALUE;
      for (double a : FIRM) {
        single = Math.min(single, Math.abs(a - foam));
        for (double b : FIRM) {
          two = Math.min(two, Math.abs(a + b - foam));
        }
      }
      FitResult r = fit(wide(), height, 4);
      List<Double> errors = new ArrayList<>();
      for (FitAnswer a : r.answers()) {
        double sum = 12 + sheets(a).stream().mapToDouble(Double::doubleValue).sum() + 1;
        assertThat(a.error()).isCloseTo(sum - height, within(1e-9));
        assertThat(sheets(a)).allMatch(t -> Arrays.stream(FIRM).anyMatch(f -> f == t));
        errors.add(Math.abs(a.error()));
      }
      // A second sheet is taken for half a millimetre; a third for as much again.
      double best = two <= single - 0.5 ? two : single;
      double nearest = errors.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
      assertThat(nearest).as("height " + height).isLessThanOrEqualTo(best + 1e-9);
      assertThat(best - nearest).as("height " + height).satisfies(gained);
      for (int i = 1; i < errors.size(); i++) {
        assertThat(errors.get(i)).isGreaterThan(errors.get(i - 1) - 0.25);
      }
      assertThat(fit(wide(), height, 4).answers().stream().map(FitAnswer::pad).toList())
          .as("the same again")
          .isEqualTo(r.answers().stream().map(FitAnswer::pad).toList());
    }
  }
}
