package padwright.material;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import padwright.json.LocatedJson;
import padwright.json.Node;
import padwright.measure.LengthUnit;

/**
 * Reads the catalogue that comes with the program and lays a maker's own file over it. A file has
 * any of the sections boards, foams, waddings, coverings, staples, screws and papers; a row whose
 * id is there already replaces that row in its place, any other is added at the end. Wrong input is
 * thrown as {@link padwright.measure.InputRefused}.
 */
public final class CatalogueReader {
  private static final String FORMAT = "padwright-catalogue";
  private static final int VERSION = 1;
  private static final int MOST_ROWS = 10_000;

  /** What a maker's own row says of itself where it says nothing. */
  private static final Sourced OWN_FILE = new Sourced("Your own catalogue file", Status.MEASURED);

  private CatalogueReader() {}

  /** The catalogue that comes with the program. */
  public static Catalogue builtIn() {
    Catalogue all = Catalogue.empty();
    for (Catalogue.Kind kind : Catalogue.Kind.values()) {
      all = overlay(all, builtInFile(kind.section()), Optional.empty());
    }
    return all;
  }

  /** {@code base} with the rows of a maker's own file over it; neither is changed. */
  public static Catalogue overlay(Catalogue base, Path file) {
    return overlay(base, LocatedJson.read(file), Optional.of(OWN_FILE));
  }

  /** One of the files that come with the program. */
  static Node builtInFile(String name) {
    String path = "/padwright/shared/" + name + ".json";
    try (InputStream in = CatalogueReader.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its own file " + path);
      }
      return LocatedJson.parse("shared/" + name + ".json", in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Catalogue overlay(Catalogue base, Node root, Optional<Sourced> fallback) {
    List<String> known = new ArrayList<>(List.of("format", "version", "units"));
    for (Catalogue.Kind kind : Catalogue.Kind.values()) {
      known.add(kind.section());
    }
    root.requireObject(known);
    root.get("format").ifPresent(n -> n.oneOf(List.of(FORMAT)));
    root.get("version").ifPresent(n -> n.integer(VERSION, VERSION));
    LengthUnit plain =
        root.get("units").map(n -> n.oneOf(List.of("mm", "in"))).orElse("mm").equals("in")
            ? LengthUnit.INCH
            : LengthUnit.MM;
    if (known.subList(3, known.size()).stream().noneMatch(s -> root.get(s).isPresent())) {
      throw root.refuse(
          "the file has no section of a catalogue: " + root.excerpt(),
          "Give at least one of " + String.join(", ", known.subList(3, known.size())));
    }
    RowReader rows = new RowReader(new RowFields(plain, fallback));
    return new Catalogue(
        merged(base.boards(), root, Catalogue.Kind.BOARD, rows::board, Board::id),
        merged(base.foams(), root, Catalogue.Kind.FOAM, rows::foam, Foam::id),
        merged(base.waddings(), root, Catalogue.Kind.WADDING, rows::wadding, Wadding::id),
        merged(base.coverings(), root, Catalogue.Kind.COVERING, rows::covering, Covering::id),
        merged(base.staples(), root, Catalogue.Kind.STAPLE, rows::staple, Staple::id),
        merged(base.screws(), root, Catalogue.Kind.SCREW, rows::screw, Screw::id),
        merged(base.papers(), root, Catalogue.Kind.PAPER, rows::paper, Paper::id));
  }

  private static <T> List<T> merged(
      List<T> base,
      Node root,
      Catalogue.Kind kind,
      Function<Node, T> read,
      Function<T, String> id) {
    Optional<Node> section = root.get(kind.section());
    if (section.isEmpty()) {
      return base;
    }
    Map<String, T> all = new LinkedHashMap<>();
    base.forEach(row -> all.put(id.apply(row), row));
    Map<String, Node> here = new HashMap<>();
    for (Node node : section.get().array(1, MOST_ROWS)) {
      T row = read.apply(node);
      Node before = here.putIfAbsent(id.apply(row), node);
      if (before != null) {
        throw node.require("id")
            .refuse(
                "the id \"" + id.apply(row) + "\" is given twice, first in line " + before.line(),
                "Give each row its own id");
      }
      all.put(id.apply(row), row);
    }
    return new ArrayList<>(all.values());
  }
}
