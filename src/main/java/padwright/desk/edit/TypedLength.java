package padwright.desk.edit;

import java.math.BigInteger;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padwright.measure.InputRefused;
import padwright.measure.Length;
import padwright.measure.LengthUnit;

/**
 * A length as a maker types it into a field: what a job file takes ({@link Length}), and sums of
 * such lengths, such as {@code 12+12}, {@code 1 1/4 in + 6 mm}, {@code 3*12}, {@code (600-18)/2}.
 * Answers in mm.
 *
 * <p>What can be read as one length is one: {@code 3/4} is three quarters and {@code 1-1/4 in} an
 * inch and a quarter. A minus with blanks on both sides always takes away, as in {@code 2 - 1/4},
 * and so does one before more than a whole: {@code 600-18/2} is 591.
 */
public final class TypedLength {
  private static final int LONGEST = 120;

  /** Sums of doubles are kept to this share of a mm, so that 0.1 + 0.2 is 0.3. */
  private static final double KEPT = 1e9;

  private static final Pattern TAKES_AWAY = Pattern.compile("\\s[-\u2212]\\s");

  /** A whole number, a minus and a fraction. */
  private static final Pattern MIXED =
      Pattern.compile("(?<whole>\\d+)\\s*-\\s*(?<top>\\d+)\\s*[/\u2044]\\s*(?<bottom>\\d+)");

  /** A number, a fraction or a whole number with a fraction, with or without a unit. */
  private static final Pattern TERM =
      Pattern.compile(
          "(?:\\d+(?:\\s+|-))?\\d+\\s*[/\u2044]\\s*\\d+(?![\\d.])\\s*(?<a>"
              + unit()
              + ")?"
              + "|(?:\\d+(?:\\.\\d*)?|\\.\\d+)[\u00bc\u00bd\u00be\u2153\u2154\u215b\u215c\u215d\u215e]?\\s*(?<b>"
              + unit()
              + ")?|[\u00bc\u00bd\u00be\u2153\u2154\u215b\u215c\u215d\u215e]\\s*(?<c>"
              + unit()
              + ")?");

  private static final Pattern FEET = Pattern.compile("(?:ft\\.?|feet|foot|'|\u2032)$");

  private static final String REMEDY =
      "Write it like 12, 12+12, \"1 1/4 in\", 600 - 2*18 or (600 - 18)/2";

  private final String text;
  private final LengthUnit plain;
  private int at;

  private TypedLength(String text, LengthUnit plain) {
    this.text = text;
    this.plain = plain;
  }

  private static String unit() {
    return "mm|cm|m|inches|inch|in\\.?|ft\\.?|feet|foot|\"|''|'|\u2033|\u201d|\u2032";
  }

  /** A part of a sum: a length in mm, or a number that has no unit yet. */
  private record Value(double number, boolean hasUnit) {
    double mm(LengthUnit plain) {
      return hasUnit ? number : number * plain.millimetres().doubleValue();
    }
  }

  /**
   * @param plain the unit of a number without one
   * @throws InputRefused without a place; the caller knows the field
   */
  public static double parse(String typed, LengthUnit plain) {
    String text = typed.strip();
    if (text.length() > LONGEST) {
      throw refused(text.substring(0, LONGEST), "is too long for a length");
    }
    if (!TAKES_AWAY.matcher(text).find() && !takesAway(MIXED.matcher(text))) {
      try {
        return Length.parse(text, plain);
      } catch (InputRefused notOne) {
        if (text.isEmpty() || !text.matches(".*[-+*/()\u00d7\u2212].*")) {
          throw notOne;
        }
      }
    }
    TypedLength t = new TypedLength(text, plain);
    double mm = Math.round(t.sum().mm(plain) * KEPT) / KEPT;
    t.blanks();
    if (t.at < text.length()) {
      throw refused(text, "cannot be read from \"" + text.substring(t.at) + "\" on");
    }
    if (!(Math.abs(mm) <= Length.LARGEST)) {
      throw refused(text, "comes to more than 10 m");
    }
    return mm;
  }

  /** Nobody says six hundred and eighteen halves: there a minus is one. */
  private static boolean takesAway(Matcher mixed) {
    return mixed.lookingAt()
        && new BigInteger(mixed.group("top")).compareTo(new BigInteger(mixed.group("bottom"))) >= 0;
  }

  private Value sum() {
    Value left = product();
    while (true) {
      blanks();
      if (takes('+')) {
        left = added(left, product(), 1);
      } else if (takes('-') || takes('\u2212')) {
        left = added(left, product(), -1);
      } else {
        return left;
      }
    }
  }

  private Value added(Value a, Value b, int sign) {
    if (a.hasUnit() == b.hasUnit()) {
      return new Value(a.number() + sign * b.number(), a.hasUnit());
    }
    return new Value(a.mm(plain) + sign * b.mm(plain), true);
  }

  private Value product() {
    Value left = factor();
    while (true) {
      blanks();
      if (takes('*') || takes('\u00d7')) {
        Value right = factor();
        if (left.hasUnit() && right.hasUnit()) {
          throw refused(text, "multiplies two lengths, which gives an area");
        }
        left = new Value(left.number() * right.number(), left.hasUnit() || right.hasUnit());
      } else if (takes('/')) {
        Value right = factor();
        if (right.hasUnit()) {
          throw refused(text, "divides by a length");
        }
        if (right.number() == 0) {
          throw refused(text, "divides by zero");
        }
        left = new Value(left.number() / right.number(), left.hasUnit());
      } else {
        return left;
      }
    }
  }

  private Value factor() {
    blanks();
    if (takes('-') || takes('\u2212')) {
      Value v = factor();
      return new Value(-v.number(), v.hasUnit());
    }
    if (takes('(')) {
      Value inside = sum();
      blanks();
      if (!takes(')')) {
        throw refused(text, "lacks a closing bracket");
      }
      return inside;
    }
    Matcher mixed = MIXED.matcher(text).region(at, text.length());
    if (takesAway(mixed)) {
      at = mixed.end("whole");
      return new Value(Length.parse(mixed.group("whole"), LengthUnit.MM), false);
    }
    Matcher m = TERM.matcher(text).region(at, text.length());
    if (!m.lookingAt()) {
      throw refused(
          text,
          at < text.length()
              ? "cannot be read from \"" + text.substring(at) + "\" on"
              : "ends where a number should stand");
    }
    at = m.end();
    boolean unit = m.group("a") != null || m.group("b") != null || m.group("c") != null;
    String term = m.group().strip().toLowerCase(Locale.ROOT);
    blanks();
    if (FEET.matcher(term).find() && m.region(at, text.length()).lookingAt()) {
      // Feet and inches are one length.
      at = m.end();
      term += " " + m.group().strip().toLowerCase(Locale.ROOT);
    }
    return new Value(Length.parse(term, unit ? plain : LengthUnit.MM), unit);
  }

  private void blanks() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }

  private boolean takes(char c) {
    if (at < text.length() && text.charAt(at) == c) {
      at++;
      return true;
    }
    return false;
  }

  private static InputRefused refused(String text, String problem) {
    return new InputRefused("", 0, "", "\"" + text + "\" " + problem, REMEDY);
  }
}
