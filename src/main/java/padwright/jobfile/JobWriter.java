package padwright.jobfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.design.Units;
import padwright.design.WrappedPad;

/**
 * Writes a job as the text of a job file, in the job's own units and in one fixed form, so that two
 * equal jobs give the same text. What the maker left out stays out. Reading the text back gives an
 * equal job, to the last digit.
 */
public final class JobWriter {
  private JobWriter() {}

  /** The text, ending in a line break. */
  public static String write(Job job) {
    return JsonText.of(tree(job));
  }

  /** The same as maps and lists, in the order of writing. */
  static Map<String, Object> tree(Job job) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("format", JobReader.FORMAT);
    root.put("version", JobReader.VERSION);
    root.put("title", job.title());
    job.client().ifPresent(c -> root.put("client", c));
    job.date().ifPresent(d -> root.put("date", d));
    root.put("units", job.units() == Units.MM ? "mm" : "in");
    PartWriter writer = new PartWriter(job.units());
    List<Object> parts = new ArrayList<>();
    for (PaddedPart part : job.parts()) {
      parts.add(writer.part((WrappedPad) part));
    }
    root.put("parts", parts);
    return root;
  }
}
