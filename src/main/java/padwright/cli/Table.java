package padwright.cli;

import java.util.ArrayList;
import java.util.List;

/** Text in aligned columns: the first to the left, numbers to the right. */
final class Table {
  private static final String GAP = "  ";

  private final String indent;
  private final String alignment;
  private final List<List<String>> rows = new ArrayList<>();

  /**
   * @param alignment a letter a column: l or r
   */
  Table(String indent, String alignment) {
    this.indent = indent;
    this.alignment = alignment;
  }

  Table row(String... cells) {
    return row(List.of(cells));
  }

  Table row(List<String> cells) {
    rows.add(List.copyOf(cells));
    return this;
  }

  @Override
  public String toString() {
    int[] width = new int[alignment.length()];
    for (List<String> row : rows) {
      for (int c = 0; c < row.size(); c++) {
        width[c] = Math.max(width[c], columns(row.get(c)));
      }
    }
    StringBuilder s = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(indent);
      for (int c = 0; c < row.size(); c++) {
        String space = " ".repeat(width[c] - columns(row.get(c)));
        boolean left = alignment.charAt(c) == 'l';
        line.append(c > 0 ? GAP : "").append(left ? row.get(c) + space : space + row.get(c));
      }
      s.append(line.toString().stripTrailing()).append('\n');
    }
    return s.toString();
  }

  /** Columns on a terminal: an accent that stands over the letter before takes none. */
  private static int columns(String text) {
    int columns = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      columns += Character.getType(text.codePointAt(i)) == Character.NON_SPACING_MARK ? 0 : 1;
    }
    return columns;
  }
}
