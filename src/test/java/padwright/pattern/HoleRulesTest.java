package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padwright.design.Finding;
import padwright.design.WrappedPad.Hole;

/** Holes in a base of 600 x 400; distances worked out by hand. */
class HoleRulesTest {
  private static List<Finding> of(String rule, Hole... holes) {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(600, 400);
    pads.holes = List.of(holes);
    return pads.run().findings().stream().filter(f -> f.rule().equals(rule)).toList();
  }

  /** A middle 10 from the right edge: a radius of 10 touches it, one of 9 does not. */
  @ParameterizedTest
  @CsvSource({"18, false", "22, true", "150, true"})
  void aHoleBeyondTheEdgeIsStopped(double diameter, boolean stopped) {
    List<Finding> found = of("hole-outside", new Hole(290, 0, diameter));
    assertThat(found).hasSize(stopped ? 1 : 0).allMatch(f -> f.level() == Finding.Level.STOP);
    found.forEach(
        f ->
            assertThat(f.value().orElseThrow())
                .isCloseTo(10 - diameter / 2, org.assertj.core.api.Assertions.within(1e-6)));
  }

  @Test
  void holesOverEachOtherAreStopped() {
    assertThat(of("hole-overlap", new Hole(0, 0, 30), new Hole(10, 0, 30))).hasSize(1);
    assertThat(of("hole-overlap", new Hole(0, 0, 30), new Hole(31, 0, 30))).isEmpty();
  }
}
