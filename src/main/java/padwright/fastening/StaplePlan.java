package padwright.fastening;

import java.util.List;
import padwright.geometry.Vec2;
import padwright.material.Staple;

/**
 * Where staples go, in driving order, and which legs serve.
 *
 * @param positions numbered from 1 in the order of the list
 * @param leg the nominal leg planned with; 0 where none passes and none was asked for
 * @param largestGap largest distance between neighbours on a side
 * @param legs every leg of the catalogue with its verdict
 */
public record StaplePlan(
    List<Position> positions, double leg, double largestGap, List<LegVerdict> legs) {
  public StaplePlan {
    positions = List.copyOf(positions);
    legs = List.copyOf(legs);
  }

  /** A gap this much over what was asked for is no rounding, mm; own choice. */
  private static final double WIDER = 0.5;

  /** Whether a hole leaves neighbours further apart than they were to stand. */
  public boolean wider(double asked) {
    return largestGap > asked + WIDER;
  }

  /** What neighbours truly stand apart at most, where the spacing was asked for. */
  public double mostApart(double asked) {
    return wider(asked) ? largestGap : asked;
  }

  /** The closest that staples of a series are set out in a row, middle to middle, mm. */
  public static double closest(Staple staple) {
    return Crowns.pitch(staple.crown());
  }

  /**
   * One staple, in the frame of the base seen from the face.
   *
   * @param angle direction of its crown, radians
   * @param side name of the side it is on
   * @param corner driven when the corner is made
   */
  public record Position(Vec2 at, double angle, String side, boolean corner, int layers) {}

  /**
   * What one leg would do.
   *
   * @param staple the series it belongs to
   * @param verdict "passes", or why not
   */
  public record LegVerdict(
      String staple,
      double leg,
      double penetration,
      double margin,
      double hold,
      double cornerMargin,
      double cornerHold,
      boolean passes,
      String verdict) {}
}
