package padwright.desk.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.desk.edit.OutlineEdit;
import padwright.desk.edit.PartEdit;
import padwright.desk.edit.PartEdit.Step;
import padwright.desk.edit.Shipped;
import padwright.desk.view.PlanModel.Hit;
import padwright.desk.view.PlanSnap.Grid;
import padwright.desk.view.PlanSnap.Rest;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

/** What lies where on the plan, and where what is dragged comes to rest. */
class PlanModelTest {
  private final PartEdit edit = new PartEdit(Shipped.READER, Units.MM);

  /** (0,0) (900,0) (900,360) (380,360) (380,820) (0,820). */
  private final WrappedPad bench = Shipped.demo("corner-bench");

  /** (0,0) (1180,0) (1040,380) (140,380); sides 2 and 4 turned under by 35. */
  private final WrappedPad seat = Shipped.demo("window-seat");

  private static PlanModel plan(WrappedPad pad) {
    return new PlanModel(pad, Units.MM);
  }

  @Test
  void pointsLieWhereTheMakerPutThem() {
    PlanModel plan = plan(bench);
    assertThat(plan.drawn()).isTrue();
    assertThat(plan.points().get(3).at()).isEqualTo(new Vec2(380, 360));
    assertThat(plan.bounds()).isEqualTo(new Bounds(0, 0, 900, 820));
    assertThat(plan.legs().get(2).middle()).isEqualTo(new Vec2(640, 360));
    assertThat(plan.legs().get(2).outward().distance(new Vec2(0, 1))).isLessThan(1e-12);
    assertThat(plan.legs().get(2).length()).isEqualTo(520);
    // Out of a hollow corner is into the corner: up and to the right.
    assertThat(plan.corners().get(3).outward().x()).isCloseTo(Math.sqrt(0.5), within(1e-9));
    assertThat(plan.corners().get(3).outward().y()).isCloseTo(Math.sqrt(0.5), within(1e-9));
  }

  @Test
  void anOutlineDrawnTheOtherWayRoundHasTheSamePlan() {
    WrappedPad other =
        edit.with(
            bench,
            Step.put(
                "base.outline",
                Map.of(
                    "path",
                    List.of(
                        List.of(0, 0),
                        List.of(0, 820),
                        List.of(380, 820),
                        List.of(380, 360),
                        List.of(900, 360),
                        List.of(900, 0)))));
    PlanModel plan = plan(other);
    assertThat(plan.legs().get(3).side()).isEqualTo("side 4");
    assertThat(plan.legs().get(3).middle()).isEqualTo(new Vec2(640, 360));
    assertThat(plan.legs().get(3).outward().distance(new Vec2(0, 1))).isLessThan(1e-12);
  }

  @Test
  void holesLieFromTheMiddleOfTheOutline() {
    WrappedPad holed =
        edit.with(
            bench, Step.put("base.holes", List.of(Map.of("x", -300, "y", -200, "diameter", 12))));
    PlanModel.Place hole = plan(holed).places().get(0);
    assertThat(hole.at()).isEqualTo(new Vec2(150, 210));
    assertThat(plan(holed).at(new Vec2(152, 211), 5)).contains(new Hit.Member("base.holes[0]"));
    assertThat(hole.words()).isEqualTo("hole 1");
  }

  @Test
  void aPointerFindsPointsThenMiddlesThenSides() {
    PlanModel plan = plan(bench);
    assertThat(plan.at(new Vec2(903, 358), 8)).contains(new Hit.Point(2));
    assertThat(plan.at(new Vec2(640, 357), 8)).contains(new Hit.Middle(2));
    assertThat(plan.at(new Vec2(500, 357), 8)).contains(new Hit.Side("side 3"));
    assertThat(plan.at(new Vec2(200, 200), 8)).isEqualTo(Optional.empty());
    // A leg with no room for three handles has two.
    assertThat(plan.at(new Vec2(900, 180), 95)).contains(new Hit.Side("side 2"));
  }

  @Test
  void anOutlineOfSizesHasSidesAndNoHandles() {
    PlanModel plan = plan(Shipped.demo("reading-chair"));
    assertThat(plan.drawn()).isFalse();
    assertThat(plan.points()).isEmpty();
    assertThat(plan.sides()).containsExactly("front", "right", "back", "left");
    Vec2 front = plan.leg("front").orElseThrow().middle();
    assertThat(plan.at(front, 5)).contains(new Hit.Side("front"));
    PlanModel round = plan(Shipped.demo("stool-top"));
    assertThat(round.sides()).isEmpty();
    assertThat(round.at(round.legs().get(0).middle(), 5)).isEqualTo(Optional.empty());
  }

  @Test
  void sidesSayWhatTheyHaveOfTheirOwn() {
    PlanModel plan = plan(seat);
    assertThat(plan.difference("side 2")).isEqualTo("turn-under 35");
    assertThat(plan.difference("side 1")).isEmpty();
    assertThat(plan.run("side 4")).isZero();
    assertThat(plan.run("side 1")).isEqualTo(-1);
    WrappedPad more =
        edit.with(
            seat,
            Step.put(
                "runs[1]",
                Map.of("sides", List.of("side 1"), "edge", Map.of("bevel", 9), "overhang", -4)));
    assertThat(plan(more).difference("side 1")).isEqualTo("bevel 9, stepped back 4");
    assertThat(new PlanModel(more, Units.INCH).difference("side 2")).endsWith(" in");
  }

  @Test
  void aDraggedPointComesToRestLevelAndPlumbWithItsNeighbours() {
    PlanModel plan = plan(bench);
    Rest rest = PlanSnap.of(plan, 2, new Vec2(896, 365), Grid.MM_10, 8);
    assertThat(rest.at()).isEqualTo(new Vec2(900, 360));
    assertThat(rest.guides()).extracting(PlanSnap.Guide::words).containsExactly("level", "plumb");
    Rest free = PlanSnap.of(plan, 2, new Vec2(843.4, 401.2), Grid.MM_5, 8);
    assertThat(free.at()).isEqualTo(new Vec2(845, 400));
    assertThat(free.guides()).isEmpty();
    Rest level = PlanSnap.of(plan, 2, new Vec2(843.4, 361.2), Grid.MM_1, 8);
    assertThat(level.at()).isEqualTo(new Vec2(843, 360));
  }

  /**
   * Through (1180, 0) square to the front; through (140, 380) square to side 4, slope 140 : 380.
   */
  @Test
  void aDraggedPointComesToRestSquareToTheLegBeyond() {
    PlanModel plan =
        plan(
            edit.with(
                seat,
                Step.put(
                    "base.outline",
                    Map.of(
                        "path",
                        List.of(
                            List.of(0, 0),
                            List.of(1180, 200),
                            List.of(1040, 580),
                            List.of(140, 420))))));
    // Side 1 runs (1180, 200): square to it at its end is the way (-200, 1180).
    Vec2 way = new Vec2(-200, 1180).unit();
    Vec2 on = new Vec2(1180, 200).along(way, 300);
    Rest rest = PlanSnap.of(plan, 2, on.plus(new Vec2(3, 0)), Grid.MM_10, 8);
    assertThat(rest.at().distance(on)).isLessThan(1e-9);
    assertThat(rest.guides()).extracting(PlanSnap.Guide::words).containsExactly("square");
  }

  @Test
  void anEighthOfAnInchIsAGridToo() {
    Rest rest = PlanSnap.of(plan(bench), 2, new Vec2(839, 401), Grid.INCH_8, 2);
    // 839 / 3.175 = 264.25 and 401 / 3.175 = 126.3 eighths.
    assertThat(rest.at().x()).isCloseTo(264 * 3.175, within(1e-9));
    assertThat(rest.at().y()).isCloseTo(126 * 3.175, within(1e-9));
  }

  @Test
  void aBendRisesByTheGrid() {
    Vec2 middle = PlanSnap.middle(plan(bench), 0, new Vec2(300, -23), Grid.MM_5);
    assertThat(middle).isEqualTo(new Vec2(450, -25));
    WrappedPad bent = new OutlineEdit(edit, bench).bent(0, middle, 0.5);
    assertThat(plan(bent).legs().get(0).middle().distance(middle)).isLessThan(1e-3);
    // Radius over a chord of 900 with a rise of 25: (450^2 + 25^2) / 50.
    assertThat(plan(bent).legs().get(0).radius()).isCloseTo(4062.5, within(0.1));
  }

  @Test
  void everyPartThatShipsHasAPlan() {
    for (WrappedPad pad : Shipped.all()) {
      PlanModel plan = plan(pad);
      assertThat(plan.legs()).isNotEmpty();
      for (String side : plan.sides()) {
        Vec2 on = plan.leg(side).orElseThrow().middle();
        Optional<Hit> hit = plan.at(on, 1);
        assertThat(hit).as(pad.id() + " " + side).isPresent();
      }
      for (PlanModel.Opening o : plan.openings()) {
        assertThat(o.path().bounds().overlaps(plan.bounds())).isTrue();
      }
    }
  }
}
