package padwright.measure;

import java.math.BigDecimal;

/**
 * Rounding by floating point where it cannot differ from exact arithmetic. A result prints some
 * hundred numbers a part, and exact decimals take longer over them than the part's geometry.
 */
final class Decimals {
  /** Below this every quotient here is exact to far less than {@link #DOUBT}. */
  private static final double LARGEST = 1e8;

  /** So near to where rounding turns, in steps, exact arithmetic decides. */
  private static final double DOUBT = 1e-4;

  private Decimals() {}

  /** Whether {@code quotient}, and nothing near it, rounds to the same whole number both ways. */
  static boolean nearestIsClear(double quotient) {
    double above = quotient - Math.floor(quotient);
    return Math.abs(quotient) < LARGEST && Math.abs(above - 0.5) > DOUBT;
  }

  /** Whether {@code quotient} is clear of every whole number by more than {@code slack}. */
  static boolean floorIsClear(double quotient, double slack) {
    double above = quotient - Math.floor(quotient);
    double clear = slack + DOUBT;
    return Math.abs(quotient) < LARGEST && above > clear && above < 1 - clear;
  }

  /** So many steps of ten to the minus {@code digits}, written out. */
  static String text(long steps, int digits) {
    if (digits == 0) {
      return Long.toString(steps);
    }
    if (digits < 0 || steps == Long.MIN_VALUE) {
      return BigDecimal.valueOf(steps, digits).toPlainString();
    }
    String all = Long.toString(Math.abs(steps));
    StringBuilder s = new StringBuilder(all.length() + digits + 2);
    s.append(steps < 0 ? "-" : "");
    int whole = all.length() - digits;
    if (whole > 0) {
      s.append(all, 0, whole).append('.').append(all, whole, all.length());
    } else {
      s.append("0.").append("0".repeat(-whole)).append(all);
    }
    return s.toString();
  }
}
