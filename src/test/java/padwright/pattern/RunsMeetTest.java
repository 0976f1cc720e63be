package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padwright.design.Finding;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Open;

/** A run's own turn-under has room up to the one that faces it; rooms worked out by hand. */
class RunsMeetTest {
  private static Optional<Finding> meets(OutlineShape outline, double turnUnder, String side) {
    Pads pads = new Pads();
    pads.outline = outline;
    pads.runs = List.of(Pads.turned(turnUnder, side));
    return pads.run().findings().stream()
        .filter(f -> f.rule().equals("run-turn-under-meets"))
        .findFirst();
  }

  /** 100 wide, and 20 turned under from the back: 80 for the front; 300 long, 280 for an end. */
  @ParameterizedTest
  @CsvSource({"front, 79, 0", "front, 81, 80", "front, 150, 80", "left, 279, 0", "left, 281, 280"})
  void onARectangleItReachesToTheOneThatFacesIt(String side, double turnUnder, double most) {
    Optional<Finding> meets = meets(Pads.rectangle(300, 100), turnUnder, side);

    assertThat(meets.isPresent()).isEqualTo(most > 0);
    meets.ifPresent(
        f -> {
          assertThat(f.level()).isEqualTo(Finding.Level.STOP);
          assertThat(f.limit().orElseThrow()).isCloseTo(most, within(0.02));
        });
  }

  /** The bow of a half circle of radius 100 on a straight side: 100 - 20 at its middle. */
  @ParameterizedTest
  @CsvSource({"79, 0", "82, 80"})
  void underABowItReachesToTheBowsOwn(double turnUnder, double most) {
    OutlineShape half = Pads.free(new double[] {0, 0}, new double[] {200, 0, 1});
    Optional<Finding> meets = meets(half, turnUnder, "side 1");

    assertThat(meets.isPresent()).isEqualTo(most > 0);
    meets.ifPresent(f -> assertThat(f.limit().orElseThrow()).isCloseTo(most, within(0.2)));
  }

  /** An isosceles triangle 300 on 200 comes to nothing before its base's strip is 200 deep. */
  @Test
  void onATriangleItEndsWhereNothingIsLeft() {
    OutlineShape triangle =
        Pads.free(new double[] {0, 0}, new double[] {300, 0}, new double[] {150, 200});
    double slant = Math.hypot(150, 200);
    // Where the slants' own lines, 20 in, meet: 20 / sin(half the tip's angle) below the tip.
    double most = 200 - 20 * slant / 150;

    assertThat(meets(triangle, most - 1, "side 1")).isEmpty();
    assertThat(meets(triangle, most + 1, "side 1").orElseThrow().limit().orElseThrow())
        .isCloseTo(most, within(0.5));
  }

  /** Nothing falls short of a turn-under that no side has. */
  @ParameterizedTest
  @CsvSource({"BARE, STOP", "GLUED, CAUTION"})
  void aPartOpenAllRoundSaysWhatHoldsIt(Open open, Finding.Level level) {
    Pads pads = new Pads();
    pads.runs = List.of(Pads.open(open, "front", "right", "back", "left"));
    PartResult part = pads.run();

    assertThat(part.findings())
        .filteredOn(f -> f.rule().equals("run-all-open"))
        .extracting(Finding::level)
        .containsExactly(level);
    assertThat(part.findings()).extracting(Finding::rule).doesNotContain("wrap-turn-under");
    assertThat(part.wrap().failures()).isEmpty();
    assertThat(part.staples().positions()).isEmpty();
  }
}
