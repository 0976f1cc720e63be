package padwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.design.EdgeShape;
import padwright.design.Job;
import padwright.design.OutlineShape;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.desk.edit.PartEdit.Step;
import padwright.desk.edit.PartField;
import padwright.desk.edit.PlanItem;
import padwright.desk.edit.Remedy;
import padwright.desk.edit.Shipped;
import padwright.desk.view.PlanModel.Hit;
import padwright.desk.view.PlanSnap.Grid;
import padwright.desk.view.PlanSnap.Guide;
import padwright.geometry.Vec2;

/** The plan without a window: what is chosen, dragged, added, removed, typed, and undone. */
class PlanDeskTest {
  private static final int STOOL = 1;
  private static final int SEAT = 4;
  private static final int BENCH = 5;

  @TempDir Path folder;

  private final ByHand work = new ByHand();
  private final ByHand window = new ByHand();
  private Desk desk;
  private PlanDesk plan;

  @BeforeEach
  void start() {
    begin(Shipped.demo());
  }

  private void begin(Job job) {
    desk = new Desk(Shipped.CATALOGUE, job, window, work, new FaultLog(folder));
    plan = new PlanDesk(desk);
    desk.onChange(plan::refresh);
  }

  private void settled() {
    do {
      work.all();
      window.all();
    } while (work.waiting() > 0);
  }

  private List<Vec2> points() {
    return ((OutlineShape.FreePath) desk.pad().base().outline())
        .points().stream().map(OutlineShape.Point::at).toList();
  }

  private PartField field(String place) {
    return plan.source().fields().stream()
        .filter(f -> f.place().equals(place))
        .findFirst()
        .orElseThrow();
  }

  /** From (1180, 0) to (1203, 2): level with point 1, and 1205 on a grid of 5. */
  @Test
  void aDragIsOneStepToUndoAndRestsAsItIsDrawnTo() {
    desk.look(SEAT);
    WrappedPad before = desk.pad();
    plan.press(new Hit.Point(1));
    assertThat(plan.chosen()).isEqualTo(new PlanItem.Point(1));
    assertThat(plan.dragging()).isTrue();
    plan.drag(new Vec2(1191, 40), 8);
    plan.drag(new Vec2(1203, 2), 8);
    assertThat(points().get(1)).isEqualTo(new Vec2(1205, 0));
    assertThat(plan.rest().orElseThrow().guides()).extracting(Guide::words).contains("level");
    plan.release();
    assertThat(plan.dragging()).isFalse();
    assertThat(desk.toUndo()).contains("move point 2");
    desk.undo();
    assertThat(desk.pad()).isEqualTo(before);
    assertThat(desk.toUndo()).isEmpty();
  }

  @Test
  void aDragIntoAnOutlineThatCrossesItselfIsRefusedAndStaysWhereItWasLast() {
    desk.look(BENCH);
    plan.press(new Hit.Point(1));
    plan.drag(new Vec2(950, 0), 8);
    plan.drag(new Vec2(200, 900), 8);
    assertThat(plan.refusal().orElseThrow().problem()).contains("cross or touch");
    assertThat(points().get(1)).isEqualTo(new Vec2(950, 0));
    plan.release();
    assertThat(plan.refusal()).isEmpty();
    assertThat(points().get(1)).isEqualTo(new Vec2(950, 0));
  }

  @Test
  void aDragIsPutBack() {
    desk.look(SEAT);
    WrappedPad before = desk.pad();
    plan.press(new Hit.Point(1));
    plan.drag(new Vec2(1250, 30), 8);
    plan.putBack();
    assertThat(desk.pad()).isEqualTo(before);
    assertThat(plan.dragging()).isFalse();
    // One that moved nothing takes nothing back either.
    plan.choose(new PlanItem.Point(2));
    plan.nudge(3, 0);
    plan.press(new Hit.Point(1));
    plan.putBack();
    assertThat(points().get(2)).isEqualTo(new Vec2(1043, 380));
  }

  @Test
  void aSidesMiddleIsDraggedIntoAnArcAndStraightAgain() {
    desk.look(SEAT);
    WrappedPad before = desk.pad();
    plan.press(new Hit.Middle(2));
    assertThat(plan.chosen()).isEqualTo(new PlanItem.Side(2, "side 3"));
    plan.drag(new Vec2(590, 441), 8);
    assertThat(plan.source().typed(field("leg.rise"))).isEqualTo("60");
    plan.drag(new Vec2(590, 381), 8);
    assertThat(desk.pad()).isEqualTo(before);
    plan.release();
    assertThat(plan.rest()).isEmpty();
  }

  @Test
  void theGridIsTheJobsUntilAnotherIsChosen() {
    desk.look(SEAT);
    assertThat(plan.grid()).isEqualTo(Grid.MM_5);
    plan.setGrid(Grid.MM_10);
    plan.press(new Hit.Point(2));
    plan.drag(new Vec2(1097, 416), 4);
    assertThat(points().get(2)).isEqualTo(new Vec2(1100, 420));
    Job job = Shipped.demo();
    begin(new Job(job.title(), job.client(), job.date(), Units.INCH, job.parts()));
    assertThat(plan.grid()).isEqualTo(Grid.INCH_8);
  }

  @Test
  void pointsAreAddedToSidesAndTakenOut() {
    desk.look(SEAT);
    WrappedPad before = desk.pad();
    plan.choose(new PlanItem.Side(0, "side 1"));
    assertThat(plan.canRemove()).isFalse();
    plan.add();
    assertThat(plan.chosen()).isEqualTo(new PlanItem.Point(1));
    assertThat(points().get(1)).isEqualTo(new Vec2(590, 0));
    // The run that was on sides 2 and 4 stays on the same ones.
    assertThat(desk.pad().runs().get(0).sides()).containsExactly("side 3", "side 5");
    plan.remove();
    assertThat(desk.pad()).isEqualTo(before);
    assertThat(plan.chosen()).isEqualTo(new PlanItem.Point(0));
    plan.add(0, new Vec2(295, -9));
    assertThat(points().get(1)).isEqualTo(new Vec2(295, 0));
    plan.choose(new PlanItem.Outline());
    plan.add();
    assertThat(points().get(1)).isEqualTo(new Vec2(147.5, 0));
    assertThat(desk.toUndo()).contains("add a point");
    // The two that were added, one of the seat's own, and then a triangle keeps what it has.
    for (int i = 0; i < 4; i++) {
      plan.choose(new PlanItem.Point(1));
      plan.remove();
    }
    assertThat(points()).hasSize(3);
    assertThat(plan.refusal().orElseThrow().problem()).contains("enclose nothing");
  }

  @Test
  void whatIsChosenIsSteppedThroughAndMovedByNudges() {
    desk.look(SEAT);
    plan.step(-1);
    assertThat(plan.chosen().words()).isEqualTo("Side 4");
    plan.step(1);
    assertThat(plan.chosen()).isEqualTo(new PlanItem.Outline());
    assertThat(plan.nudge(1, 0)).isFalse();
    plan.step(3);
    assertThat(plan.chosen().words()).isEqualTo("Point 2");
    assertThat(plan.nudge(1, 0)).isTrue();
    plan.nudge(10, 0);
    assertThat(points().get(1)).isEqualTo(new Vec2(1191, 0));
    plan.nudge(0, -1);
    assertThat(points().get(1)).isEqualTo(new Vec2(1191, -1));
    // To the right was one row of nudges, to the front another.
    desk.undo();
    desk.undo();
    assertThat(points().get(1)).isEqualTo(new Vec2(1180, 0));
    plan.choose(new PlanItem.Side(2, "side 3"));
    assertThat(plan.nudge(0, 5)).isTrue();
    assertThat(plan.source().typed(field("leg.rise"))).isEqualTo("5");
    assertThat(plan.nudge(1, 0)).isFalse();
  }

  private static final String HOLE = "fittings.vents[0]";

  private Vec2 vent() {
    var v = desk.pad().fittings().vents().get(0);
    return new Vec2(v.x(), v.y());
  }

  /** Taken hold of 3 off its middle, it keeps 3 off; from (40, -20) on a grid of 5. */
  @Test
  void whatLiesOnTheBoardIsDraggedByTheGridAndNudged() {
    desk.look(SEAT);
    desk.change(
        p ->
            desk.edit()
                .with(
                    p,
                    Step.put(
                        "fittings.vents",
                        List.of(
                            new java.util.LinkedHashMap<>(
                                java.util.Map.of(
                                    "x", "40 mm", "y", "-20 mm", "diameter", "12 mm"))))),
        "vent",
        "");
    plan.refresh();
    assertThat(plan.items())
        .anyMatch(i -> i instanceof PlanItem.Member m && m.member().equals(HOLE));
    Vec2 hold = plan.plan().middle().plus(new Vec2(43, -20));
    plan.press(new Hit.Member(HOLE));
    assertThat(plan.dragging()).isTrue();
    plan.drag(hold, 3);
    plan.drag(hold.plus(new Vec2(31, 12)), 3);
    assertThat(vent()).isEqualTo(new Vec2(70, -10));
    assertThat(plan.rest().orElseThrow().at())
        .isEqualTo(plan.plan().middle().plus(new Vec2(70, -10)));
    plan.release();
    desk.undo();
    plan.refresh();
    assertThat(vent()).isEqualTo(new Vec2(40, -20));

    plan.choose(new PlanItem.Member(HOLE, plan.chosen().words()));
    assertThat(plan.nudge(2, 0)).isTrue();
    assertThat(plan.nudge(0, -1)).isTrue();
    assertThat(vent()).isEqualTo(new Vec2(42, -21));
    assertThat(plan.refusal()).isEmpty();
  }

  /**
   * A millimetre is nearest to 1/32 in: 0.79375 mm; 1180 mm lie between its marks 1486 and 1487.
   */
  @Test
  void nudgesInAnInchJobGoByTheMarksOfTheRule() {
    Job job = Shipped.demo();
    begin(new Job(job.title(), job.client(), job.date(), Units.INCH, job.parts()));
    desk.look(SEAT);
    plan.choose(new PlanItem.Point(1));
    plan.nudge(1, 0);
    assertThat(plan.source().typed(field("point.x"))).isEqualTo("46 1/2 in");
  }

  @Test
  void anOutlineWithSizesIsDrawnByItsPointsWhenThatIsWanted() {
    assertThat(plan.plan().drawn()).isFalse();
    assertThat(plan.canAdd()).isFalse();
    plan.add();
    plan.add(0, Vec2.ZERO);
    assertThat(desk.toUndo()).isEmpty();
    plan.press(new Hit.Side("front"));
    assertThat(plan.dragging()).isFalse();
    assertThat(plan.chosen()).isEqualTo(new PlanItem.Side(0, "front"));
    plan.byPoints();
    assertThat(plan.plan().drawn()).isTrue();
    assertThat(points()).hasSize(4);
    // "front" is no side of it any more.
    assertThat(plan.chosen()).isEqualTo(new PlanItem.Outline());
    assertThat(plan.canAdd()).isTrue();
  }

  @Test
  void anotherPartHasItsOwnPlanAndNothingChosen() {
    desk.look(SEAT);
    plan.choose(new PlanItem.Point(1));
    desk.look(BENCH);
    assertThat(plan.chosen()).isEqualTo(new PlanItem.Outline());
    assertThat(plan.items()).hasSize(13);
    desk.look(STOOL);
    plan.press(new Hit.Member("base.holes[1]"));
    assertThat(plan.chosen().words()).isEqualTo("Hole 2");
    plan.source().type(field("base.holes[1].x"), "-50");
    plan.source().nudge(field("base.holes[1].x"), 2);
    assertThat(desk.pad().base().holes().get(1).x()).isEqualTo(-48);
    assertThat(plan.nudge(1, 0)).isTrue();
    assertThat(desk.pad().base().holes().get(1).x()).isEqualTo(-47);
  }

  /** The seat's edge is square, its turn-under 25 by default, sides 2 and 4 have 35. */
  @Test
  void aSideSaysWhatTheRestHasAndIsGivenItsOwn() {
    desk.look(SEAT);
    settled();
    plan.choose(new PlanItem.Side(0, "side 1"));
    assertThat(plan.source().taken(field("side.edge"))).isEqualTo("square");
    assertThat(plan.source().taken(field("side.turnUnder"))).isEqualTo("25");
    assertThat(plan.source().taken(field("side.overhang"))).isEqualTo("0");
    assertThat(plan.source().taken(field("side.open"))).isEqualTo("turned under");
    assertThat(plan.source().taken(field("side.passage"))).isEmpty();
    assertThat(plan.source().taken(field("leg.length"))).isEmpty();
    assertThat(plan.source().nudge(field("side.passage"), 1)).isEmpty();
    plan.source().nudge(field("side.turnUnder"), 3);
    plan.source().nudge(field("side.turnUnder"), 2);
    assertThat(plan.source().typed(field("side.turnUnder"))).isEqualTo("30");
    assertThat(plan.source().taken(field("side.turnUnder"))).isEmpty();
    desk.undo();
    assertThat(plan.source().typed(field("side.turnUnder"))).isEmpty();
    assertThat(plan.source().type(field("side.edge"), "bevel")).isEmpty();
    assertThat(plan.source().type(field("side.edge.bevel"), "1/2 in")).isEmpty();
    assertThat(desk.pad().runs().get(1).edge()).contains(new EdgeShape.Bevel(12.7));
    assertThat(plan.source().type(field("side.turnUnder"), "-3")).isPresent();
    assertThat(plan.sentence())
        .startsWith("Side 1, Runs as straight, Length 1180, ")
        .endsWith("Top edge of the foam bevel, Bevelled by 12.7");
  }

  /** The rest of the part may be rounded, bevelled or full round. */
  @Test
  void theEdgeOfTheRestIsSaidInWords() {
    desk.look(SEAT);
    plan.choose(new PlanItem.Side(0, "side 1"));
    for (String[] edge :
        new String[][] {{"round", "round 6"}, {"bevel", "bevel 6"}, {"full round", "full round"}}) {
      desk.type(desk.field("edge").orElseThrow(), edge[0]);
      assertThat(plan.source().taken(field("side.edge"))).isEqualTo(edge[1]);
    }
  }

  @Test
  void aFieldOfWhatIsChosenNoMoreDoesNothing() {
    desk.look(SEAT);
    plan.choose(new PlanItem.Point(1));
    PartField x = field("point.x");
    desk.look(STOOL);
    assertThat(plan.source().typed(x)).isEmpty();
    assertThat(plan.source().taken(x)).isEmpty();
    assertThat(plan.source().type(x, "5")).isEmpty();
    assertThat(plan.source().nudge(x, 1)).isEmpty();
    plan.source().settle();
    assertThat(desk.toUndo()).isEmpty();
  }

  @Test
  void aRemedyIsTakenOrSaysWhyNot() {
    desk.look(SEAT);
    plan.take(new Remedy("turn 30 under", List.of(Step.mm("cover.turnUnder", 30))));
    assertThat(desk.pad().cover().turnUnder()).hasValue(30);
    plan.take(new Remedy("turn nothing", List.of(Step.mm("cover.turnUnder", -1))));
    assertThat(plan.refusal()).isPresent();
    plan.step(1);
    assertThat(plan.refusal()).isEmpty();
  }
}
