package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import padwright.cover.Skeleton.Sweep;
import padwright.shape.TautPath;

/**
 * By how much the covering gives along a rounded or hollow stretch. Its flat covering at path
 * length s is an arc of radius r + s, or r - s where hollow, and lies on one of radius r + x(s), or
 * r - x(s): round the one it is eased, round the other stretched, by the ratio of the radii (both
 * about one centre, so that their angle is the same). What is notched out need not be eased; beyond
 * the tips of its clips a hollow stretch opens instead of stretching.
 */
final class SweepStrain {
  /** Levels on the back between which strain changes steadily, mm: notches widen evenly. */
  private static final double APART = 3;

  /** Parts of a bend of the section in which strain changes steadily. */
  static final int PER_BEND = 6;

  /** The covering is looked at this far within its trim line, mm, where a notch is still one. */
  private static final double WITHIN = 0.01;

  private final Sweep sweep;
  private final TautPath path;
  private final double open;
  private final DoubleUnaryOperator notched;

  /**
   * @param open path length at which clips begin; infinite where there are none
   * @param notched share of the covering's length that is cut out at a path length
   */
  SweepStrain(Sweep sweep, TautPath path, double open, DoubleUnaryOperator notched) {
    this.sweep = sweep;
    this.path = path;
    this.open = open;
    this.notched = notched;
  }

  /** Eased by, or where hollow stretched by, so much of its flat length: a fraction, 0 or more. */
  double at(double s) {
    double r = sweep.radius();
    if (sweep.hollow()) {
      double flat = r - s;
      return s > open ? 0 : flat <= 0 ? Double.POSITIVE_INFINITY : (r - path.out(s)) / flat - 1;
    }
    double room = r + Math.max(-r, path.out(s));
    double flat = (r + s) * (1 - notched.applyAsDouble(s));
    return flat <= room ? 0 : (flat - room) / flat;
  }

  /** The same at the trim line, or at the end of what is stretched. */
  double atTrim() {
    return at(Math.min(path.developed() - WITHIN, open));
  }

  /** The largest on the way to where the back begins, or to where the wall ends. */
  double most(boolean turned) {
    double down = turned ? path.backStart() : path.wallEnd();
    double most = at(down);
    for (double s : path.breaks(PER_BEND)) {
      most = s < down ? Math.max(most, at(s)) : most;
    }
    return most;
  }

  List<StrainBand> onWall(double[] steps) {
    return StrainBand.of(this::at, path.breaks(PER_BEND), steps);
  }

  List<StrainBand> onBack(double[] steps) {
    return StrainBand.of(this::at, levels(), steps);
  }

  /** The largest on the back. */
  double mostUnder() {
    return levels().stream().mapToDouble(this::at).max().orElse(0);
  }

  private List<Double> levels() {
    double from = path.backStart();
    double to = Math.min(path.developed() - WITHIN, open);
    List<Double> levels = new ArrayList<>();
    int parts = (int) Math.max(1, Math.ceil((to - from) / APART));
    for (int k = 0; k < parts && to > from; k++) {
      levels.add(from + (to - from) * k / parts);
    }
    if (to > from) {
      levels.add(to);
    }
    return levels;
  }
}
