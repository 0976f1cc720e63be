package padwright.geometry.mesh;

import java.math.BigDecimal;

/**
 * On which side a point lies, answered exactly: the sign of a determinant is taken from double
 * arithmetic where its rounding cannot turn it, else worked out without rounding (the filter of
 * Shewchuk, "Adaptive precision floating-point arithmetic and fast robust geometric predicates",
 * 1997).
 */
final class Predicates {
  /** Half the distance from 1 to the next double: largest relative rounding of one operation. */
  private static final double ROUNDING = 0x1p-53;

  /** Shewchuk's bound for the side of a line: (3 + 16 u) u. */
  private static final double LINE = (3 + 16 * ROUNDING) * ROUNDING;

  /** Shewchuk's bound for the side of a circle: (10 + 96 u) u. */
  private static final double CIRCLE = (10 + 96 * ROUNDING) * ROUNDING;

  private Predicates() {}

  /** 1 where c is left of the line from a to b, -1 right of it, 0 on it. */
  static int orientation(double ax, double ay, double bx, double by, double cx, double cy) {
    double left = (ax - cx) * (by - cy);
    double right = (ay - cy) * (bx - cx);
    double det = left - right;
    if (Math.abs(det) > LINE * (Math.abs(left) + Math.abs(right))) {
      return det > 0 ? 1 : -1;
    }
    BigDecimal x = new BigDecimal(cx);
    BigDecimal y = new BigDecimal(cy);
    return cross(
            new BigDecimal(ax).subtract(x),
            new BigDecimal(ay).subtract(y),
            new BigDecimal(bx).subtract(x),
            new BigDecimal(by).subtract(y))
        .signum();
  }

  /** 1 where d is inside the circle through a, b and c, which run anticlockwise; -1 outside. */
  static int inCircle(
      double ax, double ay, double bx, double by, double cx, double cy, double dx, double dy) {
    double adx = ax - dx;
    double ady = ay - dy;
    double bdx = bx - dx;
    double bdy = by - dy;
    double cdx = cx - dx;
    double cdy = cy - dy;
    double a = adx * adx + ady * ady;
    double b = bdx * bdx + bdy * bdy;
    double c = cdx * cdx + cdy * cdy;
    double det =
        a * (bdx * cdy - cdx * bdy) + b * (cdx * ady - adx * cdy) + c * (adx * bdy - bdx * ady);
    double size =
        a * (Math.abs(bdx * cdy) + Math.abs(cdx * bdy))
            + b * (Math.abs(cdx * ady) + Math.abs(adx * cdy))
            + c * (Math.abs(adx * bdy) + Math.abs(bdx * ady));
    if (Math.abs(det) > CIRCLE * size) {
      return det > 0 ? 1 : -1;
    }
    return exactInCircle(ax, ay, bx, by, cx, cy, dx, dy);
  }

  private static int exactInCircle(
      double ax, double ay, double bx, double by, double cx, double cy, double dx, double dy) {
    BigDecimal x = new BigDecimal(dx);
    BigDecimal y = new BigDecimal(dy);
    BigDecimal px = new BigDecimal(ax).subtract(x);
    BigDecimal py = new BigDecimal(ay).subtract(y);
    BigDecimal qx = new BigDecimal(bx).subtract(x);
    BigDecimal qy = new BigDecimal(by).subtract(y);
    BigDecimal rx = new BigDecimal(cx).subtract(x);
    BigDecimal ry = new BigDecimal(cy).subtract(y);
    return square(px, py)
        .multiply(cross(qx, qy, rx, ry))
        .add(square(qx, qy).multiply(cross(rx, ry, px, py)))
        .add(square(rx, ry).multiply(cross(px, py, qx, qy)))
        .signum();
  }

  private static BigDecimal cross(BigDecimal ax, BigDecimal ay, BigDecimal bx, BigDecimal by) {
    return ax.multiply(by).subtract(ay.multiply(bx));
  }

  private static BigDecimal square(BigDecimal x, BigDecimal y) {
    return x.multiply(x).add(y.multiply(y));
  }
}
