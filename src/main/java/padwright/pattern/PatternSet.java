package padwright.pattern;

import java.util.List;
import padwright.design.Job;

/** The patterns, figures and findings of a whole job, one result a part, in the job's order. */
public record PatternSet(Job job, List<PartResult> parts) {
  public PatternSet {
    parts = List.copyOf(parts);
  }

  public boolean stopped() {
    return parts.stream().anyMatch(PartResult::stopped);
  }
}
