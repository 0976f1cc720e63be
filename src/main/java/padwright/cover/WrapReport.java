package padwright.cover;

import java.util.List;

/**
 * What wrapping the cut cover back on to the pad showed.
 *
 * @param proved nothing failed
 * @param bareArea of face and sides left bare, mm2
 * @param leastTurnUnder shortest covering on the back, mm
 * @param worstShort most that the turn-under of any side falls short of what it is to have, mm
 * @param leastHiding least distance on a wall of a raw edge from the fold that hides it, mm;
 *     infinite where no raw edge lies on a wall
 * @param worstEase largest part of its length that covering is eased by, a fraction
 * @param worstStretch largest part of its length that covering is stretched by along a hollow
 *     curve; infinite where the curve is tighter than the wall is deep
 * @param worstFlapStrain of a folded flap that is out of sight, a fraction
 * @param failures what failed, in plain words
 */
public record WrapReport(
    boolean proved,
    double bareArea,
    double leastTurnUnder,
    double worstShort,
    double leastHiding,
    double worstEase,
    double worstStretch,
    double worstFlapStrain,
    List<String> failures) {
  public WrapReport {
    failures = List.copyOf(failures);
  }
}
