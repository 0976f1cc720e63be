package padwright.dome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.dome.DomedTop.Level;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.Outlines;

/**
 * Follows the creases of a domed top that run inwards from its edge: the hip over each corner that
 * points outwards, the valley at each hollow one; and the way in from the middle of each rounding
 * or hollow curve, which becomes a hip where the rounding is used up. A seam may run along each.
 */
final class HipTracer {
  /** A rounding that turns less, radians, is not relieved by a seam; own choice. */
  private static final double LEAST_TURN = Math.PI / 6;

  /** A rounding has a seam for about each quarter turn; own choice. */
  private static final double SEAM_EACH = Math.PI / 2;

  private final DomedTop top;
  private final FaceSides sides;

  HipTracer(DomedTop top) {
    this.top = top;
    sides = top.sides();
  }

  /**
   * A line on which a seam may run: points from the face's edge inwards.
   *
   * @param segment of the outline: the curve it runs in from, or the side that ends at its corner
   * @param curve whether it runs in from a curve
   * @param hollow whether the outline is hollow there, so that a seam opens instead of closing
   */
  record Line(int segment, boolean curve, boolean hollow, List<Vec2> points) {}

  /** How many seams run in from a curve. */
  static int seams(Segment curve) {
    double turn = Math.abs(curve.sweep());
    return turn < LEAST_TURN ? 0 : Math.max(1, (int) Math.round(turn / SEAM_EACH));
  }

  List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < sides.count(); i++) {
      Segment side = sides.segment(i);
      if (side.isArc()) {
        int seams = seams(side);
        for (int k = 0; k < seams; k++) {
          double part = (k + 0.5) / seams;
          add(lines, i, true, side.bulge() < 0, curve(i, part));
        }
      }
      double turn = sides.turnAfter(i);
      if (Math.abs(turn) > Outlines.CORNER) {
        List<Vec2> points = new ArrayList<>();
        follow(points, i, sides.next(i), top.levels().size() - 1, side.end());
        add(lines, i, false, turn < 0, points);
      }
    }
    return lines;
  }

  private static void add(
      List<Line> lines, int segment, boolean curve, boolean hollow, List<Vec2> points) {
    if (points.size() > 1) {
      lines.add(new Line(segment, curve, hollow, points));
    }
  }

  /** Inwards from a curve, square to it; where a rounding has shrunk to a corner, along its hip. */
  private List<Vec2> curve(int i, double part) {
    Segment side = sides.segment(i);
    Vec2 foot = side.pointAt(part);
    Vec2 out = side.directionAt(part).right();
    List<Vec2> points = new ArrayList<>();
    for (int k = top.levels().size() - 1; k >= 0; k--) {
      Level level = top.levels().get(k);
      if (level.height() < top.profile(i).edge().height() - FaceProfile.LEVEL) {
        continue;
      }
      if (side.bulge() > 0 && level.outs()[i] < -side.radius()) {
        points.add(side.centre());
        follow(points, sides.previous(i), sides.next(i), k, side.centre());
        return points;
      }
      Vec2 p = foot.plus(out.times(level.outs()[i]));
      if (!on(p, level)) {
        return points;
      }
      points.add(p);
    }
    return points;
  }

  /**
   * Along where two sides meet, level by level inwards, as far as the face goes on. Where another
   * side between or beside them is used up the neighbours beyond meet instead.
   */
  private void follow(List<Vec2> points, int first, int second, int from, Vec2 start) {
    int a = first;
    int b = second;
    Vec2 p = start;
    for (int k = from; k >= 0; k--) {
      Level level = top.levels().get(k);
      // Where one face ends higher than the other the hip begins at its edge.
      double ends = Math.max(top.profile(a).edge().height(), top.profile(b).edge().height());
      if (level.height() < ends - FaceProfile.LEVEL) {
        continue;
      }
      int[][] pairs = {
        {a, b}, {a, sides.next(b)}, {sides.previous(a), b}, {sides.previous(a), sides.next(b)}
      };
      boolean found = false;
      for (int[] pair : pairs) {
        Optional<Vec2> q = meet(pair[0], pair[1], level, p);
        if (!found && q.isPresent() && (outside(pair[0], pair[1], level) || on(q.get(), level))) {
          found = true;
          a = pair[0];
          b = pair[1];
          p = q.get();
        }
      }
      if (!found) {
        return;
      }
      points.add(p);
    }
  }

  private Optional<Vec2> meet(int a, int b, Level level, Vec2 near) {
    return a == b ? Optional.empty() : sides.meet(a, b, level.outs()[a], level.outs()[b], near);
  }

  /** Whether a corner of a convex outline has only been moved outwards: nothing comes between. */
  private boolean outside(int a, int b, Level level) {
    return sides.convex() && b == sides.next(a) && Math.min(level.outs()[a], level.outs()[b]) >= 0;
  }

  private boolean on(Vec2 p, Level level) {
    return Math.abs(top.excess(p, level.outs())) <= DomedTop.SAME;
  }
}
