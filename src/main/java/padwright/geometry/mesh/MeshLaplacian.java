package padwright.geometry.mesh;

import java.util.Arrays;

/**
 * A symmetric Laplacian of a mesh, factored: row v is the sum over its edges of weight times (value
 * at v less value at the other end). The vertex that is eliminated last is pinned at zero: without
 * that the matrix is singular, and the solution free to drift.
 */
final class MeshLaplacian {
  private final TriangleMesh mesh;
  private final double[] weights;
  private final Order order;
  private final SparseCholesky factor;
  private final double[] work;

  /**
   * The order of elimination.
   *
   * @param place of each vertex
   * @param leading how many have their places before all others, so that they can be solved for
   *     alone
   */
  record Order(int[] place, int leading) {
    /** The one that fills in least. */
    static Order sparsest(TriangleMesh mesh) {
      return of(mesh, false);
    }

    /** The inner vertices before those of the boundary, for a boundary that is given. */
    static Order boundaryLast(TriangleMesh mesh) {
      return of(mesh, true);
    }

    private static Order of(TriangleMesh mesh, boolean boundaryLast) {
      int n = mesh.vertexCount();
      int halfEdges = 3 * mesh.triangleCount();
      boolean[] last = new boolean[n];
      int leading = n;
      int[] start = new int[n + 1];
      for (int h = 0; h < halfEdges; h++) {
        start[mesh.from(h) + 1]++;
        if (mesh.twin(h) < 0) {
          start[mesh.to(h) + 1]++;
          if (boundaryLast) {
            last[mesh.from(h)] = true;
            leading--;
          }
        }
      }
      for (int v = 0; v < n; v++) {
        start[v + 1] += start[v];
      }
      int[] neighbours = new int[start[n]];
      int[] at = Arrays.copyOf(start, n);
      for (int h = 0; h < halfEdges; h++) {
        neighbours[at[mesh.from(h)]++] = mesh.to(h);
        if (mesh.twin(h) < 0) {
          neighbours[at[mesh.to(h)]++] = mesh.from(h);
        }
      }
      int[] order = NestedDissection.order(mesh.xyz(), start, neighbours, last);
      int[] place = new int[n];
      for (int i = 0; i < n; i++) {
        place[order[i]] = i;
      }
      return new Order(place, leading);
    }
  }

  /**
   * Weights of the cotangents, each half-edge with that of the angle across it (Pinkall and
   * Polthier, "Computing discrete minimal surfaces", 1993), without the half that stands there.
   */
  static double[] cotangents(TriangleMesh mesh) {
    double[] weights = new double[3 * mesh.triangleCount()];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      double a = mesh.length(3 * t);
      double b = mesh.length(3 * t + 1);
      double c = mesh.length(3 * t + 2);
      double four = 4 * mesh.area(t);
      weights[3 * t] = (b * b + c * c - a * a) / four;
      weights[3 * t + 1] = (c * c + a * a - b * b) / four;
      weights[3 * t + 2] = (a * a + b * b - c * c) / four;
    }
    return weights;
  }

  /** Weight 1 on every half-edge, whatever its length: Tutte's. */
  static double[] ones(TriangleMesh mesh) {
    double[] weights = new double[3 * mesh.triangleCount()];
    Arrays.fill(weights, 1);
    return weights;
  }

  /**
   * @param weights of each half-edge; an edge has the sum of its two
   */
  MeshLaplacian(TriangleMesh mesh, Order order, double[] weights) {
    this.mesh = mesh;
    this.order = order;
    this.weights = weights;
    this.work = new double[2 * mesh.vertexCount()];
    this.factor = factored();
  }

  private SparseCholesky factored() {
    int[] place = order.place();
    int size = mesh.vertexCount() - 1;
    int halfEdges = weights.length;
    int[] start = new int[size + 2];
    for (int h = 0; h < halfEdges; h++) {
      if (first(h)) {
        start[Math.max(place[mesh.from(h)], place[mesh.to(h)]) + 1]++;
      }
    }
    for (int j = 0; j <= size; j++) {
      start[j + 1] += start[j] + 1; // and one for the diagonal
    }
    int[] rows = new int[start[size + 1]];
    double[] values = new double[start[size + 1]];
    int[] at = Arrays.copyOf(start, size + 1);
    double[] diagonal = new double[size + 1];
    for (int h = 0; h < halfEdges; h++) {
      int p = place[mesh.from(h)];
      int q = place[mesh.to(h)];
      diagonal[p] += weights[h];
      diagonal[q] += weights[h];
      if (first(h)) {
        int j = Math.max(p, q);
        rows[at[j]] = Math.min(p, q);
        values[at[j]++] = -weightOfEdge(h);
      }
    }
    for (int j = 0; j <= size; j++) {
      rows[at[j]] = j;
      values[at[j]] = diagonal[j];
    }
    // The last vertex is pinned: its row and column are left out.
    return SparseCholesky.of(size, Arrays.copyOf(start, size + 1), rows, values);
  }

  private boolean first(int h) {
    return mesh.twin(h) < h;
  }

  double weightOfEdge(int h) {
    int twin = mesh.twin(h);
    return twin < 0 ? weights[h] : weights[h] + weights[twin];
  }

  /** Entries of the factor, as a measure of its cost. */
  int fill() {
    return factor.fill();
  }

  /** The Laplacian times (x, y) of every vertex. */
  double[] times(double[] xy) {
    double[] out = new double[xy.length];
    for (int h = 0; h < weights.length; h++) {
      int a = 2 * mesh.from(h);
      int b = 2 * mesh.to(h);
      double x = weights[h] * (xy[a] - xy[b]);
      double y = weights[h] * (xy[a + 1] - xy[b + 1]);
      out[a] += x;
      out[a + 1] += y;
      out[b] -= x;
      out[b + 1] -= y;
    }
    return out;
  }

  /**
   * Solves with the boundary free: {@code rhs}, whose entries must add up to zero, becomes the
   * solution that is zero at the pinned vertex.
   */
  void solveFree(double[] rhs) {
    solve(rhs, factor.size());
  }

  private void solve(double[] rhs, int m) {
    int[] place = order.place();
    for (int v = 0; v < place.length; v++) {
      int p = 2 * place[v];
      work[p] = rhs[2 * v];
      work[p + 1] = rhs[2 * v + 1];
    }
    factor.solve(work, m);
    for (int v = 0; v < place.length; v++) {
      int p = 2 * place[v];
      rhs[2 * v] = place[v] < m ? work[p] : 0;
      rhs[2 * v + 1] = place[v] < m ? work[p + 1] : 0;
    }
  }

  /**
   * For an order with the boundary last: inner vertices so that the Laplacian is zero there, with
   * the boundary as it stands.
   */
  void extendHarmonically(double[] xy) {
    double[] inner = xy.clone();
    boolean[] given = new boolean[mesh.vertexCount()];
    for (int v = 0; v < given.length; v++) {
      given[v] = order.place()[v] >= order.leading();
      if (!given[v]) {
        inner[2 * v] = 0;
        inner[2 * v + 1] = 0;
      }
    }
    double[] rhs = times(inner);
    for (int i = 0; i < rhs.length; i++) {
      rhs[i] = -rhs[i];
    }
    solve(rhs, order.leading());
    for (int v = 0; v < given.length; v++) {
      if (!given[v]) {
        xy[2 * v] = rhs[2 * v];
        xy[2 * v + 1] = rhs[2 * v + 1];
      }
    }
  }
}
