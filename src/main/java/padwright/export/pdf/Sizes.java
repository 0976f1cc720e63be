package padwright.export.pdf;

import padwright.measure.LengthText;
import padwright.measure.Rounding;

/** Sizes as they stand on the sheets for the bench; input in mm. */
final class Sizes {
  /** A maker's rule is read to half a millimetre and to a thirty-second of an inch. */
  static final double STEP_MM = 0.5;

  private Sizes() {}

  /** To a tenth, left out where it is 0; without the unit. */
  static String mm(double mm) {
    return plain(LengthText.mmNumber(mm, 1, Rounding.NEAREST));
  }

  /** To half a millimetre, without the unit. */
  static String mm(double mm, Rounding way) {
    // Counted in half millimetres, so that the rounding's own rule for "on the mark" holds.
    double halves = Double.parseDouble(LengthText.mmNumber(mm / STEP_MM, 0, way));
    return mm(halves * STEP_MM);
  }

  /** To a thirty-second, such as "28 5/32"; without the unit. */
  static String inches(double mm, Rounding way) {
    return LengthText.inches(mm, LengthText.INCH_PARTS, way).replace(" in", "");
  }

  static String inches(double mm) {
    return inches(mm, Rounding.NEAREST);
  }

  /** A depth: "0.276 in (7 mm)" in a job in inches, else "7 mm". */
  static String depth(double mm, boolean inches) {
    return inches ? LengthText.thousandths(mm) + " in (" + mm(mm) + " mm)" : mm(mm) + " mm";
  }

  /** "715.1 mm (28 5/32 in)". */
  static String both(double mm) {
    return mm(mm) + " mm (" + inches(mm) + " in)";
  }

  private static String plain(String number) {
    return number.endsWith(".0") ? number.substring(0, number.length() - 2) : number;
  }
}
