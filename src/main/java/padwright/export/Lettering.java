package padwright.export;

import padwright.export.Drawing.Text;
import padwright.geometry.Vec2;

/**
 * How much room text takes, from the metrics of the font it is printed in (Liberation Sans, which
 * has the widths of Arial and Helvetica). mm.
 */
public final class Lettering {
  /** Font families for a file that names its font instead of carrying it. */
  public static final String FAMILIES = "Liberation Sans, Arial, Helvetica, sans-serif";

  /** Size of a piece's name: read at arm's length. */
  public static final double NAME = 6;

  /** Size of every other note. */
  public static final double NOTE = 3.5;

  /** From one baseline to the next, in parts of the size. */
  public static final double LEADING = 1.3;

  /** Top of the tallest plain letter over the baseline, in parts of the size. */
  public static final double ASCENT = 0.75;

  /** Foot of the lowest letter under the baseline, in parts of the size. */
  public static final double DESCENT = 0.22;

  /** Room for a character the font does not have: another font draws it, a square one at most. */
  private static final float UNKNOWN_EM = 1;

  private Lettering() {}

  /** Width of one line of text of a size. */
  public static double width(String text, double size) {
    double ems = 0;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      float em = Widths.REGULAR.em(c);
      ems += em > 0 ? em : UNKNOWN_EM;
      i += Character.charCount(c);
    }
    return ems * size;
  }

  /** The room a text takes on the sheet. */
  public static Box box(Text t) {
    double w = width(t.text(), t.height());
    double left =
        switch (t.anchor()) {
          case START -> 0;
          case MIDDLE -> -w / 2;
          case END -> -w;
        };
    Vec2 centre =
        new Vec2(left + w / 2, t.height() * (ASCENT - DESCENT) / 2).rotated(t.angle()).plus(t.at());
    return new Box(centre, w, t.height() * (ASCENT + DESCENT), t.angle());
  }

  /** The widths, read when text is first measured. */
  private static final class Widths {
    static final FontWidths REGULAR =
        FontWidths.ofResource("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf");
  }
}
