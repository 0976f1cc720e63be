package padwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.export.Drawing;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.LineStyle;
import padwright.geometry.Affine;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;
import padwright.material.Paper;

/**
 * The page before a piece's tiles: the piece put together in small with the sheets it is made of,
 * how to tape them, and what to measure when they are.
 */
final class IndexPage {
  private static final double TEXT = 3.5;
  private static final double LEADING = 5;

  /** Open lines shorter than this are not seen in the small drawing anyway, mm. */
  private static final double SHORT = 30;

  private final Drawing drawing;
  private final Tiling tiling;
  private final Paper paper;

  IndexPage(Drawing drawing, Tiling tiling, Paper paper) {
    this.drawing = drawing;
    this.tiling = tiling;
    this.paper = paper;
  }

  void addTo(PdfBook book) throws IOException {
    Sheet sheet = sheet();
    book.page(sheet, p -> draw(p, sheet, book.header()));
  }

  /** The tiles' own page; on a roll only as long as this page needs. */
  private Sheet sheet() {
    Sheet s = tiling.sheet();
    return paper.isRoll() ? Sheet.ofRoll(s.paperWidth(), 277, s.turned(), s.correction()) : s;
  }

  private void draw(PdfPainter p, Sheet sheet, JobHeader header) throws IOException {
    Typeface face = p.face();
    Furniture.draw(p, sheet, header, "", drawing.title() + ": how the sheets go together", 0);
    Bounds w = sheet.window();
    double y = w.maxY() - 6;
    p.text(0, y, 7, true, face.fitted(drawing.title(), 7, w.width()));
    y -= 2;
    for (String line : text()) {
      for (String part : Wrap.lines(face, line, TEXT, w.width())) {
        y -= LEADING;
        p.text(0, y, TEXT, false, part);
      }
    }
    y -= LEADING + 1;
    y = measures(p, y, w.width());
    assembled(p, new Bounds(0, w.minY() + 2, w.width(), y - 2));
  }

  private List<String> text() {
    Tile first = tiling.tiles().get(0);
    List<String> list = new ArrayList<>();
    list.add(
        tiling.tiles().size()
            + " sheets in "
            + tiling.rows()
            + (tiling.rows() == 1 ? " row of " : " rows of ")
            + tiling.columns()
            + (tiling.tiles().size() < tiling.rows() * tiling.columns()
                ? ", those without a line left out"
                : "")
            + ", starting with "
            + first.label()
            + ".");
    list.add("1. Measure both 100 mm lines on every sheet with a steel rule.");
    list.add(
        "2. On every sheet cut the left and the top edge along the dotted trim line, where one is"
            + " named for trimming. Leave the right and the bottom edge.");
    list.add(
        "3. Lay each sheet on its left and upper neighbour so that the halves of the marks with the"
            + " same letter meet. Tape one row after the other, then row to row.");
    list.add("4. Measure between the points P, Q, R, S on the cut line:");
    return list;
  }

  private double measures(PdfPainter p, double top, double width) throws IOException {
    Optional<MeasuringPoints> found = MeasuringPoints.of(drawing);
    if (found.isEmpty()) {
      return top;
    }
    MeasuringPoints m = found.get();
    int[][] pairs = {{0, 1}, {3, 2}, {0, 2}, {0, 3}, {1, 2}, {1, 3}};
    double y = top;
    for (int i = 0; i < pairs.length; i++) {
      String name =
          (i % 3 == 2 ? "diagonal " : "")
              + MeasuringPoints.NAMES.get(pairs[i][0])
              + " to "
              + MeasuringPoints.NAMES.get(pairs[i][1]);
      p.text(
          i % 3 * width / 3,
          y,
          TEXT,
          i % 3 == 2,
          name + "  " + Sizes.both(m.between(pairs[i][0], pairs[i][1])));
      if (i % 3 == 2) {
        y -= LEADING;
      }
    }
    return y;
  }

  private void assembled(PdfPainter p, Bounds room) throws IOException {
    Bounds all = tiling.assembled().union(drawing.extent());
    double k = Math.min(1, Math.min(room.width() / all.width(), room.height() / all.height()));
    PdfPainter small = p.within(Affine.scaledOnto(k, all.centre(), room.centre()));
    for (Drawing.Item item : drawing.items()) {
      if (item instanceof Drawing.Stroke s && worthShowing(s)) {
        small.stroke(s.path(), s.style() == LineStyle.CUT ? 0.35 : 0.1);
      }
    }
    double size = Math.min(6, tiling.tiles().get(0).cell().height() * k / 2);
    for (Tile t : tiling.tiles()) {
      small.stroke(PdfPainter.rectangle(t.cell()), 0.2, 0.5, 1.5);
      Vec2 at = t.cell().centre();
      double half = (p.face().width(t.label(), size) / 2 + 0.6) / k;
      double low = (Typeface.CAPITAL / 2 * size + 0.6) / k;
      small.fill(
          PdfPainter.rectangle(
              new Bounds(at.x() - half, at.y() - low, at.x() + half, at.y() + low)),
          1);
      middle(small, at, size, k, t.label());
    }
    List<Vec2> points = MeasuringPoints.of(drawing).map(MeasuringPoints::points).orElse(List.of());
    for (int i = 0; i < points.size(); i++) {
      Vec2 c = points.get(i);
      small.line(c.x() - 1.5 / k, c.y(), c.x() + 1.5 / k, c.y(), LineStyle.CHECK);
      small.line(c.x(), c.y() - 1.5 / k, c.x(), c.y() + 1.5 / k, LineStyle.CHECK);
      Vec2 out = new Vec2(i == 0 || i == 3 ? -3.2 / k : 3.2 / k, i < 2 ? -3.2 / k : 3.2 / k);
      middle(small, c.plus(out), 4, k, MeasuringPoints.NAMES.get(i));
    }
  }

  /** Bold text with its middle at a point; its size is that on the paper. */
  private static void middle(PdfPainter small, Vec2 at, double size, double k, String text)
      throws IOException {
    Vec2 base = new Vec2(at.x(), at.y() - Typeface.CAPITAL / 2 * size / k);
    small.text(new Drawing.Text(base, size / k, 0, Anchor.MIDDLE, true, text));
  }

  /** The piece's own lines; not its words, nor the samples of a legend. */
  private static boolean worthShowing(Drawing.Stroke s) {
    return switch (s.style()) {
      case CUT, INNER_CUT, RELIEF, SLIT, TRIM, FOLD, OUTLINE, FRONT ->
          s.path().closed() || s.path().length() > SHORT;
      default -> false;
    };
  }
}
