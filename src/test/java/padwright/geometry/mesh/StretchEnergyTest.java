package padwright.geometry.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padwright.geometry.Vec3;

class StretchEnergyTest {
  private static final TriangleMesh MESH =
      Meshes.grid(5, 4, (u, v) -> new Vec3(90 * u, 70 * v, 20 * u * u + 15 * u * v));
  private static final TriangleFrames FRAMES = new TriangleFrames(MESH);

  private static List<StretchEnergy> both() {
    return List.of(new StretchEnergy.Rigid(FRAMES), new StretchEnergy.Symmetric(FRAMES));
  }

  /** The plan, shaken a little so that it is no special position. */
  private static double[] position() {
    Random random = new Random(5);
    double[] xy = new double[2 * MESH.vertexCount()];
    for (int v = 0; v < MESH.vertexCount(); v++) {
      xy[2 * v] = MESH.vertex(v).x() + random.nextDouble();
      xy[2 * v + 1] = MESH.vertex(v).y() + random.nextDouble();
    }
    return xy;
  }

  @Test
  void theDerivativeIsThatOfTheEnergy() {
    for (StretchEnergy energy : both()) {
      double[] xy = position();
      double[] gradient = new double[xy.length];
      double[] none = new double[xy.length];
      energy.evaluate(xy, gradient);
      for (int i = 0; i < xy.length; i++) {
        double h = 1e-4;
        double was = xy[i];
        xy[i] = was + h;
        double up = energy.evaluate(xy, none);
        xy[i] = was - h;
        double down = energy.evaluate(xy, none);
        xy[i] = was;
        assertThat((up - down) / (2 * h)).isCloseTo(gradient[i], within(1e-5));
      }
    }
  }

  @Test
  void stretchOfASingleTriangleCostsItsAreaTimesTheSquaresOfItsStrains() {
    // By hand: a right triangle of 10 x 10 stretched to 11 x 10 costs 50 (0.1)2 = 0.5 when rigid,
    // 50 / 4 (1.21 + 1 / 1.21 + 2 - 4) = 0.45558 when symmetric.
    TriangleMesh one = Meshes.of(new double[] {0, 0, 0, 10, 0, 0, 0, 10, 0}, 0, 1, 2);
    double[] xy = {0, 0, 11, 0, 0, 10};
    double[] none = new double[6];
    TriangleFrames frames = new TriangleFrames(one);
    assertThat(new StretchEnergy.Rigid(frames).evaluate(xy, none)).isCloseTo(0.5, within(1e-12));
    assertThat(new StretchEnergy.Symmetric(frames).evaluate(xy, none))
        .isCloseTo(12.5 * (1.21 + 1 / 1.21 - 2), within(1e-12));
    Strain strain = Strain.of(frames, xy);
    assertThat(strain.most(0)).isCloseTo(1.1, within(1e-12));
    assertThat(strain.least(0)).isCloseTo(1, within(1e-12));
    assertThat(strain.mean()).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void theSymmetricEnergyForbidsAFlipAndKnowsHowFarOffItIs() {
    TriangleMesh one = Meshes.of(new double[] {0, 0, 0, 10, 0, 0, 0, 10, 0}, 0, 1, 2);
    StretchEnergy energy = new StretchEnergy.Symmetric(new TriangleFrames(one));
    double[] xy = {0, 0, 10, 0, 0, 10};
    double[] down = {0, 0, 0, 0, 0, -4};
    // The corner at height 10 goes down by 4 a step: it meets the base after 2.5.
    assertThat(energy.longestStep(xy, down)).isCloseTo(2.5, within(1e-12));
    assertThat(energy.longestStep(xy, new double[] {0, 0, 0, 0, 0, 4}))
        .isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(energy.evaluate(new double[] {0, 0, 10, 0, 0, -1}, new double[6]))
        .isEqualTo(Double.POSITIVE_INFINITY);
    // Both edges shrink by 4 a step: the triangle vanishes after 2.5, by a double root.
    assertThat(energy.longestStep(xy, new double[] {0, 0, -4, 0, 0, -4}))
        .isCloseTo(2.5, within(1e-6));
  }

  @Test
  void aTurnedAndMovedCopyCostsNothing() {
    TriangleMesh flat = Meshes.grid(4, 4, (u, v) -> new Vec3(50 * u, 50 * v + 9 * u, 0));
    double[] xy = new double[2 * flat.vertexCount()];
    for (int v = 0; v < flat.vertexCount(); v++) {
      Vec3 p = flat.vertex(v);
      xy[2 * v] = -0.6 * p.x() - 0.8 * p.y() + 11;
      xy[2 * v + 1] = 0.8 * p.x() - 0.6 * p.y() - 5;
    }
    TriangleFrames frames = new TriangleFrames(flat);
    double[] none = new double[xy.length];
    assertThat(new StretchEnergy.Rigid(frames).evaluate(xy, none)).isCloseTo(0, within(1e-20));
    assertThat(new StretchEnergy.Symmetric(frames).evaluate(xy, none)).isCloseTo(0, within(1e-11));
  }
}
