package padwright.desk.edit;

import java.util.List;
import padwright.desk.edit.PartEdit.Step;

/**
 * A change that may clear a finding. Whether it does is found out by working the part out with it.
 *
 * @param label what it does, in words for a button
 */
public record Remedy(String label, List<Step> steps) {
  public Remedy {
    steps = List.copyOf(steps);
  }
}
