package padwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The right-hand half of the convex hull of a set of discs (points are discs of radius 0): from the
 * topmost point, clockwise, to the lowest. Found by gift wrapping over the angle of the outward
 * normal: from the disc that supports the hull, the next is the one whose common outer tangent
 * needs the least further turn.
 */
public final class DiscHull {
  private static final double TINY = 1e-9;

  /** Turn of the normal where the hull is upright. */
  private static final double UPRIGHT = Math.PI / 2;

  /** Turns this near are one. */
  private static final double ROUNDING = 1e-9;

  private DiscHull() {}

  /** A disc; radius 0 is a point. mm. */
  public record Disc(Vec2 centre, double radius) {
    /** How far it reaches in the direction at {@code turn} radians clockwise from straight up. */
    double support(double turn) {
      return centre.x() * Math.sin(turn) + centre.y() * Math.cos(turn) + radius;
    }
  }

  /**
   * A stretch of the hull on which it turns about one disc.
   *
   * @param from turn of the outward normal, radians clockwise from straight up, where it starts
   * @param to the same where it ends
   */
  public record Turn(Disc disc, double from, double to) {
    /** The point at a turn, on the disc grown by {@code outside}. */
    public Vec2 at(double turn, double outside) {
      double r = disc.radius() + outside;
      return disc.centre().plus(new Vec2(Math.sin(turn), Math.cos(turn)).times(r));
    }
  }

  /** The turns from straight up to straight down, in order; straight runs lie between them. */
  public static List<Turn> rightHalf(List<Disc> all) {
    List<Disc> discs = outermost(all);
    Disc current = topmost(discs);
    double angle = 0;
    List<Turn> turns = new ArrayList<>();
    while (turns.size() <= 2 * discs.size()) {
      Disc next = null;
      double least = Double.POSITIVE_INFINITY;
      double reach = 0;
      for (Disc d : discs) {
        double distance = d.centre().distance(current.centre());
        if (distance <= current.radius() - d.radius() + TINY) {
          continue; // inside the current disc, or touching it from inside: no tangent to go on by
        }
        double turn = tangentTurn(current, d, distance);
        while (turn < angle - 1e-7) {
          turn += 2 * Math.PI;
        }
        if (turn < least - 1e-7 || (turn < least + 1e-7 && distance > reach)) {
          least = turn;
          next = d;
          reach = distance;
        }
      }
      if (next == null || least > Math.PI - 1e-9) {
        turns.add(new Turn(current, angle, Math.PI));
        return turns;
      }
      double to = Math.max(angle, least);
      turns.add(new Turn(current, angle, to));
      current = next;
      angle = to;
    }
    throw new IllegalStateException("the hull does not close: " + discs);
  }

  /**
   * The same where some discs are quarters: only their upper right is there, and under it an
   * upright line.
   *
   * @param quarters those of {@code all} that are
   */
  public static List<Turn> rightHalf(List<Disc> all, List<Disc> quarters) {
    List<Turn> whole = rightHalf(all);
    boolean below =
        whole.stream().anyMatch(t -> t.to() > UPRIGHT + ROUNDING && quarters.contains(t.disc()));
    if (!below) {
      return whole;
    }
    // Down to where it is upright a quarter carries what its disc does; from there its end alone.
    List<Disc> ends = new ArrayList<>();
    for (Disc d : all) {
      ends.add(quarters.contains(d) ? new Disc(d.centre().plus(new Vec2(d.radius(), 0)), 0) : d);
    }
    List<Turn> turns = new ArrayList<>();
    for (Turn t : whole) {
      if (t.from() < UPRIGHT - ROUNDING) {
        turns.add(new Turn(t.disc(), t.from(), Math.min(t.to(), UPRIGHT)));
      }
    }
    for (Turn t : rightHalf(ends)) {
      if (t.to() > UPRIGHT + ROUNDING) {
        turns.add(new Turn(t.disc(), Math.max(t.from(), UPRIGHT), t.to()));
      }
    }
    return turns;
  }

  /** Without the discs that lie inside another, which can carry nothing. */
  private static List<Disc> outermost(List<Disc> all) {
    List<Disc> kept = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Disc d = all.get(i);
      boolean inside = false;
      for (int j = 0; j < all.size() && !inside; j++) {
        Disc other = all.get(j);
        double spare = other.radius() - d.radius() - d.centre().distance(other.centre());
        // Of two that are alike the first is kept.
        inside =
            i != j
                && spare >= -TINY
                && (spare > TINY || other.radius() > d.radius() + TINY || j < i);
      }
      if (!inside) {
        kept.add(d);
      }
    }
    return kept;
  }

  private static Disc topmost(List<Disc> discs) {
    Disc best = discs.get(0);
    for (Disc d : discs) {
      double more = d.support(0) - best.support(0);
      boolean further =
          d.centre().x() > best.centre().x() + TINY
              || (d.centre().x() > best.centre().x() - TINY && d.radius() > best.radius());
      if (more > TINY || (more > -TINY && further)) {
        best = d;
      }
    }
    return best;
  }

  /** The turn at which the tangent passes from disc a on to disc b, if b lies further round. */
  private static double tangentTurn(Disc a, Disc b, double distance) {
    Vec2 d = b.centre().minus(a.centre());
    double ratio = (a.radius() - b.radius()) / distance;
    if (Math.abs(ratio) > 1) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.asin(ratio) - Math.atan2(d.y(), d.x());
  }
}
