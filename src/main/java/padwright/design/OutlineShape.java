package padwright.design;

import java.util.List;
import padwright.geometry.Vec2;

/**
 * The plan shape of a base as the maker gives it, seen from the face, front at the bottom. Length
 * runs left to right, width front to back. All in mm.
 */
public sealed interface OutlineShape {
  /**
   * A rectangle.
   *
   * @param radii corner radii, front left, front right, back right, back left; four entries
   */
  record Rectangle(double length, double width, List<Double> radii) implements OutlineShape {
    public Rectangle {
      radii = List.copyOf(radii);
    }
  }

  /** A symmetric trapezoid: its front and back lengths and its depth front to back. */
  record Trapezoid(double front, double back, double depth) implements OutlineShape {}

  record Circle(double diameter) implements OutlineShape {}

  /** An ellipse by its two axes. */
  record Ellipse(double length, double width) implements OutlineShape {}

  /**
   * A free closed outline: points joined by straight lines, arcs or cubic curves, in either sense
   * of turning. Side k runs from point k to the next, both counted from 1; the last goes back to
   * the first point.
   *
   * @param points at least two; three where all sides are straight
   */
  record FreePath(List<Point> points) implements OutlineShape {
    public FreePath {
      points = List.copyOf(points);
    }
  }

  /** A point of a free outline and the side that leads from it to the next point. */
  record Point(Vec2 at, Leg leg) {}

  /** How a side of a free outline runs to the next point. */
  sealed interface Leg {
    record Straight() implements Leg {}

    /**
     * An arc of a circle.
     *
     * @param bulge tan(a quarter of the angle swept), positive where it turns anticlockwise
     */
    record Arc(double bulge) implements Leg {}

    /** A cubic curve (Bernstein form) with its two control points. */
    record Cubic(Vec2 first, Vec2 second) implements Leg {}
  }
}
