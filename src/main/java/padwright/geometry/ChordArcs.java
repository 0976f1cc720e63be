package padwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiPredicate;

/**
 * Finds the curves of a closed outline that were drawn as chords, and lays arcs through their ends.
 * Of chords in a row that turn by little, the longest stretches whose points lie on one circle
 * become arcs; all else stays as it is.
 *
 * @param path the outline with its arcs
 * @param runs for each of its segments what it was
 * @param error the most that a chord leaves its arc by, mm
 */
public record ChordArcs(Path path, List<Run> runs, double error) {
  /** Fewer chords fix no circle that could be checked: four points. */
  private static final int FEWEST = 3;

  /** Chords that turn more, degrees, are sides that meet in a corner; own choice. */
  private static final double MOST_DEGREES = 10;

  /** Ends given to a thousandth of a mm turn a short chord by as much, radians. */
  private static final double ROUNDED = 1e-3;

  /** A chord further from its arc, mm, is a side; own choice. */
  private static final double MOST_OFF = 1;

  /**
   * Points may lie off their circle by this, mm: what loose ends of a drawing are joined within.
   */
  private static final double ON_CIRCLE = 0.1;

  /** An arc bows by so many times what its points are off it, or it may be another. */
  private static final double SURE = 10;

  /** Points that an arc is chosen by, evenly spread. */
  private static final int LOOKED_AT = 15;

  /** One arc turns no more than a half circle, as far as its points tell. */
  private static final double MOST_SWEEP = Math.PI + 0.02;

  public ChordArcs {
    runs = List.copyOf(runs);
  }

  /**
   * What a segment was.
   *
   * @param first number of the outline's own segment, or of the first of its chords
   * @param count how many: over 1 for an arc laid through chords
   */
  public record Run(int first, int count) {}

  /** How many segments have become arcs. */
  public int chords() {
    return runs.stream().filter(r -> r.count() > 1).mapToInt(Run::count).sum();
  }

  /** How many arcs there are for them. */
  public int arcs() {
    return (int) runs.stream().filter(r -> r.count() > 1).count();
  }

  /**
   * @param outline closed, anticlockwise
   * @param alike whether two neighbours may be parts of one curve
   */
  public static ChordArcs of(Path outline, BiPredicate<Integer, Integer> alike) {
    return new Search(outline.segments(), alike).result(outline);
  }

  private static final class Search {
    private final List<Segment> sides;
    private final boolean[] goesOn;

    Search(List<Segment> sides, BiPredicate<Integer, Integer> alike) {
      this.sides = sides;
      int n = sides.size();
      goesOn = new boolean[n];
      for (int i = 0; i < n; i++) {
        Segment a = sides.get(i);
        Segment b = sides.get((i + 1) % n);
        Vec2 u = a.directionAt(1);
        Vec2 v = b.directionAt(0);
        double turn = Math.atan2(u.cross(v), u.dot(v));
        goesOn[i] =
            !a.isArc()
                && !b.isArc()
                && Math.abs(turn) > Offset.SMOOTH
                && Math.abs(turn) <= Math.toRadians(MOST_DEGREES) + ROUNDED
                && alike.test(i, (i + 1) % n);
      }
    }

    ChordArcs result(Path outline) {
      int n = sides.size();
      int start = start();
      List<Segment> segments = new ArrayList<>();
      List<Run> runs = new ArrayList<>();
      double error = 0;
      int k = 0;
      while (k < n) {
        int i = (start + k) % n;
        int count = longest(i, n - k);
        if (count < FEWEST) {
          segments.add(sides.get(i));
          runs.add(new Run(i, 1));
          k++;
          continue;
        }
        Segment arc = arc(i, count);
        for (int j = 0; j < count; j++) {
          error = Math.max(error, sagitta(sides.get((i + j) % n).chord(), arc.radius()));
        }
        segments.add(arc);
        runs.add(new Run(i, count));
        k += count;
      }
      return runs.size() == n
          ? new ChordArcs(outline, runs, 0)
          : new ChordArcs(new Path(segments, true), runs, error);
    }

    /** A side that no chain runs on into; the first where all is one chain. */
    private int start() {
      int n = sides.size();
      for (int i = 0; i < n; i++) {
        int before = Math.floorMod(i - 1, n);
        if (!goesOn[before]) {
          return i;
        }
      }
      return 0;
    }

    /** The most chords from one on that lie on one circle; 0 where too few do. */
    private int longest(int i, int most) {
      int n = sides.size();
      int chain = 1;
      while (chain < most && goesOn[(i + chain - 1) % n]) {
        chain++;
      }
      int best = 0;
      int good = FEWEST - 1;
      int bad = chain + 1;
      for (int count = FEWEST; count < bad; count = Math.max(count + 1, count * 5 / 4)) {
        Fit fit = fit(i, count);
        if (fit == Fit.NONE) {
          bad = count;
        } else {
          good = count;
          best = fit == Fit.SURE ? count : best;
        }
      }
      // Between what fitted and what did not.
      for (int low = good + 1, high = Math.min(bad - 1, chain); low <= high; ) {
        int count = (low + high) / 2;
        Fit fit = fit(i, count);
        if (fit == Fit.NONE) {
          high = count - 1;
        } else {
          best = fit == Fit.SURE ? Math.max(best, count) : best;
          low = count + 1;
        }
      }
      return best;
    }

    /** Whether chords lie on one circle, and turn enough to tell which. */
    private enum Fit {
      NONE,
      LIKELY,
      SURE
    }

    private Fit fit(int i, int count) {
      Segment arc = arc(i, count);
      if (!arc.isArc()) {
        return Fit.LIKELY;
      }
      if (Math.abs(arc.sweep()) > MOST_SWEEP) {
        return Fit.NONE;
      }
      Vec2 c = arc.centre();
      double r = arc.radius();
      int n = sides.size();
      double off = 0;
      for (int j = 0; j < count; j++) {
        Segment s = sides.get((i + j) % n);
        off = Math.max(off, Math.abs(s.end().distance(c) - r));
        if (off > ON_CIRCLE || s.chord() > 2 * r || sagitta(s.chord(), r) > MOST_OFF) {
          return Fit.NONE;
        }
      }
      double bow = Math.abs(arc.bulge()) * arc.chord() / 2;
      return bow > SURE * off && bow > ON_CIRCLE ? Fit.SURE : Fit.LIKELY;
    }

    /** From the first point to the last, as the middle one of the points between them has it. */
    private Segment arc(int i, int count) {
      int n = sides.size();
      Vec2 from = sides.get(i).start();
      Vec2 to = sides.get((i + count - 1) % n).end();
      int step = Math.max(1, count / LOOKED_AT);
      double[] halves = new double[(count - 2) / step + 1];
      for (int k = 0; k < halves.length; k++) {
        Vec2 p = sides.get((i + 1 + k * step) % n).start();
        Vec2 a = p.minus(from);
        Vec2 b = to.minus(p);
        // The angle between the chords to a point of an arc is half of its sweep.
        halves[k] = Math.atan2(a.cross(b), a.dot(b));
      }
      Arrays.sort(halves);
      double half = halves[halves.length / 2];
      return Math.abs(half) < 1e-9
          ? Segment.line(from, to)
          : new Segment(from, to, Math.tan(half / 2));
    }

    private static double sagitta(double chord, double r) {
      return r - Math.sqrt(Math.max(0, r * r - chord * chord / 4));
    }
  }
}
