package padwright.desk.model;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import padwright.design.Finding;
import padwright.design.Finding.Level;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.desk.edit.FindingPlaces;
import padwright.desk.edit.PartEdit;
import padwright.desk.edit.Remedies;
import padwright.desk.edit.Remedy;
import padwright.material.Catalogue;
import padwright.measure.InputRefused;
import padwright.output.JobLengths;
import padwright.output.Sentences;
import padwright.pattern.PartResult;

/** Turns findings into lines, and tries what may clear each of them. */
final class RemedyFinder {
  /** Tries for one finding; each works the part out once. */
  private static final int MOST_TRIES = 16;

  private final EngineRoom room;
  private final PartEdit edit;
  private final Catalogue catalogue;
  private final Units units;

  RemedyFinder(EngineRoom room, PartEdit edit, Catalogue catalogue, Units units) {
    this.room = room;
    this.edit = edit;
    this.catalogue = catalogue;
    this.units = units;
  }

  /** The lines without remedies, at once. */
  List<FindingRow> rows(PartResult result) {
    JobLengths lengths = new JobLengths(units);
    return result.findings().stream()
        .map(
            f ->
                new FindingRow(
                    f,
                    Sentences.finding(f, lengths.beside(f)),
                    FindingPlaces.of(f.rule()),
                    Optional.empty()))
        .toList();
  }

  /**
   * The same lines with remedies where one clears the finding and brings no new stop.
   *
   * @param stop asked between tries; where it is so the rest is left
   */
  List<FindingRow> withRemedies(List<FindingRow> rows, PartResult result, BooleanSupplier stop) {
    return rows.stream()
        .map(
            row ->
                row.finding().level() == Level.NOTE && !row.finding().rule().equals("foam-sheet")
                    ? row
                    : new FindingRow(
                        row.finding(), row.sentence(), row.place(), remedy(row, result, stop)))
        .toList();
  }

  private Optional<Remedy> remedy(FindingRow row, PartResult result, BooleanSupplier stop) {
    WrappedPad pad = result.asked();
    List<Remedy> candidates =
        Remedies.of(row.finding(), pad, result.spec().turnUnder(), catalogue, units);
    int tries = 0;
    for (Remedy remedy : candidates) {
      if (stop.getAsBoolean() || tries++ == MOST_TRIES) {
        break;
      }
      if (clears(remedy, row.finding(), result)) {
        return Optional.of(remedy);
      }
    }
    return Optional.empty();
  }

  private boolean clears(Remedy remedy, Finding finding, PartResult before) {
    WrappedPad changed;
    try {
      changed = edit.with(before.asked(), remedy.steps());
    } catch (InputRefused r) {
      return false;
    }
    Optional<PartResult> after = room.tried(changed);
    if (after.isEmpty()) {
      return false;
    }
    Set<String> stops = new HashSet<>();
    before.findings().stream()
        .filter(f -> f.level() == Level.STOP)
        .forEach(f -> stops.add(f.rule()));
    int as = count(before, finding.rule());
    return count(after.get(), finding.rule()) < as
        && after.get().findings().stream()
            .noneMatch(f -> f.level() == Level.STOP && !stops.contains(f.rule()));
  }

  private static int count(PartResult result, String rule) {
    return (int) result.findings().stream().filter(f -> f.rule().equals(rule)).count();
  }
}
