package padwright.dome;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;
import padwright.geometry.mesh.Flattening;
import padwright.geometry.mesh.Strain;
import padwright.geometry.mesh.TriangleMesh;

/**
 * The largest strains of a covering laid on a face, each the mean over a patch of the face. At the
 * tip of a hip the strain of a covering without stiffness grows the closer one looks; a woven or
 * backed covering evens out what is smaller than a finger's breadth, and a mean over that breadth
 * does not depend on the mesh (own rule).
 *
 * @param mostStretched how much longer than it is cut, with its sign
 * @param mostEased negative
 */
record Patches(Patch mostStretched, Patch mostEased) {
  /**
   * Radius of a patch in plan, mm; its weight falls from the middle to there: a finger's breadth.
   */
  static final double RADIUS = 20;

  /** A strain at a place of the plan. */
  record Patch(double strain, Vec2 at) {}

  static Patches of(Flattening flat) {
    TriangleMesh mesh = flat.surface();
    Strain s = flat.strain();
    int n = s.triangleCount();
    double[] x = new double[n];
    double[] y = new double[n];
    double[] area = new double[n];
    double[] pulled = new double[n];
    double[] eased = new double[n];
    for (int t = 0; t < n; t++) {
      for (int v : mesh.triangle(t)) {
        Vec3 p = mesh.vertex(v);
        x[t] += p.x() / 3;
        y[t] += p.y() / 3;
      }
      area[t] = mesh.area(t);
      pulled[t] = Math.max(0, 1 / s.least(t) - 1);
      eased[t] = Math.min(0, 1 / s.most(t) - 1);
    }
    // Triangles by the square of the plan that they lie in, so that only near ones are looked at.
    Map<Long, List<Integer>> squares = new HashMap<>();
    for (int t = 0; t < n; t++) {
      squares.computeIfAbsent(square(x[t], y[t], 0, 0), k -> new ArrayList<>()).add(t);
    }
    double stretch = 0;
    double ease = 0;
    int stretchAt = 0;
    int easeAt = 0;
    for (int t = 0; t < n; t++) {
      double sum = 0;
      double up = 0;
      double down = 0;
      for (int i = -1; i <= 1; i++) {
        for (int j = -1; j <= 1; j++) {
          for (int k : squares.getOrDefault(square(x[t], y[t], i, j), List.of())) {
            double dx = x[k] - x[t];
            double dy = y[k] - y[t];
            double away = dx * dx + dy * dy;
            if (away < RADIUS * RADIUS) {
              double weight = area[k] * (1 - Math.sqrt(away) / RADIUS);
              sum += weight;
              up += weight * pulled[k];
              down += weight * eased[k];
            }
          }
        }
      }
      if (up / sum > stretch) {
        stretch = up / sum;
        stretchAt = t;
      }
      if (down / sum < ease) {
        ease = down / sum;
        easeAt = t;
      }
    }
    return new Patches(
        new Patch(stretch, new Vec2(x[stretchAt], y[stretchAt])),
        new Patch(ease, new Vec2(x[easeAt], y[easeAt])));
  }

  private static long square(double x, double y, int i, int j) {
    long column = (long) Math.floor(x / RADIUS) + i;
    long row = (long) Math.floor(y / RADIUS) + j;
    return column * 0x100000L + row;
  }
}
