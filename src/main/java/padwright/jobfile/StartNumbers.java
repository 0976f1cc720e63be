package padwright.jobfile;

import java.util.OptionalDouble;
import padwright.measure.InputRefused;
import padwright.measure.Length;
import padwright.measure.LengthUnit;

/**
 * The numbers a maker may give when starting from a ready-made part, mm; what is empty stays as the
 * ready-made part has it. A number that is no length of 0 to 10 m is an {@link InputRefused}.
 *
 * @param length of the outline left to right, or the diameter of a round one
 * @param width of the outline front to back; a circle has none
 * @param board nominal thickness of the base
 * @param foam thickness of all foam together
 * @param covering thickness of the covering; 0 leaves it out of every sum
 */
public record StartNumbers(
    OptionalDouble length,
    OptionalDouble width,
    OptionalDouble board,
    OptionalDouble foam,
    OptionalDouble covering) {
  public StartNumbers {
    check("length", length);
    check("width", width);
    check("board thickness", board);
    check("foam thickness", foam);
    check("covering thickness", covering);
  }

  /** Nothing given: the part as it stands. */
  public static StartNumbers none() {
    OptionalDouble empty = OptionalDouble.empty();
    return new StartNumbers(empty, empty, empty, empty, empty);
  }

  private static void check(String name, OptionalDouble number) {
    if (number.isEmpty()) {
      return;
    }
    try {
      if (Length.of(number.getAsDouble(), LengthUnit.MM) >= 0) {
        return;
      }
    } catch (InputRefused r) {
      throw new InputRefused("", 0, "", "the " + name + ": " + r.problem(), r.remedy());
    }
    throw new InputRefused(
        "",
        0,
        "",
        "the " + name + ": " + number.getAsDouble() + " is negative",
        "Give a length of 0 to 10 m");
  }
}
