package padwright.pattern;

import static padwright.pattern.FindingRules.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import padwright.design.Defaults;
import padwright.design.WrappedPad.Neighbour;
import padwright.shape.Outlines;

/**
 * What the gap between a bare base and its opening is made of, side by side, so that the number
 * measured at the bench and the clearance kept free explain each other. mm.
 *
 * @param sides how each side meets the opening: front, right, back, left
 * @param layers of covering on each side's wall where it is thickest
 * @param thickness of the covering
 * @param padding how far foam and wadding stand beyond the base on each side
 * @param asked the clearance that the job gives
 */
record DryFit(
    List<Neighbour> sides,
    List<Integer> layers,
    double thickness,
    List<Double> padding,
    OptionalDouble asked) {
  /** Below this nothing is said of padding, mm; as finely as the sentence gives it. */
  private static final double SAID = 0.05;

  DryFit {
    sides = List.copyOf(sides);
    layers = List.copyOf(layers);
    padding = List.copyOf(padding);
  }

  /** The gap kept free on a side once the covering is on. */
  double clearance(int side) {
    return asked.orElse(Defaults.clearance(thickness, layers.get(side)));
  }

  /** Such as {@code 3.0 mm front, back; 4.2 mm right, left}: the sides that keep clear. */
  String clearances() {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (int k = 0; k < sides.size(); k++) {
      if (sides.get(k) == Neighbour.KEEP_CLEAR) {
        gather(alike, text("%.1f mm", clearance(k)), k);
      }
    }
    List<String> list = new ArrayList<>();
    alike.forEach((what, names) -> list.add(what + " " + String.join(", ", names)));
    return String.join("; ", list);
  }

  /**
   * Such as {@code 4.8 front, back (3 layers of 0.6 covering and 3.0 clear)}.
   *
   * @param gap of each side, bare base to opening
   */
  String gaps(List<Double> gap) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (int k = 0; k < gap.size(); k++) {
      gather(alike, text("%.1f|", gap.get(k)) + parts(k), k);
    }
    List<String> said = new ArrayList<>();
    alike.forEach(
        (what, names) -> {
          int bar = what.indexOf('|');
          said.add(
              what.substring(0, bar)
                  + (names.size() == sides.size() ? " all round" : " " + String.join(", ", names))
                  + " ("
                  + what.substring(bar + 1)
                  + ")");
        });
    return String.join("; ", said);
  }

  private String parts(int k) {
    // A free side's corners are not felt: one layer lies on it.
    int n = sides.get(k) == Neighbour.FREE ? 1 : layers.get(k);
    String covering = text("%d %s of %.1f covering", n, n == 1 ? "layer" : "layers", thickness);
    double beyond = padding.get(k);
    String stack = beyond >= SAID ? text("%.1f padding, ", beyond) + covering : covering;
    return sides.get(k) == Neighbour.KEEP_CLEAR
        ? stack + text(" and %.1f clear", clearance(k))
        : stack;
  }

  private static void gather(Map<String, List<String>> alike, String what, int side) {
    alike.computeIfAbsent(what, w -> new ArrayList<>()).add(Outlines.SIDES.get(side));
  }
}
