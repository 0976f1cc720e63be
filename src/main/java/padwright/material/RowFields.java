package padwright.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import padwright.json.Node;
import padwright.measure.LengthUnit;

/**
 * Reads the kinds of field that rows of a catalogue have. Lengths come in the file's units or with
 * their own and leave in mm.
 *
 * @param plain the unit of a length that names none
 * @param fallback what stands in for source and status where a row may leave them out; empty = it
 *     may not
 */
record RowFields(LengthUnit plain, Optional<Sourced> fallback) {
  private static final int LONGEST_ID = 60;
  private static final int LONGEST_TEXT = 300;
  private static final int LONGEST_LIST = 200;
  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final List<String> STATUSES =
      List.of("published", "practice", "memory", "own", "measured");

  String id(Node row) {
    Node node = row.require("id");
    String id = node.string();
    if (id.length() > LONGEST_ID || !ID.matcher(id).matches()) {
      throw node.refuse(
          node.shown() + " is not a catalogue name",
          "Use up to 60 small letters and digits with single hyphens, such as birch-plywood");
    }
    return id;
  }

  /** What the maker calls it; the id where it is left out. */
  String name(Node row, String id) {
    return row.get("name").map(RowFields::text).orElse(id);
  }

  /** Source and status; a row inside another takes what it leaves out from {@code outer}. */
  Sourced origin(Node row, Optional<Sourced> outer) {
    Optional<Sourced> spare = outer.or(() -> fallback);
    Optional<Node> source = row.get("source");
    Optional<Node> status = row.get("status");
    return new Sourced(
        source.isEmpty() && spare.isPresent() ? spare.get().source() : text(row.require("source")),
        status.isEmpty() && spare.isPresent()
            ? spare.get().status()
            : status(row.require("status")));
  }

  static Status status(Node node) {
    return Status.valueOf(node.oneOf(STATUSES).toUpperCase(Locale.ROOT));
  }

  static String text(Node node) {
    String text = node.string().strip();
    if (text.isEmpty() || text.length() > LONGEST_TEXT || text.indexOf('\n') >= 0) {
      throw node.refuse(
          node.shown() + " is not a line of text", "Write one line of up to 300 characters");
    }
    return text;
  }

  /** A length that must be there, from {@code least} to {@code most} mm. */
  double length(Node row, String field, double least, double most) {
    return length(row.require(field), least, most);
  }

  double length(Node node, double least, double most) {
    double mm = node.length(plain);
    if (mm < least || mm > most) {
      throw node.refuse(
          node.shown() + (mm < least ? " is too small" : " is too large"),
          "Give a length from " + number(least) + " to " + number(most) + " mm");
    }
    return mm;
  }

  /** Lengths in mm, which must stand from small to large, each once. */
  List<Double> rising(Node row, String field, double least, double most) {
    List<Double> lengths = new ArrayList<>();
    for (Node node : row.require(field).array(1, LONGEST_LIST)) {
      double mm = length(node, least, most);
      mustRise(node, lengths.isEmpty() ? 0 : lengths.get(lengths.size() - 1), mm);
      lengths.add(mm);
    }
    return lengths;
  }

  static void mustRise(Node node, double before, double mm) {
    if (mm <= before) {
      throw node.refuse(
          number(mm) + " mm comes after " + number(before) + " mm",
          "Write the list from small to large, each once");
    }
  }

  static boolean flag(Node row, String field) {
    return row.get(field).map(Node::bool).orElse(false);
  }

  private static String number(double v) {
    String s = String.format(Locale.ROOT, "%.4f", v);
    return s.replaceFirst("\\.?0+$", "");
  }
}
