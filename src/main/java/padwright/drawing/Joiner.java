package padwright.drawing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.geometry.Vec2;

/**
 * Joins open chains to loops where their ends are within {@link DrawingLimits#JOIN}: the nearest
 * pair of ends first, each end once. Joined ends meet halfway.
 */
final class Joiner {
  /** More ends than this in one place are no outline. */
  private static final int MOST_ENDS = 32;

  /** Coordinates that agree to this, mm, are of one line drawn twice. */
  private static final double SAME = 1e-4;

  /** A gap below this, mm, is none. */
  private static final double NO_GAP = 5e-4;

  private final List<Chain> closed = new ArrayList<>();
  private final List<Chain> open = new ArrayList<>();
  private final List<Chain> twice = new ArrayList<>();
  private final List<Double> gaps = new ArrayList<>();
  private final Budget budget;

  Joiner(List<Chain> chains, Budget budget) {
    this.budget = budget;
    Set<List<Long>> seen = new HashSet<>();
    List<Chain> ends = new ArrayList<>();
    for (Chain c : chains) {
      List<Long> key = key(c);
      if (seen.contains(key) || seen.contains(key(c.reversed()))) {
        twice.add(c);
        continue;
      }
      seen.add(key);
      (c.closed() ? closed : ends).add(c);
    }
    join(ends);
  }

  /** The loops: those drawn closed, then those joined. */
  List<Chain> closed() {
    return closed;
  }

  /** Chains with an end that meets no other. */
  List<Chain> open() {
    return open;
  }

  /** Chains that another one covers exactly. */
  List<Chain> twice() {
    return twice;
  }

  /** The widths of the gaps closed, mm. */
  List<Double> gaps() {
    return gaps;
  }

  private static List<Long> key(Chain c) {
    List<Long> key = new ArrayList<>();
    for (Point p : c.points()) {
      add(key, p.at());
      if (p.leg() instanceof Leg.Arc a) {
        key.add(Math.round(a.bulge() / SAME));
      } else if (p.leg() instanceof Leg.Cubic cubic) {
        add(key, cubic.first());
        add(key, cubic.second());
      }
    }
    add(key, c.end());
    return key;
  }

  private static void add(List<Long> key, Vec2 p) {
    key.add(Math.round(p.x() / SAME));
    key.add(Math.round(p.y() / SAME));
  }

  private record Pair(int a, int b, double apart) {}

  private static Vec2 place(List<Chain> chains, int end) {
    Chain c = chains.get(end / 2);
    return end % 2 == 0 ? c.start() : c.end();
  }

  /** End 2k is the start of chain k, 2k + 1 its end; for each the end it meets, or -1. */
  private int[] matched(List<Chain> chains) {
    Map<List<Long>, List<Integer>> cells = new HashMap<>();
    for (int e = 0; e < 2 * chains.size(); e++) {
      List<Integer> cell =
          cells.computeIfAbsent(cell(place(chains, e), 0, 0), k -> new ArrayList<>());
      cell.add(e);
      if (cell.size() > MOST_ENDS) {
        throw budget.refuse(
            chains.get(e / 2).line(),
            "more than " + MOST_ENDS + " ends of lines meet in one place",
            "Save the outline alone in a file of its own");
      }
    }
    List<Pair> pairs = new ArrayList<>();
    for (int e = 0; e < 2 * chains.size(); e++) {
      budget.time();
      for (int i = 0; i < 9; i++) {
        Vec2 at = place(chains, e);
        for (int o : cells.getOrDefault(cell(at, i / 3 - 1, i % 3 - 1), List.of())) {
          double apart = at.distance(place(chains, o));
          if (e < o && apart <= DrawingLimits.JOIN && (e / 2 != o / 2 || mayClose(chains, e))) {
            pairs.add(new Pair(e, o, apart));
          }
        }
      }
    }
    boolean[] loose = loose(pairs, chains.size());
    pairs.removeIf(p -> loose[p.a() / 2] || loose[p.b() / 2]);
    pairs.sort(Comparator.comparingDouble(Pair::apart));
    int[] other = new int[2 * chains.size()];
    Arrays.fill(other, -1);
    for (Pair p : pairs) {
      if (other[p.a()] < 0 && other[p.b()] < 0) {
        other[p.a()] = p.b();
        other[p.b()] = p.a();
      }
    }
    return other;
  }

  /**
   * Chains that lie on no loop: one with an end that meets none, and then those that only it met. A
   * stray line at a corner would else take the place of a side, if it was drawn first.
   */
  private static boolean[] loose(List<Pair> pairs, int chains) {
    List<List<Integer>> meets = new ArrayList<>();
    int[] left = new int[2 * chains];
    for (int e = 0; e < 2 * chains; e++) {
      meets.add(new ArrayList<>());
    }
    for (Pair p : pairs) {
      meets.get(p.a()).add(p.b());
      meets.get(p.b()).add(p.a());
      left[p.a()]++;
      left[p.b()]++;
    }
    boolean[] loose = new boolean[chains];
    Deque<Integer> next = new ArrayDeque<>();
    for (int e = 0; e < 2 * chains; e++) {
      if (left[e] == 0) {
        next.add(e / 2);
      }
    }
    while (!next.isEmpty()) {
      int chain = next.remove();
      if (loose[chain]) {
        continue;
      }
      loose[chain] = true;
      for (int e = 2 * chain; e <= 2 * chain + 1; e++) {
        for (int o : meets.get(e)) {
          if (--left[o] == 0) {
            next.add(o / 2);
          }
        }
      }
    }
    return loose;
  }

  private static List<Long> cell(Vec2 p, int right, int up) {
    return List.of(
        (long) Math.floor(p.x() / DrawingLimits.JOIN) + right,
        (long) Math.floor(p.y() / DrawingLimits.JOIN) + up);
  }

  /** A single short line must not be taken for a loop. */
  private static boolean mayClose(List<Chain> chains, int end) {
    List<Point> points = chains.get(end / 2).points();
    return points.size() > 1 || points.get(0).leg() instanceof Leg.Cubic;
  }

  private void join(List<Chain> chains) {
    int[] other = matched(chains);
    boolean[] used = new boolean[chains.size()];
    for (int first = 0; first < chains.size(); first++) {
      if (!used[first]) {
        follow(chains, other, used, first);
      }
    }
  }

  private void follow(List<Chain> chains, int[] other, boolean[] used, int first) {
    List<Integer> ends = new ArrayList<>();
    int leaving = 2 * first + 1;
    do {
      used[leaving / 2] = true;
      ends.add(leaving);
      int met = other[leaving];
      leaving = met < 0 ? -1 : met ^ 1;
    } while (leaving >= 0 && leaving != 2 * first + 1);
    if (leaving < 0) {
      ends.forEach(e -> open.add(chains.get(e / 2)));
      // The chains on the other side of the first are open too.
      for (int back = other[2 * first]; back >= 0; back = other[back ^ 1]) {
        used[back / 2] = true;
        open.add(chains.get(back / 2));
      }
      return;
    }
    List<Chain> loop = new ArrayList<>();
    for (int e : ends) {
      loop.add(e % 2 == 1 ? chains.get(e / 2) : chains.get(e / 2).reversed());
      gap(e, other[e], chains);
    }
    closed.add(Chain.loop(loop));
  }

  private void gap(int end, int met, List<Chain> chains) {
    double apart = place(chains, end).distance(place(chains, met));
    if (apart >= NO_GAP) {
      gaps.add(apart);
    }
  }
}
