package padwright.jobfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.measure.InputRefused;

/**
 * One part as it would stand in a job file: maps, lists, texts, numbers and booleans that may be
 * changed, and the way back through the reader of job files, whose limits then hold.
 */
public final class PartTree {
  /** What the reader calls the only part of a job. */
  private static final String PLACE = "$.parts[0].";

  private PartTree() {}

  /** A copy to change; numbers are in {@code units}. */
  public static Map<String, Object> of(WrappedPad pad, Units units) {
    return map(new PartWriter(units).part(pad));
  }

  /** An outline in the same form. */
  public static Object outline(padwright.design.OutlineShape outline, Units units) {
    return copy(new PartWriter(units).outline(outline));
  }

  /**
   * The part that such a tree says.
   *
   * @throws InputRefused where a job file with it would be refused; its path is the field's place
   *     in the part, such as {@code foam[1].thickness}
   */
  public static WrappedPad read(Map<String, Object> part, Units units, JobReader reader) {
    Map<String, Object> job = new LinkedHashMap<>();
    job.put("format", JobReader.FORMAT);
    job.put("version", JobReader.VERSION);
    job.put("title", "one part");
    job.put("units", units == Units.MM ? "mm" : "in");
    job.put("parts", List.of(part));
    try {
      return (WrappedPad) reader.read("", JsonText.of(job)).parts().get(0);
    } catch (InputRefused r) {
      throw new InputRefused("", 0, place(r.path()), r.problem(), r.remedy());
    }
  }

  private static String place(String path) {
    return path.startsWith(PLACE) ? path.substring(PLACE.length()) : path;
  }

  private static Map<String, Object> map(Map<?, ?> from) {
    Map<String, Object> to = new LinkedHashMap<>();
    from.forEach((k, v) -> to.put((String) k, copy(v)));
    return to;
  }

  private static Object copy(Object value) {
    if (value instanceof Map<?, ?> m) {
      return map(m);
    } else if (value instanceof List<?> l) {
      List<Object> to = new ArrayList<>();
      l.forEach(v -> to.add(copy(v)));
      return to;
    }
    return value;
  }
}
