package padwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;

/** What each kind of line on a sheet's corner templates means, beside a sample of it. mm. */
final class LineLegend implements Panel {
  private static final String TITLE = "Lines of the corners";
  private static final double NAME = 3.6;
  private static final double NOTE = 3;
  private static final double LEADING = 3.8;

  /** Long enough for a whole dash of every line. */
  private static final double SAMPLE = 16;

  private final double width;
  private final List<LineStyle> styles;

  /**
   * @param pieces whose lines are shown at full size
   */
  LineLegend(Typeface face, List<PieceLines> pieces) {
    Set<LineStyle> shown = EnumSet.noneOf(LineStyle.class);
    pieces.forEach(p -> p.strokes().stream().map(Stroke::style).forEach(shown::add));
    styles = new ArrayList<>(shown);
    styles.removeIf(s -> meaning(s).isEmpty());
    double words = styles.stream().mapToDouble(s -> face.width(meaning(s), NOTE)).max().orElse(0);
    width = Math.max(SAMPLE + 2 + words, face.width(TITLE, NAME) * 1.1);
  }

  /** Empty where a line needs no words. */
  static String meaning(LineStyle style) {
    return switch (style) {
      case CUT -> "cut line";
      case INNER_CUT -> "hole";
      case RELIEF -> "relief cut";
      case TRIM -> "trim line";
      case FOLD -> "fold";
      case SEAM -> "seam line";
      case CREASE -> "crease of a pleat";
      case STAPLE -> "staple line";
      case SLIT -> "slit, cut last";
      case ZONE -> "zone for hook-and-loop or tape";
      case CENTRE -> "middle";
      case OUTLINE -> "edge of the base";
      case FRONT -> "front edge";
      case STAPLE_BODY, MARK, DIMENSION, LEADER, ARROW, FRAME, CHECK, SOLID, HATCH -> "";
    };
  }

  @Override
  public double width() {
    return width;
  }

  @Override
  public double height() {
    return NAME + 1.5 + styles.size() * LEADING;
  }

  @Override
  public void draw(PdfPainter p) throws IOException {
    double y = height() - NAME;
    p.text(0, y, NAME, true, p.face().fitted(TITLE, NAME, width));
    for (LineStyle s : styles) {
      y -= LEADING;

      p.line(0, y + 1, SAMPLE, y + 1, s);
      p.text(SAMPLE + 2, y, NOTE, false, meaning(s));
    }
  }
}
