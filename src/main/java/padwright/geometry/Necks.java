package padwright.geometry;

import java.util.List;

/**
 * The narrowest place of a closed outline: the shortest way straight in from one of its sides to
 * another that faces it. Looked for from points along every side, so that it may be missed by as
 * much as half their distance makes on a side that lies aslant.
 */
public final class Necks {
  /** Points stand about this far apart along a side, mm. */
  private static final double STEP = 10;

  /** At most so many on one side. */
  private static final int MOST = 24;

  /** Sides face each other when the angle between them is under 60 degrees. */
  private static final double FACING = -0.5;

  private Necks() {}

  /** Its width, mm; infinite where no two sides face each other. */
  public static double narrowest(Path outline) {
    List<Segment> segments = outline.segments();
    int n = segments.size();
    Bounds all = outline.bounds();
    double reach = all.width() + all.height();
    double least = Double.POSITIVE_INFINITY;
    Boxes boxes = Boxes.of(segments);
    for (int i = 0; i < n; i++) {
      Segment s = segments.get(i);
      int points = (int) Math.max(1, Math.min(MOST, Math.round(s.length() / STEP)));
      for (int k = 0; k < points; k++) {
        double at = (k + 0.5) / points;
        Vec2 p = s.pointAt(at);
        Vec2 in = s.directionAt(at).left();
        Segment ray = Segment.line(p, p.along(in, Math.min(reach, least)));
        for (int j : boxes.meeting(ray.bounds())) {
          if (j != i) {
            least = Math.min(least, width(p, in, ray, segments.get(j), least));
          }
        }
      }
    }
    return least;
  }

  /** How far along a ray it meets a side that faces it, if it is less than the least so far. */
  private static double width(Vec2 p, Vec2 in, Segment ray, Segment other, double least) {
    double width = least;
    for (Vec2 q : Intersections.between(ray, other)) {
      double away = q.distance(p);
      if (away > 1e-6 && away < width && facing(other, q, in) < FACING) {
        width = away;
      }
    }
    return width;
  }

  /** The cosine between the way in and the inward normal of what it meets. */
  private static double facing(Segment other, Vec2 at, Vec2 in) {
    if (!other.isArc()) {
      return other.directionAt(0).left().dot(in);
    }
    Vec2 towards = other.centre().minus(at).unit();
    return (other.bulge() > 0 ? towards : towards.times(-1)).dot(in);
  }
}
