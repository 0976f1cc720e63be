package padwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import padwright.design.OutlineShape;
import padwright.measure.InputRefused;

/** What is left of the board when covering, overhang and clearance are taken off an ellipse. */
class BaseSizerTest {
  /** The tightest curve of an ellipse is at its ends: 37.41^2 / 62.35 = 22.446 mm. */
  private static final OutlineShape ELLIPSE = new OutlineShape.Ellipse(124.7, 74.82);

  private static Outlines.Named less(double step) {
    return BaseSizer.base(ELLIPSE, new double[] {step, step, step, step}, "p");
  }

  @Test
  void underItsTightestCurveItStaysRound() {
    var box = less(22.4).path().bounds();
    assertThat(box.width()).isCloseTo(124.7 - 44.8, within(1e-3));
    assertThat(box.height()).isCloseTo(74.82 - 44.8, within(1e-3));
  }

  @Test
  void pastItsTightestCurveItWouldComeToAPoint() {
    for (double step : new double[] {22.6, 25, 27.7, 34, 37.3}) {
      assertThatThrownBy(() -> less(step))
          .isInstanceOf(InputRefused.class)
          .hasMessageContaining("comes to a point");
    }
  }

  @Test
  void fromHalfItsWidthNothingIsLeft() {
    for (double step : new double[] {37.41, 40, 80}) {
      assertThatThrownBy(() -> less(step))
          .isInstanceOf(InputRefused.class)
          .hasMessageContaining("nothing is left");
    }
  }
}
