package padwright.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import padwright.design.Finding;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;

/** Corners nearer to each other than the covering of both takes; worked out by hand. */
class CloseCornersTest {
  /** Wall of 24 and 12, a turn-under of 20, and a bend of 1 mm covering at each arris. */
  private static final double DEVELOPED = 24 + 12 + 20;

  /** What two bends of covering 1 mm thick can change a strip's width by. */
  private static final double BENDS = 2;

  private static PartResult notched(double width, double depth) {
    Pads pads = new Pads();
    pads.outline =
        Pads.free(
            new double[][] {
              {0, 0},
              {600, 0},
              {600, 300},
              {300 + width / 2, 300},
              {300 + width / 2, 300 - depth},
              {300 - width / 2, 300 - depth},
              {300 - width / 2, 300},
              {0, 300}
            });
    return pads.run();
  }

  /** Two right-angled hollows: each takes the strip's width, and 12 of allowance on the slant. */
  @Test
  void aNotchNarrowerThanTheStripsOfBothItsHollowsIsStopped() {
    double needed = 2 * (DEVELOPED + 12 / Math.cos(Math.PI / 4));

    Finding close =
        notched(80, 100).findings().stream()
            .filter(f -> f.rule().equals("corners-close"))
            .findFirst()
            .orElseThrow();

    assertThat(close.level()).isEqualTo(Finding.Level.STOP);
    assertThat(close.value().orElseThrow()).isCloseTo(80, within(1e-9));
    assertThat(close.limit().orElseThrow()).isCloseTo(needed, within(4 * BENDS));
    assertThat(close.message()).contains("80.0 apart");
  }

  @Test
  void whatThatStopExplainsIsNotSaidAgain() {
    assertThat(notched(80, 100).findings())
        .extracting(Finding::rule)
        .doesNotContain("wrap-bare", "wrap-turn-under", "cover-overlaps");
  }

  @Test
  void aNotchWiderThanThatIsProved() {
    double needed = 2 * (DEVELOPED + 12 / Math.cos(Math.PI / 4)) + 4 * BENDS;
    PartResult part = notched(needed, 110);

    assertThat(part.findings()).noneMatch(f -> f.level() == Finding.Level.STOP);
    assertThat(part.wrap().failures()).isEmpty();
  }

  /** Its side is an outward corner's turn-under and a hollow's strip: 20 + 56 + 17 = 93. */
  @Test
  void aNotchShallowerThanAnOutwardAndAHollowCornerIsStopped() {
    Finding close =
        notched(300, 40).findings().stream()
            .filter(f -> f.rule().equals("corners-close"))
            .findFirst()
            .orElseThrow();

    assertThat(close.value().orElseThrow()).isCloseTo(40, within(1e-9));
    assertThat(close.limit().orElseThrow())
        .isCloseTo(20 + DEVELOPED + 12 / Math.cos(Math.PI / 4), within(2 * BENDS));
  }

  /** Corners cut off by 1 each way: a side of 1.41, of which two turn-unders of 20 take 16.57. */
  @Test
  void twoFoldedCornersNearerThanTheirTurnUndersAreStopped() {
    Pads pads = new Pads();
    pads.outline =
        Pads.free(
            new double[][] {
              {1, 0}, {399, 0}, {400, 1}, {400, 299}, {399, 300}, {1, 300}, {0, 299}, {0, 1}
            });
    assertThat(pads.run().findings())
        .filteredOn(f -> f.rule().equals("corners-close"))
        .hasSize(4)
        .allMatch(f -> f.level() == Finding.Level.STOP)
        .allMatch(f -> Math.abs(f.value().orElseThrow() - Math.sqrt(2)) < 1e-9)
        .allMatch(f -> Math.abs(f.limit().orElseThrow() - 40 * Math.tan(Math.PI / 8)) < 1e-6);

    pads.outline =
        Pads.free(
            new double[][] {
              {12, 0}, {388, 0}, {400, 12}, {400, 288}, {388, 300}, {12, 300}, {0, 288}, {0, 12}
            });
    assertThat(pads.run().findings()).extracting(Finding::rule).doesNotContain("corners-close");
  }
}
