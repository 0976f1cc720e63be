package padwright.geometry;

import java.util.List;

/** Tells whether a point is as far from every segment as that was moved. */
final class OffsetNearness {
  /** Pieces this much nearer to the outline than they were moved are inside, mm. */
  static final double NEARER = 1e-4;

  private final List<Segment> segments;
  private final double[] distances;
  private final double furthest;
  private final Boxes boxes;

  OffsetNearness(Path outline, double[] distances) {
    this.segments = outline.segments();
    this.distances = distances;
    boxes = Boxes.of(segments);
    double most = 0;
    for (double d : distances) {
      most = Math.max(most, Math.abs(d));
    }
    furthest = most;
  }

  boolean clear(Vec2 p) {
    int n = segments.size();
    for (int i : boxes.near(p, furthest)) {
      double d = Math.abs(distances[i]) - NEARER;
      if (d <= 0) {
        continue;
      }
      Segment s = segments.get(i);
      Vec2 q = s.nearest(p);
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
      if (away < Math.abs(distances[other]) - NEARER) {
        return false;
      }
    }
    return true;
  }
}
