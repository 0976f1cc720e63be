package padwright.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padwright.measure.InputRefused;
import padwright.measure.Length;
import padwright.measure.LengthUnit;
import padwright.measure.Nearest;
import padwright.measure.Printable;
import padwright.measure.Sentence;

/**
 * One JSON value with its place. Asking for it as something it is not throws {@link InputRefused}
 * with file, line, path, the value found and a remedy. Numbers are finite. Immutable once {@link
 * LocatedJson} has handed it out.
 */
public final class Node {
  /** What a JSON value is, in a maker's words. */
  public enum Kind {
    OBJECT("an object in { }"),
    ARRAY("a list in [ ]"),
    STRING("text in quotes"),
    NUMBER("a number"),
    BOOL("true or false"),
    NULL("null");

    private final String words;

    Kind(String words) {
      this.words = words;
    }
  }

  /** Values in messages are cut to this many characters, so that a message stays one sentence. */
  private static final int SHOWN = 40;

  private static final int NEAREST = 3;

  /** The path of the whole document. */
  static final String ROOT = "$";

  private final String file;
  private final int line;
  private final Node parent;
  private final String key;
  private final int index;
  private final Kind kind;
  private final String text;
  private final double number;
  private final boolean needed;
  private final Map<String, Node> fields;
  private final List<Node> items;

  private Node(Place place, Kind kind, String text, double number, boolean needed) {
    this.file = place.file();
    this.line = place.line();
    this.parent = place.parent();
    this.key = place.key();
    this.index = place.index();
    this.kind = kind;
    this.text = text;
    this.number = number;
    this.needed = needed;
    this.fields = kind == Kind.OBJECT ? new LinkedHashMap<>() : Map.of();
    this.items = kind == Kind.ARRAY ? new ArrayList<>() : List.of();
  }

  /** Where a value stands; {@code key} is null in a list and at the root. */
  record Place(String file, int line, Node parent, String key, int index) {}

  static Node container(Place place, Kind kind) {
    return new Node(place, kind, "", 0, false);
  }

  static Node number(Place place, String text, double value) {
    // Adding zero turns -0 into 0, which nobody means to tell apart.
    return new Node(place, Kind.NUMBER, text, value + 0.0, false);
  }

  static Node scalar(Place place, Kind kind, String text) {
    return new Node(place, kind, text, 0, false);
  }

  /** Adds a child while parsing; the value that had this key before, or null. */
  Node add(Node child) {
    if (kind == Kind.OBJECT) {
      return fields.putIfAbsent(child.key, child);
    }
    items.add(child);
    return null;
  }

  /** Whether an object has this field already, while it is read. */
  boolean has(String name) {
    return fields.containsKey(name);
  }

  /** The object or list that this value stands in, or null. */
  Node parent() {
    return parent;
  }

  /** Number of items of a list while it is read. */
  int size() {
    return items.size();
  }

  /** The file's name as the maker gave it. */
  public String file() {
    return file;
  }

  /** Line of the value, or of its field's name, from 1. */
  public int line() {
    return line;
  }

  public Kind kind() {
    return kind;
  }

  /** The JSON path, such as {@code $.parts[0].base.thickness}. */
  public String path() {
    if (parent == null) {
      return ROOT;
    }
    return key == null ? parent.path() + "[" + index + "]" : parent.path() + step(key);
  }

  /** A field's name as a step of a path. */
  static String step(String key) {
    boolean plain = key.matches("[A-Za-z_][A-Za-z0-9_-]*");
    return plain && key.length() <= SHOWN ? "." + key : "['" + clip(key) + "']";
  }

  /** This value as an object that has no other fields than these. */
  public Node requireObject(String... known) {
    return requireObject(Arrays.asList(known));
  }

  /** This value as an object that has no other fields than these. */
  public Node requireObject(Collection<String> known) {
    for (Map.Entry<String, Node> field : fields().entrySet()) {
      if (!known.contains(field.getKey())) {
        throw field
            .getValue()
            .refuse(
                "the field \""
                    + clip(field.getKey())
                    + "\" is not known here; its value is "
                    + field.getValue().excerpt(),
                nearestRemedy(field.getKey(), known));
      }
    }
    return this;
  }

  /** The fields of an object in the file's order. */
  public Map<String, Node> fields() {
    require(Kind.OBJECT, "Write an object in { }");
    return Collections.unmodifiableMap(fields);
  }

  /** A field of an object, or empty where it is left out. */
  public Optional<Node> get(String name) {
    return Optional.ofNullable(fields().get(name));
  }

  /** A field of an object that must be there. */
  public Node require(String name) {
    Node found = fields().get(name);
    if (found == null) {
      throw refuse("the field \"" + name + "\" is missing", "Add \"" + name + "\" to this object");
    }
    return found.kind == Kind.NULL ? found.asNeeded() : found;
  }

  /** A null that nobody may be told to leave out. */
  private Node asNeeded() {
    return new Node(new Place(file, line, parent, key, index), kind, text, number, true);
  }

  /** The items of a list, which may be empty. */
  public List<Node> array() {
    require(Kind.ARRAY, "Write a list in [ ]");
    return Collections.unmodifiableList(items);
  }

  /** The items of a list of {@code least} to {@code most} items. */
  public List<Node> array(int least, int most) {
    List<Node> all = array();
    if (all.size() < least || all.size() > most) {
      throw refuse(
          "the list has " + all.size() + (all.size() == 1 ? " item" : " items"),
          least == most ? "Give exactly " + least : "Give " + least + " to " + most);
    }
    return all;
  }

  public String string() {
    require(Kind.STRING, "Write text in quotes");
    return text;
  }

  /** Text that is one of these; else refused with the nearest of them. */
  public String oneOf(Collection<String> known) {
    String found = string();
    if (!known.contains(found)) {
      throw refuse(shown() + " is not known here", nearestRemedy(found, known));
    }
    return found;
  }

  /** A finite number. */
  public double number() {
    require(Kind.NUMBER, "Write a number without quotes, such as 12.5");
    return number;
  }

  /** A number from {@code least} to {@code most}, both included. */
  public double number(double least, double most) {
    double found = number();
    if (found < least || found > most) {
      throw refuse(
          shown() + (found < least ? " is too small" : " is too large"),
          "Give a number from " + Sentence.plain(least) + " to " + Sentence.plain(most));
    }
    return found;
  }

  /** The number as it stands in the file, digit for digit, such as {@code 12.50}. */
  public BigDecimal exact() {
    require(Kind.NUMBER, "Write a number without quotes, such as 12.5");
    try {
      return new BigDecimal(text);
    } catch (NumberFormatException e) {
      // Only an exponent beyond an int's range gets here, and only a negative one.
      throw refuse(shown() + " is too small to tell from zero", "Write 0");
    }
  }

  /**
   * A length in mm, written as a number in {@code plain} units or as text with its own unit; at
   * most {@link Length#LARGEST} either way.
   */
  public double length(LengthUnit plain) {
    if (kind != Kind.STRING) {
      require(Kind.NUMBER, "Write a length, such as 12 or \"1 1/4 in\"");
    }
    try {
      return kind == Kind.STRING ? Length.parse(text, plain) : Length.of(exact(), plain, shown());
    } catch (InputRefused e) {
      // Already placed where the number itself could not be read.
      throw e.path().isEmpty() ? refuse(e.problem(), e.remedy()) : e;
    }
  }

  /** A whole number from {@code least} to {@code most}, both included. */
  public int integer(int least, int most) {
    require(Kind.NUMBER, "Write a whole number without quotes, such as 2");
    double found = number();
    if (found != Math.rint(found)) {
      throw refuse(shown() + " is not a whole number", "Write a whole number, such as 2");
    }
    return (int) number(least, most);
  }

  public boolean bool() {
    require(Kind.BOOL, "Write true or false without quotes");
    return text.equals("true");
  }

  private void require(Kind wanted, String remedy) {
    if (kind == Kind.NULL) {
      String or = key == null ? ", or take it out" : ", or leave the field out";
      throw refuse("null is not a value here", needed || parent == null ? remedy : remedy + or);
    }
    if (kind != wanted) {
      throw refuse(shown() + " is not " + wanted.words, remedy);
    }
  }

  /** The value as it stands in the file, cut short, for a message. */
  public String shown() {
    return switch (kind) {
      case STRING -> "\"" + clip(text) + "\"";
      case NUMBER, BOOL, NULL -> clip(text);
      case OBJECT, ARRAY -> kind.words;
    };
  }

  /** The value written out in one line, cut short, so that a maker knows it again. */
  public String excerpt() {
    StringBuilder b = new StringBuilder();
    writeOut(b);
    return kind == Kind.OBJECT || kind == Kind.ARRAY ? clip(b.toString()) : b.toString();
  }

  /** Stops once there is more than is shown. */
  private void writeOut(StringBuilder b) {
    if (kind != Kind.OBJECT && kind != Kind.ARRAY) {
      b.append(shown());
      return;
    }
    b.append(kind == Kind.OBJECT ? '{' : '[');
    String between = "";
    for (Node child : kind == Kind.OBJECT ? fields.values() : items) {
      if (b.length() > SHOWN) {
        break;
      }
      b.append(between);
      if (child.key != null) {
        b.append('"').append(clip(child.key)).append("\": ");
      }
      child.writeOut(b);
      between = ", ";
    }
    b.append(kind == Kind.OBJECT ? '}' : ']');
  }

  /** A refusal of this value, to be thrown by the caller; both sentences without a full stop. */
  public InputRefused refuse(String problem, String remedy) {
    return new InputRefused(file, line, path(), problem, remedy);
  }

  private static String nearestRemedy(String asked, Collection<String> known) {
    List<String> nearest = Nearest.names(clip(asked), known, NEAREST);
    return switch (nearest.size()) {
      case 0 -> "Leave it out";
      case 1 -> "The only one known is " + nearest.get(0);
      default -> "The nearest known are " + String.join(", ", nearest);
    };
  }

  private static String clip(String s) {
    return Printable.shortened(s, SHOWN);
  }
}
