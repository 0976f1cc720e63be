package padwright.desk.screen;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.scene.transform.Transform;
import padwright.design.Units;
import padwright.desk.view.Highlight;
import padwright.desk.view.Measure;
import padwright.desk.view.Measuring;
import padwright.desk.view.Painting;
import padwright.desk.view.Picture;
import padwright.desk.view.Viewport;
import padwright.export.Drawing;
import padwright.export.SvgWriter;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

/**
 * Shows a drawing to look at closely: zoomed about the pointer, moved, measured, and pointed into.
 * Everything can be done by keys alone; {@link #KEYS} lists them.
 */
public final class DrawingPane extends Region {
  /** What its keys do, to be read out and listed. */
  public static final String KEYS =
      "Arrows move, plus and minus zoom, 0 fits, M measures. Measuring: arrows move the cross,"
          + " with Shift finely; N goes to the next place and Shift N back; Enter sets a point;"
          + " Escape ends.";

  private static final double MARGIN = 12;
  private static final double HIGHLIGHT_MARGIN = 40;

  /** So much of the drawing always stays in the view, points. */
  private static final double LEAST_SEEN = 30;

  /** How far from the pointer a place is still meant, points. */
  private static final double REACH = 9;

  private static final double PREFERRED_WIDTH = 500;
  private static final double PREFERRED_HEIGHT = 350;

  private final Canvas canvas = new Canvas();
  private final Canvas overlay = new Canvas();
  private final ReadOnlyStringWrapper measured = new ReadOnlyStringWrapper(this, "measured", "");
  private Drawing drawing;
  private boolean fullSize;
  private Painting painting;
  private Measure places;
  private Viewport view = new Viewport(1, 0, 0, 1, 1);
  private boolean fitted = true;
  private Inks inks = Inks.LIGHT;
  private Units units = Units.MM;
  private Consumer<Vec2> onClick = place -> {};
  private Highlight highlight = Highlight.NONE;
  private Measuring measuring;

  public DrawingPane() {
    getChildren().addAll(canvas, overlay);
    canvas.setManaged(false);
    overlay.setManaged(false);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText("No drawing");
    setAccessibleHelp(KEYS);
    getStyleClass().add("drawing-pane");
    focusedProperty().addListener((of, was, is) -> paintOverlay());
    new DrawingControls(this);
  }

  /** Shows a drawing of full size. One that takes the place of another keeps what was looked at. */
  public void show(Drawing next) {
    show(next, true);
  }

  /**
   * Shows a drawing.
   *
   * @param trueSize whether its mm are those of the part; a picture at another scale is not
   *     measured
   */
  public void show(Drawing next, boolean trueSize) {
    boolean same = drawing != null && drawing.title().equals(next.title());
    drawing = next;
    fullSize = trueSize;
    painting = null;
    places = null;
    highlight = Highlight.NONE;
    setAccessibleText((next.title() + ". " + next.description()).strip());
    if (measuring != null) {
      stopMeasuring();
    }
    if (!same) {
      fitted = true;
    }
    requestLayout();
  }

  /** The drawing shown. */
  public Optional<Drawing> drawing() {
    return Optional.ofNullable(drawing);
  }

  public void setDark(boolean dark) {
    inks = dark ? Inks.DARK : Inks.LIGHT;
    requestLayout();
  }

  /** What measures are said in. */
  public void setUnits(Units said) {
    units = said;
    paintOverlay();
  }

  /**
   * Points at something and brings it into the view; nothing where it is {@link Highlight#NONE}.
   */
  public void highlight(Highlight at) {
    highlight = at;
    layout();
    at.bounds().ifPresent(b -> look(view.revealing(b, HIGHLIGHT_MARGIN)));
    paintOverlay();
  }

  /** The whole drawing in the middle of the view; so it stays when the view changes its size. */
  public void fit() {
    fitted = true;
    requestLayout();
  }

  public Viewport viewport() {
    return view;
  }

  /** Looks at another part of the drawing; some of it always stays in the view. */
  public void look(Viewport at) {
    if (drawing != null) {
      view = at.holding(drawing.extent(), LEAST_SEEN);
      fitted = false;
      requestLayout();
    }
  }

  /** What is measured now, in words; empty where nothing is. */
  public ReadOnlyStringProperty measuredProperty() {
    return measured.getReadOnlyProperty();
  }

  public boolean isMeasuring() {
    return measuring != null;
  }

  /** What a click on the drawing does while nothing is measured: told the place, mm. */
  void onClick(Consumer<Vec2> action) {
    onClick = action;
  }

  void clicked(Vec2 point) {
    if (drawing != null) {
      onClick.accept(view.toDrawing(point));
    }
  }

  /** How near, in mm of the drawing, a click must be to hit something small. */
  double reach() {
    return REACH / view.scale();
  }

  /** Begins to measure, or ends it. */
  public void toggleMeasuring() {
    if (measuring != null) {
      stopMeasuring();
    } else if (drawing != null && fullSize) {
      layout();
      if (places == null) {
        places = Measure.of(drawing);
      }
      measuring = new Measuring(places, view.visible().centre(), reach());
      setCursor(Cursor.CROSSHAIR);
      say();
    } else if (drawing != null) {
      measured.set("This picture is not at full size: measure on the piece itself");
      notifyAccessibleText();
    }
  }

  void stopMeasuring() {
    measuring = null;
    setCursor(Cursor.DEFAULT);
    measured.set("");
    notifyAccessibleText();
    paintOverlay();
  }

  Optional<Measuring> measuring() {
    return Optional.ofNullable(measuring);
  }

  /** Puts the cross under a point of the view. */
  void cross(Vec2 point) {
    measuring.moveTo(view.toDrawing(point), reach());
    say();
  }

  /** Tells what was measured after the measuring changed, and keeps the cross in the view. */
  void say() {
    measured.set(measuring.sentence(units));
    notifyAccessibleText();
    if (!view.visible().contains(measuring.cross())) {
      look(view.revealing(Bounds.of(measuring.cross()), HIGHLIGHT_MARGIN));
    }
    paintOverlay();
  }

  private void notifyAccessibleText() {
    String name = drawing == null ? "No drawing" : drawing.title() + ". " + drawing.description();
    setAccessibleText(measured.get().isEmpty() ? name.strip() : measured.get());
  }

  @Override
  protected double computePrefWidth(double height) {
    return PREFERRED_WIDTH;
  }

  @Override
  protected double computePrefHeight(double width) {
    return PREFERRED_HEIGHT;
  }

  @Override
  protected void layoutChildren() {
    if (getWidth() < 1 || getHeight() < 1) {
      return;
    }
    if (canvas.getWidth() != getWidth() || canvas.getHeight() != getHeight()) {
      for (Canvas c : new Canvas[] {canvas, overlay}) {
        c.setWidth(getWidth());
        c.setHeight(getHeight());
      }
      view = view.resized(getWidth(), getHeight());
    }
    if (fitted && drawing != null) {
      view = Viewport.fit(drawing.extent(), getWidth(), getHeight(), MARGIN);
    }
    paint(canvas.getGraphicsContext2D());
    paintOverlay();
  }

  private void paint(GraphicsContext gc) {
    if (drawing == null) {
      gc.setFill(inks.paper());
      gc.fillRect(0, 0, view.width(), view.height());
      return;
    }
    if (painting == null || !painting.suits(view.scale())) {
      painting = Painting.of(drawing, view.scale());
    }
    new DrawingPainter(gc, view, inks).paint(painting);
  }

  private void paintOverlay() {
    OverlayPainter over = new OverlayPainter(overlay.getGraphicsContext2D(), view, inks);
    over.clear();
    over.highlight(highlight);
    if (measuring != null) {
      over.measure(measuring, measured.get());
    }
    if (isFocused()) {
      over.focus();
    }
  }

  /** What is seen of the drawing, as a drawing: for a file. */
  public Drawing snapshotDrawing() {
    if (drawing == null) {
      throw new IllegalStateException("no drawing is shown");
    }
    layout();
    Bounds seen = view.visible();
    Bounds all = drawing.extent();
    Bounds both =
        new Bounds(
            Math.max(seen.minX(), all.minX()),
            Math.max(seen.minY(), all.minY()),
            Math.min(seen.maxX(), all.maxX()),
            Math.min(seen.maxY(), all.maxY()));
    return new Drawing(drawing.title(), drawing.description(), both, drawing.items());
  }

  /** What is seen of the drawing as an SVG file, at full size. */
  public String svg() {
    return SvgWriter.write(snapshotDrawing());
  }

  /**
   * The view as a picture, without what is drawn over the drawing.
   *
   * @param dots of the picture for each point of the view
   */
  public Picture picture(double dots) {
    layout();
    int width = (int) Math.round(view.width() * dots);
    int height = (int) Math.round(view.height() * dots);
    Canvas large = new Canvas(width, height);
    GraphicsContext gc = large.getGraphicsContext2D();
    gc.setTransform(Transform.affine(dots, 0, 0, dots, 0, 0));
    paint(gc);
    WritableImage image = large.snapshot(new SnapshotParameters(), null);
    int w = (int) image.getWidth();
    int h = (int) image.getHeight();
    int[] argb = new int[w * h];
    image.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), argb, 0, w);
    return Picture.of(w, h, argb);
  }
}
