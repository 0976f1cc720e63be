package padwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import padwright.design.Fittings;
import padwright.design.Fittings.CutOut;
import padwright.design.Fittings.Through;
import padwright.pattern.PartResult;

/**
 * The steps of building that cut-outs, vents, T-nuts and zones add, each in its place in the order
 * of work. Common practice of the trade, no source.
 */
final class FittingSteps {
  private FittingSteps() {}

  /** After the base is cut, before foam goes on it. */
  static List<String> beforeFoam(PartResult part) {
    Fittings asked = part.asked().fittings();
    List<String> steps = new ArrayList<>();
    if (!asked.cutOuts().isEmpty()) {
      steps.add(
          "Cut the cut-outs in the base, and in each foam layer at the same size before it is glued."
              + (turned(asked)
                  ? " Ease their back arrises: the covering is pulled over them."
                  : ""));
    }
    if (!asked.vents().isEmpty()) {
      steps.add("Bore the vents and take the sharpness off their edges.");
    }
    if (!asked.inserts().isEmpty()) {
      steps.add("Drive the T-nuts from the face, their flanges level with it.");
    }
    return steps;
  }

  /** When the cover is fast all round. */
  static List<String> afterCorners(PartResult part) {
    if (!turned(part.asked().fittings())) {
      return List.of();
    }
    return List.of(
        "Cut-outs now, not sooner: slit the covering along the lines of the pattern, no further."
            + " Pull each tongue through to the back, opposite in turn, staple by the numbers or glue"
            + " those too narrow for a staple, and trim.");
  }

  /** When all else is done. */
  static List<String> last(PartResult part) {
    return part.asked().fittings().zones().isEmpty()
        ? List.of()
        : List.of("Clean the zones on the back and stick on hook-and-loop or tape; press well.");
  }

  private static boolean turned(Fittings asked) {
    return asked.cutOuts().stream().map(CutOut::through).anyMatch(Through.TURNED::equals);
  }
}
