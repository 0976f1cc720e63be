package padwright.desk.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import padwright.design.Finding;
import padwright.design.Units;
import padwright.desk.view.SectionForm.Room;
import padwright.desk.view.StapleGauge.Bar;
import padwright.desk.view.StapleGauge.Sign;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;
import padwright.pattern.Figures.StapleDepth;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;
import padwright.pattern.RandomPads;

class StapleGaugeTest {
  private static final long SEED = 77_120;
  private static final Room ROOM = new Room(420, 260, 12, Units.MM);

  private static StapleGauge of(PartResult result, int layers) {
    for (int i = 0; i < result.staples().positions().size(); i++) {
      if (result.staples().positions().get(i).layers() == layers) {
        return StapleGauge.of(result, OptionalInt.of(i), ROOM);
      }
    }
    throw new AssertionError("no staple through " + layers);
  }

  private static double mm(StapleGauge g, String label) {
    return bar(g, label).mm();
  }

  private static Bar bar(StapleGauge g, String label) {
    return g.bars().stream()
        .filter(b -> b.label().startsWith(label))
        .findFirst()
        .orElseThrow(() -> new AssertionError(label + " in " + g.bars()));
  }

  private static Pads pads(double leg) {
    Pads p = new Pads();
    p.leg = OptionalDouble.of(leg);
    p.measured = OptionalDouble.of(11);
    return p;
  }

  /** Leg 8, covering 1, board by caliper 11: 7 into the board, 4 left. */
  @Test
  void aLegOfEightThroughOneLayerOfOne() {
    PartResult result = pads(8).run();
    StapleGauge g = of(result, 1);
    assertThat(mm(g, "into board")).isCloseTo(7, within(1e-9));
    assertThat(mm(g, "left")).isCloseTo(4, within(1e-9));
    assertThat(mm(g, "holds")).isCloseTo(7 - result.spec().staple().wireThickness(), within(1e-9));
    assertThat(g.words()).startsWith("leg 8.0 mm: 7.0 into the board, 4.0 left under the point");
  }

  @Test
  void itsNumbersAreThoseOfTheFigures() {
    RandomPads random = new RandomPads(SEED);
    for (int n = 0; n < 60; n++) {
      PartResult result = random.next().run();
      if (result.figures().staples().leg() == 0) {
        continue;
      }
      for (StapleDepth d :
          List.of(result.figures().staples().single(), result.figures().staples().corner())) {
        if (result.staples().positions().stream().noneMatch(p -> p.layers() == d.layers())) {
          continue;
        }
        StapleGauge g = of(result, d.layers());
        String which = "seed " + SEED + ", part " + n;
        assertThat(mm(g, "into board")).as(which).isCloseTo(d.penetration(), within(1e-9));
        assertThat(mm(g, "holds")).as(which).isCloseTo(d.hold(), within(1e-9));
        String left = d.margin() > 0 ? "left" : "through";
        assertThat(mm(g, left)).as(which).isCloseTo(d.margin(), within(1e-9));
      }
    }
  }

  @Test
  void everyBarIsDrawnAsLongAsItSays() {
    StapleGauge g = of(pads(8).run(), 1);
    for (Bar b : g.bars()) {
      assertThat(b.from().distance(b.to()) / g.scale())
          .as(b.label())
          .isCloseTo(b.mm(), within(1e-6));
    }
    Bounds wire = Bounds.of(g.wire());
    assertThat(wire.height() / g.scale()).isCloseTo(8, within(1e-6));
    assertThat(g.least().from().y()).isLessThan(g.nominal().from().y());
  }

  @Test
  void theSignIsAsGraveAsTheFinding() {
    for (double leg : new double[] {4, 6, 8, 10, 11, 12, 14}) {
      PartResult result = pads(leg).run();
      StapleGauge g = of(result, 1);
      boolean stop =
          has(result, "staple-breakthrough", Finding.Level.STOP)
              || has(result, "staple-short-of-board", Finding.Level.STOP);
      boolean said =
          stop
              || result.findings().stream()
                  .anyMatch(
                      f -> f.rule().equals("staple-margin") || f.rule().equals("staple-hold"));
      assertThat(g.sign())
          .as("leg %s", leg)
          .isEqualTo(stop ? Sign.STOP : said ? Sign.CAUTION : Sign.PASSES);
    }
  }

  private static boolean has(PartResult result, String rule, Finding.Level level) {
    return result.findings().stream().anyMatch(f -> f.rule().equals(rule) && f.level() == level);
  }

  /** Board 11, leg 12, covering 1: 11 into the board leaves none. */
  @Test
  void aLegAsLongAsBoardAndCoveringComesThrough() {
    StapleGauge g = of(pads(12).run(), 1);
    assertThat(g.sign()).isEqualTo(Sign.STOP);
    assertThat(g.sign().mark()).isNotEqualTo(Sign.PASSES.mark());
    assertThat(g.verdict()).contains("comes through");
  }

  @Test
  void theWorstStapleHasLeastToSpare() {
    // Far from breaking through, so that what holds at the thickest corner decides.
    PartResult result = pads(8).run();
    int most = result.staples().positions().stream().mapToInt(p -> p.layers()).max().orElse(1);
    int worst = StapleGauge.worst(result).orElseThrow();
    assertThat(result.staples().positions().get(worst).layers()).isEqualTo(most);
    // Close to breaking through: one layer lets the point deepest.
    PartResult deep = pads(11.5).run();
    int other = StapleGauge.worst(deep).orElseThrow();
    assertThat(deep.staples().positions().get(other).layers()).isEqualTo(1);
  }

  @Test
  void labelsDoNotMeetAndStayOnTheGauge() {
    RandomPads random = new RandomPads(SEED);
    for (int n = 0; n < 100; n++) {
      PartResult result = random.next().run();
      for (double[] size : new double[][] {{420, 260}, {300, 220}, {900, 700}}) {
        StapleGauge g =
            StapleGauge.of(result, OptionalInt.empty(), new Room(size[0], size[1], 12, Units.MM));
        for (int i = 0; i < g.bars().size(); i++) {
          Bounds b = g.bars().get(i).box();
          assertThat(b.minX() >= 0 && b.maxX() <= size[0] && b.maxY() <= size[1])
              .as("seed %d, part %d: %s", SEED, n, g.bars().get(i))
              .isTrue();
          for (int k = 0; k < i; k++) {
            assertThat(b.overlaps(g.bars().get(k).box())).isFalse();
          }
        }
        for (Vec2 p : g.wire()) {
          assertThat(p.x() > 0 && p.x() < size[0] && p.y() > 0 && p.y() < size[1]).isTrue();
        }
      }
    }
  }
}
