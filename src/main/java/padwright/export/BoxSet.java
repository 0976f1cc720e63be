package padwright.export;

import java.util.Arrays;
import padwright.geometry.Vec2;

/** Boxes already taken, kept as plain numbers so that asking costs no trigonometry. */
final class BoxSet {
  private static final int FIELDS = 7;

  /** Keeps the rounding of a root from hiding two boxes that just touch. */
  private static final double SAFE = 1 + 1e-12;

  private double[] data = new double[FIELDS * 64];
  private int used;
  private int last;

  void add(Box b) {
    if (used == data.length) {
      data = Arrays.copyOf(data, 2 * data.length);
    }
    data[used] = b.centre().x();
    data[used + 1] = b.centre().y();
    data[used + 2] = Math.cos(b.angle());
    data[used + 3] = Math.sin(b.angle());
    data[used + 4] = b.width() / 2;
    data[used + 5] = b.height() / 2;
    data[used + 6] = Math.sqrt(data[used + 4] * data[used + 4] + data[used + 5] * data[used + 5]);
    used += FIELDS;
  }

  /** True where one of them shares a point with a box of half sides {@code hw}, {@code hh}. */
  boolean anyMeets(double x, double y, double ux, double uy, double hw, double hh) {
    double reach = Math.sqrt(hw * hw + hh * hh) * SAFE;
    // The one that was met last is mostly met again by the next place tried.
    if (last < used && meets(last, reach, x, y, ux, uy, hw, hh)) {
      return true;
    }
    for (int i = 0; i < used; i += FIELDS) {
      if (meets(i, reach, x, y, ux, uy, hw, hh)) {
        last = i;
        return true;
      }
    }
    return false;
  }

  private boolean meets(
      int i, double reach, double x, double y, double ux, double uy, double hw, double hh) {
    double dx = data[i] - x;
    double dy = data[i + 1] - y;
    double most = reach + data[i + 6];
    if (dx * dx + dy * dy > most * most) {
      return false;
    }
    double vx = data[i + 2];
    double vy = data[i + 3];
    double c = Math.abs(ux * vx + uy * vy);
    double s = Math.abs(ux * vy - uy * vx);
    double w = data[i + 4];
    double h = data[i + 5];
    return Math.abs(dx * ux + dy * uy) <= hw + c * w + s * h
        && Math.abs(dy * ux - dx * uy) <= hh + s * w + c * h
        && Math.abs(dx * vx + dy * vy) <= w + c * hw + s * hh
        && Math.abs(dy * vx - dx * vy) <= h + s * hw + c * hh;
  }

  /** True where a straight line has a point in one of them. */
  boolean anyOn(Vec2 p, Vec2 q) {
    for (int i = 0; i < used; i += FIELDS) {
      double ux = data[i + 2];
      double uy = data[i + 3];
      double ax = p.x() - data[i];
      double ay = p.y() - data[i + 1];
      double bx = q.x() - data[i];
      double by = q.y() - data[i + 1];
      if (Box.crosses(
          ax * ux + ay * uy,
          ay * ux - ax * uy,
          bx * ux + by * uy,
          by * ux - bx * uy,
          data[i + 4],
          data[i + 5])) {
        return true;
      }
    }
    return false;
  }
}
