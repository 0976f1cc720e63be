package padwright.material;

import java.util.List;

/**
 * Every material that a job may name. Rows are looked up by {@code id}; an id that is not there is
 * refused with the nearest ones. Immutable.
 */
public record Catalogue(
    List<Board> boards,
    List<Foam> foams,
    List<Wadding> waddings,
    List<Covering> coverings,
    List<Staple> staples,
    List<Screw> screws,
    List<Paper> papers) {
  public Catalogue {
    boards = List.copyOf(boards);
    foams = List.copyOf(foams);
    waddings = List.copyOf(waddings);
    coverings = List.copyOf(coverings);
    staples = List.copyOf(staples);
    screws = List.copyOf(screws);
    papers = List.copyOf(papers);
  }
}
