package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import padwright.design.WrappedPad.Treatment;

/**
 * Why a treatment that the maker named cannot be had at a corner.
 *
 * @param sentence which corner and why; no full stop
 * @param value the number that forbids it, in {@code unit}; empty where none does
 * @param limit what the number would have to keep to
 * @param unit mm, %, degrees, or empty
 */
public record CornerRefusal(
    String sentence, OptionalDouble value, OptionalDouble limit, String unit) {
  /** Nothing is refused. */
  static final CornerRefusal NONE = plain("");

  static CornerRefusal plain(String sentence) {
    return new CornerRefusal(sentence, OptionalDouble.empty(), OptionalDouble.empty(), "");
  }

  static CornerRefusal of(String sentence, double value, double limit, String unit) {
    return new CornerRefusal(sentence, OptionalDouble.of(value), OptionalDouble.of(limit), unit);
  }

  /** What was named at points of a free outline that are no corners. */
  static List<CornerRefusal> unplaced(
      List<Treatment> treatments, List<CornerSite> sites, List<String> names) {
    List<CornerRefusal> list = new ArrayList<>();
    boolean free = names.get(0).startsWith("side ");
    for (int k = 0; free && treatments.size() > 1 && k < treatments.size(); k++) {
      int order = k;
      boolean none =
          sites.stream().noneMatch(s -> Math.floorMod(s.order(), treatments.size()) == order);
      if (none && treatments.get(k) != Treatment.AUTO) {
        list.add(
            CornerRefusal.plain("the outline goes on there without a corner of its own")
                .at("point " + (k + 1)));
      }
    }
    return list;
  }

  /** The same, said of a corner by its name. */
  CornerRefusal at(String corner) {
    return new CornerRefusal(corner + ": " + sentence, value, limit, unit);
  }

  boolean any() {
    return !sentence.isEmpty();
  }
}
