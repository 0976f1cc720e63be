package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.Skeleton.Sweep;
import padwright.geometry.EdgeRuns;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/**
 * How far out a cut line reaches over a rounded stretch, in polar coordinates about its centre, and
 * whether the notches in it close once the covering lies on the back.
 */
final class SweepCover {
  /** A gap wider than this, mm, is a missing piece and not a notch. */
  private static final double WIDEST_NOTCH = 40;

  /** Below this difference of reach, mm, the cut line is one arc flattened. */
  private static final double SAME = 0.1;

  private static final int LEVELS = 40;

  /** No cut line lies further past the developed side, mm: it is the trim line. */
  private static final double BEYOND = 20;

  /**
   * Cut line further out than this beyond the nearest, mm, belongs to another part of the cover.
   */
  private static final double FURTHEST = 200;

  private final List<Vec2[]> near = new ArrayList<>();
  private final Sweep sweep;
  private final TautPath path;
  private final CornerFrame before;
  private final CornerFrame after;
  private final double least;
  private final double most;

  /**
   * @param before the corner before the sweep, null where it runs on smoothly
   * @param after the corner after it, null where it runs on smoothly
   */
  SweepCover(EdgeRuns cut, Sweep sweep, TautPath path, CornerFrame before, CornerFrame after) {
    this.sweep = sweep;
    this.path = path;
    this.before = before;
    this.after = after;
    // The cut line further in belongs to another part of the cover.
    double from = path.startX() - 1;
    double low = Double.POSITIVE_INFINITY;
    double high = 0;
    Segment own = sweep.segment();
    Vec2 middle = own.pointAt(0.5);
    double about = own.length() / 2 + path.developed() + BEYOND;
    for (int edge : cut.near(middle, about)) {
      Vec2 a = cut.from(edge);
      Vec2 b = cut.to(edge);
      if (a.midpoint(b).distance(middle) > about + a.distance(b) || passesBy(a, b)) {
        continue;
      }
      near.add(new Vec2[] {a, b});
      for (int k = 0; k <= 4; k++) {
        Vec2 p = a.plus(b.minus(a).times(k / 4.0));
        double reach = sweep.out(p);
        double into = sweep.into(sweep.angle(p));
        if (reach >= from
            && into >= margin(before, reach) - 1e-9
            && Math.abs(sweep.turn()) - into >= margin(after, reach) - 1e-9) {
          low = Math.min(low, reach);
          high = Math.max(high, reach);
        }
      }
    }
    least = low;
    most = Math.min(high, low + FURTHEST);
  }

  /**
   * The part of the turn, radians, that a corner at an end takes off at a path length: up to its
   * mitre, or at a hollow corner up to the seam of its gusset. The corner is seen in the tangent at
   * the sweep's end.
   */
  private double margin(CornerFrame corner, double s) {
    if (corner == null) {
      return 0;
    }
    double length;
    if (corner.turn() < 0) {
      length = -s * corner.mitre() + Gusset.ALLOWANCE / Math.cos(corner.turn() / 2);
    } else {
      double back = path.backStart();
      double out = s <= back ? path.out(s) : path.out(back) - (s - back);
      length = -out * corner.mitre();
    }
    return Math.max(0, length) / sweep.radius();
  }

  /** Whether an edge lies wholly on the far side of the sweep's centre, or beyond its turn. */
  private boolean passesBy(Vec2 a, Vec2 b) {
    if (Math.abs(sweep.turn()) > Math.PI / 2) {
      return false;
    }
    Vec2 middle = Vec2.polar(sweep.at(Math.abs(sweep.turn()) / 2));
    Vec2 side = sweep.hollow() ? middle.times(-1) : middle;
    return a.minus(sweep.centre()).dot(side) < 0 && b.minus(sweep.centre()).dot(side) < 0;
  }

  private double into(double angle) {
    return sweep.into(angle);
  }

  /** The nearest that the cut line comes to the outline. */
  double leastReach() {
    return least;
  }

  /**
   * How far out the covering of a corner is whole once its notches are drawn together: at every
   * level short of it, the gaps are notches and together no longer than the surplus that they are
   * to take.
   */
  static double closedReach(List<SweepCover> corner, TautPath path) {
    double least = corner.stream().mapToDouble(c -> c.least).min().orElse(0);
    double most = corner.stream().mapToDouble(c -> c.most).max().orElse(0);
    if (most - least < SAME) {
      return least;
    }
    double reach = least;
    for (int k = 1; k <= LEVELS; k++) {
      double s = least + (most - SAME / 2 - least) * k / LEVELS;
      double gaps = 0;
      double widest = 0;
      double surplus = 0;
      // A notch that lies across two arcs is met as the end of one gap and the start of the next.
      double open = 0;
      for (SweepCover c : corner) {
        double radius = c.sweep.radius() + s;
        List<double[]> found = c.gaps(radius, s);
        for (double[] gap : found) {
          double length = (gap[1] - gap[0]) * radius;
          gaps += length;
          double joined = gap[0] < 1e-9 ? open + length : length;
          widest = Math.max(widest, joined);
          open = gap[1] > c.sweep.turn() - 1e-9 ? joined : 0;
        }
        open = found.isEmpty() ? 0 : open;
        double wrapped = Math.max(0, c.sweep.radius() + path.out(s));
        surplus += c.sweep.turn() * (radius - wrapped);
      }
      if (widest > WIDEST_NOTCH || gaps > surplus + SAME) {
        return reach;
      }
      reach = s;
    }
    return reach;
  }

  /** Whether a place is inside the cut line: a way straight out from it crosses an odd number. */
  private boolean covered(Vec2 p) {
    Vec2 out = p.minus(sweep.centre()).unit();
    boolean in = false;
    for (Vec2[] edge : near) {
      Vec2 a = edge[0].minus(p);
      Vec2 b = edge[1].minus(p);
      double sa = out.cross(a);
      double sb = out.cross(b);
      if ((sa > 0) != (sb > 0)) {
        double along = (out.dot(a) * sb - out.dot(b) * sa) / (sb - sa);
        in ^= along > 0;
      }
    }
    return in;
  }

  /** The share of its turn, between the corners beside it, that is notched out at a path length. */
  double notched(double s) {
    double turn = sweep.turn() - margin(before, s) - margin(after, s);
    double gaps = 0;
    for (double[] gap : gaps(sweep.radius() + s, s)) {
      gaps += gap[1] - gap[0];
    }
    return turn <= 0 ? 0 : gaps / turn;
  }

  /** Where the circle of a radius lies outside the cut line, as angles into the sweep. */
  private List<double[]> gaps(double radius, double s) {
    double from = margin(before, s);
    double to = sweep.turn() - margin(after, s);
    List<Double> crossings = new ArrayList<>();
    crossings.add(from);
    for (Vec2[] edge : near) {
      Vec2 a = edge[0].minus(sweep.centre());
      Vec2 d = edge[1].minus(edge[0]);
      double qa = d.dot(d);
      double qb = a.dot(d);
      double qc = a.dot(a) - radius * radius;
      double disc = qb * qb - qa * qc;
      if (qa < 1e-18 || disc < 0) {
        continue;
      }
      for (int sign = -1; sign <= 1; sign += 2) {
        double t = (-qb + sign * Math.sqrt(disc)) / qa;
        if (t >= 0 && t <= 1) {
          double angle = into(a.plus(d.times(t)).angle());
          if (angle > from && angle < to) {
            crossings.add(angle);
          }
        }
      }
    }
    crossings.add(Math.max(from, to));
    crossings.sort(null);
    List<double[]> gaps = new ArrayList<>();
    for (int i = 0; i + 1 < crossings.size(); i++) {
      double a = crossings.get(i);
      double b = crossings.get(i + 1);
      Vec2 middle = sweep.centre().along(Vec2.polar(sweep.fromAngle() + (a + b) / 2), radius);
      if (b - a > 1e-9 && !covered(middle)) {
        gaps.add(new double[] {a, b});
      }
    }
    return gaps;
  }
}
