package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.cover.CornerPlan;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/** What is said of pleats, notches and clips in a row, against the closed forms and the drawing. */
class CornerRowsTest {
  private static Pads end(double radius, double top) {
    Pads pads = new Pads();
    pads.outline =
        Pads.free(
            new double[] {0, 0},
            new double[] {300, 0, 1},
            new double[] {300, 2 * radius},
            new double[] {0, 2 * radius});
    pads.foam = List.of(Pads.layer(top, 0));
    return pads;
  }

  private static CornerPlan plan(PartResult part, Treatment treatment) {
    return part.cover().corners().stream()
        .filter(c -> c.treatment() == treatment)
        .findFirst()
        .orElseThrow();
  }

  /** A half circle of radius 100 is 314.16 long, and its pleats stand evenly along it. */
  @Test
  void pleatsStandEvenlyAlongTheirArc() {
    CornerPlan pleats = plan(end(100, 24).run(), Treatment.PLEATS);

    assertThat(pleats.row().spacing() * pleats.pleats()).isCloseTo(Math.PI * 100, within(1e-6));
    assertThat(pleats.row().mouth()).isZero();
    assertThat(pleats.row().stop()).isZero();
  }

  /** Every V of the drawn cut line: its mouth, its tip, and the way from one to the next. */
  @Test
  void notchesAreAsWideAndAsFarApartAsIsSaid() {
    Pads pads = end(400, 3);
    PartResult part = pads.run();
    CornerPlan notches = plan(part, Treatment.NOTCHES);
    Segment arc =
        part.shape().outline().segments().stream().filter(Segment::isArc).findFirst().orElseThrow();
    List<Segment> cut = part.cover().cut().segments();
    List<Double> at = new ArrayList<>();
    for (int i = 0; i + 1 < cut.size(); i++) {
      Segment in = cut.get(i);
      Segment out = cut.get(i + 1);
      Vec2 tip = in.end();
      boolean notch =
          !in.isArc()
              && !out.isArc()
              && in.start().distance(arc.centre()) > tip.distance(arc.centre()) + 5
              && out.end().distance(arc.centre()) > tip.distance(arc.centre()) + 5
              && tip.x() > arc.centre().x() + 1;
      if (notch) {
        assertThat(in.start().distance(out.end())).isCloseTo(notches.row().mouth(), within(1e-6));
        at.add(tip.minus(arc.centre()).angle());
      }
    }
    assertThat(at).hasSize(notches.pleats());
    for (int k = 0; k + 1 < at.size(); k++) {
      assertThat((at.get(k + 1) - at.get(k)) * 400)
          .isCloseTo(notches.row().spacing(), within(1e-6));
    }
    // What lies on the back of a flat strip turned in by t about an arc of turn b is 2 b t longer
    // than it should be; the notches take that, but for their stop of 5 past the arris.
    assertThat(notches.row().stop()).isEqualTo(5);
    double edge = 20 + part.spec().grip();
    assertThat(notches.row().mouth() * notches.pleats())
        .isCloseTo(2 * Math.PI * 20 * (edge - 5) / 15, within(8.0));
  }

  /** A bay of half a circle, 100 in radius: 21 clips of at most 15 apart, 6 short of the arris. */
  @Test
  void clipsStandEvenlyAndStopShortOfTheArris() {
    Pads pads = new Pads();
    pads.outline =
        Pads.free(
            new double[] {0, 0},
            new double[] {500, 0},
            new double[] {500, 300},
            new double[] {350, 300, -1},
            new double[] {150, 300},
            new double[] {0, 300});
    PartResult part = pads.run();
    CornerPlan clips = plan(part, Treatment.CLIPS);

    assertThat(clips.pleats()).isEqualTo((int) Math.ceil(Math.PI * 100 / 15));
    assertThat(clips.row().spacing()).isCloseTo(Math.PI * 100 / 21, within(1e-6));
    assertThat(clips.row().stop()).isEqualTo(6);
    assertThat(clips.row().mouth()).isZero();
  }
}
