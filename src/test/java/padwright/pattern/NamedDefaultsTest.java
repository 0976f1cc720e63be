package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.Side;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.WaddingLayer;
import padwright.fastening.StaplePlan;

/** Values that a maker has to be told of, or that follow from one given far away in the job. */
class NamedDefaultsTest {
  private static Pads opening() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    pads.size = SizeMeaning.OPENING;
    Neighbour clear = Neighbour.KEEP_CLEAR;
    pads.sides = new Neighbour[] {clear, clear, clear, clear};
    return pads;
  }

  @Test
  void theClearanceThatWasTakenIsNamed() {
    assertThat(opening().run().spec().assumptions())
        .anySatisfy(
            a -> {
              assertThat(a.field()).isEqualTo("base.clearance");
              // A single pleat lays three layers of 1.0 on the front's and the back's wall: 4.7625
              // - 3
              // (E. A. Johnson 1919, ch. IV: 3/16 in a side), and one on the others': 4.7625 - 1.
              assertThat(a.value()).contains("1.8").contains("3.8");
            });
    assertThat(new Pads().run().spec().assumptions())
        .noneMatch(a -> a.field().equals("base.clearance"));
  }

  @Test
  void topWaddingIsCutToTheLayerItLiesOn() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    pads.foam = List.of(Pads.layer(20, 0), Pads.layer(20, -15));
    pads.wadding = Optional.of(new WaddingLayer("polyester-300", OptionalDouble.of(4), false));
    Figures.Box wadding = pads.run().figures().wadding().get(0);
    assertThat(wadding.length()).isCloseTo(370, within(1e-9));
    assertThat(wadding.width()).isCloseTo(270, within(1e-9));
  }

  @Test
  void theRollHasToTakeTheCoverAsItIsCut() {
    Pads pads = new Pads();
    double roll = Pads.CATALOGUE.covering(pads.covering).orElseThrow().rollWidth();
    pads.grip = OptionalDouble.of(0);
    // Developed side of the flush pad of 12 + 24 with a turn-under of 20: 57.5708 (pi/2 a side).
    pads.outline = Pads.rectangle(2000, roll - 2 * 57.5708 + 10);
    assertThat(pads.run().findings()).anyMatch(f -> f.rule().equals("cover-roll-width"));
    pads.stretchAcross = 0.02;
    assertThat(pads.run().findings()).noneMatch(f -> f.rule().equals("cover-roll-width"));
  }

  @Test
  void aRoundPartIsDrivenFromItsOwnFront() {
    for (Side front : Side.values()) {
      Pads pads = new Pads();
      pads.outline = new OutlineShape.Circle(350);
      pads.front = front;
      List<StaplePlan.Position> order = pads.run().staples().positions();
      // 12 o'clock, then 6 at the front: common practice, no source.
      assertThat(order.get(1).side()).isEqualTo(front.name().toLowerCase(java.util.Locale.ROOT));
      assertThat(order.get(0).at().distance(order.get(1).at().times(-1))).isLessThan(1e-6);
    }
  }
}
