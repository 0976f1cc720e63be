package padwright.dome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.geometry.Crossings;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * An outline with every side moved by a distance of its own, outwards or inwards, joined where its
 * neighbours meet. It serves where no side is used up; {@link padwright.geometry.OffsetCurve} knows
 * one direction at a time, and steps where neighbours move unlike. mm.
 */
final class FaceRow {
  /** A shorter piece, mm, is rounding. */
  private static final double SHORTEST = 1e-7;

  private final FaceSides sides;
  private final double[] outs;
  private final List<Segment> pieces = new ArrayList<>();

  private FaceRow(FaceSides sides, double[] outs) {
    this.sides = sides;
    this.outs = outs;
  }

  /** Empty where a side is used up, two do not meet, or the line would cross itself. */
  static Optional<Path> of(FaceSides sides, double[] outs) {
    FaceRow row = new FaceRow(sides, outs);
    int n = sides.count();
    Vec2[] joints = new Vec2[n];
    for (int i = 0; i < n; i++) {
      Optional<Vec2> joint = row.joint(i);
      if (joint.isEmpty()) {
        return Optional.empty();
      }
      joints[i] = joint.get();
    }
    for (int i = 0; i < n; i++) {
      if (!row.add(i, joints[sides.previous(i)], joints[i])) {
        return Optional.empty();
      }
    }
    Path path = new Path(row.pieces, true);
    return Optional.of(path).filter(p -> p.signedArea() > 0 && Crossings.first(p).isEmpty());
  }

  private Optional<Vec2> joint(int i) {
    int j = sides.next(i);
    Vec2 a = end(i, 1);
    Vec2 b = end(j, 0);
    return Math.abs(sides.turnAfter(i)) <= Offset.SMOOTH
        ? Optional.of(a).filter(p -> p.distance(b) <= DomedTop.JOINED)
        : sides.meet(i, j, outs[i], outs[j], a.midpoint(b));
  }

  private Vec2 end(int i, int part) {
    Segment s = sides.segment(i);
    return (part == 0 ? s.start() : s.end()).along(s.directionAt(part).right(), outs[i]);
  }

  /** Adds a side between its joints, an arc with the tangents that lengthen it; false if gone. */
  private boolean add(int i, Vec2 from, Vec2 to) {
    Segment s = sides.segment(i);
    if (!s.isArc()) {
      line(from, to);
      return to.minus(from).dot(s.directionAt(0)) > 0;
    }
    if (s.radius() + Math.signum(s.bulge()) * outs[i] <= DomedTop.JOINED) {
      return false;
    }
    Vec2 first = sides.place(i, from) < 0 ? end(i, 0) : from;
    Vec2 last = sides.place(i, to) > 0 ? end(i, 1) : to;
    double sweep = sweep(s, last) - sweep(s, first);
    line(from, first);
    if (first.distance(last) >= SHORTEST) {
      pieces.add(new Segment(first, last, Math.tan(sweep / 4)));
    }
    line(last, to);
    return sweep * s.bulge() > 0;
  }

  /** How far a place is round an arc from its middle, radians, with the arc's sign. */
  private static double sweep(Segment arc, Vec2 p) {
    Vec2 middle = arc.pointAt(0.5).minus(arc.centre());
    Vec2 v = p.minus(arc.centre());
    return Math.atan2(middle.cross(v), middle.dot(v));
  }

  private void line(Vec2 from, Vec2 to) {
    if (from.distance(to) >= SHORTEST) {
      pieces.add(Segment.line(from, to));
    }
  }
}
