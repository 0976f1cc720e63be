package padwright.desk.solid;

/**
 * The arrises of a body as thin three-sided bars, for a graphics card that draws triangles only.
 *
 * @param points x, y, z of each point
 * @param normals one for each corner of each triangle
 * @param triangles three points each
 */
public record LineBars(float[] points, float[] normals, int[] triangles) {
  /** A bar is this thick, as a share of the solid's radius: a line's width when it fits a pane. */
  static final double THICK = 1.0 / 400;

  public static LineBars of(Body body, double radius) {
    int count = 0;
    for (boolean arris : body.arrises()) {
      count += arris ? 1 : 0;
    }
    float[] points = new float[18 * count];
    float[] normals = new float[54 * count];
    int[] triangles = new int[18 * count];
    int bar = 0;
    for (int e = 0; e < body.arrises().length; e++) {
      if (body.arrises()[e]) {
        put(body, e, radius * THICK / 2, bar++, points, normals, triangles);
      }
    }
    return new LineBars(points, normals, triangles);
  }

  private static void put(
      Body body, int e, double half, int bar, float[] points, float[] normals, int[] triangles) {
    double[] p = body.points();
    int a = 3 * body.edges()[4 * e];
    int b = 3 * body.edges()[4 * e + 1];
    double[] way = {p[b] - p[a], p[b + 1] - p[a + 1], p[b + 2] - p[a + 2]};
    boolean upright = Math.abs(way[2]) > Math.abs(way[0]);
    double[] beside = {upright ? 1 : 0, 0, upright ? 0 : 1};
    double[] u = unit(cross(way, beside));
    double[] v = unit(cross(way, u));
    float[][] out = new float[3][3];
    for (int side = 0; side < 3; side++) {
      double angle = 2 * Math.PI * side / 3;
      for (int i = 0; i < 3; i++) {
        double away = Math.cos(angle) * u[i] + Math.sin(angle) * v[i];
        out[side][i] = (float) away;
        points[18 * bar + 3 * side + i] = (float) (p[a + i] + half * away);
        points[18 * bar + 9 + 3 * side + i] = (float) (p[b + i] + half * away);
      }
    }
    int h = 18 * bar;
    for (int side = 0; side < 3; side++) {
      int next = (side + 1) % 3;
      int[] corners = {side, next, 3 + next, side, 3 + next, 3 + side};
      for (int corner : corners) {
        triangles[h] = 6 * bar + corner;
        System.arraycopy(out[corner % 3], 0, normals, 3 * h, 3);
        h++;
      }
    }
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static double[] unit(double[] a) {
    double length = Math.max(1e-12, Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]));
    return new double[] {a[0] / length, a[1] / length, a[2] / length};
  }
}
