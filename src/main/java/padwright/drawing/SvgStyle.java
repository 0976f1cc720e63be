package padwright.drawing;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The declarations of a style attribute (CSS Style Attributes, W3C 2013): names in any case,
 * comments left out, the last of two that are alike taken.
 */
final class SvgStyle {
  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?(\\*/|$)");

  /** What would draw something else than is read: CSS Transforms, and SVG 2's geometry. */
  private static final Set<String> MOVES =
      Set.of(
          "transform",
          "transform-origin",
          "transform-box",
          "translate",
          "rotate",
          "scale",
          "zoom",
          "offset",
          "offset-path",
          "d",
          "x",
          "y",
          "cx",
          "cy",
          "r",
          "rx",
          "ry",
          "width",
          "height");

  private final Map<String, String> declared = new LinkedHashMap<>();

  SvgStyle(String text) {
    String plain = COMMENT.matcher(text).replaceAll(" ");
    int from = 0;
    int depth = 0;
    char quote = 0;
    for (int i = 0; i <= plain.length(); i++) {
      char c = i == plain.length() ? ';' : plain.charAt(i);
      boolean ends = i == plain.length() || (c == ';' && depth == 0 && quote == 0);
      if (ends) {
        declare(plain.substring(from, i));
        from = i + 1;
      } else if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '(') {
        depth++;
      } else if (c == ')') {
        depth = Math.max(0, depth - 1);
      }
    }
  }

  private void declare(String declaration) {
    String[] parts = declaration.split(":", 2);
    if (parts.length == 2) {
      declared.put(
          parts[0].strip().toLowerCase(Locale.ROOT), parts[1].strip().toLowerCase(Locale.ROOT));
    }
  }

  Optional<String> value(String property) {
    return Optional.ofNullable(declared.get(property));
  }

  /** A property that gives a size or place; an escape in a name may hide one. */
  Optional<String> moves() {
    return declared.keySet().stream()
        .filter(n -> MOVES.contains(n) || n.contains("\\"))
        .findFirst();
  }
}
