package padwright.geometry.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import padwright.geometry.Vec3;

class TriangleMeshTest {
  private static final double[] SQUARE = {0, 0, 0, 10, 0, 0, 10, 10, 0, 0, 10, 0};

  @TestFactory
  Stream<DynamicTest> topologyIsThatOfTheShape() {
    return Zoo.all().entrySet().stream()
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.getKey(),
                    () -> {
                      TriangleMesh mesh = e.getValue().mesh();
                      assertThat(mesh.eulerCharacteristic())
                          .isEqualTo(e.getValue().characteristic());
                      assertThat(mesh.boundaryLoops()).hasSize(e.getValue().boundaries());
                      assertThat(mesh.isDisc()).isEqualTo(e.getValue().disc());
                    }));
  }

  @Test
  void aSquareOfTwoTrianglesHasItsAreaItsEdgesAndItsBoundaryAnticlockwise() {
    TriangleMesh mesh = Meshes.of(SQUARE, 0, 1, 2, 0, 2, 3);
    assertThat(mesh.area()).isCloseTo(100, within(1e-12));
    assertThat(mesh.edgeCount()).isEqualTo(5);
    assertThat(mesh.length(2)).isCloseTo(Math.sqrt(200), within(1e-12));
    List<Integer> round = new ArrayList<>();
    for (int h : mesh.boundaryLoops().get(0)) {
      round.add(mesh.from(h));
    }
    assertThat(round).containsExactly(0, 1, 2, 3);
    assertThat(mesh.angle(0)).isCloseTo(Math.PI / 4, within(1e-15));
    assertThat(mesh.angle(1)).isCloseTo(Math.PI / 2, within(1e-15));
  }

  @Test
  void anAngleOfAThinTriangleKeepsItsDigits() {
    // tan = height / half base for a low isosceles triangle, 1 high on 2 x 1e6.
    TriangleMesh mesh = Meshes.of(new double[] {0, 0, 0, 2e6, 0, 0, 1e6, 1, 0}, 0, 1, 2);
    assertThat(mesh.angle(0) / Math.atan(1e-6)).isCloseTo(1, within(1e-9));
  }

  @Test
  void theMeshDoesNotChangeWithWhatItWasMadeFrom() {
    List<Vec3> vertices =
        new ArrayList<>(List.of(new Vec3(0, 0, 0), new Vec3(1, 0, 0), new Vec3(0, 1, 0)));
    int[] triangle = {0, 1, 2};
    TriangleMesh mesh = TriangleMesh.of(vertices, List.of(triangle));
    triangle[0] = 7;
    vertices.clear();
    mesh.triangle(0)[1] = 9;
    mesh.boundaryLoops().get(0)[0] = 99;
    assertThat(mesh.triangle(0)).containsExactly(0, 1, 2);
    assertThat(mesh.boundaryLoops().get(0)).containsExactly(0, 1, 2);
  }

  @Test
  void whatIsNoSurfaceIsRefusedWithItsPlace() {
    refused("triangle 1 names vertex 9; vertices are 0 to 3", SQUARE, 0, 1, 2, 0, 2, 9);
    refused("triangle 0 names vertex -1", SQUARE, 0, 1, -1);
    refused("vertex 3 belongs to no triangle; leave it out", SQUARE, 0, 1, 2);
    refused("triangle 0 (vertices 0, 1, 1) is degenerate", SQUARE, 0, 1, 1, 0, 2, 3);
    refused("triangle 0 (vertices 0, 0, 0) is degenerate", SQUARE, 0, 0, 0, 1, 2, 3);
    refused(
        "triangle 0 (vertices 0, 1, 2) is degenerate: its longest edge is 20.0 mm and its height"
            + " on it 0.0 mm",
        new double[] {0, 0, 0, 10, 0, 0, 20, 0, 0},
        0,
        1,
        2);
    refused("the mesh has no triangle", SQUARE);
    assertThatThrownBy(() -> TriangleMesh.of(List.of(new Vec3(0, 0, 0)), List.of(new int[] {0, 0})))
        .isInstanceOf(MeshRefused.class)
        .hasMessageContaining("triangle 0 has 2 corners; a triangle has three");
  }

  @Test
  void whatIsNoNumberIsRefused() {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1e300}) {
      double[] xyz = SQUARE.clone();
      xyz[7] = bad;
      refused("vertex 2: y is " + bad, xyz, 0, 1, 2, 0, 2, 3);
    }
  }

  @Test
  void trianglesThatRunAgainstEachOtherAreRefused() {
    refused(
        "triangles 0 and 1 both run along the edge from vertex 2 to 0; turn one of them round",
        SQUARE,
        0,
        1,
        2,
        0,
        3,
        2);
    refused("triangles 0 and 1 both run along", SQUARE, 0, 1, 2, 0, 1, 2, 2, 3, 0);
  }

  @Test
  void aMobiusStripIsRefused() {
    int n = 9;
    List<Vec3> vertices = new ArrayList<>();
    List<int[]> triangles = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double a = 2 * Math.PI * i / n;
      for (int side = -1; side <= 1; side += 2) {
        double r = 100 + 20 * side * Math.cos(a / 2);
        vertices.add(new Vec3(r * Math.cos(a), r * Math.sin(a), 20 * side * Math.sin(a / 2)));
      }
      boolean last = i == n - 1;
      int c = last ? 1 : 2 * i + 2;
      int d = last ? 0 : 2 * i + 3;
      triangles.add(new int[] {2 * i, c, 2 * i + 1});
      triangles.add(new int[] {2 * i + 1, c, d});
    }
    assertThatThrownBy(() -> TriangleMesh.of(vertices, triangles))
        .isInstanceOf(MeshRefused.class)
        .hasMessageContaining("both run along the edge");
  }

  @Test
  void threeTrianglesOnAnEdgeAndTwoFansAtAPointAreRefused() {
    double[] fin = {0, 0, 0, 10, 0, 0, 5, 9, 0, 5, -9, 0, 5, 0, 9};
    refused(
        "has three triangles or more, among them 0 and 2; a surface has one or two",
        fin,
        0,
        1,
        2,
        1,
        0,
        3,
        0,
        1,
        4);
    double[] bow = {0, 0, 0, 10, 5, 0, 10, -5, 0, -10, 5, 0, -10, -5, 0};
    refused(
        "the triangles at vertex 0 meet in that point alone: going round it from one reaches 1 of 2",
        bow,
        0,
        2,
        1,
        0,
        3,
        4);
  }

  private static void refused(String message, double[] xyz, int... corners) {
    assertThatThrownBy(() -> TriangleMesh.owning(xyz, corners))
        .isInstanceOf(MeshRefused.class)
        .hasMessageContaining(message);
  }
}
