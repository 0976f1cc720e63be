package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.Finding;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.Treatment;

/** Sizes of cover, base and foam against worked examples from outside and closed forms. */
class BlankAndBaseTest {
  private static final double INCH = 25.4;

  @Test
  void theTradesWorkedBoardGivesItsPublishedCover() {
    // Board 12 x 48 x 1, foam 1 1/4, turn-under 3, covering thickness 0 -> cover 22 1/2 x 58 1/2 in
    // (trade page, "Vinyl layout tips"; the arithmetic is 12 + 2 (1 1/4 + 1 + 3)).
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(48 * INCH, 12 * INCH);
    pads.board = "softwood-plywood";
    pads.thickness = INCH;
    pads.foam = List.of(Pads.layer(1.25 * INCH, 0));
    pads.coverThickness = OptionalDouble.of(0);
    pads.turnUnder = OptionalDouble.of(3 * INCH);
    Figures.CoverFigures cover = pads.run().figures().cover();
    assertThat(cover.length()).isCloseTo(58.5 * INCH, within(1e-9));
    assertThat(cover.width()).isCloseTo(22.5 * INCH, within(1e-9));
    // Two across a 50 in roll leave a 5 in strip.
    assertThat(50 * INCH - 2 * cover.width()).isCloseTo(5 * INCH, within(1e-9));
  }

  @Test
  void theForearmRestHasItsComputedBlank() {
    // 24 + 12 + 20 + (pi / 2) 1.0 = 57.5708 a side; 600 and 60 with two sides each.
    Figures.CoverFigures cover = new Pads().run().figures().cover();
    assertThat(cover.perSide()).isCloseTo(57.5708, within(0.0005));
    assertThat(cover.length()).isCloseTo(715.1416, within(0.0005));
    assertThat(cover.width()).isCloseTo(175.1416, within(0.0005));
    Pads rounded = new Pads();
    rounded.edge = new EdgeShape.Round(6);
    assertThat(rounded.run().figures().cover().perSide()).isCloseTo(54.9956, within(0.0005));
  }

  @Test
  void foamHalfAnInchOverIsAnInchLargerEachWay() {
    // Base 20 x 16, foam overhang 1/2 all round -> foam 21 x 17 in (trade page on foam sizes).
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(20 * INCH, 16 * INCH);
    pads.foam = List.of(Pads.layer(2 * INCH, INCH / 2));
    Figures.Box foam = pads.run().figures().foam().get(0);
    assertThat(foam.length()).isCloseTo(21 * INCH, within(1e-9));
    assertThat(foam.width()).isCloseTo(17 * INCH, within(1e-9));
  }

  @Test
  void aFinishedSizeOfFiftyLeavesABaseOfFortyEight() {
    for (double radius : new double[] {0, 10}) {
      Pads pads = new Pads();
      pads.outline = Pads.rectangle(500, 50, radius);
      pads.size = SizeMeaning.FINISHED;
      pads.turnUnder = OptionalDouble.of(15);
      PartResult part = pads.run();
      assertThat(part.figures().base().width()).isCloseTo(48, within(1e-9));
      assertThat(part.figures().base().length()).isCloseTo(498, within(1e-9));
      assertThat(part.figures().finished().width()).isCloseTo(50, within(1e-9));
    }
  }

  @Test
  void everyFinishedShapeComesOutAtItsFinishedSize() {
    List<OutlineShape> shapes =
        List.of(
            Pads.rectangle(500, 300, 20),
            new OutlineShape.Trapezoid(450, 400, 380),
            new OutlineShape.Circle(350),
            new OutlineShape.Ellipse(480, 320));
    for (OutlineShape shape : shapes) {
      Pads pads = new Pads();
      pads.outline = shape;
      pads.size = SizeMeaning.FINISHED;
      pads.foam = List.of(Pads.layer(30, 6));
      PartResult part = pads.run();
      double[] asked = size(shape);
      // An ellipse moved in and out again keeps its axes; its chords may cost their error.
      assertThat(part.figures().finished().length()).isCloseTo(asked[0], within(0.02));
      assertThat(part.figures().finished().width()).isCloseTo(asked[1], within(0.02));
      assertThat(part.wrap().failures()).as(shape.toString()).isEmpty();
    }
  }

  private static double[] size(OutlineShape shape) {
    if (shape instanceof OutlineShape.Rectangle r) {
      return new double[] {r.length(), r.width()};
    }
    if (shape instanceof OutlineShape.Trapezoid t) {
      return new double[] {t.front(), t.depth()};
    }
    if (shape instanceof OutlineShape.Circle c) {
      return new double[] {c.diameter(), c.diameter()};
    }
    OutlineShape.Ellipse e = (OutlineShape.Ellipse) shape;
    return new double[] {e.length(), e.width()};
  }

  @Test
  void anOpeningKeepsThePublishedThreeSixteenthsASide() {
    // At least 3/16 in (4.7625 mm) a side for a set-in seat, covering included: E. A. Johnson,
    // Furniture Upholstery for Schools (1919), ch. IV.
    Pads pads = opening(0.8);
    PartResult part = pads.run();
    for (double gap : part.shape().bareGap()) {
      assertThat(gap).isGreaterThanOrEqualTo(3.0 / 16 * INCH - 1e-9);
    }
    assertThat(part.figures().base().length())
        .isCloseTo(
            400 - part.shape().bareGap().get(1) - part.shape().bareGap().get(3), within(1e-9));
    // Three layers of 3 mm are more than the published gap: 1.5 mm of our own is kept beside them.
    PartResult thick = opening(3).run();
    assertThat(thick.shape().bareGap().get(0)).isCloseTo(3 * 3 + 1.5, within(1e-9));
    assertThat(thick.shape().bareGap().get(1)).isCloseTo(4.7625, within(1e-9));
  }

  private static Pads opening(double thickness) {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 380);
    pads.size = SizeMeaning.OPENING;
    Neighbour n = Neighbour.KEEP_CLEAR;
    pads.sides = new Neighbour[] {n, n, n, n};
    pads.coverThickness = OptionalDouble.of(thickness);
    pads.treatments = List.of(Treatment.SINGLE_PLEAT);
    return pads;
  }

  @Test
  void aFreeSideOfAnOpeningTakesOnlyTheCovering() {
    Pads pads = opening(1);
    pads.sides[0] = Neighbour.FREE;
    pads.sides[2] = Neighbour.BUTTING;
    PartResult part = pads.run();
    assertThat(part.shape().bareGap().get(0)).isCloseTo(1, within(1e-9));
    // The back strip lies on top at its corners: three layers.
    assertThat(part.shape().bareGap().get(2)).isCloseTo(3, within(1e-9));
  }

  @Test
  void stretchIsTakenOffTheCutLength() {
    // 20 in long at 3 % pull-in -> 19.4 in (trade page).
    Pads plain = new Pads();
    plain.outline = Pads.rectangle(500, 300);
    plain.grip = OptionalDouble.of(0);
    Pads pulled = new Pads();
    pulled.outline = plain.outline;
    pulled.grip = plain.grip;
    pulled.covering = "knit-fabric";
    pulled.stretchAlong = 0.03;
    double full = plain.run().figures().cover().length();
    assertThat(pulled.run().figures().cover().length() / full * 20).isCloseTo(19.4, within(1e-9));
    assertThat(pulled.run().figures().cover().width())
        .isCloseTo(plain.run().figures().cover().width(), within(1e-9));
  }

  @Test
  void turnUndersThatMeetAreTrimmedToButtWithACaution() {
    Pads pads = new Pads();
    pads.turnUnder = OptionalDouble.of(35);
    PartResult part = pads.run();
    assertThat(part.spec().turnUnder()).isCloseTo(30, within(1e-9));
    Finding caution =
        part.findings().stream()
            .filter(f -> f.rule().equals("turn-under-meets"))
            .findFirst()
            .orElseThrow();
    assertThat(caution.level()).isEqualTo(Finding.Level.CAUTION);
    assertThat(caution.limit().orElseThrow()).isCloseTo(30, within(1e-9));
    assertThat(part.stopped()).isFalse();
  }

  @Test
  void aBaseWithNoRoomForTheStapleIsAStop() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(300, 22);
    pads.turnUnder = OptionalDouble.of(20);
    PartResult part = pads.run();
    assertThat(part.findings())
        .anyMatch(f -> f.rule().equals("turn-under-no-room") && f.level() == Finding.Level.STOP);
  }

  @Test
  void theBlankGrowsWithEveryThickness() {
    double plain = new Pads().run().figures().cover().length();
    Pads board = new Pads();
    board.thickness = 12.5;
    Pads foam = new Pads();
    foam.foam = List.of(Pads.layer(24.5, 0));
    Pads cover = new Pads();
    cover.coverThickness = OptionalDouble.of(1.1);
    Pads under = new Pads();
    under.turnUnder = OptionalDouble.of(20.5);
    for (Pads thicker : List.of(board, foam, cover, under)) {
      assertThat(thicker.run().figures().cover().length()).isGreaterThan(plain);
    }
  }

  @Test
  void aBaseThatBecomesNarrowStillLeavesRoomForTheLayersAtItsEnds() {
    // 78 wide finished: with one layer the base is 75.6 and pleated, with three 70.8 and so narrow
    // that its ends go over its long sides, which lays three layers of 1.2 on the ends.
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 78);
    pads.size = SizeMeaning.FINISHED;
    Neighbour touches = Neighbour.BUTTING;
    pads.sides = new Neighbour[] {touches, touches, touches, touches};
    pads.coverThickness = OptionalDouble.of(1.2);
    PartResult part = pads.run();
    for (padwright.cover.CornerPlan c : part.cover().corners()) {
      int ends = c.over().equals("left") || c.over().equals("right") ? 3 : 1;
      assertThat(part.shape().length() + 2 * ends * 1.2).as(c.name()).isLessThan(400 + 1e-9);
    }
  }
}
