package padwright.desk.screen;

import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import padwright.desk.view.Measuring;
import padwright.geometry.Vec2;

/** Wheel, drag and keys of a drawing's view. */
final class DrawingControls {
  /** One step of the wheel or of a key: four of them double the size. */
  private static final double ZOOM = Math.pow(2, 0.25);

  /** What the toolkit reports for one step of a common wheel. */
  private static final double WHEEL_STEP = 40;

  private static final double PAN = 40;
  private static final double CROSS = 10;
  private static final double CROSS_FINELY = 1;

  /** A hand that clicks still moves a little, points. */
  private static final double STILL = 4;

  private final DrawingPane pane;
  private Vec2 pressed = Vec2.ZERO;
  private Vec2 dragged = Vec2.ZERO;
  private boolean moved;

  DrawingControls(DrawingPane pane) {
    this.pane = pane;
    pane.addEventHandler(ScrollEvent.SCROLL, this::wheel);
    pane.addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
    pane.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
    pane.addEventHandler(MouseEvent.MOUSE_RELEASED, this::release);
    pane.addEventHandler(MouseEvent.MOUSE_MOVED, this::move);
    pane.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    pane.addEventHandler(KeyEvent.KEY_TYPED, this::typed);
  }

  private void wheel(ScrollEvent e) {
    if (e.getDeltaY() != 0) {
      double factor = Math.pow(ZOOM, e.getDeltaY() / WHEEL_STEP);
      pane.look(pane.viewport().zoomed(new Vec2(e.getX(), e.getY()), factor));
    }
    e.consume();
  }

  private void press(MouseEvent e) {
    pane.requestFocus();
    pressed = new Vec2(e.getX(), e.getY());
    dragged = pressed;
    moved = false;
    e.consume();
  }

  private void drag(MouseEvent e) {
    Vec2 at = new Vec2(e.getX(), e.getY());
    moved |= at.distance(pressed) > STILL;
    if (moved) {
      Vec2 by = at.minus(dragged);
      dragged = at;
      pane.look(pane.viewport().panned(by.x(), by.y()));
    }
    e.consume();
  }

  private void release(MouseEvent e) {
    if (!moved && e.getButton() == MouseButton.PRIMARY) {
      click(new Vec2(e.getX(), e.getY()));
    }
    e.consume();
  }

  private void click(Vec2 at) {
    if (pane.isMeasuring()) {
      pane.cross(at);
      pane.measuring().orElseThrow().set();
      pane.say();
    } else {
      pane.clicked(at);
    }
  }

  private void move(MouseEvent e) {
    if (pane.isMeasuring()) {
      pane.cross(new Vec2(e.getX(), e.getY()));
    }
  }

  /**
   * Plus and minus lie elsewhere on every keyboard: what they write is asked, not where they are.
   */
  private void typed(KeyEvent e) {
    if (e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
      return;
    }
    Vec2 middle = new Vec2(pane.viewport().width() / 2, pane.viewport().height() / 2);
    switch (e.getCharacter()) {
      case "+", "=" -> pane.look(pane.viewport().zoomed(middle, ZOOM));
      case "-" -> pane.look(pane.viewport().zoomed(middle, 1 / ZOOM));
      case "0" -> pane.fit();
      case "m", "M" -> pane.toggleMeasuring();
      case "n", "N" -> jump(e.getCharacter().equals("n"));
      default -> {
        return;
      }
    }
    e.consume();
  }

  private void jump(boolean forward) {
    pane.measuring()
        .ifPresent(
            m -> {
              m.jump(forward);
              pane.say();
            });
  }

  private void key(KeyEvent e) {
    if (e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
      return;
    }
    switch (e.getCode()) {
      case LEFT, KP_LEFT -> arrow(e, -1, 0);
      case RIGHT, KP_RIGHT -> arrow(e, 1, 0);
      case UP, KP_UP -> arrow(e, 0, -1);
      case DOWN, KP_DOWN -> arrow(e, 0, 1);
      case ENTER -> {
        if (pane.isMeasuring()) {
          pane.measuring().ifPresent(Measuring::set);
          pane.say();
          e.consume();
        }
      }
      case ESCAPE -> {
        if (pane.isMeasuring()) {
          pane.stopMeasuring();
          e.consume();
        }
      }
      default -> {}
    }
  }

  private void arrow(KeyEvent e, int right, int down) {
    if (pane.isMeasuring()) {
      double step = e.isShiftDown() ? CROSS_FINELY : CROSS;
      Vec2 at = pane.viewport().toScreen(pane.measuring().orElseThrow().cross());
      pane.cross(at.plus(new Vec2(right * step, down * step)));
    } else {
      pane.look(pane.viewport().panned(-right * PAN, -down * PAN));
    }
    e.consume();
  }
}
