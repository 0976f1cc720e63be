package padwright.drawing;

import java.util.List;
import padwright.design.OutlineShape.FreePath;
import padwright.geometry.Vec2;

/**
 * An outline read from a drawing. All in mm, y up, to a thousandth; the lower left of the outline's
 * bounding box is the origin.
 *
 * @param outline the outermost loop
 * @param length of its bounding box, left to right
 * @param width of its bounding box, front to back
 * @param openings the loops inside it
 */
public record DrawnOutline(
    FreePath outline, double length, double width, List<Opening> openings, DrawingReport report) {
  public DrawnOutline {
    openings = List.copyOf(openings);
  }

  /**
   * A loop inside the outline, which may be a cut-out.
   *
   * @param at the middle of its bounding box, from the middle of the outline's
   */
  public record Opening(FreePath path, double length, double width, Vec2 at) {}
}
