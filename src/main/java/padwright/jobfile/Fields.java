package padwright.jobfile;

import java.util.List;
import java.util.Optional;
import padwright.json.Node;

/** Small questions that several parts of a job file ask of an object. */
final class Fields {
  private Fields() {}

  /** The one field of an object that must have exactly one of these. */
  static String single(Node object, String... known) {
    object.requireObject(known);
    if (object.fields().size() != 1) {
      throw object.refuse(
          object.excerpt() + " has " + object.fields().size() + " fields where one is wanted",
          "Give exactly one of " + String.join(", ", known));
    }
    return object.fields().keySet().iterator().next();
  }

  /** Refuses a second way of saying what {@code first} says already. */
  static void notBoth(Node object, String first, String second) {
    Optional<Node> other = object.get(second);
    if (object.get(first).isPresent() && other.isPresent()) {
      throw other
          .get()
          .refuse(
              "\""
                  + first
                  + "\" and \""
                  + second
                  + "\" are both given; this one is "
                  + other.get().excerpt(),
              "Leave one of them out");
    }
  }

  /** One line of text that is not blank and fits on a label. */
  static String label(Node node) {
    String text = node.string();
    if (text.isBlank()) {
      throw node.refuse(
          node.shown() + " is an empty text", "Write a name that you will know again");
    }
    if (text.length() > Limits.LONGEST_TEXT) {
      throw node.refuse(
          node.shown() + " has " + text.length() + " characters",
          "Keep it to " + Limits.LONGEST_TEXT + ", so that it fits on a label");
    }
    if (text.chars().anyMatch(Character::isISOControl)) {
      throw node.refuse(node.shown() + " holds a line break or a tab", "Write it on one line");
    }
    return text;
  }

  /** The items of a list that may be left out, which is the same as an empty one. */
  static List<Node> list(Node object, String field, int most) {
    return object.get(field).map(n -> n.array(0, most)).orElse(List.of());
  }
}
