package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import padwright.cover.Skeleton.Sweep;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;

/** The covering along rounded and hollow stretches: x the angle into the sweep, y path length. */
final class SweepSheets {
  /** The sweep is cut into wedges no wider than this, radians, which are convex. */
  private static final double WEDGE = Math.PI / 3;

  /**
   * Straight edges curve here and back again: chords stay this near, mm, far under a line's width.
   */
  private static final double CHORD_ERROR = 0.02;

  private final List<Vec2> cut;
  private final double end;

  SweepSheets(List<Vec2> cut, double end) {
    this.cut = cut;
    this.end = end;
  }

  /** The covering between two path lengths, wedge by wedge. */
  List<List<Vec2>> on(Sweep sweep, double from, double to) {
    List<List<Vec2>> sheets = new ArrayList<>();
    double turn = Math.abs(sweep.turn());
    double low = sweep.hollow() ? Math.min(to, sweep.radius() - 1e-3) : to;
    int parts = Math.max(1, (int) Math.ceil(turn / WEDGE));
    for (int k = 0; k < parts && low > from; k++) {
      double a = turn * k / parts;
      double b = turn * (k + 1) / parts;
      List<Vec2> wedge = wedge(sweep, a, b, Math.min(low, end));
      double step = Math.sqrt(8 * CHORD_ERROR * sweep.radius());
      List<Vec2> polar = new ArrayList<>();
      double middle = sweep.at((a + b) / 2);
      for (Vec2 p : followed(wedge, step, Vec2::length)) {
        double d = Math.IEEEremainder(sweep.angle(p) - middle, 2 * Math.PI);
        polar.add(new Vec2((a + b) / 2 + (sweep.hollow() ? -d : d), sweep.out(p)));
      }
      polar = Polygons.below(polar, new Vec2(0, -1), -from);
      polar = Polygons.below(polar, new Vec2(0, 1), low);
      if (polar.size() >= 3) {
        // Only what runs across the angle curves on its way back.
        sheets.add(followed(polar, step / sweep.radius(), d -> Math.abs(d.x())));
      }
    }
    return sheets;
  }

  /** The part of the cover between two normals, less what lies well inside. */
  private List<Vec2> wedge(Sweep sweep, double a, double b, double low) {
    double sign = sweep.hollow() ? -1 : 1;
    Vec2 c = sweep.centre();
    Vec2 u = Vec2.polar(sweep.at(a)).times(sign);
    Vec2 v = Vec2.polar(sweep.at(b)).times(sign);
    double far = sweep.radius() + end + sweep.radiusAt(sweep.hollow() ? -end : low);
    double near = sweep.hollow() ? Math.max(1e-3, sweep.radiusAt(low)) : 1e-3;
    double inner = near * Math.cos((b - a) / 2);
    return Polygons.inside(
        cut,
        Polygons.anticlockwise(
            List.of(c.along(u, inner), c.along(u, far), c.along(v, far), c.along(v, inner))));
  }

  /** A polygon with points between its corners, no further apart in some measure than a step. */
  private static List<Vec2> followed(
      List<Vec2> polygon, double step, ToDoubleFunction<Vec2> measure) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      Vec2 p = polygon.get(i);
      Vec2 d = polygon.get((i + 1) % polygon.size()).minus(p);
      int steps = Math.max(1, (int) Math.ceil(measure.applyAsDouble(d) / step));
      for (int k = 0; k < steps; k++) {
        points.add(p.along(d, (double) k / steps));
      }
    }
    return points;
  }
}
