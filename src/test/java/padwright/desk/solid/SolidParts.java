package padwright.desk.solid;

import java.nio.file.Path;
import java.util.List;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;

/** Parts worked out, to be made solids of. */
final class SolidParts {
  private static final Catalogue CATALOGUE = CatalogueReader.builtIn();

  private SolidParts() {}

  static List<PartResult> demo() {
    return file(Path.of("demo", "reading-nook.json"));
  }

  static PartResult demo(String id) {
    return demo().stream().filter(p -> p.asked().id().equals(id)).findFirst().orElseThrow();
  }

  static List<PartResult> file(Path path) {
    return new PatternEngine(CATALOGUE).run(new JobReader(CATALOGUE).read(path)).parts();
  }

  /** A part from its fields after the base, which is of 12 mm plywood unless it says otherwise. */
  static PartResult part(String outline, String more) {
    String text =
        """
        {"format": "padwright-job", "version": 1, "title": "t", "units": "mm", "parts": [
          {"id": "p", "name": "Part", "build": "wrapped", "kind": "pad", "quantity": 1,
           "base": {"outline": %s, "size": "board", "board": "birch-plywood", "thickness": 12},
           %s}]}
        """
            .formatted(outline, more);
    var read = new JobReader(CATALOGUE).read("part.json", text);
    return new PatternEngine(CATALOGUE).run(read).parts().get(0);
  }
}
