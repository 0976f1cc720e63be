package padwright.shape;

import java.util.List;
import padwright.geometry.Path;

/**
 * What the pad will look like: its base outline, its section and the sizes that follow.
 *
 * @param outline base outline, closed, anticlockwise seen from the face, front at the bottom, the
 *     middle of its bounding box at the origin
 * @param sideNames a name for each segment of {@code outline}, such as "front" or "front right
 *     corner"
 * @param length base size along x
 * @param width base size along y
 * @param sections across the edge of each side
 * @param ends where the covering ends along each side
 * @param foam cut outline of each foam layer, from the board upwards
 * @param finishedHeight from the board's back to the face
 */
public record PadShape(
    Path outline,
    List<String> sideNames,
    EdgeSections sections,
    double length,
    double width,
    List<Path> foam,
    double finishedLength,
    double finishedWidth,
    double finishedHeight,
    List<Double> bareGap,
    EdgeEnds ends) {
  /** The section of every side that was not given another. */
  public Section section() {
    return sections.usual();
  }

  /** A shape whose covering ends alike all round. */
  public PadShape(
      Path outline,
      List<String> sideNames,
      Section section,
      double length,
      double width,
      List<Path> foam,
      double finishedLength,
      double finishedWidth,
      double finishedHeight,
      List<Double> bareGap) {
    this(
        outline,
        sideNames,
        EdgeSections.all(section),
        length,
        width,
        foam,
        finishedLength,
        finishedWidth,
        finishedHeight,
        bareGap,
        EdgeEnds.all(-section.taut().neutral().end().x()));
  }
}
