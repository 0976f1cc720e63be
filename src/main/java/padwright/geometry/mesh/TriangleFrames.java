package padwright.geometry.mesh;

/**
 * Each triangle of a surface laid in a plane of its own, so that a flat position of its corners
 * gives the matrix that carries surface to flat: with the first edge along x, length a, and the
 * third corner at (b, c), the edges e1 and e2 of the flat triangle give the columns {@code e1 / a}
 * and {@code (e2 - e1 b / a) / c}.
 */
final class TriangleFrames {
  final int[] corners;
  final double[] area;

  /** 1 / a, b / (a c) and 1 / c of each triangle in turn. */
  final double[] inverse;

  private double whole;

  TriangleFrames(TriangleMesh mesh) {
    int n = mesh.triangleCount();
    corners = mesh.corners();
    area = new double[n];
    inverse = new double[3 * n];
    for (int t = 0; t < n; t++) {
      double a = mesh.length(3 * t);
      double opposite = mesh.length(3 * t + 1);
      double beside = mesh.length(3 * t + 2);
      area[t] = mesh.area(t);
      whole += area[t];
      double b = (a * a + beside * beside - opposite * opposite) / (2 * a);
      double c = 2 * area[t] / a;
      inverse[3 * t] = 1 / a;
      inverse[3 * t + 1] = b / (a * c);
      inverse[3 * t + 2] = 1 / c;
    }
  }

  /** Area of all triangles, mm2. */
  double whole() {
    return whole;
  }

  int count() {
    return area.length;
  }

  /** Signed area of a triangle in the flat over its area on the surface. */
  double determinant(double[] xy, int t) {
    int p = 2 * corners[3 * t];
    int q = 2 * corners[3 * t + 1];
    int r = 2 * corners[3 * t + 2];
    double cross =
        (xy[q] - xy[p]) * (xy[r + 1] - xy[p + 1]) - (xy[q + 1] - xy[p + 1]) * (xy[r] - xy[p]);
    return cross * inverse[3 * t] * inverse[3 * t + 2];
  }

  /** Triangles that have no area in the flat or lie face down. */
  int flipped(double[] xy) {
    int count = 0;
    for (int t = 0; t < count(); t++) {
      count += determinant(xy, t) > 0 ? 0 : 1;
    }
    return count;
  }

  /** The four entries of a triangle's matrix, by rows, into {@code j}. */
  void matrix(double[] xy, int t, double[] j) {
    int p = 2 * corners[3 * t];
    int q = 2 * corners[3 * t + 1];
    int r = 2 * corners[3 * t + 2];
    double ia = inverse[3 * t];
    double ib = inverse[3 * t + 1];
    double ic = inverse[3 * t + 2];
    double e1x = xy[q] - xy[p];
    double e1y = xy[q + 1] - xy[p + 1];
    j[0] = e1x * ia;
    j[1] = (xy[r] - xy[p]) * ic - e1x * ib;
    j[2] = e1y * ia;
    j[3] = (xy[r + 1] - xy[p + 1]) * ic - e1y * ib;
  }

  /**
   * Adds the pull of a triangle on its corners, given the derivative of its energy by its matrix.
   */
  void addPull(double[] gradient, int t, double d00, double d01, double d10, double d11) {
    int p = 2 * corners[3 * t];
    int q = 2 * corners[3 * t + 1];
    int r = 2 * corners[3 * t + 2];
    double ia = inverse[3 * t];
    double ib = inverse[3 * t + 1];
    double ic = inverse[3 * t + 2];
    double x1 = d00 * ia - d01 * ib;
    double y1 = d10 * ia - d11 * ib;
    double x2 = d01 * ic;
    double y2 = d11 * ic;
    gradient[p] -= x1 + x2;
    gradient[p + 1] -= y1 + y2;
    gradient[q] += x1;
    gradient[q + 1] += y1;
    gradient[r] += x2;
    gradient[r + 1] += y2;
  }
}
