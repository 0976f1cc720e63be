package padwright.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.image.PixelReader;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import padwright.design.Job;
import padwright.design.OutlineShape;
import padwright.desk.edit.PartEdit.Step;
import padwright.desk.edit.PlanItem;
import padwright.desk.edit.RunEdit;
import padwright.desk.model.Desk;
import padwright.desk.model.FaultLog;
import padwright.desk.view.PlanSnap.Grid;
import padwright.geometry.Vec2;
import padwright.pattern.Pads;

/** The plan by hand and by keys: the demo's window seat, (0,0) (1180,0) (1040,380) (140,380). */
@ExtendWith(ApplicationExtension.class)
class PlanPaneTest {
  private static final int REST = 0;
  private static final int STOOL = 1;
  private static final int SEAT = 4;
  private static final int BENCH = 5;

  /** The engine's work, which waits until it is asked for: most of this needs none. */
  private final Deque<Runnable> work = new ArrayDeque<>();

  private Desk desk;
  private PlanPane pane;

  @Start
  void start(Stage stage) {
    Job job = Screens.demo();
    desk = new Desk(Pads.CATALOGUE, job, Runnable::run, work::add, new FaultLog(OpenDesk.folder()));
    pane = new PlanPane(desk);
    stage.setScene(new Scene(pane, 540, 360));
    stage.show();
  }

  /** On the window's thread, without the pulses that a robot waits for. */
  private static void on(Runnable task) {
    Screens.onWindow(
        () -> {
          task.run();
          return null;
        });
  }

  private void part(FxRobot robot, int part) {
    on(
        () -> {
          desk.look(part);
          pane.requestFocus();
          pane.layout();
        });
  }

  private void worked(FxRobot robot) {
    on(
        () -> {
          while (!work.isEmpty()) {
            work.remove().run();
          }
        });
  }

  private List<Vec2> points() {
    return ((OutlineShape.FreePath) desk.pad().base().outline())
        .points().stream().map(OutlineShape.Point::at).toList();
  }

  private PlanItem chosen() {
    return pane.plan().chosen();
  }

  private void mouse(FxRobot robot, EventType<MouseEvent> type, double x, double y, int clicks) {
    on(
        () -> {
          Vec2 on = pane.sheet().viewport().toScreen(new Vec2(x, y));
          Point2D p = pane.sheet().localToScene(on.x(), on.y());
          boolean held = type != MouseEvent.MOUSE_MOVED && type != MouseEvent.MOUSE_RELEASED;
          Event.fireEvent(
              pane.sheet(),
              new MouseEvent(
                  type,
                  p.getX(),
                  p.getY(),
                  p.getX(),
                  p.getY(),
                  MouseButton.PRIMARY,
                  clicks,
                  false,
                  false,
                  false,
                  false,
                  held,
                  false,
                  false,
                  false,
                  false,
                  true,
                  null));
        });
  }

  /** Pressed at the first place and dragged over the others, mm; still held then. */
  private void drag(FxRobot robot, double... mm) {
    mouse(robot, MouseEvent.MOUSE_PRESSED, mm[0], mm[1], 1);
    for (int i = 2; i < mm.length; i += 2) {
      mouse(robot, MouseEvent.MOUSE_DRAGGED, mm[i], mm[i + 1], 1);
    }
  }

  private void drop(FxRobot robot, double x, double y) {
    mouse(robot, MouseEvent.MOUSE_RELEASED, x, y, 1);
  }

  private void click(FxRobot robot, double x, double y, int clicks) {
    mouse(robot, MouseEvent.MOUSE_PRESSED, x, y, clicks);
    mouse(robot, MouseEvent.MOUSE_RELEASED, x, y, clicks);
  }

  private void key(FxRobot robot, KeyCode code, boolean shift) {
    on(
        () ->
            Event.fireEvent(
                pane.sheet(),
                new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, false, false, false)));
  }

  private void write(FxRobot robot, String letters) {
    on(
        () ->
            letters
                .chars()
                .forEach(
                    c ->
                        Event.fireEvent(
                            pane.sheet(),
                            new KeyEvent(
                                KeyEvent.KEY_TYPED,
                                Character.toString(c),
                                "",
                                KeyCode.UNDEFINED,
                                false,
                                false,
                                false,
                                false))));
  }

  private TextField field(FxRobot robot, String place) {
    return robot.lookup((Node n) -> ("plan-" + place).equals(n.getId())).queryAs(TextField.class);
  }

  private void type(FxRobot robot, String place, String text) {
    TextField field = field(robot, place);
    on(
        () -> {
          field.requestFocus();
          field.setText(text);
          field.getOnAction().handle(null);
        });
  }

  private static List<String> notes(FxRobot robot) {
    return robot.lookup(".form-note").queryAllAs(Label.class).stream().map(Label::getText).toList();
  }

  private static void press(FxRobot robot, String button) {
    on(() -> robot.lookup(button).queryAs(Button.class).fire());
  }

  @Test
  void aPointIsDraggedAsOneStepAndARefusedDragSaysWhyAndIsPutBack(FxRobot robot) {
    part(robot, SEAT);
    mouse(robot, MouseEvent.MOUSE_MOVED, 1180, 0, 0);
    assertThat(pane.sheet().getCursor()).isEqualTo(Cursor.MOVE);
    drag(robot, 1180, 0, 1195, 60, 1250, 1);
    // Still held: it rests level with the point before, on the grid along.
    assertThat(points().get(1)).isEqualTo(new Vec2(1250, 0));
    assertThat(pane.sheet().getAccessibleText()).contains("Point 2").contains("1250");
    on(() -> Screens.keep(pane, "plan-drag"));
    drop(robot, 1250, 1);
    assertThat(field(robot, "point.x").getText()).isEqualTo("1250");
    assertThat(desk.toUndo()).contains("move point 2");
    on(desk::undo);
    assertThat(points().get(1)).isEqualTo(new Vec2(1180, 0));
    assertThat(desk.toUndo()).isEmpty();

    part(robot, BENCH);
    drag(robot, 900, 0, 800, 0, 200, 800);
    Label why = robot.lookup("#plan-refused").queryAs(Label.class);
    assertThat(why.isVisible()).isTrue();
    assertThat(why.getText()).contains("cross or touch");
    assertThat(points().get(1)).isEqualTo(new Vec2(800, 0));
    on(() -> Screens.keep(pane, "plan-refused"));
    key(robot, KeyCode.ESCAPE, false);
    assertThat(points().get(1)).isEqualTo(new Vec2(900, 0));
    drop(robot, 200, 800);
    assertThat(why.isVisible()).isFalse();
  }

  /** A rise of 60 over 900: a radius of (450^2 + 60^2) / 120 = 1717.5. */
  @Test
  void aMiddleIsDraggedASideIsSplitThePlanIsMovedAndZoomed(FxRobot robot) {
    part(robot, SEAT);
    drag(robot, 590, 380, 590, 410, 590, 440);
    drop(robot, 590, 440);
    assertThat(field(robot, "leg.rise").getText()).isEqualTo("60");
    assertThat(field(robot, "leg.radius").getText()).isEqualTo("1717.5");
    type(robot, "leg.rise", "0");
    assertThat(robot.lookup((Node n) -> "plan-leg.radius".equals(n.getId())).tryQuery()).isEmpty();
    click(robot, 295, 0, 1);
    click(robot, 295, 0, 2);
    assertThat(points().get(1)).isEqualTo(new Vec2(295, 0));
    assertThat(chosen()).isEqualTo(new PlanItem.Point(1));
    // On nothing: the outline as a whole; a drag there moves the plan.
    click(robot, 590, 200, 1);
    assertThat(chosen()).isEqualTo(new PlanItem.Outline());
    double left = pane.sheet().viewport().left();
    drag(robot, 590, 200, 700, 200);
    assertThat(pane.sheet().viewport().left()).isGreaterThan(left + 20);
    drop(robot, 700, 200);
    double scale = pane.sheet().viewport().scale();
    on(
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
    press(robot, "#plan-fit");
    on(pane::layout);
    assertThat(pane.sheet().viewport().left()).isEqualTo(left);
  }

  @Test
  void allOfItIsDoneByKeys(FxRobot robot) {
    part(robot, SEAT);
    assertThat(pane.sheet().isFocused()).isTrue();
    write(robot, "nnn");
    assertThat(chosen()).isEqualTo(new PlanItem.Point(1));
    key(robot, KeyCode.RIGHT, false);
    key(robot, KeyCode.UP, true);
    assertThat(points().get(1)).isEqualTo(new Vec2(1181, 10));
    write(robot, "N");
    assertThat(chosen()).isEqualTo(new PlanItem.Side(0, "side 1"));
    key(robot, KeyCode.INSERT, false);
    assertThat(points()).hasSize(5);
    assertThat(pane.sheet().getAccessibleText())
        .startsWith("Plan of Window seat")
        .contains("Point 2");
    key(robot, KeyCode.DELETE, false);
    assertThat(points()).hasSize(4);
    write(robot, "na");
    assertThat(points()).hasSize(5);
    key(robot, KeyCode.ENTER, false);
    assertThat(field(robot, "point.x").isFocused()).isTrue();
    double scale = pane.sheet().viewport().scale();
    write(robot, "+");
    assertThat(pane.sheet().viewport().scale()).isGreaterThan(scale);
    write(robot, "-0");
    key(robot, KeyCode.ESCAPE, false);
    assertThat(chosen()).isEqualTo(new PlanItem.Outline());
    double left = pane.sheet().viewport().left();
    double top = pane.sheet().viewport().top();
    key(robot, KeyCode.LEFT, false);
    key(robot, KeyCode.DOWN, false);
    assertThat(pane.sheet().viewport().left()).isGreaterThan(left);
    assertThat(pane.sheet().viewport().top()).isLessThan(top);
    assertThat(pane.sheet().getAccessibleRole()).isEqualTo(AccessibleRole.IMAGE_VIEW);
    assertThat(pane.sheet().getAccessibleHelp()).isEqualTo(PlanSheet.KEYS);
  }

  /** A turn-under of 10 leaves nothing behind staples that stand 12 from the edge. */
  @Test
  void lengthsAreTypedAndASidesStopStandsBesideItsField(FxRobot robot) {
    part(robot, SEAT);
    on(() -> pane.choose(3));
    type(robot, "point.x", "1200-10");
    assertThat(points().get(1)).isEqualTo(new Vec2(1190, 0));
    type(robot, "point.x", "wide");
    assertThat(notes(robot)).anyMatch(w -> w.startsWith("To the right: ") && w.contains("wide"));
    assertThat(field(robot, "point.x").getParent().getStyleClass()).contains("form-stop");
    robot.push(KeyCode.ESCAPE);
    assertThat(notes(robot)).isEmpty();
    assertThat(field(robot, "point.x").getText()).isEqualTo("1190");
    robot.push(KeyCode.UP);
    assertThat(points().get(1)).isEqualTo(new Vec2(1191, 0));

    click(robot, 1000, 0, 1);
    assertThat(chosen()).isEqualTo(new PlanItem.Side(0, "side 1"));
    type(robot, "side.turnUnder", "10");
    worked(robot);
    assertThat(RunEdit.run(desk.pad(), "side 1").orElseThrow().turnUnder()).hasValue(10);
    assertThat(notes(robot)).anyMatch(w -> w.startsWith("stop: Side 1: a turn-under of 10.0"));
    TextField turned = field(robot, "side.turnUnder");
    assertThat(turned.getParent().getStyleClass()).contains("form-stop");
    assertThat(turned.getAccessibleText()).isEqualTo("Side 1, Turn-under");
    on(() -> Screens.keep(pane, "plan-stop"));
    on(() -> pane.choose(0));
    on(() -> pane.reveal(desk.bench().findings().get(0)));
    assertThat(chosen()).isEqualTo(new PlanItem.Side(0, "side 1"));
  }

  @Test
  void anOutlineWithSizesIsChangedByThemOrDrawnByItsPoints(FxRobot robot) {
    part(robot, STOOL);
    ComboBox<PlanItem> all = chooser(robot);
    assertThat(all.getItems()).extracting(PlanItem::words).startsWith("Outline", "Hole 1");
    on(() -> all.setValue(all.getItems().get(1)));
    assertThat(field(robot, "base.holes[0].diameter").getText()).isEqualTo("20");
    part(robot, REST);
    Button add = robot.lookup("#plan-add").queryAs(Button.class);
    assertThat(add.isVisible()).isFalse();
    click(robot, 150, -30, 1);
    assertThat(chosen().words()).isEqualTo("Front");
    type(robot, "base.outline.rectangle.length", "600+12");
    assertThat(desk.pad().base().outline())
        .isEqualTo(new OutlineShape.Rectangle(612, 60, List.of(0.0, 0.0, 0.0, 0.0)));
    press(robot, "#plan-by-points");
    assertThat(points()).hasSize(4);
    assertThat(add.isVisible()).isTrue();
    press(robot, "#plan-add");
    assertThat(points()).hasSize(5);
    press(robot, "#plan-remove");
    assertThat(points()).hasSize(4);
    on(() -> grid(robot).setValue(Grid.MM_10));
    assertThat(pane.plan().grid()).isEqualTo(Grid.MM_10);
  }

  @SuppressWarnings("unchecked") // made by the pane
  private static ComboBox<PlanItem> chooser(FxRobot robot) {
    return robot.lookup("#plan-chosen").queryAs(ComboBox.class);
  }

  @SuppressWarnings("unchecked") // made by the pane
  private static ComboBox<Grid> grid(FxRobot robot) {
    return robot.lookup("#plan-grid").queryAs(ComboBox.class);
  }

  /** The bench drawn clockwise, with runs and a vent, in the dark, in large letters. */
  @Test
  void allOfAPlanIsPaintedAndEveryFieldOfItHasAName(FxRobot robot) {
    part(robot, BENCH);
    List<List<Integer>> clockwise =
        List.of(
            List.of(0, 0),
            List.of(0, 820),
            List.of(380, 820),
            List.of(380, 360),
            List.of(900, 360),
            List.of(900, 0));
    on(
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
    ComboBox<PlanItem> all = chooser(robot);
    assertThat(all.getItems()).hasSize(14);
    for (PlanItem item : List.copyOf(all.getItems())) {
      on(() -> all.setValue(item));
      assertThat(robot.lookup(".form-field").queryAllAs(Control.class))
          .isNotEmpty()
          .allSatisfy(c -> assertThat(c.getAccessibleText()).startsWith(item.words() + ", "));
    }
    mouse(robot, MouseEvent.MOUSE_MOVED, 900, 90, 0);
    assertThat(pane.sheet().getCursor()).isEqualTo(Cursor.HAND);
    mouse(robot, MouseEvent.MOUSE_MOVED, 150, 210, 0);
    on(() -> Screens.keep(pane, "plan-dark-large"));
    // The board is painted where the part is, and not in the hollow of its corner.
    assertThat(colour(robot, 250, 600)).isNotEqualTo(colour(robot, 700, 650));
    assertThat(colour(robot, 700, 100)).isEqualTo(colour(robot, 250, 600));
  }

  private Color colour(FxRobot robot, double x, double y) {
    Color[] at = new Color[1];
    on(
        () -> {
          Vec2 p = pane.sheet().viewport().toScreen(new Vec2(x, y));
          var in = pane.sheet().localToScene(p.x(), p.y());
          PixelReader shown = pane.getScene().snapshot(null).getPixelReader();
          at[0] = shown.getColor((int) in.getX(), (int) in.getY());
        });
    return at[0];
  }
}
