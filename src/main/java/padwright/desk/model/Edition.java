package padwright.desk.model;

import padwright.design.Job;
import padwright.design.WrappedPad;

/**
 * The job as it is being edited, and which of its parts is on the bench.
 *
 * @param part number of the part shown, from 0
 */
public record Edition(Job job, int part) {
  public Edition {
    if (part < 0 || part >= job.parts().size()) {
      throw new IllegalArgumentException("part " + part + " of " + job.parts().size());
    }
  }

  /** The part on the bench. */
  public WrappedPad pad() {
    return (WrappedPad) job.parts().get(part);
  }
}
