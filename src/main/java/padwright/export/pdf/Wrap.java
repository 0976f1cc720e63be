package padwright.export.pdf;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines that fit, by the real widths of its letters. */
final class Wrap {
  private Wrap() {}

  /** Lines no longer than {@code room} mm; a single word that is longer is broken. */
  static List<String> lines(Typeface face, String text, double size, double room) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+")) {
      String rest = word;
      String tried = line.isEmpty() ? rest : line + " " + rest;
      if (face.width(tried, size) > room && !line.isEmpty()) {
        lines.add(line.toString());
        line.setLength(0);
        tried = rest;
      }
      while (face.width(tried, size) > room && tried.codePointCount(0, tried.length()) > 1) {
        int cut = tried.length();
        while (cut > 1 && face.width(tried.substring(0, cut), size) > room) {
          cut = tried.offsetByCodePoints(cut, -1);
        }
        int at = Math.max(cut, tried.offsetByCodePoints(0, 1));
        lines.add(tried.substring(0, at));
        tried = tried.substring(at);
      }
      line.setLength(0);
      line.append(tried);
    }
    if (!line.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }
}
