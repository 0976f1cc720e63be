package padwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Closed forms for lines and arcs. */
class PathTest {
  @Test
  void aCircleHasTheLengthAndAreaOfACircle() {
    Path circle = Path.circle(new Vec2(10, -5), 175);
    assertThat(circle.length()).isCloseTo(2 * Math.PI * 175, within(1e-9));
    assertThat(circle.signedArea()).isCloseTo(Math.PI * 175 * 175, within(1e-6));
    assertThat(circle.bounds().width()).isCloseTo(350, within(1e-9));
    assertThat(circle.bounds().height()).isCloseTo(350, within(1e-9));
  }

  @Test
  void aQuarterArcKnowsItsRadiusCentreAndLength() {
    Segment arc = Segment.arc(new Vec2(3, 4), 20, 0, Math.PI / 2);
    assertThat(arc.radius()).isCloseTo(20, within(1e-12));
    assertThat(arc.centre().distance(new Vec2(3, 4))).isCloseTo(0, within(1e-12));
    assertThat(arc.length()).isCloseTo(10 * Math.PI, within(1e-12));
    assertThat(arc.directionAt(0).dot(new Vec2(0, 1))).isCloseTo(1, within(1e-12));
  }

  @Test
  void chordsStayWithinTheirError() {
    Path circle = Path.circle(Vec2.ZERO, 200);
    List<Vec2> points = circle.flattened(0.01);
    for (int i = 0; i < points.size(); i++) {
      Vec2 middle = points.get(i).midpoint(points.get((i + 1) % points.size()));
      assertThat(200 - middle.length()).isBetween(0.0, 0.0100001);
    }
  }

  @Test
  void mirroringTwiceGivesThePathBackAndKeepsTheArea() {
    Path path =
        new Path(
            List.of(
                Segment.line(new Vec2(0, 0), new Vec2(100, 0)),
                Segment.arc(new Vec2(100, 25), 25, -Math.PI / 2, Math.PI / 2),
                Segment.line(new Vec2(100, 50), new Vec2(0, 50)),
                Segment.line(new Vec2(0, 50), new Vec2(0, 0))),
            true);
    assertThat(path.mirrored().signedArea()).isCloseTo(path.signedArea(), within(1e-9));
    assertThat(path.mirrored().mirrored().bounds()).isEqualTo(path.bounds());
  }

  @Test
  void anEllipseKeepsItsStatedChordErrorAndItsArea() {
    for (double[] half : new double[][] {{225, 150}, {300, 60}, {180, 175}}) {
      Path path = EllipseArcs.of(half[0], half[1]);
      assertThat(EllipseArcs.deviation(path, half[0], half[1]))
          .isLessThanOrEqualTo(EllipseArcs.CHORD_ERROR);
      // Area of an ellipse pi a b, and the area that the chord error can cost.
      assertThat(path.signedArea())
          .isCloseTo(Math.PI * half[0] * half[1], within(path.length() * 0.01));
      for (int i = 0; i < path.segments().size(); i++) {
        Vec2 end = path.segments().get(i).directionAt(1);
        Vec2 next = path.segments().get((i + 1) % path.segments().size()).directionAt(0);
        assertThat(end.cross(next)).isCloseTo(0, within(1e-9));
      }
    }
  }
}
