package padwright.desk.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.Circle;
import padwright.design.OutlineShape.Ellipse;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.design.OutlineShape.Rectangle;
import padwright.design.OutlineShape.Trapezoid;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/** Changes of an outline's points: by hand, and against the curve's own formula. */
class OutlineChangeTest {
  private static final Vec2 A = new Vec2(0, 0);
  private static final Vec2 B = new Vec2(100, 0);
  private static final Vec2 C = new Vec2(100, 80);

  private static FreePath triangle(Leg first) {
    Leg straight = new Leg.Straight();
    return new FreePath(
        List.of(new Point(A, first), new Point(B, straight), new Point(C, straight)));
  }

  /** De Casteljau is not used here: the Bernstein form of a cubic, written out. */
  private static Vec2 cubic(Vec2 a, Leg.Cubic c, Vec2 b, double t) {
    double s = 1 - t;
    return a.times(s * s * s)
        .plus(c.first().times(3 * s * s * t))
        .plus(c.second().times(3 * s * t * t))
        .plus(b.times(t * t * t));
  }

  private static Vec2 on(FreePath path, int leg, double t) {
    Point p = path.points().get(leg);
    Vec2 b = path.points().get((leg + 1) % path.points().size()).at();
    if (p.leg() instanceof Leg.Cubic c) {
      return cubic(p.at(), c, b, t);
    }
    double bulge = p.leg() instanceof Leg.Arc a ? a.bulge() : 0;
    return new Segment(p.at(), b, bulge).pointAt(t);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.3, 0.01, 0.99})
  void aLegSplitAnywhereStaysWhereItWas(double at) {
    Random random = new Random(7);
    for (int round = 0; round < 50; round++) {
      List<Leg> legs =
          List.of(
              new Leg.Straight(),
              new Leg.Arc(random.nextDouble(-3, 3)),
              new Leg.Arc(1),
              new Leg.Cubic(
                  new Vec2(random.nextDouble(-40, 100), random.nextDouble(-60, 60)),
                  new Vec2(random.nextDouble(0, 140), random.nextDouble(-60, 60))));
      for (Leg leg : legs) {
        FreePath before = triangle(leg);
        FreePath after = OutlineChange.split(before, 0, at);
        assertThat(after.points()).hasSize(4);
        assertThat(after.points().subList(2, 4)).isEqualTo(before.points().subList(1, 3));
        // A share of a half is a share of the whole: of the sweep of an arc, of a cubic's own
        // parameter. So the two can be held against each other point by point.
        for (double t = 0; t <= 1; t += 1.0 / 64) {
          double whole1 = t * at;
          double whole2 = at + t * (1 - at);
          assertThat(on(after, 0, t).distance(on(before, 0, whole1))).isLessThan(1e-9);
          assertThat(on(after, 1, t).distance(on(before, 0, whole2))).isLessThan(1e-9);
        }
      }
    }
  }

  @Test
  void bothHalvesOfAnArcKeepItsRadius() {
    FreePath after = OutlineChange.split(triangle(new Leg.Arc(0.5)), 0, 0.25);
    // Radius of an arc: half the chord times (1 + b^2) / (2 b) = 50 x 1.25 = 62.5.
    for (int k = 0; k < 2; k++) {
      double bulge = ((Leg.Arc) after.points().get(k).leg()).bulge();
      Segment s = new Segment(after.points().get(k).at(), after.points().get(k + 1).at(), bulge);
      assertThat(s.radius()).isCloseTo(62.5, within(1e-9));
    }
  }

  @Test
  void aPointMovedTakesTheControlsBesideItAlong() {
    Leg.Cubic first = new Leg.Cubic(new Vec2(30, -20), new Vec2(70, -20));
    Leg.Cubic second = new Leg.Cubic(new Vec2(120, 20), new Vec2(120, 60));
    FreePath path =
        new FreePath(
            List.of(new Point(A, first), new Point(B, second), new Point(C, new Leg.Straight())));
    FreePath moved = OutlineChange.moved(path, 1, new Vec2(105, -3));
    assertThat(moved.points())
        .containsExactly(
            new Point(A, new Leg.Cubic(new Vec2(30, -20), new Vec2(75, -23))),
            new Point(new Vec2(105, -3), new Leg.Cubic(new Vec2(125, 17), new Vec2(120, 60))),
            new Point(C, new Leg.Straight()));
    FreePath around = OutlineChange.moved(path, 0, new Vec2(-1, -2));
    assertThat(((Leg.Cubic) around.points().get(0).leg()).first()).isEqualTo(new Vec2(29, -22));
    assertThat(around.points().get(2)).isEqualTo(path.points().get(2));
  }

  /** The bulge is the rise over half the chord: 20 over 50 is 0.4, to the right of the way. */
  @Test
  void aLegIsBentSoThatItsMiddleLiesWhereItIsDrawn() {
    FreePath bent = OutlineChange.bent(triangle(new Leg.Straight()), 0, new Vec2(50, -20), 1);
    assertThat(((Leg.Arc) bent.points().get(0).leg()).bulge()).isCloseTo(0.4, within(1e-12));
    assertThat(on(bent, 0, 0.5).distance(new Vec2(50, -20))).isLessThan(1e-12);
    FreePath in = OutlineChange.bent(triangle(new Leg.Straight()), 0, new Vec2(63, 20), 1);
    assertThat(((Leg.Arc) in.points().get(0).leg()).bulge()).isCloseTo(-0.4, within(1e-12));
    assertThat(on(in, 0, 0.5).distance(new Vec2(50, 20))).isLessThan(1e-12);
    // A half circle rises by half its chord.
    FreePath half = OutlineChange.bent(triangle(new Leg.Straight()), 0, new Vec2(50, -50), 1);
    assertThat(((Leg.Arc) half.points().get(0).leg()).bulge()).isCloseTo(1, within(1e-12));
  }

  @Test
  void aLegDrawnAllButStraightIsStraight() {
    FreePath path = triangle(new Leg.Arc(0.4));
    assertThat(OutlineChange.bent(path, 0, new Vec2(50, -0.9), 1).points().get(0).leg())
        .isEqualTo(new Leg.Straight());
    assertThat(OutlineChange.bent(path, 0, new Vec2(50, -1.1), 1).points().get(0).leg())
        .isInstanceOf(Leg.Arc.class);
  }

  @Test
  void withoutAPointTheLegBeforeItGoesStraightOn() {
    FreePath four = OutlineChange.split(triangle(new Leg.Arc(0.4)), 0, 0.5);
    FreePath three = OutlineChange.without(four, 1);
    assertThat(three).isEqualTo(triangle(new Leg.Straight()));
    // Without the first point the last leg leads to the second.
    FreePath two = OutlineChange.without(triangle(new Leg.Arc(0.4)), 0);
    assertThat(two.points())
        .containsExactly(new Point(B, new Leg.Straight()), new Point(C, new Leg.Straight()));
  }

  @Test
  void anyOutlineByItsPointsIsTheSameOutline() {
    for (OutlineShape shape :
        List.of(
            new Rectangle(300, 200, List.of(0.0, 0.0, 0.0, 0.0)),
            new Rectangle(300, 200, List.of(10.0, 0.0, 40.0, 5.0)),
            new Rectangle(300, 200, List.of(100.0, 100.0, 100.0, 100.0)),
            new Trapezoid(400, 300, 200),
            new Circle(350),
            new Ellipse(500, 300))) {
      Path path = OutlineChange.path(shape);
      Path free = OutlineChange.path(OutlineChange.free(shape));
      assertThat(free.segments()).hasSameSizeAs(path.segments());
      for (int i = 0; i < path.segments().size(); i++) {
        for (double t = 0; t <= 1; t += 0.125) {
          assertThat(free.segments().get(i).pointAt(t).distance(path.segments().get(i).pointAt(t)))
              .isLessThan(1e-9);
        }
      }
    }
  }

  @Test
  void anotherKindOfOutlineIsAsLarge() {
    FreePath l = (FreePath) Shipped.demo("corner-bench").base().outline();
    // The L bench measures 900 x 820 over all.
    assertThat(OutlineChange.to("rectangle", l))
        .isEqualTo(new Rectangle(900, 820, List.of(0.0, 0.0, 0.0, 0.0)));
    assertThat(OutlineChange.to("trapezoid", l)).isEqualTo(new Trapezoid(900, 900, 820));
    assertThat(OutlineChange.to("circle", l)).isEqualTo(new Circle(820));
    assertThat(OutlineChange.to("ellipse", l)).isEqualTo(new Ellipse(900, 820));
    assertThat(OutlineChange.to("path", l)).isSameAs(l);
  }
}
