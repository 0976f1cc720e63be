package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.Skeleton.Sweep;
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

  /**
   * Cut line further out than this beyond the nearest, mm, belongs to another part of the cover.
   */
  private static final double FURTHEST = 200;

  private final List<Vec2> cut;
  private final Sweep sweep;
  private final double least;
  private final double most;

  /**
   * @param from path length where the strip begins: the cut line further in belongs to another part
   *     of the cover
   */
  SweepCover(List<Vec2> cut, Sweep sweep, double from) {
    this.cut = cut;
    this.sweep = sweep;
    double low = Double.POSITIVE_INFINITY;
    double high = 0;
    for (int i = 0; i < cut.size(); i++) {
      Vec2 a = cut.get(i);
      Vec2 b = cut.get((i + 1) % cut.size());
      if (passesBy(a, b)) {
        continue;
      }
      for (int k = 0; k <= 4; k++) {
        Vec2 p = a.plus(b.minus(a).times(k / 4.0));
        double reach = sweep.out(p);
        if (reach >= from && sweep.into(sweep.angle(p)) <= Math.abs(sweep.turn())) {
          low = Math.min(low, reach);
          high = Math.max(high, reach);
        }
      }
    }
    least = low;
    most = Math.min(high, low + FURTHEST);
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
        List<double[]> found = c.gaps(radius);
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

  /** Where the circle of a radius lies outside the cut line, as angles into the sweep. */
  private List<double[]> gaps(double radius) {
    List<Double> crossings = new ArrayList<>();
    crossings.add(0.0);
    for (int i = 0; i < cut.size(); i++) {
      Vec2 a = cut.get(i).minus(sweep.centre());
      Vec2 d = cut.get((i + 1) % cut.size()).minus(cut.get(i));
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
          if (angle < sweep.turn()) {
            crossings.add(angle);
          }
        }
      }
    }
    crossings.add(sweep.turn());
    crossings.sort(null);
    List<double[]> gaps = new ArrayList<>();
    for (int i = 0; i + 1 < crossings.size(); i++) {
      double from = crossings.get(i);
      double to = crossings.get(i + 1);
      Vec2 middle = sweep.centre().along(Vec2.polar(sweep.fromAngle() + (from + to) / 2), radius);
      if (to - from > 1e-9 && !padwright.geometry.Polygons.contains(cut, middle)) {
        gaps.add(new double[] {from, to});
      }
    }
    return gaps;
  }
}
