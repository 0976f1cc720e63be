package padwright.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Plain operations on closed polygons given by their corners; the first is not repeated. */
public final class Polygons {
  /** An edge shorter than this, mm, has no direction worth cutting by. */
  private static final double SHORTEST = 1e-9;

  private Polygons() {}

  /** The area, positive when the corners run anticlockwise. */
  public static double signedArea(List<Vec2> polygon) {
    double sum = 0;
    Vec2 last = polygon.isEmpty() ? Vec2.ZERO : polygon.get(polygon.size() - 1);
    for (Vec2 p : polygon) {
      sum += last.cross(p);
      last = p;
    }
    return sum / 2;
  }

  /** The same polygon anticlockwise. */
  public static List<Vec2> anticlockwise(List<Vec2> polygon) {
    if (signedArea(polygon) >= 0) {
      return polygon;
    }
    List<Vec2> turned = new ArrayList<>(polygon);
    Collections.reverse(turned);
    return turned;
  }

  /**
   * The part of a polygon on the side of a line where {@code normal . p <= offset} (one step of
   * Sutherland and Hodgman, "Reentrant polygon clipping", 1974). A polygon that is not convex may
   * come back in one piece joined along the line; its area is right all the same.
   */
  public static List<Vec2> below(List<Vec2> polygon, Vec2 normal, double offset) {
    List<Vec2> out = new ArrayList<>(polygon.size() + 2);
    if (polygon.isEmpty()) {
      return out;
    }
    Vec2 last = polygon.get(polygon.size() - 1);
    double lastSide = normal.dot(last) - offset;
    for (Vec2 p : polygon) {
      double side = normal.dot(p) - offset;
      if ((side < 0 && lastSide > 0) || (side > 0 && lastSide < 0)) {
        double t = lastSide / (lastSide - side);
        out.add(last.plus(p.minus(last).times(t)));
      }
      if (side <= 0) {
        out.add(p);
      }
      last = p;
      lastSide = side;
    }
    return out;
  }

  /** The part of a polygon inside a convex anticlockwise polygon. */
  public static List<Vec2> inside(List<Vec2> polygon, List<Vec2> convex) {
    List<Vec2> out = polygon;
    for (int i = 0; i < convex.size() && !out.isEmpty(); i++) {
      Vec2 a = convex.get(i);
      Vec2 b = convex.get((i + 1) % convex.size());
      if (a.distance(b) < SHORTEST) {
        continue;
      }
      Vec2 right = b.minus(a).right();
      out = below(out, right, right.dot(a));
    }
    return out;
  }

  /**
   * The area that two simple anticlockwise polygons share, by Green's theorem over the parts of
   * either's edge that lie inside the other. Where edges of the two run along each other the result
   * is uncertain by the length of that run times rounding.
   */
  public static double commonArea(List<Vec2> a, List<Vec2> b) {
    return edgeInside(a, b) + edgeInside(b, a);
  }

  private static double edgeInside(List<Vec2> of, List<Vec2> in) {
    EdgeBands bands = new EdgeBands(in);
    double sum = 0;
    List<Double> cuts = new ArrayList<>();
    for (int i = 0; i < of.size(); i++) {
      Vec2 p = of.get(i);
      Vec2 q = of.get((i + 1) % of.size());
      cuts.clear();
      cuts.add(0.0);
      cuts.add(1.0);
      bands.crossings(p, q, cuts);
      cuts.sort(null);
      Vec2 d = q.minus(p);
      for (int k = 0; k + 1 < cuts.size(); k++) {
        Vec2 from = p.along(d, cuts.get(k));
        Vec2 to = p.along(d, cuts.get(k + 1));
        if (bands.contains(from.midpoint(to))) {
          sum += from.cross(to) / 2;
        }
      }
    }
    return sum;
  }

  /** Whether a point is inside, by counting crossings; a point on the edge may go either way. */
  public static boolean contains(List<Vec2> polygon, Vec2 p) {
    boolean in = false;
    Vec2 a = polygon.get(polygon.size() - 1);
    for (Vec2 b : polygon) {
      if ((a.y() > p.y()) != (b.y() > p.y())
          && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
        in = !in;
      }
      a = b;
    }
    return in;
  }
}
