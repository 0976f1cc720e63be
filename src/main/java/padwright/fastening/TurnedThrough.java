package padwright.fastening;

import java.util.List;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * How the covering is slit over a cut-out and turned through it to the back of the board, before
 * any stretch allowance, in the frame of the base. mm.
 *
 * @param slits the cuts, those from the middle outwards; each stops short of the cut-out's edge
 * @param tongues what hangs between the slits, anticlockwise
 * @param wall covering from the cut-out's edge on the face to where it lies flat on the back: foam,
 *     board and wadding, and half a covering's thickness for each quarter turn of both bends
 * @param reach length of the shortest tongue
 * @param turnUnder of the tongues on the back once trimmed; negative where they do not get there
 * @param leastTurnUnder what staples and the board behind them need
 * @param stop how far a slit stops short of the edge
 * @param within whether all slits lie inside the cut-out
 */
public record TurnedThrough(
    List<Path> slits,
    List<Tongue> tongues,
    double wall,
    double reach,
    double turnUnder,
    double leastTurnUnder,
    double stop,
    boolean within) {
  public TurnedThrough {
    slits = List.copyOf(slits);
    tongues = List.copyOf(tongues);
  }

  /** What a tongue needs: down the wall and on to the back. */
  public double needed() {
    return wall + leastTurnUnder;
  }

  /** Whether every tongue gets through and far enough on to the back. */
  public boolean reaches() {
    return within && reach >= needed();
  }

  /**
   * The covering between two slits; it hangs on the edge of the cut-out from {@code from} to {@code
   * to} and narrows to where its slits end in the middle.
   */
  public record Tongue(Vec2 from, Vec2 to, Vec2 tipFrom, Vec2 tipTo) {
    /** The direction of the edge it hangs on, the cut-out to its left. */
    public Vec2 along() {
      return to.minus(from).unit();
    }

    /**
     * How long it is from its edge to the nearer of its tips, or to where nothing of it lies over
     * its own edge any more: a tongue that slants hangs beside its wall from there.
     */
    public double length() {
      Vec2 u = along();
      Vec2 in = u.left();
      double width = to.distance(from);
      double a = tipFrom.minus(from).dot(in);
      double b = tipTo.minus(from).dot(in);
      double before = tipFrom.minus(from).dot(u);
      double past = width - tipTo.minus(from).dot(u);
      double length = Math.min(a, b);
      if (before > width) {
        length = Math.min(length, a * width / before);
      }
      return past > width ? Math.min(length, b * width / past) : length;
    }

    /**
     * Where its two sides are along its edge, at a depth from it, as far as they lie over that
     * edge; they pass each other at a tip.
     */
    public double[] sides(double depth) {
      Vec2 u = along();
      Vec2 in = u.left();
      double width = to.distance(from);
      Vec2 a = tipFrom.minus(from);
      Vec2 b = tipTo.minus(from);
      double left = a.dot(u) * depth / a.dot(in);
      double right = width + (b.dot(u) - width) * depth / b.dot(in);
      return new double[] {Math.max(0, left), Math.min(width, right)};
    }

    /** How wide it is at a depth from its edge; negative beyond its tip. */
    public double width(double depth) {
      double[] sides = sides(depth);
      return sides[1] - sides[0];
    }
  }
}
