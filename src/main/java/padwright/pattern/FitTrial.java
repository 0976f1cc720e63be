package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.design.Finding;
import padwright.design.WrappedPad;
import padwright.measure.InputRefused;

/** Works out the best make-ups one after the other until there are answers enough. */
final class FitTrial {
  /** Make-ups that miss the height by more are not offered beside nearer ones; own choice. */
  static final double OFFERED = 10;

  /** So many are worked out at most before it is plain that what is wrong is not the foam. */
  private static final int TRIED = 400;

  private static final double SAME = 1e-6;

  private final PatternEngine engine;
  private final WrappedPad start;
  private final FitWish wish;
  private final FitPool pool;
  private final List<FitCandidate> taken = new ArrayList<>();
  private final List<PartResult> results = new ArrayList<>();
  private final List<FitResult.Rejected> rejected = new ArrayList<>();

  /** The first refusal, thrown again where nothing could be worked out at all. */
  private InputRefused refusal;

  FitTrial(PatternEngine engine, WrappedPad start, FitWish wish, List<FitCandidate> all) {
    this.engine = engine;
    this.start = start;
    this.wish = wish;
    double best = all.stream().mapToDouble(c -> Math.abs(c.error())).min().orElseThrow();
    double reach = Math.max(OFFERED, best) + SAME;
    pool = new FitPool(all.stream().filter(c -> Math.abs(c.error()) <= reach).toList());
  }

  void run() {
    for (int k = 0; k < TRIED && taken.size() < wish.most(); k++) {
      Optional<FitCandidate> next = pool.best(taken);
      if (next.isEmpty()) {
        break;
      }
      tryOut(next.get());
    }
    boolean nothing = taken.isEmpty() && rejected.stream().allMatch(r -> r.stops().isEmpty());
    if (nothing && refusal != null) {
      throw refusal;
    }
  }

  private void tryOut(FitCandidate c) {
    WrappedPad pad = c.pad(start);
    try {
      PartResult result = engine.run(pad);
      if (!result.stopped()) {
        taken.add(c);
        results.add(result);
        return;
      }
      reject(c, pad, stops(result), "");
    } catch (InputRefused r) {
      refusal = refusal == null ? r : refusal;
      reject(c, pad, List.of(), r.problem());
    }
  }

  private void reject(FitCandidate c, WrappedPad pad, List<Finding> stops, String refused) {
    pool.remove(c);
    rejected.add(new FitResult.Rejected(pad, c.error(), c.sheets(), stops, refused));
  }

  private static List<Finding> stops(PartResult result) {
    return result.findings().stream().filter(f -> f.level() == Finding.Level.STOP).toList();
  }

  List<FitResult.Rejected> rejected() {
    return rejected;
  }

  /** In their order: what became worth its trouble by a rejection may have come in late. */
  List<FitAnswer> answers() {
    return taken.stream().sorted(FitCandidate.BEST_FIRST).map(this::answer).toList();
  }

  private FitAnswer answer(FitCandidate c) {
    PartResult result = results.get(taken.indexOf(c));
    return new FitAnswer(
        result.asked(),
        result,
        result.figures().finished().height() - wish.height(),
        c.sheets(),
        c.changes().isEmpty() && c.foam().equals(start.foam()),
        c.changes(),
        pool.withFewerSheets(c));
  }
}
