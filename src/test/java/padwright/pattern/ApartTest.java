package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.Finding;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.measure.InputRefused;

/** No piece of a board or of its foam is lost where an outline comes apart on moving in. */
class ApartTest {
  /** Two squares of 200 joined by a neck 20 wide. */
  private static final OutlineShape DUMB_BELL =
      Pads.free(
          new double[][] {
            {0, 0}, {200, 0}, {200, 90}, {320, 90}, {320, 0}, {520, 0},
            {520, 200}, {320, 200}, {320, 110}, {200, 110}, {200, 200}, {0, 200}
          });

  /** A square of 200 with an arm 20 wide. */
  private static final OutlineShape ARM =
      Pads.free(
          new double[][] {
            {0, 0}, {200, 0}, {200, 90}, {320, 90}, {320, 110}, {200, 110}, {200, 200}, {0, 200}
          });

  private static Pads pads(OutlineShape outline, double overhang) {
    Pads pads = new Pads();
    pads.outline = outline;
    pads.foam = List.of(Pads.layer(24, overhang));
    return pads;
  }

  private static Finding finding(Pads pads, String rule) {
    return pads.run().findings().stream()
        .filter(f -> f.rule().equals(rule))
        .findFirst()
        .orElseThrow();
  }

  /** Foam of 10 overhang and 1 of covering are taken off both sides of 20. */
  @Test
  void aBoardThatWouldComeApartIsRefused() {
    Pads pads = pads(DUMB_BELL, 10);
    pads.size = SizeMeaning.FINISHED;

    assertThatThrownBy(pads::run)
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("11.0 mm")
        .hasMessageContaining("falls into 2 pieces")
        .hasMessageContaining("20.0 mm wide");
  }

  @Test
  void aBoardThatWouldLackAnArmIsRefused() {
    Pads pads = pads(ARM, 10);
    pads.size = SizeMeaning.FINISHED;

    assertThatThrownBy(pads::run)
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("nothing is left of the board along side");
  }

  @Test
  void aBoardWithRoomEnoughIsNot() {
    Pads pads = pads(ARM, 8);
    pads.size = SizeMeaning.FINISHED;

    assertThat(pads.run().shape().outline().segments()).hasSize(8);
  }

  @Test
  void foamThatComesApartIsStopped() {
    Finding apart = finding(pads(DUMB_BELL, -11), "foam-apart");

    assertThat(apart.level()).isEqualTo(Finding.Level.STOP);
    assertThat(apart.message()).contains("layer 1", "11.0", "2 pieces");
  }

  @Test
  void foamThatLacksAnArmIsStopped() {
    assertThat(finding(pads(ARM, -11), "foam-apart").message()).contains("used up along side");
    assertThat(pads(ARM, -9).run().findings())
        .extracting(Finding::rule)
        .doesNotContain("foam-apart");
  }

  /** A bevel of 12 from both sides of a neck of 20 leaves a ridge there, elsewhere a flat. */
  @Test
  void anEdgeThatMeetsItsOppositeAtANeckIsStopped() {
    Pads pads = pads(DUMB_BELL, 0);
    pads.edge = new EdgeShape.Bevel(12);
    Finding meets = finding(pads, "edge-meets");

    assertThat(meets.limit().orElseThrow()).isCloseTo(10, within(1e-3));
  }
}
