package padwright.pattern;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Every number in a record and in whatever it holds, under the path that leads to it. */
final class Doubles {
  private final Map<String, Double> found = new LinkedHashMap<>();

  private Doubles() {}

  static Map<String, Double> in(Object value) {
    Doubles d = new Doubles();
    d.walk("", value);
    return d.found;
  }

  private void walk(String path, Object value) {
    if (value instanceof Number n) {
      found.put(path, n.doubleValue());
    } else if (value instanceof OptionalDouble o) {
      o.ifPresent(v -> found.put(path, v));
    } else if (value instanceof Optional<?> o) {
      o.ifPresent(v -> walk(path, v));
    } else if (value instanceof Collection<?> c) {
      int i = 0;
      for (Object each : c) {
        walk(path + "[" + i++ + "]", each);
      }
    } else if (value instanceof Map<?, ?> m) {
      m.forEach((key, each) -> walk(path + "[" + key + "]", each));
    } else if (value instanceof Record r) {
      for (RecordComponent part : r.getClass().getRecordComponents()) {
        walk(path + "." + part.getName(), get(r, part));
      }
    }
  }

  private static Object get(Record r, RecordComponent part) {
    try {
      part.getAccessor().setAccessible(true);
      return part.getAccessor().invoke(r);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }
}
