package padwright.design;

import java.util.List;

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
}
