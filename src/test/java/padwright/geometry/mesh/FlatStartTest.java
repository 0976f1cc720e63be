package padwright.geometry.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FlatStartTest {
  private static final TriangleMesh CAP = Meshes.cap(40, 300, Math.PI / 3);
  private static final TriangleFrames FRAMES = new TriangleFrames(CAP);

  private static FlatStart start() {
    return new FlatStart(
        CAP,
        FRAMES,
        new MeshLaplacian(CAP, MeshLaplacian.Order.sparsest(CAP), MeshLaplacian.cotangents(CAP)));
  }

  @Test
  void theConformalStartOfACapIsTheStereographicMap() {
    // It keeps angles, and its scale is 1 / cos2(phi / 2) times that at the pole.
    Strain strain = Strain.of(FRAMES, start().conformal());
    for (int t = 0; t < CAP.triangleCount(); t++) {
      assertThat(strain.most(t) / strain.least(t)).isLessThan(1.02);
    }
    double pole = strain.most(0);
    double edge = strain.most(CAP.triangleCount() - 1);
    double half = Math.PI / 6;
    assertThat(edge / pole).isCloseTo(1 / Math.pow(Math.cos(half), 2), within(0.02));
  }

  @Test
  void theRigidStartIsNearlyTheLeastOfTheEnergy() {
    StretchEnergy energy = new StretchEnergy.Rigid(FRAMES);
    double first = energy.evaluate(start().rigid(), new double[2 * CAP.vertexCount()]);
    assertThat(first).isCloseTo(Flattener.flatten(CAP).energy(), within(0.001 * first));
  }

  @Test
  void everyDiscOfTheZooIsLaidOnACircleWithoutAFlip() {
    // Tutte's theorem; the slivers need no good shape for it.
    Zoo.discs()
        .forEach(
            (name, animal) -> {
              TriangleFrames frames = new TriangleFrames(animal.mesh());
              assertThat(frames.flipped(FlatStart.circle(animal.mesh(), frames))).as(name).isZero();
            });
  }
}
