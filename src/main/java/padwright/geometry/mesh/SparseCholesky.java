package padwright.geometry.mesh;

import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.chol.CholeskyUpLooking_DSCC;

/**
 * The factor L of a symmetric positive definite sparse matrix A = L L', made by EJML. Solves for
 * the two coordinates of the plane at once, and for any leading block of A: the factor of that
 * block is the leading block of L.
 */
final class SparseCholesky {
  private final int size;
  private final int[] start;
  private final int[] rows;
  private final double[] values;

  private SparseCholesky(DMatrixSparseCSC factor) {
    size = factor.numCols;
    start = factor.col_idx;
    rows = factor.nz_rows;
    values = factor.nz_values;
  }

  /**
   * Factors A.
   *
   * @param start where each column starts; one entry more at the end
   * @param rows row of each entry, on and above the diagonal
   * @throws MeshRefused where A is not positive definite in double arithmetic
   */
  static SparseCholesky of(int size, int[] start, int[] rows, double[] values) {
    DMatrixSparseCSC a = new DMatrixSparseCSC(size, size, 0);
    a.col_idx = start;
    a.nz_rows = rows;
    a.nz_values = values;
    a.nz_length = start[size];
    CholeskyUpLooking_DSCC cholesky = new CholeskyUpLooking_DSCC();
    if (!cholesky.decompose(a)) {
      throw new MeshRefused(
          "the mesh is too uneven to be flattened: its " + size + " equations cannot be solved",
          "mesh it again with triangles of like size and shape");
    }
    return new SparseCholesky(cholesky.getL());
  }

  int size() {
    return size;
  }

  /** Entries of the factor. */
  int fill() {
    return start[size];
  }

  /** Solves the leading {@code m} equations for both coordinates, (x, y) of each in turn. */
  void solve(double[] xy, int m) {
    for (int j = 0; j < m; j++) {
      int p = start[j];
      double d = 1 / values[p];
      double x = xy[2 * j] * d;
      double y = xy[2 * j + 1] * d;
      xy[2 * j] = x;
      xy[2 * j + 1] = y;
      int end = start[j + 1];
      for (p++; p < end; p++) {
        int r = rows[p];
        if (r >= m) {
          break; // rows ascend
        }
        xy[2 * r] -= values[p] * x;
        xy[2 * r + 1] -= values[p] * y;
      }
    }
    for (int j = m - 1; j >= 0; j--) {
      double x = xy[2 * j];
      double y = xy[2 * j + 1];
      int end = start[j + 1];
      for (int p = start[j] + 1; p < end; p++) {
        int r = rows[p];
        if (r >= m) {
          break;
        }
        x -= values[p] * xy[2 * r];
        y -= values[p] * xy[2 * r + 1];
      }
      double d = 1 / values[start[j]];
      xy[2 * j] = x * d;
      xy[2 * j + 1] = y * d;
    }
  }
}
