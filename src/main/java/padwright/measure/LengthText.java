package padwright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Prints lengths given in mm, as a decimal of mm or as an inch and a fraction, rounded the way a
 * maker needs it. Independent of the machine's language. Refuses a number that is not finite.
 */
public final class LengthText {
  /** Digits after the point of a mm length on a job sheet. */
  public static final int MM_DIGITS = 1;

  /**
   * The finest fraction of an inch on paper and in tables: one rule for a size wherever it stands.
   */
  public static final int INCH_PARTS = 32;

  /** Fine enough to tell a tenth of a mm, which depths under a staple are held to. */
  private static final int INCH_DECIMALS = 3;

  /**
   * A length this close to a mark of the rule counts as on it, mm: rounding up must not turn
   * 31.750000001 into the next sixteenth. A thousand times the rounding noise of a sum of lengths
   * below 10 m, and far below anything a knife can cut.
   */
  static final double ON_THE_MARK = 1e-6;

  private LengthText() {}

  /** Digits only, without the unit, such as {@code 57.6}. */
  public static String mmNumber(double mm, int digits, Rounding rounding) {
    return decimal(steps(mm, BigDecimal.ONE.scaleByPowerOfTen(-digits), rounding), digits);
  }

  /** Such as {@code 57.6 mm}. */
  public static String mm(double mm, int digits, Rounding rounding) {
    return mmNumber(mm, digits, rounding) + " mm";
  }

  /** Such as {@code 57.6 mm}, to the nearest tenth. */
  public static String mm(double mm) {
    return mm(mm, MM_DIGITS, Rounding.NEAREST);
  }

  /** Such as {@code 1 1/4 in}; {@code parts} is the finest fraction, a power of two up to 64. */
  public static String inches(double mm, int parts, Rounding rounding) {
    if (parts < 1 || parts > 64 || Integer.bitCount(parts) != 1) {
      throw new IllegalArgumentException("an inch is divided into 1, 2, 4 ... 64 parts: " + parts);
    }
    BigDecimal part =
        LengthUnit.INCH.millimetres().divide(BigDecimal.valueOf(parts)); // exact: a power of two
    long n = steps(mm, part, rounding);
    long whole = Math.abs(n) / parts;
    long top = Math.abs(n) % parts;
    StringBuilder s = new StringBuilder(n < 0 ? "-" : "");
    if (whole > 0 || top == 0) {
      s.append(whole);
    }
    if (top > 0) {
      long common = Long.lowestOneBit(top | parts);
      s.append(whole > 0 ? " " : "").append(top / common).append('/').append(parts / common);
    }
    return s.append(" in").toString();
  }

  /** In {@code unit} with the fineness of a job sheet: mm to a tenth, inches to a thirty-second. */
  public static String in(LengthUnit unit, double mm, Rounding rounding) {
    return switch (unit) {
      case MM -> mm(mm, MM_DIGITS, rounding);
      case INCH -> inches(mm, INCH_PARTS, rounding);
      case CM, METRE, FOOT -> throw new IllegalArgumentException("lengths print in mm or inches");
    };
  }

  /** A depth in thousandths of an inch, without the unit, such as {@code 0.276}. */
  public static String thousandths(double mm) {
    BigDecimal step = LengthUnit.INCH.millimetres().scaleByPowerOfTen(-INCH_DECIMALS);
    return decimal(steps(mm, step, Rounding.NEAREST), INCH_DECIMALS);
  }

  /** How many steps of {@code step} the length is. */
  private static long steps(double mm, BigDecimal step, Rounding rounding) {
    if (!Double.isFinite(mm)) {
      throw new IllegalArgumentException("not a length: " + mm);
    }
    double quotient = mm / step.doubleValue();
    if (rounding == Rounding.NEAREST && Decimals.nearestIsClear(quotient)) {
      return Math.round(quotient);
    }
    double slackInSteps = ON_THE_MARK / step.doubleValue();
    if (rounding != Rounding.NEAREST && Decimals.floorIsClear(quotient, slackInSteps)) {
      long below = (long) Math.floor(quotient);
      return rounding == Rounding.DOWN ? below : below + 1;
    }
    BigDecimal exact = new BigDecimal(mm);
    BigDecimal slack = BigDecimal.valueOf(ON_THE_MARK);
    return switch (rounding) {
      case NEAREST -> divided(exact, step, RoundingMode.HALF_UP);
      case DOWN -> divided(exact.add(slack), step, RoundingMode.FLOOR);
      case UP -> divided(exact.subtract(slack), step, RoundingMode.CEILING);
    };
  }

  private static long divided(BigDecimal mm, BigDecimal step, RoundingMode mode) {
    return mm.divide(step, 0, mode).longValueExact();
  }

  private static String decimal(long steps, int digits) {
    return Decimals.text(steps, digits);
  }
}
