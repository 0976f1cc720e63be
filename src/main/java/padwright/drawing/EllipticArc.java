package padwright.drawing;

import java.util.ArrayList;
import java.util.List;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.geometry.Affine;
import padwright.geometry.Biarc;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * A stretch of an ellipse, {@code centre + u cos t + v sin t} for t from {@code from} over {@code
 * turn} radians; u and v need not be at right angles, so that any affine map of an ellipse is one.
 * As sides: an arc where it is a circle, else pairs of arcs between points of the ellipse and their
 * tangents, halved until they keep within {@link #CHORD_ERROR}.
 */
record EllipticArc(Vec2 centre, Vec2 u, Vec2 v, double from, double turn) {
  /** How far the arcs may leave the ellipse, mm; the rest to 0.01 mm is left for rounding. */
  static final double CHORD_ERROR = 0.009;

  /** Half axes that differ by less than this, mm, make a circle. */
  private static final double ROUND = 1e-4;

  private static final int SAMPLES = 8;
  private static final int DEEPEST = 10;

  EllipticArc mapped(Affine map) {
    return new EllipticArc(map.at(centre), map.vector(u), map.vector(v), from, turn);
  }

  Vec2 at(double t) {
    return centre.along(u, Math.cos(t)).along(v, Math.sin(t));
  }

  private Vec2 direction(double t) {
    return u.times(-Math.sin(t)).along(v, Math.cos(t)).times(Math.signum(turn)).unit();
  }

  /** Its sides, each with the point it starts from. */
  List<Point> sides() {
    List<Point> out = new ArrayList<>();
    double r = u.length();
    boolean circle =
        Math.abs(r - v.length()) <= ROUND && Math.abs(u.dot(v)) <= ROUND * Math.max(r, 1e-9);
    if (circle) {
      // No side over a half circle, so that the bulge stays at most 1.
      int n = Math.max(1, (int) Math.ceil(Math.abs(turn) / Math.PI - 1e-9));
      double bulge = Math.tan(turn / n / 4) * Math.signum(u.cross(v));
      for (int i = 0; i < n; i++) {
        out.add(new Point(at(from + turn * i / n), new Leg.Arc(bulge)));
      }
      return out;
    }
    int n = Math.max(1, (int) Math.ceil(Math.abs(turn) / (Math.PI / 4) - 1e-9));
    for (int i = 0; i < n; i++) {
      add(out, from + turn * i / n, from + turn * (i + 1) / n, 0);
    }
    return out;
  }

  private void add(List<Point> out, double a, double b, int depth) {
    Vec2 p = at(a);
    Vec2 q = at(b);
    Vec2 chord = q.minus(p);
    Vec2 tp = direction(a);
    Vec2 tq = direction(b);
    // A pair of arcs is safe where both tangents stay within 45 degrees of the chord.
    boolean safe = chord.length() > 0 && tp.dot(chord.unit()) > 0.7 && tq.dot(chord.unit()) > 0.7;
    List<Segment> pair = safe ? Biarc.between(p, tp, q, tq) : List.of(Segment.line(p, q));
    if (depth < DEEPEST && (!safe || deviation(pair, a, b) > CHORD_ERROR)) {
      double mid = (a + b) / 2;
      add(out, a, mid, depth + 1);
      add(out, mid, b, depth + 1);
      return;
    }
    for (Segment s : pair) {
      out.add(new Point(s.start(), s.isArc() ? new Leg.Arc(s.bulge()) : new Leg.Straight()));
    }
  }

  private double deviation(List<Segment> pair, double a, double b) {
    double worst = 0;
    for (int i = 1; i < SAMPLES; i++) {
      Vec2 p = at(a + (b - a) * i / SAMPLES);
      worst = Math.max(worst, pair.stream().mapToDouble(s -> s.distanceTo(p)).min().orElseThrow());
    }
    return worst;
  }
}
