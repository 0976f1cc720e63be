package padwright.jobfile;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import padwright.design.Assumption;
import padwright.material.Status;

/** Names the values of a started part that came with the ready-made one. */
final class StartValues {
  /** What the part is, which the maker chose by choosing it. */
  private static final Set<String> CHOSEN = Set.of("id", "name", "build", "kind");

  /** Numbers that are not lengths. */
  private static final Set<String> COUNTS = Set.of("quantity", "mirrored", "along", "across");

  private static final Set<String> LENGTH = Set.of("length", "diameter", "front");
  private static final Set<String> WIDTH = Set.of("width", "depth");

  private final ReadyPart ready;
  private final StartNumbers numbers;

  private final boolean oneLayer;
  private final boolean drawn;

  /**
   * @param drawn whether the outline, with its cut-outs, is the maker's own
   */
  StartValues(ReadyPart ready, StartNumbers numbers, boolean oneLayer, boolean drawn) {
    this.ready = ready;
    this.numbers = numbers;
    this.oneLayer = oneLayer;
    this.drawn = drawn;
  }

  /** Adds one line for each value in {@code part}, which is a part as the job file writes it. */
  void collect(Map<String, Object> part, List<Assumption> taken) {
    part.forEach(
        (field, value) -> {
          if (!CHOSEN.contains(field)) {
            walk(field, field, value, taken);
          }
        });
  }

  private void walk(String path, String field, Object value, List<Assumption> taken) {
    if (drawn && (path.startsWith("base.outline") || path.startsWith("fittings"))) {
      return;
    }
    if (field.equals("path") && value instanceof List<?> points) {
      // A line for each coordinate would bury the rest.
      taken.add(new Assumption(path, points.size() + " points", reason(path, field), Status.OWN));
    } else if (value instanceof Map<?, ?> map) {
      map.forEach((key, child) -> walk(path + "." + key, (String) key, child, taken));
    } else if (value instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        walk(path + "[" + i + "]", field, list.get(i), taken);
      }
    } else if (!given(path, field)) {
      taken.add(new Assumption(path, shown(field, value), reason(path, field), Status.OWN));
    }
  }

  private boolean given(String path, String field) {
    if (path.startsWith("base.outline.")) {
      return numbers.length().isPresent() && LENGTH.contains(field)
          || numbers.width().isPresent() && WIDTH.contains(field);
    }
    return field.equals("thickness")
        && (numbers.board().isPresent() && path.startsWith("base.")
            || numbers.foam().isPresent() && path.startsWith("foam[") && oneLayer
            || numbers.covering().isPresent() && path.startsWith("cover."));
  }

  private String reason(String path, String field) {
    if (numbers.foam().isPresent() && path.startsWith("foam[") && field.equals("thickness")) {
      return "your foam thickness, shared out among the layers as the ready-made part has them";
    }
    if (drawn && path.equals("base.size")) {
      return "a drawn outline is the board's";
    }
    if (numbers.length().isPresent() && path.endsWith("trapezoid.back")) {
      return "in proportion to the front";
    }
    return "comes with the ready-made " + ready.name().toLowerCase(Locale.ROOT);
  }

  private static String shown(String field, Object value) {
    if (value instanceof BigDecimal n) {
      return n.toPlainString() + (COUNTS.contains(field) ? "" : " mm");
    }
    return String.valueOf(value);
  }
}
