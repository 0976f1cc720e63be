package padwright.pattern;

import static padwright.pattern.FindingRules.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How a foam layer is had from the sheets that are sold: as it is, near it, or two glued together.
 *
 * @param thicknesses sold, mm; empty where nothing is known of them
 * @param wanted thickness of the layer, mm
 */
record FoamSheets(List<Double> thicknesses, double wanted) {
  /** A sheet this near serves as it is, mm; foam is cut no truer. */
  private static final double SERVES = 1;

  /** As many sheets and pairs are named: those next to what is wanted. */
  private static final int NAMED = 3;

  /** Whether a sheet serves, or nothing is known. */
  boolean sold() {
    return thicknesses.isEmpty()
        || thicknesses.stream().anyMatch(t -> Math.abs(t - wanted) < SERVES);
  }

  double nearest() {
    return byDistance().get(0);
  }

  /** The nearest few, thin to thick. */
  String near() {
    List<String> list =
        byDistance().stream().limit(NAMED).sorted().map(t -> text("%.1f", t)).toList();
    return String.join(", ", list);
  }

  /** Pairs of sheets that make the thickness, those nearest to it and most alike first. */
  List<double[]> pairs() {
    List<double[]> pairs = new ArrayList<>();
    for (int i = 0; i < thicknesses.size(); i++) {
      for (int k = i; k < thicknesses.size(); k++) {
        double sum = thicknesses.get(i) + thicknesses.get(k);
        if (Math.abs(sum - wanted) < SERVES) {
          pairs.add(new double[] {thicknesses.get(i), thicknesses.get(k)});
        }
      }
    }
    pairs.sort(
        Comparator.comparingDouble((double[] p) -> Math.abs(p[0] + p[1] - wanted))
            .thenComparingDouble(p -> Math.abs(p[0] - p[1])));
    return pairs.subList(0, Math.min(NAMED, pairs.size()));
  }

  String remedy() {
    List<String> pairs = pairs().stream().map(p -> text("%.1f + %.1f", p[0], p[1])).toList();
    return pairs.isEmpty()
        ? "Have it cut to thickness: no two sheets make it"
        : "Glue two sheets together, "
            + String.join(" or ", pairs)
            + ", or have it cut to thickness";
  }

  private List<Double> byDistance() {
    return thicknesses.stream()
        .sorted(Comparator.comparingDouble(t -> Math.abs(t - wanted)))
        .toList();
  }
}
