package padwright.shape;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * The sections across a pad's edge: the same all round, but for the sides that were given another
 * edge shape or overhang. All have the same height. Between two sections that meet without a corner
 * lies a passage, a side of its own name.
 *
 * @param usual of every side that is not in {@code special}
 * @param special by name of side; of a passage that of its ends over which the covering is longer
 * @param passages by name of side
 */
public record EdgeSections(
    Section usual, Map<String, Section> special, Map<String, Passage> passages) {
  public EdgeSections {
    Map<String, Section> all = new HashMap<>(special);
    passages.forEach((name, passage) -> all.put(name, passage.longer()));
    special = Map.copyOf(all);
    passages = Map.copyOf(passages);
  }

  public EdgeSections(Section usual, Map<String, Section> special) {
    this(usual, special, Map.of());
  }

  /** The same section all round. */
  public static EdgeSections all(Section section) {
    return new EdgeSections(section, Map.of());
  }

  public Section of(String side) {
    return special.isEmpty() ? usual : special.getOrDefault(side, usual);
  }

  /** The covering's way over the edge of a side. */
  public TautPath path(String side) {
    return of(side).taut();
  }

  /** The section where a side begins, or where it ends: they differ in a passage only. */
  public Section at(String side, boolean start) {
    Passage passage = passages.get(side);
    return passage == null ? of(side) : start ? passage.start() : passage.end();
  }

  /** A number of the section at the start, or at the end, of every side. */
  public double[] each(List<String> sides, boolean start, ToDoubleFunction<Section> number) {
    return sides.stream().mapToDouble(side -> number.applyAsDouble(at(side, start))).toArray();
  }

  /** How far in from the base outline the flat top begins, at most; 0 or less. */
  public double startX() {
    double least = Math.min(0, usual.taut().startX());
    for (Section s : special.values()) {
      least = Math.min(least, s.taut().startX());
    }
    return least;
  }

  /** How far the built-up pad reaches beyond the base outline anywhere, without the covering. */
  public double greatestX() {
    double most = usual.greatestX();
    for (Section s : special.values()) {
      most = Math.max(most, s.greatestX());
    }
    return most;
  }
}
