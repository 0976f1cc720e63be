package padwright.geometry;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What becomes of a closed outline that is moved inwards: one outline again, several where it comes
 * apart at a neck, or one that lacks an arm narrower than what is taken off both its sides. A short
 * side that drops out while its neighbours close up over it is no loss: moved out again by as much,
 * with mitred corners, the outline is there once more.
 *
 * @param loops what is left, the largest first
 * @param usedUp a place of the outline that nothing is left of, though something is elsewhere
 */
public record MovedIn(List<Path> loops, Optional<Vec2> usedUp) {
  /** A place counts as lost when moving out again misses it by more, mm. */
  private static final double LOST = 0.5;

  /** Chords of arcs where a point is looked for inside, mm. */
  private static final double CHORD = 0.05;

  /** Lines belong together when they run one way: cosine of 18 degrees. */
  private static final double ALONG = 0.95;

  private static final double[] SAMPLES = {0.25, 0.5, 0.75};
  private static final double[] ALL = {0.5, 0.01, 0.1, 0.25, 0.75, 0.9, 0.99};

  public MovedIn {
    loops = List.copyOf(loops);
  }

  /** One outline, and no place lost. */
  public boolean whole() {
    return loops.size() == 1 && usedUp.isEmpty();
  }

  /**
   * @param outline closed, simple, anticlockwise
   * @param distance how far it is moved outwards: 0 or less
   */
  public static MovedIn of(Path outline, double distance) {
    double[] each = new double[outline.segments().size()];
    Arrays.fill(each, distance);
    return of(outline, each, each);
  }

  /** Only what is left, where it does not matter whether a place of it is lost. */
  public static List<Path> loops(Path outline, double distance) {
    double[] each = new double[outline.segments().size()];
    Arrays.fill(each, distance);
    return Offset.all(outline, each, each);
  }

  /** The same with a distance for each end of each segment. */
  public static MovedIn of(Path outline, double[] starts, double[] ends) {
    if (Arrays.stream(starts).allMatch(d -> d == 0) && Arrays.stream(ends).allMatch(d -> d == 0)) {
      return new MovedIn(List.of(outline), Optional.empty());
    }
    List<Path> loops = Offset.all(outline, starts, ends);
    if (loops.size() != 1 || Arrays.stream(starts).anyMatch(d -> d > 0)) {
      return new MovedIn(loops, Optional.empty());
    }
    return new MovedIn(loops, lost(outline, loops.get(0), starts, ends));
  }

  private static Optional<Vec2> lost(Path outline, Path moved, double[] starts, double[] ends) {
    List<Segment> sides = outline.segments();
    double[] out = new double[moved.segments().size()];
    TreeSet<Integer> gone = new TreeSet<>();
    for (int i = 0; i < sides.size(); i++) {
      gone.add(i);
    }
    for (int k = 0; k < out.length; k++) {
      // One moved side may stand for two that were in line.
      for (double at : ALL) {
        int i = origin(sides, moved.segments().get(k), at, starts, ends);
        if (i >= 0) {
          out[k] = -Math.min(starts[i], ends[i]);
          gone.remove(i);
        }
      }
    }
    if (gone.isEmpty()) {
      return Optional.empty();
    }
    List<Path> back = Offset.all(moved, out, out);
    for (int i : gone) {
      for (double at : SAMPLES) {
        Vec2 p = sides.get(i).pointAt(at);
        if (back.stream().noneMatch(b -> near(b, p))) {
          return Optional.of(p);
        }
      }
    }
    return Optional.empty();
  }

  /** The side that a moved one came from; -1 where none runs beside it so far away. */
  private static int origin(
      List<Segment> sides, Segment moved, double at, double[] starts, double[] ends) {
    Vec2 p = moved.pointAt(at);
    Vec2 along = moved.directionAt(at);
    int best = -1;
    double least = LOST;
    for (int i = 0; i < sides.size(); i++) {
      Segment s = sides.get(i);
      double most = -Math.min(starts[i], ends[i]);
      double fewest = -Math.max(starts[i], ends[i]);
      double away = s.distanceTo(p);
      double off = Math.max(0, Math.max(away - most, fewest - away));
      if (off < least && directionNear(s, p).dot(along) > ALONG) {
        least = off;
        best = i;
      }
    }
    return best;
  }

  private static Vec2 directionNear(Segment s, Vec2 p) {
    if (!s.isArc()) {
      return s.directionAt(0);
    }
    Vec2 out = p.minus(s.centre()).unit();
    return s.bulge() > 0 ? out.left() : out.right();
  }

  private static boolean near(Path path, Vec2 p) {
    if (path.segments().stream().anyMatch(s -> s.distanceTo(p) <= LOST)) {
      return true;
    }
    return Polygons.contains(path.flattened(CHORD), p);
  }
}
