package padwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A cubic curve in Bernstein form (two end points, two control points) as a chain of arcs that
 * share their tangents: a biarc between two points of the curve and their tangents, halved until it
 * keeps a stated distance from the curve.
 */
public final class CubicArcs {
  /** How far the chain may leave the curve, mm: a tenth of what a knife can follow. */
  public static final double CHORD_ERROR = 0.01;

  private static final int DEEPEST = 12;
  private static final int SAMPLES = 8;

  /** The most that is seen at so many places may be less than there is between them. */
  private static final double SEEN = 0.9;

  /** Shorter stretches, mm, are joined by a line. */
  private static final double SHORTEST = 1e-6;

  private final Vec2 p0;
  private final Vec2 p1;
  private final Vec2 p2;
  private final Vec2 p3;

  private CubicArcs(Vec2 p0, Vec2 p1, Vec2 p2, Vec2 p3) {
    this.p0 = p0;
    this.p1 = p1;
    this.p2 = p2;
    this.p3 = p3;
  }

  /** The chain from {@code start} to {@code end}; a curve with no extent gives an empty list. */
  public static List<Segment> of(Vec2 start, Vec2 first, Vec2 second, Vec2 end) {
    CubicArcs curve = new CubicArcs(start, first, second, end);
    List<Segment> out = new ArrayList<>();
    curve.add(out, 0, 1, 0);
    return out;
  }

  Vec2 at(double t) {
    double u = 1 - t;
    return p0.times(u * u * u)
        .plus(p1.times(3 * u * u * t))
        .plus(p2.times(3 * u * t * t))
        .plus(p3.times(t * t * t));
  }

  /** The direction of travel; where the curve stands still, that of the chord beside it. */
  private Vec2 direction(double t) {
    double u = 1 - t;
    Vec2 d =
        p1.minus(p0)
            .times(u * u)
            .plus(p2.minus(p1).times(2 * u * t))
            .plus(p3.minus(p2).times(t * t));
    if (d.length() < SHORTEST) {
      double e = 1e-4;
      d = at(Math.min(1, t + e)).minus(at(Math.max(0, t - e)));
    }
    return d.unit();
  }

  private void add(List<Segment> out, double a, double b, int depth) {
    Vec2 from = at(a);
    Vec2 to = at(b);
    boolean last = depth >= DEEPEST;
    if (from.distance(to) < SHORTEST) {
      if (depth == 0) {
        halve(out, a, b, depth);
      }
      return;
    }
    List<Segment> pair = depth == 0 ? List.of() : pair(from, direction(a), to, direction(b));
    if (depth > 0 && (last || (!pair.isEmpty() && deviation(pair, a, b) <= SEEN * CHORD_ERROR))) {
      out.addAll(pair.isEmpty() ? List.of(Segment.line(from, to)) : pair);
      return;
    }
    halve(out, a, b, depth);
  }

  private void halve(List<Segment> out, double a, double b, int depth) {
    double mid = (a + b) / 2;
    add(out, a, mid, depth + 1);
    add(out, mid, b, depth + 1);
  }

  /** The biarc, a line where it is straight; empty where it turns more than a quarter. */
  private static List<Segment> pair(Vec2 from, Vec2 tf, Vec2 to, Vec2 tt) {
    Vec2 chord = to.minus(from).unit();
    if (tf.dot(chord) < 0.7 || tt.dot(chord) < 0.7) {
      return List.of();
    }
    if (Math.abs(tf.cross(chord)) < 1e-9 && Math.abs(tt.cross(chord)) < 1e-9) {
      return List.of(Segment.line(from, to));
    }
    return Biarc.between(from, tf, to, tt);
  }

  /** The largest distance of points of the curve from the chain. */
  private double deviation(List<Segment> pair, double a, double b) {
    double worst = 0;
    for (int i = 1; i < SAMPLES; i++) {
      Vec2 p = at(a + (b - a) * i / SAMPLES);
      double near = Double.POSITIVE_INFINITY;
      for (Segment s : pair) {
        near = Math.min(near, s.distanceTo(p));
      }
      worst = Math.max(worst, near);
    }
    return worst;
  }
}
