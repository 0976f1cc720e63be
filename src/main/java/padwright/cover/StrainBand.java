package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A stretch of the covering's way over the edge on which a strain stays within one step.
 *
 * @param from path length at which it begins, mm
 * @param to path length at which it ends
 * @param least strain on it, a fraction: no less than where the step begins
 * @param most strain on it, no more than where the step ends
 */
record StrainBand(double from, double to, double least, double most) {
  /** Halvings of a stretch under 100 mm that bring it under a thousandth of a mm. */
  private static final int HALVINGS = 20;

  /**
   * The stretches of one step each, in order; what is under the first step is left out.
   *
   * @param strain at a path length; between two levels that follow one another it only rises or
   *     only falls
   * @param levels rising
   * @param steps rising strains at which a step begins
   */
  static List<StrainBand> of(DoubleUnaryOperator strain, List<Double> levels, double[] steps) {
    List<StrainBand> bands = new ArrayList<>();
    for (int i = 0; i + 1 < levels.size(); i++) {
      double a = levels.get(i);
      double b = levels.get(i + 1);
      double at = strain.applyAsDouble(a);
      double end = strain.applyAsDouble(b);
      boolean rises = end >= at;
      for (int k = 0; k < steps.length; k++) {
        double step = steps[rises ? k : steps.length - 1 - k];
        if (rises ? at < step && step < end : end < step && step < at) {
          double s = crossing(strain, a, b, step, rises);
          add(bands, a, s, at, step, steps);
          a = s;
          at = step;
        }
      }
      add(bands, a, b, at, end, steps);
    }
    return bands;
  }

  private static double crossing(
      DoubleUnaryOperator strain, double from, double to, double step, boolean rises) {
    double low = from;
    double high = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (strain.applyAsDouble(middle) < step == rises) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private static void add(
      List<StrainBand> bands, double from, double to, double start, double end, double[] steps) {
    double least = Math.min(start, end);
    double most = Math.max(start, end);
    int step = step(least, most, steps);
    if (step < 0 || to <= from) {
      return;
    }
    StrainBand last = bands.isEmpty() ? null : bands.get(bands.size() - 1);
    if (last != null && last.to == from && step(last.least, last.most, steps) == step) {
      bands.set(
          bands.size() - 1,
          new StrainBand(last.from, to, Math.min(last.least, least), Math.max(last.most, most)));
    } else {
      bands.add(new StrainBand(from, to, least, most));
    }
  }

  /** The step that a range lies in: the last that begins at or under its middle; -1 under all. */
  private static int step(double least, double most, double[] steps) {
    double middle = Double.isInfinite(most) ? most : (least + most) / 2;
    int step = -1;
    while (step + 1 < steps.length && steps[step + 1] <= middle) {
      step++;
    }
    return step;
  }
}
