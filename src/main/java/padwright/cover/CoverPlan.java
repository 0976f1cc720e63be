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
 * @param skeleton the base outline as the covering takes it, with its folds
 */
public record CoverPlan(
    Path trim,
    Path cut,
    List<Double> perSide,
    List<Double> turnUnder,
    List<CornerPlan> corners,
    Skeleton skeleton) {
  /** A plan whose skeleton does not matter, for drawing only. */
  public CoverPlan(
      Path trim, Path cut, List<Double> perSide, List<Double> turnUnder, List<CornerPlan> corners) {
    this(trim, cut, perSide, turnUnder, corners, new Skeleton(List.of()));
  }

  public CoverPlan {
    perSide = List.copyOf(perSide);
    turnUnder = List.copyOf(turnUnder);
    corners = List.copyOf(corners);
  }
}
