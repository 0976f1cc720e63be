package padwright.geometry.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import padwright.geometry.Vec2;

/** Seeded random outlines, many with thin arms and sharp corners, under random waves. */
class RandomSurfacesTest {
  private static final int SEED = 20261125;

  @Test
  void everyRandomSurfaceIsMeshedAndLaidFlatFaceUp() {
    for (int i = 0; i < 150; i++) {
      holds(SEED + i);
    }
  }

  @Test
  @Tag("soak")
  void everyOneOfTenThousandIsMeshedAndLaidFlatFaceUp() {
    for (int i = 0; i < 10_000; i++) {
      holds(SEED + i);
    }
  }

  private static void holds(int seed) {
    TriangleMesh mesh = surface(new Random(seed));
    assertThat(mesh.isDisc()).as("seed %d", seed).isTrue();
    assertThat(DiscreteCurvature.of(mesh).gaussBonnetGap())
        .as("seed %d", seed)
        .isCloseTo(0, within(1e-9));
    Flattening flat = Flattener.flatten(mesh);
    assertThat(flat.flipped()).as("seed %d", seed).isZero();
    assertThat(flat.settled()).as("seed %d", seed).isTrue();
    assertThat(flat.strain().least()).as("seed %d", seed).isPositive();
    // Steep waves over thin arms may unroll over themselves; that is all that may be wrong.
    assertThat(flat.refusal().isPresent()).as("seed %d", seed).isEqualTo(flat.overlaps());
  }

  private static TriangleMesh surface(Random random) {
    int n = 3 + random.nextInt(40);
    double narrow = random.nextInt(4) == 0 ? 0.08 : 1;
    double uneven = random.nextInt(3) == 0 ? 0.999 : 0.5;
    List<Vec2> outline = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Vec2 p =
          Vec2.polar(2 * Math.PI * (i + uneven * random.nextDouble()) / n)
              .times(20 + 280 * random.nextDouble());
      outline.add(new Vec2(p.x(), p.y() * narrow));
    }
    double high = random.nextDouble() * 150 * (random.nextInt(5) == 0 ? 3 : 1);
    double wavesX = random.nextDouble() / 50;
    double wavesY = random.nextDouble() / 50;
    return SurfaceMesher.mesh(
        outline,
        10 + random.nextInt(20),
        (x, y) -> high * Math.cos(wavesX * x) * Math.cos(wavesY * y));
  }
}
