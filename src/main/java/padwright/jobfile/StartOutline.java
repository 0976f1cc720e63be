package padwright.jobfile;

import java.util.List;
import padwright.design.Fittings.CutOut;
import padwright.design.OutlineShape.FreePath;

/**
 * A drawn outline to start a job with, in place of the ready-made part's. It is the size of the
 * board itself.
 *
 * @param cutOuts places from the middle of the outline's bounding box
 */
public record StartOutline(FreePath outline, List<CutOut> cutOuts) {
  public StartOutline {
    cutOuts = List.copyOf(cutOuts);
  }
}
