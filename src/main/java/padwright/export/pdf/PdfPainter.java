package padwright.export.pdf;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import padwright.export.Drawing;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.LineStyle;
import padwright.geometry.Affine;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * Draws {@link Drawing}s, lines and text on one page. What it is given is in mm of its own frame;
 * the frame's map takes that to points of the page. Line widths and dashes are mm on the paper
 * whatever the frame's scale. Letters that the font lacks come out as boxes.
 */
final class PdfPainter {
  /** Bold is the plain letter with a line this wide round it, as a part of its size. */
  private static final double BOLD = 0.028;

  private final PDPageContentStream out;
  private final Typeface face;
  private final Affine frame;

  PdfPainter(PDPageContentStream out, Typeface face, Affine frame) {
    this.out = out;
    this.face = face;
    this.frame = frame;
  }

  /** The same page in a frame of its own, which {@code inner} takes to this one. */
  PdfPainter within(Affine inner) {
    return new PdfPainter(out, face, frame.after(inner));
  }

  Typeface face() {
    return face;
  }

  /** What a step draws. */
  @FunctionalInterface
  interface Step {
    void draw() throws IOException;
  }

  /** Draws a step and leaves out whatever lies outside the box. */
  void clipped(Bounds box, Step step) throws IOException {
    out.saveGraphicsState();
    trace(rectangle(box));
    out.clip();
    step.draw();
    out.restoreGraphicsState();
  }

  void paint(Drawing drawing) throws IOException {
    for (Drawing.Item item : drawing.items()) {
      paint(item);
    }
  }

  void paint(Drawing.Item item) throws IOException {
    if (item instanceof Drawing.Stroke s) {
      stroke(s.path(), s.style());
    } else if (item instanceof Drawing.Lines l) {
      for (int i = 0; i < l.count(); i++) {
        stroke(Path.line(l.start(i), l.end(i)), l.style());
      }
    } else if (item instanceof Drawing.Fill f) {
      fill(f.path(), f.grey());
    } else if (item instanceof Drawing.Text t) {
      text(t);
    }
  }

  void stroke(Path path, LineStyle style) throws IOException {
    stroke(path, style.width(), style.dashes());
  }

  /** A line of any width and dash, mm. */
  void stroke(Path path, double width, double... mm) throws IOException {
    out.setStrokingColor(0f);
    out.setLineWidth(points(width));
    float[] dashes = new float[mm.length];
    for (int i = 0; i < mm.length; i++) {
      dashes[i] = points(mm[i]);
    }
    out.setLineDashPattern(dashes, 0);
    trace(path);
    out.stroke();
  }

  void line(double x1, double y1, double x2, double y2, LineStyle style) throws IOException {
    stroke(Path.line(new Vec2(x1, y1), new Vec2(x2, y2)), style);
  }

  void box(Bounds box, LineStyle style) throws IOException {
    stroke(rectangle(box), style);
  }

  void fill(Path path, double grey) throws IOException {
    out.setNonStrokingColor((float) grey);
    trace(path);
    out.fill();
  }

  void text(double x, double y, double size, boolean bold, String text) throws IOException {
    text(new Drawing.Text(new Vec2(x, y), size, 0, Anchor.START, bold, text));
  }

  void text(double x, double y, double size, Anchor anchor, String text) throws IOException {
    text(new Drawing.Text(new Vec2(x, y), size, 0, anchor, false, text));
  }

  void text(Drawing.Text t) throws IOException {
    String text = face.printable(t.text());
    if (text.isBlank()) {
      return;
    }
    double width = face.width(text, t.height());
    double shift =
        switch (t.anchor()) {
          case START -> 0;
          case MIDDLE -> -width / 2;
          case END -> -width;
        };
    Vec2 along = Vec2.polar(t.angle());
    Vec2 at = t.at().along(along, shift);
    Affine m = frame.after(new Affine(along.x(), along.y(), -along.y(), along.x(), at.x(), at.y()));
    out.setNonStrokingColor(0f);
    out.beginText();
    out.setFont(face.font(), (float) t.height());
    if (t.bold()) {
      out.setStrokingColor(0f);
      out.setLineDashPattern(new float[0], 0);
      out.setLineWidth(points(BOLD * t.height() * Math.hypot(frame.a(), frame.b()) / Sheet.POINTS));
    }
    out.setRenderingMode(t.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
    out.setTextMatrix(
        new Matrix(
            (float) m.a(),
            (float) m.b(),
            (float) m.c(),
            (float) m.d(),
            (float) m.e(),
            (float) m.f()));
    out.showText(text);
    out.endText();
  }

  private void trace(Path path) throws IOException {
    Vec2 p = frame.at(path.start());
    out.moveTo((float) p.x(), (float) p.y());
    int last = path.segments().size() - 1;
    for (int i = 0; i <= last; i++) {
      Segment s = path.segments().get(i);
      if (s.isArc()) {
        for (Bezier b : Bezier.of(s)) {
          Vec2 c1 = frame.at(b.c1());
          Vec2 c2 = frame.at(b.c2());
          Vec2 to = frame.at(b.to());
          out.curveTo(
              (float) c1.x(),
              (float) c1.y(),
              (float) c2.x(),
              (float) c2.y(),
              (float) to.x(),
              (float) to.y());
        }
      } else if (!(path.closed() && i == last)) {
        Vec2 to = frame.at(s.end());
        out.lineTo((float) to.x(), (float) to.y());
      }
    }
    if (path.closed()) {
      out.closePath();
    }
  }

  static Path rectangle(Bounds b) {
    return Path.polygon(
        new Vec2(b.minX(), b.minY()),
        new Vec2(b.maxX(), b.minY()),
        new Vec2(b.maxX(), b.maxY()),
        new Vec2(b.minX(), b.maxY()));
  }

  private static float points(double mm) {
    return (float) (mm * Sheet.POINTS);
  }
}
