package padwright.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonEOFException;
import padwright.measure.InputRefused;
import padwright.measure.Printable;

/** Says in a maker's words what is wrong with text that is not JSON. */
final class SyntaxProblem {
  private static final int SHOWN = 20;

  /** Characters that cannot be inside a number or a bare word. */
  private static final String ENDS_A_WORD = ",:[]{}\"";

  private SyntaxProblem() {}

  /** Whether the text ended after an item of a list or object, with no other begun. */
  static boolean betweenItems(JsonProcessingException e) {
    return e instanceof JsonEOFException eof
        && (eof.getTokenBeingDecoded() == null
            || eof.getTokenBeingDecoded() == JsonToken.NOT_AVAILABLE);
  }

  static InputRefused of(String file, String path, String text, JsonProcessingException e) {
    JsonLocation where = e.getLocation();
    int at = place(text, e);
    int line = where == null ? 1 : where.getLineNr();
    if (e instanceof JsonEOFException || e.getOriginalMessage().startsWith("Unexpected end-of")) {
      return new InputRefused(
          file,
          line,
          path,
          "the file ends before the JSON is complete, after: " + near(text, text.length()),
          "Close every quote, bracket and brace");
    }
    int column = where == null ? 0 : where.getColumnNr();
    String word = word(text, at);
    return new InputRefused(
        file,
        line,
        path,
        (word.isEmpty() ? "this is not JSON" : word + " is not JSON")
            + " near column "
            + column
            + ": "
            + near(text, at),
        "Check commas, colons, quotes and brackets here; JSON has no comments, no trailing comma"
            + " and no NaN");
  }

  private static int place(String text, JsonProcessingException e) {
    JsonLocation where = e.getLocation();
    int offset = where == null ? 0 : (int) where.getCharOffset();
    return Math.max(0, Math.min(offset, text.length()));
  }

  /** Whether what cannot be read stands behind a field's colon, so that its name is known. */
  static boolean inValueOfAField(String text, JsonProcessingException e) {
    return text.substring(0, start(text, place(text, e))).stripTrailing().endsWith(":");
  }

  private static int start(String text, int at) {
    int from = at;
    while (from > 0 && at - from <= 2 * SHOWN && inWord(text.charAt(from - 1))) {
      from--;
    }
    return from;
  }

  /** The number or bare word the place lies in or just behind; empty where it is in neither. */
  private static String word(String text, int at) {
    int from = start(text, at);
    int to = at;
    while (to < text.length() && to - at <= 2 * SHOWN && inWord(text.charAt(to))) {
      to++;
    }
    return Printable.shortened(text.substring(from, to), 2 * SHOWN);
  }

  private static boolean inWord(char c) {
    return c > ' ' && ENDS_A_WORD.indexOf(c) < 0;
  }

  /** What stands on the offending line up to the offending place and a little after it. */
  private static String near(String text, int at) {
    int end = text.indexOf('\n', at);
    int to = Math.min(end < 0 ? text.length() : end, at + SHOWN);
    int from = Math.max(text.lastIndexOf('\n', at - 1) + 1, at - SHOWN);
    String shown = from >= to ? "" : text.substring(from, to).strip();
    return shown.isEmpty() ? "(an empty line)" : Printable.shortened(shown, 3 * SHOWN);
  }
}
