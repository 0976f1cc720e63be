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
 * @param gussets pieces let in at hollow corners
 * @param clips cuts in the turn-under along hollow curves, from their tip to the cut line
 * @param overlaps the covering of two sides would have to be in one place on the flat; the lines
 *     then show the outside of the blank only, without its cuts
 */
public record CoverPlan(
    Path trim,
    Path cut,
    List<Double> perSide,
    List<Double> turnUnder,
    List<CornerPlan> corners,
    Skeleton skeleton,
    List<Gusset> gussets,
    List<Path> clips,
    boolean overlaps) {
  /** A plan whose skeleton does not matter, for drawing only. */
  public CoverPlan(
      Path trim, Path cut, List<Double> perSide, List<Double> turnUnder, List<CornerPlan> corners) {
    this(
        trim,
        cut,
        perSide,
        turnUnder,
        corners,
        new Skeleton(List.of(), (padwright.shape.TautPath) null),
        List.of(),
        List.of(),
        false);
  }

  public CoverPlan {
    perSide = List.copyOf(perSide);
    turnUnder = List.copyOf(turnUnder);
    corners = List.copyOf(corners);
    gussets = List.copyOf(gussets);
    clips = List.copyOf(clips);
  }
}
