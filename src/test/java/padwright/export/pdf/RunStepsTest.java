package padwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.WrappedPad.Run;
import padwright.pattern.Pads;

/** The order of work names what a side does by itself. */
class RunStepsTest {
  @Test
  void theFoamOfARunIsCutAndShapedByItself() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    pads.runs =
        List.of(
            new Run(
                List.of("front"),
                Optional.of(new EdgeShape.Round(18)),
                OptionalDouble.empty(),
                OptionalDouble.of(8),
                Optional.empty()));
    List<String> steps = OrderOfWork.steps(pads.run());

    assertThat(steps)
        .anyMatch(s -> s.contains("cut on the line; along front 8 mm outside the line"))
        .anyMatch(
            s -> s.contains("leave it square; along front round its top edge to radius 18 mm"));
  }

  @Test
  void aSquareEdgeAllRoundNeedsNoStep() {
    assertThat(OrderOfWork.steps(new Pads().run())).noneMatch(s -> s.startsWith("Shape the foam"));
  }
}
