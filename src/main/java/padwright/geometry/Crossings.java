package padwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds where a path of lines and arcs meets itself or another path. Touching counts, nearer than
 * {@link Intersections#TOUCH}; that two neighbours share their joint does not.
 *
 * <p>A sweep along x over the segments' boxes, sorted by their left sides: only segments whose
 * boxes share a point are looked at, so that some thousand segments take a few milliseconds. A
 * segment without length, or one so short that its neighbours nearly touch over it, is taken for a
 * point.
 */
public final class Crossings {
  /** A piece to this length, mm, is a point: over it, its neighbours would seem to touch. */
  private static final double POINT = 10 * Intersections.TOUCH;

  private Crossings() {}

  /**
   * A place where two segments meet.
   *
   * @param first index of the segment, from 0
   * @param second index of the other one: a later one of the same path, or one of the other path
   */
  public record Crossing(int first, int second, Vec2 at) {}

  /** A segment with its box, of path 0 or 1. */
  private record Boxed(int path, int index, Segment segment, Bounds box) {}

  /** The crossing of a path with itself whose two segments come first along it. */
  public static Optional<Crossing> first(Path path) {
    return sweep(boxes(0, path), path, false);
  }

  /** The same of two paths: the first segment of {@code a} that meets {@code b}. */
  public static Optional<Crossing> between(Path a, Path b) {
    List<Boxed> all = boxes(0, a);
    all.addAll(boxes(1, b));
    return sweep(all, a, true);
  }

  private static List<Boxed> boxes(int path, Path of) {
    List<Boxed> list = new ArrayList<>();
    for (int i = 0; i < of.segments().size(); i++) {
      Segment s = of.segments().get(i);
      if (!isPoint(s)) {
        list.add(new Boxed(path, i, s, s.bounds().grown(Intersections.TOUCH)));
      }
    }
    return list;
  }

  private static boolean isPoint(Segment s) {
    return s.chord() <= POINT;
  }

  private static Optional<Crossing> sweep(List<Boxed> all, Path path, boolean two) {
    Boxed[] byLeft = all.toArray(Boxed[]::new);
    Arrays.sort(byLeft, Comparator.comparingDouble(b -> b.box().minX()));
    Boxed[] open = new Boxed[byLeft.length];
    int count = 0;
    Crossing best = null;
    for (Boxed next : byLeft) {
      int kept = 0;
      for (int k = 0; k < count; k++) {
        Boxed other = open[k];
        if (other.box().maxX() < next.box().minX()) {
          continue;
        }
        open[kept++] = other;
        if (two == (other.path() != next.path()) && other.box().overlaps(next.box())) {
          best = better(best, other, next, path, two);
        }
      }
      count = kept;
      open[count++] = next;
    }
    return Optional.ofNullable(best);
  }

  /** The pair's crossing if it has one that comes before the best so far. */
  private static Crossing better(Crossing best, Boxed x, Boxed y, Path path, boolean two) {
    boolean ordered = two ? x.path() == 0 : x.index() < y.index();
    Boxed a = ordered ? x : y;
    Boxed b = ordered ? y : x;
    if (best != null
        && (a.index() > best.first() || a.index() == best.first() && b.index() > best.second())) {
      return best;
    }
    List<Vec2> points = two ? Intersections.between(a.segment(), b.segment()) : ofOne(path, a, b);
    Segment along = a.segment();
    return points.stream()
        .min(Comparator.comparingDouble(p -> p.distance(along.start())))
        .map(p -> new Crossing(a.index(), b.index(), p))
        .orElse(best);
  }

  private static List<Vec2> ofOne(Path path, Boxed a, Boxed b) {
    boolean after = joined(path, a.index(), b.index());
    boolean before = joined(path, b.index(), a.index());
    if (!after && !before) {
      return Intersections.between(a.segment(), b.segment());
    }
    Vec2 joint = after ? a.segment().end() : a.segment().start();
    List<Vec2> points = new ArrayList<>(Intersections.besides(a.segment(), b.segment(), joint));
    points.removeIf(p -> after && nearJoint(p, a.segment().end(), b.segment().start()));
    // Where two segments make the whole path they share both joints.
    points.removeIf(p -> before && nearJoint(p, a.segment().start(), b.segment().end()));
    return points;
  }

  /** Whether a point is where two neighbours meet, the points between them counted in. */
  private static boolean nearJoint(Vec2 p, Vec2 one, Vec2 other) {
    double reach = 2 * (one.distance(other) + Intersections.TOUCH);
    return p.distance(one) <= reach;
  }

  /** Whether the path goes on from one segment to the other, through none but points. */
  private static boolean joined(Path path, int from, int to) {
    int n = path.segments().size();
    int i = from;
    do {
      i++;
      if (i == n) {
        if (!path.closed()) {
          return false;
        }
        i = 0;
      }
      if (i == to) {
        return true;
      }
    } while (i != from && isPoint(path.segments().get(i)));
    return false;
  }
}
