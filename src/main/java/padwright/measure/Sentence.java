package padwright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Puts values into a sentence, the same in every locale. Knows {@code %s}, {@code %d}, {@code %.Nf}
 * and {@code %%}, and rounds as {@link String#format} does (the shortest decimal, half up); it is
 * here because a part has some hundred such texts and the general formatter takes longer over them
 * than the part's geometry.
 */
public final class Sentence {
  private static final double[] POWERS = {1, 10, 100, 1e3, 1e4, 1e5, 1e6};

  /** Above this a number is no count or size, and its digits are no longer all its own. */
  private static final double WHOLE = 1e15;

  private Sentence() {}

  /**
   * The text with its values in place.
   *
   * @throws IllegalArgumentException where the format asks for anything else, or for more values
   *     than there are
   */
  public static String of(String format, Object... values) {
    StringBuilder out = new StringBuilder(format.length() + 8 * values.length);
    int next = 0;
    int at = 0;
    while (true) {
      int percent = format.indexOf('%', at);
      if (percent < 0) {
        return out.append(format, at, format.length()).toString();
      }
      out.append(format, at, percent);
      char kind = charAt(format, percent + 1);
      at = percent + 2;
      if (kind == '%') {
        out.append('%');
      } else if (next >= values.length) {
        throw new IllegalArgumentException("no value left for: " + format);
      } else if (kind == 's' || kind == 'd') {
        out.append(values[next++]);
      } else if (kind == '.' && charAt(format, percent + 3) == 'f') {
        int digits = format.charAt(percent + 2) - '0';
        out.append(decimal(((Number) values[next++]).doubleValue(), digits));
        at = percent + 4;
      } else {
        throw new IllegalArgumentException("not a format: " + format);
      }
    }
  }

  private static char charAt(String s, int i) {
    return i < s.length() ? s.charAt(i) : ' ';
  }

  /** A number with so many decimals; infinite and undefined ones by their names. */
  public static String decimal(double value, int digits) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    double quotient = digits >= 0 && digits < POWERS.length ? value * POWERS[digits] : Double.NaN;
    String text =
        Decimals.nearestIsClear(quotient)
            ? Decimals.text(Math.round(quotient), digits)
            : BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP).toPlainString();
    // A negative value that rounds to nought keeps its sign, as elsewhere.
    boolean lostSign = (value < 0 || 1 / value < 0) && text.charAt(0) != '-';
    return lostSign ? "-" + text : text;
  }

  /** Without needless noughts: 8, 9.5. */
  public static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < WHOLE
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}
