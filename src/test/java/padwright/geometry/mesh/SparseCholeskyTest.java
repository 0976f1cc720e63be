package padwright.geometry.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padwright.geometry.Vec3;

class SparseCholeskyTest {
  /** The matrix [[4, 2, 0], [2, 5, 2], [0, 2, 5]], above and on the diagonal by columns. */
  private static SparseCholesky small() {
    return SparseCholesky.of(
        3, new int[] {0, 1, 3, 5}, new int[] {0, 0, 1, 1, 2}, new double[] {4, 2, 5, 2, 5});
  }

  @Test
  void aSmallSystemIsSolvedForBothCoordinatesAsByHand() {
    // A (1, 2, 3)' = (8, 18, 19)' and A (1, 0, -1)' = (4, 0, -5)'.
    double[] xy = {8, 4, 18, 0, 19, -5};
    small().solve(xy, 3);
    assertThat(xy).containsExactly(new double[] {1, 1, 2, 0, 3, -1}, within(1e-14));
  }

  @Test
  void theLeadingBlockIsSolvedAloneAndTheRestLeft() {
    // [[4, 2], [2, 5]] (1, 2)' = (8, 12)'.
    double[] xy = {8, 8, 12, 12, 77, 77};
    small().solve(xy, 2);
    assertThat(xy).containsExactly(new double[] {1, 1, 2, 2, 77, 77}, within(1e-14));
  }

  @Test
  void aMatrixThatIsNotPositiveDefiniteIsRefused() {
    assertThatThrownBy(
            () ->
                SparseCholesky.of(
                    2, new int[] {0, 1, 3}, new int[] {0, 0, 1}, new double[] {1, 2, 1}))
        .isInstanceOf(MeshRefused.class)
        .hasMessageContaining("too uneven");
  }

  @Test
  void theLaplacianOfASolutionIsTheRightHandSide() {
    TriangleMesh mesh = Meshes.cap(15, 300, 1);
    MeshLaplacian laplacian =
        new MeshLaplacian(mesh, MeshLaplacian.Order.sparsest(mesh), MeshLaplacian.cotangents(mesh));
    Random random = new Random(11);
    double[] rhs = new double[2 * mesh.vertexCount()];
    for (int i = 2; i < rhs.length; i++) {
      rhs[i] = random.nextDouble() - 0.5;
      rhs[i % 2] -= rhs[i];
    }
    double[] xy = rhs.clone();
    laplacian.solveFree(xy);
    assertThat(laplacian.times(xy)).containsExactly(rhs, within(1e-10));
  }

  @Test
  void coordinatesOfAFlatMeshAreHarmonicForTheCotangents() {
    // Pinkall and Polthier 1993: linear functions have no Laplacian on a flat mesh.
    TriangleMesh mesh = Meshes.grid(9, 7, (u, v) -> new Vec3(80 * u + 9 * v * v, 60 * v, 0));
    MeshLaplacian laplacian =
        new MeshLaplacian(
            mesh, MeshLaplacian.Order.boundaryLast(mesh), MeshLaplacian.cotangents(mesh));
    double[] xy = new double[2 * mesh.vertexCount()];
    for (int h = 0; h < 3 * mesh.triangleCount(); h++) {
      if (mesh.twin(h) < 0) {
        xy[2 * mesh.from(h)] = mesh.vertex(mesh.from(h)).x();
        xy[2 * mesh.from(h) + 1] = mesh.vertex(mesh.from(h)).y();
      }
    }
    laplacian.extendHarmonically(xy);
    for (int v = 0; v < mesh.vertexCount(); v++) {
      assertThat(xy[2 * v]).isCloseTo(mesh.vertex(v).x(), within(1e-10));
      assertThat(xy[2 * v + 1]).isCloseTo(mesh.vertex(v).y(), within(1e-10));
    }
  }

  @Test
  void nestedDissectionIsAnOrderOfAllVerticesWithTheLastOnesLast() {
    TriangleMesh mesh = Meshes.cap(12, 300, 1);
    MeshLaplacian.Order order = MeshLaplacian.Order.boundaryLast(mesh);
    int[] sorted = order.place().clone();
    Arrays.sort(sorted);
    for (int i = 0; i < sorted.length; i++) {
      assertThat(sorted[i]).isEqualTo(i);
    }
    assertThat(order.leading()).isEqualTo(mesh.vertexCount() - 6 * 12);
    for (int h : mesh.boundaryLoops().get(0)) {
      assertThat(order.place()[mesh.from(h)]).isGreaterThanOrEqualTo(order.leading());
    }
  }

  @Test
  void nestedDissectionFillsInFarLessThanTheOrderOfTheRows() {
    TriangleMesh mesh = Meshes.grid(70, 70, (u, v) -> new Vec3(300 * u, 300 * v, 0));
    double[] weights = MeshLaplacian.cotangents(mesh);
    int[] rows = new int[mesh.vertexCount()];
    Arrays.setAll(rows, v -> v);
    int banded = new MeshLaplacian(mesh, new MeshLaplacian.Order(rows, 0), weights).fill();
    int nested = new MeshLaplacian(mesh, MeshLaplacian.Order.sparsest(mesh), weights).fill();
    // A band of 71 fills whole; George: nested dissection needs (31/4) n log2 n on an n-point grid
    // of squares.
    int n = mesh.vertexCount();
    assertThat(banded).isGreaterThan(60 * n);
    assertThat(nested)
        .isLessThan((int) (7.75 * n * Math.log(n) / Math.log(2)))
        .isLessThan(banded / 2);
  }
}
