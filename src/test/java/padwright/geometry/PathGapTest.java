package padwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Distances between closed paths, by hand and against the JTS library. */
class PathGapTest {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private static Path box(double x0, double y0, double x1, double y1) {
    return Path.polygon(new Vec2(x0, y0), new Vec2(x1, y0), new Vec2(x1, y1), new Vec2(x0, y1));
  }

  private static Polygon jts(Path p) {
    List<Coordinate> ring = new ArrayList<>();
    p.flattened(0.001).forEach(v -> ring.add(new Coordinate(v.x(), v.y())));
    ring.add(ring.get(0));
    return GEOMETRY.createPolygon(ring.toArray(Coordinate[]::new));
  }

  @Test
  void twoCirclesAreTheirMiddlesApartLessTheirRadii() {
    Path a = Path.circle(Vec2.ZERO, 10);
    assertThat(PathGap.between(a, Path.circle(new Vec2(30, 40), 15))).isCloseTo(25, within(0.02));
    assertThat(PathGap.between(a, Path.circle(new Vec2(20, 0), 15))).isZero();
    assertThat(PathGap.between(a, Path.circle(Vec2.ZERO, 3))).isZero();
    assertThat(PathGap.between(Path.circle(Vec2.ZERO, 3), a)).isZero();
  }

  @Test
  void aBoxThatCrossesAnotherWithoutACornerInItOverlaps() {
    assertThat(PathGap.between(box(-10, -1, 10, 1), box(-1, -10, 1, 10))).isZero();
  }

  @Test
  void insideIsTheBoardLeftAndOutsideHowFarItReachesOut() {
    Path base = box(-300, -200, 300, 200);
    assertThat(PathGap.inside(box(100, -10, 280, 10), base)).isCloseTo(20, within(1e-9));
    assertThat(PathGap.inside(box(100, -10, 310, 10), base)).isCloseTo(-10, within(1e-9));
    assertThat(PathGap.inside(Path.circle(new Vec2(290, 0), 15), base)).isCloseTo(-5, within(0.02));
    assertThat(PathGap.inside(box(400, 0, 420, 10), base)).isCloseTo(-120, within(1e-9));
  }

  @Test
  void agreesWithAnotherLibraryOnRandomPaths() {
    Random random = new Random(7);
    for (int k = 0; k < 300; k++) {
      Path a = random(random);
      Path b = random(random);
      double expected = jts(a).distance(jts(b));
      assertThat(PathGap.between(a, b)).as("case %s", k).isCloseTo(expected, within(0.025));
      if (jts(a).contains(jts(b))) {
        double left = jts(a).getExteriorRing().distance(jts(b).getExteriorRing());
        assertThat(PathGap.inside(b, a)).as("case %s", k).isCloseTo(left, within(0.025));
      }
    }
  }

  private static Path random(Random random) {
    Vec2 at = new Vec2(random.nextDouble() * 100, random.nextDouble() * 100);
    double size = 5 + random.nextDouble() * 60;
    if (random.nextBoolean()) {
      return Path.circle(at, size / 2);
    }
    List<Vec2> corners = new ArrayList<>();
    int n = 3 + random.nextInt(6);
    for (int i = 0; i < n; i++) {
      double r = size * (0.4 + 0.6 * random.nextDouble());
      corners.add(at.along(Vec2.polar(2 * Math.PI * i / n), r));
    }
    return Path.polygon(corners);
  }
}
