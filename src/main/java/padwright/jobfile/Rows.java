package padwright.jobfile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import padwright.json.Node;
import padwright.material.Board;
import padwright.material.Catalogue;
import padwright.material.Covering;
import padwright.material.Foam;
import padwright.material.Screw;
import padwright.material.Staple;
import padwright.material.Wadding;

/** The catalogue's rows by name, for a job file that names them. */
final class Rows {
  private final Map<String, Board> boards;
  private final Map<String, Foam> foams;
  private final Map<String, Wadding> waddings;
  private final Map<String, Covering> coverings;
  private final Map<String, Staple> staples;
  private final Map<String, Screw> screws;

  Rows(Catalogue catalogue) {
    boards = byName(catalogue.boards(), Board::id);
    foams = byName(catalogue.foams(), Foam::id);
    waddings = byName(catalogue.waddings(), Wadding::id);
    coverings = byName(catalogue.coverings(), Covering::id);
    staples = byName(catalogue.staples(), Staple::id);
    screws = byName(catalogue.screws(), Screw::id);
  }

  private static <T> Map<String, T> byName(List<T> rows, Function<T, String> name) {
    Map<String, T> map = new LinkedHashMap<>();
    rows.forEach(row -> map.put(name.apply(row), row));
    return map;
  }

  Board board(Node name) {
    return boards.get(name.oneOf(boards.keySet()));
  }

  String foam(Node name) {
    return name.oneOf(foams.keySet());
  }

  String wadding(Node name) {
    return name.oneOf(waddings.keySet());
  }

  String covering(Node name) {
    return name.oneOf(coverings.keySet());
  }

  String staple(Node name) {
    return name.oneOf(staples.keySet());
  }

  String screw(Node name) {
    return name.oneOf(screws.keySet());
  }
}
