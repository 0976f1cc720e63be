package padwright.pattern;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.WaddingLayer;
import padwright.pattern.FitAnswer.Change;

/**
 * A make-up before it is worked out, and which of two is the better: the one nearer to the height,
 * then the one of fewer sheets, of fewer changes, and the nearer to the part as it stands.
 *
 * @param error its height less the wanted one, mm, by adding up what it is made of
 * @param departure by how much each foam differs from its share in the part as it stands, and board
 *     and wadding from the part's, mm, summed
 * @param number in the order of finding, which is the same for the same input
 */
record FitCandidate(
    double board,
    List<FoamLayer> foam,
    Optional<WaddingLayer> wadding,
    double error,
    Set<Change> changes,
    double departure,
    int number) {
  /** Errors this near to each other, mm, are one: no rule shows it on foam; own choice. */
  static final double STEP = 0.25;

  /** The noise of sums of sheets in mm and inches. */
  private static final double SAME = 1e-6;

  static final Comparator<FitCandidate> BEST_FIRST =
      Comparator.comparingDouble((FitCandidate c) -> Math.floor((Math.abs(c.error) + SAME) / STEP))
          .thenComparing(FitCandidate::sheets)
          .thenComparing(c -> c.changes.size())
          .thenComparing(c -> Math.rint(c.departure / SAME))
          .thenComparing(c -> Math.rint(Math.abs(c.error) / SAME))
          .thenComparing(FitCandidate::number);

  FitCandidate {
    changes = changes.isEmpty() ? EnumSet.noneOf(Change.class) : EnumSet.copyOf(changes);
  }

  int sheets() {
    return foam.size();
  }

  /** Whether it takes nothing that {@code other} does not: no more sheets and no more changes. */
  boolean asPlainAs(FitCandidate other) {
    return sheets() <= other.sheets() && changes.size() <= other.changes.size();
  }

  /** The same, and is plainer in one of the two. */
  boolean plainerThan(FitCandidate other) {
    return asPlainAs(other) && !other.asPlainAs(this);
  }

  /** The part with this make-up. */
  WrappedPad pad(WrappedPad start) {
    return PadChange.with(start, board, foam, wadding);
  }
}
