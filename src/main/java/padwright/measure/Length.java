package padwright.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a length as a maker writes it: {@code 12}, {@code 12mm}, {@code 1.5 in}, {@code 1 1/4 in},
 * {@code 1-1/4"}, {@code 3/16"}, {@code 2 ft 3 in}, {@code -6 mm}. A number without a unit is in
 * the unit the caller names. The answer is in mm.
 *
 * <p>Fractions and decimals are kept exact until the end and rounded to a double once, so the same
 * length written in inches and in mm comes out as the same double. What cannot be read, or lies
 * beyond {@link #LARGEST} either way, is an {@link InputRefused} without a place; the caller knows
 * the place.
 */
public final class Length {
  /** The largest length taken, mm: longer than any roll of paper or covering this is meant for. */
  public static final double LARGEST = 10_000;

  /** More than any honest length needs; keeps the arithmetic on a hostile text short. */
  private static final int LONGEST_TEXT = 64;

  /** Far beyond a double's 17 digits, so that only the last step rounds. */
  private static final MathContext EXACT_ENOUGH = new MathContext(60);

  /** Decimals of a mm kept of an inch: finer than a 64th written out (6), coarser than a double. */
  private static final int KEPT_OF_AN_INCH = 10;

  /** A decimal exponent past this cannot be a length and would only cost time. */
  private static final int LARGEST_EXPONENT = 400;

  private static final Map<Character, String> VULGAR =
      Map.ofEntries(
          Map.entry('\u00bc', "1/4"),
          Map.entry('\u00bd', "1/2"),
          Map.entry('\u00be', "3/4"),
          Map.entry('\u2153', "1/3"),
          Map.entry('\u2154', "2/3"),
          Map.entry('\u215b', "1/8"),
          Map.entry('\u215c', "3/8"),
          Map.entry('\u215d', "5/8"),
          Map.entry('\u215e', "7/8"));

  private static final String NUMBER =
      "(?:(?<whole>\\d+)(?:\\s+|\\s*-\\s*))?(?<top>\\d+)\\s*[/\u2044]\\s*(?<bottom>\\d+)"
          + "|(?<decimal>\\d+(?:\\.\\d*)?|\\.\\d+)";

  private static final Pattern TERM =
      Pattern.compile(
          "\\s*(?:" + NUMBER + ")\\s*(?<unit>[^\\s\\d.+\\-/\u2044][^\\s\\d+\\-/\u2044]*)?");

  private static final String REMEDY = "Write it like 12, \"12 mm\", \"1 1/4 in\" or \"2 ft 3 in\"";

  private Length() {}

  /** The length in mm that {@code text} says; a number without a unit is in {@code plain}. */
  public static double parse(String text, LengthUnit plain) {
    String s = text.strip();
    if (s.isEmpty()) {
      throw refused(quoted(text) + ", an empty text, is not a length", REMEDY);
    }
    if (s.length() > LONGEST_TEXT) {
      throw refused(
          quoted(text) + ", a text of " + s.length() + " characters, is not a length", REMEDY);
    }
    boolean negative = s.startsWith("-") || s.startsWith("\u2212");
    String unsigned = vulgarWrittenOut(negative ? s.substring(1) : s);
    Matcher m = TERM.matcher(unsigned);
    if (!m.lookingAt()) {
      throw refused(quoted(text) + " is not a length", REMEDY);
    }
    LengthUnit unit = unitOf(m, plain, text);
    BigDecimal mm = termInMm(m, unit, text);
    if (m.end() < unsigned.length()) {
      // The only length in two parts is feet and inches.
      int second = m.end();
      boolean two = unit == LengthUnit.FOOT && m.region(second, unsigned.length()).matches();
      if (!two || unitOf(m, LengthUnit.INCH, text) != LengthUnit.INCH) {
        throw refused(quoted(text) + " is not a length", REMEDY);
      }
      mm = mm.add(termInMm(m, LengthUnit.INCH, text));
    }
    return inRange(negative ? mm.negate() : mm, quoted(text));
  }

  /** The length in mm of a plain number in {@code unit}. */
  public static double of(BigDecimal number, LengthUnit unit) {
    return of(number, unit, number.toString());
  }

  /** The same of a number that was written as {@code shown}, for a refusal. */
  public static double of(BigDecimal number, LengthUnit unit, String shown) {
    long digitsBeforePoint = (long) number.precision() - number.scale();
    if (number.signum() != 0 && Math.abs(digitsBeforePoint) > LARGEST_EXPONENT) {
      throw digitsBeforePoint > 0
          ? tooLarge(shown)
          : refused(shown + " is too small to be a length", REMEDY);
    }
    return inRange(inMm(number, unit), shown);
  }

  /** The length in mm of a plain number in {@code unit}; NaN and infinity are refused. */
  public static double of(double number, LengthUnit unit) {
    if (!Double.isFinite(number)) {
      throw refused(number + " is not a length", REMEDY);
    }
    return of(BigDecimal.valueOf(number), unit);
  }

  /**
   * A decimal of inches that stands for a whole mm, such as 2.3622047244094488, comes back as that
   * mm, so that limits such as "to 60 wide" fall on the same side in both units.
   */
  private static BigDecimal inMm(BigDecimal number, LengthUnit unit) {
    BigDecimal mm = number.multiply(unit.millimetres());
    boolean inches = unit == LengthUnit.INCH || unit == LengthUnit.FOOT;
    return inches ? mm.setScale(KEPT_OF_AN_INCH, RoundingMode.HALF_EVEN) : mm;
  }

  private static LengthUnit unitOf(Matcher m, LengthUnit plain, String text) {
    String mark = m.group("unit");
    if (mark == null) {
      return plain;
    }
    Optional<LengthUnit> unit = LengthUnit.marked(mark);
    return unit.orElseThrow(
        () ->
            refused(
                quoted(text) + " has an unknown unit " + quoted(mark),
                mark.startsWith(",")
                    ? "Write decimals with a point, like \"1.5 in\""
                    : "Use mm, cm, m, in or ft"));
  }

  private static BigDecimal termInMm(Matcher m, LengthUnit unit, String text) {
    if (m.group("decimal") != null) {
      return inMm(new BigDecimal(m.group("decimal")), unit);
    }
    BigInteger bottom = new BigInteger(m.group("bottom"));
    if (bottom.signum() == 0) {
      throw refused(quoted(text) + " divides by zero", REMEDY);
    }
    BigInteger top = new BigInteger(m.group("top"));
    if (m.group("whole") != null) {
      top = top.add(new BigInteger(m.group("whole")).multiply(bottom));
    }
    return new BigDecimal(top)
        .multiply(unit.millimetres())
        .divide(new BigDecimal(bottom), EXACT_ENOUGH);
  }

  private static String vulgarWrittenOut(String s) {
    StringBuilder b = new StringBuilder();
    for (int i = 0; i < s.length(); i++) {
      String fraction = VULGAR.get(s.charAt(i));
      if (fraction == null) {
        b.append(s.charAt(i));
      } else {
        b.append(b.length() > 0 ? " " : "").append(fraction);
      }
    }
    return b.toString();
  }

  private static double inRange(BigDecimal mm, String shown) {
    if (mm.abs().compareTo(BigDecimal.valueOf(LARGEST)) > 0) {
      throw tooLarge(shown);
    }
    // Adding zero turns a negative zero into a plain one.
    return mm.doubleValue() + 0.0;
  }

  private static InputRefused tooLarge(String shown) {
    return refused(
        shown + " is more than the largest length, 10 m (10000 mm)",
        "Check the number and its unit");
  }

  private static String quoted(String text) {
    return '"' + Printable.shortened(text, LONGEST_TEXT) + '"';
  }

  private static InputRefused refused(String problem, String remedy) {
    return new InputRefused("", 0, "", problem, remedy);
  }
}
