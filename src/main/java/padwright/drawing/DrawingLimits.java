package padwright.drawing;

import java.util.concurrent.TimeUnit;
import padwright.measure.Length;

/** What a drawing may hold. Wide of any outline of a pad; they keep a hostile file from harm. */
public final class DrawingLimits {
  /** A drawing of one part with everything around it has a few hundred kB. */
  public static final int MOST_BYTES = 8 * 1024 * 1024;

  /** Elements of an SVG file, or entities of a DXF file. */
  public static final int MOST_ELEMENTS = 20_000;

  /** How deep SVG groups may nest. */
  public static final int MOST_DEPTH = 64;

  /** Points drawn in all. */
  public static final int MOST_DRAWN_POINTS = 50_000;

  /** Points of one outline: what a job file takes. */
  public static final int MOST_POINTS = 2_000;

  /** Arcs and lines that the curves of one outline may come to: what a job file takes. */
  public static final int MOST_PIECES = 20_000;

  /** Openings inside the outline: what a job file takes. */
  public static final int MOST_INNER = 50;

  /** Characters of one number: a double has 17 digits. */
  public static final int LONGEST_NUMBER = 64;

  /** Numbers as they stand in the file; a hundred times a km in thousandths of a mm. */
  public static final double LARGEST_NUMBER = 1e11;

  /** The largest outline, mm. */
  public static final double LARGEST = Length.LARGEST;

  /** The smallest one, and the smallest opening, mm. */
  public static final double LEAST = 1;

  /** The longest that reading may take. */
  public static final long MOST_NANOS = TimeUnit.SECONDS.toNanos(5);

  /** Ends nearer than this, mm, are joined: draughtsmen's slips, far below a saw's width. */
  public static final double JOIN = 0.1;

  /** Straight sides shorter than this, mm, are left out, as a job file has them: slips. */
  static final double SHORTEST = 0.1;

  /** The same of a bowed side's chord. */
  static final double SHORTEST_CURVED = 0.01;

  /** Digits of a mm kept in an outline: a thousandth. */
  static final int DIGITS = 3;

  /** A bulge under this is a straight side, as in a job file. */
  static final double LEAST_BULGE = 1e-5;

  private DrawingLimits() {}
}
