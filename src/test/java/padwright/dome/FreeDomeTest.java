package padwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.design.WrappedPad.FoamLayer;
import padwright.geometry.Vec2;
import padwright.geometry.mesh.DiscreteCurvature;
import padwright.geometry.mesh.Flattener;
import padwright.geometry.mesh.Flattening;
import padwright.geometry.mesh.TriangleMesh;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;
import padwright.pattern.RandomOutlines;

/** Domes over outlines with hollows, and over sides with sections of their own. */
class FreeDomeTest {
  private static final long SEED = 20261127;

  static Point straight(double x, double y) {
    return new Point(new Vec2(x, y), new Leg.Straight());
  }

  /** An L, both arms as long and as wide. */
  static OutlineShape ell(double length, double wide) {
    return new FreePath(
        List.of(
            straight(0, 0),
            straight(length, 0),
            straight(length, wide),
            straight(wide, wide),
            straight(wide, length),
            straight(0, length)));
  }

  /** The same with its inner corner rounded hollow. */
  private static OutlineShape rounded(double length, double wide, double r) {
    return new FreePath(
        List.of(
            straight(0, 0),
            straight(length, 0),
            straight(length, wide),
            new Point(new Vec2(wide + r, wide), new Leg.Arc(-Math.tan(Math.PI / 8))),
            straight(wide, wide + r),
            straight(wide, length),
            straight(0, length)));
  }

  private static Pads crowned(OutlineShape outline, double in, double crown) {
    Pads pads = new Pads();
    pads.outline = outline;
    pads.foam =
        List.of(
            Pads.layer(20, 0),
            new FoamLayer("firm", crown, OptionalDouble.of(-in), true),
            Pads.layer(16, 0));
    return pads;
  }

  private static PartResult run(Pads pads) {
    return new PatternEngine(Pads.CATALOGUE).run(pads.pad());
  }

  private static DomeReport report(PartResult r, double finer) {
    return DomeAnalyst.of(r.shape(), r.spec(), r.cover().corners(), finer).orElseThrow();
  }

  private static Pads stepped(Optional<EdgeShape> edge, OptionalDouble overhang, String... sides) {
    Pads pads = crowned(Pads.rectangle(420, 360), 60, 25);
    pads.runs = List.of(Pads.run(edge, overhang, sides));
    return pads;
  }

  @Test
  void anEllCutAlongItsHipsAndItsValleyIsFlat() {
    // All ramps and the level middle are planes, so that once it is open along each hip and valley
    // there is no curvature left inside (differential geometry).
    DomeReport d = report(run(crowned(ell(500, 220), 60, 50)), 1);
    assertThat(d.taken()).isFalse();
    assertThat(d.seams()).hasSize(6);
    assertThat(d.seams().stream().filter(DomeReport.Seam::hollow)).hasSize(1);
    assertThat(d.leftStretched()).isLessThan(1e-7);
    assertThat(d.leftEased()).isGreaterThan(-1e-7);
    // As on the rectangle beside it: the crown is mitred at every corner, in or out, so a seam runs
    // from 60 in to the corner's bend; sqrt(2) times 60.340705 (worked in DomeAnalystTest).
    for (DomeReport.Seam s : d.seams()) {
      assertThat(s.length()).isCloseTo(85.3346, within(1e-3));
    }
  }

  @Test
  void sidesWithSectionsOfTheirOwnMeetInTheArrisOfTheirRamps() {
    // The front's foam stands out 20 further, so its ramp is longer and less steep; both fall from
    // the crown's edge 60 in. Four planes and a level middle: flat when cut along the arrises.
    Pads pads = crowned(Pads.rectangle(420, 360), 60, 35);
    pads.runs = List.of(Pads.run(Optional.empty(), OptionalDouble.of(20), "front"));
    PartResult r = run(pads);
    DomeReport d = report(r, 1);
    assertThat(d.taken()).isFalse();
    assertThat(d.seams()).hasSize(4);
    assertThat(d.leftStretched()).isLessThan(1e-7);
    assertThat(d.leftEased()).isGreaterThan(-1e-7);
    // Bend of 16.5 about (-60, 67), corner (o, 48) at 0.5, o being 0 or 20. The slope is
    // asin(16 / hypot(60 + o, 19)) + atan(19 / (60 + o)): 0.257046 + 0.306671 = 0.563717, a bend of
    // 9.3 and so a crease, and 0.195837 + 0.233184 = 0.429021. Going down h, the ramps run out
    // h / tan(slope): between them the arris is askew, nearer to the side whose ramp is steeper.
    for (DomeReport.Seam s : d.seams()) {
      Vec2 way = s.from().minus(s.to());
      Vec2 top = s.to();
      assertThat(Math.abs(top.x())).as(s.corner()).isCloseTo(210 - 60 + crease(0.563717), AS_DRAWN);
      boolean front = s.from().y() < 0;
      double slope = front ? 0.429021 : 0.563717;
      assertThat(Math.abs(top.y())).as(s.corner()).isCloseTo(180 - 60 + crease(slope), AS_DRAWN);
      assertThat(Math.abs(way.y() / way.x()))
          .as(s.corner())
          .isCloseTo(Math.tan(0.563717) / Math.tan(slope), within(1e-4));
    }
  }

  private static final Offset<Double> AS_DRAWN = within(1e-4);

  /** How far out of its start the corner of a bend of 16.5 is. */
  private static double crease(double slope) {
    return 16.5 * Math.tan(slope / 2);
  }

  @Test
  void aRunLikeTheRestChangesNothing() {
    DomeReport plain = report(run(crowned(Pads.rectangle(420, 360), 60, 25)), 1);
    DomeReport hair = report(run(stepped(Optional.empty(), OptionalDouble.of(1e-3), "front")), 1);
    assertThat(hair.mean()).isCloseTo(plain.mean(), within(0.01 * plain.mean()));
    double most = plain.stretched().strain();
    assertThat(hair.stretched().strain()).isCloseTo(most, within(0.03 * most));
    double least = plain.eased().strain();
    assertThat(hair.eased().strain()).isCloseTo(least, within(0.03 * -least));
  }

  @Test
  void aRoundedFrontBesideSquareSidesHasNoFullness() {
    // Only one side is rounded over: a cylinder, which is laid flat without strain. No corner
    // turns from one domed side to another, so nothing is said.
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(420, 360);
    pads.foam = List.of(Pads.layer(50, 0));
    pads.runs =
        List.of(Pads.run(Optional.of(new EdgeShape.FullRound()), OptionalDouble.empty(), "front"));
    PartResult r = run(pads);
    assertThat(DomeAnalyst.of(r.shape(), r.spec(), r.cover().corners())).isEmpty();
  }

  @Test
  void aFinerMeshSaysTheSameWithinATenth() {
    List<Pads> cases =
        List.of(
            crowned(ell(500, 220), 60, 20),
            crowned(rounded(500, 220, 60), 60, 20),
            stepped(Optional.empty(), OptionalDouble.of(15), "front", "left"),
            stepped(Optional.of(new EdgeShape.Round(12)), OptionalDouble.empty(), "front"));
    for (int i = 0; i < cases.size(); i++) {
      PartResult r = run(cases.get(i));
      DomeReport coarse = report(r, 1);
      DomeReport fine = report(r, 2);
      assertThat(coarse.refusal()).as("case %d", i).isEmpty();
      double most = fine.stretched().strain();
      double least = fine.eased().strain();
      assertThat(coarse.stretched().strain())
          .as("case %d", i)
          .isCloseTo(most, within(Math.max(0.1 * most, 5e-4)));
      assertThat(coarse.eased().strain())
          .as("case %d", i)
          .isCloseTo(least, within(Math.max(-0.1 * least, 5e-4)));
    }
  }

  /** A mesh laid flat, and the mean strain of its triangles on one side of the diagonal. */
  private static double[] halves(PartResult r) {
    DomedTop top = DomedTop.of(r.shape());
    TriangleMesh mesh =
        DomeMesh.of(top, top.edge(), new HipTracer(top).lines(), DomeMesh.size(top.edge().area()));
    assertThat(Math.abs(DiscreteCurvature.of(mesh).gaussBonnetGap())).isLessThan(1e-9);
    Flattening flat = Flattener.flatten(mesh);
    double[] halves = new double[2];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      double across = 0;
      for (int v : mesh.triangle(t)) {
        across += mesh.vertex(v).x() - mesh.vertex(v).y();
      }
      double strain = Math.max(flat.strain().most(t) - 1, 1 - flat.strain().least(t));
      halves[across > 0 ? 0 : 1] += strain * mesh.area(t);
    }
    return halves;
  }

  @Test
  void bothHalvesOfAnEvenEllAreStrainedAlike() {
    double[] halves = halves(run(crowned(ell(500, 220), 60, 25)));
    assertThat(halves[0]).isCloseTo(halves[1], within(0.02 * halves[1]));
  }

  @Test
  void aMirroredPartIsStrainedAsMuch() {
    Pads left = crowned(new FreePath(SCALENE), 50, 25);
    List<Point> turned = new ArrayList<>();
    for (int i = SCALENE.size() - 1; i >= 0; i--) {
      Vec2 at = SCALENE.get(i).at();
      turned.add(straight(-at.x(), at.y()));
    }
    DomeReport one = report(run(left), 1);
    DomeReport other = report(run(crowned(new FreePath(turned), 50, 25)), 1);
    assertThat(one.refusal()).isEmpty();
    double most = one.stretched().strain();
    double least = one.eased().strain();
    assertThat(other.mean()).isCloseTo(one.mean(), within(0.01 * one.mean()));
    assertThat(other.stretched().strain()).isCloseTo(most, within(0.05 * most));
    assertThat(other.eased().strain()).isCloseTo(least, within(0.05 * -least));
  }

  /** A free L whose sides are all unlike. */
  private static final List<Point> SCALENE =
      List.of(
          straight(0, 0),
          straight(520, 30),
          straight(500, 240),
          straight(230, 210),
          straight(200, 480),
          straight(-20, 450));

  @Test
  void seededOutlinesWithHollowsEndInStrainOrAReason() {
    RandomOutlines outlines = new RandomOutlines(SEED);
    Random random = new Random(SEED);
    Map<String, Integer> ends = new TreeMap<>();
    int hollow = 0;
    int worked = 0;
    for (int i = 0; i < PARTS; i++) {
      Pads drawn = outlines.next();
      Pads pads =
          crowned(drawn.outline, 15 + 45 * random.nextDouble(), 10 + 20 * random.nextDouble());
      if (random.nextInt(4) == 0) {
        pads.runs =
            List.of(
                Pads.run(Optional.empty(), OptionalDouble.of(10 * random.nextDouble()), "side 1"));
      }
      PartResult r;
      try {
        r = run(pads);
      } catch (padwright.measure.InputRefused e) {
        continue;
      }
      Optional<DomeReport> report = r.dome();
      if (report.isEmpty()) {
        continue;
      }
      DomeReport d = report.get();
      String which = "seed " + SEED + ", part " + i;
      boolean isHollow = !padwright.geometry.Offset.convex(r.shape().outline());
      hollow += isHollow ? 1 : 0;
      worked += isHollow && d.refusal().isEmpty() ? 1 : 0;
      ends.merge(
          d.refusal().map(w -> w.replaceAll("[-0-9.]+", "#")).orElse("worked"), 1, Integer::sum);
      assertThat(d.refusal().isPresent() || d.mean() > 0).as(which).isTrue();
      assertThat(Math.abs(d.gaussBonnet())).as(which).isLessThan(1e-9);
      assertThat(d.refusal().orElse("a reason")).as(which).isNotBlank();
    }
    System.out.printf("hollow domes, seed %d: %d of %d worked; %s%n", SEED, worked, hollow, ends);
    assertThat(worked).isGreaterThan(hollow / 2);
  }

  private static final int PARTS = Integer.getInteger("domes", 80);
}
