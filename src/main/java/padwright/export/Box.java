package padwright.export;

import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

/**
 * A rectangle at any angle: the room a label takes. mm.
 *
 * @param width along {@code angle}
 * @param height across it
 * @param angle radians
 */
public record Box(Vec2 centre, double width, double height, double angle) {
  public Box grown(double by) {
    return new Box(centre, width + 2 * by, height + 2 * by, angle);
  }

  /** The point at fractions of its width and height from its middle, -0.5 to 0.5. */
  public Vec2 at(double along, double across) {
    Vec2 u = Vec2.polar(angle);
    return centre.along(u, along * width).along(u.left(), across * height);
  }

  /** The upright box that holds it. */
  public Bounds bounds() {
    Vec2 u = Vec2.polar(angle);
    double hx = (Math.abs(u.x()) * width + Math.abs(u.y()) * height) / 2;
    double hy = (Math.abs(u.y()) * width + Math.abs(u.x()) * height) / 2;
    return new Bounds(centre.x() - hx, centre.y() - hy, centre.x() + hx, centre.y() + hy);
  }

  public boolean contains(Vec2 p) {
    Vec2 u = Vec2.polar(angle);
    Vec2 d = p.minus(centre);
    return Math.abs(d.dot(u)) <= width / 2 && Math.abs(d.cross(u)) <= height / 2;
  }

  /** True where the two share a point; by separating axes, the sides of either. */
  public boolean meets(Box o) {
    return !apart(this, o) && !apart(o, this);
  }

  private static boolean apart(Box a, Box b) {
    Vec2 u = Vec2.polar(a.angle);
    Vec2 d = b.centre.minus(a.centre);
    double c = Math.abs(Math.cos(b.angle - a.angle));
    double s = Math.abs(Math.sin(b.angle - a.angle));
    return Math.abs(d.dot(u)) > (a.width + c * b.width + s * b.height) / 2
        || Math.abs(d.cross(u)) > (a.height + s * b.width + c * b.height) / 2;
  }

  /** True where the straight line from {@code p} to {@code q} has a point in it. */
  public boolean meets(Vec2 p, Vec2 q) {
    Vec2 u = Vec2.polar(angle);
    Vec2 a = p.minus(centre);
    Vec2 b = q.minus(centre);
    return crosses(a.dot(u), u.cross(a), b.dot(u), u.cross(b), width / 2, height / 2);
  }

  /**
   * The part of a straight line that lies in it, as fractions of the way from {@code p} to {@code
   * q}; null where none does.
   */
  double[] span(Vec2 p, Vec2 q) {
    Vec2 u = Vec2.polar(angle);
    Vec2 a = p.minus(centre);
    Vec2 d = q.minus(p);
    double[] x = slab(a.dot(u), d.dot(u), width / 2);
    double[] y = slab(u.cross(a), u.cross(d), height / 2);
    double in = Math.max(0, Math.max(x[0], y[0]));
    double out = Math.min(1, Math.min(x[1], y[1]));
    return in <= out ? new double[] {in, out} : null;
  }

  /** Where a + t d lies between -half and half. */
  private static double[] slab(double a, double d, double half) {
    if (d == 0) {
      double far = Double.POSITIVE_INFINITY;
      return Math.abs(a) <= half ? new double[] {-far, far} : new double[] {far, -far};
    }
    double t1 = (-half - a) / d;
    double t2 = (half - a) / d;
    return new double[] {Math.min(t1, t2), Math.max(t1, t2)};
  }

  /** Whether a line has a point in an upright box about the origin: it is clipped to it. */
  static boolean crosses(double ax, double ay, double bx, double by, double hw, double hh) {
    double dx = bx - ax;
    double dy = by - ay;
    double in = 0;
    double out = 1;
    if (dx == 0) {
      if (Math.abs(ax) > hw) {
        return false;
      }
    } else {
      double t1 = (-hw - ax) / dx;
      double t2 = (hw - ax) / dx;
      in = Math.max(in, Math.min(t1, t2));
      out = Math.min(out, Math.max(t1, t2));
    }
    if (dy == 0) {
      if (Math.abs(ay) > hh) {
        return false;
      }
    } else {
      double t1 = (-hh - ay) / dy;
      double t2 = (hh - ay) / dy;
      in = Math.max(in, Math.min(t1, t2));
      out = Math.min(out, Math.max(t1, t2));
    }
    return in <= out;
  }
}
