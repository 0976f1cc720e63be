package padwright.cover;

import java.util.List;
import padwright.geometry.Path;

/**
 * The cover: its lines on the flat before stretch allowance, and how its corners are made.
 *
 * @param trim closed trim line with its relief cuts
 * @param cut closed cut line: the same, the grip further out
 * @param perSide D of each segment of the base outline
 * @param turnUnder of each segment of the base outline, after the limit of a narrow base
 */
public record CoverPlan(
    Path trim, Path cut, List<Double> perSide, List<Double> turnUnder, List<CornerPlan> corners) {
  public CoverPlan {
    perSide = List.copyOf(perSide);
    turnUnder = List.copyOf(turnUnder);
    corners = List.copyOf(corners);
  }
}
