package padwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.FoamLayer;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;

/** The strain of a domed top: closed cases, a model of another kind, and what must always hold. */
class DomeAnalystTest {
  private static final long SEED = 20261126;

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

  private static DomeReport report(PartResult r, double finer) {
    return DomeAnalyst.of(r.shape(), r.spec(), r.cover().corners(), finer).orElseThrow();
  }

  @Test
  void aPlainRestHasNoDome() {
    PartResult r = new PatternEngine(Pads.CATALOGUE).run(new Pads().pad());
    assertThat(DomeAnalyst.of(r.shape(), r.spec(), r.cover().corners())).isEmpty();
  }

  @Test
  void theSurplusOfACrownIsWhatItsBendWorkedByHandGives() {
    // Board 12, foam 20, crown 20 set in 60, foam 16 over it, covering 1: the neutral line bends at
    // 16.5 about (-60, 52), the layer's corner (0, 48) at 0.5. Difference of radii 16, distance
    // sqrt(3600 + 16) = 60.13319: slope asin(16 / 60.13319) + atan(4 / 60) = 0.269320 + 0.066568 =
    // 0.335888. From the bend's start to where the corner's bend begins the path is
    // 16.5 * 0.335888 + sqrt(3616 - 256) = 5.542155 + 57.965507 = 63.507662 and the plan distance
    // 60 + 0.5 sin(0.335888) = 60.164804. The corner's bend is narrow and steep: wall.
    DomeReport r = report(result(new OutlineShape.Circle(360), 60, 20), 1);
    assertThat(r.surplus()).isCloseTo(3.34286, within(2e-5));
  }

  @Test
  void theFourSeamsOfAMitredDomeLeaveNothingToStretch() {
    // Four ramps with straight creases round a level middle: cut along the hips it is developable
    // (differential geometry: no curvature is left inside).
    DomeReport r = report(result(Pads.rectangle(360, 280), 60, 50), 1);
    assertThat(r.taken()).isFalse();
    assertThat(r.seams())
        .extracting(DomeReport.Seam::corner)
        .containsExactlyInAnyOrder("front left", "front right", "back right", "back left");
    assertThat(r.leftStretched()).isLessThan(1e-7);
    assertThat(r.leftEased()).isGreaterThan(-1e-7);
    // From the crown's edge, 60 in from both sides, where the bend begins, to the corner's bend at
    // 0.5 sin(slope), the slope being asin(16 / sqrt(60^2 + 34^2)) + atan(34 / 60) = 0.749688:
    // along
    // the mitre sqrt(2) times 60.340705, 85.3346.
    for (DomeReport.Seam s : r.seams()) {
      assertThat(s.length()).isCloseTo(85.3346, within(1e-3));
    }
  }

  /**
   * A round top laid flat keeps its symmetry: a ring of plan radius p at path length s goes to a
   * ring of radius f(s), and the energy is the integral of ((f' - 1)^2 + (f / p - 1)^2) p ds. Its
   * minimum is found here by finite differences along one radius, with no mesh. Source: the energy
   * as written in decision 14, and symmetry.
   */
  @Test
  void aRoundTopAgreesWithTheModelAlongOneRadius() {
    PartResult r = result(new OutlineShape.Circle(360), 60, 20);
    DomedTop top = DomedTop.of(r.shape().outline(), r.shape().section().taut());
    int n = 20000;
    double rim = 180 + top.rows().get(top.rows().size() - 1).out();
    double[] p = new double[n + 1];
    double[] ds = new double[n];
    for (int i = 0; i <= n; i++) {
      p[i] = rim * i / n;
    }
    for (int i = 0; i < n; i++) {
      ds[i] = Math.hypot(p[i + 1] - p[i], top.height(p[i + 1], 0) - top.height(p[i], 0));
    }
    double[] f = least(p, ds);
    double sum = 0;
    double area = 0;
    for (int i = 0; i < n; i++) {
      double middle = (p[i] + p[i + 1]) / 2;
      double along = Math.abs((f[i + 1] - f[i]) / ds[i] - 1);
      double round = Math.abs((f[i] + f[i + 1]) / 2 / middle - 1);
      sum += Math.max(along, round) * middle * ds[i];
      area += middle * ds[i];
    }
    assertThat(report(r, 2).mean()).isCloseTo(sum / area, within(0.03 * sum / area));
    assertThat(report(r, 1).mean()).isCloseTo(sum / area, within(0.1 * sum / area));
  }

  /** Solves the tridiagonal normal equations of the energy along one radius; f(0) = 0. */
  private static double[] least(double[] p, double[] ds) {
    int n = ds.length;
    double[] diagonal = new double[n + 1];
    double[] beside = new double[n + 1];
    double[] right = new double[n + 1];
    for (int i = 0; i < n; i++) {
      double middle = (p[i] + p[i + 1]) / 2;
      // (f' - 1)^2 p ds with f' = (f1 - f0) / ds, and ((f0 + f1) / 2 / p - 1)^2 p ds.
      double a = middle / ds[i];
      double b = ds[i] / middle / 4;
      diagonal[i] += a + b;
      diagonal[i + 1] += a + b;
      beside[i] += b - a;
      right[i] += -middle + ds[i] / 2;
      right[i + 1] += middle + ds[i] / 2;
    }
    double[] f = new double[n + 1];
    // The first unknown is held at 0, the rest by elimination and back substitution.
    for (int i = 2; i <= n; i++) {
      double m = beside[i - 1] / diagonal[i - 1];
      diagonal[i] -= m * beside[i - 1];
      right[i] -= m * right[i - 1];
    }
    f[n] = right[n] / diagonal[n];
    for (int i = n - 1; i >= 1; i--) {
      f[i] = (right[i] - beside[i] * f[i + 1]) / diagonal[i];
    }
    return f;
  }

  @Test
  void aFinerMeshSaysTheSameWithinTheStatedError() {
    for (OutlineShape outline :
        List.of(
            new OutlineShape.Circle(360), Pads.rectangle(420, 300), Pads.rectangle(420, 300, 40))) {
      PartResult r = result(outline, 60, 20);
      DomeReport coarse = report(r, 1);
      DomeReport fine = report(r, 2);
      assertThat(coarse.stretched().strain())
          .as("%s", outline)
          .isCloseTo(fine.stretched().strain(), error(fine.stretched().strain()));
      assertThat(coarse.eased().strain())
          .as("%s", outline)
          .isCloseTo(fine.eased().strain(), error(fine.eased().strain()));
    }
  }

  /** A tenth, or half a thousandth of the length where the strain is small. */
  private static Offset<Double> error(double strain) {
    return within(Math.max(0.1 * Math.abs(strain), 5e-4));
  }

  @Test
  void aFullRoundEdgeDomesARoundSeat() {
    Pads pads = new Pads();
    pads.outline = new OutlineShape.Circle(320);
    pads.foam = List.of(Pads.layer(50, 0));
    pads.edge = new EdgeShape.FullRound();
    PartResult r = new PatternEngine(Pads.CATALOGUE).run(pads.pad());
    // To 45 degrees on a neutral radius of 25.5: 25.5 (pi / 4 - sin(pi / 4)) = 1.9965.
    DomeReport dome = report(r, 1);
    assertThat(dome.surplus()).isCloseTo(1.9965, within(1e-3));
    assertThat(dome.mean()).isGreaterThan(0);
  }

  @Test
  void seededRandomDomesEndInStrainOrANamedRefusal() {
    Random random = new Random(SEED);
    int worked = 0;
    for (int i = 0; i < 60; i++) {
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
      Optional<DomeReport> report = DomeAnalyst.of(r.shape(), r.spec(), r.cover().corners());
      if (report.isEmpty()) {
        continue;
      }
      DomeReport dome = report.get();
      String which = "seed " + SEED + ", part " + i;
      worked += dome.refusal().isEmpty() ? 1 : 0;
      assertThat(dome.refusal().isPresent() || dome.mean() > 0).as(which).isTrue();
      // Gauss-Bonnet: curvature inside and turning of the edge come to a full turn.
      assertThat(Math.abs(dome.gaussBonnet())).as(which).isLessThan(1e-9);
      if (!dome.seams().isEmpty()) {
        assertThat(dome.leftStretched() - dome.leftEased())
            .as(which + ": seams relieve")
            .isLessThan(dome.stretched().strain() - dome.eased().strain());
      }
    }
    assertThat(worked).isGreaterThan(40);
  }
}
