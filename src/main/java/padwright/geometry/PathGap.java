package padwright.geometry;

import java.util.List;

/**
 * How far two closed paths are from each other, mm: the least distance of either's points from the
 * other's segments. Points of arcs are the ends of chords that stay within {@link #CHORD_ERROR}, so
 * that a distance is right to about twice that.
 */
public final class PathGap {
  /** How far chords may leave the arcs, mm: a tenth of what a knife can follow. */
  public static final double CHORD_ERROR = 0.01;

  private PathGap() {}

  /** The least distance between two areas; 0 where they overlap, touch or hold each other. */
  public static double between(Path a, Path b) {
    List<Vec2> p = a.flattened(CHORD_ERROR);
    List<Vec2> q = b.flattened(CHORD_ERROR);
    if (Polygons.contains(p, q.get(0)) || Polygons.contains(q, p.get(0))) {
      return 0;
    }
    return edges(a, p, b, q);
  }

  /**
   * How far inside another path one lies: the board left round it. Negative where it reaches out:
   * by how far its furthest point lies outside.
   */
  public static double inside(Path inner, Path outer) {
    List<Vec2> p = inner.flattened(CHORD_ERROR);
    List<Vec2> q = outer.flattened(CHORD_ERROR);
    double out = 0;
    for (Vec2 v : p) {
      out = Math.max(out, toArea(v, outer, q));
    }
    return out > 0 ? -out : edges(inner, p, outer, q);
  }

  /** Distance of a point from the area of a closed path; 0 inside. */
  public static double toArea(Vec2 p, Path area) {
    return toArea(p, area, area.flattened(CHORD_ERROR));
  }

  private static double toArea(Vec2 p, Path area, List<Vec2> chords) {
    if (Polygons.contains(chords, p)) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    for (Segment s : area.segments()) {
      least = Math.min(least, s.distanceTo(p));
    }
    return least;
  }

  /** The least distance of a closed path's edge from a line or arc that does not cross it. */
  public static double toSegment(Path area, Segment s) {
    double least = Double.POSITIVE_INFINITY;
    for (Vec2 v : area.flattened(CHORD_ERROR)) {
      least = Math.min(least, s.distanceTo(v));
    }
    return toEdges(new Path(List.of(s), false).flattened(CHORD_ERROR), area, least);
  }

  /** Least distance between two edges; 0 where they cross. */
  private static double edges(Path a, List<Vec2> p, Path b, List<Vec2> q) {
    if (Crossings.between(a, b).isPresent()) {
      return 0;
    }
    return toEdges(q, a, toEdges(p, b, Double.POSITIVE_INFINITY));
  }

  private static double toEdges(List<Vec2> points, Path path, double least) {
    for (Segment s : path.segments()) {
      Bounds box = s.bounds();
      for (Vec2 v : points) {
        double dx = Math.max(0, Math.max(box.minX() - v.x(), v.x() - box.maxX()));
        double dy = Math.max(0, Math.max(box.minY() - v.y(), v.y() - box.maxY()));
        if (dx * dx + dy * dy < least * least) {
          least = Math.min(least, s.distanceTo(v));
        }
      }
    }
    return least;
  }
}
