package padwright.shape;

import java.util.Map;
import java.util.function.Predicate;

/**
 * Where the covering ends along the edge: the same all round, but for the sides that were given
 * something else.
 *
 * @param usual of every side that is not in {@code special}
 * @param special by name of side
 */
public record EdgeEnds(EdgeEnd usual, Map<String, EdgeEnd> special) {
  public EdgeEnds {
    special = Map.copyOf(special);
  }

  /** The same turn-under all round. */
  public static EdgeEnds all(double turnUnder) {
    return new EdgeEnds(new EdgeEnd(Kind.TURNED, turnUnder), Map.of());
  }

  /** How the covering ends. */
  public enum Kind {
    /** Turned under on to the back and stapled. */
    TURNED,
    /** At the edge of the face; the side is not covered. */
    BARE,
    /** Glued to the side, cut off where the back begins. */
    GLUED
  }

  /**
   * The end of one side's covering.
   *
   * @param turnUnder at the trim line, mm; 0 where it is not turned under
   */
  public record EdgeEnd(Kind kind, double turnUnder) {
    public boolean turned() {
      return kind == Kind.TURNED;
    }

    public boolean bare() {
      return kind == Kind.BARE;
    }

    /** Path length at which the covering ends, counted as the developed side is. */
    public double level(TautPath path) {
      return switch (kind) {
        case TURNED -> path.developed() + turnUnder + path.neutral().end().x();
        case GLUED -> path.wallEnd();
        case BARE -> edgeOfFace(path);
      };
    }

    /** Where the path first stands as far out as it ever does: what touches the wall beside it. */
    private static double edgeOfFace(TautPath path) {
      double most = Double.NEGATIVE_INFINITY;
      double level = 0;
      for (double s : path.breaks(PER_ARC)) {
        if (path.out(s) > most + FLUSH) {
          most = path.out(s);
          level = s;
        }
      }
      return level;
    }
  }

  private static final int PER_ARC = 8;

  /** Further out by less than this is no further, mm. */
  private static final double FLUSH = 1e-6;

  public EdgeEnd of(String side) {
    return special.isEmpty() ? usual : special.getOrDefault(side, usual);
  }

  /** Whether the covering ends along two sides in one way; a side without a name is like any. */
  public boolean alike(String side, String other) {
    return other.isEmpty() || special.isEmpty() || of(side).equals(of(other));
  }

  /** Whether staples go along a side. */
  public Predicate<String> stapled() {
    return side -> of(side).turned();
  }

  /** The deepest turn-under anywhere, mm. */
  public double deepest() {
    double most = usual.turnUnder();
    for (EdgeEnd e : special.values()) {
      most = Math.max(most, e.turnUnder());
    }
    return most;
  }
}
