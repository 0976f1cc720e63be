package padwright.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringTokenizer;
import padwright.design.Finding;
import padwright.material.Status;

/** Plain sentences for a terminal. */
public final class Sentences {
  /** Wide enough for a table, narrow enough for half a screen. */
  public static final int WIDTH = 96;

  private Sentences() {}

  /** The text with a full stop at its end. */
  public static String closed(String text) {
    String t = text.stripTrailing();
    return t.isEmpty() || t.endsWith(".") || t.endsWith("!") || t.endsWith("?") ? t : t + ".";
  }

  /** The level as a maker reads it. */
  public static String level(Finding.Level level) {
    return level.name().toLowerCase(Locale.ROOT);
  }

  /** How far a figure can be trusted, in words. */
  public static String status(Status status) {
    return switch (status) {
      case PUBLISHED -> "published";
      case PRACTICE -> "common practice, no source";
      case MEMORY -> "from memory, to be verified";
      case OWN -> "our own choice";
      case MEASURED -> "measured";
    };
  }

  /**
   * A finding in sentences: what is the matter, what to do, where the limit comes from.
   *
   * @param beside its numbers in other units, a sentence with a space before it; may be empty
   */
  public static String finding(Finding f, String beside) {
    StringBuilder s = new StringBuilder(closed(f.message())).append(beside);
    if (!f.remedy().isBlank()) {
      s.append(' ').append(closed(f.remedy()));
    }
    if (!f.source().isBlank()) {
      s.append(" (").append(f.source().strip()).append(')');
    }
    return s.toString();
  }

  /** Lines of at most {@link #WIDTH}, the first after {@code label}, the rest under its end. */
  public static String block(String indent, String label, int labelWidth, String text) {
    String hanging = " ".repeat(indent.length() + labelWidth);
    StringBuilder s = new StringBuilder(indent).append(padded(label, labelWidth));
    int room = Math.max(20, WIDTH - hanging.length());
    List<String> lines = lines(text, room);
    for (int i = 0; i < lines.size(); i++) {
      s.append(i == 0 ? "" : hanging).append(lines.get(i)).append('\n');
    }
    return s.toString();
  }

  public static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  private static List<String> lines(String text, int room) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (StringTokenizer words = new StringTokenizer(text); words.hasMoreTokens(); ) {
      String word = words.nextToken();
      if (line.length() > 0 && line.length() + 1 + word.length() > room) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
