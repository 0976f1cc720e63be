package padwright.material;

import java.util.List;

/**
 * A wood screw.
 *
 * @param shank diameter of the plain shank, mm
 * @param head diameter of the head, mm
 * @param lengths sold, mm
 * @param edgeDistance least distance of its axis from a board's edge, mm
 */
public record Screw(
    String id,
    String name,
    double shank,
    double head,
    List<Double> lengths,
    double edgeDistance,
    Sourced origin) {
  public Screw {
    lengths = List.copyOf(lengths);
  }
}
