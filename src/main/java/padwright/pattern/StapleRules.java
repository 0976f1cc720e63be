package padwright.pattern;

import static padwright.design.Finding.Level.CAUTION;
import static padwright.design.Finding.Level.NOTE;
import static padwright.design.Finding.Level.STOP;
import static padwright.pattern.FindingRules.OWN;
import static padwright.pattern.FindingRules.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padwright.design.Finding;
import padwright.design.PadSpec;
import padwright.fastening.StapleDepths;
import padwright.fastening.StaplePlan;
import padwright.fastening.StaplePlan.LegVerdict;
import padwright.fastening.Withdrawal;
import padwright.shape.PadShape;

/** What the staples give cause to say. */
final class StapleRules {
  private static final String HOLD_SOURCE = "trade rule: a leg enters the board by 1/4 in";
  private static final String THICKER =
      "a thicker board, a thinner covering or turn-under stack, or glue in place of staples";

  private final List<Finding> findings = new ArrayList<>();
  private final PadSpec spec;
  private final PadShape shape;

  StapleRules(PadSpec spec, PadShape shape) {
    this.spec = spec;
    this.shape = shape;
  }

  List<Finding> findings() {
    return findings;
  }

  void staples(StaplePlan plan) {
    spacing();
    gap(plan);
    arris();
    boolean any = StapleDepths.longestPassing(plan.legs(), spec.staple().id()).isPresent();
    if (plan.leg() == 0) {
      findings.add(
          Finding.of(
              "staple-none",
              STOP,
              text(
                  "No leg of %s stays %.1f short of the foam in a board that may be %.1f thin: %s.",
                  spec.staple().name(),
                  StapleDepths.LEAST_MARGIN,
                  spec.leastThickness(),
                  legs(plan)),
              mostMargin(plan),
              StapleDepths.LEAST_MARGIN,
              "mm",
              OWN,
              "Take " + THICKER));
      return;
    }
    int layers = FiguresMaker.cornerLayers(plan);
    LegVerdict v =
        StapleDepths.verdict(
            spec.staple(), plan.leg(), layers, spec.coverThickness(), spec.leastThickness());
    depth(plan, v, any);
    if (!shortOfBoard(plan, layers)) {
      hold(v);
    }
    if (!any) {
      boolean deep = v.margin() < StapleDepths.LEAST_MARGIN;
      findings.add(
          Finding.of(
              "staple-none-passes",
              CAUTION,
              text(
                  "No leg of %s both stays %.1f short of the foam and holds %.2f in this board%s.",
                  spec.staple().name(),
                  StapleDepths.LEAST_MARGIN,
                  StapleDepths.GOOD_HOLD,
                  // A breakthrough has listed them already.
                  v.margin() <= 0 ? "" : ": " + legs(plan)),
              deep ? v.margin() : v.hold(),
              deep ? StapleDepths.LEAST_MARGIN : StapleDepths.GOOD_HOLD,
              "mm",
              deep ? OWN : HOLD_SOURCE,
              "Take " + THICKER));
    }
    pull(plan, v);
  }

  /** The most board that any leg of the series leaves under its point. */
  private double mostMargin(StaplePlan plan) {
    return plan.legs().stream()
        .filter(v -> v.staple().equals(spec.staple().id()))
        .mapToDouble(LegVerdict::margin)
        .max()
        .orElse(0);
  }

  private void spacing() {
    double least = StaplePlan.closest(spec.staple());
    if (spec.spacing() < least) {
      findings.add(
          Finding.of(
              "staple-spacing",
              CAUTION,
              text(
                  "Staples of a crown of %.1f cannot stand %.1f apart; they are set out %.1f apart.",
                  spec.staple().crown(), spec.spacing(), least),
              spec.spacing(),
              least,
              "mm",
              OWN,
              "Take a narrower crown, or a wider spacing"));
    }
  }

  private void gap(StaplePlan plan) {
    double asked = Math.max(spec.spacing(), StaplePlan.closest(spec.staple()));
    if (plan.wider(asked)) {
      findings.add(
          Finding.of(
              "staple-gap",
              CAUTION,
              text(
                  "Where staples make way two neighbours stand %.1f apart; %.1f was to be the most.",
                  plan.largestGap(), asked),
              plan.largestGap(),
              asked,
              "mm",
              "geometry of the base",
              "Move what is in the way further from the edge, or glue the turn-under there"));
    }
  }

  private void arris() {
    if (spec.edgeDistance() < spec.backArris()) {
      findings.add(
          Finding.of(
              "staple-on-arris",
              CAUTION,
              text(
                  "Staples %.1f from the edge stand on the back arris, which is rounded to %.1f.",
                  spec.edgeDistance(), spec.backArris()),
              spec.edgeDistance(),
              spec.backArris(),
              "mm",
              "geometry of the section",
              text("Staple at least %.1f from the edge", spec.backArris())));
    }
  }

  private void depth(StaplePlan plan, LegVerdict v, boolean any) {
    String remedy =
        any
            ? text(
                "Take leg %.1f, the longest that passes",
                StapleDepths.longestPassing(plan.legs(), spec.staple().id()).orElseThrow().leg())
            : "Take " + THICKER;
    if (v.margin() <= 0) {
      findings.add(
          Finding.of(
              "staple-breakthrough",
              STOP,
              text(
                  "A leg of %.1f goes %.1f into a board that may be only %.1f thick and comes"
                      + " through: %s.",
                  v.leg(), v.penetration(), spec.leastThickness(), legs(plan)),
              v.margin(),
              0,
              "mm",
              "leg less covering against the board's least thickness",
              remedy));
    } else if (v.margin() < StapleDepths.LEAST_MARGIN) {
      findings.add(
          Finding.of(
              "staple-margin",
              CAUTION,
              text(
                  "A leg of %.1f leaves %.1f of board under its point, less than %.1f.",
                  v.leg(), v.margin(), StapleDepths.LEAST_MARGIN),
              v.margin(),
              StapleDepths.LEAST_MARGIN,
              "mm",
              OWN,
              remedy));
    }
  }

  /** A staple whose points end in the covering fastens nothing, whatever else is said of it. */
  private boolean shortOfBoard(StaplePlan plan, int layers) {
    double into = StapleDepths.penetration(plan.leg(), layers, spec.coverThickness());
    if (into > 0) {
      return false;
    }
    findings.add(
        Finding.of(
            "staple-short-of-board",
            STOP,
            text(
                "Through %d %s of covering of %.1f a leg of %.1f ends %.1f short of the board.",
                layers, layers == 1 ? "layer" : "layers", spec.coverThickness(), plan.leg(), -into),
            into,
            0,
            "mm",
            "leg less the covering under the staple",
            longEnough(plan, layers)));
    return true;
  }

  /** The longest leg that passes and holds through the corners' layers too, or what else to do. */
  private String longEnough(StaplePlan plan, int layers) {
    return plan.legs().stream()
        .filter(v -> v.staple().equals(spec.staple().id()) && v.passes())
        .filter(v -> v.cornerHold() >= StapleDepths.POOR_HOLD)
        .mapToDouble(LegVerdict::leg)
        .max()
        .stream()
        .mapToObj(leg -> text("Take leg %.1f, the longest that passes", leg))
        .findFirst()
        .orElse(
            layers == 1
                ? "Take " + THICKER
                : "Cut more out of the corner, glue its layers together, or take " + THICKER);
  }

  private void hold(LegVerdict v) {
    if (v.hold() < StapleDepths.GOOD_HOLD) {
      boolean poor = v.hold() < StapleDepths.POOR_HOLD;
      findings.add(
          Finding.of(
              "staple-hold",
              poor ? CAUTION : NOTE,
              text("A leg of %.1f holds by %.1f of its length.", v.leg(), v.hold()),
              v.hold(),
              poor ? StapleDepths.POOR_HOLD : StapleDepths.GOOD_HOLD,
              "mm",
              poor ? OWN : HOLD_SOURCE,
              "Take a longer leg if the board allows it, or more staples"));
    }
    if (v.cornerHold() < StapleDepths.POOR_HOLD) {
      findings.add(
          Finding.of(
              "staple-corner-hold",
              CAUTION,
              text(
                  "Where the corners lie thickest a leg of %.1f holds by only %.1f.",
                  v.leg(), v.cornerHold()),
              v.cornerHold(),
              StapleDepths.POOR_HOLD,
              "mm",
              OWN,
              "Take a longer leg there, cut more out of the corner, or glue the layers together"));
    }
  }

  /** Holding power against a pull the maker gives; there is no published figure for the pull. */
  private void pull(StaplePlan plan, LegVerdict v) {
    if (spec.pull().isEmpty()) {
      return;
    }
    double each = Withdrawal.staple(spec.staple(), spec.board().specificGravity(), v.hold());
    for (String side :
        plan.positions().stream().map(StaplePlan.Position::side).distinct().toList()) {
      long count = plan.positions().stream().filter(p -> p.side().equals(side)).count();
      double length = sideLength(side);
      if (length == 0) {
        continue; // a fold's staple at a sharp corner: no side pulls on it alone
      }
      double needed = spec.pull().getAsDouble() * length;
      double holds = each * count;
      findings.add(
          Finding.of(
              "staple-pull",
              holds < needed ? CAUTION : NOTE,
              text(
                  "%s: %d staples hold about %.0f N at most against a pull of %.0f N.",
                  FindingRules.capital(side), count, holds, needed),
              holds,
              needed,
              "N",
              "Wood Handbook FPL-GTR-282 (2021) Eq. 8-1, ultimate; a staple as two smooth nails is"
                  + " an extrapolation of ours",
              holds < needed ? "Set staples closer or take a longer leg" : "None needed"));
    }
  }

  private double sideLength(String side) {
    double sum = 0;
    for (int i = 0; i < shape.sideNames().size(); i++) {
      if (shape.sideNames().get(i).equals(side)) {
        sum += shape.outline().segments().get(i).length();
      }
    }
    return sum;
  }

  /** Every leg of every series, those of one series and verdict together. */
  private static String legs(StaplePlan plan) {
    Map<String, Map<String, List<String>>> series = new LinkedHashMap<>();
    for (LegVerdict v : plan.legs()) {
      series
          .computeIfAbsent(v.staple(), k -> new LinkedHashMap<>())
          .computeIfAbsent(StapleDepths.brief(v), k -> new ArrayList<>())
          .add(text(v.leg() == Math.rint(v.leg()) ? "%.0f" : "%.1f", v.leg()));
    }
    List<String> said = new ArrayList<>();
    series.forEach(
        (name, kinds) -> {
          List<String> list = new ArrayList<>();
          kinds.forEach((kind, legs) -> list.add(String.join(", ", legs) + " " + kind));
          said.add(name + ": " + String.join("; ", list));
        });
    return String.join(". ", said);
  }
}
