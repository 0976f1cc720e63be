package padwright.pattern;

import static padwright.design.Finding.Level.CAUTION;
import static padwright.pattern.FindingRules.OWN;
import static padwright.pattern.FindingRules.text;

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
  /** A gap this many times the spacing is more than a staple that has moved aside; own choice. */
  static final double GAP = 1.5;

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
    stapleGap(scene, findings);
    return findings;
  }

  private static void stapleGap(Scene s, List<Finding> findings) {
    double most = GAP * s.spec().spacing();
    if (s.staples().largestGap() > most) {
      findings.add(
          Finding.of(
              "staple-gap",
              CAUTION,
              text(
                  "What goes through the board takes the place of staples: two neighbours stand %.0f"
                      + " apart, %.0f was asked for.",
                  s.staples().largestGap(), s.spec().spacing()),
              s.staples().largestGap(),
              most,
              "mm",
              OWN,
              "Move it further from the edge, or glue the turn-under there"));
    }
  }
}
