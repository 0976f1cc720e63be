package padwright.pattern;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The make-ups still to be thought of. One more sheet, or another board or wadding, is worth its
 * trouble only where it comes nearer by {@link #WORTH}; so a foam is doubled only where no single
 * sheet does.
 */
final class FitPool {
  /** What a sheet more or a change must gain in height, mm; less does not show; own choice. */
  static final double WORTH = 0.5;

  private static final double SAME = 1e-6;

  /** How many sheets and how many changes. */
  private record Trouble(int sheets, int changes) {}

  private final List<FitCandidate> left;

  FitPool(List<FitCandidate> all) {
    left = new ArrayList<>(all);
    left.sort(FitCandidate.BEST_FIRST);
  }

  void remove(FitCandidate candidate) {
    left.remove(candidate);
  }

  /** The best one worth its trouble that is not among those {@code taken}. */
  Optional<FitCandidate> best(List<FitCandidate> taken) {
    Map<Trouble, FitCandidate> bestOf = bestOfEach();
    for (FitCandidate c : left) {
      if (!taken.contains(c) && worth(c, bestOf)) {
        return Optional.of(c);
      }
    }
    return Optional.empty();
  }

  private Map<Trouble, FitCandidate> bestOfEach() {
    Map<Trouble, FitCandidate> best = new HashMap<>();
    for (FitCandidate c : left) {
      best.putIfAbsent(new Trouble(c.sheets(), c.changes().size()), c);
    }
    return best;
  }

  private static boolean worth(FitCandidate c, Map<Trouble, FitCandidate> bestOf) {
    for (FitCandidate plainer : bestOf.values()) {
      double gain = Math.abs(plainer.error()) - Math.abs(c.error());
      if (plainer.plainerThan(c) && gain < WORTH - SAME) {
        return false;
      }
    }
    return true;
  }

  /** The error of the nearest one that has fewer sheets and takes no more changes. */
  OptionalDouble withFewerSheets(FitCandidate c) {
    for (FitCandidate other : left) {
      if (other.sheets() < c.sheets() && other.asPlainAs(c)) {
        return OptionalDouble.of(other.error());
      }
    }
    return OptionalDouble.empty();
  }
}
