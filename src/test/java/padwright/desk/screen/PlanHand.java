package padwright.desk.screen;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.image.PixelReader;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.testfx.api.FxRobot;
import padwright.design.OutlineShape;
import padwright.desk.edit.PlanItem;
import padwright.desk.model.Desk;
import padwright.desk.model.FaultLog;
import padwright.desk.view.PlanSnap.Grid;
import padwright.geometry.Vec2;
import padwright.pattern.Pads;

/** A plan of the demo's parts in a window, and a hand on its mouse and keys. */
final class PlanHand {
  final Desk desk;
  final PlanPane pane;

  /** The engine's work, which waits until it is asked for: most of this needs none. */
  private final Deque<Runnable> work = new ArrayDeque<>();

  private final FxRobot robot = new FxRobot();

  PlanHand(Stage stage) {
    desk =
        new Desk(
            Pads.CATALOGUE,
            Screens.demo(),
            Runnable::run,
            work::add,
            new FaultLog(OpenDesk.folder()));
    pane = new PlanPane(desk);
    stage.setScene(new Scene(pane, 540, 360));
    stage.show();
  }

  /** On the window's thread, without the pulses that a robot waits for. */
  static void on(Runnable task) {
    Screens.onWindow(
        () -> {
          task.run();
          return null;
        });
  }

  void part(int part) {
    on(
        () -> {
          desk.look(part);
          pane.requestFocus();
          pane.layout();
        });
  }

  void worked() {
    on(
        () -> {
          while (!work.isEmpty()) {
            work.remove().run();
          }
        });
  }

  List<Vec2> points() {
    return ((OutlineShape.FreePath) desk.pad().base().outline())
        .points().stream().map(OutlineShape.Point::at).toList();
  }

  PlanItem chosen() {
    return pane.plan().chosen();
  }

  void mouse(EventType<MouseEvent> type, double x, double y, int clicks) {
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
  void drag(double... mm) {
    mouse(MouseEvent.MOUSE_PRESSED, mm[0], mm[1], 1);
    for (int i = 2; i < mm.length; i += 2) {
      mouse(MouseEvent.MOUSE_DRAGGED, mm[i], mm[i + 1], 1);
    }
  }

  void drop(double x, double y) {
    mouse(MouseEvent.MOUSE_RELEASED, x, y, 1);
  }

  void click(double x, double y, int clicks) {
    mouse(MouseEvent.MOUSE_PRESSED, x, y, clicks);
    mouse(MouseEvent.MOUSE_RELEASED, x, y, clicks);
  }

  void key(KeyCode code, boolean shift) {
    on(
        () ->
            Event.fireEvent(
                pane.sheet(),
                new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, false, false, false)));
  }

  void write(String letters) {
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

  TextField field(String place) {
    return robot.lookup((Node n) -> ("plan-" + place).equals(n.getId())).queryAs(TextField.class);
  }

  void type(String place, String text) {
    TextField field = field(place);
    on(
        () -> {
          field.requestFocus();
          field.setText(text);
          field.getOnAction().handle(null);
        });
  }

  List<String> notes() {
    return robot.lookup(".form-note").queryAllAs(Label.class).stream().map(Label::getText).toList();
  }

  void press(String button) {
    on(() -> robot.lookup(button).queryAs(Button.class).fire());
  }

  @SuppressWarnings("unchecked") // made by the pane
  ComboBox<PlanItem> chooser() {
    return robot.lookup("#plan-chosen").queryAs(ComboBox.class);
  }

  @SuppressWarnings("unchecked") // made by the pane
  ComboBox<Grid> grid() {
    return robot.lookup("#plan-grid").queryAs(ComboBox.class);
  }

  Color colour(double x, double y) {
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
