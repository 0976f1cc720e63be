package padwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import padwright.design.Units;
import padwright.export.Drawing.LineStyle;
import padwright.geometry.Bounds;
import padwright.measure.Rounding;
import padwright.pattern.PatternPiece;

/**
 * The cutting list: a row a piece, with a box to tick. Board and packing are rounded down to half a
 * millimetre, so that they go in; cover, wadding and dust cover up, so that they reach; foam to the
 * nearest.
 */
final class CuttingList {
  private static final List<String> MM_HEADS =
      List.of("Piece", "Number", "Length x width, mm", "in", "Thick, mm", "Material");
  private static final List<String> INCH_HEADS =
      List.of("Piece", "Number", "Length x width, in", "mm", "Thick, in", "Material");

  private static final double PAD = 2.5;

  private final List<String> heads;
  private final List<List<String>> rows = new ArrayList<>();

  /**
   * @param units what stands first
   */
  CuttingList(List<PatternPiece> pieces, Units units) {
    boolean inches = units == Units.INCH;
    heads = inches ? INCH_HEADS : MM_HEADS;
    for (PatternPiece p : pieces) {
      Rounding way = rounding(p.kind());
      String mm = Sizes.mm(p.length(), way) + " x " + Sizes.mm(p.width(), way);
      String in = Sizes.inches(p.length(), way) + " x " + Sizes.inches(p.width(), way);
      String thick = inches ? Sizes.inches(p.thickness()) : Sizes.mm(p.thickness());
      rows.add(
          List.of(
              p.name(),
              JobHeader.quantity(p.quantity(), p.mirrored()),
              inches ? in : mm,
              inches ? mm : in,
              p.thickness() > 0 ? thick : "\u2013",
              p.material()));
    }
  }

  /** Which way a kind of piece may differ from its true size. */
  static Rounding rounding(PatternPiece.Kind kind) {
    return switch (kind) {
      case BASE, PACKING -> Rounding.DOWN;
      case FOAM -> Rounding.NEAREST;
      case WADDING, COVER, DUST_COVER, GUSSET -> Rounding.UP;
    };
  }

  List<List<String>> rows() {
    return rows;
  }

  /** How high it comes out at a text size. */
  double height(double size) {
    return (rows.size() + 1) * row(size);
  }

  private static double row(double size) {
    return size * 1.65;
  }

  /** Draws it from a top edge down, over a width; columns are as wide as their longest entry. */
  void draw(PdfPainter p, double left, double top, double width, double size) throws IOException {
    Typeface face = p.face();
    double box = size * 1.8;
    double[] wide = new double[heads.size()];
    double sum = box;
    for (int c = 0; c < wide.length; c++) {
      wide[c] = face.width(heads.get(c), size) * 1.03;
      for (List<String> row : rows) {
        wide[c] = Math.max(wide[c], face.width(row.get(c), size));
      }
      wide[c] += PAD;
      sum += wide[c];
    }
    // Names and materials are the maker's and may be long: they give way, sizes never do.
    double excess = Math.max(0, sum - width);
    double least = 18;
    double givable = Math.max(0, wide[5] - least) + Math.max(0, wide[0] - least);
    for (int c : new int[] {0, 5}) {
      double share = givable == 0 ? 0 : Math.max(0, wide[c] - least) / givable;
      wide[c] -= excess * share;
    }
    double y = top;
    for (int r = -1; r < rows.size(); r++) {
      double next = y - row(size);
      double line = y - size * 1.15;
      double x = left + box;
      for (int c = 0; c < wide.length; c++) {
        String text = r < 0 ? heads.get(c) : rows.get(r).get(c);
        p.text(x, line, size, r < 0, face.fitted(text, size, wide[c] - 0.4 * PAD));
        x += wide[c];
      }
      if (r >= 0) {
        double side = 0.8 * size;
        p.box(
            new Bounds(left + 0.5, line - 0.1, left + 0.5 + side, line - 0.1 + side),
            LineStyle.CHECK);
      }
      p.line(left, next, left + width, next, r < 0 ? LineStyle.CHECK : LineStyle.FRAME);
      y = next;
    }
  }
}
