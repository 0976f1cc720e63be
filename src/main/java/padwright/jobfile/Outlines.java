package padwright.jobfile;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import padwright.design.FreeOutline;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.Circle;
import padwright.design.OutlineShape.Ellipse;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Rectangle;
import padwright.design.OutlineShape.Trapezoid;
import padwright.geometry.Bounds;
import padwright.geometry.EllipseArcs;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
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
    if (shape instanceof FreePath f) {
      Bounds box = FreeOutline.of(f).path().bounds();
      return Math.min(box.width(), box.height());
    }
    double across = Math.min(length(shape), width(shape));
    return shape instanceof Trapezoid t ? Math.min(across, Math.min(t.front(), t.back())) : across;
  }

  /** Has no corner and only one side. */
  static boolean round(OutlineShape shape) {
    return shape instanceof Circle || shape instanceof Ellipse;
  }

  /** The names of its sides, in order; a round outline has none. */
  static List<String> sides(OutlineShape shape) {
    if (shape instanceof FreePath f) {
      return IntStream.rangeClosed(1, f.points().size()).mapToObj(k -> "side " + k).toList();
    }
    return round(shape) ? List.of() : List.copyOf(Words.SIDE.all());
  }

  /** How many corners it has to be folded, a rounded one counted. */
  static int corners(OutlineShape shape) {
    return sides(shape).size();
  }

  /** Tells whether a point, from the middle of the bounding box, is inside; radii left aside. */
  static Predicate<Vec2> inside(OutlineShape shape) {
    if (shape instanceof FreePath f) {
      List<Vec2> chords = FreeOutline.of(f).path().flattened(FLAT);
      return p -> Polygons.contains(chords, p);
    }
    double length = length(shape);
    double width = width(shape);
    return p -> contains(shape, length, width, p);
  }

  private static boolean contains(OutlineShape shape, double length, double width, Vec2 p) {
    double across = 2 * p.x() / length;
    double up = 2 * p.y() / width;
    if (round(shape)) {
      return across * across + up * up <= 1;
    }
    double half = length / 2;
    if (shape instanceof Trapezoid t) {
      half = (t.front() + (t.back() - t.front()) * (up + 1) / 2) / 2;
    }
    return Math.abs(up) <= 1 && Math.abs(p.x()) <= half;
  }

  /** The outline itself, the middle of its bounding box at the origin. */
  static Path path(OutlineShape shape) {
    if (shape instanceof FreePath f) {
      return FreeOutline.of(f).path();
    }
    double x = length(shape) / 2;
    double y = width(shape) / 2;
    if (round(shape)) {
      return EllipseArcs.of(x, y);
    }
    if (shape instanceof Trapezoid t) {
      return Path.polygon(
          new Vec2(-t.front() / 2, -y),
          new Vec2(t.front() / 2, -y),
          new Vec2(t.back() / 2, y),
          new Vec2(-t.back() / 2, y));
    }
    return rounded((Rectangle) shape, x, y);
  }

  private static Path rounded(Rectangle r, double x, double y) {
    Vec2[] corners = {new Vec2(-x, -y), new Vec2(x, -y), new Vec2(x, y), new Vec2(-x, y)};
    List<Segment> segments = new ArrayList<>();
    for (int k = 0; k < 4; k++) {
      Vec2 along = Vec2.polar(k * Math.PI / 2);
      double radius = r.radii().get((k + 1) % 4);
      Vec2 from = corners[k].along(along, r.radii().get(k));
      Vec2 to = corners[(k + 1) % 4].along(along, -radius);
      if (from.distance(to) > Limits.ROUNDING) {
        segments.add(Segment.line(from, to));
      }
      if (radius > 0) {
        Vec2 end = corners[(k + 1) % 4].along(along.left(), radius);
        segments.add(new Segment(to, end, Math.tan(Math.PI / 8)));
      }
    }
    return new Path(segments, true);
  }
}
