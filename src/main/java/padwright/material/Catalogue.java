package padwright.material;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import padwright.measure.Nearest;

/**
 * Every material that a job may name. Rows are looked up by {@code id}; an id that is not there is
 * refused by the caller with the {@linkplain #nearest nearest} ones. Immutable.
 */
public record Catalogue(
    List<Board> boards,
    List<Foam> foams,
    List<Wadding> waddings,
    List<Covering> coverings,
    List<Staple> staples,
    List<Screw> screws,
    List<Paper> papers) {
  private static final int NEAREST = 3;

  public Catalogue {
    boards = List.copyOf(boards);
    foams = List.copyOf(foams);
    waddings = List.copyOf(waddings);
    coverings = List.copyOf(coverings);
    staples = List.copyOf(staples);
    screws = List.copyOf(screws);
    papers = List.copyOf(papers);
  }

  /** The kinds of row there are. */
  public enum Kind {
    BOARD("boards"),
    FOAM("foams"),
    WADDING("waddings"),
    COVERING("coverings"),
    STAPLE("staples"),
    SCREW("screws"),
    PAPER("papers");

    private final String section;

    Kind(String section) {
      this.section = section;
    }

    /** The name of its list in a catalogue file. */
    public String section() {
      return section;
    }
  }

  /** A catalogue without rows. */
  public static Catalogue empty() {
    return new Catalogue(
        List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
  }

  public Optional<Board> board(String id) {
    return find(boards, Board::id, id);
  }

  public Optional<Foam> foam(String id) {
    return find(foams, Foam::id, id);
  }

  public Optional<Wadding> wadding(String id) {
    return find(waddings, Wadding::id, id);
  }

  public Optional<Covering> covering(String id) {
    return find(coverings, Covering::id, id);
  }

  public Optional<Staple> staple(String id) {
    return find(staples, Staple::id, id);
  }

  public Optional<Screw> screw(String id) {
    return find(screws, Screw::id, id);
  }

  /** A paper in either case, since makers write A4. */
  public Optional<Paper> paper(String id) {
    return find(papers, Paper::id, id.toLowerCase(Locale.ROOT));
  }

  /** Every id of a kind, in the catalogue's order; the first one is the default of its kind. */
  public List<String> ids(Kind kind) {
    return switch (kind) {
      case BOARD -> boards.stream().map(Board::id).toList();
      case FOAM -> foams.stream().map(Foam::id).toList();
      case WADDING -> waddings.stream().map(Wadding::id).toList();
      case COVERING -> coverings.stream().map(Covering::id).toList();
      case STAPLE -> staples.stream().map(Staple::id).toList();
      case SCREW -> screws.stream().map(Screw::id).toList();
      case PAPER -> papers.stream().map(Paper::id).toList();
    };
  }

  /** Up to three ids of a kind, the nearest to {@code asked} first. */
  public List<String> nearest(Kind kind, String asked) {
    return Nearest.names(asked, ids(kind), NEAREST);
  }

  private static <T> Optional<T> find(List<T> rows, Function<T, String> id, String asked) {
    for (T row : rows) {
      if (id.apply(row).equals(asked)) {
        return Optional.of(row);
      }
    }
    return Optional.empty();
  }
}
