package padwright.geometry;

import java.util.List;

/**
 * How far two closed paths are from each other, mm. Arcs are taken as chords that stay within
 * {@link #CHORD_ERROR}, so that a distance is right to twice that; every pair of chords is looked
 * at, for paths of some hundred segments.
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
    return edges(p, q);
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
      if (!Polygons.contains(q, v)) {
        out = Math.max(out, toEdge(v, q));
      }
    }
    return out > 0 ? -out : edges(p, q);
  }

  /** Distance of a point from the area of a closed path; 0 inside. */
  public static double toArea(Vec2 p, Path area) {
    if (Polygons.contains(area.flattened(CHORD_ERROR), p)) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    for (Segment s : area.segments()) {
      least = Math.min(least, s.distanceTo(p));
    }
    return least;
  }

  private static double toEdge(Vec2 p, List<Vec2> polygon) {
    double least = Double.POSITIVE_INFINITY;
    Vec2 last = polygon.get(polygon.size() - 1);
    for (Vec2 v : polygon) {
      least = Math.min(least, toLine(p, last, v));
      last = v;
    }
    return least;
  }

  private static double edges(List<Vec2> p, List<Vec2> q) {
    double least = Double.POSITIVE_INFINITY;
    Vec2 a = p.get(p.size() - 1);
    for (Vec2 b : p) {
      Vec2 c = q.get(q.size() - 1);
      for (Vec2 d : q) {
        if (crossing(a, b, c, d)) {
          return 0;
        }
        double near = Math.min(toLine(a, c, d), toLine(c, a, b));
        least = Math.min(least, near);
        c = d;
      }
      a = b;
    }
    return least;
  }

  private static boolean crossing(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }

  private static double side(Vec2 a, Vec2 b, Vec2 p) {
    return b.minus(a).cross(p.minus(a));
  }

  private static double toLine(Vec2 p, Vec2 a, Vec2 b) {
    return Segment.line(a, b).distanceTo(p);
  }
}
