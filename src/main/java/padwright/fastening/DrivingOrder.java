package padwright.fastening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import padwright.fastening.StapleLine.Place;
import padwright.geometry.Vec2;

/**
 * The order in which staples are driven: each side from its middle outwards, opposite sides in
 * turn, corners last; on a narrow part one long side, the other, the ends; on a round part at 12,
 * 6, 3 and 9 o'clock and then always halfway between. Common practice; the order of a seat as in
 * Woodworker's Journal 32-6 (2008), p. 63.
 */
final class DrivingOrder {
  private DrivingOrder() {}

  /** Middle outwards: 0, 1, -1, 2, -2, ... */
  private static final Comparator<Place> FROM_MIDDLE =
      Comparator.comparingInt((Place p) -> Math.abs(p.rank()))
          .thenComparing(p -> p.rank() < 0 ? 1 : 0);

  /**
   * One side after another; {@code sides} in their order.
   *
   * @param facing which of the four sides a place's side counts as
   */
  static List<Place> sideBySide(
      List<Place> places, List<String> sides, Map<String, String> facing) {
    List<Place> out = new ArrayList<>();
    for (String side : sides) {
      places.stream()
          .filter(p -> !p.corner() && side.equals(facing.getOrDefault(p.side(), p.side())))
          .sorted(FROM_MIDDLE)
          .forEach(out::add);
    }
    corners(out, places);
    return out;
  }

  /** Opposite by opposite: the middles of all sides, then one step outwards on each, and so on. */
  static List<Place> opposites(List<Place> places, List<String> sides, Map<String, String> facing) {
    List<List<Place>> queues = new ArrayList<>();
    for (String side : sides) {
      queues.add(
          places.stream()
              .filter(p -> !p.corner() && side.equals(facing.getOrDefault(p.side(), p.side())))
              .sorted(FROM_MIDDLE)
              .toList());
    }
    List<Place> out = new ArrayList<>();
    int longest = queues.stream().mapToInt(List::size).max().orElse(0);
    for (int k = 0; k < longest; k = k == 0 ? 1 : k + 2) {
      for (List<Place> queue : queues) {
        for (int j = k; j < Math.min(queue.size(), k == 0 ? 1 : k + 2); j++) {
          out.add(queue.get(j));
        }
      }
    }
    corners(out, places);
    return out;
  }

  private static void corners(List<Place> out, List<Place> places) {
    List<Place> corner = places.stream().filter(Place::corner).toList();
    boolean[] used = new boolean[corner.size()];
    // Go round corner by corner: nearest next, starting front left.
    Place last = null;
    for (int k = 0; k < used.length; k++) {
      int best = -1;
      double nearest = Double.POSITIVE_INFINITY;
      for (int i = 0; i < used.length; i++) {
        Vec2 at = corner.get(i).at();
        double far = last == null ? at.x() + at.y() : at.distance(last.at());
        if (!used[i] && far < nearest) {
          best = i;
          nearest = far;
        }
      }
      used[best] = true;
      last = corner.get(best);
      out.add(last);
    }
  }

  /** Clock order on a rim whose places come evenly, the first at the front (6 o'clock). */
  static List<Place> clock(List<Place> rim) {
    int n = rim.size();
    boolean[] used = new boolean[n];
    List<Place> out = new ArrayList<>();
    for (int parts = 4; out.size() < n; parts *= 2) {
      for (int k = 0; k < parts / 2; k++) {
        // Each step and its opposite; the back, 12 o'clock, before the front.
        take(rim, used, out, 0.5 + (double) bitReversed(k, parts / 2) / parts);
        take(rim, used, out, (double) bitReversed(k, parts / 2) / parts);
      }
      if (parts > 4 * n) {
        break;
      }
    }
    for (int i = 0; i < n; i++) {
      if (!used[i]) {
        out.add(rim.get(i));
      }
    }
    return out;
  }

  private static void take(List<Place> rim, boolean[] used, List<Place> out, double turn) {
    int n = rim.size();
    int i = Math.floorMod((int) Math.round(turn * n), n);
    if (!used[i]) {
      used[i] = true;
      out.add(rim.get(i));
    }
  }

  /** 0, 1/2, 1/4, 3/4, ... of {@code parts}: always halfway into the widest gap. */
  private static int bitReversed(int k, int parts) {
    int bits = Integer.numberOfTrailingZeros(Integer.highestOneBit(Math.max(1, parts)));
    return bits == 0 ? 0 : Integer.reverse(k) >>> (32 - bits);
  }
}
