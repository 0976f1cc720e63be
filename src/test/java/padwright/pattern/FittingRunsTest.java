package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.Finding;
import padwright.design.Finding.Level;
import padwright.design.Fittings.ZoneKind;
import padwright.design.WrappedPad.Open;
import padwright.design.WrappedPad.Run;

/**
 * Holes, fittings and zones beside sides with an end of their own. The panel is 600 x 400, so that
 * its front edge lies at y = -200; 20 are turned under where nothing else is said.
 */
class FittingRunsTest {
  private static FittedPads front(OptionalDouble turnUnder, Optional<Open> open) {
    FittedPads p = new FittedPads();
    p.pads.runs =
        List.of(
            new Run(List.of("front"), Optional.empty(), turnUnder, OptionalDouble.empty(), open));
    return p;
  }

  private static FittedPads deep() {
    return front(OptionalDouble.of(60), Optional.empty());
  }

  private static FittedPads bare() {
    return front(OptionalDouble.empty(), Optional.of(Open.BARE));
  }

  private static List<Finding> of(FittedPads p, String rule) {
    return FittedPads.of(p.run(), rule);
  }

  /** A hole of 12 at -150 begins 44 from the front edge: past 20, but under 60. */
  @Test
  void aDeeperTurnUnderClosesWhatTheUsualOneLeavesFree() {
    assertThat(of(new FittedPads().vent(0, -150, 12), "vent-covered")).isEmpty();
    Finding vent = of(deep().vent(0, -150, 12), "vent-covered").get(0);
    assertThat(vent.value().orElseThrow()).isCloseTo(44, within(1e-9));
    assertThat(vent.message()).contains("44.0 from the edge", "reaches 60.0");
    assertThat(of(deep().vent(0, -133, 12), "vent-covered")).isEmpty();
    // The other sides are as before: 300 - 270 - 15 is 15.
    assertThat(of(deep().vent(270, 0, 30), "vent-covered").get(0).value().orElseThrow())
        .isCloseTo(15, within(0.02));
    assertThat(of(deep().insert(0, -150), "insert-covered").get(0).value().orElseThrow())
        .isCloseTo(46, within(0.02));
    // A zone from 30 to 50 behind the edge lies on 30 of 60.
    Finding zone = of(deep().zone(ZoneKind.TAPE, 0, -160, 200, 20), "zone-turn-under").get(0);
    assertThat(zone.message()).contains("lies 30.0 over the turn-under");
    // A cut-out of 150 x 90 whose edge is 75 from the front: 60 and some 19 of tongues meet.
    assertThat(of(deep().cut(Pads.rectangle(150, 90), 0, -80), "cutout-turn-unders")).hasSize(1);
    assertThat(of(new FittedPads().cut(Pads.rectangle(150, 90), 0, -80), "cutout-turn-unders"))
        .isEmpty();
  }

  @Test
  void besideASideThatIsLeftOpenNothingCoversAndNoStapleStands() {
    assertThat(of(bare().vent(0, -185, 12), "vent-covered")).isEmpty();
    assertThat(of(new FittedPads().vent(0, -185, 12), "vent-covered")).hasSize(1);
    assertThat(of(bare().insert(0, -186), "insert-covered")).isEmpty();
    assertThat(of(bare().zone(ZoneKind.TAPE, 0, -190, 200, 20), "zone-turn-under")).isEmpty();
    // 5 of board are left: no staples there to be in the way, but a rim that breaks.
    Finding rim = of(bare().cut(Pads.rectangle(150, 90), 0, -150), "cutout-open-rim").get(0);
    assertThat(of(bare().cut(Pads.rectangle(150, 90), 0, -150), "cutout-rim")).isEmpty();
    assertThat(rim.level()).isEqualTo(Level.CAUTION);
    assertThat(rim.value().orElseThrow()).isCloseTo(5, within(1e-9));
    Finding stapled =
        of(new FittedPads().cut(Pads.rectangle(150, 90), 0, -150), "cutout-rim").get(0);
    assertThat(stapled.level()).isEqualTo(Level.STOP);
    assertThat(of(bare().cut(Pads.rectangle(150, 90), 0, -145), "cutout-open-rim")).isEmpty();
  }
}
