package padwright.desk.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a field stands in a part as the job file has it, such as {@code base.thickness} or {@code
 * foam[1].overhang}. Reads and changes the tree of a part there.
 */
final class Place {
  private static final Pattern STEP = Pattern.compile("([A-Za-z]\\w*)|\\[(\\d+)]");

  private final String text;
  private final List<Object> steps = new ArrayList<>();

  /**
   * @throws IllegalArgumentException where it is not of that form
   */
  Place(String text) {
    this.text = text;
    Matcher m = STEP.matcher(text);
    int end = 0;
    while (m.find()) {
      String between = text.substring(end, m.start());
      if (!between.isEmpty() && !between.equals(".")) {
        break;
      }
      steps.add(m.group(1) != null ? m.group(1) : (Object) Integer.valueOf(m.group(2)));
      end = m.end();
    }
    if (steps.isEmpty() || end != text.length()) {
      throw new IllegalArgumentException("no place of a part: " + text);
    }
  }

  /** What stands there. */
  Optional<Object> get(Map<String, Object> part) {
    Object at = part;
    for (Object step : steps) {
      if (at instanceof Map<?, ?> m && step instanceof String key && m.containsKey(key)) {
        at = m.get(key);
      } else if (at instanceof List<?> l && step instanceof Integer i && i < l.size()) {
        at = l.get(i);
      } else {
        return Optional.empty();
      }
    }
    return Optional.ofNullable(at);
  }

  /** Puts a value there; objects on the way to it are made. A list may grow by one. */
  void put(Map<String, Object> part, Object value) {
    Object last = steps.get(steps.size() - 1);
    Object holder = holder(part, true);
    if (last instanceof Integer i) {
      List<Object> list = list(holder);
      if (i < list.size()) {
        list.set(i, value);
      } else {
        list.add(value);
      }
    } else {
      map(holder).put((String) last, value);
    }
  }

  /** Takes out what stands there, and objects that are empty then. */
  void remove(Map<String, Object> part) {
    Object holder = holder(part, false);
    Object last = steps.get(steps.size() - 1);
    if (holder instanceof List<?> && last instanceof Integer i && i < list(holder).size()) {
      list(holder).remove(i.intValue());
    } else if (holder instanceof Map<?, ?> && last instanceof String key) {
      map(holder).remove(key);
      if (map(holder).isEmpty() && steps.size() == 2 && steps.get(0) instanceof String first) {
        part.remove(first);
      }
    }
  }

  private Object holder(Map<String, Object> part, boolean make) {
    Object at = part;
    for (int k = 0; k + 1 < steps.size(); k++) {
      Object step = steps.get(k);
      Object next =
          step instanceof Integer i
              ? at instanceof List<?> l && i < l.size() ? l.get(i) : null
              : at instanceof Map<?, ?> m ? m.get(step) : null;
      if (!(next instanceof Map) && !(next instanceof List)) {
        if (!make) {
          return null;
        }
        next =
            steps.get(k + 1) instanceof Integer
                ? new ArrayList<Object>()
                : whole((String) step, next);
        if (step instanceof Integer i && i < list(at).size()) {
          list(at).set(i, next);
        } else if (step instanceof Integer) {
          list(at).add(next);
        } else {
          map(at).put((String) step, next);
        }
      }
      at = next;
    }
    return at;
  }

  /** A field that was written as one word becomes an object that says the same. */
  private static Map<String, Object> whole(String field, Object word) {
    Map<String, Object> object = new LinkedHashMap<>();
    if (field.equals("corners") && word != null) {
      object.put("treatment", word);
    }
    return object;
  }

  @SuppressWarnings("unchecked") // a part's tree has texts as keys
  private static Map<String, Object> map(Object object) {
    return (Map<String, Object>) object;
  }

  @SuppressWarnings("unchecked") // a part's lists hold anything
  private static List<Object> list(Object object) {
    return (List<Object>) object;
  }

  @Override
  public String toString() {
    return text;
  }
}
