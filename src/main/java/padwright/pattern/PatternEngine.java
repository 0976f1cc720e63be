package padwright.pattern;

import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.material.Catalogue;

/** Works out a whole part: design in, pattern set out. Has no state; safe to share. */
public final class PatternEngine {
  private final Catalogue catalogue;

  public PatternEngine(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Every part of the job, in its order. */
  public PatternSet run(Job job) {
    return new PatternSet(job, job.parts().stream().map(this::run).toList());
  }

  /** One part. */
  public PartResult run(PaddedPart part) {
    throw new IllegalStateException("engine under construction for " + part.id() + catalogue);
  }
}
