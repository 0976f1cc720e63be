package padwright.export.pdf;

import java.util.Locale;
import padwright.measure.InputRefused;

/**
 * What a ruler said about the 100 mm check lines of an earlier print, mm. Drawing is stretched by
 * the inverse, each axis by itself, so that the next print measures 100. The axes are the paper's,
 * not the drawing's: a printer errs along its feed, whichever way the drawing lies.
 *
 * @param measuredX the line along the paper's short side (across a roll)
 * @param measuredY the line along its long side (along a roll)
 */
public record PrintCorrection(double measuredX, double measuredY) {
  /** The length of the check lines, mm. */
  public static final double CHECK_LENGTH = 100;

  /**
   * Further off than this is no printer's error but a wrong print setting: A4 fitted to Letter
   * comes out at 94, two pages a sheet at 71. Our own limit.
   */
  private static final double LEAST = 85;

  private static final double MOST = 115;

  public PrintCorrection {
    check("across the paper", measuredX);
    check("along the paper", measuredY);
  }

  private static void check(String which, double measured) {
    if (!(measured >= LEAST && measured <= MOST)) {
      throw new InputRefused(
          "",
          0,
          "",
          String.format(
              Locale.ROOT,
              "The 100 mm check line %s is said to measure %s mm, outside %.0f to %.0f",
              which,
              Double.toString(measured),
              LEAST,
              MOST),
          "Measure the line again in mm; if it is right, print at actual size, not scaled to fit");
    }
  }

  /** A printer that prints true. */
  public static PrintCorrection none() {
    return new PrintCorrection(CHECK_LENGTH, CHECK_LENGTH);
  }

  /** The factor along the paper's short side. */
  public double scaleX() {
    return CHECK_LENGTH / measuredX;
  }

  /** The factor along the paper's long side. */
  public double scaleY() {
    return CHECK_LENGTH / measuredY;
  }

  public boolean isNone() {
    return measuredX == CHECK_LENGTH && measuredY == CHECK_LENGTH;
  }

  /** One line for the edge of a page. */
  public String sentence() {
    if (isNone()) {
      return "Actual size, no correction for the printer";
    }
    return String.format(
        Locale.ROOT,
        "Corrected for the printer: across the paper x %.4f, along it x %.4f",
        scaleX(),
        scaleY());
  }
}
