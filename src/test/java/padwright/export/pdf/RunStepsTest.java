package padwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.Run;
import padwright.pattern.Pads;

/** The order of work names what a side does by itself. */
class RunStepsTest {
  @Test
  void theFoamOfARunIsCutAndShapedByItself() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    pads.runs =
        List.of(Pads.run(Optional.of(new EdgeShape.Round(18)), OptionalDouble.of(8), "front"));
    List<String> steps = OrderOfWork.steps(pads.run());

    assertThat(steps)
        .anyMatch(s -> s.contains("cut on the line; along front 8 mm outside the line"))
        .anyMatch(
            s -> s.contains("leave it square; along front round its top edge to radius 18 mm"));
  }

  @Test
  void aPassageIsCutAndShapedStraightFromTheOneToTheOther() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300, 30, 30, 30, 30);
    pads.runs =
        List.of(
            new Run(
                List.of("front"),
                Optional.of(new EdgeShape.Round(18)),
                OptionalDouble.empty(),
                OptionalDouble.of(8),
                Optional.empty(),
                OptionalDouble.of(80)));
    String both =
        "; along the right passage (80 mm) and the left passage (80 mm) straight from the one to the"
            + " other";
    assertThat(OrderOfWork.steps(pads.run()))
        .anyMatch(s -> s.startsWith("Lay the base on the foam") && s.contains(both))
        .anyMatch(s -> s.startsWith("Shape the foam's edge") && s.contains(both));
    pads.runs = List.of();
    assertThat(OrderOfWork.steps(pads.run())).noneMatch(s -> s.contains("passage"));
  }

  /** A run's overhang leaves the crown where it is, and what lies over it has its pattern. */
  @Test
  void theCrownIsNotMovedByARun() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    pads.foam =
        List.of(
            Pads.layer(20, 0),
            new FoamLayer("firm", 20, OptionalDouble.of(-60), true),
            Pads.layer(16, 0));
    pads.runs = List.of(Pads.run(Optional.empty(), OptionalDouble.of(8), "front"));
    List<String> steps = OrderOfWork.steps(pads.run());

    assertThat(steps)
        .anyMatch(s -> s.contains("foam layer 1") && s.contains("; along front 8 mm outside"))
        .anyMatch(s -> s.contains("foam layer 2") && s.contains("cut 60 mm inside the line, blade"))
        .anyMatch(s -> s.contains("foam layer 3") && s.contains("; along front as its pattern"))
        .anyMatch(s -> s.startsWith("What lies over the crown: glue its middle first"));
  }

  @Test
  void aSquareEdgeAllRoundNeedsNoStep() {
    assertThat(OrderOfWork.steps(new Pads().run())).noneMatch(s -> s.startsWith("Shape the foam"));
  }
}
