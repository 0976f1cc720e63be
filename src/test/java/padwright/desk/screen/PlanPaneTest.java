package padwright.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import javafx.event.Event;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import padwright.design.OutlineShape;
import padwright.desk.edit.PartEdit.Step;
import padwright.desk.edit.PlanItem;
import padwright.desk.edit.RunEdit;
import padwright.desk.model.Desk;
import padwright.desk.view.PlanSnap.Grid;
import padwright.geometry.Vec2;

/** The plan by hand and by keys: the demo's window seat, (0,0) (1180,0) (1040,380) (140,380). */
@ExtendWith(ApplicationExtension.class)
class PlanPaneTest {
  private static final int REST = 0;
  private static final int STOOL = 1;
  private static final int SEAT = 4;
  private static final int BENCH = 5;

  private PlanHand hand;
  private Desk desk;
  private PlanPane pane;

  @Start
  void start(Stage stage) {
    hand = new PlanHand(stage);
    desk = hand.desk;
    pane = hand.pane;
  }

  @Test
  void aPointIsDraggedAsOneStepAndARefusedDragSaysWhyAndIsPutBack(FxRobot robot) {
    hand.part(SEAT);
    hand.mouse(MouseEvent.MOUSE_MOVED, 1180, 0, 0);
    assertThat(pane.sheet().getCursor()).isEqualTo(Cursor.MOVE);
    hand.drag(1180, 0, 1195, 60, 1250, 1);
    // Still held: it rests level with the point before, on the grid along.
    assertThat(hand.points().get(1)).isEqualTo(new Vec2(1250, 0));
    assertThat(pane.sheet().getAccessibleText()).contains("Point 2").contains("1250");
    PlanHand.on(() -> Screens.keep(pane, "plan-drag"));
    hand.drop(1250, 1);
    assertThat(hand.field("point.x").getText()).isEqualTo("1250");
    assertThat(desk.toUndo()).contains("move point 2");
    PlanHand.on(desk::undo);
    assertThat(hand.points().get(1)).isEqualTo(new Vec2(1180, 0));
    assertThat(desk.toUndo()).isEmpty();

    hand.part(BENCH);
    hand.drag(900, 0, 800, 0, 200, 800);
    Label why = robot.lookup("#plan-refused").queryAs(Label.class);
    assertThat(why.isVisible()).isTrue();
    assertThat(why.getText()).contains("cross or touch");
    assertThat(hand.points().get(1)).isEqualTo(new Vec2(800, 0));
    PlanHand.on(() -> Screens.keep(pane, "plan-refused"));
    hand.key(KeyCode.ESCAPE, false);
    assertThat(hand.points().get(1)).isEqualTo(new Vec2(900, 0));
    hand.drop(200, 800);
    assertThat(why.isVisible()).isFalse();
  }

  /** A rise of 60 over 900: a radius of (450^2 + 60^2) / 120 = 1717.5. */
  @Test
  void aMiddleIsDraggedASideIsSplitThePlanIsMovedAndZoomed(FxRobot robot) {
    hand.part(SEAT);
    hand.drag(590, 380, 590, 410, 590, 440);
    hand.drop(590, 440);
    assertThat(hand.field("leg.rise").getText()).isEqualTo("60");
    assertThat(hand.field("leg.radius").getText()).isEqualTo("1717.5");
    hand.type("leg.rise", "0");
    assertThat(robot.lookup((Node n) -> "plan-leg.radius".equals(n.getId())).tryQuery()).isEmpty();
    hand.click(295, 0, 1);
    hand.click(295, 0, 2);
    assertThat(hand.points().get(1)).isEqualTo(new Vec2(295, 0));
    assertThat(hand.chosen()).isEqualTo(new PlanItem.Point(1));
    // On nothing: the outline as a whole; a drag there moves the plan.
    hand.click(590, 200, 1);
    assertThat(hand.chosen()).isEqualTo(new PlanItem.Outline());
    double left = pane.sheet().viewport().left();
    hand.drag(590, 200, 700, 200);
    assertThat(pane.sheet().viewport().left()).isGreaterThan(left + 20);
    hand.drop(700, 200);
    double scale = pane.sheet().viewport().scale();
    PlanHand.on(
        () ->
            Event.fireEvent(
                pane.sheet(),
                new ScrollEvent(
                    ScrollEvent.SCROLL,
                    9,
                    9,
                    9,
                    9,
                    false,
                    false,
                    false,
                    false,
                    true,
                    false,
                    0,
                    80,
                    0,
                    80,
                    null,
                    0,
                    null,
                    0,
                    0,
                    null)));
    // Two of the four steps that double it.
    assertThat(pane.sheet().viewport().scale())
        .isCloseTo(scale * Math.sqrt(2), org.assertj.core.api.Assertions.within(1e-9));
    hand.press("#plan-fit");
    PlanHand.on(pane::layout);
    assertThat(pane.sheet().viewport().left()).isEqualTo(left);
  }

  @Test
  void allOfItIsDoneByKeys(FxRobot robot) {
    hand.part(SEAT);
    assertThat(pane.sheet().isFocused()).isTrue();
    hand.write("nnn");
    assertThat(hand.chosen()).isEqualTo(new PlanItem.Point(1));
    hand.key(KeyCode.RIGHT, false);
    hand.key(KeyCode.UP, true);
    assertThat(hand.points().get(1)).isEqualTo(new Vec2(1181, 10));
    hand.write("N");
    assertThat(hand.chosen()).isEqualTo(new PlanItem.Side(0, "side 1"));
    hand.key(KeyCode.INSERT, false);
    assertThat(hand.points()).hasSize(5);
    assertThat(pane.sheet().getAccessibleText())
        .startsWith("Plan of Window seat")
        .contains("Point 2");
    hand.key(KeyCode.DELETE, false);
    assertThat(hand.points()).hasSize(4);
    hand.write("na");
    assertThat(hand.points()).hasSize(5);
    hand.key(KeyCode.ENTER, false);
    assertThat(hand.field("point.x").isFocused()).isTrue();
    double scale = pane.sheet().viewport().scale();
    hand.write("+");
    assertThat(pane.sheet().viewport().scale()).isGreaterThan(scale);
    hand.write("-0");
    hand.key(KeyCode.ESCAPE, false);
    assertThat(hand.chosen()).isEqualTo(new PlanItem.Outline());
    double left = pane.sheet().viewport().left();
    double top = pane.sheet().viewport().top();
    hand.key(KeyCode.LEFT, false);
    hand.key(KeyCode.DOWN, false);
    assertThat(pane.sheet().viewport().left()).isGreaterThan(left);
    assertThat(pane.sheet().viewport().top()).isLessThan(top);
    assertThat(pane.sheet().getAccessibleRole()).isEqualTo(AccessibleRole.IMAGE_VIEW);
    assertThat(pane.sheet().getAccessibleHelp()).isEqualTo(PlanSheet.KEYS);
  }

  /** A turn-under of 10 leaves nothing behind staples that stand 12 from the edge. */
  @Test
  void lengthsAreTypedAndASidesStopStandsBesideItsField(FxRobot robot) {
    hand.part(SEAT);
    PlanHand.on(() -> pane.choose(3));
    hand.type("point.x", "1200-10");
    assertThat(hand.points().get(1)).isEqualTo(new Vec2(1190, 0));
    hand.type("point.x", "wide");
    assertThat(hand.notes()).anyMatch(w -> w.startsWith("To the right: ") && w.contains("wide"));
    assertThat(hand.field("point.x").getParent().getStyleClass()).contains("form-stop");
    robot.push(KeyCode.ESCAPE);
    assertThat(hand.notes()).isEmpty();
    assertThat(hand.field("point.x").getText()).isEqualTo("1190");
    robot.push(KeyCode.UP);
    assertThat(hand.points().get(1)).isEqualTo(new Vec2(1191, 0));

    hand.click(1000, 0, 1);
    assertThat(hand.chosen()).isEqualTo(new PlanItem.Side(0, "side 1"));
    hand.type("side.turnUnder", "10");
    hand.worked();
    assertThat(RunEdit.run(desk.pad(), "side 1").orElseThrow().turnUnder()).hasValue(10);
    assertThat(hand.notes()).anyMatch(w -> w.startsWith("stop: Side 1: a turn-under of 10.0"));
    TextField turned = hand.field("side.turnUnder");
    assertThat(turned.getParent().getStyleClass()).contains("form-stop");
    assertThat(turned.getAccessibleText()).isEqualTo("Side 1, Turn-under");
    PlanHand.on(() -> Screens.keep(pane, "plan-stop"));
    PlanHand.on(() -> pane.choose(0));
    PlanHand.on(() -> pane.reveal(desk.bench().findings().get(0)));
    assertThat(hand.chosen()).isEqualTo(new PlanItem.Side(0, "side 1"));
  }

  @Test
  void anOutlineWithSizesIsChangedByThemOrDrawnByItsPoints(FxRobot robot) {
    hand.part(STOOL);
    ComboBox<PlanItem> all = hand.chooser();
    assertThat(all.getItems()).extracting(PlanItem::words).startsWith("Outline", "Hole 1");
    PlanHand.on(() -> all.setValue(all.getItems().get(1)));
    assertThat(hand.field("base.holes[0].diameter").getText()).isEqualTo("20");
    hand.part(REST);
    Button add = robot.lookup("#plan-add").queryAs(Button.class);
    assertThat(add.isVisible()).isFalse();
    hand.click(150, -30, 1);
    assertThat(hand.chosen().words()).isEqualTo("Front");
    hand.type("base.outline.rectangle.length", "600+12");
    assertThat(desk.pad().base().outline())
        .isEqualTo(new OutlineShape.Rectangle(612, 60, List.of(0.0, 0.0, 0.0, 0.0)));
    hand.press("#plan-by-points");
    assertThat(hand.points()).hasSize(4);
    assertThat(add.isVisible()).isTrue();
    hand.press("#plan-add");
    assertThat(hand.points()).hasSize(5);
    hand.press("#plan-remove");
    assertThat(hand.points()).hasSize(4);
    PlanHand.on(() -> hand.grid().setValue(Grid.MM_10));
    assertThat(pane.plan().grid()).isEqualTo(Grid.MM_10);
  }

  /** The bench drawn clockwise, with runs and a vent, in the dark, in large letters. */
  @Test
  void allOfAPlanIsPaintedAndEveryFieldOfItHasAName(FxRobot robot) {
    hand.part(BENCH);
    List<List<Integer>> clockwise =
        List.of(
            List.of(0, 0),
            List.of(0, 820),
            List.of(380, 820),
            List.of(380, 360),
            List.of(900, 360),
            List.of(900, 0));
    PlanHand.on(
        () -> {
          desk.change(
              p ->
                  desk.edit()
                      .with(
                          p,
                          Step.put("base.outline", Map.of("path", clockwise)),
                          Step.put(
                              "runs",
                              List.of(
                                  Map.of("sides", List.of("side 1"), "turnUnder", 30),
                                  Map.of("sides", List.of("side 6"), "open", "bare"))),
                          Step.put(
                              "fittings.vents",
                              List.of(Map.of("x", -300, "y", -200, "diameter", 20)))),
              "all",
              "");
          pane.setDark(true);
          pane.setTextSize(1.4);
        });
    ComboBox<PlanItem> all = hand.chooser();
    assertThat(all.getItems()).hasSize(14);
    for (PlanItem item : List.copyOf(all.getItems())) {
      PlanHand.on(() -> all.setValue(item));
      assertThat(robot.lookup(".form-field").queryAllAs(Control.class))
          .isNotEmpty()
          .allSatisfy(c -> assertThat(c.getAccessibleText()).startsWith(item.words() + ", "));
    }
    hand.mouse(MouseEvent.MOUSE_MOVED, 900, 90, 0);
    assertThat(pane.sheet().getCursor()).isEqualTo(Cursor.HAND);
    hand.mouse(MouseEvent.MOUSE_MOVED, 150, 210, 0);
    PlanHand.on(() -> Screens.keep(pane, "plan-dark-large"));
    // The board is painted where the part is, and not in the hollow of its corner.
    assertThat(hand.colour(250, 600)).isNotEqualTo(hand.colour(700, 650));
    assertThat(hand.colour(700, 100)).isEqualTo(hand.colour(250, 600));
  }
}
