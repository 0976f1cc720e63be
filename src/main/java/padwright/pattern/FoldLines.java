package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.cover.CoverPlan;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.PadShape;
import padwright.shape.TautPath;

/** The lines on a flat cover along which it bends over the pad's edges. */
final class FoldLines {
  /** A bend on a larger radius than this is shown by the lines where it begins and ends, mm. */
  private static final double ROUND = 3;

  private FoldLines() {}

  /** Every bend: a sharp one by its middle, a round one by its beginning and its end. */
  static List<Path> of(PadShape shape, CoverPlan cover) {
    TautPath taut = shape.section().taut();
    List<Path> lines = new ArrayList<>();
    double s = taut.startX();
    for (Segment piece : taut.neutral().segments()) {
      if (piece.isArc()) {
        if (piece.radius() > ROUND) {
          lines.addAll(at(shape, cover, s));
          lines.addAll(at(shape, cover, s + piece.length()));
        } else {
          lines.addAll(at(shape, cover, s + piece.length() / 2));
        }
      }
      s += piece.length();
    }
    if (taut.neutral().segments().stream().noneMatch(Segment::isArc)) {
      // A covering of no thickness bends in a point.
      double run = taut.startX();
      List<Segment> pieces = taut.neutral().segments();
      for (int i = 0; i + 1 < pieces.size(); i++) {
        run += pieces.get(i).length();
        lines.addAll(at(shape, cover, run));
      }
    }
    return lines;
  }

  /** The line at one path length, where it lies on the cover and not in what was cut away. */
  static List<Path> at(PadShape shape, CoverPlan cover, double level) {
    List<Vec2> within = null;
    Optional<Path> inner = null;
    List<Path> lines = new ArrayList<>();
    List<Segment> outline = shape.outline().segments();
    for (int i = 0; i < outline.size(); i++) {
      Segment s = outline.get(i);
      Segment previous = outline.get(Math.floorMod(i - 1, outline.size()));
      Segment next = outline.get((i + 1) % outline.size());
      if (s.isArc()) {
        double out = Math.signum(s.bulge()) * level;
        if (s.radius() + out > 0) {
          Vec2 c = s.centre();
          double k = (s.radius() + out) / s.radius();
          lines.add(
              new Path(
                  List.of(
                      new Segment(
                          c.plus(s.start().minus(c).times(k)),
                          c.plus(s.end().minus(c).times(k)),
                          s.bulge())),
                  false));
        }
        continue;
      }
      Vec2 out = s.directionAt(0).right().times(level);
      Vec2 along = s.directionAt(0);
      Vec2 from = s.start().plus(out).along(along, -hollow(previous, s) * level);
      Vec2 to = s.end().plus(out).along(along, hollow(s, next) * level);
      if (level < 0) {
        // Inside the outline the lines of two sides meet at a mitre.
        if (inner == null) {
          inner = Offset.by(shape.outline(), level);
        }
        inner.ifPresent(p -> lines.addAll(matching(p, s)));
        continue;
      }
      if (within == null) {
        within = cover.cut().flattened(0.05);
      }
      if (Polygons.contains(within, from.midpoint(to))) {
        lines.add(Path.line(from, to));
      }
    }
    return lines;
  }

  /** How far a line stops short of a hollow corner for each mm it lies out: at the bisector. */
  private static double hollow(Segment before, Segment after) {
    Vec2 u = before.directionAt(1);
    Vec2 v = after.directionAt(0);
    double cross = u.cross(v);
    return cross < -1e-6 ? Math.tan(Math.atan2(cross, u.dot(v)) / 2) : 0;
  }

  private static List<Path> matching(Path inner, Segment side) {
    List<Path> lines = new ArrayList<>();
    for (Segment s : inner.segments()) {
      if (!s.isArc()
          && Math.abs(s.directionAt(0).cross(side.directionAt(0))) < 1e-9
          && s.directionAt(0).dot(side.directionAt(0)) > 0) {
        lines.add(new Path(List.of(s), false));
      }
    }
    return lines;
  }
}
