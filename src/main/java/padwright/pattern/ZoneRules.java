package padwright.pattern;

import static padwright.design.Finding.Level.CAUTION;
import static padwright.design.Finding.Level.NOTE;
import static padwright.design.Finding.Level.STOP;
import static padwright.pattern.FindingRules.capital;
import static padwright.pattern.FindingRules.text;

import java.util.ArrayList;
import java.util.List;
import padwright.design.Finding;
import padwright.design.Fittings.ZoneKind;
import padwright.design.PadSpec;
import padwright.design.WrappedPad.Fixing;
import padwright.fastening.FittingPlan.Opening;
import padwright.fastening.FittingPlan.Patch;
import padwright.fastening.FittingPlan.Round;
import padwright.fastening.TurnedBack;
import padwright.geometry.Bounds;
import padwright.geometry.PathGap;
import padwright.material.Constants;
import padwright.shape.PadShape;

/**
 * What zones for hook-and-loop and tape give cause to say. Staples do not make way for a zone: what
 * is stuck there goes on after them, and over a turn-under it is a finding of its own.
 */
final class ZoneRules {
  /** Zones may touch: an overlap under this, mm, is rounding. */
  private static final double SAME = 1e-6;

  private static final double MM2_PER_CM2 = 100;
  private static final String GEOMETRY = "geometry of the back";

  private final List<Finding> findings = new ArrayList<>();
  private final FittingRules.Scene scene;
  private final PadSpec spec;
  private final PadShape shape;
  private final double standOff;

  ZoneRules(FittingRules.Scene scene, Figures figures) {
    this.scene = scene;
    spec = scene.spec();
    shape = scene.shape();
    standOff = figures.standOff();
    List<Patch> zones = scene.fittings().zones();
    List<Round> rounds = new ArrayList<>(scene.holes());
    rounds.addAll(scene.fittings().vents());
    rounds.addAll(scene.fittings().inserts());
    for (int i = 0; i < zones.size(); i++) {
      Patch z = zones.get(i);
      edge(z);
      zones.subList(0, i).forEach(other -> overlap(z, other));
      rounds.stream().filter(r -> over(z, r)).forEach(r -> hole(z, r.name(), false));
      for (Opening o : scene.fittings().cutOuts()) {
        double gap = PathGap.between(z.area(), o.hole());
        if (gap <= 0) {
          hole(z, o.name(), true);
        } else if (gap < o.turnUnder()) {
          bridges(z, "the tongues of " + o.name(), gap, o.turnUnder());
        }
      }
    }
    if (!zones.isEmpty()) {
      gap();
      dustCover();
      tape(zones, figures.weight());
    }
  }

  List<Finding> findings() {
    return findings;
  }

  private static boolean over(Patch z, Round r) {
    return PathGap.between(z.area(), r.hole()) <= 0;
  }

  private void edge(Patch z) {
    double edge = PathGap.inside(z.area(), shape.outline());
    if (edge < -SAME) {
      findings.add(
          Finding.of(
              "zone-outside",
              STOP,
              text("%s reaches %.1f beyond the base's edge.", capital(z.name()), -edge),
              edge,
              0,
              "mm",
              GEOMETRY,
              "Move it in, or make it smaller"));
    } else {
      new TurnedBack(shape)
          .nearest(z.area())
          .filter(n -> n.room() < -SAME)
          .ifPresent(n -> bridges(z, "the turn-under", n.away(), n.turnUnder()));
    }
  }

  private void bridges(Patch z, String over, double from, double turnUnder) {
    long under =
        scene.staples().positions().stream()
            .filter(p -> PathGap.toArea(p.at(), z.area()) <= 0)
            .count();
    findings.add(
        Finding.of(
            "zone-turn-under",
            CAUTION,
            text(
                "%s lies %.1f over %s and %d of its staples: it bridges a step of %.1f.",
                capital(z.name()), turnUnder - from, over, under, step()),
            from,
            turnUnder,
            "mm",
            GEOMETRY,
            text(
                "Move it in by %.1f, or pack the bare board beside the turn-under %.1f thick",
                turnUnder - from, step())));
  }

  /** One layer at least, and the most that lie under a staple. */
  private double step() {
    return Math.max(standOff, spec.coverThickness());
  }

  private void overlap(Patch z, Patch other) {
    Bounds a = z.area().bounds();
    Bounds b = other.area().bounds();
    double x = Math.min(a.maxX(), b.maxX()) - Math.max(a.minX(), b.minX());
    double y = Math.min(a.maxY(), b.maxY()) - Math.max(a.minY(), b.minY());
    if (x > SAME && y > SAME) {
      findings.add(
          Finding.of(
              "zone-overlap",
              STOP,
              text(
                  "%s and %s lie over each other by %.1f x %.1f.",
                  capital(other.name()), z.name(), x, y),
              Math.min(x, y),
              0,
              "mm",
              GEOMETRY,
              "Move one of them, or make them one"));
    }
  }

  private void hole(Patch z, String hole, boolean cutOut) {
    findings.add(
        Finding.of(
            "zone-over-hole",
            cutOut ? STOP : CAUTION,
            text("%s lies over %s: nothing holds there.", capital(z.name()), hole),
            0,
            0,
            "mm",
            GEOMETRY,
            cutOut ? "Move the zone off the cut-out" : "Move it, or cut it out round the hole"));
  }

  private void gap() {
    if (standOff <= 0) {
      return;
    }
    double thick = Constants.value("tape-mismatch-factor") * standOff;
    findings.add(
        Finding.of(
            "zone-gap",
            NOTE,
            text(
                "The turn-under holds the zones %.1f off what the part is fixed to; foam tape that"
                    + " bridges it is at least %.1f thick.",
                standOff, thick),
            standOff,
            thick,
            "mm",
            "trade rule: foam tape at least twice as thick as the mismatch",
            "Glue packing under the zones, or take thicker tape"));
  }

  private void dustCover() {
    if (scene.pad().dustCover().wanted()) {
      findings.add(
          Finding.plain(
              "zone-dust-cover",
              CAUTION,
              "The zones lie under the dust cover: what is stuck to cloth holds no better than its"
                  + " staples.",
              FindingRules.PRACTICE,
              "Leave the dust cover out, or cut it away round the zones and turn its edges"));
    }
  }

  private void tape(List<Patch> zones, double weight) {
    double area =
        zones.stream()
            .filter(z -> z.kind() == ZoneKind.TAPE)
            .mapToDouble(z -> z.area().area() / MM2_PER_CM2)
            .sum();
    double needed = Constants.value("tape-area") * weight;
    if (area > 0 && area < needed && scene.pad().host().fixing() != Fixing.SCREWS) {
      findings.add(
          Finding.of(
              "zone-tape-area",
              CAUTION,
              text(
                  "The tape zones have %.0f cm2; a part of %.2f kg that hangs on tape takes %.0f.",
                  area, weight, needed),
              area,
              needed,
              "cm2",
              Constants.row("tape-area").origin().source(),
              "Make the zones larger, or hold the part with screws as well"));
    }
  }
}
