package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import padwright.cover.Skeleton.Side;
import padwright.shape.EdgeEnds;
import padwright.shape.EdgeEnds.EdgeEnd;
import padwright.shape.TautPath;

/**
 * Corners too near each other for what the covering does at both. Along a side the covering gives
 * way on each wall and on the back: at a hollow corner its seam runs out from the slit's tip, wall
 * and turn-under times tan(beta/2), and takes its allowance; at an outward one the turn-under is
 * mitred. Where that is more than the side is long, nothing of the strip is left at the trim line.
 */
public final class CloseCorners {
  private final Skeleton skeleton;
  private final EdgeEnds ends;

  private CloseCorners(Skeleton skeleton, EdgeEnds ends) {
    this.skeleton = skeleton;
    this.ends = ends;
  }

  /**
   * Two corners at the ends of one straight side.
   *
   * @param first name of the corner before the side
   * @param second name of the corner after it
   * @param side its name
   * @param apart its length, mm
   * @param needed what the covering of both corners takes of it, mm
   * @param hollow whether one of them is
   */
  public record Pair(
      String first, String second, String side, double apart, double needed, boolean hollow) {}

  /** Every such pair: two that are folded, or of which one at least is hollow, with a gusset. */
  public static List<Pair> of(CoverPlan cover, EdgeEnds ends) {
    return new CloseCorners(cover.skeleton(), ends).pairs(cover.corners());
  }

  private List<Pair> pairs(List<CornerPlan> corners) {
    List<Pair> pairs = new ArrayList<>();
    int n = skeleton.elements().size();
    for (int end = 0; end < n; end++) {
      if (skeleton.frame(end) == null || !(skeleton.elements().get(end) instanceof Side side)) {
        continue;
      }
      int begin = end;
      double apart = side.length();
      // The stretches of a passage are one side.
      while (skeleton.goesStraightOn(Math.floorMod(begin - 1, n))
          && Math.floorMod(begin - 1, n) != end) {
        begin = Math.floorMod(begin - 1, n);
        apart += ((Side) skeleton.elements().get(begin)).length();
      }
      int before = Math.floorMod(begin - 1, n);
      boolean folds = sharp(before, corners) && sharp(end, corners) && !side.facet();
      if (skeleton.frame(before) == null || !(gusset(before) || gusset(end) || folds)) {
        continue;
      }
      double needed = taken(before, false, begin) + taken(end, true, end);
      if (needed > apart) {
        pairs.add(
            new Pair(
                name(before, corners),
                name(end, corners),
                side.name(),
                apart,
                needed,
                gusset(before) || gusset(end)));
      }
    }
    return pairs;
  }

  /** Whether the corner after an element is a sharp one that is folded. */
  private boolean sharp(int element, List<CornerPlan> corners) {
    int corner = skeleton.elements().get(element).corner();
    return skeleton.frame(element) != null
        && corner >= 0
        && corners.get(corner).radius() == 0
        && corners.get(corner).turn() > 0;
  }

  private boolean gusset(int corner) {
    return skeleton.elements().get(corner).after() == Fold.GUSSET;
  }

  private String name(int element, List<CornerPlan> corners) {
    return corners.get(skeleton.elements().get(element).corner()).name().toLowerCase(Locale.ROOT);
  }

  /** How much of a side the covering of the corner after an element takes at the trim line, mm. */
  private double taken(int corner, boolean first, int side) {
    CornerFrame f = skeleton.frame(corner);
    TautPath path = f.path(first);
    EdgeEnd end = ends.of(skeleton.elements().get(side).name());
    if (gusset(corner)) {
      return Math.abs(f.mitre()) * end.level(path) + Gusset.ALLOWANCE / Math.cos(f.turn() / 2);
    }
    return end.turned() ? f.mitre() * end.turnUnder() : 0;
  }
}
