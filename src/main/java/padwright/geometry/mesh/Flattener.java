package padwright.geometry.mesh;

/**
 * Lays a surface flat with as little stretch as can be, keeping lengths rather than angles: from a
 * conformal start that is exact for a developable surface, the energy "as rigid as possible" is
 * lowered until it rests. Where that would turn triangles over, the symmetric Dirichlet energy does
 * it from a start without flips, and keeps it so.
 *
 * <p>The flat is turned and placed to lie as nearly as can be under the surface's own x and y; a
 * surface that stands upright keeps its first boundary edge along x. It looks as the surface looks
 * from the side from which its triangles run anticlockwise.
 */
public final class Flattener {
  /** Below this part of what agreement would give, the plan says nothing about direction. */
  private static final double NO_DIRECTION = 1e-6;

  private Flattener() {}

  /**
   * @param surface one piece with one boundary and no handle
   * @return the flat; it says itself whether it can be used
   * @throws MeshRefused where the surface is not a disc, or its triangles are too uneven to solve
   */
  public static Flattening flatten(TriangleMesh surface) {
    checkDisc(surface);
    TriangleFrames frames = new TriangleFrames(surface);
    MeshLaplacian laplacian =
        new MeshLaplacian(
            surface, MeshLaplacian.Order.sparsest(surface), MeshLaplacian.cotangents(surface));
    FlatStart start = new FlatStart(surface, frames, laplacian);
    StretchEnergy energy = new StretchEnergy.Rigid(frames);
    Flattening.Method method = Flattening.Method.RIGID;
    QuasiNewton.Outcome outcome =
        QuasiNewton.lower(energy, laplacian, start.rigid(), frames.whole());
    if (frames.flipped(outcome.xy()) > 0) {
      double[] unflipped = start.conformal();
      if (frames.flipped(unflipped) > 0) {
        unflipped = FlatStart.circle(surface, frames);
      }
      energy = new StretchEnergy.Symmetric(frames);
      method = Flattening.Method.SYMMETRIC;
      outcome = QuasiNewton.lower(energy, laplacian, unflipped, frames.whole());
    }
    return new Flattening(surface, frames, placed(frames, surface, outcome.xy()), method, outcome);
  }

  private static void checkDisc(TriangleMesh surface) {
    int pieces = surface.components();
    if (pieces > 1) {
      throw new MeshRefused("the surface is in " + pieces + " pieces", "flatten each by itself");
    }
    int boundaries = surface.boundaryLoops().size();
    if (boundaries == 0) {
      throw new MeshRefused("the surface is closed and has no boundary", "cut it open first");
    }
    if (boundaries > 1) {
      throw new MeshRefused(
          "the surface has " + boundaries + " boundaries", "cut it open between them first");
    }
    if (!surface.isDisc()) {
      throw new MeshRefused(
          "the surface has a handle (its Euler characteristic is "
              + surface.eulerCharacteristic()
              + ", a disc's is 1)",
          "cut it open first");
    }
  }

  /** Turned and moved by least squares, by area, on to the surface's x and y. */
  private static double[] placed(TriangleFrames frames, TriangleMesh surface, double[] flat) {
    double[] xyz = surface.xyz();
    int n = surface.vertexCount();
    double[] weight = new double[n];
    for (int i = 0; i < frames.corners.length; i++) {
      weight[frames.corners[i]] += frames.area[i / 3];
    }
    double sum = 0;
    double[] centre = new double[4];
    for (int v = 0; v < n; v++) {
      sum += weight[v];
      centre[0] += weight[v] * flat[2 * v];
      centre[1] += weight[v] * flat[2 * v + 1];
      centre[2] += weight[v] * xyz[3 * v];
      centre[3] += weight[v] * xyz[3 * v + 1];
    }
    for (int i = 0; i < 4; i++) {
      centre[i] /= sum;
    }
    double dot = 0;
    double cross = 0;
    double full = 0;
    for (int v = 0; v < n; v++) {
      double x = flat[2 * v] - centre[0];
      double y = flat[2 * v + 1] - centre[1];
      double px = xyz[3 * v] - centre[2];
      double py = xyz[3 * v + 1] - centre[3];
      dot += weight[v] * (x * px + y * py);
      cross += weight[v] * (x * py - y * px);
      full += weight[v] * (x * x + y * y);
    }
    double size = Math.hypot(dot, cross);
    if (!(size > NO_DIRECTION * full)) {
      int h = surface.boundaryLoops().get(0)[0];
      dot = flat[2 * surface.to(h)] - flat[2 * surface.from(h)];
      cross = flat[2 * surface.from(h) + 1] - flat[2 * surface.to(h) + 1];
      size = Math.hypot(dot, cross);
    }
    double c = dot / size;
    double s = cross / size;
    double[] out = new double[2 * n];
    for (int v = 0; v < n; v++) {
      double x = flat[2 * v] - centre[0];
      double y = flat[2 * v + 1] - centre[1];
      out[2 * v] = c * x - s * y + centre[2];
      out[2 * v + 1] = s * x + c * y + centre[3];
    }
    return out;
  }
}
