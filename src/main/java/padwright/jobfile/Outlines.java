package padwright.jobfile;

import padwright.design.FreeOutline;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.Circle;
import padwright.design.OutlineShape.Ellipse;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Rectangle;
import padwright.design.OutlineShape.Trapezoid;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;

/** What a job file's checks must know of an outline, mm. Java 17 has no pattern switch. */
final class Outlines {
  /** Chords may leave an arc by this where a point is looked for inside, mm. */
  private static final double FLAT = 0.1;

  private Outlines() {}

  /** Left to right, at its longest. */
  static double length(OutlineShape shape) {
    if (shape instanceof Rectangle r) {
      return r.length();
    } else if (shape instanceof Trapezoid t) {
      return Math.max(t.front(), t.back());
    } else if (shape instanceof Ellipse e) {
      return e.length();
    } else if (shape instanceof FreePath f) {
      return FreeOutline.of(f).path().bounds().width();
    }
    return ((Circle) shape).diameter();
  }

  /** Front to back. */
  static double width(OutlineShape shape) {
    if (shape instanceof Rectangle r) {
      return r.width();
    } else if (shape instanceof Trapezoid t) {
      return t.depth();
    } else if (shape instanceof Ellipse e) {
      return e.width();
    } else if (shape instanceof FreePath f) {
      return FreeOutline.of(f).path().bounds().height();
    }
    return ((Circle) shape).diameter();
  }

  /** The shortest way across. */
  static double shorterSide(OutlineShape shape) {
    double across = Math.min(length(shape), width(shape));
    return shape instanceof Trapezoid t ? Math.min(across, Math.min(t.front(), t.back())) : across;
  }

  /** Has no corner and only one side. */
  static boolean round(OutlineShape shape) {
    return shape instanceof Circle || shape instanceof Ellipse;
  }

  /** Whether a point, from the middle of the bounding box, lies inside; corner radii left aside. */
  static boolean contains(OutlineShape shape, double x, double y) {
    if (shape instanceof FreePath f) {
      return Polygons.contains(FreeOutline.of(f).path().flattened(FLAT), new Vec2(x, y));
    }
    double across = 2 * x / length(shape);
    double up = 2 * y / width(shape);
    if (round(shape)) {
      return across * across + up * up <= 1;
    }
    double half = length(shape) / 2;
    if (shape instanceof Trapezoid t) {
      half = (t.front() + (t.back() - t.front()) * (up + 1) / 2) / 2;
    }
    return Math.abs(up) <= 1 && Math.abs(x) <= half;
  }
}
