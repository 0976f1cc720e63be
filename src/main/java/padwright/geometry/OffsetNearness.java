package padwright.geometry;

import java.util.List;

/** Tells whether a point is as far from every segment as that was moved. */
final class OffsetNearness {
  /** Pieces this much nearer to the outline than they were moved are inside, mm. */
  static final double NEARER = 1e-4;

  private final List<Segment> segments;
  private final double[] distances;
  private final Bounds[] boxes;

  OffsetNearness(Path outline, double[] distances) {
    this.segments = outline.segments();
    this.distances = distances;
    boxes = new Bounds[distances.length];
    for (int i = 0; i < boxes.length; i++) {
      boxes[i] = segments.get(i).bounds();
    }
  }

  boolean clear(Vec2 p) {
    int n = boxes.length;
    for (int i = 0; i < n; i++) {
      double d = Math.abs(distances[i]) - NEARER;
      if (d <= 0 || outside(boxes[i], p, d)) {
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

  private static boolean outside(Bounds b, Vec2 p, double d) {
    return p.x() < b.minX() - d
        || p.x() > b.maxX() + d
        || p.y() < b.minY() - d
        || p.y() > b.maxY() + d;
  }
}
