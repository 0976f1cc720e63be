package padwright.dome;

import java.util.List;
import java.util.Optional;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * How far a place lies out of each side of an outline, and whose place it is. A side's own places
 * lie square to it; at a hollow corner they reach to the mitre between both sides, and outside a
 * corner that points outwards they do as well. That is how foam is set in and cut larger ({@link
 * Offset}): its outline is mitred at corners that open. mm; negative is inside.
 */
final class FaceSides {
  /** Slack in a place along a side, mm; arithmetic only. */
  private static final double SAME = 1e-6;

  /** Two sides that turn less than this against each other, as a sine, do not cross. */
  private static final double ALONGSIDE = 1e-9;

  /** Most steps to where two sides' lines cross; a line and an arc need five or six. */
  private static final int STEPS = 30;

  private static final double NEAR_ENOUGH = 1e-11;

  private final List<Segment> segments;
  private final boolean convex;
  private final boolean tangents;
  private final Side[] sides;

  /** For the joint after each side: how much it turns, radians, and square to its bisector. */
  private final double[] turns;

  private final Vec2[] across;

  /**
   * The sides of an outline.
   *
   * @param alike whether all are moved alike
   */
  FaceSides(Path outline, boolean alike) {
    segments = outline.segments();
    convex = Offset.convex(outline);
    tangents = !convex || !alike;
    sides = segments.stream().map(Side::of).toArray(Side[]::new);
    turns = new double[sides.length];
    across = new Vec2[sides.length];
    for (int i = 0; i < sides.length; i++) {
      Vec2 u = sides[i].along1;
      Vec2 v = sides[next(i)].along0;
      turns[i] = Math.atan2(u.cross(v), u.dot(v));
      across[i] = u.plus(v);
    }
  }

  int count() {
    return sides.length;
  }

  Segment segment(int i) {
    return segments.get(i);
  }

  boolean convex() {
    return convex;
  }

  int next(int i) {
    return i + 1 == sides.length ? 0 : i + 1;
  }

  int previous(int i) {
    return i == 0 ? sides.length - 1 : i - 1;
  }

  /** How much the outline turns after a side, radians; negative at a hollow corner. */
  double turnAfter(int i) {
    return turns[i];
  }

  /** Out of a side; past the ends of an arc, of the further of its tangents there. */
  double out(int i, Vec2 p) {
    Side s = sides[i];
    if (!s.arc) {
      return s.out0(p);
    }
    int at = s.place(p);
    return at == 0 ? s.outOfArc(p) : Math.max(s.out0(p), s.out1(p));
  }

  /** Out of a convex outline: of all its sides the most. */
  double most(Vec2 p) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < sides.length; i++) {
      most = Math.max(most, out(i, p));
    }
    return most;
  }

  /** The side whose place it is, the nearest of those; how far out is {@link #own}. */
  int owner(Vec2 p) {
    int owner = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sides.length; i++) {
      double out = Math.abs(own(i, p));
      if (out < least && owns(i, p)) {
        least = out;
        owner = i;
      }
    }
    if (owner < 0) {
      owner = 0;
      for (int i = 1; i < sides.length; i++) {
        if (segments.get(i).distanceTo(p) < segments.get(owner).distanceTo(p)) {
          owner = i;
        }
      }
    }
    return owner;
  }

  /** Out of a side; past an end of an arc, of its tangent there. */
  double own(int i, Vec2 p) {
    Side s = sides[i];
    int at = s.place(p);
    return !s.arc || at < 0 ? s.out0(p) : at > 0 ? s.out1(p) : s.outOfArc(p);
  }

  private boolean owns(int i, Vec2 p) {
    int at = sides[i].place(p);
    double out = own(i, p);
    if (at != 0) {
      int joint = at < 0 ? previous(i) : i;
      return turns[joint] > 0 == out > 0 && onSide(i, joint, p);
    }
    return out <= 0 || hollowSide(i, previous(i), p) && hollowSide(i, i, p);
  }

  private boolean hollowSide(int i, int joint, Vec2 p) {
    return turns[joint] > 0 || onSide(i, joint, p);
  }

  /** Whether a place is on a side's side of the bisector at one of its ends. */
  private boolean onSide(int i, int joint, Vec2 p) {
    double past = p.minus(segments.get(joint).end()).dot(across[joint]);
    return joint == i ? past <= SAME : past >= -SAME;
  }

  /** Square to a side 0, past its start -1, past its end 1. */
  int place(int i, Vec2 p) {
    return sides[i].place(p);
  }

  /**
   * The place so far out of two sides, near another. Neighbours run on past their ends along their
   * tangents there, as {@link padwright.geometry.OffsetCurve} has it; those of a convex outline
   * that is moved alike ({@link Offset}), and sides that meet because one between them is used up,
   * along their whole lines and circles.
   */
  Optional<Vec2> meet(int a, int b, double outA, double outB, Vec2 near) {
    boolean own = tangents && b == next(a);
    Vec2 p = near;
    for (int step = 0; step < STEPS; step++) {
      Vec2 u = own ? sides[a].ownOutwards(p) : sides[a].outwards(p);
      Vec2 v = own ? sides[b].ownOutwards(p) : sides[b].outwards(p);
      double lacksA = outA - (own ? own(a, p) : sides[a].whole(p));
      double lacksB = outB - (own ? own(b, p) : sides[b].whole(p));
      double cross = u.cross(v);
      if (Math.abs(cross) < ALONGSIDE) {
        return Optional.empty();
      }
      // The move whose parts along u and v are what is lacking.
      Vec2 move = v.right().times(lacksA).minus(u.right().times(lacksB)).times(1 / cross);
      p = p.plus(move);
      if (move.length() < NEAR_ENOUGH) {
        return Optional.of(p);
      }
    }
    return Optional.empty();
  }

  /**
   * The side that a moved segment comes from, or -1: it runs the same way, as far out as that side
   * was moved.
   */
  int from(Segment moved, double[] outs, double slack) {
    Vec2 p = moved.pointAt(0.5);
    Vec2 along = moved.directionAt(0.5);
    int from = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sides.length; i++) {
      if (Math.abs(own(i, p) - outs[i]) <= slack) {
        double away = segments.get(i).distanceTo(p);
        Vec2 out = sides[i].place(p) == 0 ? sides[i].outwards(p) : along.right();
        if (away < least && out.dot(along.right()) > 0.5) {
          least = away;
          from = i;
        }
      }
    }
    return from;
  }

  /** A side with what is asked of it for every place worked out once. */
  private record Side(
      boolean arc,
      Vec2 start,
      Vec2 end,
      Vec2 along0,
      Vec2 along1,
      double length,
      Vec2 centre,
      double radius,
      double sweep) {
    static Side of(Segment s) {
      boolean arc = s.isArc();
      return new Side(
          arc,
          s.start(),
          s.end(),
          s.directionAt(0),
          s.directionAt(1),
          s.length(),
          arc ? s.centre() : Vec2.ZERO,
          arc ? s.radius() : 0,
          s.sweep());
    }

    int place(Vec2 p) {
      if (!arc) {
        double along = (p.x() - start.x()) * along0.x() + (p.y() - start.y()) * along0.y();
        return along < -SAME ? -1 : along > length + SAME ? 1 : 0;
      }
      Vec2 v = p.minus(centre);
      double sign = Math.signum(sweep);
      double afterStart = sign * start.minus(centre).cross(v) / radius;
      double beforeEnd = sign * v.cross(end.minus(centre)) / radius;
      boolean within =
          Math.abs(sweep) <= Math.PI
              ? afterStart >= -SAME && beforeEnd >= -SAME
              : afterStart >= -SAME || beforeEnd >= -SAME;
      return within ? 0 : p.distance(start) <= p.distance(end) ? -1 : 1;
    }

    double out0(Vec2 p) {
      return (p.x() - start.x()) * along0.y() - (p.y() - start.y()) * along0.x();
    }

    double out1(Vec2 p) {
      return (p.x() - end.x()) * along1.y() - (p.y() - end.y()) * along1.x();
    }

    double outOfArc(Vec2 p) {
      double away = p.distance(centre) - radius;
      return sweep > 0 ? away : -away;
    }

    /** Out of its whole line or circle. */
    double whole(Vec2 p) {
      return arc ? outOfArc(p) : out0(p);
    }

    /** The way out of it; past its ends that of its tangents there. */
    Vec2 ownOutwards(Vec2 p) {
      int at = arc ? place(p) : 0;
      return at == 0 ? outwards(p) : (at < 0 ? along0 : along1).right();
    }

    Vec2 outwards(Vec2 p) {
      return arc ? p.minus(centre).unit().times(Math.signum(sweep)) : along0.right();
    }
  }
}
