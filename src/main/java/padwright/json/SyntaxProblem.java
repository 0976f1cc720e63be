package padwright.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import padwright.measure.InputRefused;

/** Says in a maker's words what is wrong with text that is not JSON. */
final class SyntaxProblem {
  private static final int SHOWN = 20;

  private SyntaxProblem() {}

  static InputRefused of(String file, String text, JsonProcessingException e, boolean atEnd) {
    JsonLocation where = e.getLocation();
    int line = where == null ? 0 : where.getLineNr();
    if (atEnd) {
      return new InputRefused(
          file,
          line,
          "",
          "the file ends before the JSON is complete",
          "Close every quote, bracket and brace");
    }
    int column = where == null ? 0 : where.getColumnNr();
    return new InputRefused(
        file,
        line,
        "",
        "this is not JSON near column " + column + ": " + near(text, where),
        "Check commas, colons, quotes and brackets here; JSON has no comments, no trailing comma"
            + " and no NaN");
  }

  /** What stands on the offending line up to the offending place and a little after it. */
  private static String near(String text, JsonLocation where) {
    int at = where == null ? 0 : (int) Math.max(0, Math.min(where.getCharOffset(), text.length()));
    int from = Math.max(text.lastIndexOf('\n', at - 1) + 1, at - SHOWN);
    int end = text.indexOf('\n', at);
    int to = Math.min(end < 0 ? text.length() : end, at + SHOWN);
    return from >= to ? "(an empty line)" : text.substring(from, to).strip();
  }
}
