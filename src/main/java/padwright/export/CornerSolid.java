package padwright.export;

import java.util.List;
import padwright.cover.CornerPlan;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;
import padwright.pattern.PartResult;
import padwright.shape.Outlines;

/**
 * One corner of a part as its pictures need it. Places on a wall are given by {@code u}, along the
 * side away from the corner, and {@code s}, down from the top. mm.
 *
 * @param first name of the side before the corner
 * @param second name of the side after it
 * @param alongFirst from the corner along the first side
 * @param alongSecond from the corner along the second side
 * @param outFirst outward from the first side
 * @param outSecond outward from the second side
 * @param height of the covered wall
 * @param board thickness of the base
 * @param turnUnder on the back
 * @param perSide the covering's length from the top's edge to the end of the turn-under
 * @param reach how much of each wall is drawn
 */
record CornerSolid(
    CornerPlan plan,
    String first,
    String second,
    Vec2 apex,
    Vec2 alongFirst,
    Vec2 alongSecond,
    Vec2 outFirst,
    Vec2 outSecond,
    double height,
    double board,
    double turnUnder,
    double perSide,
    double reach) {
  private static final double SAME_PLACE = 0.01;

  static CornerSolid of(PartResult result, CornerPlan plan) {
    Path outline = result.shape().outline();
    List<Segment> segments = outline.segments();
    int n = segments.size();
    int before = 0;
    double best = Double.POSITIVE_INFINITY;
    double at = 1;
    for (int i = 0; i < n; i++) {
      for (double t : new double[] {0.5, 1}) {
        double d = segments.get(i).pointAt(t).distance(plan.apex());
        if (d < best - SAME_PLACE) {
          best = d;
          before = i;
          at = t;
        }
      }
    }
    boolean sharp = plan.radius() == 0;
    Segment here = segments.get(before);
    Vec2 in = here.directionAt(at);
    Vec2 out = sharp ? segments.get((before + 1) % n).directionAt(0) : in;
    double turn = sharp ? 0 : Math.min(plan.turn(), RoundPictures.WIDEST) / 2;
    Vec2 a = in.rotated(-turn);
    Vec2 b = out.rotated(turn);
    var section = result.shape().section();
    double height = section.top() + result.spec().coverThickness();
    double w = -section.taut().neutral().end().x();
    double d = section.taut().developed();
    double reach = Math.max(1.1 * height, 1.6 * w);
    var names = result.shape().sideNames();
    return new CornerSolid(
        plan,
        sharp ? names.get(before) : sideBefore(segments, names, before),
        sharp ? names.get((before + 1) % n) : sideAfter(segments, names, before),
        plan.apex(),
        a.times(-1),
        b,
        a.right(),
        b.right(),
        height,
        section.boardThickness(),
        w,
        d,
        reach);
  }

  /** The nearest straight side going back; a round outline has none and gives the arc's name. */
  private static String sideBefore(List<Segment> segments, List<String> names, int from) {
    int n = segments.size();
    for (int k = 0; k < n; k++) {
      int i = Math.floorMod(from - k, n);
      if (!segments.get(i).isArc()) {
        return Outlines.sideOf(names.get(i));
      }
    }
    return names.get(from);
  }

  private static String sideAfter(List<Segment> segments, List<String> names, int from) {
    int n = segments.size();
    for (int k = 0; k < n; k++) {
      int i = (from + k) % n;
      if (!segments.get(i).isArc()) {
        return Outlines.sideOf(names.get(i));
      }
    }
    return names.get(from % n);
  }

  /** The plan direction that points straight out at the corner. */
  Vec2 towards() {
    return outFirst.plus(outSecond).unit();
  }

  boolean firstOver() {
    return plan.over().equals(first);
  }

  /** The side whose strip lies on top; the first where neither does. */
  String over() {
    return plan.over().isEmpty() ? first : plan.over();
  }

  String under() {
    return over().equals(first) ? second : first;
  }

  /** Whether a place on the back lies in the rounding itself, not along the sides beside it. */
  boolean inRounding(Vec2 p) {
    if (plan.turn() > Math.PI) {
      return true;
    }
    Vec2 d = p.minus(apex.along(towards(), -plan.radius()));
    return d.dot(alongFirst) <= 0 && d.dot(alongSecond) <= 0;
  }

  /** Whether a place on the back is one a picture of the corner shows. */
  boolean shows(Vec2 p) {
    if (plan.radius() == 0) {
      return p.distance(apex) < 0.85 * reach;
    }
    Vec2 centre = apex.along(towards(), -plan.radius());
    double half = Math.min(plan.turn(), RoundPictures.WIDEST) / 2;
    Vec2 way = p.minus(centre);
    double off = Math.atan2(towards().cross(way), towards().dot(way));
    if (Math.abs(off) <= half) {
      return way.dot(towards()) > 0;
    }
    if (plan.turn() > Math.PI) {
      return false;
    }
    Vec2 along = off < 0 ? alongFirst : alongSecond;
    Vec2 out = off < 0 ? outFirst : outSecond;
    double past = way.dot(along);
    return past > 0 && past < 0.5 * reach && way.dot(out) > plan.radius() - turnUnder;
  }

  /** A point on a wall of a sharp corner. */
  Vec3 wall(boolean onFirst, double u, double s) {
    Vec2 p = apex.along(onFirst ? alongFirst : alongSecond, u);
    return new Vec3(p.x(), p.y(), height - s);
  }

  /** A point of a strip that still stands out from the top's edge, drooping a little. */
  Vec3 standing(boolean ofFirst, double u, double s) {
    Vec2 p =
        apex.along(ofFirst ? alongFirst : alongSecond, u)
            .along(ofFirst ? outFirst : outSecond, s * Math.cos(DROOP));
    return new Vec3(p.x(), p.y(), height - s * Math.sin(DROOP));
  }

  /** A point on the back, {@code v} in from the side's edge. */
  Vec3 back(boolean ofFirst, double u, double v) {
    Vec2 p =
        apex.along(ofFirst ? alongFirst : alongSecond, u).along(ofFirst ? outFirst : outSecond, -v);
    return new Vec3(p.x(), p.y(), 0);
  }

  private static final double DROOP = Math.toRadians(20);
}
