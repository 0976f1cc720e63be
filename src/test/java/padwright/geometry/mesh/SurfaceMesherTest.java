package padwright.geometry.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.CGAlgorithmsDD;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;

class SurfaceMesherTest {
  private static final List<Vec2> ELL =
      List.of(
          new Vec2(0, 0),
          new Vec2(500, 0),
          new Vec2(500, 200),
          new Vec2(210, 210),
          new Vec2(200, 500),
          new Vec2(0, 500));

  /** Two wide ends and a neck of 2 mm, narrower than any edge. */
  private static final List<Vec2> NECK =
      List.of(
          new Vec2(0, 0),
          new Vec2(250, 99),
          new Vec2(500, 0),
          new Vec2(500, 200),
          new Vec2(250, 101),
          new Vec2(0, 200));

  private static List<Vec2> rectangle(double length, double width) {
    return List.of(
        new Vec2(0, 0), new Vec2(length, 0), new Vec2(length, width), new Vec2(0, width));
  }

  /** A star-shaped outline with random corners. */
  private static List<Vec2> random(long seed) {
    Random random = new Random(seed);
    int n = 5 + random.nextInt(40);
    List<Vec2> outline = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / n;
      outline.add(Vec2.polar(angle).times(60 + 240 * random.nextDouble()));
    }
    return outline;
  }

  @Test
  void theMeshCoversTheOutlineAndNothingElse() {
    for (long seed = 0; seed < 60; seed++) {
      List<Vec2> outline = random(seed);
      TriangleMesh mesh = SurfaceMesher.mesh(outline, 14, (x, y) -> 5);
      assertThat(mesh.isDisc()).as("seed %d", seed).isTrue();
      double area = Polygons.signedArea(outline);
      assertThat(mesh.area()).as("seed %d", seed).isCloseTo(area, within(1e-9 * area));
      // All face up, and none over another, because the areas add up.
      for (int t = 0; t < mesh.triangleCount(); t++) {
        assertThat(planArea(mesh, t)).isPositive();
      }
    }
  }

  private static double planArea(TriangleMesh mesh, int t) {
    int[] c = mesh.triangle(t);
    return Polygons.signedArea(List.of(plan(mesh, c[0]), plan(mesh, c[1]), plan(mesh, c[2])));
  }

  private static Vec2 plan(TriangleMesh mesh, int v) {
    Vec3 p = mesh.vertex(v);
    return new Vec2(p.x(), p.y());
  }

  @Test
  void itsBoundaryIsTheOutlineWithTheCornersKept() {
    for (List<Vec2> outline : List.of(ELL, NECK, rectangle(600, 60), random(3))) {
      TriangleMesh mesh = SurfaceMesher.mesh(outline, 16, (x, y) -> x * y);
      List<Vec2> boundary = new ArrayList<>();
      for (int h : mesh.boundaryLoops().get(0)) {
        boundary.add(plan(mesh, mesh.from(h)));
        assertThat(plan(mesh, mesh.from(h)).distance(plan(mesh, mesh.to(h))))
            .isLessThanOrEqualTo(16 + 1e-9);
      }
      assertThat(boundary).containsAll(outline);
      assertThat(Polygons.signedArea(boundary))
          .isCloseTo(Polygons.signedArea(outline), within(1e-8));
    }
  }

  @Test
  void everyVertexLiesOnTheSurface() {
    HeightField dome = (x, y) -> 40 - x * x / 9000 + y / 17;
    TriangleMesh mesh = SurfaceMesher.mesh(ELL, 20, dome);
    for (int v = 0; v < mesh.vertexCount(); v++) {
      Vec3 p = mesh.vertex(v);
      assertThat(p.z()).isEqualTo(dome.at(p.x(), p.y()));
    }
  }

  @Test
  void insideItIsARegularHexagonalGrid() {
    TriangleMesh mesh = SurfaceMesher.mesh(rectangle(400, 300), 10, (x, y) -> 0);
    int equilateral = 0;
    double narrowest = Math.PI;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      double least = Math.PI;
      for (int k = 0; k < 3; k++) {
        least = Math.min(least, mesh.angle(3 * t + k));
      }
      narrowest = Math.min(narrowest, least);
      equilateral += least > Math.PI / 3 - 1e-6 ? 1 : 0;
    }
    assertThat(equilateral).isGreaterThan((int) (0.85 * mesh.triangleCount()));
    // Ruppert's bound for good meshes is 20.7 degrees.
    assertThat(Math.toDegrees(narrowest)).isGreaterThan(20.7);
    // Vertices of a hexagonal grid of 10: one on every 86.6 mm2, less at the edge.
    assertThat(mesh.vertexCount()).isBetween(1300, 1500);
  }

  @Test
  void eitherWayRoundGivesTheSameTrianglesFaceUp() {
    List<Vec2> back = new ArrayList<>(ELL);
    Collections.reverse(back);
    TriangleMesh forth = SurfaceMesher.mesh(ELL, 25, (x, y) -> 0);
    TriangleMesh mesh = SurfaceMesher.mesh(back, 25, (x, y) -> 0);
    assertThat(mesh.triangleCount()).isEqualTo(forth.triangleCount());
    assertThat(planArea(mesh, 0)).isPositive();
    assertThat(mesh.area()).isCloseTo(forth.area(), within(1e-6));
  }

  @Test
  void theSameInputGivesTheSameMesh() {
    TriangleMesh a = SurfaceMesher.mesh(ELL, 25, (x, y) -> x);
    TriangleMesh b = SurfaceMesher.mesh(ELL, 25, (x, y) -> x);
    assertThat(a.corners()).isEqualTo(b.corners());
    assertThat(a.xyz()).isEqualTo(b.xyz());
  }

  @Test
  void theTriangulationOfScatteredPointsIsThatOfJts() {
    Random random = new Random(20261125);
    for (int run = 0; run < 20; run++) {
      int n = 4 + random.nextInt(200);
      double[] x = random.doubles(n, 0, 100).toArray();
      double[] y = random.doubles(n, 0, 100).toArray();
      // A frame, so that both have the same hull to fill.
      double[] fx = {-200, 300, 300, -200};
      double[] fy = {-210, -200, 310, 300};
      x = concat(fx, x);
      y = concat(fy, y);
      Triangulation ours = new Triangulation(x, y);
      for (int i = 0; i < 4; i++) {
        assertThat(ours.force(i, (i + 1) % 4)).isTrue();
      }
      assertThat(triangles(ours.within(0, 1), x, y)).isEqualTo(byJts(x, y));
    }
  }

  private static double[] concat(double[] a, double[] b) {
    double[] both = java.util.Arrays.copyOf(a, a.length + b.length);
    System.arraycopy(b, 0, both, a.length, b.length);
    return both;
  }

  private static Set<Set<Vec2>> triangles(int[] corners, double[] x, double[] y) {
    Set<Set<Vec2>> set = new HashSet<>();
    for (int t = 0; t < corners.length / 3; t++) {
      Set<Vec2> triangle = new HashSet<>();
      for (int k = 0; k < 3; k++) {
        triangle.add(new Vec2(x[corners[3 * t + k]], y[corners[3 * t + k]]));
      }
      set.add(triangle);
    }
    return set;
  }

  private static Set<Set<Vec2>> byJts(double[] x, double[] y) {
    List<Coordinate> sites = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      sites.add(new Coordinate(x[i], y[i]));
    }
    DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
    builder.setSites(sites);
    Geometry all = builder.getTriangles(new GeometryFactory());
    Set<Set<Vec2>> set = new HashSet<>();
    for (int i = 0; i < all.getNumGeometries(); i++) {
      Set<Vec2> triangle = new HashSet<>();
      for (Coordinate c : ((Polygon) all.getGeometryN(i)).getCoordinates()) {
        triangle.add(new Vec2(c.x, c.y));
      }
      set.add(triangle);
    }
    return set;
  }

  @Test
  void sidesOfALineAreThoseOfJtsAlsoWhereDoublesCannotTell() {
    Random random = new Random(8);
    Set<Integer> met = new TreeSet<>();
    for (int i = 0; i < 20_000; i++) {
      double ax = random.nextInt(100) / 7.0;
      double ay = random.nextInt(100) / 7.0;
      double bx = ax + random.nextInt(50) / 3.0;
      double by = ay + random.nextInt(50) / 3.0;
      double k = random.nextInt(20) / 4.0;
      double cx = ax + k * (bx - ax);
      double cy = ay + k * (by - ay) + (random.nextInt(3) - 1) * Math.ulp(by);
      int side = Predicates.orientation(ax, ay, bx, by, cx, cy);
      assertThat(side).isEqualTo(CGAlgorithmsDD.orientationIndex(ax, ay, bx, by, cx, cy));
      met.add(side);
    }
    assertThat(met).containsExactly(-1, 0, 1);
  }

  @Test
  void fourPointsOfACircleAreOnItAndTheNextDoubleIsNot() {
    // The corners of a square lie on one circle.
    assertThat(Predicates.inCircle(0, 0, 1, 0, 1, 1, 0, 1)).isZero();
    assertThat(Predicates.inCircle(0, 0, 1, 0, 1, 1, 0, Math.nextDown(1.0))).isEqualTo(1);
    assertThat(Predicates.inCircle(0, 0, 1, 0, 1, 1, 0, Math.nextUp(1.0))).isEqualTo(-1);
  }

  @Test
  void aForcedEdgeTurnsAllThatCrossIt() {
    // A row of 30 points close above and below a long edge: 59 edges cross it at first.
    int n = 30;
    double[] x = new double[2 * n + 2];
    double[] y = new double[2 * n + 2];
    x[0] = -5;
    x[1] = 10 * n + 5;
    for (int i = 0; i < n; i++) {
      x[2 + 2 * i] = 10 * i;
      y[2 + 2 * i] = 1 + 0.1 * (i % 3);
      x[3 + 2 * i] = 10 * i + 5;
      y[3 + 2 * i] = -1 - 0.1 * (i % 4);
    }
    Triangulation triangulation = new Triangulation(x, y);
    assertThat(triangulation.force(0, 1)).isTrue();
    // Points on both sides can no longer be joined across it.
    assertThat(triangulation.force(30, 31)).isFalse();
  }

  @Test
  void anEdgeIsForcedPastPointsJustInsideIt() {
    // Such points stand in the hull at first, joined to the far points that hold all others, and
    // the edge crosses those joins.
    for (int seed = 0; seed < 50; seed++) {
      Random random = new Random(seed);
      double turn = 2 * Math.PI * random.nextDouble();
      double rise = Math.pow(10, -1 - 3 * random.nextDouble());
      List<Vec2> points = new ArrayList<>(List.of(new Vec2(0, 0), new Vec2(100, 0)));
      for (int i = 0; i < 20; i++) {
        double x = 100 * random.nextDouble();
        double near = rise * x * (100 - x) / 2500 * (0.5 + random.nextDouble());
        points.add(new Vec2(x, i < 10 ? near : 10 + 50 * random.nextDouble()));
      }
      double[] x = points.stream().mapToDouble(p -> p.rotated(turn).x()).toArray();
      double[] y = points.stream().mapToDouble(p -> p.rotated(turn).y()).toArray();
      assertThat(new Triangulation(x, y).force(0, 1)).as("seed %d", seed).isTrue();
    }
  }

  @Test
  void whatCannotBeMeshedIsRefused() {
    refused("the outline has 2 different corners", List.of(Vec2.ZERO, new Vec2(9, 0)), 5);
    refused(
        "the outline crosses itself; draw it without a crossing",
        List.of(Vec2.ZERO, new Vec2(100, 100), new Vec2(100, 0), new Vec2(0, 90)),
        5);
    refused(
        "corner 1 of the outline is at (NaN, 0.0)",
        List.of(Vec2.ZERO, new Vec2(Double.NaN, 0), new Vec2(100, 100)),
        5);
    refused("the edge length is 0.0 mm; it must be over 0", ELL, 0);
    refused("the edge length is NaN mm", ELL, Double.NaN);
    refused("would make over 200000 vertices; ask for a longer one", ELL, 0.01);
    refused("would make over 200000 vertices", rectangle(1e6, 1e-3), 1e-3);
    refused(
        "leave a gap there",
        List.of(Vec2.ZERO, new Vec2(100, 0), new Vec2(100, 100), new Vec2(50, 0), new Vec2(0, 100)),
        10);
    refused(
        "leave a gap there",
        List.of(
            Vec2.ZERO,
            new Vec2(50, 50),
            new Vec2(100, 0),
            new Vec2(100, 100),
            new Vec2(50, 50),
            new Vec2(0, 100)),
        10);
    assertThatThrownBy(() -> SurfaceMesher.mesh(ELL, 50, (x, y) -> Math.log(x - 100)))
        .isInstanceOf(MeshRefused.class)
        .hasMessageContaining("z is ");
  }

  private static void refused(String message, List<Vec2> outline, double edge) {
    assertThatThrownBy(() -> SurfaceMesher.mesh(outline, edge, (x, y) -> 0))
        .isInstanceOf(MeshRefused.class)
        .hasMessageContaining(message);
  }
}
