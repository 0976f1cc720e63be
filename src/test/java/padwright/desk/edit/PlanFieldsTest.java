package padwright.desk.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.desk.edit.PartEdit.Step;
import padwright.geometry.Vec2;
import padwright.measure.InputRefused;

/** What can be filled in of a point, a side and all else on the plan. Values by hand. */
class PlanFieldsTest {
  private final PartEdit edit = new PartEdit(Shipped.READER, Units.MM);
  private final PartEdit inches = new PartEdit(Shipped.READER, Units.INCH);

  /** (0,0) (1180,0) (1040,380) (140,380); sides 2 and 4 turned under by 35. */
  private final WrappedPad seat = Shipped.demo("window-seat");

  private PlanFields of(WrappedPad pad, PlanItem item) {
    return new PlanFields(edit, pad, item);
  }

  private static PlanItem side(int number) {
    return new PlanItem.Side(number - 1, "side " + number);
  }

  private static PartField field(PlanFields of, String place) {
    return of.fields().stream().filter(f -> f.place().equals(place)).findFirst().orElseThrow();
  }

  private static List<String> places(PlanFields of) {
    return of.fields().stream().map(PartField::place).toList();
  }

  private WrappedPad typed(WrappedPad pad, PlanItem item, String place, String text) {
    return of(pad, item).typed(field(of(pad, item), place), text);
  }

  private String shown(WrappedPad pad, PlanItem item, String place) {
    return of(pad, item).shown(field(of(pad, item), place));
  }

  private List<Vec2> points(WrappedPad pad) {
    return new OutlineEdit(edit, pad).path().points().stream().map(OutlineShape.Point::at).toList();
  }

  @Test
  void aPointIsTypedByItsPlace() {
    PlanItem second = new PlanItem.Point(1);
    assertThat(shown(seat, second, "point.x")).isEqualTo("1180");
    WrappedPad next = typed(seat, second, "point.x", "1200 - 10");
    assertThat(points(next).get(1)).isEqualTo(new Vec2(1190, 0));
    assertThat(points(typed(next, second, "point.y", "-4")).get(1)).isEqualTo(new Vec2(1190, -4));
    // What is shown, typed again, changes nothing.
    assertThat(typed(seat, second, "point.x", "1180")).isSameAs(seat);
    assertThatThrownBy(() -> typed(seat, second, "point.x", "wide"))
        .isInstanceOf(InputRefused.class);
  }

  /** 47 1/4 inches are 1200.15 mm. */
  @Test
  void inAnInchJobPointsAndBendsAreTypedAndShownInInches() {
    PlanFields second = new PlanFields(inches, seat, new PlanItem.Point(1));
    WrappedPad next = second.typed(field(second, "point.x"), "47 1/4");
    assertThat(points(next).get(1).x()).isCloseTo(1200.15, within(1e-9));
    PlanFields again = new PlanFields(inches, next, new PlanItem.Point(1));
    assertThat(again.shown(field(again, "point.x"))).isEqualTo("47 1/4 in");
    PlanFields back = new PlanFields(inches, seat, side(3));
    PlanFields bent = new PlanFields(inches, back.typed(field(back, "leg.rise"), "1 1/2"), side(3));
    assertThat(bent.shown(field(bent, "leg.rise"))).isEqualTo("1 1/2 in");
  }

  @Test
  void aSideIsTypedByItsLength() {
    assertThat(shown(seat, side(1), "leg.length")).isEqualTo("1180");
    assertThat(points(typed(seat, side(1), "leg.length", "1200")).get(1))
        .isEqualTo(new Vec2(1200, 0));
    assertThatThrownBy(() -> typed(seat, side(1), "leg.length", "0"))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("cannot be 0 long");
  }

  /** Over a chord of 900 a rise of 50 is a radius of (450^2 + 50^2) / 100 = 2050. */
  @Test
  void aSideIsBentByItsRiseOrRadius() {
    WrappedPad arc = typed(seat, side(3), "leg.rise", "50");
    assertThat(shown(arc, side(3), "leg.way")).isEqualTo("arc");
    assertThat(shown(arc, side(3), "leg.rise")).isEqualTo("50");
    assertThat(shown(arc, side(3), "leg.radius")).isEqualTo("2050");
    // Out of the part is to the back.
    assertThat(OutlineChange.path(arc.base().outline()).bounds().height())
        .isCloseTo(430, within(1e-6));
    assertThat(shown(typed(arc, side(3), "leg.radius", "450"), side(3), "leg.rise"))
        .isEqualTo("450");
    assertThat(shown(typed(seat, side(3), "leg.rise", "-50"), side(3), "leg.rise"))
        .isEqualTo("-50");
    assertThatThrownBy(() -> typed(arc, side(3), "leg.radius", "449"))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("at least 450");
    assertThat(typed(arc, side(3), "leg.way", "straight")).isEqualTo(seat);
    // First made an arc it rises by a tenth of its length.
    assertThat(shown(typed(seat, side(3), "leg.way", "arc"), side(3), "leg.rise")).isEqualTo("90");
  }

  @Test
  void outwardsIsOutwardsWhicheverWayRoundThePointsGo() {
    WrappedPad other =
        edit.with(
            seat,
            Step.remove("runs"),
            Step.put(
                "base.outline",
                Map.of(
                    "path",
                    List.of(
                        List.of(0, 0), List.of(140, 380), List.of(1040, 380), List.of(1180, 0)))));
    WrappedPad arc = typed(other, side(2), "leg.rise", "50");
    assertThat(OutlineChange.path(arc.base().outline()).bounds().height())
        .isCloseTo(430, within(1e-6));
    assertThat(shown(arc, side(2), "leg.rise")).isEqualTo("50");
  }

  /** Two halves of a circle: their points lie on a line and tell nothing of the way round. */
  @Test
  void outwardsIsToldOfTwoArcsToo() {
    WrappedPad round =
        edit.with(
            seat,
            Step.remove("runs"),
            Step.put(
                "base.outline", Map.of("path", List.of(List.of(0, 0, 1), List.of(400, 0, 1)))));
    assertThat(new OutlineEdit(edit, round).anticlockwise()).isTrue();
    assertThat(shown(round, side(1), "leg.rise")).isEqualTo("200");
    WrappedPad flatter = typed(round, side(1), "leg.rise", "100");
    assertThat(OutlineChange.path(flatter.base().outline()).bounds().height())
        .isCloseTo(300, within(1e-6));
  }

  @Test
  void aCurveHasItsControlsAsFields() {
    WrappedPad curved =
        (WrappedPad)
            Shipped.everyField().parts().stream()
                .filter(p -> p.id().equals("window-seat"))
                .findFirst()
                .orElseThrow();
    assertThat(shown(curved, side(6), "leg.way")).isEqualTo("curve");
    assertThat(shown(curved, side(6), "leg.control1x")).isEqualTo("12");
    assertThat(shown(curved, side(6), "leg.control2y")).isEqualTo("260");
    WrappedPad next = typed(curved, side(6), "leg.control2y", "250");
    next = typed(next, side(6), "leg.control1x", "15");
    assertThat(new OutlineEdit(edit, next).path().points().get(5).leg())
        .isEqualTo(new OutlineShape.Leg.Cubic(new Vec2(15, 560), new Vec2(12, 250)));
    assertThat(typed(curved, side(6), "leg.way", "curve")).isEqualTo(curved);
    assertThat(places(of(curved, side(6)))).doesNotContain("leg.rise", "leg.radius");
  }

  /** The demo's seat has sides 2 and 4 in one run. */
  @Test
  void aSideHasSettingsOfItsOwnWhateverRunItIsIn() {
    assertThat(shown(seat, side(2), "side.turnUnder")).isEqualTo("35");
    assertThat(shown(seat, side(1), "side.turnUnder")).isEmpty();
    WrappedPad next = typed(seat, side(1), "side.edge", "round");
    next = typed(next, side(1), "side.edge.round", "4+4");
    assertThat(RunEdit.run(next, "side 1").orElseThrow().edge()).contains(new EdgeShape.Round(8));
    assertThat(typed(next, side(1), "side.edge", "")).isEqualTo(seat);
    assertThatThrownBy(() -> typed(seat, side(2), "side.turnUnder", "-3"))
        .isInstanceOf(InputRefused.class);
  }

  @Test
  void aSideOfAnOutlineWithSizesHasTheSizeItBelongsTo() {
    PlanItem front = new PlanItem.Side(0, "front");
    WrappedPad rest = Shipped.demo("desk-rest");
    assertThat(places(of(rest, front))).startsWith("base.outline.rectangle.length", "side.edge");
    assertThat(typed(rest, front, "base.outline.rectangle.length", "600+12").base().outline())
        .isEqualTo(new OutlineShape.Rectangle(612, 60, List.of(0.0, 0.0, 0.0, 0.0)));
    assertThat(shown(rest, new PlanItem.Side(1, "right"), "base.outline.rectangle.width"))
        .isEqualTo("60");
    WrappedPad chair = Shipped.demo("reading-chair");
    assertThat(shown(chair, front, "base.outline.trapezoid.front")).isEqualTo("440");
    assertThat(shown(chair, new PlanItem.Side(2, "back"), "base.outline.trapezoid.back"))
        .isEqualTo("400");
    assertThat(shown(chair, new PlanItem.Side(3, "left"), "base.outline.trapezoid.depth"))
        .isEqualTo("390");
  }

  @Test
  void theOutlineAndWhatIsInTheBoardHaveTheFieldsOfTheJobFile() {
    WrappedPad stool = Shipped.demo("stool-top");
    assertThat(places(of(stool, new PlanItem.Outline())))
        .containsExactly("base.outline", "base.outline.circle.diameter");
    PlanItem hole = new PlanItem.Member("base.holes[1]", "Hole 2");
    assertThat(PlanItem.of(stool)).contains(hole);
    WrappedPad moved = typed(stool, hole, "base.holes[1].x", "-50");
    assertThat(moved.base().holes().get(1).x()).isEqualTo(-50);
    assertThat(of(stool, new PlanItem.Member("base.holes[9]", "Hole 10")).fields()).isEmpty();
  }

  @Test
  void whatCanBeChosenFollowsTheOutlineRound() {
    assertThat(PlanItem.of(seat))
        .extracting(PlanItem::words)
        .containsExactly(
            "Outline", "Point 1", "Side 1", "Point 2", "Side 2", "Point 3", "Side 3", "Point 4",
            "Side 4");
    assertThat(PlanItem.of(Shipped.demo("reading-chair")))
        .extracting(PlanItem::words)
        .containsExactly("Outline", "Front", "Right", "Back", "Left");
    assertThat(PlanItem.of(Shipped.demo("stool-top")))
        .extracting(PlanItem::words)
        .startsWith("Outline", "Hole 1", "Hole 2", "Screw place 1");
  }

  @Test
  void aNewPointComesToLieNearestToWhereItIsWanted() {
    var path = new OutlineEdit(edit, seat).path();
    assertThat(OutlineChange.share(path, 0, new Vec2(295, -20))).isEqualTo(0.25);
    // On half a circle over (0,0) to (400,0) straight below its middle is half way.
    var round =
        new OutlineShape.FreePath(
            List.of(
                new OutlineShape.Point(new Vec2(0, 0), new OutlineShape.Leg.Arc(1)),
                new OutlineShape.Point(new Vec2(400, 0), new OutlineShape.Leg.Straight())));
    assertThat(OutlineChange.share(round, 0, new Vec2(200, -500))).isEqualTo(0.5);
    // A curve that is the same from both ends has its middle half way.
    var curve =
        new OutlineShape.FreePath(
            List.of(
                new OutlineShape.Point(
                    new Vec2(0, 0),
                    new OutlineShape.Leg.Cubic(new Vec2(100, 90), new Vec2(300, 90))),
                new OutlineShape.Point(new Vec2(400, 0), new OutlineShape.Leg.Straight())));
    assertThat(OutlineChange.share(curve, 0, new Vec2(200, 300))).isEqualTo(0.5);
  }
}
