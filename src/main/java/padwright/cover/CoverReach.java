package padwright.cover;

import java.util.List;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/** How far a cut cover reaches beyond the base outline anywhere, square to the side it is on. */
final class CoverReach {
  /** At a corner two sides are equally near, mm. */
  private static final double AS_NEAR = 1e-9;

  private CoverReach() {}

  /**
   * @param cut the cover at its trim line, mm
   */
  static double of(List<Vec2> cut, Skeleton skeleton) {
    List<Segment> sides = skeleton.outline().segments();
    double most = 0;
    for (Vec2 p : cut) {
      double nearest = Double.POSITIVE_INFINITY;
      double out = 0;
      for (Segment side : sides) {
        double away = side.distanceTo(p);
        if (away <= nearest + AS_NEAR) {
          double square = side.isArc() ? away : squareTo(side, p);
          out = away < nearest - AS_NEAR ? square : Math.max(out, square);
          nearest = Math.min(nearest, away);
        }
      }
      most = Math.max(most, out);
    }
    return most;
  }

  private static double squareTo(Segment side, Vec2 p) {
    Vec2 along = side.end().minus(side.start());
    return Math.abs(p.minus(side.start()).cross(along)) / along.length();
  }
}
