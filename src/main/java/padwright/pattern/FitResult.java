package padwright.pattern;

import java.util.List;
import padwright.design.Finding;
import padwright.design.WrappedPad;

/**
 * The make-ups found for a finished height. All mm.
 *
 * @param start the part as it stands, with the length, width and meaning of size that were wanted
 * @param least the least height that can be had
 * @param most the greatest
 * @param answers those that can be built, the best first
 * @param rejected those that were nearer than the last answer and must not be built, with why
 */
public record FitResult(
    WrappedPad start,
    FitWish wish,
    double least,
    double most,
    List<FitAnswer> answers,
    List<Rejected> rejected) {
  public FitResult {
    answers = List.copyOf(answers);
    rejected = List.copyOf(rejected);
  }

  /**
   * A make-up that must not be built.
   *
   * @param stops its stop findings; empty where it cannot be worked out at all
   * @param refusal why it cannot be worked out; empty where it can
   */
  public record Rejected(
      WrappedPad pad, double error, int sheets, List<Finding> stops, String refusal) {
    public Rejected {
      stops = List.copyOf(stops);
    }
  }
}
