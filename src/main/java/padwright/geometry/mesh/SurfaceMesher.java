package padwright.geometry.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;

/**
 * Meshes the surface over the inside of a closed outline: the outline's edges are divided evenly, a
 * regular hexagonal grid fills the inside up to a little short of it, and the points are joined by
 * the Delaunay triangulation that keeps the outline. The grid is centred on the outline's bounding
 * box. In plan the triangles are as even as can be; over a steep place they are stretched by its
 * slope. The same input always gives the same mesh.
 */
public final class SurfaceMesher {
  /**
   * Inner points stay this part of an edge length away from the outline. Over a half, a divided
   * edge of the outline has no inner point in the circle on it, so the triangulation keeps it by
   * itself.
   */
  private static final double CLEARANCE = 0.55;

  /** Most vertices made, so that a slip in the edge length does not fill the memory. */
  public static final int MOST_VERTICES = 200_000;

  /** Corners of the outline nearer than this, mm, are one point: far below what can be cut. */
  private static final double SAME = 1e-6;

  /** A length this little over a whole number of edges, as rounding leaves it, is that number. */
  private static final double ROUNDED = 1e-9;

  /** Places of the grid that are looked at for each vertex that may be made. */
  private static final int MOST_MISSES = 64;

  private SurfaceMesher() {}

  /**
   * A mesh whose first vertices are the outline's, anticlockwise from its first corner; its
   * triangles run anticlockwise seen from above.
   *
   * @param outline corners of a closed polygon without crossings, the first not repeated, either
   *     way round; mm
   * @param edge edge length, mm
   * @throws MeshRefused where the outline has under three corners, crosses or touches itself, where
   *     the edge length is not positive or would give too many vertices, or a height is no number
   */
  public static TriangleMesh mesh(List<Vec2> outline, double edge, HeightField height) {
    return mesh(outline, edge, height, List.of());
  }

  /**
   * The same with edges along given lines, such as creases; the grid keeps clear of their points as
   * of the outline. Points of a line nearer than 1e-6 mm to another's, or to a vertex of the
   * outline, are shared. An edge that would cross one made before is left out.
   *
   * @param lines points inside the outline, each line no further apart than it is to have edges; a
   *     closed line repeats its first point
   */
  public static TriangleMesh mesh(
      List<Vec2> outline, double edge, HeightField height, List<List<Vec2>> lines) {
    checkEdge(outline, edge);
    List<Vec2> corners = anticlockwise(outline);
    List<Vec2> points = divided(corners, edge);
    int boundary = points.size();
    List<int[]> kept = new ArrayList<>();
    for (List<Vec2> line : lines) {
      int[] vertices = line.stream().mapToInt(p -> vertex(points, p)).toArray();
      for (int i = 0; i + 1 < vertices.length; i++) {
        kept.add(new int[] {vertices[i], vertices[i + 1]});
      }
    }
    fill(points, corners, edge, List.copyOf(points.subList(boundary, points.size())));
    double[] x = points.stream().mapToDouble(Vec2::x).toArray();
    double[] y = points.stream().mapToDouble(Vec2::y).toArray();
    Triangulation triangulation = new Triangulation(x, y);
    for (int i = 0; i < boundary; i++) {
      if (!triangulation.force(i, (i + 1) % boundary)) {
        throw new MeshRefused(
            "the outline touches itself near " + at(points.get(i)),
            "leave a gap there, or cut it in two");
      }
    }
    for (int[] k : kept) {
      if (k[0] != k[1]) {
        triangulation.keep(k[0], k[1]);
      }
    }
    int[] triangles = triangulation.within(0, 1);
    double[] xyz = new double[3 * x.length];
    for (int v = 0; v < x.length; v++) {
      xyz[3 * v] = x[v];
      xyz[3 * v + 1] = y[v];
      xyz[3 * v + 2] = height.at(x[v], y[v]);
    }
    return TriangleMesh.owning(xyz, triangles);
  }

  private static void checkEdge(List<Vec2> outline, double edge) {
    if (!(edge > 0 && edge <= TriangleMesh.FARTHEST)) {
      throw new MeshRefused("the edge length is " + edge + " mm", "it must be over 0");
    }
    for (int i = 0; i < outline.size(); i++) {
      Vec2 p = outline.get(i);
      if (!(Math.abs(p.x()) <= TriangleMesh.FARTHEST && Math.abs(p.y()) <= TriangleMesh.FARTHEST)) {
        throw new MeshRefused(
            "corner " + i + " of the outline is at " + at(p),
            "a coordinate is a number of mm within " + TriangleMesh.FARTHEST + " of the origin");
      }
    }
  }

  private static String at(Vec2 p) {
    return "(" + p.x() + ", " + p.y() + ")";
  }

  private static List<Vec2> anticlockwise(List<Vec2> outline) {
    List<Vec2> corners = new ArrayList<>();
    for (Vec2 p : outline) {
      if (corners.isEmpty() || corners.get(corners.size() - 1).distance(p) > SAME) {
        corners.add(p);
      }
    }
    while (corners.size() > 1 && corners.get(corners.size() - 1).distance(corners.get(0)) <= SAME) {
      corners.remove(corners.size() - 1);
    }
    if (corners.size() < 3) {
      throw new MeshRefused(
          "the outline has " + corners.size() + " different corners", "it needs three or more");
    }
    if (SelfCrossing.of(corners)) {
      throw new MeshRefused("the outline crosses itself", "draw it without a crossing");
    }
    double area = Polygons.signedArea(corners);
    if (area == 0) {
      throw new MeshRefused("the outline has no area", "it must enclose some");
    }
    if (area < 0) {
      List<Vec2> back = new ArrayList<>();
      back.add(corners.get(0));
      for (int i = corners.size() - 1; i > 0; i--) {
        back.add(corners.get(i));
      }
      return back;
    }
    return corners;
  }

  private static List<Vec2> divided(List<Vec2> corners, double edge) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Vec2 a = corners.get(i);
      Vec2 b = corners.get((i + 1) % corners.size());
      double parts = Math.max(1, Math.ceil(a.distance(b) / edge - ROUNDED));
      checkCount(points.size() + parts, edge);
      for (int k = 0; k < parts; k++) {
        points.add(a.along(b.minus(a), k / parts));
      }
    }
    return points;
  }

  private static void checkCount(double count, double edge) {
    if (count > MOST_VERTICES) {
      throw new MeshRefused(
          "an edge length of " + edge + " mm would make over " + MOST_VERTICES + " vertices",
          "ask for a longer one");
    }
  }

  /** Adds the grid's points row by row, every other row backwards so that neighbours follow. */
  private static void fill(List<Vec2> points, List<Vec2> corners, double edge, List<Vec2> inner) {
    double lowX = corners.stream().mapToDouble(Vec2::x).min().orElseThrow();
    double highX = corners.stream().mapToDouble(Vec2::x).max().orElseThrow();
    double lowY = corners.stream().mapToDouble(Vec2::y).min().orElseThrow();
    double highY = corners.stream().mapToDouble(Vec2::y).max().orElseThrow();
    double step = edge * Math.sqrt(3) / 2;
    double rows = Math.floor((highY - lowY) / 2 / step);
    double columns = Math.floor((highX - lowX) / 2 / edge) + 1;
    checkCount(Polygons.signedArea(corners) / (edge * step), edge);
    // Nor may an outline with little area and a wide box take for ever.
    checkCount(4 * rows * columns / MOST_MISSES, edge);
    for (int j = (int) -rows; j <= rows; j++) {
      double y = (lowY + highY) / 2 + j * step;
      Row row = Row.of(corners, y, CLEARANCE * edge);
      double shift = j % 2 == 0 ? 0 : edge / 2;
      for (int i = (int) -columns; i <= columns; i++) {
        double x = (lowX + highX) / 2 + (j % 2 == 0 ? i : -i) * edge - shift;
        if (row.takes(x) && clear(inner, x, y, CLEARANCE * edge)) {
          points.add(new Vec2(x, y));
        }
      }
    }
  }

  private static int vertex(List<Vec2> points, Vec2 p) {
    for (int i = 0; i < points.size(); i++) {
      if (points.get(i).distance(p) <= SAME) {
        return i;
      }
    }
    points.add(p);
    return points.size() - 1;
  }

  private static boolean clear(List<Vec2> inner, double x, double y, double clearance) {
    for (Vec2 p : inner) {
      double dx = p.x() - x;
      double dy = p.y() - y;
      if (dx * dx + dy * dy < clearance * clearance) {
        return false;
      }
    }
    return true;
  }

  /** One row of the grid: where the outline crosses it, and which edges come near it. */
  private record Row(double y, double clearance, double[] crossings, List<Vec2[]> near) {
    static Row of(List<Vec2> corners, double y, double clearance) {
      double[] crossings = new double[corners.size()];
      int count = 0;
      List<Vec2[]> near = new ArrayList<>();
      Vec2 a = corners.get(corners.size() - 1);
      for (Vec2 b : corners) {
        if ((a.y() > y) != (b.y() > y)) {
          crossings[count++] = a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
        }
        if (Math.min(a.y(), b.y()) < y + clearance && Math.max(a.y(), b.y()) > y - clearance) {
          near.add(new Vec2[] {a, b});
        }
        a = b;
      }
      double[] sorted = Arrays.copyOf(crossings, count);
      Arrays.sort(sorted);
      return new Row(y, clearance, sorted, near);
    }

    /** Whether the point of the row is inside and clear of the outline. */
    boolean takes(double x) {
      int left = 0;
      while (left < crossings.length && crossings[left] < x) {
        left++;
      }
      if (left % 2 == 0) {
        return false;
      }
      Vec2 p = new Vec2(x, y);
      for (Vec2[] e : near) {
        if (distance(p, e[0], e[1]) < clearance) {
          return false;
        }
      }
      return true;
    }

    private static double distance(Vec2 p, Vec2 a, Vec2 b) {
      Vec2 d = b.minus(a);
      double t = Math.max(0, Math.min(1, p.minus(a).dot(d) / d.dot(d)));
      return p.distance(a.along(d, t));
    }
  }
}
