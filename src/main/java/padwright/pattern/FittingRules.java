package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import padwright.design.Finding;
import padwright.design.PadSpec;
import padwright.design.WrappedPad;
import padwright.fastening.FittingPlan;
import padwright.fastening.FittingPlan.Round;
import padwright.fastening.Mounting;
import padwright.fastening.StaplePlan;
import padwright.shape.PadShape;

/** What cut-outs, vents, T-nuts and zones give cause to say. */
final class FittingRules {
  /** Everything the rules of fittings look at. */
  record Scene(
      WrappedPad pad,
      PadSpec spec,
      PadShape shape,
      FittingPlan fittings,
      List<Round> holes,
      StaplePlan staples) {}

  private FittingRules() {}

  static List<Finding> findings(
      WrappedPad pad,
      PadSpec spec,
      PadShape shape,
      FittingPlan fittings,
      Mounting mounting,
      StaplePlan staples,
      Figures figures) {
    List<Round> holes = new ArrayList<>(FittingPlan.rounds("hole ", pad.base().holes()));
    holes.addAll(FittingPlan.rounds("screw ", mounting.positions()));
    Scene scene = new Scene(pad, spec, shape, fittings, holes, staples);
    List<Finding> findings = new ArrayList<>(new VentRules(scene).findings());
    if (fittings.isEmpty()) {
      return findings;
    }
    findings.addAll(new CutOutRules(scene).findings());
    findings.addAll(new InsertRules(scene).findings());
    findings.addAll(new ZoneRules(scene, figures).findings());
    return findings;
  }
}
