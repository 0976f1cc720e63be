package padwright.material;

import java.util.List;
import java.util.Optional;

/**
 * A board a base can be cut from.
 *
 * @param id catalogue name, such as {@code birch-plywood}
 * @param name what the maker calls it
 * @param thicknesses nominal thicknesses with the limits of their tolerance, thin to thick
 * @param toleranceFixed lower tolerance for a nominal thickness not listed, mm: lower limit =
 *     nominal - (fixed + perMm x nominal)
 * @param tolerancePerMm see {@code toleranceFixed}
 * @param density kg/m3
 * @param specificGravity on volume at 12 % moisture, for staple withdrawal
 * @param pressedFibre MDF and the like: staples stay further from the edge
 */
public record Board(
    String id,
    String name,
    List<Thickness> thicknesses,
    double toleranceFixed,
    double tolerancePerMm,
    double density,
    double specificGravity,
    boolean pressedFibre,
    Sourced origin) {
  public Board {
    thicknesses = List.copyOf(thicknesses);
  }

  /** A nominal thickness and its limits, mm. */
  public record Thickness(double nominal, double lower, double upper, Sourced origin) {}

  /** The listed thickness within 0.05 mm of {@code nominal}. */
  public Optional<Thickness> listed(double nominal) {
    return thicknesses.stream().filter(t -> Math.abs(t.nominal() - nominal) < 0.05).findFirst();
  }

  /** The least thickness a board sold as {@code nominal} may have, mm. */
  public double lowerLimit(double nominal) {
    return listed(nominal)
        .map(Thickness::lower)
        .orElse(nominal - (toleranceFixed + tolerancePerMm * nominal));
  }
}
