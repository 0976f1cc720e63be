package padwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import padwright.geometry.Crossings.Crossing;

class CrossingsTest {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final double FINE = 1e-4;

  private static Vec2 v(double x, double y) {
    return new Vec2(x, y);
  }

  private static LineString chords(Segment s) {
    List<Vec2> points = new ArrayList<>(List.of(s.start()));
    s.flattenInto(points, FINE);
    return JTS.createLineString(
        points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
  }

  private static Segment any(Random r) {
    Vec2 a = v(r.nextDouble() * 100, r.nextDouble() * 100);
    Vec2 b = v(r.nextDouble() * 100, r.nextDouble() * 100);
    return new Segment(a, b, r.nextInt(3) == 0 ? 0 : Math.tan((r.nextDouble() - 0.5) * 3));
  }

  /**
   * Outside check: JTS 1.20 on chords within 1e-4 mm; pairs it cannot tell at that fineness pass.
   */
  @Test
  void segmentsMeetWhereAnotherLibrarySaysTheirChordsDo() {
    Random r = new Random(31);
    int met = 0;
    for (int i = 0; i < 2000; i++) {
      Segment a = any(r);
      Segment b = any(r);
      List<Vec2> ours = Intersections.between(a, b);
      Geometry theirs = chords(a).intersection(chords(b));
      for (Vec2 p : ours) {
        assertThat(a.distanceTo(p)).isLessThan(Intersections.TOUCH);
        assertThat(b.distanceTo(p)).isLessThan(Intersections.TOUCH);
      }
      for (Coordinate c : theirs.getCoordinates()) {
        boolean found = ours.stream().anyMatch(p -> p.distance(v(c.x, c.y)) < 0.05);
        assertThat(found).as("%s and %s meet at %s, found %s", a, b, c, ours).isTrue();
      }
      if (theirs.getCoordinates().length != ours.size()) {
        // Grazing: the chords may miss each other by their own error.
        assertThat(ours).as("%s and %s", a, b).hasSize(2);
        assertThat(ours.get(0).distance(ours.get(1))).isLessThan(0.1);
      }
      met += ours.size();
    }
    assertThat(met).isGreaterThan(400);
  }

  @Test
  void touchingCounts() {
    Segment base = Segment.line(v(0, 0), v(10, 0));
    assertThat(Intersections.between(base, Segment.line(v(4, 0), v(4, 5))))
        .containsExactly(v(4, 0));
    assertThat(Intersections.between(base, Segment.line(v(4, 1e-5), v(4, 5)))).isEmpty();
    Segment bow = new Segment(v(2, 3), v(8, 3), 1);
    assertThat(Intersections.between(base, bow)).hasSize(1);
    assertThat(Intersections.between(base, bow).get(0).distance(v(5, 0))).isLessThan(1e-9);
    Segment below = new Segment(v(8, -3), v(2, -3), 1);
    assertThat(Intersections.between(bow, below)).hasSize(1);
  }

  @Test
  void aSharedStretchIsGivenByItsEndsAndMiddle() {
    Segment a = Segment.line(v(0, 0), v(10, 0));
    Segment b = Segment.line(v(14, 0), v(6, 0));
    assertThat(Intersections.between(a, b)).containsExactlyInAnyOrder(v(10, 0), v(6, 0), v(8, 0));
    Segment arc = Segment.arc(v(0, 0), 5, 0, 2);
    Segment same = Segment.arc(v(0, 0), 5, 2, 0);
    List<Vec2> shared = Intersections.between(arc, same);
    assertThat(shared).hasSize(3);
    assertThat(shared.get(2).distance(Vec2.polar(1).times(5))).isLessThan(1e-9);
  }

  @Test
  void outlinesThatDoNotCrossHaveNone() {
    assertThat(Crossings.first(Path.circle(v(3, 4), 5))).isEmpty();
    assertThat(Crossings.first(Path.polygon(v(0, 0), v(9, 0), v(9, 9), v(0, 9)))).isEmpty();
    assertThat(Crossings.first(EllipseArcs.of(300, 20))).isEmpty();
    assertThat(Crossings.first(rounded(100, 60, 20))).isEmpty();
    // The corner radii meet: the lines between are gone, and all joints are smooth.
    assertThat(Crossings.first(rounded(40.0001, 40.0001, 20))).isEmpty();
    assertThat(Crossings.first(Path.polyline(List.of(v(0, 0), v(9, 0), v(9, 9))))).isEmpty();
  }

  private static Path rounded(double l, double w, double r) {
    double x = l / 2 - r;
    double y = w / 2 - r;
    double q = Math.PI / 2;
    return new Path(
        List.of(
            Segment.line(v(-x, -w / 2), v(x, -w / 2)),
            Segment.arc(v(x, -y), r, -q, 0),
            Segment.line(v(l / 2, -y), v(l / 2, y)),
            Segment.arc(v(x, y), r, 0, q),
            Segment.line(v(x, w / 2), v(-x, w / 2)),
            Segment.arc(v(-x, y), r, q, 2 * q),
            Segment.line(v(-l / 2, y), v(-l / 2, -y)),
            Segment.arc(v(-x, -y), r, 2 * q, 3 * q)),
        true);
  }

  @Test
  void theFirstCrossingIsNamedWithItsPlace() {
    Path bow = Path.polygon(v(0, 0), v(10, 10), v(10, 0), v(0, 10));
    Crossing c = Crossings.first(bow).orElseThrow();
    assertThat(c.first()).isZero();
    assertThat(c.second()).isEqualTo(2);
    assertThat(c.at().distance(v(5, 5))).isLessThan(1e-9);
  }

  @Test
  void aCornerOnAnotherSideIsACrossing() {
    Path touching = Path.polygon(v(0, 0), v(10, 0), v(10, 10), v(5, 0), v(0, 10));
    assertThat(Crossings.first(touching).orElseThrow().at()).isEqualTo(v(5, 0));
  }

  @Test
  void aSideThatRunsBackOverItsNeighbourIsACrossing() {
    Path spike = Path.polygon(v(0, 0), v(10, 0), v(4, 0), v(4, 8));
    Crossing c = Crossings.first(spike).orElseThrow();
    assertThat(List.of(c.first(), c.second())).containsExactly(0, 1);
    Path lens =
        new Path(
            List.of(new Segment(v(0, 0), v(8, 0), 0.5), new Segment(v(8, 0), v(0, 0), -0.5)), true);
    assertThat(Crossings.first(lens)).isPresent();
    Path halfMoon =
        new Path(
            List.of(new Segment(v(0, 0), v(8, 0), 0.5), new Segment(v(8, 0), v(0, 0), -0.4)), true);
    assertThat(Crossings.first(halfMoon)).isEmpty();
  }

  @Test
  void anArcThatComesBackOverItsNeighbourIsACrossing() {
    // Nearly a whole circle, which meets the line it started from once more.
    Segment line = Segment.line(v(0, 0), v(10, 0));
    Segment loop = Segment.arc(v(8, 2), Math.sqrt(8), Math.toRadians(-45), Math.toRadians(250));
    Path path = new Path(List.of(line, loop, Segment.line(loop.end(), v(0, 0))), true);
    Crossing c = Crossings.first(path).orElseThrow();
    assertThat(c.first()).isZero();
    assertThat(c.second()).isEqualTo(1);
    assertThat(c.at().distance(v(6, 0))).isLessThan(1e-9);
  }

  /** Outside check: JTS's isSimple on the flattened ring. */
  @Test
  void randomOutlinesCrossWhereAnotherLibraryFindsThemNotSimple() {
    Random r = new Random(7);
    int crossed = 0;
    int cusps = 0;
    for (int i = 0; i < 800; i++) {
      int n = 3 + r.nextInt(8);
      List<Segment> sides = new ArrayList<>();
      Vec2[] p = new Vec2[n];
      for (int k = 0; k < n; k++) {
        double far = 30 + 60 * r.nextDouble();
        p[k] = Vec2.polar(2 * Math.PI * (k + 0.6 * r.nextDouble()) / n).times(far);
      }
      for (int k = 0; k < n; k++) {
        double bulge = r.nextBoolean() ? 0 : (r.nextDouble() - 0.5) * 2;
        sides.add(new Segment(p[k], p[(k + 1) % n], bulge));
      }
      Path path = new Path(sides, true);
      Coordinate[] ring =
          path.flattened(FINE).stream()
              .map(q -> new Coordinate(q.x(), q.y()))
              .toArray(Coordinate[]::new);
      Coordinate[] closed = Arrays.copyOf(ring, ring.length + 1);
      closed[ring.length] = ring[0];
      boolean simple = JTS.createLinearRing(closed).isSimple();
      Optional<Crossing> ours = Crossings.first(path);
      if (ours.isPresent() && simple) {
        // A cusp: the arcs cross right beside their joint, where the chords are too coarse.
        Vec2 at = ours.get().at();
        assertThat(p).as("%s", path).anyMatch(q -> q.distance(at) < 0.5);
        cusps++;
      } else {
        assertThat(ours.isEmpty()).as("%s", path).isEqualTo(simple);
      }
      crossed += simple ? 0 : 1;
    }
    assertThat(crossed).isBetween(150, 700);
    assertThat(cusps).isLessThan(5);
  }

  /** Smooth joints, and curves with hairpins and cusps, must not look like crossings. */
  @Test
  void outlinesOfCurvesCrossWhereAnotherLibraryFindsThemNotSimple() {
    Random r = new Random(77);
    int simple = 0;
    for (int i = 0; i < 300; i++) {
      int n = 4 + r.nextInt(5);
      double tight = 0.1 + 0.9 * r.nextDouble();
      Vec2[] p = new Vec2[n];
      for (int k = 0; k < n; k++) {
        double turn = 2 * Math.PI * (k + 0.5 * r.nextDouble()) / n;
        p[k] = Vec2.polar(turn).times(60 + 120 * r.nextDouble());
      }
      List<Segment> sides = new ArrayList<>();
      for (int k = 0; k < n; k++) {
        Vec2 before = p[(k + n - 1) % n];
        Vec2 to = p[(k + 1) % n];
        Vec2 first = p[k].plus(to.minus(before).times(tight));
        Vec2 second = to.minus(p[(k + 2) % n].minus(p[k]).times(tight));
        sides.addAll(CubicArcs.of(p[k], first, second, to));
      }
      Path path = new Path(sides, true);
      List<Vec2> chords = new ArrayList<>(path.flattened(FINE));
      chords.add(chords.get(0));
      Coordinate[] ring =
          chords.stream().map(q -> new Coordinate(q.x(), q.y())).toArray(Coordinate[]::new);
      boolean theirs = JTS.createLinearRing(ring).isSimple();
      assertThat(Crossings.first(path).isEmpty()).as("outline %d", i).isEqualTo(theirs);
      simple += theirs ? 1 : 0;
    }
    assertThat(simple).isBetween(50, 290);
  }

  @Test
  void aPieceTooShortToTellFromAPointIsNoCrossing() {
    Path path = Path.polygon(v(0, 0), v(50, 0), v(50, 1e-6), v(50 + 5e-7, 2e-6), v(50, 40));
    assertThat(Crossings.first(path)).isEmpty();
    Path crossed =
        Path.polygon(v(0, 0), v(50, 0), v(50, 1e-6), v(50, 40), v(20, 40), v(20, -9), v(0, -9));
    Crossing c = Crossings.first(crossed).orElseThrow();
    assertThat(c.at().distance(v(20, 0))).isLessThan(1e-9);
  }

  @Test
  void twoPathsMeetOrDoNot() {
    Path square = Path.polygon(v(0, 0), v(20, 0), v(20, 20), v(0, 20));
    assertThat(Crossings.between(square, Path.circle(v(10, 10), 9.99))).isEmpty();
    Crossing c = Crossings.between(square, Path.circle(v(20, 10), 3)).orElseThrow();
    assertThat(c.first()).isEqualTo(1);
    assertThat(c.at().x()).isCloseTo(20, within(1e-9));
    assertThat(Crossings.between(square, square)).isPresent();
  }

  @Test
  void manySegmentsCloseTogetherDoNotCross() {
    List<Vec2> comb = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      comb.add(v(i, 0));
      comb.add(v(i + 0.5, 500));
    }
    comb.add(v(1000, -5));
    comb.add(v(0, -5));
    // Upright and aslant: aslant, the boxes of all long segments overlap.
    Path path = Path.polygon(comb);
    Path slant = path.rotated(Math.PI / 4);
    assertThat(Crossings.first(path)).isEmpty();
    assertThat(Crossings.first(slant)).isEmpty();
  }
}
