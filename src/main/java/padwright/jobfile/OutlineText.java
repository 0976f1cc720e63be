package padwright.jobfile;

import padwright.design.OutlineShape;
import padwright.design.Units;

/** Writes an outline alone, in the form that a job file has it. */
public final class OutlineText {
  private OutlineText() {}

  /** The JSON object of the field {@code outline}, ending in a line break. */
  public static String write(OutlineShape outline, Units units) {
    return JsonText.of(new PartWriter(units).outline(outline));
  }
}
