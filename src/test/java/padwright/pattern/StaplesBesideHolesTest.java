package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.Finding;
import padwright.design.WrappedPad.Hole;
import padwright.fastening.StaplePlan;
import padwright.geometry.Vec2;

/** Beside a hole the staples close up, and what gap is left is said as it is. */
class StaplesBesideHolesTest {
  private static Pads seat(Hole... holes) {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(300, 200);
    pads.spacing = OptionalDouble.of(25);
    pads.edgeDistance = OptionalDouble.of(12);
    pads.holes = List.of(holes);
    return pads;
  }

  /** Gaps along the front, worked out here from the places alone. */
  private static double widestOnTheFront(PartResult part) {
    List<Double> xs =
        part.staples().positions().stream()
            .filter(p -> p.side().equals("front"))
            .map(p -> p.at().x())
            .sorted()
            .toList();
    double widest = 0;
    for (int i = 0; i + 1 < xs.size(); i++) {
      widest = Math.max(widest, xs.get(i + 1) - xs.get(i));
    }
    return widest;
  }

  @Test
  void aSmallHoleOnTheStapleLineLeavesNoMoreThanItsOwnWidth() {
    PartResult part = seat(new Hole(0, -88, 10)).run();
    double crown = part.spec().staple().crown();
    // 5 of hole, 3 of wood and half a crown on either side; places are searched for in steps of a
    // half.
    double own = 2 * (5 + 3 + crown / 2);
    assertThat(own).isGreaterThan(25.5);
    assertThat(widestOnTheFront(part)).isBetween(own, own + 1.0);
    assertThat(part.staples().largestGap()).isCloseTo(widestOnTheFront(part), within(1e-9));
    Finding gap =
        part.findings().stream()
            .filter(f -> f.rule().equals("staple-gap"))
            .findFirst()
            .orElseThrow();
    assertThat(gap.level()).isEqualTo(Finding.Level.CAUTION);
    assertThat(gap.value().orElseThrow()).isCloseTo(widestOnTheFront(part), within(1e-9));
    assertThat(gap.limit()).hasValue(25);
  }

  @Test
  void everyRowBesideHolesKeepsItsSpacingWhereNoHoleIs() {
    Hole[] holes = {new Hole(-40, -88, 6), new Hole(55, -90, 20), new Hole(138, 30, 8)};
    PartResult part = seat(holes).run();
    assertThat(part.staples().positions())
        .allSatisfy(
            p -> {
              for (Hole h : holes) {
                assertThat(p.at().distance(new Vec2(h.x(), h.y())))
                    .isGreaterThanOrEqualTo(
                        h.diameter() / 2 + 3 + part.spec().staple().crown() / 2 - 1e-9);
              }
            });
    List<StaplePlan.Position> front =
        part.staples().positions().stream()
            .filter(p -> p.side().equals("front"))
            .sorted(java.util.Comparator.comparingDouble(p -> p.at().x()))
            .toList();
    for (int i = 0; i + 1 < front.size(); i++) {
      double a = front.get(i).at().x();
      double b = front.get(i + 1).at().x();
      boolean hole = a < -40 && b > -40 || a < 55 && b > 55;
      assertThat(b - a).isLessThanOrEqualTo(hole ? 45 : 25 + 1e-9);
      assertThat(b - a).isGreaterThanOrEqualTo(part.spec().staple().crown());
    }
  }

  @Test
  void whereNothingIsInTheWayThereIsNoGapToTellOf() {
    assertThat(seat().run().findings()).noneMatch(f -> f.rule().equals("staple-gap"));
    assertThat(seat(new Hole(0, 0, 10)).run().findings())
        .noneMatch(f -> f.rule().equals("staple-gap"));
  }
}
