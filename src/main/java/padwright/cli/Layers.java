package padwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;

/**
 * Breaks the lines of a JSON document down to a depth, so that what belongs together (a size, a
 * finding) stands in one line and a thousand parts do not take a hundred thousand.
 */
final class Layers extends DefaultPrettyPrinter {
  private static final long serialVersionUID = 1L;

  /** A part's fields each have a line of their own. */
  private static final int FIELDS = 3;

  /** So has each row of a list in a part, and of a list in a part's field. */
  private static final int ROWS = 5;

  private final int base;

  /**
   * @param base how deep the document stands in another
   */
  Layers(int base) {
    this.base = base;
    indentObjectsWith(new Breaks(base, FIELDS));
    indentArraysWith(new Breaks(base, ROWS));
  }

  @Override
  public DefaultPrettyPrinter createInstance() {
    return new Layers(base);
  }

  @Override
  public void writeEndObject(JsonGenerator json, int entries) throws IOException {
    end(json, entries, FIELDS, '}');
  }

  @Override
  public void writeEndArray(JsonGenerator json, int entries) throws IOException {
    end(json, entries, ROWS, ']');
  }

  /** The closing bracket stands in the line of the last entry where the entries share one. */
  private void end(JsonGenerator json, int entries, int deepest, char bracket) throws IOException {
    boolean inLine = _nesting + base > deepest;
    _nesting--;
    if (entries > 0) {
      json.writeRaw(inLine ? " " : "\n" + "  ".repeat(_nesting + base));
    }
    json.writeRaw(bracket);
  }

  private record Breaks(int base, int deepest) implements Indenter {
    @Override
    public void writeIndentation(JsonGenerator json, int level) throws IOException {
      int depth = level + base;
      json.writeRaw(depth > deepest ? " " : "\n" + "  ".repeat(depth));
    }

    @Override
    public boolean isInline() {
      return false;
    }
  }
}
