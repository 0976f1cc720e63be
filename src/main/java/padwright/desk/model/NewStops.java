package padwright.desk.model;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import padwright.design.Finding;
import padwright.design.Finding.Level;

/** Notices when a change of the part on the bench brings a stop that was not there before. */
public final class NewStops {
  private String part = "";
  private Set<String> before = Set.of();

  /**
   * Looks at what is shown now.
   *
   * @return a sentence for the foot of the window where there is a new stop; an empty one where the
   *     last of the stops has gone; nothing where there is nothing to say
   */
  public Optional<String> look(Bench bench) {
    if (bench.result().isEmpty()) {
      return Optional.empty();
    }
    List<Finding> stops =
        bench.findings().stream()
            .map(FindingRow::finding)
            .filter(f -> f.level() == Level.STOP)
            .toList();
    Set<String> now = new HashSet<>();
    stops.forEach(f -> now.add(f.rule()));
    boolean same = part.equals(bench.asked().id());
    Set<String> was = before;
    part = bench.asked().id();
    before = now;
    if (!same) {
      return Optional.of("");
    }
    Optional<String> added =
        stops.stream()
            .filter(f -> !was.contains(f.rule()))
            .map(f -> "New stop: " + f.message())
            .findFirst();
    return added.isPresent() || !(now.isEmpty() && !was.isEmpty()) ? added : Optional.of("");
  }
}
