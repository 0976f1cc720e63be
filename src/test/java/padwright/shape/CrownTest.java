package padwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;

/** A crown under a laid-over layer against figures worked by hand in the comments. */
class CrownTest {
  /** Board 12, foam 20, crown 9 set in 50, foam 16 over it. */
  private static final Stack STACK =
      new Stack(
          12,
          0,
          List.of(new Stack.Layer(20, 0), new Stack.Layer(9, -50, true), new Stack.Layer(16, 0)),
          new EdgeShape.Square(),
          0,
          false);

  @Test
  void theCoveringBendsOverTheCrownAndComesDownToTheEdge() {
    // Crown's top corner C = (-50, 12 + 20 + 9 = 41); the layer's top is 16 from it, level at 57.
    // The layer's own corner E = (0, 12 + 20 + 16 = 48), 7 above C and 50 beside it:
    // |CE| = sqrt(2500 + 49) = 50.48762; the tangent from E to the bend is
    // sqrt(50.48762^2 - 16^2) = sqrt(2293) = 47.88528. Its slope below level:
    // asin(16 / 50.48762) - asin(7 / 50.48762) = 0.322470 - 0.139096 = 0.183374 rad; arc 2.93398.
    // Wall 48, turn-under 25. D from the crown's corner is 2.93350 + 47.88528 + 48 + 25 =
    // 123.81878;
    // from the base's line 50 less: 73.81926.
    TautPath taut = SectionBuilder.taut(STACK, 0, 25);
    assertThat(taut.startX()).isCloseTo(-50, within(1e-9));
    assertThat(taut.developed()).isCloseTo(73.81926, within(2e-5));
    assertThat(STACK.top()).isEqualTo(57);
  }

  @Test
  void theLayerOverACrownIsCutLongerByItsMiddleLine() {
    // Middle: bend radius 8 about C, end (0, 40): 1 below C. |CE| = sqrt(2501) = 50.0100;
    // tangent sqrt(2501 - 64) = 49.36598; slope asin(8 / 50.0100) + asin(1 / 50.0100)
    // = 0.160657 + 0.019997 = 0.180654 rad, arc 1.44523; together 50.81121, so 0.81121 more.
    assertThat(LaidOver.extra(STACK, 2)).isCloseTo(0.8112, within(2e-4));
    assertThat(LaidOver.extra(STACK, 0)).isZero();
    assertThat(LaidOver.extra(STACK, 1)).isZero();
  }

  @Test
  void waddingOverACrownIsCutLongerByItsOwnMiddleLine() {
    // 4 of wadding on the layer: its middle bends at 16 + 2 about C = (-50, 41) and ends at
    // (0, 48 + 2), 9 above C: |CE| = sqrt(2581) = 50.80354; tangent sqrt(2581 - 324) = 47.50789;
    // slope
    // asin(18 / |CE|) - asin(9 / |CE|) = 0.184079, arc 3.31342: 0.82131 more than the 50 it
    // reaches.
    Stack wadded = new Stack(12, 0, STACK.layers(), STACK.edge(), 4, true);
    Section section = SectionBuilder.build(wadded, List.of("a", "b", "c"), "board", "w", 1, 25);
    assertThat(section.waddingLaid()).isCloseTo(0.82131, within(2e-5));
    assertThat(section.edgeHeight()).isEqualTo(36);
    assertThat(
            SectionBuilder.build(STACK, List.of("a", "b", "c"), "board", "", 1, 25).waddingLaid())
        .isZero();
  }

  @Test
  void aDeepCrownIsStillInTheSection() {
    Stack deep =
        new Stack(
            12,
            0,
            List.of(new Stack.Layer(20, 0), new Stack.Layer(9, -150, true), new Stack.Layer(16, 0)),
            new EdgeShape.Square(),
            0,
            false);
    Section section = SectionBuilder.build(deep, List.of("a", "b", "c"), "board", "", 1, 25);
    assertThat(section.layers().get(2).shape().bounds().maxX()).isCloseTo(-150, within(1e-9));
    assertThat(section.layers().get(2).shape().bounds().minX()).isLessThan(-150);
    assertThat(section.layers().get(3).shape().signedArea()).isNotZero();
    assertThat(section.layers().get(3).shape().bounds().minX())
        .isCloseTo(section.layers().get(2).shape().bounds().minX(), within(1e-9));
  }

  @Test
  void theLaidLayerIsAsThickOverTheCrownAsAtItsEdge() {
    Section section = SectionBuilder.build(STACK, List.of("a", "b", "c"), "board", "", 1, 25);
    var shape = section.layers().get(3).shape().bounds();
    assertThat(shape.maxY()).isCloseTo(57, within(1e-9));
    assertThat(shape.minY()).isCloseTo(32, within(1e-9));
    assertThat(shape.maxX()).isCloseTo(0, within(1e-9));
  }
}
