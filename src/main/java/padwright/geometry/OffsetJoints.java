package padwright.geometry;

import java.util.Comparator;
import java.util.List;

/** Finds the piece that goes on from another's end. */
final class OffsetJoints {
  private final List<Segment> pieces;
  private final double same;
  private final Integer[] byX;
  private final double[] x;

  OffsetJoints(List<Segment> pieces, double same) {
    this.pieces = pieces;
    this.same = same;
    byX = new Integer[pieces.size()];
    for (int i = 0; i < byX.length; i++) {
      byX[i] = i;
    }
    java.util.Arrays.sort(byX, Comparator.comparingDouble(i -> pieces.get(i).start().x()));
    x = new double[byX.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = pieces.get(byX[i]).start().x();
    }
  }

  int next(int from, boolean[] used) {
    Segment s = pieces.get(from);
    int k = java.util.Arrays.binarySearch(x, s.end().x() - same);
    k = k < 0 ? -k - 1 : k;
    while (k > 0 && x[k - 1] >= s.end().x() - same) {
      k--;
    }
    int best = -1;
    double most = Double.NEGATIVE_INFINITY;
    for (; k < x.length && x[k] <= s.end().x() + same; k++) {
      int i = byX[k];
      if (used[i] || pieces.get(i).start().distance(s.end()) > same) {
        continue;
      }
      Vec2 u = s.directionAt(1);
      Vec2 v = pieces.get(i).directionAt(0);
      double turn = Math.atan2(u.cross(v), u.dot(v));
      if (turn > most) {
        most = turn;
        best = i;
      }
    }
    return best;
  }
}
