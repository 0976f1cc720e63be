package padwright.output;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import padwright.json.LocatedJson;
import padwright.json.Node;
import padwright.measure.InputRefused;

/**
 * Finds where in the job file a part stands that the engine refuses: the engine names the part's
 * field, but knows no file. The file is read again for it, which only a refused job pays for.
 */
public final class PartPlace {
  private PartPlace() {}

  /** The same refusal with file, line, path and the value as it is written. */
  public static InputRefused found(InputRefused r, Path job, int part, String id) {
    try {
      Node node = LocatedJson.read(job).require("parts").array().get(part);
      for (String field : fields(r.path(), id)) {
        Optional<Node> next = node.kind() == Node.Kind.OBJECT ? node.get(field) : Optional.empty();
        if (next.isEmpty()) {
          // A default was taken: the object that leaves it out is the nearest place there is.
          break;
        }
        node = next.get();
      }
      return node.refuse(
          "part \"" + id + "\": " + r.problem() + "; written is " + node.excerpt(), r.remedy());
    } catch (InputRefused | IndexOutOfBoundsException gone) {
      // The file has changed since it was read; what is wrong still holds.
      return new InputRefused(job.toString(), 0, "$.parts[" + part + "]", r.problem(), r.remedy());
    }
  }

  /** The steps behind {@code parts[id].}, as the engine writes a path. */
  private static List<String> fields(String path, String id) {
    String before = "parts[" + id + "].";
    return path.startsWith(before)
        ? List.of(path.substring(before.length()).split("\\.", -1))
        : List.of();
  }
}
