package padwright.geometry;

import java.util.List;

/** Tells whether a point is as far from every segment as that was moved. */
final class OffsetNearness {
  /** Pieces this much nearer to the outline than they were moved are inside, mm. */
  static final double NEARER = 1e-4;

  private final List<Segment> segments;
  private final double[] starts;
  private final double[] ends;
  private final double furthest;
  private final Boxes boxes;

  OffsetNearness(Path outline, double[] starts, double[] ends) {
    this.segments = outline.segments();
    this.starts = starts;
    this.ends = ends;
    boxes = Boxes.of(segments);
    double most = 0;
    for (double d : starts) {
      most = Math.max(most, Math.abs(d));
    }
    for (double d : ends) {
      most = Math.max(most, Math.abs(d));
    }
    furthest = most;
  }

  /**
   * @param corner number of the side before a corner whose two sides do not count: the place lies
   *     on what joins them; -1 for none
   */
  boolean clear(Vec2 p, int corner) {
    int n = segments.size();
    for (int i : boxes.near(p, furthest)) {
      if (corner >= 0 && (i == corner || i == (corner + 1) % n)) {
        continue;
      }
      Segment s = segments.get(i);
      Vec2 q = s.nearest(p);
      double d = movedAt(i, q) - NEARER;
      if (d <= 0) {
        continue;
      }
      double away = q.distance(p);
      if (away >= d) {
        continue;
      }
      boolean atStart = q.distance(s.start()) < 1e-9;
      boolean atEnd = q.distance(s.end()) < 1e-9;
      if (!atStart && !atEnd) {
        return false;
      }
      // Past an end, the corner there counts as far as both of its sides were moved.
      int other = atStart ? (i + n - 1) % n : (i + 1) % n;
      if (away < movedAt(other, q) - NEARER) {
        return false;
      }
    }
    return true;
  }

  /** How far a place of a segment was moved square to it, at least: a line may lie aslant. */
  private double movedAt(int i, Vec2 q) {
    double from = Math.abs(starts[i]);
    double to = Math.abs(ends[i]);
    if (from == to) {
      return from;
    }
    Segment s = segments.get(i);
    double share = q.distance(s.start()) / s.length();
    double slope = (to - from) / s.length();
    // The nearest place of the outline to one of a slanting line lies beside its foot.
    return (from + (to - from) * share) / Math.hypot(1, slope) - Math.abs(to - from);
  }
}
