package padwright.jobfile;

import java.util.List;
import padwright.material.Board;
import padwright.material.Catalogue;
import padwright.material.Covering;
import padwright.material.Foam;
import padwright.material.Screw;
import padwright.material.Sourced;
import padwright.material.Staple;
import padwright.material.Status;
import padwright.material.Wadding;

/** A small catalogue, so that these tests hold whatever rows the real one has. */
final class Materials {
  private static final Sourced OWN = new Sourced("test", Status.OWN);

  static final List<String> BOARDS = List.of("birch-plywood", "mdf");
  static final List<String> FOAMS = List.of("firm", "medium");
  static final List<String> COVERINGS = List.of("knit-backed-vinyl", "woven-wool");

  private Materials() {}

  static Catalogue small() {
    return new Catalogue(
        BOARDS.stream()
            .map(id -> new Board(id, id, List.of(), 0.4, 0.03, 680, 0.6, id.equals("mdf"), OWN))
            .toList(),
        FOAMS.stream()
            .map(id -> new Foam(id, id, 30, 150, id.equals("firm"), List.of(12.0), OWN))
            .toList(),
        List.of(new Wadding("polyester-150", "wadding", 15, 2, 150, 1500, OWN)),
        COVERINGS.stream()
            .map(
                id ->
                    new Covering(
                        id,
                        id,
                        Covering.Family.WOVEN,
                        1,
                        500,
                        1400,
                        0,
                        0,
                        0,
                        false,
                        true,
                        false,
                        OWN))
            .toList(),
        List.of(new Staple("fine", "fine", 0.9, 0.7, 12.7, List.of(6.0, 8.0), OWN)),
        List.of(new Screw("no-8", "No. 8", 4.17, 8.4, List.of(25.0), 15.9, OWN)),
        List.of());
  }
}
