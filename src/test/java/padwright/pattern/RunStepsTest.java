package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.cover.WrapProof;
import padwright.design.Finding;

/**
 * A run may begin where the outline does not turn: the cut line steps there by the difference of
 * the two turn-unders, and neither side counts as short.
 */
class RunStepsTest {
  private static final double[][] SEAT = {{0, 0}, {200, 0}, {400, 0}, {400, 300}, {0, 300}};

  private static Pads pad(double turnUnder, String side, double[]... points) {
    Pads pads = new Pads();
    pads.outline = Pads.free(points);
    pads.covering = "woven-wool";
    pads.coverThickness = OptionalDouble.empty();
    pads.foam = List.of(Pads.layer(20, 0));
    pads.runs = List.of(Pads.turned(turnUnder, side));
    return pads;
  }

  @Test
  void aRunMayBeginHalfWayAlongAStraightSide() {
    for (String side : List.of("side 1", "side 2")) {
      PartResult part = pad(30, side, SEAT).run();

      assertThat(part.wrap().failures()).as(side).isEmpty();
      assertThat(part.wrap().leastTurnUnder()).isCloseTo(20, within(1e-6));
    }
  }

  /** A pleated rounding's first facet is half on the straight side's line. */
  @Test
  void aRunMayBeginWhereAPleatedRoundingDoes() {
    for (String side : List.of("side 1", "side 2", "side 3")) {
      Pads pads =
          pad(
              30,
              side,
              new double[][] {
                {0, 0}, {300, 0, Math.tan(Math.PI / 8)}, {400, 100}, {400, 200}, {0, 200}
              });
      PartResult part = pads.run();

      assertThat(part.cover().corners()).anyMatch(c -> c.pleats() > 1);
      assertThat(part.wrap().failures()).as(side).isEmpty();
    }
  }

  /** The cover of the same pad without the run is 10 short along it, and nowhere else. */
  @Test
  void theProofMissesTheStepWhereItIsNotCut() {
    PartResult asked = pad(30, "side 1", SEAT).run();
    Pads plain = pad(30, "side 1", SEAT);
    plain.runs = List.of();
    PartResult without = plain.run();

    assertThat(
            WrapProof.check(
                    without.cover().trim().flattened(0.01),
                    without.cover().skeleton(),
                    List.of(),
                    List.of(),
                    asked.shape().ends(),
                    0)
                .worstShort())
        .isCloseTo(10, within(1e-6));
  }

  @Test
  void aChamferedCornerLeavesTheTurnUnderAsItIs() {
    Pads pads = new Pads();
    pads.outline = Pads.free(new double[][] {{0, 0}, {400, 0}, {400, 290}, {390, 300}, {0, 300}});
    PartResult part = pads.run();

    assertThat(part.spec().turnUnder()).isEqualTo(20);
    assertThat(part.findings()).extracting(Finding::level).doesNotContain(Finding.Level.STOP);
    // 14.1 between them, of which their folds take 16.6.
    assertThat(part.findings())
        .filteredOn(f -> f.rule().equals("corners-close"))
        .extracting(Finding::level)
        .containsExactly(Finding.Level.CAUTION);
  }
}
