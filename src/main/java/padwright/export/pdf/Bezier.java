package padwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * A cubic curve as PDF draws it; arcs are cut into as few as stay within {@link #TOLERANCE}.
 *
 * <p>Method: control points at the distance (4/3) tan(angle/4) r along the tangents. Such a curve
 * leaves the circle by at most 2.73e-4 r over a quarter turn, and that error falls with the sixth
 * power of the angle.
 */
record Bezier(Vec2 from, Vec2 c1, Vec2 c2, Vec2 to) {
  /** mm; a tenth of what a print can show. */
  static final double TOLERANCE = 0.001;

  private static final double QUARTER_TURN_ERROR = 2.73e-4;

  static List<Bezier> of(Segment arc) {
    double sweep = arc.sweep();
    double r = arc.radius();
    double widest =
        Math.PI / 2 * Math.min(1, Math.pow(TOLERANCE / (QUARTER_TURN_ERROR * r), 1.0 / 6));
    int n = Math.max(1, (int) Math.ceil(Math.abs(sweep) / widest - 1e-9));
    double k = 4.0 / 3 * Math.tan(Math.abs(sweep) / n / 4) * r;
    List<Bezier> list = new ArrayList<>(n);
    Vec2 from = arc.start();
    Vec2 out = arc.directionAt(0);
    for (int i = 1; i <= n; i++) {
      double t = (double) i / n;
      Vec2 to = i == n ? arc.end() : arc.pointAt(t);
      Vec2 in = arc.directionAt(t);
      list.add(new Bezier(from, from.along(out, k), to.along(in, -k), to));
      from = to;
      out = in;
    }
    return list;
  }
}
