package padwright.desk.model;

import java.util.List;
import java.util.Optional;
import padwright.design.WrappedPad;
import padwright.desk.solid.Solid;
import padwright.export.Drawing;
import padwright.export.NamedDrawing;
import padwright.measure.InputRefused;
import padwright.pattern.PartResult;

/**
 * All that is shown of the part on the bench. Where the part as it is asked for has no result, the
 * last good one stays, and says that it is one.
 *
 * @param asked the part as it is now
 * @param result of it, or the last good one
 * @param stale the result is not that of {@code asked}
 * @param refusal why there is none of {@code asked}, if that is so
 * @param fault of the program, if there was one
 * @param drawings pieces, sections and corners, by name
 * @param solid of the result
 * @param picture the drawing asked for, if it is none of these: the wrap map
 */
public record Bench(
    WrappedPad asked,
    Optional<PartResult> result,
    boolean stale,
    Optional<InputRefused> refusal,
    Optional<String> fault,
    List<NamedDrawing> drawings,
    Optional<Drawing> picture,
    Optional<Solid> solid,
    List<FindingRow> findings) {
  public Bench {
    drawings = List.copyOf(drawings);
    findings = List.copyOf(findings);
  }

  static Bench empty(WrappedPad asked) {
    return new Bench(
        asked,
        Optional.empty(),
        true,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  Bench withFindings(List<FindingRow> rows) {
    return new Bench(asked, result, stale, refusal, fault, drawings, picture, solid, rows);
  }

  /** The drawing of a name. */
  public Optional<Drawing> drawing(String name) {
    return drawings.stream()
        .filter(d -> d.name().equals(name))
        .map(NamedDrawing::drawing)
        .findFirst()
        .or(() -> name.equals(Desk.WRAP_MAP) ? picture : Optional.empty());
  }
}
