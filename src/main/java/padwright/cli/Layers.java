package padwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;

/**
 * Breaks the lines of a JSON document down to a depth, so that what belongs together (a size, a
 * finding) stands in one line and a thousand parts do not take a hundred thousand.
 *
 * @param base how deep the document already is in another
 * @param deepest no line is broken further in than this
 */
record Layers(int base, int deepest) implements DefaultPrettyPrinter.Indenter {
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
