package padwright.desk.solid;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a painter wants to know of a mesh: its edges, its arrises, and normals that look smooth. */
final class Facets {
  /** Faces that meet at less than this look like one bent face; own choice, as is the next. */
  private static final double SMOOTH = Math.cos(Math.toRadians(38));

  /** Faces that meet at more than this have an arris between them. */
  private static final double ARRIS = Math.cos(Math.toRadians(32));

  /** A rise of less is level, mm. */
  private static final double RISE = 1e-6;

  private final double[] points;
  private final int[] triangles;
  private final double[] flat;

  Facets(double[] points, int[] triangles) {
    this.points = points;
    this.triangles = triangles;
    flat = new double[triangles.length];
    for (int t = 0; t < triangles.length; t += 3) {
      double[] u = way(triangles[t], triangles[t + 1]);
      double[] v = way(triangles[t], triangles[t + 2]);
      unit(
          flat, t, u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]);
    }
  }

  private double[] way(int from, int to) {
    return new double[] {
      points[3 * to] - points[3 * from],
      points[3 * to + 1] - points[3 * from + 1],
      points[3 * to + 2] - points[3 * from + 2]
    };
  }

  private static void unit(double[] into, int at, double x, double y, double z) {
    double length = Math.sqrt(x * x + y * y + z * z);
    if (length > 0) {
      into[at] = x / length;
      into[at + 1] = y / length;
      into[at + 2] = z / length;
    }
  }

  /** See {@link Body#edges}. */
  int[] edges() {
    Map<Long, Integer> found = new HashMap<>();
    int[] edges = new int[4 * triangles.length];
    int count = 0;
    for (int h = 0; h < triangles.length; h++) {
      int a = triangles[h];
      int b = triangles[h % 3 == 2 ? h - 2 : h + 1];
      Integer twin = found.remove(key(b, a));
      if (twin != null) {
        edges[twin + 3] = h / 3;
      } else {
        found.put(key(a, b), count);
        edges[count] = a;
        edges[count + 1] = b;
        edges[count + 2] = h / 3;
        edges[count + 3] = -1;
        count += 4;
      }
    }
    return java.util.Arrays.copyOf(edges, count);
  }

  private static long key(int a, int b) {
    return ((long) a << 32) | b;
  }

  private double cosine(int t, int u) {
    return flat[3 * t] * flat[3 * u]
        + flat[3 * t + 1] * flat[3 * u + 1]
        + flat[3 * t + 2] * flat[3 * u + 2];
  }

  boolean[] arrises(int[] edges, List<int[]> marked) {
    Set<Long> along = new HashSet<>();
    marked.forEach(m -> along.add(key(Math.min(m[0], m[1]), Math.max(m[0], m[1]))));
    boolean[] arrises = new boolean[edges.length / 4];
    for (int e = 0; e < arrises.length; e++) {
      int a = edges[4 * e];
      int b = edges[4 * e + 1];
      int right = edges[4 * e + 3];
      arrises[e] =
          right < 0
              || cosine(edges[4 * e + 2], right) < ARRIS
              || along.contains(key(Math.min(a, b), Math.max(a, b)));
    }
    return arrises;
  }

  /** Whether the faces beside an edge look at each other: one rises over the plane of the other. */
  boolean[] hollows(int[] edges) {
    boolean[] hollows = new boolean[edges.length / 4];
    for (int e = 0; e < hollows.length; e++) {
      int left = edges[4 * e + 2];
      int right = edges[4 * e + 3];
      if (right < 0) {
        continue;
      }
      int a = edges[4 * e];
      int b = edges[4 * e + 1];
      for (int h = 3 * right; h < 3 * right + 3; h++) {
        if (triangles[h] != a && triangles[h] != b) {
          double[] up = way(a, triangles[h]);
          double rise = 0;
          for (int i = 0; i < 3; i++) {
            rise += up[i] * flat[3 * left + i];
          }
          hollows[e] = rise > RISE;
        }
      }
    }
    return hollows;
  }

  /** The mean of the faces about each corner that look like one, each by its angle there. */
  float[] normals() {
    int[] first = new int[points.length / 3 + 1];
    for (int p : triangles) {
      first[p + 1]++;
    }
    for (int p = 1; p < first.length; p++) {
      first[p] += first[p - 1];
    }
    int[] next = first.clone();
    int[] about = new int[triangles.length];
    double[] angles = new double[triangles.length];
    for (int h = 0; h < triangles.length; h++) {
      about[next[triangles[h]]++] = h;
      angles[h] = angle(h);
    }
    float[] normals = new float[3 * triangles.length];
    double[] unit = new double[3];
    for (int h = 0; h < triangles.length; h++) {
      double x = 0;
      double y = 0;
      double z = 0;
      for (int i = first[triangles[h]]; i < first[triangles[h] + 1]; i++) {
        int t = about[i] / 3;
        if (cosine(t, h / 3) >= SMOOTH) {
          x += angles[about[i]] * flat[3 * t];
          y += angles[about[i]] * flat[3 * t + 1];
          z += angles[about[i]] * flat[3 * t + 2];
        }
      }
      unit(unit, 0, x, y, z);
      for (int i = 0; i < 3; i++) {
        normals[3 * h + i] = (float) unit[i];
      }
    }
    return normals;
  }

  private double angle(int h) {
    int t = h - h % 3;
    double[] u = way(triangles[h], triangles[t + (h + 1) % 3]);
    double[] v = way(triangles[h], triangles[t + (h + 2) % 3]);
    double dot = 0;
    double uu = 0;
    double vv = 0;
    for (int i = 0; i < 3; i++) {
      dot += u[i] * v[i];
      uu += u[i] * u[i];
      vv += v[i] * v[i];
    }
    double cosine = dot / Math.sqrt(Math.max(1e-300, uu * vv));
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }
}
