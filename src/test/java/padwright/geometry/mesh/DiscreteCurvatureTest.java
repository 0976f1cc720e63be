package padwright.geometry.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class DiscreteCurvatureTest {
  @TestFactory
  Stream<DynamicTest> defectsAndTurningAddUpToTwoPiTimesTheCharacteristicOfTheShape() {
    return Zoo.all().entrySet().stream()
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.getKey(),
                    () -> {
                      // Gauss and Bonnet; the characteristic is known from the shape.
                      DiscreteCurvature c = DiscreteCurvature.of(e.getValue().mesh());
                      assertThat(c.total() + c.turning())
                          .isCloseTo(2 * Math.PI * e.getValue().characteristic(), within(1e-9));
                      assertThat(c.gaussBonnetGap()).isCloseTo(0, within(1e-9));
                    }));
  }

  @Test
  void theCornersOfACubesCornerCarryAQuarterTurnEach() {
    // Descartes: at the right-angled corner of the tetrahedron three right angles meet.
    DiscreteCurvature c = DiscreteCurvature.of(Zoo.tetrahedron());
    assertThat(c.at(0)).isCloseTo(Math.PI / 2, within(1e-12));
    // At each other corner two half right angles and one of an equilateral triangle.
    assertThat(c.at(1)).isCloseTo(2 * Math.PI - Math.PI / 2 - Math.PI / 3, within(1e-12));
  }

  @Test
  void aCapCarriesTheSolidAngleThatItSeesFromItsCentre() {
    // Total curvature of a cap out to theta: 2 pi (1 - cos theta).
    double theta = Math.PI / 6;
    double solid = 2 * Math.PI * (1 - Math.cos(theta));
    double coarse = DiscreteCurvature.of(Meshes.cap(20, 300, theta)).total();
    double fine = DiscreteCurvature.of(Meshes.cap(40, 300, theta)).total();
    // The outermost ring of triangles belongs to the boundary: first order in the ring's width.
    assertThat(fine).isCloseTo(solid, within(0.04 * solid));
    assertThat(Math.abs(fine - solid)).isLessThan(0.6 * Math.abs(coarse - solid));
  }

  @Test
  void aSaddleIsNegativeInsideAndADevelopableSurfaceNothing() {
    DiscreteCurvature saddle = DiscreteCurvature.of(Zoo.all().get("a saddle").mesh());
    assertThat(saddle.total()).isNegative();
    TriangleMesh sleeve = Zoo.all().get("a sleeve").mesh();
    DiscreteCurvature flat = DiscreteCurvature.of(sleeve);
    for (int v = 0; v < sleeve.vertexCount(); v++) {
      assertThat(flat.at(v)).isCloseTo(0, within(1e-12));
    }
  }
}
