package padwright.jobfile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import padwright.design.Assumption;
import padwright.design.Job;
import padwright.design.OutlineShape;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.json.LocatedJson;
import padwright.json.Node;
import padwright.material.Catalogue;
import padwright.measure.InputRefused;
import padwright.measure.Nearest;

/**
 * Starts a job from a ready-made part: a job file of one part, shipped with the program, in which
 * up to five numbers are replaced by the maker's. What the maker did not give is as the ready-made
 * part has it, and {@link #taken} names every such value.
 */
public final class Starter {
  private static final String FOLDER = "/padwright/patterns/";
  private static final String INDEX_FORMAT = "padwright-patterns";
  private static final int NEAREST = 3;

  private final JobReader reader;
  private final Map<String, ReadyPart> parts;

  public Starter(Catalogue catalogue) {
    this.reader = new JobReader(catalogue);
    this.parts = index(resource("index.json"));
  }

  private static Map<String, ReadyPart> index(Node root) {
    root.requireObject("format", "version", "patterns");
    root.require("format").oneOf(List.of(INDEX_FORMAT));
    root.require("version").integer(1, 1);
    Map<String, ReadyPart> parts = new LinkedHashMap<>();
    for (Node row : root.require("patterns").array()) {
      row.requireObject("id", "name", "about", "length", "width");
      ReadyPart part =
          new ReadyPart(
              row.require("id").string(),
              row.require("name").string(),
              row.require("about").string(),
              row.get("length").map(Node::string),
              row.get("width").map(Node::string));
      parts.put(part.id(), part);
    }
    return parts;
  }

  /** Every ready-made part, in the order to show them. */
  public List<ReadyPart> parts() {
    return List.copyOf(parts.values());
  }

  /** A ready-made part; a name that is none is refused with the nearest ones. */
  public ReadyPart part(String id) {
    ReadyPart part = parts.get(id);
    if (part == null) {
      throw new InputRefused(
          "",
          0,
          "",
          "there is no ready-made part \"" + id + "\"",
          "The nearest are " + String.join(", ", Nearest.names(id, parts.keySet(), NEAREST)));
    }
    return part;
  }

  /** A job in mm of one part, with the numbers given. */
  public Job start(String id, StartNumbers numbers) {
    return start(id, numbers, Units.MM);
  }

  /**
   * A job of one part, with the numbers given, to be written in {@code units}. Numbers that cannot
   * be made together are refused with the field they break.
   */
  public Job start(String id, StartNumbers numbers, Units units) {
    return start(id, numbers, units, Optional.empty());
  }

  /** The same with an outline of the maker's own, which takes the place of length and width. */
  public Job start(String id, StartNumbers numbers, Units units, Optional<StartOutline> outline) {
    ReadyPart ready = part(id);
    if (numbers.width().isPresent() && ready.width().isEmpty()) {
      throw new InputRefused(
          "",
          0,
          "",
          "a width is given, but " + ready.name().toLowerCase(Locale.ROOT) + " is round",
          "Give its diameter as the length, and no width");
    }
    Job made = reader.read(id + ".json", text(id));
    WrappedPad pad = StartDrawn.applied((WrappedPad) made.parts().get(0), outline);
    checkDrawn(ready, pad, numbers);
    Job job =
        new Job(
            made.title(),
            made.client(),
            made.date(),
            units,
            List.of(StartSizes.applied(pad, numbers)));
    try {
      // Through the reader, so that a started job obeys every rule a written one does.
      return reader.read("", JobWriter.write(job));
    } catch (InputRefused r) {
      throw new InputRefused("", 0, r.path(), r.problem(), r.remedy());
    }
  }

  /** A length or a width alone would distort an outline that is given by its points. */
  private static void checkDrawn(ReadyPart ready, WrappedPad pad, StartNumbers numbers) {
    boolean size = numbers.length().isPresent() || numbers.width().isPresent();
    if (size && pad.base().outline() instanceof OutlineShape.FreePath) {
      throw new InputRefused(
          "",
          0,
          "",
          "a "
              + (numbers.length().isPresent() ? "length" : "width")
              + " is given, but the outline of "
              + ready.name().toLowerCase(Locale.ROOT)
              + " is drawn by its points",
          "Leave it out and change the points, in the job file or in the drawing");
    }
  }

  /** Every value of the started part that the maker did not give, in the job file's order. */
  public List<Assumption> taken(String id, StartNumbers numbers) {
    return taken(id, numbers, Optional.empty());
  }

  /** The same of a part started with an outline of the maker's own. */
  public List<Assumption> taken(String id, StartNumbers numbers, Optional<StartOutline> outline) {
    WrappedPad pad = (WrappedPad) start(id, numbers, Units.MM, outline).parts().get(0);
    List<Assumption> taken = new ArrayList<>();
    new StartValues(part(id), numbers, pad.foam().size() == 1, outline.isPresent())
        .collect(new PartWriter(Units.MM).part(pad), taken);
    return List.copyOf(taken);
  }

  private static String text(String id) {
    try (InputStream in = open(id + ".json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Node resource(String name) {
    try (InputStream in = open(name)) {
      return LocatedJson.parse(name, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream open(String name) {
    InputStream in = Starter.class.getResourceAsStream(FOLDER + name);
    if (in == null) {
      throw new IllegalStateException("the program was built without its file " + name);
    }
    return in;
  }
}
