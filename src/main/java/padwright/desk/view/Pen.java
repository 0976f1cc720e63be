package padwright.desk.view;

import padwright.export.Drawing.LineStyle;

/**
 * How a line of a style is painted at a scale, in points. A line looks as on a sheet held up to the
 * screen: width and dashes in their printed proportions, so that the legend holds, but never finer
 * than the eye tells apart at arm's length nor coarser than a felt pen.
 *
 * @param width points
 * @param strength how much of the ink is laid on, 0 to 1: below 1 where a hatching finer than a
 *     point would run together
 */
public record Pen(LineStyle style, double width, double[] dashes, double strength) {
  /** Lines are drawn as if the sheet were shown at least this large, points a mm. */
  static final double LEAST_SCALE = 2.5;

  /** And at most this large: half as large again as life on a common screen of 96 dots an inch. */
  static final double MOST_SCALE = 6;

  /** The finest line, points: below this a line fades unevenly. */
  static final double LEAST_WIDTH = 1;

  /** The shortest gap between dashes, points: half a mm on a common screen. */
  static final double LEAST_GAP = 2;

  /** A hatching never fades further than this, or its slant is no longer seen. */
  private static final double LEAST_STRENGTH = 0.3;

  /**
   * @param scale points a mm
   */
  public static Pen of(LineStyle style, double scale) {
    double k = Math.max(LEAST_SCALE, Math.min(MOST_SCALE, scale));
    double[] dashes = style.dashes();
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] *= k;
      if (i % 2 == 1) {
        dashes[i] = Math.max(LEAST_GAP, dashes[i]);
      }
    }
    double width = style.width() * k;
    double strength =
        style == LineStyle.HATCH
            ? Math.max(LEAST_STRENGTH, Math.min(1, style.width() * scale / LEAST_WIDTH))
            : 1;
    return new Pen(style, Math.max(LEAST_WIDTH, width), dashes, strength);
  }

  @Override
  public double[] dashes() {
    return dashes.clone();
  }
}
