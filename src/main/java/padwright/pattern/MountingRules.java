package padwright.pattern;

import static padwright.design.Finding.Level.CAUTION;
import static padwright.design.Finding.Level.NOTE;
import static padwright.design.Finding.Level.STOP;
import static padwright.pattern.FindingRules.OWN;
import static padwright.pattern.FindingRules.text;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import padwright.design.Finding;
import padwright.design.PadSpec;
import padwright.design.WrappedPad.Finish;
import padwright.design.WrappedPad.Fixing;
import padwright.design.WrappedPad.Hole;
import padwright.design.WrappedPad.Host;
import padwright.fastening.Mounting;
import padwright.fastening.MountingPlanner;
import padwright.fastening.Withdrawal;
import padwright.geometry.MovedIn;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.material.Screw;
import padwright.shape.PadShape;

/** What the mounting gives cause to say. */
final class MountingRules {
  /** Foam tape is at least so many times as thick as the mismatch; trade page. */
  private static final double TAPE = 2;

  private static final String REACH = "length against host and packing";

  private final List<Finding> findings = new ArrayList<>();
  private final PadSpec spec;
  private final PadShape shape;

  MountingRules(PadSpec spec, PadShape shape) {
    this.spec = spec;
    this.shape = shape;
  }

  List<Finding> findings() {
    return findings;
  }

  void mounting(Host host, Mounting mounting, MountingPlanner planner, double standOff) {
    if (host.fixing() == Fixing.TAPE
        && host.finish() != Finish.BARE
        && host.finish() != Finish.LACQUERED) {
      findings.add(
          Finding.plain(
              "mount-tape",
              CAUTION,
              "Tape does not hold on a waxed or oiled host.",
              FindingRules.PRACTICE,
              "Clean the place down to bare wood, or screw from behind"));
    }
    if (host.fixing() == Fixing.TAPE && standOff > 0) {
      findings.add(
          Finding.of(
              "mount-tape-gap",
              NOTE,
              text(
                  "The turn-under holds the middle of the back %.1f off the host; tape there bridges"
                      + " no gap without packing.",
                  standOff),
              standOff,
              standOff * TAPE,
              "mm",
              "trade rule: foam tape at least twice as thick as the mismatch",
              "Glue the packing in first"));
    }
    if (mounting.packing().isEmpty() && standOff > 0 && host.fixing() != Fixing.NONE) {
      findings.add(
          Finding.plain(
              "mount-no-packing",
              NOTE,
              "The turn-unders leave no room for packing between them.",
              "geometry of the base",
              "The part bears on its turn-unders"));
    }
    int fields = pieces(shape.ends().deepest() + MountingPlanner.PACKING_CLEAR);
    if (mounting.packing().isPresent() && host.fixing() != Fixing.NONE && fields > 1) {
      findings.add(
          Finding.of(
              "mount-packing-apart",
              CAUTION,
              text(
                  "Between the turn-unders there is room for packing in %d places; the piece drawn is"
                      + " for the largest.",
                  fields),
              fields,
              1,
              "pieces",
              "geometry of the base",
              "Cut packing for the others to fit, from the same sheet"));
    }
    int folds = pieces(spec.dustCoverInset());
    if (folds > 1) {
      findings.add(
          Finding.of(
              "dust-cover-apart",
              CAUTION,
              text(
                  "The dust cover's edge, inside the base's, comes in %d pieces where the base is"
                      + " narrow.",
                  folds),
              folds,
              1,
              "pieces",
              "geometry of the base",
              "Fold it along the lines drawn, and cut it through at the narrow place"));
    }
    mounting.screw().ifPresent(s -> screw(host, s, mounting, planner, standOff));
  }

  /** Into how many pieces the back comes so far inside its edge. */
  private int pieces(double in) {
    return in > 0 ? MovedIn.loops(shape.outline(), -in).size() : 1;
  }

  private void screw(
      Host host, Screw screw, Mounting mounting, MountingPlanner planner, double standOff) {
    if (mounting.screwLength().isEmpty()) {
      double beyond = planner.into(0, standOff);
      OptionalDouble margin =
          screw.lengths().stream()
              .mapToDouble(l -> planner.into(l, standOff))
              .filter(into -> into > 0)
              .map(into -> spec.leastThickness() - into)
              .max();
      double longest = screw.lengths().stream().mapToDouble(l -> l).max().orElse(0);
      findings.add(
          Finding.of(
              "mount-screw-none",
              STOP,
              text(
                  "No length of %s reaches through %.1f of host and stays %.1f short of the foam.",
                  screw.name(), host.thickness().orElse(0), MountingPlanner.LEAST_MARGIN),
              margin.orElse(longest),
              margin.isPresent() ? MountingPlanner.LEAST_MARGIN : -beyond,
              "mm",
              margin.isPresent() ? OWN : REACH,
              "Countersink the host deeper, or take another screw"));
      return;
    }
    double into = planner.into(mounting.screwLength().getAsDouble(), standOff);
    double margin = spec.leastThickness() - into;
    double holds = Withdrawal.screw(spec.board().specificGravity(), screw.shank(), into);
    if (margin <= 0) {
      findings.add(
          Finding.of(
              "mount-screw-through",
              STOP,
              text(
                  "A screw of %.0f goes %.1f into the base and comes through its foam.",
                  mounting.screwLength().getAsDouble(), into),
              margin,
              0,
              "mm",
              "length less host and packing against the base's least thickness",
              shorter(screw, planner, standOff)));
    } else if (margin < MountingPlanner.LEAST_MARGIN) {
      findings.add(
          Finding.of(
              "mount-screw-margin",
              CAUTION,
              text(
                  "A screw of %.0f leaves %.1f of base under its point.",
                  mounting.screwLength().getAsDouble(), margin),
              margin,
              MountingPlanner.LEAST_MARGIN,
              "mm",
              OWN,
              shorter(screw, planner, standOff)));
    } else if (into <= 0) {
      findings.add(
          Finding.of(
              "mount-screw-short",
              STOP,
              text(
                  "A screw of %.0f does not reach the base through %.1f of host and packing.",
                  mounting.screwLength().getAsDouble(), -planner.into(0, standOff)),
              mounting.screwLength().getAsDouble(),
              -planner.into(0, standOff),
              "mm",
              REACH,
              shorter(screw, planner, standOff)));
    } else {
      findings.add(
          Finding.of(
              "mount-screw-hold",
              NOTE,
              text(
                  "Each %s goes %.1f into the base and holds about %.0f N at most.",
                  screw.name(), into, holds),
              OptionalDouble.of(holds),
              OptionalDouble.empty(),
              "N",
              "Wood Handbook FPL-GTR-282 (2021) Eq. 8-10, ultimate; board for solid wood is an"
                  + " extrapolation of ours",
              "Use a stop on the drill and defer to local rules for parts that carry a person"));
    }
    for (Hole h : mounting.positions()) {
      double edge = edgeDistance(h);
      if (edge < screw.edgeDistance()) {
        findings.add(
            Finding.of(
                "mount-screw-edge",
                CAUTION,
                text("The screw at %.0f, %.0f is %.1f from the base's edge.", h.x(), h.y(), edge),
                edge,
                screw.edgeDistance(),
                "mm",
                screw.origin().source(),
                "Move it further in"));
      }
    }
  }

  private static String shorter(Screw screw, MountingPlanner planner, double standOff) {
    return planner.longest(screw, standOff).isPresent()
        ? text("Take length %.0f", planner.longest(screw, standOff).getAsDouble())
        : "Countersink the host deeper, or take another screw";
  }

  private double edgeDistance(Hole h) {
    Vec2 p = new Vec2(h.x(), h.y());
    List<Vec2> points = shape.outline().flattened(0.05);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < points.size(); i++) {
      Vec2 a = points.get(i);
      Vec2 d = points.get((i + 1) % points.size()).minus(a);
      double t = Math.max(0, Math.min(1, p.minus(a).dot(d) / Math.max(1e-12, d.dot(d))));
      least = Math.min(least, a.along(d, t).distance(p));
    }
    return Polygons.contains(points, p) ? least : -least;
  }
}
