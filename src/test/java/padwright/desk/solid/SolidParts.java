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

  private static final String WOOL = "\"cover\": {\"covering\": \"woven-wool\"}";

  /**
   * A part whose top is domed by a crown, with rounded corners tighter than the crown is set in.
   */
  static PartResult domed() {
    return part(
        "{\"rectangle\": {\"length\": 420, \"width\": 380, \"radius\": 30}}",
        "\"foam\": [{\"foam\": \"firm\", \"thickness\": 25, \"overhang\": -70, \"crown\": true},"
            + "{\"foam\": \"medium\", \"thickness\": 20, \"overhang\": 0}], \"edge\": {\"round\": 8},"
            + "\"wadding\": {\"wadding\": \"polyester-150\", \"over\": \"top\"},"
            + WOOL);
  }

  /** A part with one side bare, one glued, one with another edge that passes over, wadded. */
  static PartResult mixed() {
    return part(
        "{\"path\": [[0, 0], [600, 0], [600, 300], [500, 400], [0, 400]]}",
        "\"foam\": [{\"foam\": \"firm\", \"thickness\": 40, \"overhang\": 0}],"
            + "\"wadding\": {\"wadding\": \"polyester-150\", \"over\": \"top\"},"
            + WOOL
            + ", \"runs\": [{\"sides\": [\"side 1\"], \"edge\": {\"round\": 25}},"
            + "{\"sides\": [\"side 4\"], \"open\": \"bare\"},"
            + "{\"sides\": [\"side 5\"], \"open\": \"glued\"}]");
  }

  /** A part with a hollow curve, a stepped layer, a bevel and a passage beside a rounding. */
  static PartResult curved() {
    return part(
        "{\"path\": [[0, 0], [700, 0], [700, 300], [450, 300, -0.4], [250, 300], [0, 300]]}",
        "\"foam\": [{\"foam\": \"firm\", \"thickness\": 20, \"overhang\": 0},"
            + "{\"foam\": \"medium\", \"thickness\": 20, \"overhang\": -10}], \"edge\": {\"bevel\": 8},"
            + WOOL);
  }

  /** A rectangle with rounded corners and a passage along its right side. */
  static PartResult passing() {
    return part(
        "{\"rectangle\": {\"length\": 500, \"width\": 400, \"radius\": 60}}",
        "\"foam\": [{\"foam\": \"firm\", \"thickness\": 40, \"overhang\": 0}],"
            + WOOL
            + ", \"runs\": [{\"sides\": [\"front\"], \"edge\": {\"round\": 30}, \"passage\": 120}]");
  }

  static List<PartResult> unusual() {
    return List.of(domed(), mixed(), curved(), passing());
  }
}
