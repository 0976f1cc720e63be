package padwright.export;

import java.util.List;
import padwright.geometry.Path;

/** A piece's drawing that keeps its words off the lines where printed sheets are joined. */
public interface PageDrawing {
  /**
   * The drawing; words that have no room elsewhere, and all that has its own place, stay where a
   * join crosses them.
   *
   * @param joins straight lines, in the drawing's own frame; none where it fits on one sheet
   */
  Drawing clearOf(List<Path> joins);
}
