package padwright.crown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.FoamLayer;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;

/** The strain of a domed top: what must hold whatever the mesh. */
class CrownAnalystTest {
  private static PartResult result(OutlineShape outline, double in, double crown) {
    Pads pads = new Pads();
    pads.outline = outline;
    pads.foam =
        List.of(
            Pads.layer(20, 0),
            new FoamLayer("firm", crown, OptionalDouble.of(-in), true),
            Pads.layer(16, 0));
    return new PatternEngine(Pads.CATALOGUE).run(pads.pad());
  }

  private static Optional<CrownReport> report(PartResult r, int triangles) {
    return CrownAnalyst.of(r.shape(), r.spec(), r.cover().corners(), triangles);
  }

  @Test
  void aPlainRestHasNoDome() {
    PartResult r = new PatternEngine(Pads.CATALOGUE).run(new Pads().pad());
    assertThat(CrownAnalyst.of(r.shape(), r.spec(), r.cover().corners())).isEmpty();
  }

  @Test
  void theSurplusOfACrownIsWhatItsBendWorkedByHandGives() {
    // Board 12, foam 20, crown 20 set in 60, foam 16 over it, covering 1: the neutral line bends at
    // 16.5 about (-60, 52), the layer's corner (0, 48) at 0.5. Difference of radii 16, distance
    // sqrt(3600 + 16) = 60.13319: slope asin(16 / 60.13319) + atan(4 / 60) = 0.269297 + 0.066568 =
    // 0.335865. From the bend's start to where the corner's bend begins the path is
    // 16.5 * 0.335865 + sqrt(3616 - 256) = 5.541773 + 57.965507 = 63.507280 and the plan distance
    // 60 + 0.5 sin(0.335865) = 60.164805. Round the corner on to 45 degrees: path 0.5 (0.785398 -
    // 0.335865) = 0.224767, plan 0.5 (0.707107 - 0.329588) = 0.188760. Surplus 3.378482.
    CrownReport r = report(result(new OutlineShape.Circle(360), 60, 20), 600).orElseThrow();
    assertThat(r.surplus()).isCloseTo(3.3785, within(2e-3));
  }

  @Test
  void aFinerMeshSaysTheSameWithinTheStatedError() {
    PartResult r = result(new OutlineShape.Circle(360), 60, 20);
    CrownReport coarse = report(r, CrownAnalyst.TRIANGLES).orElseThrow();
    CrownReport fine = report(r, 4 * CrownAnalyst.TRIANGLES).orElseThrow();
    System.err.println("circle " + coarse.mean() + " " + fine.mean() + " " + coarse.stretched() + fine.stretched() + coarse.eased() + fine.eased() + coarse.spare() + coarse.seams() + coarse.leftStretched() + " " + coarse.leftEased());
    assertThat(coarse.mean()).isCloseTo(fine.mean(), within(0.03 * fine.mean()));
  }

  @Test
  void seededRandomDomesEndInStrainOrANamedRefusal() {
    Random random = new Random(20261125);
    int worked = 0;
    double slowest = 0;
    for (int i = 0; i < 100; i++) {
      double length = 200 + 500 * random.nextDouble();
      double width = 160 + 200 * random.nextDouble();
      double in = 15 + 60 * random.nextDouble();
      OutlineShape shape =
          switch (i % 4) {
            case 0 -> Pads.rectangle(length, width);
            case 1 -> Pads.rectangle(length, width, 20 + 40 * random.nextDouble());
            case 2 -> new OutlineShape.Circle(width);
            default -> new OutlineShape.Trapezoid(length, 0.8 * length, width);
          };
      PartResult r = result(shape, in, 10 + 20 * random.nextDouble());
      long before = System.nanoTime();
      Optional<CrownReport> report = CrownAnalyst.of(r.shape(), r.spec(), r.cover().corners());
      if (i > 50) {
        slowest = Math.max(slowest, (System.nanoTime() - before) / 1e6);
      }
      if (report.isEmpty()) {
        continue;
      }
      CrownReport c = report.get();
      worked += c.refusal().isEmpty() ? 1 : 0;
      assertThat(c.refusal().isPresent() || c.mean() > 0).as("seed 20261125, part " + i).isTrue();
      assertThat(Math.abs(c.gaussBonnet())).isLessThan(1e-9);
      if (!c.seams().isEmpty()) {
        assertThat(c.leftStretched() - c.leftEased())
            .as("part " + i + ": a seam relieves")
            .isLessThan(c.stretched().strain() - c.eased().strain());
      }
    }
    System.err.println("worked " + worked + " slowest " + slowest);
    assertThat(worked).isGreaterThan(50);
  }
}
