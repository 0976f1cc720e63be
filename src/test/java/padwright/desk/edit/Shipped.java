package padwright.desk.edit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.design.WrappedPad;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;

/** The parts that come with the program: demo, ready-made parts, and the job with every field. */
public final class Shipped {
  public static final Catalogue CATALOGUE = CatalogueReader.builtIn();
  public static final JobReader READER = new JobReader(CATALOGUE);

  private static final Pattern EXAMPLE = Pattern.compile("(?s)```json\n(.*?)```");

  private Shipped() {}

  /** The first job printed in docs/job.md, which has every field. */
  public static Job everyField() {
    try {
      Matcher m = EXAMPLE.matcher(Files.readString(Path.of("docs/job.md")));
      if (!m.find()) {
        throw new IllegalStateException("docs/job.md has no job");
      }
      return READER.read("docs/job.md", m.group(1));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static Job demo() {
    return READER.read(Path.of("demo/reading-nook.json"));
  }

  /** A part of the demo. */
  public static WrappedPad demo(String id) {
    return (WrappedPad)
        demo().parts().stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
  }

  /** Every part of every job file there is. */
  public static List<WrappedPad> all() {
    List<PaddedPart> parts = new ArrayList<>(everyField().parts());
    parts.addAll(demo().parts());
    try (Stream<Path> files = Files.list(Path.of("patterns"))) {
      files
          .filter(f -> f.toString().endsWith(".json") && !f.endsWith("index.json"))
          .sorted()
          .forEach(f -> parts.addAll(READER.read(f).parts()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return parts.stream().map(p -> (WrappedPad) p).toList();
  }
}
