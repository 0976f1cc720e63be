package padwright.geometry.mesh;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;

/** Little meshes that go wrong easily, and a few large ones, each with what topology says of it. */
final class Zoo {
  /** Euler characteristic and number of boundaries, known from the shape. */
  record Animal(TriangleMesh mesh, int characteristic, int boundaries) {
    boolean disc() {
      return characteristic == 1 && boundaries == 1 && mesh.components() == 1;
    }
  }

  private Zoo() {}

  static Map<String, Animal> all() {
    Map<String, Animal> zoo = new LinkedHashMap<>();
    zoo.put("one triangle", disc(Meshes.of(new double[] {0, 0, 0, 30, 0, 5, 10, 20, 7}, 0, 1, 2)));
    zoo.put(
        "two triangles, folded",
        disc(Meshes.of(new double[] {0, 0, 0, 30, 0, 0, 10, 20, 7, 9, -20, 30}, 0, 1, 2, 1, 0, 3)));
    zoo.put("a strip", disc(Meshes.grid(40, 1, (u, v) -> new Vec3(100 * u, v, Math.sin(9 * u)))));
    zoo.put(
        "slivers a thousandth high",
        disc(Meshes.grid(8, 6, (u, v) -> new Vec3(80 * u, 0.06 * v, 0.01 * u * v))));
    zoo.put(
        "slivers a hundred-thousandth high, twisted",
        disc(Meshes.grid(5, 4, (u, v) -> new Vec3(50 * u, 4e-4 * v, 1e-4 * u * v))));
    zoo.put(
        "a steep pyramid",
        disc(
            Meshes.of(
                new double[] {10, 0, 0, 0, 10, 0, -10, 0, 0, 0, -10, 0, 0, 0, 200},
                0,
                1,
                4,
                1,
                2,
                4,
                2,
                3,
                4,
                3,
                0,
                4)));
    zoo.put("a pointed star", disc(star()));
    zoo.put("a saddle", disc(Meshes.grid(12, 12, (u, v) -> saddle(200 * u - 100, 200 * v - 100))));
    zoo.put("a cap", disc(Meshes.cap(9, 300, Math.PI / 6)));
    zoo.put("nearly a sphere", disc(Meshes.cap(16, 300, Math.toRadians(160))));
    zoo.put("a thousandth of a millimetre", disc(Meshes.cap(5, 0.001, 1)));
    zoo.put("ten metres away", disc(Meshes.disc(4, Zoo::farAway)));
    zoo.put("a height field on an L", disc(onAnL()));
    zoo.put(
        "a ring",
        new Animal(ring(24, 4, (u, v) -> polar(100 + 50 * v, 2 * Math.PI * u, 9 * v)), 0, 2));
    zoo.put(
        "a sleeve", new Animal(ring(24, 4, (u, v) -> polar(100, 2 * Math.PI * u, 90 * v)), 0, 2));
    zoo.put("a tetrahedron", new Animal(tetrahedron(), 2, 0));
    zoo.put("two tetrahedra apart", new Animal(twoTetrahedra(), 4, 0));
    zoo.put("a torus", new Animal(torus(), 0, 0));
    return zoo;
  }

  static Map<String, Animal> discs() {
    Map<String, Animal> discs = all();
    discs.values().removeIf(a -> !a.disc());
    return discs;
  }

  private static Animal disc(TriangleMesh mesh) {
    return new Animal(mesh, 1, 1);
  }

  private static Vec3 saddle(double x, double y) {
    return new Vec3(x, y, (x * x - y * y) / 150);
  }

  private static Vec3 farAway(double r, double a) {
    return new Vec3(10_000 + r * Math.cos(a), 10_000 + r * Math.sin(a), r * r / 3);
  }

  private static Vec3 polar(double r, double angle, double z) {
    return new Vec3(r * Math.cos(angle), r * Math.sin(angle), z);
  }

  /** Ten triangles about one vertex, every other corner far out. */
  private static TriangleMesh star() {
    List<Vec3> vertices = new ArrayList<>(List.of(new Vec3(0, 0, 0)));
    List<int[]> triangles = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      vertices.add(polar(i % 2 == 0 ? 100 : 5, Math.PI * i / 5, i % 2 == 0 ? 20 : 0));
      triangles.add(new int[] {0, 1 + i, 1 + (i + 1) % 10});
    }
    return TriangleMesh.of(vertices, triangles);
  }

  private static TriangleMesh onAnL() {
    List<Vec2> outline =
        List.of(
            new Vec2(0, 0),
            new Vec2(500, 0),
            new Vec2(500, 200),
            new Vec2(210, 210),
            new Vec2(200, 500),
            new Vec2(0, 500));
    return SurfaceMesher.mesh(
        outline, 25, (x, y) -> 30 * Math.exp(-(Math.pow(x - 100, 2) + Math.pow(y - 100, 2)) / 8e3));
  }

  /** A grid closed in its first direction. */
  static TriangleMesh ring(
      int round, int along, java.util.function.BiFunction<Double, Double, Vec3> at) {
    List<Vec3> vertices = new ArrayList<>();
    List<int[]> triangles = new ArrayList<>();
    for (int j = 0; j <= along; j++) {
      for (int i = 0; i < round; i++) {
        vertices.add(at.apply((double) i / round, (double) j / along));
        if (j < along) {
          int a = j * round + i;
          int b = j * round + (i + 1) % round;
          triangles.add(new int[] {a, b, b + round});
          triangles.add(new int[] {a, b + round, a + round});
        }
      }
    }
    return TriangleMesh.of(vertices, triangles);
  }

  static TriangleMesh tetrahedron() {
    return Meshes.of(
        new double[] {0, 0, 0, 9, 0, 0, 0, 9, 0, 0, 0, 9}, 0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3);
  }

  private static TriangleMesh twoTetrahedra() {
    double[] xyz = new double[24];
    int[] corners = new int[24];
    TriangleMesh one = tetrahedron();
    for (int i = 0; i < 12; i++) {
      xyz[i] = one.xyz()[i];
      xyz[12 + i] = one.xyz()[i] + 50;
      corners[i] = one.corners()[i];
      corners[12 + i] = one.corners()[i] + 4;
    }
    return TriangleMesh.owning(xyz, corners);
  }

  private static TriangleMesh torus() {
    int n = 12;
    List<Vec3> vertices = new ArrayList<>();
    List<int[]> triangles = new ArrayList<>();
    for (int j = 0; j < n; j++) {
      for (int i = 0; i < n; i++) {
        double tube = 2 * Math.PI * j / n;
        vertices.add(polar(100 + 30 * Math.cos(tube), 2 * Math.PI * i / n, 30 * Math.sin(tube)));
        int a = j * n + i;
        int b = j * n + (i + 1) % n;
        int c = (j + 1) % n * n + (i + 1) % n;
        int d = (j + 1) % n * n + i;
        triangles.add(new int[] {a, b, c});
        triangles.add(new int[] {a, c, d});
      }
    }
    return TriangleMesh.of(vertices, triangles);
  }
}
