package padwright.geometry;

import java.util.List;

/**
 * Two arcs from one point and direction to another that share a tangent where they meet; of the
 * many such pairs the one with equal tangent lengths (the usual biarc).
 */
public final class Biarc {
  /** Directions nearer than this to parallel leave no square root to take. */
  private static final double PARALLEL = 1e-12;

  private Biarc() {}

  /**
   * @param tp unit direction of travel at p
   * @param tq the same at q
   */
  public static List<Segment> between(Vec2 p, Vec2 tp, Vec2 q, Vec2 tq) {
    Vec2 v = q.minus(p);
    Vec2 t = tp.plus(tq);
    double bend = 2 * (1 - tp.dot(tq));
    double vt = v.dot(t);
    double d =
        bend < PARALLEL
            ? v.dot(v) / (4 * v.dot(tq))
            : (-vt + Math.sqrt(vt * vt + bend * v.dot(v))) / bend;
    Vec2 joint = p.along(tp, d).midpoint(q.along(tq, -d));
    return List.of(arcWithTangent(p, tp, joint), arcWithTangent(q, tq.times(-1), joint).reversed());
  }

  /** The arc from p in a direction to an end. */
  private static Segment arcWithTangent(Vec2 p, Vec2 tangent, Vec2 end) {
    Vec2 chord = end.minus(p).unit();
    double half = Math.atan2(tangent.cross(chord), tangent.dot(chord));
    return new Segment(p, end, Math.tan(half / 2));
  }
}
