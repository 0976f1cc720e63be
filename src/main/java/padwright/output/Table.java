package padwright.output;

import java.util.ArrayList;
import java.util.List;

/** Text in aligned columns: the first to the left, numbers to the right. */
public final class Table {
  private static final String GAP = "  ";

  private final String indent;
  private final String alignment;
  private final List<List<String>> rows = new ArrayList<>();

  /**
   * @param alignment a letter a column: l or r
   */
  public Table(String indent, String alignment) {
    this.indent = indent;
    this.alignment = alignment;
  }

  public Table row(String... cells) {
    return row(List.of(cells));
  }

  public Table row(List<String> cells) {
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
      s.append(indent);
      for (int c = 0; c < row.size(); c++) {
        String cell = row.get(c);
        String space = " ".repeat(width[c] - columns(cell));
        boolean left = alignment.charAt(c) == 'l';
        s.append(c > 0 ? GAP : "").append(left ? cell : space).append(left ? space : cell);
      }
      int end = s.length();
      while (end > 0 && s.charAt(end - 1) == ' ') {
        end--;
      }
      s.setLength(end);
      s.append('\n');
    }
    return s.toString();
  }

  /** Columns on a terminal: an accent that stands over the letter before takes none. */
  private static int columns(String text) {
    int columns = 0;
    int i = 0;
    while (i < text.length()) {
      int c = text.codePointAt(i);
      columns += Character.getType(c) == Character.NON_SPACING_MARK ? 0 : 1;
      i += Character.charCount(c);
    }
    return columns;
  }
}
