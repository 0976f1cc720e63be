package padwright.export.pdf;

import java.util.Locale;
import padwright.measure.Mm;

/** Lengths as they stand on paper: mm with a point, inches as fractions. Input in mm. */
final class Sizes {
  /** Which way a size may be rounded. */
  enum Rounding {
    /** Never larger: a board that must go in. */
    DOWN,
    NEAREST,
    /** Never smaller: a cover that must reach. */
    UP
  }

  /** A maker's rule is read to half a millimetre and to a thirty-second of an inch. */
  static final double STEP_MM = 0.5;

  private static final int STEPS_PER_INCH = 32;

  /** Less than this over a step is arithmetic, not length, mm. */
  private static final double SLACK = 1e-6;

  private Sizes() {}

  /** One decimal, left out where it is 0. */
  static String mm(double mm) {
    double tenths = Math.round(mm * 10);
    return tenths % 10 == 0
        ? String.format(Locale.ROOT, "%.0f", tenths / 10 + 0.0)
        : String.format(Locale.ROOT, "%.1f", tenths / 10);
  }

  /** To half a millimetre. */
  static String mm(double mm, Rounding way) {
    return mm(round(mm, STEP_MM, way));
  }

  /** To a thirty-second, such as "28 5/32". */
  static String inches(double mm, Rounding way) {
    double step = Mm.PER_INCH / STEPS_PER_INCH;
    long n = Math.round(round(mm, step, way) / step);
    long whole = n / STEPS_PER_INCH;
    long part = n % STEPS_PER_INCH;
    if (part == 0) {
      return Long.toString(whole);
    }
    int below = STEPS_PER_INCH;
    while (part % 2 == 0) {
      part /= 2;
      below /= 2;
    }
    return (whole == 0 ? "" : whole + " ") + part + "/" + below;
  }

  static String inches(double mm) {
    return inches(mm, Rounding.NEAREST);
  }

  /** "715.1 mm (28 5/32 in)". */
  static String both(double mm) {
    return mm(mm) + " mm (" + inches(mm) + " in)";
  }

  static double round(double value, double step, Rounding way) {
    return switch (way) {
      case DOWN -> Math.floor((value + SLACK) / step) * step;
      case NEAREST -> Math.rint(value / step) * step;
      case UP -> Math.ceil((value - SLACK) / step) * step;
    };
  }
}
