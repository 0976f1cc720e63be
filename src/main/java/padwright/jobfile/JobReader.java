package padwright.jobfile;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.design.Units;
import padwright.json.LocatedJson;
import padwright.json.Node;
import padwright.material.Catalogue;
import padwright.measure.InputRefused;

/**
 * Reads a job file, version {@value #VERSION}, into a {@link Job} in mm. Every name of a board,
 * foam, wadding, covering, staple or screw must be in the catalogue given. What is left out stays
 * left out: the defaults are taken, and named, where the part is worked out.
 *
 * <p>Anything it cannot take is thrown as {@link InputRefused} with file, line, path, value and
 * remedy. Has no state that changes; safe to share.
 */
public final class JobReader {
  /** What a job file says it is. */
  public static final String FORMAT = "padwright-job";

  /** The only version there is. */
  public static final int VERSION = 1;

  private final Rows rows;

  public JobReader(Catalogue catalogue) {
    this.rows = new Rows(catalogue);
  }

  /** The job in a file. */
  public Job read(Path file) {
    return job(LocatedJson.read(file));
  }

  /** The job in a text; {@code name} stands for the file in refusals. */
  public Job read(String name, String text) {
    return job(LocatedJson.parse(name, text));
  }

  private Job job(Node root) {
    checkFormat(root);
    root.requireObject("format", "version", "title", "client", "date", "units", "parts");
    String title = Fields.label(root.require("title"));
    Optional<String> client = root.get("client").map(Fields::label);
    Optional<String> date = root.get("date").map(JobReader::date);
    Units units = units(root.require("units"));
    PartReader reader = new PartReader(rows, new Lengths(units));
    List<PaddedPart> parts = new ArrayList<>();
    Map<String, Node> taken = new HashMap<>();
    for (Node part : root.require("parts").array(1, Limits.MOST_PARTS)) {
      PaddedPart read = reader.part(part);
      Node id = part.require("id");
      // Pattern files are named after the id, and some disks do not tell A from a.
      Node before = taken.putIfAbsent(read.id().toLowerCase(Locale.ROOT), id);
      if (before != null) {
        throw id.refuse(
            id.shown() + " is the id of another part too, in line " + before.line(),
            "Give each part an id of its own (capitals make no difference)");
      }
      parts.add(read);
    }
    return new Job(title, client, date, units, parts);
  }

  /** Before anything else, so that a file of another kind is not read as a faulty job. */
  private static void checkFormat(Node root) {
    Node format = root.require("format");
    if (!format.string().equals(FORMAT)) {
      throw format.refuse(
          format.shown() + " is not a job file", "Write \"format\": \"" + FORMAT + "\"");
    }
    Node version = root.require("version");
    if (version.number() != VERSION) {
      throw version.refuse(
          "version " + version.shown() + " of the job file is not known",
          "This program reads version " + VERSION);
    }
  }

  private static Units units(Node node) {
    return node.oneOf(List.of("mm", "in")).equals("mm") ? Units.MM : Units.INCH;
  }

  private static String date(Node node) {
    String text = node.string();
    try {
      // ISO 8601 calendar date; strict, so 2026-02-30 is none.
      if (text.length() == "2026-03-07".length()) {
        LocalDate.parse(text);
        return text;
      }
    } catch (DateTimeException e) {
      // Refused below with the rest.
    }
    throw node.refuse(node.shown() + " is not a date", "Write it like 2026-03-07");
  }
}
