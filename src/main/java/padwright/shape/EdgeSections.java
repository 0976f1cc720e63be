package padwright.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The sections across a pad's edge: the same all round, but for the sides that were given another
 * edge shape or overhang. All have the same height.
 *
 * @param usual of every side that is not in {@code special}
 * @param special by name of side
 */
public record EdgeSections(Section usual, Map<String, Section> special) {
  public EdgeSections {
    special = Map.copyOf(special);
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

  /** The usual section and every other. */
  public List<Section> each() {
    List<Section> all = new ArrayList<>();
    all.add(usual);
    special.values().stream().distinct().forEach(all::add);
    return all;
  }

  /** How far in from the base outline the flat top begins, at most; 0 or less. */
  public double startX() {
    double least = 0;
    for (Section s : each()) {
      least = Math.min(least, s.taut().startX());
    }
    return least;
  }

  /** How far the built-up pad reaches beyond the base outline anywhere, without the covering. */
  public double greatestX() {
    double most = 0;
    for (Section s : each()) {
      most = Math.max(most, s.greatestX());
    }
    return most;
  }
}
