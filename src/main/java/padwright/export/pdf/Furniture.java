package padwright.export.pdf;

import java.io.IOException;
import padwright.export.Drawing;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.LineStyle;
import padwright.geometry.Affine;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

/**
 * What stands on every pattern page beside the pattern, in strips of its own so that it never lies
 * over a line or a word: the two 100 mm check lines, the sheet's name and what it belongs to. The
 * strips are below and right, where the next sheet covers them.
 */
final class Furniture {
  static final double NOTE = 2.8;
  private static final double TICK = 1.2;

  private Furniture() {}

  /**
   * @param label of the sheet, such as "A1"; empty where there is only one
   * @param name of the piece
   * @param from where the text begins, right of whatever stands at the foot's left
   */
  static void draw(
      PdfPainter p, Sheet sheet, JobHeader header, String label, String name, double from)
      throws IOException {
    double right = sheet.width() - Sheet.SIDE;
    across(p, new Vec2(from, 14.6), sheet.turned());
    upright(p, new Vec2(sheet.width() - 1.6, 2), sheet.turned());
    double x = from;
    if (!label.isEmpty()) {
      p.text(x, 7.4, 6, true, label);
      x += p.face().width(label, 6) + 4;
    }
    p.text(x, 7.4, 4.5, true, p.face().fitted(name, 4.5, right - x));
    p.text(from, 3.8, NOTE, false, p.face().fitted(header.line(), NOTE, right - from));
    String scale = "Print at actual size (100 %). " + sheet.correction().sentence() + ".";
    p.text(from, 0.3, NOTE, false, p.face().fitted(scale, NOTE, right - from));
  }

  /** A line of 100 mm to the right of a point, its length written after it. */
  static void across(PdfPainter p, Vec2 at, boolean turned) throws IOException {
    double l = PrintCorrection.CHECK_LENGTH;
    p.line(at.x(), at.y(), at.x() + l, at.y(), LineStyle.CHECK);
    p.line(at.x(), at.y() - TICK, at.x(), at.y() + TICK, LineStyle.CHECK);
    p.line(at.x() + l, at.y() - TICK, at.x() + l, at.y() + TICK, LineStyle.CHECK);
    p.text(at.x() + l + 2, at.y() - 1, NOTE, false, length(!turned));
  }

  /**
   * Both check lines along the very edges of a page of text, each with its length written after it,
   * in strips under 4 mm wide.
   */
  static void inMargin(PdfPainter p, Sheet sheet) throws IOException {
    double l = PrintCorrection.CHECK_LENGTH;
    across(p, new Vec2(0, TICK), sheet.turned());
    Vec2 foot = new Vec2(sheet.width() - TICK, TICK);
    line(p, foot, l);
    Vec2 text = new Vec2(foot.x() + 1, foot.y() + l + 3);
    p.text(new Drawing.Text(text, NOTE, Math.PI / 2, Anchor.START, false, length(sheet.turned())));
  }

  private static String length(boolean across) {
    return "100 mm " + axis(across);
  }

  /** A line of 100 mm upwards from a point, its length written left of it. */
  static void upright(PdfPainter p, Vec2 at, boolean turned) throws IOException {
    double l = PrintCorrection.CHECK_LENGTH;
    line(p, at, l);
    Vec2 text = new Vec2(at.x() - TICK - 0.9, at.y() + l / 2);
    p.text(new Drawing.Text(text, NOTE, Math.PI / 2, Anchor.MIDDLE, false, length(turned)));
  }

  private static void line(PdfPainter p, Vec2 foot, double l) throws IOException {
    p.line(foot.x(), foot.y(), foot.x(), foot.y() + l, LineStyle.CHECK);
    p.line(foot.x() - TICK, foot.y(), foot.x() + TICK, foot.y(), LineStyle.CHECK);
    p.line(foot.x() - TICK, foot.y() + l, foot.x() + TICK, foot.y() + l, LineStyle.CHECK);
  }

  private static String axis(boolean across) {
    return across ? "across the paper" : "along the paper";
  }

  /** The whole grid in small, one tile of it black; returns how wide it came out. */
  static double map(PdfPainter p, Tiling tiling, Tile here, double height, double width)
      throws IOException {
    Bounds all = tiling.assembled();
    double k = Math.min(width / all.width(), height / all.height());
    PdfPainter small =
        p.within(Affine.scaledOnto(k, new Vec2(all.minX(), all.minY()), new Vec2(0.2, 0.2)));
    for (Tile t : tiling.tiles()) {
      if (t.equals(here)) {
        small.fill(PdfPainter.rectangle(t.cell()), 0.35);
      }
      small.stroke(PdfPainter.rectangle(t.cell()), 0.12);
    }
    return all.width() * k;
  }
}
