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
    int n = sides.size();
    // Each side lies in the circle about its middle that its length reaches.
    Vec2[] middle = new Vec2[n];
    double[] half = new double[n];
    for (int i = 0; i < n; i++) {
      middle[i] = sides.get(i).pointAt(0.5);
      half[i] = sides.get(i).length() / 2;
    }
    double most = 0;
    int last = 0;
    for (Vec2 p : cut) {
      double nearest = Double.POSITIVE_INFINITY;
      double out = 0;
      // What was nearest to the point before is near to this one, and rules most others out.
      int first = last;
      for (int k = 0; k < n; k++) {
        int i = (first + k) % n;
        if (p.distance(middle[i]) - half[i] > nearest + AS_NEAR) {
          continue;
        }
        Segment side = sides.get(i);
        double away = side.distanceTo(p);
        if (away <= nearest + AS_NEAR) {
          double square = side.isArc() ? away : squareTo(side, p);
          out = away < nearest - AS_NEAR ? square : Math.max(out, square);
          last = away < nearest ? i : last;
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
