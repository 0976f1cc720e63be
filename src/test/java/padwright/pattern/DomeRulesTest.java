package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.Finding;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.Run;
import padwright.geometry.Vec2;
import padwright.measure.InputRefused;

/** What is said of a domed top, from a covering that takes it to one that does not. */
class DomeRulesTest {
  private static Pads domed(double crown) {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(360, 280);
    pads.foam =
        List.of(
            Pads.layer(20, 0),
            new FoamLayer("firm", crown, OptionalDouble.of(-60), true),
            Pads.layer(16, 0));
    return pads;
  }

  private static PartResult run(Pads pads) {
    return new PatternEngine(Pads.CATALOGUE).run(pads.pad());
  }

  private static Optional<Finding> about(PartResult r) {
    return r.findings().stream().filter(f -> f.rule().startsWith("dome-")).findFirst();
  }

  @Test
  void aFlatTopHasNothingToSay() {
    PartResult r = run(new Pads());
    assertThat(about(r)).isEmpty();
    assertThat(r.dome()).isEmpty();
  }

  @Test
  void aLowCrownIsTakenByVinylThatStretchesThreeInAHundred() {
    Finding f = about(run(domed(16))).orElseThrow();
    assertThat(f.rule()).isEqualTo("dome-taken");
    assertThat(f.level()).isEqualTo(Finding.Level.NOTE);
    assertThat(f.value().orElseThrow()).isLessThan(f.limit().orElseThrow());
    assertThat(f.message()).contains("it takes 3.0 % and 5.0 %");
  }

  @Test
  void theStretchAllowanceIsNotThereASecondTime() {
    Pads pads = domed(16);
    pads.stretchAlong = 0.025;
    assertThat(about(run(pads)).orElseThrow().message()).contains("0.5 % and 5.0 %");
  }

  @Test
  void aHighCrownAsksForASeamOverEachCorner() {
    Finding f = about(run(domed(50))).orElseThrow();
    assertThat(f.rule()).isEqualTo("dome-seams");
    assertThat(f.level()).isEqualTo(Finding.Level.CAUTION);
    assertThat(f.remedy())
        .contains("4 seams", "front left", "back right", "leaves 0.0 % to stretch and 0.0 % to");
  }

  @Test
  void aRoundDomeThatNoSeamsRelieveEnoughIsTooFull() {
    Pads pads = domed(40);
    pads.outline = new OutlineShape.Circle(240);
    pads.covering = "leather";
    pads.stretchAlong = 0;
    Finding f = about(run(pads)).orElseThrow();
    assertThat(f.rule()).isIn("dome-seams", "dome-too-full");
    assertThat(f.value().orElseThrow()).isGreaterThan(f.limit().orElseThrow());
  }

  private static OutlineShape ell() {
    return new OutlineShape.FreePath(
        Stream.of(
                new Vec2(0, 0),
                new Vec2(500, 0),
                new Vec2(500, 220),
                new Vec2(220, 220),
                new Vec2(220, 500),
                new Vec2(0, 500))
            .map(p -> new OutlineShape.Point(p, new OutlineShape.Leg.Straight()))
            .toList());
  }

  @Test
  void aHollowOutlineAndSidesOfTheirOwnAreWorkedOut() {
    Pads rounded = domed(16);
    rounded.runs =
        List.of(Pads.run(Optional.of(new EdgeShape.Round(8)), OptionalDouble.empty(), "front"));
    assertThat(about(run(rounded)).orElseThrow().rule()).isEqualTo("dome-taken");
    Pads hollow = domed(50);
    hollow.outline = ell();
    Finding f = about(run(hollow)).orElseThrow();
    assertThat(f.rule()).isEqualTo("dome-seams");
    assertThat(f.remedy()).contains("6 seams", "at point 4 the outline is hollow", "let in");
  }

  private static Pads passing() {
    Pads pads = domed(20);
    pads.outline = Pads.rectangle(500, 360, 40);
    pads.runs =
        List.of(
            new Run(
                List.of("front"),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(6),
                Optional.empty(),
                OptionalDouble.of(80)));
    return pads;
  }

  @Test
  void aDomeWithAPassageIsNamedAsUnknown() {
    PartResult r = run(passing());
    assertThat(r.shape().sections().passages()).isNotEmpty();
    Finding f = about(r).orElseThrow();
    assertThat(f.rule()).isEqualTo("dome-unknown");
    assertThat(f.level()).isEqualTo(Finding.Level.CAUTION);
    assertThat(f.message()).contains("passage", "passes into another");
  }

  @Test
  void aFlatTopWithAPassageHasNothingToSay() {
    Pads pads = passing();
    pads.foam = List.of(Pads.layer(20, 0));
    PartResult r = run(pads);
    assertThat(r.shape().sections().passages()).isNotEmpty();
    assertThat(about(r)).isEmpty();
  }

  @Test
  void aRunOfFullRoundEdgeThatPassesIntoASquareOneIsNamedAsUnknown() {
    Pads pads = passing();
    pads.foam = List.of(Pads.layer(50, 0));
    Run overhang = pads.runs.get(0);
    pads.runs =
        List.of(
            new Run(
                overhang.sides(),
                Optional.of(new EdgeShape.FullRound()),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                overhang.passage()));
    PartResult r = run(pads);
    assertThat(r.shape().sections().passages()).isNotEmpty();
    assertThat(about(r).orElseThrow().rule()).isEqualTo("dome-unknown");
  }

  @Test
  void aDomeWhoseEdgeChangesAtAHollowCornerIsNamedAsUnknown() {
    Pads pads = domed(20);
    pads.outline = ell();
    pads.runs = List.of(Pads.run(Optional.empty(), OptionalDouble.of(6), "side 3"));
    Finding f = about(run(pads)).orElseThrow();
    assertThat(f.rule()).isEqualTo("dome-unknown");
    assertThat(f.message()).contains("no corner that points outwards");
  }

  @Test
  void aCrownThatARunDoesNotReachOverIsRefused() {
    Pads pads = domed(20);
    pads.runs = List.of(Pads.run(Optional.empty(), OptionalDouble.of(-60), "front"));
    assertThatThrownBy(() -> run(pads))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("runs[0].overhang")
        .hasMessageContaining("does not reach over the crown");
  }

  @Test
  void aLayerOverACrownIsCutLargerThanItReaches() {
    PartResult r = run(domed(20));
    double over = r.piece(PatternPiece.Kind.BASE).orElseThrow().length();
    double laid =
        r.pieces().stream().filter(p -> p.id().equals("foam-3")).findFirst().orElseThrow().length();
    assertThat(laid).isGreaterThan(over);
    assertThat(r.spec().assumptions()).anyMatch(a -> a.value().contains("larger a side"));
  }
}
