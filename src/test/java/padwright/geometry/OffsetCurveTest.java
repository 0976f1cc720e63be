package padwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Outlines with hollows, moved; JTS (jts-core 1.20.0) buffers the same outlines independently. */
class OffsetCurveTest {
  /** Chords for JTS: their directions at a mitre count, so they are finer than the tolerance. */
  private static final double FINE = 0.0002;

  private static final GeometryFactory JTS = new GeometryFactory();

  /** An L of 600 x 400, its inner corner at (200, 0) from the middle of its box. */
  private static Path ell() {
    return Path.polygon(
        new Vec2(-300, -200),
        new Vec2(300, -200),
        new Vec2(300, 0),
        new Vec2(0, 0),
        new Vec2(0, 200),
        new Vec2(-300, 200));
  }

  @Test
  void anEllMovedOutKeepsItsCornersAndGrowsByItsSides() {
    Path out = Offset.by(ell(), 50).orElseThrow();

    assertThat(out.segments()).hasSize(6);
    // 700 x 500 less the notch of 300 x 200, whose sides moved out by 50 on each.
    assertThat(out.area()).isCloseTo(700 * 500 - 300 * 200, within(1e-6));
  }

  @Test
  void outAndInAgainGivesTheOutlineBack() {
    Path back = Offset.by(Offset.by(ell(), 50).orElseThrow(), -50).orElseThrow();

    assertThat(back.segments()).hasSize(6);
    assertThat(back.area()).isCloseTo(ell().area(), within(1e-6));
    for (Segment s : back.segments()) {
      assertThat(ell().segments().stream().mapToDouble(o -> o.start().distance(s.start())).min())
          .hasValueCloseTo(0.0, within(1e-7));
    }
  }

  /**
   * Worked by hand: at a corner of 30 degrees the side that was moved less runs on to the other.
   */
  @Test
  void bluntCornersBetweenSidesMovedUnlikeMeetWhereTheirLinesCross() {
    double rise = 60 * Math.sin(Math.PI / 6);
    double run = 60 * Math.cos(Math.PI / 6);
    Path outline =
        Path.polygon(
            new Vec2(0, 0),
            new Vec2(100, 0),
            new Vec2(100 + run, rise),
            new Vec2(100 + run, 200),
            new Vec2(60, 200),
            new Vec2(60, 120),
            new Vec2(0, 120));
    double back = 20 / Math.tan(Math.PI / 6);
    List<Path> first = OffsetCurve.loops(outline, new double[] {20, 0, 0, 0, 0, 0, 0});
    assertThat(first).hasSize(1);
    // What is added is a strip of 20 whose end is cut aslant.
    assertThat(first.get(0).area() - outline.area())
        .isCloseTo(20 * (100 - back) + 20 * back / 2, within(1e-6));
    assertThat(first.get(0).segments())
        .anyMatch(s -> s.start().distance(new Vec2(100 - back, -20)) < 1e-6);
    assertThat(first.get(0).segments()).hasSize(7);

    List<Path> second = OffsetCurve.loops(outline, new double[] {0, 20, 0, 0, 0, 0, 0});
    assertThat(second).hasSize(1);
    // The same at the lower end, and at the upper one a corner of 60 degrees, likewise blunt.
    double over = 20 / Math.tan(Math.PI / 3);
    assertThat(second.get(0).area() - outline.area())
        .isCloseTo(20 * (60 - back - over) + 20 * (back + over) / 2, within(1e-6));

    List<Path> inwards = OffsetCurve.loops(outline, new double[] {-20, 0, 0, 0, 0, 0, 0});
    assertThat(inwards).hasSize(1);
    assertThat(outline.area() - inwards.get(0).area())
        .isCloseTo(20 * 100 + 20 * back / 2, within(1e-6));
  }

  @Test
  void aNeckThatClosesLeavesTwoLoops() {
    Path bone =
        Path.polygon(
            new Vec2(-200, -100),
            new Vec2(-50, -100),
            new Vec2(-50, -20),
            new Vec2(50, -20),
            new Vec2(50, -100),
            new Vec2(200, -100),
            new Vec2(200, 100),
            new Vec2(50, 100),
            new Vec2(50, 20),
            new Vec2(-50, 20),
            new Vec2(-50, 100),
            new Vec2(-200, 100));
    double[] each = new double[12];
    java.util.Arrays.fill(each, -25);

    List<Path> loops = OffsetCurve.loops(bone, each);

    assertThat(loops).hasSize(2);
    assertThat(loops.get(0).area()).isCloseTo(100 * 150, within(1e-6));
    assertThat(loops.get(1).area()).isCloseTo(100 * 150, within(1e-6));
  }

  @Test
  void aSwallowedHollowClosesToACorner() {
    // A rectangle whose right side is hollowed by a half circle of radius 30.
    Path hollow =
        new Path(
            List.of(
                Segment.line(new Vec2(-200, -100), new Vec2(200, -100)),
                Segment.line(new Vec2(200, -100), new Vec2(200, -30)),
                new Segment(new Vec2(200, -30), new Vec2(200, 30), -1),
                Segment.line(new Vec2(200, 30), new Vec2(200, 100)),
                Segment.line(new Vec2(200, 100), new Vec2(-200, 100)),
                Segment.line(new Vec2(-200, 100), new Vec2(-200, -100))),
            true);
    double[] each = new double[6];
    java.util.Arrays.fill(each, 40);

    List<Path> loops = OffsetCurve.loops(hollow, each);

    assertThat(loops).hasSize(1);
    assertThat(loops.get(0).area()).isCloseTo(480 * 280, within(1e-6));
  }

  @Test
  void movedOutlinesAgreeWithJts() {
    Random random = new Random(20261125);
    int compared = 0;
    for (int k = 0; k < 600; k++) {
      Path outline = star(random, k % 2 == 0);
      if (Crossings.first(outline).isPresent() || sharpest(outline) > (k % 2 == 0 ? 1.3 : 2.6)) {
        continue;
      }
      double distance = -30 + 60 * random.nextDouble();
      Path moved = Offset.by(outline, distance).orElse(null);
      Geometry expected = buffered(outline, distance);
      String what = "outline " + k + " moved by " + distance;
      if (moved == null) {
        assertThat(expected.getArea()).as(what).isLessThan(1);
        continue;
      }
      assertThat(Crossings.first(moved)).as(what).isEmpty();
      compared++;
      double differ = largest(expected).symDifference(polygon(moved.flattened(0.002))).getArea();
      // Both are flattened within 0.002 mm; 0.01 mm along the whole line is the tolerance.
      assertThat(differ).as(what + ", mm2").isLessThan(0.01 * moved.length());
    }
    assertThat(compared).isGreaterThan(100);
  }

  /** Every loop counts where an outline comes apart, also the small ones. */
  @Test
  void everyLoopOfAnOutlineThatComesApartAgreesWithJts() {
    Random random = new Random(20261126);
    int apart = 0;
    for (int k = 0; k < 600; k++) {
      Path outline = beads(random, k % 2 == 0);
      if (Crossings.first(outline).isPresent() || sharpest(outline) > (k % 2 == 0 ? 1.3 : 2.6)) {
        continue;
      }
      double distance = -5 - 45 * random.nextDouble();
      double[] each = new double[outline.segments().size()];
      java.util.Arrays.fill(each, distance);
      List<Path> loops = OffsetCurve.loops(outline, each);
      Geometry all = JTS.createPolygon();
      double length = 0;
      for (Path loop : loops) {
        all = all.union(polygon(loop.flattened(0.002)));
        length += loop.length();
      }
      BufferParameters p =
          new BufferParameters(64, BufferParameters.CAP_ROUND, BufferParameters.JOIN_MITRE, 1000);
      p.setSimplifyFactor(0);
      Geometry expected = BufferOp.bufferOp(polygon(outline.flattened(FINE)), distance, p);

      String what = "outline " + k + " moved by " + distance;
      assertThat(all.symDifference(expected).getArea())
          .as(what + ", mm2")
          .isLessThan(0.01 * length + 0.01);
      apart += loops.size() > 1 ? 1 : 0;
    }
    assertThat(apart).isGreaterThan(100);
  }

  /** Wide places and narrow ones in turn, in a row. */
  private static Path beads(Random random, boolean bent) {
    int n = 4 + random.nextInt(8);
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      points.add(new Vec2(60.0 * i, -width(random, i)));
    }
    for (int i = n - 1; i >= 0; i--) {
      points.add(new Vec2(60.0 * i + 20 * random.nextDouble(), width(random, i)));
    }
    List<Segment> list = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      double bulge = bent ? -0.3 + 0.6 * random.nextDouble() : 0;
      list.add(new Segment(points.get(i), points.get((i + 1) % points.size()), bulge));
    }
    return new Path(list, true);
  }

  private static double width(Random random, int i) {
    return i % 2 == 0 ? 50 + 70 * random.nextDouble() : 8 + 20 * random.nextDouble();
  }

  /** The sharpest corner, radians turned; a mitre there runs out far. */
  private static double sharpest(Path outline) {
    double most = 0;
    Segment last = outline.segments().get(outline.segments().size() - 1);
    for (Segment s : outline.segments()) {
      Vec2 u = last.directionAt(1);
      Vec2 v = s.directionAt(0);
      most = Math.max(most, Math.abs(Math.atan2(u.cross(v), u.dot(v))));
      last = s;
    }
    return most;
  }

  private static Geometry largest(Geometry g) {
    Geometry best = g;
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (i == 0 || g.getGeometryN(i).getArea() > best.getArea()) {
        best = g.getGeometryN(i);
      }
    }
    return best;
  }

  private static Geometry buffered(Path outline, double distance) {
    BufferParameters p =
        new BufferParameters(64, BufferParameters.CAP_ROUND, BufferParameters.JOIN_MITRE, 1000);
    p.setSimplifyFactor(0);
    Geometry g = largest(BufferOp.bufferOp(polygon(outline.flattened(FINE)), distance, p));
    // A pocket that an outward move closes is a hole to JTS; a cover has none.
    return g.isEmpty() ? g : JTS.createPolygon(((Polygon) g).getExteriorRing().getCoordinates());
  }

  private static Geometry polygon(List<Vec2> points) {
    List<Coordinate> c = new ArrayList<>();
    points.forEach(v -> c.add(new Coordinate(v.x(), v.y())));
    c.add(c.get(0));
    return JTS.createPolygon(c.toArray(Coordinate[]::new));
  }

  /** A star-shaped outline with straight and, if asked, bent sides. */
  private static Path star(Random random, boolean bent) {
    int n = 4 + random.nextInt(12);
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double r = 80 + 220 * random.nextDouble();
      points.add(Vec2.polar(2 * Math.PI * i / n).times(r));
    }
    List<Segment> list = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double bulge = bent ? -0.4 + 0.8 * random.nextDouble() : 0;
      list.add(new Segment(points.get(i), points.get((i + 1) % n), bulge));
    }
    return new Path(list, true);
  }
}
