package padwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;

/** Lengths over an edge scale with the edge: geometry knows no millimetre. */
class ScaleTest {
  private static final long SEED = 20261126;

  private static Stack stack(Random random, double scale) {
    List<Stack.Layer> layers = new ArrayList<>();
    int n = 1 + random.nextInt(3);
    double height = 0;
    for (int i = 0; i < n; i++) {
      double thickness = 8 + 30 * random.nextDouble();
      height += thickness;
      layers.add(
          new Stack.Layer(scale * thickness, scale * (random.nextInt(3) - 1) * random.nextInt(6)));
    }
    double part = random.nextDouble();
    EdgeShape edge =
        switch (random.nextInt(4)) {
          case 0 -> new EdgeShape.Square();
          case 1 -> new EdgeShape.Round(scale * part * height / 2);
          case 2 -> new EdgeShape.Bevel(scale * part * height / 2);
          default -> new EdgeShape.FullRound();
        };
    boolean wadded = random.nextBoolean();
    return new Stack(
        scale * 12, scale * 2, layers, edge, wadded ? scale * 3 : 0, random.nextBoolean());
  }

  @Test
  void twiceTheSectionHasTwiceTheLength() {
    for (int i = 0; i < 2000; i++) {
      for (double scale : new double[] {2, 0.5, 25.4}) {
        TautPath one = SectionBuilder.taut(stack(new Random(SEED + i), 1), 1.2, 25);
        TautPath other =
            SectionBuilder.taut(stack(new Random(SEED + i), scale), scale * 1.2, scale * 25);
        String which = "seed " + (SEED + i) + ", scale " + scale;
        // Places on a sampled edge are alike to a millionth of a millimetre.
        double slack = 2e-6 * scale;
        assertThat(other.developed()).as(which).isCloseTo(scale * one.developed(), within(slack));
        assertThat(other.startX()).as(which).isCloseTo(scale * one.startX(), within(slack));
        assertThat(other.backStart()).as(which).isCloseTo(scale * one.backStart(), within(slack));
      }
    }
  }
}
