package padwright.pattern;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import padwright.design.WrappedPad.SizeMeaning;

/**
 * What a finished part is to come out as, for {@link HeightFit}. All mm.
 *
 * @param height finished, from the back of the board to the covering on the face
 * @param length of the outline left to right (front of a trapezoid, diameter of a circle); empty =
 *     as the part has it
 * @param width of the outline front to back; empty = as the part has it
 * @param size what length and width are the size of; empty = as the part has it
 * @param free what may be changed beside the foam's sheets
 * @param most how many answers to give at most, 1 or more
 */
public record FitWish(
    double height,
    OptionalDouble length,
    OptionalDouble width,
    Optional<SizeMeaning> size,
    Set<Freedom> free,
    int most) {
  public FitWish {
    free = Set.copyOf(free);
  }

  /** What may be changed beside the foam's sheets, when asked. */
  public enum Freedom {
    /** Other thicknesses of the part's board, as its row of the catalogue lists them. */
    BOARD,
    /** No wadding, or any of the catalogue's. */
    WADDING
  }

  /** A height alone, the rest as the part has it. */
  public static FitWish height(double height, int most) {
    return new FitWish(
        height, OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), Set.of(), most);
  }
}
