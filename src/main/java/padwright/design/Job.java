package padwright.design;

import java.util.List;
import java.util.Optional;

/**
 * What a maker wrote down: one job of one or more padded parts. Lengths are in mm already, whatever
 * units the file used.
 *
 * @param units the units the file's plain numbers were in, and the ones to print first
 * @param date as the maker wrote it, ISO 8601; empty = the day the patterns are drawn
 */
public record Job(
    String title,
    Optional<String> client,
    Optional<String> date,
    Units units,
    List<PaddedPart> parts) {
  public Job {
    parts = List.copyOf(parts);
  }
}
