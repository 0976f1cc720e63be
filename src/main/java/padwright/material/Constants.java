package padwright.material;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import padwright.json.Node;
import padwright.measure.LengthUnit;

/**
 * The numbers of the rules, each with its unit and source, from {@code shared/constants.json}. Read
 * once, when first asked for. Asking for a name that is not there is a fault in the program and
 * thrown as {@link IllegalArgumentException}.
 */
public final class Constants {
  /**
   * One number of a rule.
   *
   * @param name such as {@code staple-margin-least}
   * @param value in {@code unit}
   * @param unit such as mm, N, %; empty for a plain number
   * @param about what it says, one sentence
   */
  public record Row(String name, double value, String unit, String about, Sourced origin) {}

  private static final int MOST_ROWS = 1_000;
  private static final double LARGEST = 1e6;

  private Constants() {}

  /** Loads the table when a constant is first asked for, not when the program starts. */
  private static final class Holder {
    private static final Map<String, Row> ROWS = read(CatalogueReader.builtInFile("constants"));
  }

  /** The value of a constant, in its row's unit. */
  public static double value(String name) {
    return row(name).value();
  }

  /** A constant with its unit and source. */
  public static Row row(String name) {
    Row row = Holder.ROWS.get(name);
    if (row == null) {
      throw new IllegalArgumentException("no such constant: " + name);
    }
    return row;
  }

  /** Every constant, in the order of the file. */
  public static Collection<Row> all() {
    return new ArrayList<>(Holder.ROWS.values());
  }

  static Map<String, Row> read(Node root) {
    root.requireObject("constants");
    RowFields fields = new RowFields(LengthUnit.MM, Optional.empty());
    Map<String, Row> rows = new LinkedHashMap<>();
    for (Node node : root.require("constants").array(1, MOST_ROWS)) {
      node.requireObject("id", "value", "unit", "about", "source", "status");
      String name = fields.id(node);
      Row row =
          new Row(
              name,
              node.require("value").number(0, LARGEST),
              node.require("unit").string(),
              RowFields.text(node.require("about")),
              fields.origin(node, Optional.empty()));
      if (rows.putIfAbsent(name, row) != null) {
        throw node.refuse("the constant is given twice", "Delete one of the two");
      }
    }
    return Collections.unmodifiableMap(rows);
  }
}
