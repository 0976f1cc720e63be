package padwright.json;

import java.util.Locale;
import padwright.measure.InputRefused;

/** Holds texts and names of a document to what a drawing can carry and a maker would write. */
final class Texts {
  private Texts() {}

  /** Refuses a text that is too long or holds what XML cannot carry. */
  static void check(Node node) {
    String text = node.string();
    if (text.length() > LocatedJson.MAX_STRING) {
      throw node.refuse(
          node.shown() + " is too long: a text of " + text.length() + " characters",
          "Keep texts to 10,000 characters");
    }
    int bad = unprintable(text);
    if (bad >= 0) {
      throw node.refuse(
          node.shown()
              + String.format(
                  Locale.ROOT, " holds the character U+%04X, which cannot be printed", bad),
          "Write it without");
    }
  }

  static InputRefused nameTooLong(Node object, int line, String name) {
    return new InputRefused(
        object.file(),
        line,
        object.path() + Node.step(name),
        "the name of a field is too long: " + name.length() + " characters",
        "Keep names to 10,000 characters");
  }

  /** The first character that XML 1.0 (section 2.2) cannot carry, or -1: controls, half pairs. */
  private static int unprintable(String s) {
    for (int i = 0; i < s.length(); ) {
      int c = s.codePointAt(i);
      boolean carried =
          (c >= 0x20 && c <= 0xD7FF)
              || (c >= 0xE000 && c <= 0xFFFD)
              || c >= 0x10000
              || c == '\t'
              || c == '\n'
              || c == '\r';
      if (!carried) {
        return c;
      }
      i += Character.charCount(c);
    }
    return -1;
  }
}
