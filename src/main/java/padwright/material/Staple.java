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
}
