package padwright.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import padwright.geometry.Vec3;

/** Meshes that the tests and the benchmark share, made from closed forms. */
public final class Meshes {
  private Meshes() {}

  /** A mesh from its vertices, three numbers each, and its triangles, three vertices each. */
  static TriangleMesh of(double[] xyz, int... corners) {
    return TriangleMesh.owning(xyz, corners);
  }

  /** A grid of nu by nv cells over the unit square, each cell cut by its alternate diagonal. */
  public static TriangleMesh grid(int nu, int nv, BiFunction<Double, Double, Vec3> at) {
    List<Vec3> vertices = new ArrayList<>();
    for (int j = 0; j <= nv; j++) {
      for (int i = 0; i <= nu; i++) {
        vertices.add(at.apply((double) i / nu, (double) j / nv));
      }
    }
    List<int[]> triangles = new ArrayList<>();
    for (int j = 0; j < nv; j++) {
      for (int i = 0; i < nu; i++) {
        int a = j * (nu + 1) + i;
        int b = a + 1;
        int c = b + nu + 1;
        int d = a + nu + 1;
        if ((i + j) % 2 == 0) {
          triangles.add(new int[] {a, b, c});
          triangles.add(new int[] {a, c, d});
        } else {
          triangles.add(new int[] {a, b, d});
          triangles.add(new int[] {b, c, d});
        }
      }
    }
    return TriangleMesh.of(vertices, triangles);
  }

  /** A disc of rings, 6 more vertices on each; {@code at} takes radius 0 to 1 and angle. */
  public static TriangleMesh disc(int rings, BiFunction<Double, Double, Vec3> at) {
    List<Vec3> vertices = new ArrayList<>();
    vertices.add(at.apply(0.0, 0.0));
    for (int r = 1; r <= rings; r++) {
      for (int k = 0; k < 6 * r; k++) {
        vertices.add(at.apply((double) r / rings, 2 * Math.PI * k / (6 * r)));
      }
    }
    List<int[]> triangles = new ArrayList<>();
    for (int r = 1; r <= rings; r++) {
      for (int s = 0; s < 6; s++) {
        for (int k = 0; k < r; k++) {
          int a = ring(r, s * r + k);
          int b = ring(r, s * r + k + 1);
          int c = ring(r - 1, s * (r - 1) + k);
          triangles.add(new int[] {a, b, c});
          if (k < r - 1) {
            triangles.add(new int[] {b, ring(r - 1, s * (r - 1) + k + 1), c});
          }
        }
      }
    }
    return TriangleMesh.of(vertices, triangles);
  }

  private static int ring(int r, int k) {
    return r == 0 ? 0 : 1 + 3 * r * (r - 1) + k % (6 * r);
  }

  /** A spherical cap out to an angle from its pole, as a disc of rings. */
  public static TriangleMesh cap(int rings, double radius, double out) {
    return disc(
        rings,
        (r, a) ->
            new Vec3(
                radius * Math.sin(out * r) * Math.cos(a),
                radius * Math.sin(out * r) * Math.sin(a),
                radius * Math.cos(out * r)));
  }
}
