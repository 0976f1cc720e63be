package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.Finding;
import padwright.design.WrappedPad.Open;
import padwright.design.WrappedPad.Run;
import padwright.geometry.Bounds;

/**
 * Runs of the edge that differ. The pad: base 600 x 300, board 12, flush foam 24, covering 1.0,
 * turn-under 20: D = 24 + 12 + 20 + pi/2 = 57.5708 (the blank rule with its two bends, each of
 * radius 0.5 through a quarter turn: pi/4).
 */
class RunsTest {
  private static final double D = 24 + 12 + 20 + Math.PI / 2;

  private static Pads pad(Run... runs) {
    Pads p = new Pads();
    p.outline = Pads.rectangle(600, 300);
    p.runs = List.of(runs);
    return p;
  }

  private static Run open(Open how, String... sides) {
    return new Run(
        List.of(sides),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.of(how));
  }

  private static Run turnUnder(double mm, String... sides) {
    return new Run(
        List.of(sides),
        Optional.empty(),
        OptionalDouble.of(mm),
        OptionalDouble.empty(),
        Optional.empty());
  }

  @Test
  void aBareSideEndsAtTheEdgeOfTheFace() {
    PartResult part = pad(open(Open.BARE, "left")).run();
    Bounds trim = part.cover().trim().bounds();

    // On the left only the bend at the top is left: a quarter of the circle of radius 0.5.
    assertThat(trim.minX()).isCloseTo(-300 - Math.PI / 4, within(1e-9));
    assertThat(trim.maxX()).isCloseTo(300 + D, within(1e-9));
    assertThat(part.wrap().proved()).isTrue();
    assertThat(part.staples().positions()).noneMatch(p -> p.side().equals("left"));
    assertThat(part.cover().corners())
        .extracting(c -> c.name())
        .containsExactlyInAnyOrder("front right", "back right");
    assertThat(part.findings()).extracting(Finding::rule).contains("run-open");
  }

  @Test
  void aGluedSideEndsWhereTheBackBegins() {
    PartResult part = pad(open(Open.GLUED, "back")).run();

    // Down the wall to the bend round the back arris, which is not glued.
    assertThat(part.cover().trim().bounds().maxY())
        .isCloseTo(150 + 24 + 12 + Math.PI / 4, within(1e-9));
    assertThat(part.wrap().proved()).isTrue();
    assertThat(part.cover().corners()).hasSize(4);
    assertThat(part.staples().positions()).noneMatch(p -> p.side().equals("back"));
  }

  @Test
  void aRunHasATurnUnderOfItsOwn() {
    PartResult part = pad(turnUnder(35, "back")).run();

    assertThat(part.cover().trim().bounds().maxY()).isCloseTo(150 + D + 15, within(1e-9));
    assertThat(part.cover().trim().bounds().minY()).isCloseTo(-150 - D, within(1e-9));
    assertThat(part.figures().cover().perSideBySide().get("back")).isCloseTo(D + 15, within(1e-9));
    assertThat(part.wrap().proved()).isTrue();
  }

  @Test
  void aRunWithoutRoomForItsStaplesIsStopped() {
    assertThat(pad(turnUnder(10, "back")).run().findings())
        .anyMatch(
            f ->
                f.level() == Finding.Level.STOP
                    && f.rule().equals("run-turn-under-no-room")
                    && f.message().startsWith("Back:"));
  }

  @Test
  void theProofMissesWhatARunIsToHave() {
    PartResult asked = pad(turnUnder(35, "back")).run();
    PartResult plain = pad().run();

    // The plain cover, wrapped on the pad whose back is to have 15 more.
    assertThat(
            padwright.cover.WrapProof.check(
                    plain.cover().trim().flattened(0.01),
                    plain.cover().skeleton(),
                    List.of(),
                    List.of(),
                    asked.shape().ends(),
                    0)
                .worstShort())
        .isCloseTo(15, within(1e-6));
  }

  /** Its own cut end at the foot of the wall is in sight on purpose, also behind a long bend. */
  @Test
  void aGluedEndIsNoRawEdgeThatAFoldMustHide() {
    for (double thickness : new double[] {0.6, 1.5, 2.5}) {
      Pads pads = pad(open(Open.GLUED, "back"));
      pads.coverThickness = OptionalDouble.of(thickness);
      pads.foam = List.of(Pads.layer(24, 8));
      assertThat(pads.run().wrap().failures()).as("covering %s", thickness).isEmpty();
    }
  }
}
