package padwright.geometry.mesh;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Lowers a stretch energy. A plain local/global step is {@code x - inverse(L) g}, with L the
 * cotangent Laplacian and g the energy's derivative; here the last few steps correct that inverse
 * (limited-memory BFGS with L in the place of the first guess: Liu, Bouaziz and Kavan,
 * "Quasi-Newton methods for real-time simulation of hyperelastic materials", 2017). It needs the
 * one factor of L and a tenth of the steps.
 */
final class QuasiNewton {
  /**
   * Done when a step lowers the energy, and the next is to lower it, by less than this part. The
   * energy is quadratic at its least, so strains are then within a few ten-thousandths of
   * themselves.
   */
  static final double RELATIVE_CHANGE = 1e-8;

  /**
   * Also done when the energy is below this part of the area: strains of 1e-9, a micrometre in a
   * kilometre.
   */
  static final double FLAT = 1e-18;

  /**
   * Where rounding stops the descent, a foreseen gain below this part of the area is no loss: a
   * strain of 1e-7. Only slivers come to it.
   */
  private static final double ROUNDED = 1e-14;

  /**
   * Surfaces without thin arms need 5 to 30 steps, and the worst of the random ones 351; this many
   * take 2 s on 20,000 triangles.
   */
  static final int MOST_STEPS = 1000;

  /**
   * Steps remembered. Over 4,000 random outlines with thin arms, 6 left four that did not rest in
   * 500 steps, 12 needed at most 351, and 24 at most 394 with more work for each.
   */
  private static final int MEMORY = 12;

  /** Part of the foreseen decrease that a step must reach (Armijo's rule, the usual value). */
  private static final double ENOUGH = 1e-4;

  /** Part of the way to the first flip that a step may go. */
  private static final double SHY = 0.9;

  private static final int MOST_HALVINGS = 30;

  /** How it ended: the position, its energy, steps taken and whether it settled. */
  record Outcome(double[] xy, double energy, int steps, boolean settled) {}

  /** A step, the change of the derivative along it, and 1 over their product. */
  private record Pair(double[] step, double[] change, double inverse) {}

  private QuasiNewton() {}

  static Outcome lower(StretchEnergy energy, MeshLaplacian laplacian, double[] from, double area) {
    double[] x = from.clone();
    double[] gradient = new double[x.length];
    double[] nextX = new double[x.length];
    double[] nextGradient = new double[x.length];
    double value = energy.evaluate(x, gradient);
    Deque<Pair> memory = new ArrayDeque<>();
    for (int step = 0; step < MOST_STEPS; step++) {
      if (value <= FLAT * area) {
        return new Outcome(x, value, step, true);
      }
      double[] direction = direction(laplacian, gradient, memory);
      double slope = dot(gradient, direction);
      double reach = Math.min(1, SHY * energy.longestStep(x, direction));
      double nextValue = value;
      boolean found = false;
      for (int halving = 0; halving < MOST_HALVINGS && !found; halving++) {
        for (int i = 0; i < x.length; i++) {
          nextX[i] = x[i] + reach * direction[i];
        }
        nextValue = energy.evaluate(nextX, nextGradient);
        found = nextValue <= value + ENOUGH * reach * slope;
        reach /= 2;
      }
      if (!found) {
        // Rounding leaves nothing to gain: at rest only where there was next to nothing to gain.
        double gain = -slope / 2;
        boolean rest = gain <= RELATIVE_CHANGE * value || gain <= ROUNDED * area;
        return new Outcome(x, value, step, rest);
      }
      remember(memory, x, nextX, gradient, nextGradient);
      boolean settled =
          value - nextValue <= RELATIVE_CHANGE * value && -slope <= 2 * RELATIVE_CHANGE * value;
      double[] swap = x;
      x = nextX;
      nextX = swap;
      swap = gradient;
      gradient = nextGradient;
      nextGradient = swap;
      value = nextValue;
      if (settled) {
        return new Outcome(x, value, step + 1, true);
      }
    }
    return new Outcome(x, value, MOST_STEPS, false);
  }

  /** The two loops of limited-memory BFGS (Nocedal, 1980). */
  private static double[] direction(
      MeshLaplacian laplacian, double[] gradient, Deque<Pair> memory) {
    double[] d = gradient.clone();
    double[] alpha = new double[memory.size()];
    int i = 0;
    for (Pair p : memory) {
      alpha[i] = p.inverse * dot(p.step, d);
      add(d, p.change, -alpha[i++]);
    }
    laplacian.solveFree(d);
    for (var it = memory.descendingIterator(); it.hasNext(); ) {
      Pair p = it.next();
      double beta = p.inverse * dot(p.change, d);
      add(d, p.step, alpha[--i] - beta);
    }
    for (int k = 0; k < d.length; k++) {
      d[k] = -d[k];
    }
    return d;
  }

  private static void remember(
      Deque<Pair> memory, double[] x, double[] nextX, double[] g, double[] nextG) {
    Pair oldest = memory.size() == MEMORY ? memory.removeLast() : null;
    double[] step = oldest == null ? new double[x.length] : oldest.step;
    double[] change = oldest == null ? new double[x.length] : oldest.change;
    double product = 0;
    double size = 0;
    for (int i = 0; i < x.length; i++) {
      step[i] = nextX[i] - x[i];
      change[i] = nextG[i] - g[i];
      product += step[i] * change[i];
      size += Math.abs(step[i] * change[i]);
    }
    // A pair that bends the wrong way, or by rounding alone, would spoil the inverse.
    if (product > 1e-10 * size) {
      memory.addFirst(new Pair(step, change, 1 / product));
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static void add(double[] to, double[] what, double k) {
    for (int i = 0; i < to.length; i++) {
      to[i] += k * what[i];
    }
  }
}
