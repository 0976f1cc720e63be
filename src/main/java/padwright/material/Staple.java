package padwright.material;

import java.util.List;

/**
 * A staple series: one wire and crown, sold with several legs.
 *
 * @param wireWidth mm, seen from above
 * @param wireThickness mm, in the direction of driving at the crown
 * @param crown outside width over both legs, mm
 * @param legs nominal (outside) leg lengths sold, mm, short to long
 */
public record Staple(
    String id,
    String name,
    double wireWidth,
    double wireThickness,
    double crown,
    List<Double> legs,
    Sourced origin) {
  public Staple {
    legs = List.copyOf(legs);
  }

  /**
   * Diameter of the round wire with the same section, mm: the root of width x thickness (EN
   * 1995-1-1, 8.4).
   */
  public double equivalentDiameter() {
    return Math.sqrt(wireWidth * wireThickness);
  }
}
