package padwright.pattern;

import java.util.ArrayList;
import java.util.Comparator;
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

  /**
   * So many answers with as many sheets and changes, unless they are the plainest: more would crowd
   * out the plainer ones, which a maker may prefer for a small error; own choice.
   */
  private static final int OF_A_KIND = 2;

  private static final double SAME = 1e-6;

  /** How many sheets and how many changes. */
  private record Trouble(int sheets, int changes) {
    static Trouble of(FitCandidate c) {
      return new Trouble(c.sheets(), c.changes().size());
    }
  }

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
      if (!taken.contains(c) && worth(c, bestOf) && !crowds(c, taken, bestOf)) {
        return Optional.of(c);
      }
    }
    return Optional.empty();
  }

  private Map<Trouble, FitCandidate> bestOfEach() {
    Map<Trouble, FitCandidate> best = new HashMap<>();
    for (FitCandidate c : left) {
      best.merge(Trouble.of(c), c, FitPool::nearer);
    }
    return best;
  }

  private static FitCandidate nearer(FitCandidate a, FitCandidate b) {
    return Math.abs(b.error()) < Math.abs(a.error()) - SAME ? b : a;
  }

  private static boolean crowds(
      FitCandidate c, List<FitCandidate> taken, Map<Trouble, FitCandidate> bestOf) {
    Trouble kind = Trouble.of(c);
    return bestOf.values().stream().anyMatch(plainer -> plainer.plainerThan(c))
        && taken.stream().filter(t -> Trouble.of(t).equals(kind)).count() >= OF_A_KIND;
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
    return left.stream()
        .filter(other -> other.sheets() < c.sheets() && other.asPlainAs(c))
        .min(Comparator.comparingDouble(other -> Math.abs(other.error())))
        .map(other -> OptionalDouble.of(other.error()))
        .orElse(OptionalDouble.empty());
  }
}
