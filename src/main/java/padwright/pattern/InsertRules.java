package padwright.pattern;

import static padwright.design.Finding.Level.CAUTION;
import static padwright.design.Finding.Level.NOTE;
import static padwright.design.Finding.Level.STOP;
import static padwright.pattern.FindingRules.OWN;
import static padwright.pattern.FindingRules.capital;
import static padwright.pattern.FindingRules.text;

import java.util.ArrayList;
import java.util.List;
import padwright.design.Finding;
import padwright.design.PadSpec;
import padwright.fastening.FittingPlan.Opening;
import padwright.fastening.FittingPlan.Round;
import padwright.fastening.StaplePlan;
import padwright.fastening.TurnedBack;
import padwright.fastening.VentPlanner;
import padwright.geometry.PathGap;
import padwright.shape.PadShape;

/**
 * What T-nuts give cause to say. Their flange lies on the board's face under the foam, their barrel
 * stands in the board.
 */
final class InsertRules {
  /** Board left beside a flange at the base's edge, mm; own choice. */
  static final double EDGE = 6;

  private final List<Finding> findings = new ArrayList<>();
  private final PadSpec spec;
  private final PadShape shape;

  InsertRules(FittingRules.Scene scene) {
    spec = scene.spec();
    shape = scene.shape();
    List<Round> inserts = scene.fittings().inserts();
    for (int i = 0; i < inserts.size(); i++) {
      Round t = inserts.get(i);
      edge(t);
      for (Round other : inserts.subList(0, i)) {
        clash(t, other.name(), PathGap.between(t.flange(), other.flange()));
      }
      for (List<Round> rounds : List.of(scene.holes(), scene.fittings().vents())) {
        rounds.forEach(r -> clash(t, r.name(), PathGap.between(t.flange(), r.hole())));
      }
      for (Opening o : scene.fittings().cutOuts()) {
        clash(t, o.name(), PathGap.between(t.flange(), o.hole()));
        double away = PathGap.between(t.hole(), o.hole());
        covered(t, away, o.turnUnder(), "the tongues of " + o.name());
      }
      staples(t, scene.staples());
    }
    if (!inserts.isEmpty()) {
      barrel();
    }
  }

  List<Finding> findings() {
    return findings;
  }

  private void edge(Round t) {
    double edge = PathGap.inside(t.flange(), shape.outline());
    if (edge < EDGE) {
      findings.add(
          Finding.of(
              "insert-edge",
              edge <= 0 ? STOP : CAUTION,
              text("The flange of %s is %.1f from the base's edge.", t.name(), edge),
              edge,
              EDGE,
              "mm",
              OWN,
              text("Move it in by %.1f", EDGE - edge)));
    }
    new TurnedBack(shape)
        .nearest(t.hole())
        .ifPresent(n -> covered(t, n.away(), n.turnUnder(), "the turn-under"));
  }

  private void covered(Round t, double away, double turnUnder, String by) {
    if (away < turnUnder) {
      findings.add(
          Finding.of(
              "insert-covered",
              CAUTION,
              text(
                  "%s comes out on the back under %s, %.1f from the edge that it turns over; it"
                      + " reaches %.1f.",
                  capital(t.name()), by, away, turnUnder),
              away,
              turnUnder,
              "mm",
              "geometry of the back",
              "Move it in, or punch the covering for the bolt before stapling"));
    }
  }

  private void clash(Round t, String other, double gap) {
    if (gap < VentPlanner.APART) {
      findings.add(
          Finding.of(
              "insert-clash",
              gap <= 0 ? STOP : CAUTION,
              gap <= 0
                  ? text("The flange of %s lies over %s.", t.name(), other)
                  : text("The flange of %s leaves %.1f of board to %s.", t.name(), gap, other),
              gap,
              VentPlanner.APART,
              "mm",
              OWN,
              "Move one of the two"));
    }
  }

  /** A leg that comes up under a flange meets its prongs. */
  private void staples(Round t, StaplePlan plan) {
    double reach = t.outer() / 2 + spec.staple().crown() / 2;
    long under = plan.positions().stream().filter(p -> p.at().distance(t.at()) < reach).count();
    if (under > 0) {
      findings.add(
          Finding.of(
              "insert-over-staples",
              CAUTION,
              text(
                  "%d staples are driven from the back under the flange of %s, whose prongs come"
                      + " from the face.",
                  under, t.name()),
              under,
              0,
              "",
              OWN,
              text("Move it in, or take T-nuts without prongs; its middle wants %.1f", reach)));
    }
  }

  private void barrel() {
    findings.add(
        Finding.of(
            "insert-barrel",
            NOTE,
            text(
                "A T-nut's barrel longer than %.1f, the board at its thinnest, stands proud of the"
                    + " back.",
                spec.leastThickness()),
            spec.leastThickness(),
            spec.leastThickness(),
            "mm",
            "the board's lower limit, or as measured",
            "Take a shorter barrel, and set T-nuts before the foam is glued on"));
  }
}
