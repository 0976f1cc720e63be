package padwright.desk.screen;

import java.util.Optional;
import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import padwright.desk.edit.PlanItem;
import padwright.desk.model.PlanDesk;
import padwright.desk.view.PlanModel.Hit;
import padwright.geometry.Vec2;

/** Wheel, clicks, drags and keys of a plan. */
final class PlanControls {
  /** One step of the wheel or of a key: four of them double the size. */
  private static final double ZOOM = Math.pow(2, 0.25);

  /** What the toolkit reports for one step of a common wheel. */
  private static final double WHEEL_STEP = 40;

  private static final double PAN = 40;
  private static final int TEN = 10;

  /** A hand that clicks still moves a little, points. */
  private static final double STILL = 4;

  private final PlanSheet sheet;
  private final PlanDesk plan;
  private final Runnable changed;
  private final Runnable enter;
  private Vec2 pressed = Vec2.ZERO;
  private Vec2 last = Vec2.ZERO;
  private Optional<Hit> held = Optional.empty();
  private boolean moved;

  /**
   * @param changed called when something else is chosen or done
   * @param enter called when the fields of what is chosen are wanted
   */
  PlanControls(PlanSheet sheet, PlanDesk plan, Runnable changed, Runnable enter) {
    this.sheet = sheet;
    this.plan = plan;
    this.changed = changed;
    this.enter = enter;
    sheet.addEventHandler(ScrollEvent.SCROLL, this::wheel);
    sheet.addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
    sheet.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
    sheet.addEventHandler(MouseEvent.MOUSE_RELEASED, this::release);
    sheet.addEventHandler(MouseEvent.MOUSE_MOVED, this::move);
    sheet.addEventHandler(MouseEvent.MOUSE_EXITED, e -> sheet.point(Optional.empty()));
    sheet.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    sheet.addEventHandler(KeyEvent.KEY_TYPED, this::typed);
  }

  private void wheel(ScrollEvent e) {
    if (e.getDeltaY() != 0) {
      double factor = Math.pow(ZOOM, e.getDeltaY() / WHEEL_STEP);
      sheet.look(sheet.viewport().zoomed(new Vec2(e.getX(), e.getY()), factor));
    }
    e.consume();
  }

  private void move(MouseEvent e) {
    Optional<Hit> hit = sheet.hit(new Vec2(e.getX(), e.getY()));
    sheet.point(hit.flatMap(plan::item));
    boolean handle = hit.filter(h -> !(h instanceof Hit.Side)).isPresent();
    sheet.setCursor(handle ? Cursor.MOVE : hit.isPresent() ? Cursor.HAND : Cursor.DEFAULT);
  }

  private void press(MouseEvent e) {
    sheet.requestFocus();
    pressed = new Vec2(e.getX(), e.getY());
    last = pressed;
    moved = false;
    held = e.getButton() == MouseButton.PRIMARY ? sheet.hit(pressed) : Optional.empty();
    if (held.isPresent() && e.getClickCount() == 2) {
      add(held.get());
      held = Optional.empty();
    } else {
      held.ifPresent(plan::press);
    }
    changed.run();
    e.consume();
  }

  /** Twice on a side, or on its middle, puts a point there. */
  private void add(Hit hit) {
    plan.item(hit)
        .filter(i -> i instanceof PlanItem.Side)
        .ifPresent(
            i -> plan.add(((PlanItem.Side) i).number(), sheet.viewport().toDrawing(pressed)));
  }

  private void drag(MouseEvent e) {
    Vec2 at = new Vec2(e.getX(), e.getY());
    moved |= at.distance(pressed) > STILL;
    if (moved && plan.dragging()) {
      plan.drag(sheet.viewport().toDrawing(at), sheet.reach());
      changed.run();
    } else if (moved && held.isEmpty()) {
      Vec2 by = at.minus(last);
      sheet.look(sheet.viewport().panned(by.x(), by.y()));
    }
    last = at;
    e.consume();
  }

  private void release(MouseEvent e) {
    if (plan.dragging()) {
      plan.release();
      changed.run();
    } else if (!moved && held.isEmpty() && e.getClickCount() == 1) {
      plan.choose(new PlanItem.Outline());
      changed.run();
    }
    e.consume();
  }

  /** Letters and signs are asked for by what they write, wherever they lie on the keyboard. */
  private void typed(KeyEvent e) {
    if (e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
      return;
    }
    Vec2 middle = new Vec2(sheet.viewport().width() / 2, sheet.viewport().height() / 2);
    switch (e.getCharacter()) {
      case "+", "=" -> sheet.look(sheet.viewport().zoomed(middle, ZOOM));
      case "-" -> sheet.look(sheet.viewport().zoomed(middle, 1 / ZOOM));
      case "0" -> sheet.fit();
      case "n" -> plan.step(1);
      case "N" -> plan.step(-1);
      case "a", "A" -> plan.add();
      default -> {
        return;
      }
    }
    changed.run();
    e.consume();
  }

  private void key(KeyEvent e) {
    if (e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
      return;
    }
    switch (e.getCode()) {
      case LEFT, KP_LEFT -> arrow(e, -1, 0);
      case RIGHT, KP_RIGHT -> arrow(e, 1, 0);
      case UP, KP_UP -> arrow(e, 0, 1);
      case DOWN, KP_DOWN -> arrow(e, 0, -1);
      case INSERT -> act(e, plan::add);
      case DELETE, BACK_SPACE -> act(e, plan::remove);
      case ENTER -> act(e, enter);
      case ESCAPE -> act(e, this::back);
      default -> {}
    }
  }

  private void act(KeyEvent e, Runnable does) {
    does.run();
    changed.run();
    e.consume();
  }

  /** A drag is put back; else nothing but the outline stays chosen. */
  private void back() {
    if (plan.dragging()) {
      plan.putBack();
    } else {
      plan.choose(new PlanItem.Outline());
    }
  }

  private void arrow(KeyEvent e, int right, int up) {
    int steps = e.isShiftDown() ? TEN : 1;
    if (!plan.nudge(right * steps, up * steps)) {
      sheet.look(sheet.viewport().panned(-right * PAN, up * PAN));
    }
    changed.run();
    e.consume();
  }
}
