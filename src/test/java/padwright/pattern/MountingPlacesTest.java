package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Finish;
import padwright.design.WrappedPad.Fixing;
import padwright.design.WrappedPad.Hole;
import padwright.design.WrappedPad.Host;

/** Where screws go when the maker leaves their places out. */
class MountingPlacesTest {
  @Test
  void screwsThatAreSetOutForTheMakerStandInTheBase() {
    for (OutlineShape outline :
        List.of(
            Pads.rectangle(400, 300),
            new OutlineShape.Trapezoid(400, 120, 300),
            new OutlineShape.Trapezoid(120, 400, 300),
            new OutlineShape.Trapezoid(500, 100, 500),
            new OutlineShape.Trapezoid(400, 120, 110),
            new OutlineShape.Circle(320),
            new OutlineShape.Ellipse(500, 200))) {
      Pads pads = new Pads();
      pads.outline = outline;
      pads.host =
          new Host(
              Fixing.SCREWS,
              OptionalDouble.of(18),
              Finish.BARE,
              Optional.empty(),
              OptionalDouble.empty(),
              List.<Hole>of());
      PartResult part = pads.run();
      assertThat(part.mounting().positions()).as(outline.toString()).hasSizeGreaterThan(1);
      assertThat(part.findings())
          .as(outline.toString())
          .noneMatch(f -> f.rule().equals("mount-screw-edge"));
    }
  }
}
