package padwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** What an outline moved in comes to; the number of its pieces is checked against JTS. */
class MovedInTest {
  private static final Path DUMB_BELL =
      Path.polygon(
          new Vec2(0, 0),
          new Vec2(200, 0),
          new Vec2(200, 90),
          new Vec2(260, 90),
          new Vec2(260, 0),
          new Vec2(460, 0),
          new Vec2(460, 200),
          new Vec2(260, 200),
          new Vec2(260, 110),
          new Vec2(200, 110),
          new Vec2(200, 200),
          new Vec2(0, 200));

  /** An arm 22 wide. */
  private static final Path ARM =
      Path.polygon(
          new Vec2(0, 0),
          new Vec2(400, 0),
          new Vec2(400, 90),
          new Vec2(600, 90),
          new Vec2(600, 112),
          new Vec2(400, 112),
          new Vec2(400, 200),
          new Vec2(0, 200));

  private static int jts(Path path, double in) {
    Coordinate[] ring =
        path.flattened(0.01).stream()
            .map(p -> new Coordinate(p.x(), p.y()))
            .toArray(Coordinate[]::new);
    Coordinate[] closed = java.util.Arrays.copyOf(ring, ring.length + 1);
    closed[ring.length] = ring[0];
    BufferParameters mitred =
        new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 10);
    return BufferOp.bufferOp(new GeometryFactory().createPolygon(closed), -in, mitred)
        .getNumGeometries();
  }

  /** The neck is 20 wide. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 5, 9.9, 10.1, 15, 40, 90})
  void aDumbBellComesApartWhereItsNeckIsUsedUp(double in) {
    MovedIn moved = MovedIn.of(DUMB_BELL, -in);

    assertThat(moved.loops()).hasSize(jts(DUMB_BELL, in)).hasSize(in < 10 ? 1 : 2);
    assertThat(moved.whole()).isEqualTo(in < 10);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 5, 10.9, 11.1, 15, 40, 90})
  void anArmIsUsedUpWhenHalfItsWidthIsTakenOffBothSides(double in) {
    MovedIn moved = MovedIn.of(ARM, -in);

    assertThat(moved.loops()).hasSize(jts(ARM, in)).hasSize(1);
    assertThat(moved.usedUp().isPresent()).isEqualTo(in > 11);
    moved.usedUp().ifPresent(p -> assertThat(p.x()).isGreaterThan(400));
  }

  /** A cut-off corner, a small rounding and a needle's end vanish without any loss. */
  @Test
  void shortSidesThatDropOutAreNoLoss() {
    Path cut =
        Path.polygon(
            new Vec2(0, 0),
            new Vec2(195, 0),
            new Vec2(200, 5),
            new Vec2(200, 120),
            new Vec2(70, 120),
            new Vec2(70, 300),
            new Vec2(0, 300));
    Path rounded =
        new Path(
            java.util.List.of(
                Segment.line(new Vec2(0, 0), new Vec2(190, 0)),
                new Segment(new Vec2(190, 0), new Vec2(200, 10), Math.tan(Math.PI / 8)),
                Segment.line(new Vec2(200, 10), new Vec2(200, 120)),
                Segment.line(new Vec2(200, 120), new Vec2(70, 120)),
                Segment.line(new Vec2(70, 120), new Vec2(70, 300)),
                Segment.line(new Vec2(70, 300), new Vec2(0, 300)),
                Segment.line(new Vec2(0, 300), new Vec2(0, 0))),
            true);
    Path needle =
        Path.polygon(
            new Vec2(0, 0),
            new Vec2(400, 48),
            new Vec2(400, 52),
            new Vec2(0, 100),
            new Vec2(20, 50));

    assertThat(MovedIn.of(cut, -12).whole()).isTrue();
    assertThat(MovedIn.of(rounded, -12).whole()).isTrue();
    assertThat(MovedIn.of(needle, -8).whole()).isTrue();
  }

  /** Sides 3 and 5 face each other across the arm, 22 apart. */
  @Test
  void sidesMovedUnlikeUseUpAnArmTogether() {
    double[] in = {-2, -2, -15, -2, -6, -2, -2, -2};
    assertThat(MovedIn.of(ARM, in, in).whole()).isTrue();
    in[4] = -8;
    assertThat(MovedIn.of(ARM, in, in).usedUp()).isPresent();
  }
}
