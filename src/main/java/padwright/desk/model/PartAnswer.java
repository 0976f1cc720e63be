package padwright.desk.model;

import java.util.Optional;
import padwright.design.WrappedPad;
import padwright.measure.InputRefused;
import padwright.pattern.PartResult;

/**
 * What the engine said of a part: a result, or why there is none.
 *
 * @param refusal sizes that cannot be made at all
 * @param fault a fault of the program, in one sentence; its trace is in the log
 */
public record PartAnswer(
    WrappedPad asked,
    Optional<PartResult> result,
    Optional<InputRefused> refusal,
    Optional<String> fault) {

  static PartAnswer of(PartResult result) {
    return new PartAnswer(
        (WrappedPad) result.asked(), Optional.of(result), Optional.empty(), Optional.empty());
  }

  static PartAnswer refused(WrappedPad asked, InputRefused r) {
    return new PartAnswer(asked, Optional.empty(), Optional.of(r), Optional.empty());
  }

  static PartAnswer faulted(WrappedPad asked, String sentence) {
    return new PartAnswer(asked, Optional.empty(), Optional.empty(), Optional.of(sentence));
  }
}
