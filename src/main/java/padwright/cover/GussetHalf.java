package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/**
 * Half of a gusset, as it lies on the wall of its side: rung by rung down from the tip of the slit,
 * each rung at one path length and running from the arris to the seam. A side is bent only across
 * itself, so its wall unrolls without any strain, and every length here is the one in space. mm; u
 * away from the tip along the side, v path length down from the tip.
 *
 * <p>Unrolled so, the arris is straight over an upright or a leaning wall, and bends where the wall
 * does. {@link #straightened} lays the same rungs against an arris that is straight all the way, as
 * the crease of one piece of covering is: it keeps the length of each rung, and along arris and
 * seam that of each step from rung to rung. What it cannot keep is the angle between them, so the
 * half slants. Source of the method: two circles about two known points, as in any development by
 * true lengths.
 *
 * @param level path lengths of the rungs
 * @param arris where each begins
 * @param seam where each ends
 */
record GussetHalf(List<Double> level, List<Vec2> arris, List<Vec2> seam) {
  /** The first rung stands so far below the tip, mm: at the tip itself the slit has no width. */
  private static final double FIRST = 3;

  /** Rungs stand no further apart, mm: a seam that bends is met within a hundredth. */
  private static final double APART = 2;

  /** Nor nearer than this, mm, but where the wall or the back ends. */
  private static final double NEAREST = 0.2;

  /** A rung may be so much shorter than it is on the wall, mm: no more than the covering gives. */
  private static final double SHORT = 0.25;

  GussetHalf {
    level = List.copyOf(level);
    arris = List.copyOf(arris);
    seam = List.copyOf(seam);
  }

  /**
   * The half against a straight arris.
   *
   * @param down how far below the tip each rung begins on the arris
   * @param seam where each ends: x away from the arris, y down from the tip
   * @param slant the most that a rung's end lies higher or lower against its start than on the wall
   * @param shortBy the most that a rung is shorter than on the wall
   */
  record Straight(List<Double> down, List<Vec2> seam, double slant, double shortBy) {}

  static GussetHalf of(CornerFrame f, boolean first) {
    double tip = Gusset.tip(f);
    Vec2[] line = Gusset.seamLine(f, first);
    double start = f.past(first, line[0]);
    double from = f.out(first, line[0]);
    double slope = (f.past(first, line[1]) - start) / (f.out(first, line[1]) - from);
    List<Double> levels = levels(f, first, tip);
    List<Vec2> arris = new ArrayList<>();
    List<Vec2> seam = new ArrayList<>();
    for (double s : levels) {
      Vec2 end = new Vec2(-slope * (s - tip), s - tip);
      seam.add(end);
      // The covering is pulled to the arris at the tip, where it falls short by next to nothing.
      arris.add(s == tip ? end : new Vec2(Math.min(end.x(), start - f.fold(first, s)), s - tip));
    }
    return new GussetHalf(levels, arris, seam);
  }

  private static List<Double> levels(CornerFrame f, boolean first, double tip) {
    TautPath path = f.path(first);
    double end = path.developed();
    TreeSet<Double> ends = new TreeSet<>(List.of(path.wallEnd(), path.backStart(), end));
    TreeSet<Double> bends = new TreeSet<>(f.bends(first));
    bends.addAll(ends);
    List<Double> levels = new ArrayList<>();
    levels.add(tip);
    double last = tip + Math.min(FIRST, (end - tip) / 2);
    levels.add(last);
    for (double s : bends.tailSet(last, false)) {
      if (s - last < (ends.contains(s) ? 1e-6 : NEAREST) || s > end) {
        continue;
      }
      int parts = (int) Math.ceil((s - last) / APART - 1e-9);
      for (int k = 1; k < parts; k++) {
        levels.add(last + (s - last) * k / parts);
      }
      levels.add(s);
      last = s;
    }
    return levels;
  }

  double width(int rung) {
    return seam.get(rung).x() - arris.get(rung).x();
  }

  /** Where along the arris a path length lies, counted from the tip; to the nearest rung. */
  double along(double s) {
    double sum = 0;
    for (int i = 1; i < level.size() && level.get(i) <= s + 1e-9; i++) {
      sum += arris.get(i).distance(arris.get(i - 1));
    }
    return sum;
  }

  /** Empty where a rung would be too short, or the seam would turn back up. */
  Optional<Straight> straightened() {
    List<Double> down = new ArrayList<>(List.of(0.0));
    List<Vec2> ends = new ArrayList<>(List.of(Vec2.ZERO));
    double slant = 0;
    double shortBy = 0;
    for (int i = 1; i < level.size(); i++) {
      double width = width(i);
      double at = down.get(i - 1) + arris.get(i).distance(arris.get(i - 1));
      Vec2 foot = new Vec2(0, at);
      Vec2 last = ends.get(i - 1);
      Vec2 end = reach(foot, width, last, seam.get(i).distance(seam.get(i - 1)));
      double lacks = Math.abs(width - end.distance(foot));
      if (lacks > SHORT || end.y() <= last.y() || end.x() < 0) {
        return Optional.empty();
      }
      Vec2 step = arris.get(i).minus(arris.get(i - 1)).unit();
      slant = Math.max(slant, Math.abs(end.y() - at - width * step.x()));
      shortBy = Math.max(shortBy, lacks);
      down.add(at);
      ends.add(end);
    }
    return Optional.of(new Straight(List.copyOf(down), List.copyOf(ends), slant, shortBy));
  }

  /** The point a step of the seam below the last one, and a rung's length from its foot. */
  private static Vec2 reach(Vec2 foot, double width, Vec2 last, double step) {
    double d = last.distance(foot);
    Vec2 out = last.minus(foot).unit();
    double cos = (width * width + d * d - step * step) / (2 * d * width);
    if (Math.abs(cos) >= 1) {
      // The circles do not meet: the seam keeps its length, the rung does what it can.
      return last.along(out, width > d ? step : -step);
    }
    // Of the two the lower one: y counts downwards.
    double sin = Math.sqrt(1 - cos * cos);
    return foot.plus(out.times(width * cos)).plus(out.left().times(width * sin));
  }
}
