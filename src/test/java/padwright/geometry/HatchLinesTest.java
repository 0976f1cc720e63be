package padwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines at a pitch sweep their polygon: their length times the pitch is its area (Cavalieri). */
class HatchLinesTest {
  private static final List<Vec2> ELL =
      List.of(
          new Vec2(0, 0),
          new Vec2(200, 0),
          new Vec2(200, 60),
          new Vec2(80, 60),
          new Vec2(80, 150),
          new Vec2(0, 150));

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.3, Math.PI / 4, 1.2, Math.PI / 2, -0.7})
  void theirLengthTimesThePitchIsTheArea(double angle) {
    double pitch = 0.5;
    List<Segment> lines = HatchLines.inside(ELL, angle, pitch);

    double length = lines.stream().mapToDouble(Segment::length).sum();
    assertThat(length * pitch).isCloseTo(200 * 60 + 80 * 90, within(120.0));
    for (Segment s : lines) {
      assertThat(Polygons.contains(ELL, s.pointAt(0.5))).isTrue();
      assertThat(s.directionAt(0).cross(Vec2.polar(angle))).isCloseTo(0, within(1e-9));
    }
  }
}
