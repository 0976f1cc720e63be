package padwright.desk.view;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets things along a line as near to where they belong as their sizes let them, in the order given
 * (least squares under an order: neighbours that would meet are pooled).
 */
final class Spread {
  private Spread() {}

  private static final class Pool {
    private double middle;
    private int first;
    private int count;
  }

  /**
   * Middles of things of one size.
   *
   * @param wanted middles in the order in which they stand, ascending or not
   * @param pitch least distance of two middles
   * @param low least middle
   * @param high greatest middle; where there is too little room it is passed
   */
  static double[] along(List<Double> wanted, double pitch, double low, double high) {
    int n = wanted.size();
    List<Pool> pools = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Pool p = new Pool();
      // Measured from where a thing would stand if all were set closely: then order is all.
      p.middle = wanted.get(i) - i * pitch;
      p.first = i;
      p.count = 1;
      while (!pools.isEmpty() && pools.get(pools.size() - 1).middle > p.middle) {
        Pool before = pools.remove(pools.size() - 1);
        p.middle = (before.middle * before.count + p.middle * p.count) / (before.count + p.count);
        p.first = before.first;
        p.count += before.count;
      }
      pools.add(p);
    }
    double[] at = new double[n];
    double most = high - (n - 1) * pitch;
    for (Pool p : pools) {
      for (int i = p.first; i < p.first + p.count; i++) {
        at[i] = Math.max(low, Math.min(most, p.middle)) + i * pitch;
      }
    }
    return at;
  }
}
