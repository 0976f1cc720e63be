package padwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;

/** The taut covering against closed forms; each names where its value comes from. */
class TautPathTest {
  private static final EdgeShape SQUARE = new EdgeShape.Square();

  private static double developed(
      double board, double arris, EdgeShape edge, double thickness, double turnUnder, double foam) {
    Stack stack = new Stack(board, arris, List.of(new Stack.Layer(foam, 0)), edge, 0, false);
    return SectionBuilder.taut(stack, thickness, turnUnder).developed();
  }

  @Test
  void withoutThicknessTheSideIsFoamPlusBoardPlusTurnUnder() {
    // Trade rule: blank = base + 2 (foam + board + turn-under).
    assertThat(developed(25.4, 0, SQUARE, 0, 76.2, 31.75)).isCloseTo(133.35, within(1e-12));
  }

  @Test
  void aCoveringOfThicknessTurnsByPiAboutItsNeutralLine() {
    // 24 + 12 + 20 + (pi / 2) 1.0 = 57.5708, computed from the rule (R + t/2) theta.
    assertThat(developed(12, 0, SQUARE, 1, 20, 24)).isCloseTo(57.5708, within(0.00005));
  }

  @Test
  void oneRightAngleOverASharpEdgeCostsTheNeutralLine() {
    // t 1.2 mm over a sharp 90 degree edge: neutral line 0.942 mm; over R 20 mm: 32.358 mm of
    // which the foam's own arc is 31.416 (computed, (R + t/2) theta).
    double sharp = developed(12, 0, SQUARE, 1.2, 20, 24) - developed(12, 0, SQUARE, 0, 20, 24);
    assertThat(sharp / 2).isCloseTo(0.942, within(0.0005));
    double round =
        developed(12, 0, new EdgeShape.Round(20), 1.2, 20, 24)
            - developed(12, 0, new EdgeShape.Round(20), 0, 20, 24);
    assertThat(20 * Math.PI / 2 + round / 2).isCloseTo(32.358, within(0.0005));
  }

  @Test
  void aRoundedEdgeSavesItsShareOfTheRadius() {
    // Square edge turned into an arc R saves 0.429204 R a side: R 10 mm -> 4.292 mm (computed, 2 -
    // pi/2).
    double saved =
        developed(12, 0, SQUARE, 0, 20, 24) - developed(12, 0, new EdgeShape.Round(10), 0, 20, 24);
    assertThat(saved).isCloseTo(4.292, within(0.0005));
    double withThickness =
        developed(12, 0, SQUARE, 1, 20, 24) - developed(12, 0, new EdgeShape.Round(10), 1, 20, 24);
    assertThat(withThickness).isCloseTo(4.292, within(0.0005));
  }

  /** A radius over half of foam and board: the disc of the edge would reach below the back. */
  @Test
  void aLargeRoundingGoesStraightDownFromWhereItIsUpright() {
    for (double radius : new double[] {26, 30, 39.9}) {
      double saved =
          developed(12, 0, SQUARE, 1, 20, 40)
              - developed(12, 0, new EdgeShape.Round(radius), 1, 20, 40);
      assertThat(saved).isCloseTo((2 - Math.PI / 2) * radius, within(1e-9));
    }
    Stack stack =
        new Stack(12, 0, List.of(new Stack.Layer(40, 0)), new EdgeShape.Round(30), 0, false);
    assertThat(SectionBuilder.taut(stack, 0, 20).neutral().end().y()).isCloseTo(0, within(1e-12));
    // Overhanging by 10: from (10, 22), where the rounding is upright, down the foam's side to the
    // board's face at 12, and slanting in to the arris at (0, 0).
    Stack over =
        new Stack(12, 0, List.of(new Stack.Layer(40, 10)), new EdgeShape.Round(30), 0, false);
    double length = (-20 + 0) + 30 * Math.PI / 2 + 10 + Math.hypot(10, 12) + 20;
    assertThat(SectionBuilder.taut(over, 0, 20).developed()).isCloseTo(length, within(1e-9));
  }

  /**
   * Board 12, a crown of 15 set in by 60, 30 of foam laid over it, which bends about its corner.
   */
  @Test
  void aBendOverACrownNeverReachesBelowTheBack() {
    Stack stack =
        new Stack(
            12,
            0,
            List.of(new Stack.Layer(15, -60, true), new Stack.Layer(30, 0)),
            SQUARE,
            0,
            false);
    TautPath path = SectionBuilder.taut(stack, 0, 20);
    assertThat(path.neutral().end().y()).isCloseTo(0, within(1e-12));
    assertThat(path.neutral().bounds().minY()).isCloseTo(0, within(1e-12));
    // The tangent from the corner of the foam at the edge, (0, 42), to a circle of 30 about
    // (-60, 27), which it leaves at the angle phi from upright.
    double far = Math.hypot(60, 15);
    double tangent = Math.sqrt(far * far - 30 * 30);
    double phi = Math.asin(30 / far) - Math.atan2(15, 60);
    assertThat(path.developed()).isCloseTo(-60 + 30 * phi + tangent + 42 + 20, within(1e-9));
  }

  @Test
  void aRoundedBackArrisSavesTheSameShare() {
    double saved = developed(12, 0, SQUARE, 1, 20, 24) - developed(12, 6, SQUARE, 1, 20, 24);
    assertThat(saved).isCloseTo(0.429204 * 6, within(1e-5));
  }

  @Test
  void aBevelIsTheHypotenuse() {
    double saved =
        developed(12, 0, SQUARE, 0, 20, 24) - developed(12, 0, new EdgeShape.Bevel(10), 0, 20, 24);
    assertThat(saved).isCloseTo(20 - Math.sqrt(200), within(1e-9));
  }

  @Test
  void aFullRoundIsAQuarterCircleDownToItsNose() {
    // Half circle of radius 12 over 24 of foam; below the nose the covering hangs straight.
    double side = developed(12, 0, new EdgeShape.FullRound(), 0, 20, 24);
    assertThat(side).isCloseTo(12 * Math.PI / 2 - 12 + 12 + 12 + 20, within(1e-9));
  }

  @Test
  void overhangingFoamIsBridgedToTheBackArris() {
    // Foam 24 high and 12 over a 12 board: flat to x = 12, down 24, then straight to (0, 0).
    Stack stack = new Stack(12, 0, List.of(new Stack.Layer(24, 12)), SQUARE, 0, false);
    double d = SectionBuilder.taut(stack, 0, 20).developed();
    assertThat(d).isCloseTo(12 + 24 + Math.hypot(12, 12) + 20, within(1e-9));
  }

  @Test
  void aSteppedBackLayerStartsInsideTheOutline() {
    // A layer 10 in and 20 high on a flush one of 20: from (-10, 52) straight to (0, 32).
    Stack stack =
        new Stack(
            12, 0, List.of(new Stack.Layer(20, 0), new Stack.Layer(20, -10)), SQUARE, 0, false);
    TautPath path = SectionBuilder.taut(stack, 0, 20);
    assertThat(path.startX()).isCloseTo(-10, within(1e-12));
    assertThat(path.developed()).isCloseTo(-10 + Math.hypot(10, 20) + 32 + 20, within(1e-9));
  }

  @Test
  void waddingOverTheSidesRollsRoundTheEdgeAndReachesTheBack() {
    // Wadding 5 over a flush square edge: quarter circle of 5, then down to the back at x = 5.
    Stack stack = new Stack(12, 0, List.of(new Stack.Layer(24, 0)), SQUARE, 5, true);
    double d = SectionBuilder.taut(stack, 0, 20).developed();
    assertThat(d).isCloseTo(5 * Math.PI / 2 + 36 + 5 + 20, within(1e-9));
    Stack onTop = new Stack(12, 0, List.of(new Stack.Layer(24, 0)), SQUARE, 5, false);
    assertThat(SectionBuilder.taut(onTop, 0, 20).developed())
        .isCloseTo(24 + 12 + 5 + 20, within(1e-9));
  }

  @Test
  void surplusOfAQuarterRoundIsThePublishedShare() {
    // Quarter-round edge r: surplus 0.5708 beta r; vertical wall h: beta h (Gauss-Bonnet,
    // computed).
    Stack stack =
        new Stack(0.001, 0, List.of(new Stack.Layer(20, 0)), new EdgeShape.Round(20), 0, false);
    TautPath path = SectionBuilder.taut(stack, 0, 20);
    double end = -20 + 20 * Math.PI / 2;
    assertThat(path.surplus(end) / 20).isCloseTo(0.5708, within(0.0001));
    Stack wall = new Stack(12, 0, List.of(new Stack.Layer(24, 0)), SQUARE, 0, false);
    assertThat(SectionBuilder.taut(wall, 0, 20).surplus(36)).isCloseTo(36, within(1e-9));
  }

  @Test
  void theLineGrowsWithEveryThickness() {
    double d = developed(12, 0, SQUARE, 1, 20, 24);
    assertThat(developed(12.1, 0, SQUARE, 1, 20, 24)).isGreaterThan(d);
    assertThat(developed(12, 0, SQUARE, 1.1, 20, 24)).isGreaterThan(d);
    assertThat(developed(12, 0, SQUARE, 1, 20.1, 24)).isGreaterThan(d);
    assertThat(developed(12, 0, SQUARE, 1, 20, 24.1)).isGreaterThan(d);
  }

  @Test
  void waddingOnTheTopLiesDownOverABevel() {
    // 24 of foam bevelled by 10, wadding 4 on it: hypotenuse, then down 14 + 4 + 12.
    Stack stack =
        new Stack(12, 0, List.of(new Stack.Layer(24, 0)), new EdgeShape.Bevel(10), 4, false);
    double d = SectionBuilder.taut(stack, 0, 20).developed();
    assertThat(d).isCloseTo(-10 + Math.sqrt(200) + 14 + 4 + 12 + 20, within(1e-9));
  }

  @Test
  void aRoundOverASteppedBackLayerFollowsWhatFoamIsThere() {
    // The top layer stands 6 over and is 10 high; a round of 20 would stand out below it, where
    // there is only the flush layer. The covering goes from the arc's end at height 42 to (0, 32).
    Stack stack =
        new Stack(
            12,
            0,
            List.of(new Stack.Layer(20, 0), new Stack.Layer(10, 6)),
            new EdgeShape.Round(20),
            0,
            false);
    // The arc's lowest point on the top layer is 10 under its centre's top: angle acos(1/2).
    double arcX = 6 - 20 + 20 * Math.sin(Math.PI / 3);
    double chain = 20 * Math.PI / 3 + Math.hypot(arcX, 32) + 20;
    double d = SectionBuilder.taut(stack, 0, 20).developed();
    // The hull bridges from the arc's end straight to the back arris.
    assertThat(d).isCloseTo(6 - 20 + chain, within(0.02));
  }
}
