package padwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import padwright.measure.InputRefused;
import padwright.measure.Printable;

/**
 * The groups of an ASCII DXF file: pairs of lines, a code and its value, kept together by entity. A
 * group of code 0 starts an entity.
 */
final class DxfGroups {
  private static final int SHOWN = 24;
  private static final int LEAST_CODE = -5;
  private static final int MOST_CODE = 1071;
  private static final Pattern CODE = Pattern.compile("-?\\d{1,4}");
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,4})?");

  /**
   * One group.
   *
   * @param line of its value, from 1
   */
  record Group(int code, String value, int line) {}

  /** A group of code 0 and those after it, up to the next. */
  record Entity(String kind, int line, List<Group> groups) {
    /** The first value of a code, or a default. */
    String text(int code, String otherwise) {
      return first(code).map(Group::value).orElse(otherwise);
    }

    Optional<Group> first(int code) {
      for (Group g : groups) {
        if (g.code() == code) {
          return Optional.of(g);
        }
      }
      return Optional.empty();
    }
  }

  private final Budget budget;

  DxfGroups(Budget budget) {
    this.budget = budget;
  }

  /** The whole file; refused where it is cut off. */
  List<Entity> read(String text) {
    List<Entity> entities = new ArrayList<>();
    List<Group> current = new ArrayList<>();
    int line = 0;
    int at = 0;
    while (at < text.length()) {
      int codeEnd = end(text, at);
      String code = text.substring(at, codeEnd).strip();
      at = next(text, codeEnd);
      if (code.isEmpty() && at >= text.length()) {
        break;
      }
      if (at >= text.length()) {
        throw cutOff(line + 1);
      }
      int valueEnd = end(text, at);
      String value = text.substring(at, valueEnd).strip();
      at = next(text, valueEnd);
      line += 2;
      Group group = new Group(code(code, line - 1), value, line);
      if (group.code() == 0) {
        budget.time();
        current = new ArrayList<>();
        entities.add(new Entity(value, line, current));
        if (value.equals("EOF")) {
          return entities;
        }
      } else if (group.code() != 999) {
        current.add(group);
      }
    }
    throw cutOff(line);
  }

  private InputRefused cutOff(int line) {
    return budget.refuse(
        line, "the file ends before its EOF: it is cut off", "Save the drawing again as DXF");
  }

  private static int end(String text, int from) {
    int at = from;
    while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
      at++;
    }
    return at;
  }

  private static int next(String text, int end) {
    boolean both =
        end + 1 < text.length() && text.charAt(end) == '\r' && text.charAt(end + 1) == '\n';
    return end + (both ? 2 : 1);
  }

  private int code(String text, int line) {
    if (text.length() <= 5 && CODE.matcher(text).matches()) {
      int code = Integer.parseInt(text);
      if (code >= LEAST_CODE && code <= MOST_CODE) {
        return code;
      }
    }
    throw budget.refuse(
        line,
        "\"" + Printable.shortened(text, SHOWN) + "\" is not a group code of DXF",
        "Save the drawing again as ASCII DXF");
  }

  /** The value of a group as a number. */
  double number(Group group) {
    String text = group.value();
    boolean fits = text.length() <= DrawingLimits.LONGEST_NUMBER;
    if (fits && NUMBER.matcher(text).matches()) {
      double value = Double.parseDouble(text);
      if (Math.abs(value) <= DrawingLimits.LARGEST_NUMBER) {
        return value;
      }
    }
    throw budget.refuse(
        group.line(),
        "\"" + Printable.shortened(text, SHOWN) + "\" is not a number that can be drawn",
        "Save the drawing again as DXF");
  }

  /** The first number of a code in an entity, or a default. */
  double number(Entity entity, int code, double otherwise) {
    return entity.first(code).map(this::number).orElse(otherwise);
  }

  /** A whole number of flags. */
  int flags(Entity entity, int code) {
    return (int) number(entity, code, 0);
  }
}
