package padwright.cover;

import java.util.OptionalDouble;

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

  /** The same, said of a corner by its name. */
  CornerRefusal at(String corner) {
    return new CornerRefusal(corner + ": " + sentence, value, limit, unit);
  }

  boolean any() {
    return !sentence.isEmpty();
  }
}
