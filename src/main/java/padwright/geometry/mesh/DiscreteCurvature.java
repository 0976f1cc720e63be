package padwright.geometry.mesh;

/**
 * Curvature of a mesh, gathered at its vertices, radians: inside, the angle defect (2 pi less the
 * angles that meet there); on the boundary, the turning (pi less those angles). By the discrete
 * theorem of Gauss and Bonnet all of them add up to 2 pi times the Euler characteristic (Polthier
 * and Schmies, "Straightest geodesics on polyhedral surfaces", 1998).
 */
public final class DiscreteCurvature {
  private final double[] atVertex;
  private final boolean[] boundary;
  private final int characteristic;

  private DiscreteCurvature(double[] atVertex, boolean[] boundary, int characteristic) {
    this.atVertex = atVertex;
    this.boundary = boundary;
    this.characteristic = characteristic;
  }

  public static DiscreteCurvature of(TriangleMesh mesh) {
    int n = mesh.vertexCount();
    boolean[] boundary = new boolean[n];
    int halfEdges = 3 * mesh.triangleCount();
    for (int h = 0; h < halfEdges; h++) {
      boundary[mesh.from(h)] |= mesh.twin(h) < 0;
    }
    double[] curvature = new double[n];
    for (int v = 0; v < n; v++) {
      curvature[v] = boundary[v] ? Math.PI : 2 * Math.PI;
    }
    for (int h = 0; h < halfEdges; h++) {
      curvature[mesh.from(h)] -= mesh.angle(h);
    }
    return new DiscreteCurvature(curvature, boundary, mesh.eulerCharacteristic());
  }

  public boolean onBoundary(int v) {
    return boundary[v];
  }

  /** Angle defect of an inner vertex, turning of one on the boundary. */
  public double at(int v) {
    return atVertex[v];
  }

  /** Sum of the inner angle defects: the surface's total Gaussian curvature. */
  public double total() {
    return sum(false);
  }

  /** Sum of the turning along all boundaries. */
  public double turning() {
    return sum(true);
  }

  private double sum(boolean ofBoundary) {
    double sum = 0;
    for (int v = 0; v < atVertex.length; v++) {
      sum += boundary[v] == ofBoundary ? atVertex[v] : 0;
    }
    return sum;
  }

  /** By how much total and turning together miss 2 pi times the Euler characteristic. */
  public double gaussBonnetGap() {
    return total() + turning() - 2 * Math.PI * characteristic;
  }
}
