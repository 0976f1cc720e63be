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
import padwright.design.WrappedPad.Hole;
import padwright.design.WrappedPad.Kind;
import padwright.fastening.FittingPlan.Opening;
import padwright.fastening.FittingPlan.Round;
import padwright.fastening.TurnedBack;
import padwright.fastening.VentPlanner;
import padwright.geometry.PathGap;

/**
 * What holes for the air give cause to say, or that there are none. Every foam of the catalogue is
 * open-celled, so that air must get out of it and back.
 */
final class VentRules {
  private final List<Finding> findings = new ArrayList<>();
  private final FittingRules.Scene scene;

  VentRules(FittingRules.Scene scene) {
    this.scene = scene;
    missing();
    List<Round> vents = scene.fittings().vents();
    for (int i = 0; i < vents.size(); i++) {
      Round v = vents.get(i);
      place(v);
      vents.subList(0, i).forEach(o -> clash(v, o));
      scene.holes().forEach(o -> clash(v, o));
    }
    if (!vents.isEmpty() && scene.pad().dustCover().wanted()) {
      dustCover();
    }
  }

  List<Finding> findings() {
    return findings;
  }

  /** A part that is sat, knelt or leant on; one that hangs or lies still needs no air. */
  private boolean pressed() {
    return scene.pad().kind() != Kind.PANEL;
  }

  private boolean carriesABody() {
    Kind kind = scene.pad().kind();
    return kind == Kind.SEAT || kind == Kind.STOOL_TOP || kind == Kind.KNEELER;
  }

  private void missing() {
    double foam = scene.shape().section().foamHeight();
    boolean open =
        !scene.fittings().vents().isEmpty()
            || !scene.fittings().cutOuts().isEmpty()
            || !scene.pad().base().holes().isEmpty();
    if (scene.spec().covering().breathes() || foam <= VentPlanner.FOAM || open || !pressed()) {
      return;
    }
    List<Hole> places =
        new VentPlanner(
                scene.shape(), scene.spec(), scene.fittings(), scene.holes(), scene.staples())
            .places();
    findings.add(
        Finding.of(
            "vent-missing",
            carriesABody() ? CAUTION : NOTE,
            text(
                "%s lets no air through, the foam is %.0f thick and the board has no hole: the part"
                    + " blows up and comes back slowly.",
                capital(scene.spec().covering().name()), foam),
            foam,
            VentPlanner.FOAM,
            "mm",
            "our own rule; holes as in Woodworker's Journal 32-6 (2008) p. 63",
            places.isEmpty()
                ? "Bore small holes where the back is bare, or take a covering that breathes"
                : text(
                    "Bore %d holes of %.1f at %s",
                    places.size(), VentPlanner.DIAMETER, listed(places))));
  }

  private static String listed(List<Hole> places) {
    List<String> list = new ArrayList<>();
    for (Hole h : places) {
      list.add(text("(%.0f, %.0f)", h.x() + 0.0, h.y() + 0.0));
    }
    return String.join(", ", list);
  }

  private void place(Round v) {
    double edge = PathGap.inside(v.hole(), scene.shape().outline());
    if (edge < 0) {
      findings.add(
          Finding.of(
              "vent-outside",
              STOP,
              text("%s reaches %.1f beyond the base's edge.", capital(v.name()), -edge),
              edge,
              0,
              "mm",
              "geometry of the base",
              "Move it in"));
    } else {
      new TurnedBack(scene.shape())
          .nearest(v.hole())
          .ifPresent(n -> covered(v, "the turn-under", n.away(), n.turnUnder()));
    }
    for (Opening o : scene.fittings().cutOuts()) {
      covered(v, "the tongues of " + o.name(), PathGap.between(v.hole(), o.hole()), o.turnUnder());
    }
  }

  private void covered(Round v, String by, double away, double turnUnder) {
    if (away < turnUnder) {
      findings.add(
          Finding.of(
              "vent-covered",
              CAUTION,
              text(
                  "%s is %.1f from the edge and %s reaches %.1f: the covering closes it.",
                  capital(v.name()), away, by, turnUnder),
              away,
              turnUnder,
              "mm",
              "geometry of the back",
              text("Move it in by %.1f", turnUnder - away)));
    }
  }

  private void clash(Round v, Round other) {
    double gap = PathGap.between(v.hole(), other.hole());
    if (gap < VentPlanner.APART) {
      findings.add(
          Finding.of(
              "vent-clash",
              gap <= 0 ? STOP : CAUTION,
              gap <= 0
                  ? text("%s runs into %s.", capital(v.name()), other.name())
                  : text("%s leaves %.1f of board to %s.", capital(v.name()), gap, other.name()),
              gap,
              VentPlanner.APART,
              "mm",
              OWN,
              "Move one of the two"));
    }
  }

  private void dustCover() {
    findings.add(
        Finding.plain(
            "vent-dust-cover",
            NOTE,
            "The dust cover goes over the vents in one piece.",
            FindingRules.PRACTICE,
            "Take a cloth that breathes; nothing that is coated"));
  }
}
