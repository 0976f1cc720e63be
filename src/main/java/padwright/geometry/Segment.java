package padwright.geometry;

import java.util.List;

/**
 * One piece of a path: a straight line, or an arc of a circle.
 *
 * @param start where it begins, mm
 * @param end where it ends, mm
 * @param bulge tan(a quarter of the angle swept): 0 for a line, positive for an arc that turns
 *     anticlockwise, 1 for a half circle
 */
public record Segment(Vec2 start, Vec2 end, double bulge) {
  /** Below this bulge an arc leaves its chord by under 1e-9 of its length: it is a line. */
  private static final double STRAIGHT = 1e-9;

  public static Segment line(Vec2 start, Vec2 end) {
    return new Segment(start, end, 0);
  }

  /** The arc about {@code centre} from one angle to another, radians; anticlockwise if it grows. */
  public static Segment arc(Vec2 centre, double radius, double fromAngle, double toAngle) {
    return new Segment(
        centre.along(Vec2.polar(fromAngle), radius),
        centre.along(Vec2.polar(toAngle), radius),
        Math.tan((toAngle - fromAngle) / 4));
  }

  public boolean isArc() {
    return Math.abs(bulge) > STRAIGHT;
  }

  /** The angle swept, radians, anticlockwise positive; 0 for a line. */
  public double sweep() {
    return isArc() ? 4 * Math.atan(bulge) : 0;
  }

  public double chord() {
    return start.distance(end);
  }

  /** The radius of an arc; infinite for a line. */
  public double radius() {
    return isArc()
        ? chord() * (1 + bulge * bulge) / (4 * Math.abs(bulge))
        : Double.POSITIVE_INFINITY;
  }

  /** The centre of an arc; a line has none and is refused. */
  public Vec2 centre() {
    if (!isArc()) {
      throw new IllegalStateException("a straight segment has no centre");
    }
    double k = (1 - bulge * bulge) / (4 * bulge);
    Vec2 chord = end.minus(start);
    return start.midpoint(end).plus(chord.left().times(k));
  }

  public double length() {
    return isArc() ? radius() * Math.abs(sweep()) : chord();
  }

  /** The point at a fraction 0..1 of the length. */
  public Vec2 pointAt(double fraction) {
    if (!isArc()) {
      return start.plus(end.minus(start).times(fraction));
    }
    Vec2 c = centre();
    return c.plus(start.minus(c).rotated(sweep() * fraction));
  }

  /** The unit direction of travel at a fraction 0..1 of the length. */
  public Vec2 directionAt(double fraction) {
    Vec2 chord = end.minus(start).unit();
    return isArc() ? chord.rotated(sweep() * (fraction - 0.5)) : chord;
  }

  /** The point of the segment nearest to p. */
  public Vec2 nearest(Vec2 p) {
    if (!isArc()) {
      Vec2 d = end.minus(start);
      double t = p.minus(start).dot(d) / Math.max(1e-300, d.dot(d));
      return t <= 0 ? start : t >= 1 ? end : start.along(d, t);
    }
    Vec2 c = centre();
    Vec2 v = p.minus(c);
    double l = v.length();
    if (l > 0 && within(v)) {
      return c.along(v, radius() / l);
    }
    return p.distance(start) <= p.distance(end) ? start : end;
  }

  /** How far along the segment that point lies, 0 to 1. */
  public double fractionNearest(Vec2 p) {
    Vec2 at = nearest(p);
    if (!isArc()) {
      double length = length();
      return length == 0 ? 0 : at.distance(start) / length;
    }
    Vec2 c = centre();
    Vec2 from = start.minus(c);
    Vec2 to = at.minus(c);
    double angle = Math.atan2(from.cross(to), from.dot(to));
    double into = sweep() > 0 ? angle : -angle;
    // An end found by rounding just before the start is the start.
    double turned = into < -1e-9 ? into + 2 * Math.PI : Math.max(0, into);
    return Math.min(1, turned / Math.abs(sweep()));
  }

  public double distanceTo(Vec2 p) {
    return nearest(p).distance(p);
  }

  /** Whether a direction from an arc's centre points at the arc. */
  public boolean within(Vec2 fromCentre) {
    double sweep = sweep();
    double into = fromCentre.angle() - start.minus(centre()).angle();
    into = sweep > 0 ? into : -into;
    into -= 2 * Math.PI * Math.floor(into / (2 * Math.PI));
    return into <= Math.abs(sweep);
  }

  public Segment reversed() {
    return new Segment(end, start, -bulge);
  }

  public Segment translated(Vec2 by) {
    return new Segment(start.plus(by), end.plus(by), bulge);
  }

  public Segment rotated(double angle) {
    return new Segment(start.rotated(angle), end.rotated(angle), bulge);
  }

  /** Mirrored left to right (x to -x). */
  public Segment mirrored() {
    return new Segment(new Vec2(-start.x(), start.y()), new Vec2(-end.x(), end.y()), -bulge);
  }

  /** The box that holds it, arcs to their crowns. */
  public Bounds bounds() {
    Bounds b = Bounds.of(start).with(end);
    if (isArc()) {
      Vec2 c = centre();
      double r = radius();
      double from = start.minus(c).angle();
      double sweep = sweep();
      for (int q = -4; q <= 4; q++) {
        double angle = q * Math.PI / 2;
        double t = (angle - from) / sweep;
        if (t > 0 && t < 1) {
          b = b.with(c.along(Vec2.polar(angle), r));
        }
      }
    }
    return b;
  }

  /** How many chords keep within {@code chordError} of the segment. */
  public int chords(double chordError) {
    if (!isArc()) {
      return 1;
    }
    double r = radius();
    double half = Math.acos(Math.max(-1, Math.min(1, 1 - chordError / r)));
    return Math.max(1, (int) Math.ceil(Math.abs(sweep()) / Math.max(2 * half, 1e-4)));
  }

  /** Adds the end points of its chords to {@code points}; the start is not added. */
  public void flattenInto(List<Vec2> points, double chordError) {
    int n = chords(chordError);
    if (n > 1) {
      Vec2 c = centre();
      Vec2 out = start.minus(c);
      double step = sweep() / n;
      for (int i = 1; i < n; i++) {
        points.add(c.plus(out.rotated(step * i)));
      }
    }
    points.add(end);
  }
}
