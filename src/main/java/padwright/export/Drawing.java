package padwright.export;

import java.util.List;
import java.util.stream.DoubleStream;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * A drawing at full size, free of any file format: the SVG and PDF writers both draw from it, so
 * that they cannot disagree. mm, y up, already mirrored where the sheet is to be read mirrored
 * (text never is).
 *
 * @param description one or two sentences on what is drawn; may be empty
 * @param extent what the drawing needs, labels included
 */
public record Drawing(String title, String description, Bounds extent, List<Item> items) {
  public Drawing {
    items = List.copyOf(items);
  }

  /** A drawing without a description. */
  public Drawing(String title, Bounds extent, List<Item> items) {
    this(title, "", extent, items);
  }

  /** One thing to draw. */
  public sealed interface Item {}

  /**
   * A line in one of the styles.
   *
   * @param sample it only shows what lines of this style look like, and is no line of the piece
   */
  public record Stroke(Path path, LineStyle style, boolean sample) implements Item {
    public Stroke(Path path, LineStyle style) {
      this(path, style, false);
    }
  }

  /**
   * Many short straight lines of one style, such as those of a hatching: lighter than so many
   * strokes.
   */
  public static final class Lines implements Item {
    private final double[] ends;
    private final LineStyle style;
    private final boolean sample;

    /**
     * @param ends x and y of each line's start and of its end, four numbers a line, mm
     * @param sample as for a {@link Stroke}
     */
    public Lines(double[] ends, LineStyle style, boolean sample) {
      if (ends.length == 0 || ends.length % 4 != 0) {
        throw new IllegalArgumentException("four numbers a line, not " + ends.length);
      }
      this.ends = ends.clone();
      this.style = style;
      this.sample = sample;
    }

    public LineStyle style() {
      return style;
    }

    public boolean sample() {
      return sample;
    }

    public int count() {
      return ends.length / 4;
    }

    public Vec2 start(int line) {
      return new Vec2(ends[4 * line], ends[4 * line + 1]);
    }

    public Vec2 end(int line) {
      return new Vec2(ends[4 * line + 2], ends[4 * line + 3]);
    }

    /** The same lines elsewhere. */
    public Lines translated(Vec2 by) {
      double[] moved = new double[ends.length];
      for (int i = 0; i < ends.length; i += 2) {
        moved[i] = ends[i] + by.x();
        moved[i + 1] = ends[i + 1] + by.y();
      }
      return new Lines(moved, style, sample);
    }

    public Bounds bounds() {
      Bounds b = Bounds.of(start(0));
      for (int i = 0; i < count(); i++) {
        b = b.with(start(i)).with(end(i));
      }
      return b;
    }
  }

  /** A filled closed path; grey 0 = black, 1 = white. */
  public record Fill(Path path, double grey) implements Item {}

  /**
   * Text.
   *
   * @param at where the anchor of the baseline is
   * @param height of a capital letter's body (font size), mm
   * @param angle of the baseline, radians
   */
  public record Text(Vec2 at, double height, double angle, Anchor anchor, boolean bold, String text)
      implements Item {}

  /** Which end of the text is at its point. */
  public enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** Line styles; black alone is enough to tell them apart. Widths and dashes in mm. */
  public enum LineStyle {
    CUT("cut-line", 0.35),
    INNER_CUT("inner-cuts", 0.2),
    RELIEF("relief-cuts", 0.45, 8, 0.8),
    SLIT("slits", 0.45, 4, 1, 1, 1, 1, 1),
    TRIM("trim-line", 0.3, 8, 2, 1, 2),
    FOLD("fold-lines", 0.2, 4, 2),
    CREASE("creases", 0.5, 2.5, 1),
    SEAM("seam-lines", 0.35, 5, 1.5, 1, 1.5, 1, 1.5),
    STAPLE("staple-line", 0.2, 0.6, 1.6),
    STAPLE_BODY("staples", 0.6),
    CENTRE("centre-lines", 0.15, 12, 2, 3, 2),
    OUTLINE("base-outline", 0.15, 1, 4),
    ZONE("zones", 0.2, 6, 1.5, 1.5, 1.5, 1.5, 1.5),
    FRONT("front-edge", 0.8),
    MARK("points", 0.2),
    DIMENSION("dimensions", 0.15),
    LEADER("leaders", 0.15),
    ARROW("arrows", 0.35),
    FRAME("frames", 0.1),
    CHECK("check-lines", 0.25),
    SOLID("edges", 0.35),
    HATCH("hatching", 0.08);

    private final String group;
    private final double width;

    @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list
    private final List<Double> dashes;

    LineStyle(String group, double width, double... dashes) {
      this.group = group;
      this.width = width;
      this.dashes = DoubleStream.of(dashes).boxed().toList();
    }

    /** The name lines of this style are grouped under in files that have groups. */
    public String group() {
      return group;
    }

    public double width() {
      return width;
    }

    /** Dash and gap lengths; empty for a full line. */
    public double[] dashes() {
      return dashes.stream().mapToDouble(Double::doubleValue).toArray();
    }
  }
}
