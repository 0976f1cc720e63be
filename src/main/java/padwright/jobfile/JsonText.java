package padwright.jobfile;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

/**
 * Writes JSON (RFC 8259) the way a maker can read it: an object or list that fits on one line stays
 * on one line. Takes maps, lists, texts, {@link BigDecimal}, whole numbers and booleans.
 */
final class JsonText {
  private static final int LINE = 100;
  private static final String INDENT = "  ";

  private final StringBuilder out = new StringBuilder();

  private JsonText() {}

  /** The document; its outermost braces always stand on lines of their own. */
  static String of(Map<String, ?> root) {
    JsonText text = new JsonText();
    text.broken(root, "");
    return text.out.append('\n').toString();
  }

  private void value(Object value, String indent) {
    int start = out.length();
    int column = start - (out.lastIndexOf("\n") + 1);
    flat(value);
    boolean container = value instanceof Map || value instanceof List;
    if (container && column + out.length() - start > LINE) {
      out.setLength(start);
      broken(value, indent);
    }
  }

  private void broken(Object value, String indent) {
    String inner = indent + INDENT;
    out.append(value instanceof Map ? "{" : "[");
    String[] between = {"\n"};
    each(
        value,
        (key, child) -> {
          out.append(between[0]).append(inner);
          between[0] = ",\n";
          if (key != null) {
            string(key);
            out.append(": ");
          }
          value(child, inner);
        });
    out.append('\n').append(indent).append(value instanceof Map ? '}' : ']');
  }

  private void flat(Object value) {
    if (value instanceof String s) {
      string(s);
    } else if (value instanceof BigDecimal n) {
      out.append(n);
    } else if (value instanceof Map || value instanceof List) {
      boolean map = value instanceof Map;
      out.append(map ? "{ " : "[");
      String[] between = {""};
      each(
          value,
          (key, child) -> {
            out.append(between[0]);
            between[0] = ", ";
            if (key != null) {
              string(key);
              out.append(": ");
            }
            flat(child);
          });
      out.append(map ? " }" : "]");
    } else if (value instanceof Integer || value instanceof Boolean) {
      out.append(value);
    } else {
      throw new IllegalArgumentException("not a JSON value of ours: " + value);
    }
  }

  private static void each(Object container, BiConsumer<String, Object> action) {
    if (container instanceof Map<?, ?> map) {
      map.forEach((key, child) -> action.accept((String) key, child));
    } else if (container instanceof List<?> list) {
      list.forEach(child -> action.accept(null, child));
    }
  }

  private void string(String s) {
    out.append('"');
    for (int i = 0; i < s.length(); i++) {
      char c = s.charAt(i);
      switch (c) {
        case '"', '\\' -> out.append('\\').append(c);
        default -> {
          if (c < ' ') {
            out.append("\\u00").append(Character.forDigit(c >> 4, 16));
            out.append(Character.forDigit(c & 15, 16));
          } else {
            out.append(c);
          }
        }
      }
    }
    out.append('"');
  }
}
