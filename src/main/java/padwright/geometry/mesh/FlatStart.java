package padwright.geometry.mesh;

/**
 * First flat positions of a disc, to be improved. The curvature inside is driven out to the
 * boundary by a potential, so that triangles turned each against the next by its flow fit together
 * all round every vertex: the rotations of a conformal map (Crane, Desbrun and Schroeder, "Trivial
 * connections on discrete surfaces", 2010; Sawhney and Crane, "Boundary first flattening", 2017).
 * The positions are those whose triangles come nearest to them. Where the surface is developable
 * there is nothing to drive out, and the positions are exact.
 */
final class FlatStart {
  private final TriangleMesh mesh;
  private final TriangleFrames frames;
  private final MeshLaplacian laplacian;

  /** Logarithm of the conformal map's scale at each vertex, but for a constant. */
  private final double[] potential;

  /** How far each triangle's frame is turned in the flat, radians. */
  private final double[] turns;

  FlatStart(TriangleMesh mesh, TriangleFrames frames, MeshLaplacian laplacian) {
    this.mesh = mesh;
    this.frames = frames;
    this.laplacian = laplacian;
    this.potential = potential();
    this.turns = turns();
  }

  /**
   * Solves Poisson's equation for the scale that makes the surface flat; the boundary takes up the
   * curvature evenly along its length.
   */
  private double[] potential() {
    DiscreteCurvature curvature = DiscreteCurvature.of(mesh);
    int[] loop = mesh.boundaryLoops().get(0);
    double round = 0;
    for (int h : loop) {
      round += mesh.length(h);
    }
    // Each entry stands twice because the Laplacian has twice the weights of the finite elements.
    double[] u = new double[2 * mesh.vertexCount()];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      u[2 * v] = curvature.onBoundary(v) ? 0 : -2 * curvature.at(v);
    }
    double total = curvature.total();
    for (int h : loop) {
      double share = total * mesh.length(h) / round;
      u[2 * mesh.from(h)] += share;
      u[2 * mesh.to(h)] += share;
    }
    laplacian.solveFree(u);
    double[] potential = new double[mesh.vertexCount()];
    for (int v = 0; v < potential.length; v++) {
      potential[v] = u[2 * v];
    }
    return potential;
  }

  /** Unfolds triangle after triangle, breadth first, each hinge turned by the flow across it. */
  private double[] turns() {
    int n = mesh.triangleCount();
    double[] turn = new double[n];
    boolean[] laid = new boolean[n];
    int[] queue = new int[n];
    int tail = 1;
    laid[0] = true;
    for (int head = 0; head < tail; head++) {
      int t = queue[head];
      for (int h = 3 * t; h < 3 * t + 3; h++) {
        int twin = mesh.twin(h);
        if (twin < 0 || laid[twin / 3]) {
          continue;
        }
        double flow =
            laplacian.weightOfEdge(h) / 2 * (potential[mesh.from(h)] - potential[mesh.to(h)]);
        turn[twin / 3] =
            Math.IEEEremainder(
                turn[t] + direction(h) + Math.PI + flow - direction(twin), 2 * Math.PI);
        laid[twin / 3] = true;
        queue[tail++] = twin / 3;
      }
    }
    return turn;
  }

  /** Direction of a half-edge in its triangle's frame, whose x axis is the first. */
  private double direction(int h) {
    return switch (h % 3) {
      case 0 -> 0;
      case 1 -> Math.PI - mesh.angle(h);
      default -> Math.PI + mesh.angle(h - 2);
    };
  }

  /** Positions whose triangles come nearest to the rotations, at the size of the surface. */
  double[] rigid() {
    double[] xy = new double[2 * mesh.vertexCount()];
    for (int t = 0; t < turns.length; t++) {
      pull(xy, t, 1);
    }
    laplacian.solveFree(xy);
    return xy;
  }

  /** The same with the conformal map's scale: angles are kept and triangles seldom flip. */
  double[] conformal() {
    double[] xy = new double[2 * mesh.vertexCount()];
    for (int t = 0; t < turns.length; t++) {
      double sum = 0;
      for (int k = 0; k < 3; k++) {
        sum += potential[mesh.from(3 * t + k)];
      }
      pull(xy, t, Math.exp(sum / 3));
    }
    laplacian.solveFree(xy);
    scale(frames, xy);
    return xy;
  }

  private void pull(double[] xy, int t, double scale) {
    double c = 2 * frames.area[t] * scale * Math.cos(turns[t]);
    double s = 2 * frames.area[t] * scale * Math.sin(turns[t]);
    frames.addPull(xy, t, c, -s, s, c);
  }

  /**
   * The boundary on a circle by its lengths, each inner vertex at the middle of its neighbours:
   * with a convex boundary and positive weights no triangle flips (Tutte, "How to draw a graph",
   * 1963; Floater, 1997).
   */
  static double[] circle(TriangleMesh mesh, TriangleFrames frames) {
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
    MeshLaplacian.Order order = MeshLaplacian.Order.boundaryLast(mesh);
    new MeshLaplacian(mesh, order, MeshLaplacian.ones(mesh)).extendHarmonically(xy);
    scale(frames, xy);
    return xy;
  }

  /** Scales a position to the size at which its lengths are kept best. */
  private static void scale(TriangleFrames frames, double[] xy) {
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
