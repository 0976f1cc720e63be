package padwright.geometry.mesh;

/**
 * First flat positions of a disc, to be improved. {@link #conformal} lays the boundary out with its
 * own lengths and the curvature that a conformal map gives it, and is exact for a developable
 * surface. {@link #circle} cannot flip a triangle whatever the mesh.
 */
final class FlatStart {
  private FlatStart() {}

  /**
   * Boundary first flattening with the boundary's scale kept at 1 (Sawhney and Crane, "Boundary
   * first flattening", 2017): the curvature inside is moved to the boundary by solving Poisson's
   * equation, the boundary is laid out with the new turning, closed with the least change of its
   * lengths, and the inside extended harmonically.
   */
  static double[] conformal(TriangleMesh mesh, MeshLaplacian laplacian) {
    DiscreteCurvature curvature = DiscreteCurvature.of(mesh);
    int n = mesh.vertexCount();
    double[] scale = new double[2 * n];
    for (int v = 0; v < n; v++) {
      // The Laplacian has twice the weights of the finite elements.
      scale[2 * v] = curvature.onBoundary(v) ? 0 : -2 * curvature.at(v);
    }
    laplacian.solveInner(scale);
    double[] flux = laplacian.times(scale);
    int[] loop = mesh.boundaryLoops().get(0);
    double[] lengths = new double[loop.length];
    double[] angles = new double[loop.length];
    double angle = 0;
    for (int i = 0; i < loop.length; i++) {
      int v = mesh.from(loop[i]);
      angle += curvature.at(v) + flux[2 * v] / 2;
      angles[i] = angle;
      lengths[i] = mesh.length(loop[i]);
    }
    close(lengths, angles);
    double[] xy = new double[2 * n];
    double x = 0;
    double y = 0;
    for (int i = 0; i < loop.length; i++) {
      int v = mesh.from(loop[i]);
      xy[2 * v] = x;
      xy[2 * v + 1] = y;
      x += lengths[i] * Math.cos(angles[i]);
      y += lengths[i] * Math.sin(angles[i]);
    }
    laplacian.extendHarmonically(xy);
    return xy;
  }

  /** Changes the lengths of a chain as little as can be, each by its own measure, to close it. */
  private static void close(double[] lengths, double[] angles) {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double x = 0;
    double y = 0;
    for (int i = 0; i < lengths.length; i++) {
      double c = Math.cos(angles[i]);
      double s = Math.sin(angles[i]);
      xx += lengths[i] * c * c;
      xy += lengths[i] * c * s;
      yy += lengths[i] * s * s;
      x += lengths[i] * c;
      y += lengths[i] * s;
    }
    double det = xx * yy - xy * xy;
    double p = (yy * x - xy * y) / det;
    double q = (xx * y - xy * x) / det;
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] *= 1 - (p * Math.cos(angles[i]) + q * Math.sin(angles[i]));
    }
  }

  /**
   * The boundary on a circle by its lengths, each inner vertex at the middle of its neighbours:
   * with a convex boundary and positive weights no triangle flips (Tutte, "How to draw a graph",
   * 1963; Floater, 1997).
   */
  static double[] circle(TriangleMesh mesh, MeshLaplacian.Order order) {
    int[] loop = mesh.boundaryLoops().get(0);
    double round = 0;
    for (int h : loop) {
      round += mesh.length(h);
    }
    double[] xy = new double[2 * mesh.vertexCount()];
    double along = 0;
    for (int h : loop) {
      double angle = 2 * Math.PI * along / round;
      int v = mesh.from(h);
      xy[2 * v] = round / (2 * Math.PI) * Math.cos(angle);
      xy[2 * v + 1] = round / (2 * Math.PI) * Math.sin(angle);
      along += mesh.length(h);
    }
    new MeshLaplacian(mesh, order, MeshLaplacian.ones(mesh)).extendHarmonically(xy);
    return xy;
  }

  /** Scales a position to the size at which its lengths are kept best. */
  static void scale(TriangleFrames frames, double[] xy) {
    double[] j = new double[4];
    double sum = 0;
    double squares = 0;
    for (int t = 0; t < frames.count(); t++) {
      frames.matrix(xy, t, j);
      sum += frames.area[t] * Math.hypot(j[0] + j[3], j[2] - j[1]);
      squares += frames.area[t] * (j[0] * j[0] + j[1] * j[1] + j[2] * j[2] + j[3] * j[3]);
    }
    double k = sum / squares;
    for (int i = 0; i < xy.length; i++) {
      xy[i] *= k;
    }
  }
}
