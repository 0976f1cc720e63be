package padwright.desk.screen;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;
import padwright.desk.view.Painting;
import padwright.desk.view.Painting.Ink;
import padwright.desk.view.Painting.Shown;
import padwright.desk.view.Painting.Tone;
import padwright.desk.view.Painting.Word;
import padwright.desk.view.Pen;
import padwright.desk.view.Run;
import padwright.desk.view.Viewport;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Text;

/** Paints what a view shows of a drawing on a canvas, back to front. */
final class DrawingPainter {
  /** A bold letter is a plain one with this much of its size drawn round it. */
  private static final double BOLD = 0.035;

  private final GraphicsContext gc;
  private final Viewport view;
  private final Inks inks;

  DrawingPainter(GraphicsContext gc, Viewport view, Inks inks) {
    this.gc = gc;
    this.view = view;
    this.inks = inks;
  }

  void paint(Painting painting) {
    gc.setFill(inks.paper());
    gc.fillRect(0, 0, view.width(), view.height());
    gc.setLineJoin(StrokeLineJoin.ROUND);
    for (Shown shown : painting.in(view)) {
      if (shown instanceof Ink ink) {
        stroke(ink);
      } else if (shown instanceof Tone tone) {
        gc.setFill(inks.tone(tone.grey()));
        gc.beginPath();
        trace(tone.run());
        gc.fill();
      } else if (shown instanceof Word word) {
        text(word.text());
      }
    }
  }

  private void stroke(Ink ink) {
    Pen pen = ink.pen();
    gc.setStroke(inks.ink().deriveColor(0, 1, 1, pen.strength()));
    gc.setLineWidth(pen.width());
    gc.setLineDashes(pen.dashes());
    boolean bar = pen.style() == LineStyle.STAPLE_BODY;
    gc.setLineCap(bar ? StrokeLineCap.ROUND : StrokeLineCap.BUTT);
    gc.beginPath();
    ink.runs().forEach(this::trace);
    gc.stroke();
  }

  private void trace(Run run) {
    gc.moveTo(view.screenX(run.x(0)), view.screenY(run.y(0)));
    for (int i = 1; i < run.count(); i++) {
      gc.lineTo(view.screenX(run.x(i)), view.screenY(run.y(i)));
    }
    if (run.closed()) {
      gc.closePath();
    }
  }

  private void text(Text t) {
    double size = t.height() * view.scale();
    gc.save();
    gc.translate(view.screenX(t.at().x()), view.screenY(t.at().y()));
    gc.rotate(-Math.toDegrees(t.angle()));
    gc.setFont(DrawingFonts.of(size));
    gc.setTextAlign(
        switch (t.anchor()) {
          case START -> TextAlignment.LEFT;
          case MIDDLE -> TextAlignment.CENTER;
          case END -> TextAlignment.RIGHT;
        });
    Color ink = inks.ink();
    gc.setFill(ink);
    gc.fillText(t.text(), 0, 0);
    if (t.bold()) {
      gc.setStroke(ink);
      gc.setLineWidth(size * BOLD);
      gc.setLineDashes();
      gc.strokeText(t.text(), 0, 0);
    }
    gc.restore();
  }
}
