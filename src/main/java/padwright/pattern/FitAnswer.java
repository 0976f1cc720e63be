package padwright.pattern;

import java.util.OptionalDouble;
import java.util.Set;
import padwright.design.WrappedPad;

/**
 * A make-up that comes near a finished height, worked out whole.
 *
 * @param pad the part with this make-up, complete: it can take its old one's place in a job
 * @param result what the engine says of it: sizes, base, findings
 * @param error finished height less the wanted one, mm; positive where it is too high
 * @param sheets how many sheets of foam are glued up
 * @param asItStands whether board, foam and wadding are those the part has already
 * @param changed what differs from the part beside the foam's sheets
 * @param fewer the error that the nearest stack of fewer sheets leaves, mm; empty where there is
 *     none with fewer
 */
public record FitAnswer(
    WrappedPad pad,
    PartResult result,
    double error,
    int sheets,
    boolean asItStands,
    Set<Change> changed,
    OptionalDouble fewer) {
  public FitAnswer {
    changed = Set.copyOf(changed);
  }

  /** What may differ from the part as it stands, beside the thickness of its foam's sheets. */
  public enum Change {
    /** Another foam, as hard and as firm. */
    FOAM,
    BOARD,
    WADDING
  }

  /** Whether a sheet of foam itself may be off by more than this error. */
  public boolean withinTolerance() {
    return HeightFit.withinTolerance(error);
  }
}
