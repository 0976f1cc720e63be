package padwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import padwright.export.Box;
import padwright.export.Drawing;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Lettering;
import padwright.geometry.Affine;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * One corner of a rectangular piece at full size, to lay on the corner of a rectangle drawn by
 * measure. A corner that is another's mirror image is not drawn again: the template is turned.
 */
final class CornerTemplate implements Panel {
  private static final double NAME = 4.5;
  private static final double NOTE = 3.2;
  private static final double LEADING = 4.4;

  /** Room for the words over a small corner, mm. */
  private static final double LEAST_WIDTH = 60;

  /** Two corners are alike when every point of one is this near to one of the other, mm. */
  private static final double SAME = 0.02;

  private final PieceLines lines;
  private final String title;
  private final Bounds region;
  private final boolean staples;
  private final List<String> notes;

  private CornerTemplate(
      PieceLines lines, String title, Bounds region, boolean staples, List<String> notes) {
    this.lines = lines;
    this.title = title;
    this.region = region;
    this.staples = staples;
    this.notes = notes;
  }

  /**
   * The different corners of a piece.
   *
   * @param reachX how much of the piece is shown along x, mm; at most half of it
   * @param reachY the same along y
   */
  static List<CornerTemplate> of(
      Typeface face, PieceLines lines, double reachX, double reachY, boolean staples) {
    Bounds b = lines.bounds();
    double w = Math.min(reachX, b.width() / 2);
    double h = Math.min(reachY, b.height() / 2);
    int[][] signs = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};
    List<List<Vec2>> shapes = new ArrayList<>();
    for (int[] s : signs) {
      shapes.add(local(lines, region(b, s, w, h), s));
    }
    List<CornerTemplate> list = new ArrayList<>();
    boolean[] done = new boolean[4];
    for (int i = 0; i < 4; i++) {
      if (done[i]) {
        continue;
      }
      List<String> uses = new ArrayList<>();
      for (int j = i + 1; j < 4; j++) {
        if (!done[j] && alike(shapes.get(i), shapes.get(j))) {
          done[j] = true;
          boolean half = signs[i][0] != signs[j][0] && signs[i][1] != signs[j][1];
          uses.add((half ? "turned half round: " : "turned over: ") + name(signs[j], lines));
        }
      }
      String what = lines.piece().name() + ", corner " + name(signs[i], lines);
      String says =
          uses.isEmpty()
              ? "Full size. This corner only."
              : "Full size. Also "
                  + String.join("; ", uses)
                  + "."
                  + (staples ? " The numbers are those of this corner." : "");
      List<String> notes = Wrap.lines(face, says, NOTE, Math.max(w, LEAST_WIDTH));
      list.add(new CornerTemplate(lines, what, region(b, signs[i], w, h), staples, notes));
    }
    return list;
  }

  private static Bounds region(Bounds b, int[] s, double w, double h) {
    return new Bounds(
        s[0] < 0 ? b.minX() : b.maxX() - w,
        s[1] < 0 ? b.minY() : b.maxY() - h,
        s[0] < 0 ? b.minX() + w : b.maxX(),
        s[1] < 0 ? b.minY() + h : b.maxY());
  }

  /** As seen from the face, whichever way the piece is printed. */
  private static String name(int[] s, PieceLines lines) {
    boolean left = s[0] < 0 != lines.mirrored();
    return (s[1] < 0 ? "front " : "back ") + (left ? "left" : "right");
  }

  /** End points of all lines in a region, as distances in from its outer corner. */
  private static List<Vec2> local(PieceLines lines, Bounds region, int[] s) {
    Vec2 corner =
        new Vec2(
            s[0] < 0 ? region.minX() : region.maxX(), s[1] < 0 ? region.minY() : region.maxY());
    List<Vec2> points = new ArrayList<>();
    for (Stroke stroke : lines.strokes()) {
      // The front is marked on one side only and changes nothing about a corner.
      if (stroke.style() == LineStyle.FRONT) {
        continue;
      }
      for (var g : stroke.path().segments()) {
        for (double t : new double[] {0, 0.5, 1}) {
          Vec2 p = g.pointAt(t);
          if (region.contains(p)) {
            // Each style counts apart: a fold in place of a cut is another corner.
            double style = 1e4 * stroke.style().ordinal();
            points.add(new Vec2(s[0] * (corner.x() - p.x()) + style, s[1] * (corner.y() - p.y())));
          }
        }
      }
    }
    return points;
  }

  private static boolean alike(List<Vec2> a, List<Vec2> b) {
    return a.size() == b.size() && within(a, b) && within(b, a);
  }

  private static boolean within(List<Vec2> a, List<Vec2> b) {
    return a.stream().allMatch(p -> b.stream().anyMatch(q -> p.distance(q) < SAME));
  }

  @Override
  public double width() {
    return Math.max(region.width(), LEAST_WIDTH) + 1;
  }

  @Override
  public double height() {
    return region.height() + NAME + 2.5 + notes.size() * LEADING + 1.5;
  }

  @Override
  public void draw(PdfPainter p) throws IOException {
    double y = height() - NAME;
    p.text(0, y, NAME, true, p.face().fitted(title, NAME, width()));
    for (String n : notes) {
      y -= LEADING;
      p.text(0, y, NOTE, false, n);
    }
    PdfPainter piece = p.within(Affine.moved(0.5 - region.minX(), 0.5 - region.minY()));
    piece.clipped(
        region.grown(0.3),
        () -> {
          for (Stroke s : lines.strokes()) {
            piece.stroke(s.path(), s.style());
          }
          if (staples) {
            for (PieceLines.Numbered s : lines.staples()) {
              number(piece, s);
            }
          }
        });
    Bounds b = lines.bounds();
    double innerX = region.minX() > b.minX() ? region.minX() : region.maxX();
    double innerY = region.minY() > b.minY() ? region.minY() : region.maxY();
    piece.stroke(
        Path.line(new Vec2(innerX, region.minY()), new Vec2(innerX, region.maxY())), 0.1, 0.4, 2);
    piece.stroke(
        Path.line(new Vec2(region.minX(), innerY), new Vec2(region.maxX(), innerY)), 0.1, 0.4, 2);
  }

  /** A staple's number on the side away from the edge. */
  private void number(PdfPainter p, PieceLines.Numbered s) throws IOException {
    Vec2 across = Vec2.polar(s.angle()).left();
    Vec2 inwards =
        across.dot(lines.bounds().centre().minus(s.at())) < 0 ? across.times(-1) : across;
    Vec2 at = s.at().along(inwards, 3.6);
    if (region.grown(-3).contains(at)) {
      Drawing.Text number =
          new Drawing.Text(
              new Vec2(at.x(), at.y() - 1.2), 3.5, 0, Anchor.MIDDLE, false, "" + s.number());
      // Near a corner the other side's staple line passes here: the number stands on a white plate.
      Box plate = Lettering.box(number).grown(0.2);
      p.fill(
          Path.polygon(
              plate.at(-0.5, -0.5), plate.at(0.5, -0.5), plate.at(0.5, 0.5), plate.at(-0.5, 0.5)),
          1);
      p.text(number);
    }
  }
}
