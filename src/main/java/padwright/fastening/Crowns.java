package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import padwright.fastening.StapleLine.Place;
import padwright.geometry.Vec2;

/**
 * The room that crowns take: two staples cannot be driven where one's crown would lie on the
 * other's. Lengths in mm; the rule is plain geometry.
 */
final class Crowns {
  /** Left between the ends of two crowns in a row, mm; own choice, so that a stapler gets in. */
  static final double APART = 1;

  /** Crowns that stand at an angle may come this near, mm: more than a wire's thickness of 0.7. */
  private static final double NEAREST = 0.9;

  private final double crown;
  private final List<Place> taken = new ArrayList<>();

  Crowns(double crown) {
    this.crown = crown;
  }

  /** Closest that staples in a row can stand, middle to middle. */
  static double pitch(double crown) {
    return crown + APART;
  }

  /** Whether a staple here would meet none that has its place already. */
  boolean free(Place p) {
    for (Place q : taken) {
      if (p.at().distance(q.at()) < crown + NEAREST && apart(p, q) < NEAREST) {
        return false;
      }
    }
    return true;
  }

  void take(Place p) {
    taken.add(p);
  }

  private double apart(Place p, Place q) {
    Vec2 a = end(p, -1);
    Vec2 b = end(p, 1);
    Vec2 c = end(q, -1);
    Vec2 d = end(q, 1);
    boolean crossing = side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    return crossing
        ? 0
        : Math.min(
            Math.min(toLine(a, c, d), toLine(b, c, d)), Math.min(toLine(c, a, b), toLine(d, a, b)));
  }

  private Vec2 end(Place p, int sign) {
    return p.at().along(Vec2.polar(p.angle()), sign * crown / 2);
  }

  private static double side(Vec2 a, Vec2 b, Vec2 p) {
    return b.minus(a).cross(p.minus(a));
  }

  private static double toLine(Vec2 p, Vec2 a, Vec2 b) {
    Vec2 d = b.minus(a);
    double t = Math.max(0, Math.min(1, p.minus(a).dot(d) / Math.max(1e-12, d.dot(d))));
    return a.along(d, t).distance(p);
  }
}
