package padwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.design.WrappedPad.FoamLayer;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;
import padwright.geometry.mesh.DiscreteCurvature;
import padwright.geometry.mesh.TriangleMesh;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;

/** The shape of domed faces over hollow outlines and unlike sides, against plane geometry. */
class FreeFaceTest {
  private static final long SEED = 20261128;

  private static PartResult run(OutlineShape outline, double crown, double overhang, String side) {
    Pads pads = new Pads();
    pads.outline = outline;
    pads.foam =
        List.of(
            Pads.layer(20, 0),
            new FoamLayer("firm", crown, OptionalDouble.of(-60), true),
            Pads.layer(16, 0));
    if (!side.isEmpty()) {
      pads.runs = List.of(Pads.run(Optional.empty(), OptionalDouble.of(overhang), side));
    }
    return new PatternEngine(Pads.CATALOGUE).run(pads.pad());
  }

  private static TriangleMesh mesh(DomedTop top) {
    Path edge = top.edge();
    return DomeMesh.of(top, edge, new HipTracer(top).lines(), DomeMesh.size(edge.area()));
  }

  /**
   * Over an L of right angles a place is as far in as a square round it reaches before it leaves
   * the L: mitred offsets are what a square sweeps out (Minkowski sum with a square).
   */
  @Test
  void overAnEllTheHeightIsThatOfTheLargestSquareInside() {
    PartResult r = run(FreeDomeTest.ell(500, 220), 20, 0, "");
    DomedTop top = DomedTop.of(r.shape());
    Bounds box = r.shape().outline().bounds();
    Random random = new Random(SEED);
    for (int i = 0; i < 2000; i++) {
      double x = 500 * random.nextDouble();
      double y = (x < 220 ? 500 : 220) * random.nextDouble();
      // Outside the L: beyond its box, or in the square that its arms leave free.
      double in = Math.min(Math.min(x, y), Math.min(500 - x, 500 - y));
      in = Math.min(in, Math.max(220 - x, 220 - y));
      assertThat(top.height(box.minX() + x, box.minY() + y))
          .as("seed %d, (%s, %s)", SEED, x, y)
          .isCloseTo(top.profile(0).height(-in), within(1e-9));
    }
  }

  @Test
  void overSidesThatDifferTheHeightIsThatOfTheLowestRamp() {
    PartResult r = run(FreeDomeTest.ell(500, 220), 35, 15, "side 1");
    DomedTop top = DomedTop.of(r.shape());
    Bounds box = r.shape().outline().bounds();
    FaceProfile front = top.profile(r.shape().sideNames().indexOf("side 1"));
    FaceProfile other = top.profile(r.shape().sideNames().indexOf("side 2"));
    assertThat(front).isNotEqualTo(other);
    Random random = new Random(SEED);
    for (int i = 0; i < 2000; i++) {
      double x = 500 * random.nextDouble();
      double y = (x < 220 ? 500 : 220) * random.nextDouble();
      double in = Math.min(x, Math.min(500 - x, 500 - y));
      in = Math.min(in, Math.max(220 - x, 220 - y));
      assertThat(top.height(box.minX() + x, box.minY() + y))
          .as("seed %d, (%s, %s)", SEED, x, y)
          .isCloseTo(Math.min(other.height(-in), front.height(-y)), within(1e-9));
    }
  }

  @Test
  void noTriangleLiesAcrossACrease() {
    // The middle of every triangle is as high as the mean of its corners: all ramps are planes.
    for (PartResult r :
        List.of(
            run(FreeDomeTest.ell(500, 220), 35, 0, ""),
            run(FreeDomeTest.ell(500, 220), 35, 15, "side 1"),
            run(FreeDomeTest.ell(500, 220), 35, 15, "side 2"))) {
      DomedTop top = DomedTop.of(r.shape());
      TriangleMesh mesh = mesh(top);
      for (int t = 0; t < mesh.triangleCount(); t++) {
        Vec3 sum = new Vec3(0, 0, 0);
        for (int v : mesh.triangle(t)) {
          sum = sum.plus(mesh.vertex(v));
        }
        Vec3 middle = sum.times(1.0 / 3);
        assertThat(top.height(middle.x(), middle.y())).isCloseTo(middle.z(), within(1e-6));
      }
    }
  }

  @Test
  void anEllWithAFrontOfItsOwnIsFlatOnceItIsCutAlongHipsAndValley() {
    for (String side : List.of("side 1", "side 2", "side 5")) {
      PartResult r = run(FreeDomeTest.ell(500, 220), 50, 15, side);
      Optional<DomeReport> report = DomeAnalyst.of(r.shape(), r.spec(), r.cover().corners());
      DomeReport d = report.orElseThrow();
      assertThat(d.refusal()).as(side).isEmpty();
      assertThat(d.seams()).as(side).hasSize(6);
      assertThat(d.leftStretched()).as(side).isLessThan(1e-7);
      assertThat(d.leftEased()).as(side).isGreaterThan(-1e-7);
      assertThat(Math.abs(d.gaussBonnet())).isLessThan(1e-9);
    }
  }

  /** A bay: a flat back, short sides, and a front that is one arc. */
  private static OutlineShape bay(double bulge) {
    return new FreePath(
        List.of(
            new Point(new Vec2(0, 0), new Leg.Arc(bulge)),
            new Point(new Vec2(600, 0), new Leg.Straight()),
            new Point(new Vec2(600, 330), new Leg.Straight()),
            new Point(new Vec2(0, 330), new Leg.Straight())));
  }

  @Test
  void aHipBetweenALineAndAnArcIsAsFarFromBoth() {
    // Every point as far from the line as from the arc: told by their own distances.
    for (double bulge : new double[] {0.2, -0.12}) {
      PartResult r = run(bay(bulge), 50, 0, "");
      DomedTop top = DomedTop.of(r.shape());
      List<Segment> sides = r.shape().outline().segments();
      Segment arc = sides.stream().filter(Segment::isArc).findFirst().orElseThrow();
      int front = sides.indexOf(arc);
      HipTracer.Line hip =
          new HipTracer(top)
              .lines().stream()
                  .filter(l -> !l.curve() && l.segment() == front)
                  .findFirst()
                  .orElseThrow();
      assertThat(hip.points().size()).isGreaterThanOrEqualTo(top.levels().size() - 1);
      Segment right = sides.get((front + 1) % sides.size());
      double sign = bulge > 0 ? 1 : -1;
      for (Vec2 p : hip.points().subList(1, hip.points().size())) {
        double in = sign * (arc.radius() - p.distance(arc.centre()));
        assertThat(right.distanceTo(p)).isCloseTo(in, within(1e-6));
      }
      DomeReport d = DomeAnalyst.of(r.shape(), r.spec(), r.cover().corners()).orElseThrow();
      assertThat(d.refusal()).as("bulge %s", bulge).isEmpty();
      assertThat(Math.abs(d.gaussBonnet())).isLessThan(1e-9);
      assertThat(Math.abs(DiscreteCurvature.of(mesh(top)).gaussBonnetGap())).isLessThan(1e-9);
    }
  }

  @Test
  void aSquareSideBesideFullRoundOnesHasItsEdgeAtTheTop() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(420, 360);
    pads.foam = List.of(Pads.layer(70, 0));
    pads.edge = new EdgeShape.FullRound();
    pads.runs =
        List.of(Pads.run(Optional.of(new EdgeShape.Square()), OptionalDouble.of(0.2), "right"));
    PartResult r = new PatternEngine(Pads.CATALOGUE).run(pads.pad());
    DomedTop top = DomedTop.of(r.shape());
    FaceProfile square = top.profile(1);
    assertThat(square.edge().height()).isEqualTo(square.top());
    DomeReport d = DomeAnalyst.of(r.shape(), r.spec(), r.cover().corners()).orElseThrow();
    assertThat(d.refusal()).isEmpty();
    assertThat(d.mean()).isBetween(1e-5, 0.05);
    assertThat(Math.abs(d.gaussBonnet())).isLessThan(1e-9);
  }
}
