package padwright.desk.screen;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import padwright.desk.solid.Body;
import padwright.desk.solid.Camera;
import padwright.desk.solid.Opening;
import padwright.desk.solid.Palette;
import padwright.desk.solid.Solid;
import padwright.desk.solid.SolidPainter;

/**
 * Shows a solid that can be turned and opened: with the graphics card where there is one that can,
 * else as a painted picture from the same camera. Dragging turns it, dragging with the other button
 * or with Shift moves it, the wheel zooms. Every one of these has a key: see {@link #KEYS}.
 */
public final class SolidPane extends Region {
  /** What the keys do, in words for a list of shortcuts. */
  public static final String KEYS =
      "Arrow keys turn, with Shift they move; + and - zoom; Page Down opens, Page Up closes;"
          + " 1 to 5 look from the corner, the face, the front, the back and under the corner;"
          + " Home fits.";

  /** Radians for each pixel of a drag, and for each press of an arrow key. */
  private static final double DRAG = Math.toRadians(0.4);

  private static final double STEP = Math.toRadians(7.5);

  /** Pixels for each press of an arrow key with Shift. */
  private static final double MOVE = 20;

  /** How much nearer for a press of a key, and for a pixel of the wheel. */
  private static final double NEARER = 1.2;

  private static final double WHEEL = 1.004;

  /** A press that moves no further than this, in pixels, is a click. */
  private static final double STILL = 3;

  private static final double FOCUS = 2;

  private final BooleanProperty dark = new SimpleBooleanProperty(this, "dark");
  private final IntegerProperty opening = new SimpleIntegerProperty(this, "opening");
  private final ReadOnlyObjectWrapper<Camera> camera =
      new ReadOnlyObjectWrapper<>(this, "camera", Camera.of(Camera.View.CORNER));
  private final Label caption = new Label();
  private final Rectangle focus = new Rectangle();
  private final SolidView view;
  private Solid solid;
  private Opening stages;
  private Consumer<Body> onPicked = body -> {};
  private boolean unfitted;
  private double pressX;
  private double pressY;
  private double lastX;
  private double lastY;

  /** A pane that uses the graphics card where it can. */
  public SolidPane() {
    this(!Platform.isSupported(ConditionalFeature.SCENE3D));
  }

  /**
   * @param painted whether the picture is painted even where a graphics card could do it
   */
  public SolidPane(boolean painted) {
    view = painted ? new PaintedView() : new CardView();
    setFocusTraversable(true);
    getStyleClass().add("solid-pane");
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinSize(80, 60);
    setPrefSize(480, 320);
    focus.setFill(Color.TRANSPARENT);
    focus.setStrokeWidth(FOCUS);
    focus.setMouseTransparent(true);
    focus.visibleProperty().bind(focusedProperty());
    caption.setMouseTransparent(true);
    caption.getStyleClass().add("solid-caption");
    getChildren().addAll(view.node(), caption, focus);
    opening.addListener((of, old, now) -> changed());
    camera.addListener((of, old, now) -> changed());
    dark.addListener((of, old, now) -> changed());
    addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
    addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
    addEventHandler(MouseEvent.MOUSE_CLICKED, this::clicked);
    addEventHandler(ScrollEvent.SCROLL, this::scrolled);
    addEventHandler(KeyEvent.KEY_PRESSED, this::typed);
    changed();
  }

  /**
   * Shows a solid. One of the same name is seen from where the last one was and opened as far; any
   * other is seen whole from its corner, covered.
   */
  public void show(Solid shown) {
    boolean same = solid != null && solid.name().equals(shown.name());
    solid = shown;
    stages = Opening.of(shown);
    if (!same) {
      opening.set(0);
      lookFrom(Camera.View.CORNER);
    }
    opening.set(stages.within(opening.get()));
    changed();
  }

  /** Shows nothing. */
  public void clear() {
    solid = null;
    stages = null;
    changed();
  }

  /** Looks from a named place, so near that the whole solid is just seen. */
  public void lookFrom(Camera.View place) {
    camera.set(Camera.of(place));
    fit();
  }

  /** Comes so near that the whole solid is just seen. */
  public void fit() {
    unfitted = true;
    changed();
  }

  public Camera camera() {
    return camera.get();
  }

  public void setCamera(Camera from) {
    unfitted = false;
    camera.set(from);
  }

  public ReadOnlyObjectProperty<Camera> cameraProperty() {
    return camera.getReadOnlyProperty();
  }

  /** How many bodies have been taken off; kept within what the part has. */
  public IntegerProperty openingProperty() {
    return opening;
  }

  /** How far the part that is shown can be opened; empty where none is. */
  public Optional<Opening> stages() {
    return Optional.ofNullable(stages);
  }

  public void setDark(boolean on) {
    dark.set(on);
  }

  public BooleanProperty darkProperty() {
    return dark;
  }

  /** What is done with the body that is clicked. */
  public void setOnPicked(Consumer<Body> action) {
    onPicked = action;
  }

  /** Whether the picture is painted, not drawn by a graphics card. */
  public boolean painted() {
    return view instanceof PaintedView;
  }

  private Palette palette() {
    return dark.get() ? Palette.dark() : Palette.light();
  }

  private void changed() {
    if (stages != null && opening.get() != stages.within(opening.get())) {
      opening.set(stages.within(opening.get()));
      return;
    }
    String words = stages == null ? "" : stages.at(opening.get()).words();
    caption.setText(words);
    setAccessibleText(
        solid == null
            ? "No part to show"
            : solid.name() + ", seen " + camera.get().words() + ". " + words + ".");
    setAccessibleHelp(KEYS);
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    view.node().resizeRelocate(0, 0, width, height);
    focus.setX(FOCUS / 2);
    focus.setY(FOCUS / 2);
    focus.setWidth(Math.max(0, width - FOCUS));
    focus.setHeight(Math.max(0, height - FOCUS));
    focus.setStroke(dark.get() ? Color.web("#9cc7ff") : Color.web("#1a5fb4"));
    caption.setTextFill(dark.get() ? Color.web("#f0eee8") : Color.web("#2b2a28"));
    double high = caption.prefHeight(width);
    caption.resizeRelocate(8, height - high - 6, Math.max(0, width - 16), high);
    if (width < 1 || height < 1) {
      return;
    }
    if (unfitted && solid != null) {
      unfitted = false;
      camera.set(camera.get().fitted(solid, (int) width, (int) height));
    }
    if (solid == null) {
      view.blank(palette(), width, height);
    } else {
      view.show(solid, stages.at(opening.get()), camera.get(), palette(), width, height);
    }
  }

  private void pressed(MouseEvent e) {
    requestFocus();
    pressX = e.getX();
    pressY = e.getY();
    lastX = e.getX();
    lastY = e.getY();
    e.consume();
  }

  private void dragged(MouseEvent e) {
    double dx = e.getX() - lastX;
    double dy = e.getY() - lastY;
    lastX = e.getX();
    lastY = e.getY();
    if (e.getButton() == MouseButton.PRIMARY && !e.isShiftDown()) {
      setCamera(camera.get().turned(-dx * DRAG, dy * DRAG));
    } else {
      moved(dx, dy);
    }
    e.consume();
  }

  private void moved(double dx, double dy) {
    setCamera(camera.get().panned(dx, dy, (int) getWidth(), (int) getHeight()));
  }

  private void clicked(MouseEvent e) {
    boolean still = Math.hypot(e.getX() - pressX, e.getY() - pressY) <= STILL;
    if (solid != null && still && e.getButton() == MouseButton.PRIMARY) {
      SolidPainter.pick(
              solid,
              stages.at(opening.get()),
              camera.get(),
              (int) getWidth(),
              (int) getHeight(),
              e.getX(),
              e.getY())
          .ifPresent(onPicked);
    }
    e.consume();
  }

  private void scrolled(ScrollEvent e) {
    setCamera(camera.get().zoomed(Math.pow(WHEEL, e.getDeltaY())));
    e.consume();
  }

  private void typed(KeyEvent e) {
    if (e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
      return;
    }
    Camera now = camera.get();
    boolean shift = e.isShiftDown();
    switch (e.getCode()) {
      case LEFT, KP_LEFT -> turnOrMove(shift, -1, 0);
      case RIGHT, KP_RIGHT -> turnOrMove(shift, 1, 0);
      case UP, KP_UP -> turnOrMove(shift, 0, -1);
      case DOWN, KP_DOWN -> turnOrMove(shift, 0, 1);
      case PLUS, ADD, EQUALS -> setCamera(now.zoomed(NEARER));
      case MINUS, SUBTRACT -> setCamera(now.zoomed(1 / NEARER));
      case PAGE_DOWN -> opening.set(opening.get() + 1);
      case PAGE_UP -> opening.set(opening.get() - 1);
      case HOME -> fit();
      case DIGIT1, NUMPAD1 -> lookFrom(Camera.View.CORNER);
      case DIGIT2, NUMPAD2 -> lookFrom(Camera.View.FACE);
      case DIGIT3, NUMPAD3 -> lookFrom(Camera.View.FRONT);
      case DIGIT4, NUMPAD4 -> lookFrom(Camera.View.BACK);
      case DIGIT5, NUMPAD5 -> lookFrom(Camera.View.BACK_CORNER);
      default -> {
        return;
      }
    }
    e.consume();
  }

  /** The solid goes the way of the arrow. */
  private void turnOrMove(boolean move, int right, int down) {
    if (move) {
      moved(right * MOVE, down * MOVE);
    } else {
      setCamera(camera.get().turned(-right * STEP, down * STEP));
    }
  }
}
