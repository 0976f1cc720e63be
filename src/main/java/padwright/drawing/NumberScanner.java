package padwright.drawing;

import padwright.measure.InputRefused;
import padwright.measure.Printable;

/** Reads numbers and letters from one attribute of an SVG file, after the grammar of SVG 1.1. */
final class NumberScanner {
  private static final int SHOWN = 24;

  private final String text;
  private final String what;
  private final int line;
  private final Budget budget;
  private int at;

  /**
   * @param what the attribute, for a refusal
   */
  NumberScanner(String text, String what, int line, Budget budget) {
    this.text = text;
    this.what = what;
    this.line = line;
    this.budget = budget;
  }

  private static boolean space(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f';
  }

  private void skip(boolean comma) {
    boolean open = comma;
    while (at < text.length() && (space(text.charAt(at)) || open && text.charAt(at) == ',')) {
      open &= text.charAt(at) != ',';
      at++;
    }
  }

  /** Whether nothing but space is left. */
  boolean done() {
    skip(false);
    return at >= text.length();
  }

  /** The next character, which is not read yet; 0 at the end. */
  char next() {
    skip(true);
    return at < text.length() ? text.charAt(at) : 0;
  }

  char take() {
    char c = next();
    at++;
    return c;
  }

  /** The word up to the next character that is no letter. */
  String word() {
    skip(true);
    int from = at;
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    return text.substring(from, at);
  }

  void expect(char c) {
    if (next() != c) {
      throw refuse("'" + c + "' is missing");
    }
    at++;
  }

  boolean numberFollows() {
    char c = next();
    return c >= '0' && c <= '9' || c == '.' || c == '-' || c == '+';
  }

  /** A flag of an arc: one digit, which may stand close to what follows. */
  boolean flag() {
    char c = take();
    if (c != '0' && c != '1') {
      at--;
      throw refuse("an arc's flag must be 0 or 1");
    }
    return c == '1';
  }

  double number() {
    skip(true);
    int from = at;
    if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
      at++;
    }
    int digits = digits();
    if (at < text.length() && text.charAt(at) == '.') {
      at++;
      digits += digits();
    }
    if (digits == 0) {
      at = from;
      throw refuse("a number is missing");
    }
    exponent();
    if (at - from > DrawingLimits.LONGEST_NUMBER) {
      throw refuse("a number has more than " + DrawingLimits.LONGEST_NUMBER + " characters");
    }
    double value = Double.parseDouble(text.substring(from, at));
    if (!(Math.abs(value) <= DrawingLimits.LARGEST_NUMBER)) {
      at = from;
      throw refuse("a number is too large");
    }
    return value;
  }

  private int digits() {
    int from = at;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    return at - from;
  }

  /** Only where digits follow: "1em" is a 1 and a unit. */
  private void exponent() {
    int from = at;
    if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
      at++;
      if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
        at++;
      }
      if (digits() == 0) {
        at = from;
      }
    }
  }

  /** What follows, to its end. */
  String rest() {
    return text.substring(at).strip();
  }

  InputRefused refuse(String problem) {
    String shown =
        Printable.shortened(
            text.substring(Math.min(at, text.length())).replaceAll("\\s+", " "), SHOWN);
    return budget.refuse(
        line,
        "in the attribute "
            + what
            + ", "
            + problem
            + (shown.isEmpty() ? "" : " before \"" + shown + "\""),
        "Save the drawing again as plain SVG");
  }
}
