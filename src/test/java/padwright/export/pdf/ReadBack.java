package padwright.export.pdf;

import java.awt.geom.Point2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import padwright.export.Drawing;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;
import padwright.material.Paper;

/**
 * Reads pages back: every stroked line in mm of the page as filed, curves walked by their own
 * formula.
 */
public final class ReadBack extends PDFGraphicsStreamEngine {
  private static final double MM = 25.4 / 72;
  private static final Bounds EVERYWHERE = new Bounds(-1e9, -1e9, 1e9, 1e9);

  /**
   * A stroked line as a fine chain of points, whole as it was written.
   *
   * @param window the box outside of which it is not printed; null where all of it is
   */
  public record Line(List<Vec2> points, Bounds window) {
    public double length() {
      double sum = 0;
      for (int i = 1; i < points.size(); i++) {
        sum += points.get(i).distance(points.get(i - 1));
      }
      return sum;
    }

    public Bounds bounds() {
      return points.stream().map(Bounds::of).reduce(Bounds::union).orElseThrow();
    }
  }

  private final List<Line> lines = new ArrayList<>();
  private final List<List<Vec2>> open = new ArrayList<>();
  private final Deque<Bounds> outer = new ArrayDeque<>();
  private Bounds window;
  private boolean clipping;

  private ReadBack(PDPage page) throws IOException {
    super(page);
    processPage(page);
  }

  public static List<Line> lines(PDPage page) throws IOException {
    return new ReadBack(page).lines;
  }

  /** All text of a page without its spaces: readers set them as they like, in turned text most. */
  public static String words(PDDocument d, int page) throws IOException {
    PDFTextStripper text = new PDFTextStripper();
    text.setStartPage(page);
    text.setEndPage(page);
    return text.getText(d).replaceAll("\\s", "");
  }

  static byte[] write(List<Drawing> pieces, Paper paper, PrintCorrection c) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    TiledPdf.write(pieces, paper, c, Samples.HEADER, out);
    return out.toByteArray();
  }

  static PDDocument open(List<Drawing> pieces, Paper paper, PrintCorrection c) throws IOException {
    return Loader.loadPDF(write(pieces, paper, c));
  }

  @Override
  public void moveTo(float x, float y) {
    List<Vec2> sub = new ArrayList<>();
    sub.add(new Vec2(x * MM, y * MM));
    open.add(sub);
  }

  @Override
  public void lineTo(float x, float y) {
    open.get(open.size() - 1).add(new Vec2(x * MM, y * MM));
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    List<Vec2> sub = open.get(open.size() - 1);
    Vec2 p0 = sub.get(sub.size() - 1);
    Vec2 p1 = new Vec2(x1 * MM, y1 * MM);
    Vec2 p2 = new Vec2(x2 * MM, y2 * MM);
    Vec2 p3 = new Vec2(x3 * MM, y3 * MM);
    for (int i = 1; i <= 200; i++) {
      double t = i / 200.0;
      double u = 1 - t;
      sub.add(
          p0.times(u * u * u)
              .plus(p1.times(3 * u * u * t))
              .plus(p2.times(3 * u * t * t))
              .plus(p3.times(t * t * t)));
    }
  }

  @Override
  public void closePath() {
    List<Vec2> sub = open.get(open.size() - 1);
    sub.add(sub.get(0));
  }

  @Override
  public void strokePath() {
    open.forEach(s -> lines.add(new Line(List.copyOf(s), window)));
    open.clear();
  }

  @Override
  public void endPath() {
    if (clipping) {
      // Windows are upright boxes, one within the other at most.
      window = new Line(open.get(0), null).bounds();
      clipping = false;
    }
    open.clear();
  }

  @Override
  public void fillPath(int windingRule) {
    open.clear();
  }

  @Override
  public void fillAndStrokePath(int windingRule) {
    strokePath();
  }

  @Override
  public Point2D getCurrentPoint() {
    if (open.isEmpty()) {
      return null;
    }
    List<Vec2> sub = open.get(open.size() - 1);
    Vec2 p = sub.get(sub.size() - 1);
    return new Point2D.Double(p.x() / MM, p.y() / MM);
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    throw new IllegalStateException("no rectangles are written");
  }

  @Override
  public void drawImage(PDImage image) {
    throw new IllegalStateException("no pictures are written");
  }

  @Override
  public void clip(int windingRule) {
    clipping = true;
  }

  @Override
  public void saveGraphicsState() {
    super.saveGraphicsState();
    outer.push(window == null ? EVERYWHERE : window);
  }

  @Override
  public void restoreGraphicsState() {
    super.restoreGraphicsState();
    Bounds b = outer.pop();
    window = b.equals(EVERYWHERE) ? null : b;
  }

  @Override
  public void shadingFill(COSName name) {
    throw new IllegalStateException("no shadings are written");
  }
}
