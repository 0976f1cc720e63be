package padwright.geometry.mesh;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import padwright.geometry.Vec2;

/**
 * Whether a closed polygon crosses itself: its edges are passed over from left to right, and each
 * is tried against those that reach as far (Shamos and Hoey, 1976, without the balanced order:
 * outlines have few edges above one another).
 */
final class SelfCrossing {
  private SelfCrossing() {}

  static boolean of(List<Vec2> polygon) {
    int n = polygon.size();
    Integer[] byLeft = new Integer[n];
    Arrays.setAll(byLeft, i -> i);
    Arrays.sort(
        byLeft,
        Comparator.comparingDouble(
            i -> Math.min(polygon.get(i).x(), polygon.get((i + 1) % n).x())));
    int[] open = new int[n];
    int count = 0;
    for (int i : byLeft) {
      Vec2 a = polygon.get(i);
      Vec2 b = polygon.get((i + 1) % n);
      double left = Math.min(a.x(), b.x());
      int kept = 0;
      for (int k = 0; k < count; k++) {
        int o = open[k];
        Vec2 c = polygon.get(o);
        Vec2 d = polygon.get((o + 1) % n);
        if (Math.max(c.x(), d.x()) < left) {
          continue;
        }
        open[kept++] = o;
        boolean neighbours = (i + 1) % n == o || (o + 1) % n == i;
        if (!neighbours && crosses(a, b, c, d)) {
          return true;
        }
      }
      count = kept;
      open[count++] = i;
    }
    return false;
  }

  private static boolean crosses(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
    return Predicates.orientation(a.x(), a.y(), b.x(), b.y(), c.x(), c.y())
                * Predicates.orientation(a.x(), a.y(), b.x(), b.y(), d.x(), d.y())
            < 0
        && Predicates.orientation(c.x(), c.y(), d.x(), d.y(), a.x(), a.y())
                * Predicates.orientation(c.x(), c.y(), d.x(), d.y(), b.x(), b.y())
            < 0;
  }
}
