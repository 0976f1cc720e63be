package padwright.desk.screen;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import padwright.desk.view.Highlight;
import padwright.desk.view.Measure.Kind;
import padwright.desk.view.Measure.Place;
import padwright.desk.view.Measuring;
import padwright.desk.view.Viewport;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * Paints what a view draws over its drawing: rings and boxes that point at something, the measure,
 * and the frame of the keyboard's focus. All of it stands on a rim of paper, so that it is told
 * from the drawing by its shape alone.
 */
final class OverlayPainter {
  private static final double RING = 14;
  private static final double RING_WIDTH = 3.5;
  private static final double RIM = 2.5;
  private static final double BOX_MARGIN = 8;
  private static final double CHORD_POINTS = 0.3;
  private static final double ARM = 12;
  private static final double DOT = 4;
  private static final double LETTER = 13;
  private static final double PAD = 6;
  private static final double FOCUS_WIDTH = 2;

  private final GraphicsContext gc;
  private final Viewport view;
  private final Inks inks;

  OverlayPainter(GraphicsContext gc, Viewport view, Inks inks) {
    this.gc = gc;
    this.view = view;
    this.inks = inks;
  }

  void clear() {
    gc.clearRect(0, 0, view.width(), view.height());
  }

  void highlight(Highlight h) {
    for (Path path : h.paths()) {
      twice(RING_WIDTH, () -> path(path));
      Bounds b = path.bounds();
      double x = view.screenX(b.minX()) - BOX_MARGIN;
      double y = view.screenY(b.maxY()) - BOX_MARGIN;
      double w = b.width() * view.scale() + 2 * BOX_MARGIN;
      double t = b.height() * view.scale() + 2 * BOX_MARGIN;
      twice(2, () -> gc.strokeRect(x, y, w, t), 8, 5);
    }
    for (Vec2 place : h.places()) {
      Vec2 p = view.toScreen(place);
      twice(RING_WIDTH, () -> gc.strokeOval(p.x() - RING, p.y() - RING, 2 * RING, 2 * RING));
    }
  }

  private void path(Path path) {
    gc.beginPath();
    Vec2 start = view.toScreen(path.start());
    gc.moveTo(start.x(), start.y());
    for (Segment s : path.segments()) {
      int n = s.chords(CHORD_POINTS / view.scale());
      for (int i = 1; i <= n; i++) {
        Vec2 p = view.toScreen(s.pointAt((double) i / n));
        gc.lineTo(p.x(), p.y());
      }
    }
    gc.stroke();
  }

  void measure(Measuring m, String sentence) {
    Vec2 cross = view.toScreen(m.cross());
    Vec2 meant = view.toScreen(m.meant().at());
    m.first()
        .ifPresent(
            f -> {
              Vec2 a = view.toScreen(f.at());
              Vec2 b = view.toScreen(m.second().orElse(m.meant()).at());
              twice(1.5, () -> gc.strokeLine(a.x(), a.y(), b.x(), b.y()));
              twice(1, () -> gc.strokePolyline(xs(a, b), ys(a, b), 3), 3, 3);
              dot(a);
              if (m.second().isPresent()) {
                dot(b);
              }
            });
    twice(1.5, () -> cross(cross));
    if (m.meant().kind() != Kind.FREE) {
      mark(meant, m.meant());
    }
    strip(sentence);
  }

  private static double[] xs(Vec2 a, Vec2 b) {
    return new double[] {a.x(), b.x(), b.x()};
  }

  private static double[] ys(Vec2 a, Vec2 b) {
    return new double[] {a.y(), a.y(), b.y()};
  }

  /** Open in the middle, so that what it stands on is seen. */
  private void cross(Vec2 c) {
    double gap = 3;
    gc.strokeLine(c.x() - ARM, c.y(), c.x() - gap, c.y());
    gc.strokeLine(c.x() + gap, c.y(), c.x() + ARM, c.y());
    gc.strokeLine(c.x(), c.y() - ARM, c.x(), c.y() - gap);
    gc.strokeLine(c.x(), c.y() + gap, c.x(), c.y() + ARM);
  }

  /** A square where the place has a name, a circle where it is only on a line. */
  private void mark(Vec2 at, Place place) {
    double h = DOT + 1;
    if (place.kind() == Kind.ON_LINE) {
      twice(1.5, () -> gc.strokeOval(at.x() - h, at.y() - h, 2 * h, 2 * h));
    } else {
      twice(1.5, () -> gc.strokeRect(at.x() - h, at.y() - h, 2 * h, 2 * h));
    }
  }

  private void dot(Vec2 at) {
    gc.setFill(inks.paper());
    double rim = DOT + 1.5;
    gc.fillOval(at.x() - rim, at.y() - rim, 2 * rim, 2 * rim);
    gc.setFill(inks.pointer());
    gc.fillOval(at.x() - DOT, at.y() - DOT, 2 * DOT, 2 * DOT);
  }

  /** A line of words along the foot of the view. */
  private void strip(String words) {
    Text laid = new Text(words);
    laid.setFont(DrawingFonts.of(LETTER));
    double width = Math.min(view.width(), laid.getLayoutBounds().getWidth() + 2 * PAD);
    double height = LETTER + 2 * PAD;
    double top = view.height() - height;
    gc.setFill(inks.paper());
    gc.fillRect(0, top, width, height);
    outline(inks.pointer(), 1);
    gc.strokeRect(0.5, top + 0.5, width - 1, height - 1);
    gc.setFill(inks.ink());
    gc.setFont(DrawingFonts.of(LETTER));
    gc.setTextAlign(TextAlignment.LEFT);
    gc.setTextBaseline(VPos.CENTER);
    gc.fillText(words, PAD, top + height / 2, width - 2 * PAD);
    gc.setTextBaseline(VPos.BASELINE);
  }

  void focus() {
    outline(inks.pointer(), FOCUS_WIDTH);
    double in = FOCUS_WIDTH / 2;
    gc.strokeRect(in, in, view.width() - FOCUS_WIDTH, view.height() - FOCUS_WIDTH);
  }

  /** Strokes something on a rim of paper. */
  private void twice(double width, Runnable stroke, double... dashes) {
    outline(inks.paper(), width + 2 * RIM);
    stroke.run();
    outline(inks.pointer(), width);
    gc.setLineDashes(dashes);
    stroke.run();
    gc.setLineDashes();
  }

  private void outline(Color color, double width) {
    gc.setStroke(color);
    gc.setLineWidth(width);
    gc.setLineCap(StrokeLineCap.BUTT);
    gc.setLineDashes();
  }
}
