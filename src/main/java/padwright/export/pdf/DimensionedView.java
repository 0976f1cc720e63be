package padwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import padwright.design.Units;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Affine;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.measure.Rounding;
import padwright.pattern.PatternPiece;

/** A piece drawn small with its real sizes beside it. */
final class DimensionedView implements Panel {
  private static final double NAME = 4.5;
  private static final double NOTE = 3.2;
  private static final double LEADING = 4.4;

  /** Right of the drawing, for the width: "175.5 mm" over "6 29/32 in". */
  private static final double RIGHT = 25;

  /** Under the drawing, for the length. */
  private static final double BELOW = 8;

  private final PieceLines lines;
  private final boolean inches;
  private final double width;
  private final double scale;
  private final List<String> notes = new ArrayList<>();

  DimensionedView(Typeface face, PatternPiece piece, Units units, double width, double tallest) {
    lines = PieceLines.of(piece);
    inches = units == Units.INCH;
    this.width = width;
    Bounds b = lines.bounds();
    scale = Math.min(1, Math.min((width - RIGHT - 2) / b.width(), tallest / b.height()));
    String what =
        piece.material()
            + (piece.thickness() > 0 ? ", " + thickness(piece) + " thick" : "")
            + ", "
            + JobHeader.quantity(piece.quantity(), piece.mirrored())
            + (lines.mirrored() ? ", seen from the back" : "");
    notes.addAll(Wrap.lines(face, what, NOTE, width));
    for (String s : EdgeOffsets.of(lines)) {
      notes.addAll(Wrap.lines(face, s, NOTE, width));
    }
  }

  @Override
  public double width() {
    return width;
  }

  @Override
  public double height() {
    return NAME + 2 + notes.size() * LEADING + 2.5 + lines.bounds().height() * scale + BELOW;
  }

  @Override
  public void draw(PdfPainter p) throws IOException {
    PatternPiece piece = lines.piece();
    double y = height() - NAME;
    p.text(0, y, NAME, true, p.face().fitted(piece.name(), NAME, width));
    for (String n : notes) {
      y -= LEADING;
      p.text(0, y, NOTE, false, n);
    }
    Bounds b = lines.bounds();
    PdfPainter small =
        p.within(Affine.scaledOnto(scale, new Vec2(b.minX(), b.minY()), new Vec2(0.5, BELOW)));
    for (Stroke s : lines.strokes()) {
      small.stroke(s.path(), Math.min(s.style().width(), 0.25), shorter(s.style()));
    }
    double w = b.width() * scale;
    double h = b.height() * scale;
    Rounding way = CuttingList.rounding(piece.kind());
    dimension(p, new Vec2(0.5, BELOW - 2.5), new Vec2(0.5 + w, BELOW - 2.5));
    List<String> sizes = sizes(piece.length(), way);
    String length = String.join("   ", sizes);
    double half = p.face().width(length, NOTE) / 2;
    p.text(Math.max(0.5 + w / 2, half), 1.2, NOTE, Anchor.MIDDLE, length);
    double x = 0.5 + w + 2.5;
    dimension(p, new Vec2(x, BELOW), new Vec2(x, BELOW + h));
    double middle = BELOW + h / 2;
    List<String> across = sizes(piece.width(), way);
    p.text(x + 2, middle + 0.8, NOTE, Anchor.START, across.get(0));
    p.text(x + 2, middle - 3.4, NOTE, Anchor.START, across.get(1));
  }

  /** A size in both units, the job's first. */
  private List<String> sizes(double length, Rounding way) {
    String mm = Sizes.mm(length, way) + " mm";
    String in = Sizes.inches(length, way) + " in";
    return inches ? List.of(in, mm) : List.of(mm, in);
  }

  private String thickness(PatternPiece piece) {
    return inches ? Sizes.inches(piece.thickness()) + " in" : Sizes.mm(piece.thickness());
  }

  /** Dashes at a third, so that a small drawing still shows which line is which. */
  private static double[] shorter(LineStyle style) {
    double[] d = style.dashes();
    for (int i = 0; i < d.length; i++) {
      d[i] /= 3;
    }
    return d;
  }

  /** A line with short strokes across its ends, as a carpenter draws it. */
  private static void dimension(PdfPainter p, Vec2 from, Vec2 to) throws IOException {
    p.stroke(Path.line(from, to), LineStyle.DIMENSION);
    Vec2 across = to.minus(from).unit().left().times(1.2);
    p.stroke(Path.line(from.minus(across), from.plus(across)), LineStyle.DIMENSION);
    p.stroke(Path.line(to.minus(across), to.plus(across)), LineStyle.DIMENSION);
  }
}
