package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import padwright.cover.CornerPlan;
import padwright.design.EdgeShape;
import padwright.design.Finding;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.Side;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

/** How an outline is written down does not change the part, nor does turning it or its scale. */
class OutlineSymmetryTest {
  private static final int OUTLINES = 150;

  private interface Rewritten {
    FreePath of(FreePath path, int i);
  }

  private static void same(long seed, Rewritten rewritten, boolean turned) {
    RandomOutlines outlines = new RandomOutlines(seed);
    for (int i = 0; i < OUTLINES; i++) {
      Pads pads = outlines.next();
      if (turned) {
        // What its sides face does not turn with it.
        pads.size = SizeMeaning.BOARD;
      }
      PartResult part = pads.run();
      FreePath path = (FreePath) pads.outline;
      pads.outline = rewritten.of(path, i);
      if (turned) {
        pads.front = Side.values()[(pads.front.ordinal() + 1) % 4];
      }
      PartResult other = pads.run();
      String what = "outline " + i + ": " + path;
      double area = part.cover().trim().area();
      assertThat(other.cover().trim().area()).as(what).isCloseTo(area, within(1e-6 * area));
      assertThat(other.wrap().proved()).as(what).isEqualTo(part.wrap().proved());
      assertThat(other.cover().gussets()).as(what).hasSameSizeAs(part.cover().gussets());
      assertThat(treatments(other)).as(what).isEqualTo(treatments(part));
      Bounds a = part.cover().trim().bounds();
      Bounds b = other.cover().trim().bounds();
      assertThat(turned ? b.height() : b.width()).as(what).isCloseTo(a.width(), within(1e-6));
      assertThat(turned ? b.width() : b.height()).as(what).isCloseTo(a.height(), within(1e-6));
      if (!turned) {
        assertThat(rules(other)).as(what).isEqualTo(rules(part));
      }
    }
  }

  private static List<Treatment> treatments(PartResult part) {
    return part.cover().corners().stream().map(c -> c.treatment()).sorted().toList();
  }

  private static List<String> rules(PartResult part) {
    return part.findings().stream().map(Finding::rule).sorted().toList();
  }

  @Test
  void whichPointComesFirstDoesNotMatter() {
    same(
        11,
        (path, i) -> {
          List<Point> points = new ArrayList<>(path.points());
          Collections.rotate(points, 1 + i % (points.size() - 1));
          return new FreePath(points);
        },
        false);
  }

  @Test
  void whichWayItGoesRoundDoesNotMatter() {
    same(
        12,
        (path, i) -> {
          List<Point> points = new ArrayList<>();
          int n = path.points().size();
          for (int k = 0; k < n; k++) {
            // The side that started at the point before now starts at this one.
            Leg leg = path.points().get(Math.floorMod(n - 2 - k, n)).leg();
            points.add(new Point(path.points().get(n - 1 - k).at(), reversed(leg)));
          }
          return new FreePath(points);
        },
        false);
  }

  private static Leg reversed(Leg leg) {
    if (leg instanceof Leg.Arc a) {
      return new Leg.Arc(-a.bulge());
    }
    return leg instanceof Leg.Cubic c ? new Leg.Cubic(c.second(), c.first()) : leg;
  }

  @Test
  void aQuarterTurnTurnsTheCover() {
    same(13, (path, i) -> mapped(path, p -> new Vec2(-p.y(), p.x())), true);
  }

  private static FreePath mapped(FreePath path, UnaryOperator<Vec2> map) {
    return new FreePath(
        path.points().stream()
            .map(
                p ->
                    new Point(
                        map.apply(p.at()),
                        p.leg() instanceof Leg.Cubic c
                            ? new Leg.Cubic(map.apply(c.first()), map.apply(c.second()))
                            : p.leg()))
            .toList());
  }

  /** Where every length of a part is doubled, its developed sides and its fullness are. */
  @Test
  void everyLengthDoubledDoublesWhatTheCoveringTakes() {
    RandomOutlines outlines = new RandomOutlines(14);
    int compared = 0;
    for (int i = 0; i < OUTLINES; i++) {
      Pads pads = outlines.next();
      pads.treatments = List.of(Treatment.SINGLE_PLEAT);
      pads.wadding = Optional.empty();
      pads.foam = List.of(Pads.layer(18, 0));
      pads.edge = new EdgeShape.Square();
      pads.coverThickness = OptionalDouble.of(1);
      pads.turnUnder = OptionalDouble.of(16);
      pads.grip = OptionalDouble.of(10);
      pads.thickness = 12;
      pads.backArris = 0;
      pads.size = SizeMeaning.BOARD;
      PartResult part = pads.run();
      pads.outline = mapped((FreePath) pads.outline, p -> p.times(2));
      pads.foam = List.of(new FoamLayer("firm", 36, OptionalDouble.of(0)));
      pads.coverThickness = OptionalDouble.of(2);
      pads.turnUnder = OptionalDouble.of(32);
      pads.grip = OptionalDouble.of(20);
      pads.thickness = 24;
      PartResult twice = pads.run();
      String what = "outline " + i;
      for (int k = 0; k < part.cover().perSide().size(); k++) {
        assertThat(twice.cover().perSide().get(k))
            .as(what)
            .isCloseTo(2 * part.cover().perSide().get(k), within(1e-6));
      }
      assertThat(twice.cover().corners()).as(what).hasSameSizeAs(part.cover().corners());
      for (int k = 0; k < part.cover().corners().size(); k++) {
        CornerPlan one = part.cover().corners().get(k);
        CornerPlan two = twice.cover().corners().get(k);
        compared++;
        assertThat(two.fullnessAtBack()).as(what).isCloseTo(2 * one.fullnessAtBack(), within(1e-6));
        assertThat(two.fullnessAtTrim()).as(what).isCloseTo(2 * one.fullnessAtTrim(), within(1e-6));
        assertThat(two.opening()).as(what).isCloseTo(2 * one.opening(), within(1e-6));
        assertThat(two.turn()).as(what).isCloseTo(one.turn(), within(1e-9));
      }
    }
    assertThat(compared).isGreaterThan(OUTLINES * 3);
  }
}
