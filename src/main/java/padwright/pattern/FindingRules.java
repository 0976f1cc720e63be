package padwright.pattern;

import static padwright.design.Finding.Level.CAUTION;
import static padwright.design.Finding.Level.NOTE;
import static padwright.design.Finding.Level.STOP;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import padwright.cover.CloseCorners;
import padwright.cover.CornerPlan;
import padwright.cover.CornerRefusal;
import padwright.cover.CoverPlan;
import padwright.cover.WrapProof;
import padwright.cover.WrapReport;
import padwright.design.Finding;
import padwright.design.PadSpec;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Bounds;
import padwright.geometry.MeetingDepth;
import padwright.measure.Sentence;
import padwright.shape.EdgeEnds;
import padwright.shape.PadShape;

/** What a part's shape and cover give cause to say. */
final class FindingRules {
  static final String OWN = "our own limit";
  static final String PRACTICE = "common practice, no source";

  /** A hidden flap strained more than this is worth a word; own choice. */
  private static final double FLAP_STRAIN = 0.1;

  /** What the proof's lengths may be out by, mm. */
  private static final double ROUNDING = 0.05;

  private final List<Finding> findings = new ArrayList<>();
  private final PadSpec spec;

  FindingRules(PadSpec spec) {
    this.spec = spec;
  }

  List<Finding> findings() {
    return findings;
  }

  void turnUnder(double asked) {
    if (asked > spec.turnUnder() + 1e-9) {
      findings.add(
          Finding.of(
              "turn-under-meets",
              CAUTION,
              text(
                  "Two turn-unders of %.1f would meet on this narrow base; they are trimmed to butt"
                      + " at %.1f, the largest that fits.",
                  asked, spec.turnUnder()),
              asked,
              spec.turnUnder(),
              "mm",
              "geometry of the base",
              text("Set the turn-under to %.1f or less", spec.turnUnder())));
    }
    double room = spec.turnUnder() - spec.edgeDistance();
    if (room < PadBuild.BEHIND_STAPLE) {
      findings.add(
          Finding.of(
              "turn-under-no-room",
              STOP,
              text(
                  "A turn-under of %.1f leaves %.1f behind staples %.1f from the edge; %.1f is"
                      + " needed.",
                  spec.turnUnder(), room, spec.edgeDistance(), PadBuild.BEHIND_STAPLE),
              room,
              PadBuild.BEHIND_STAPLE,
              "mm",
              OWN,
              "Staple nearer the edge, widen the base, or glue the turn-under"));
    }
  }

  /** An edge shaped so deep that it meets its opposite leaves no flat top to pull from. */
  void edge(PadShape shape) {
    double in = -shape.sections().startX();
    double most = in > 0 ? MeetingDepth.upTo(shape.outline(), in) : in;
    if (in > most + ROUNDING) {
      findings.add(
          Finding.of(
              "edge-meets",
              STOP,
              text(
                  "The edge is shaped %.1f in from the base's edge and meets its opposite: the base is"
                      + " at most %.1f to its middle where it is narrowest.",
                  in, most),
              in,
              most,
              "mm",
              "geometry of the section",
              "Round or bevel the edge less, or step the foam back less"));
    }
  }

  void refusedCorners(List<CornerRefusal> refusals) {
    for (CornerRefusal refusal : refusals) {
      findings.add(
          Finding.of(
              "corner-treatment",
              STOP,
              "Corner " + refusal.sentence() + ".",
              refusal.value(),
              refusal.limit(),
              refusal.unit(),
              "geometry of the corner",
              "Leave it to auto, or name another treatment"));
    }
  }

  void wrap(WrapReport wrap, CoverPlan cover, EdgeEnds ends) {
    boolean fails =
        cover.overlaps()
            || wrap.bareArea() > 0
            || wrap.worstShort() > WrapProof.SHORTFALL + ROUNDING;
    // Beside a hollow corner the proof decides whether the strip that is left is enough.
    List<CloseCorners.Pair> close =
        CloseCorners.of(cover, ends).stream().filter(p -> fails || !p.hollow()).toList();
    findings.addAll(HollowRules.close(close));
    // Where corners are too close that is why, and a larger cover would be no remedy.
    boolean explained = close.stream().anyMatch(CloseCorners.Pair::hollow);
    if (cover.overlaps() && !explained) {
      findings.add(HollowRules.overlaps());
    }
    if (wrap.bareArea() > 0 && !explained) {
      findings.add(
          Finding.of(
              "wrap-bare",
              STOP,
              text(
                  "Wrapped back, the cover leaves %.0f mm2 of face or sides bare.",
                  wrap.bareArea()),
              wrap.bareArea(),
              0,
              "mm2",
              "wrap proof",
              "Stop the relief cuts further from the fold, or cut the cover larger"));
    }
    if (wrap.leastHiding() < WrapProof.HIDING - ROUNDING) {
      findings.add(
          Finding.of(
              "wrap-raw-edge",
              STOP,
              text(
                  "A raw edge on a wall lies only %.1f from the fold that hides it.",
                  wrap.leastHiding()),
              wrap.leastHiding(),
              WrapProof.HIDING,
              "mm",
              OWN,
              text("Let relief cuts stop at least %.0f from the fold", WrapProof.HIDING)));
    }
    if (wrap.worstShort() > WrapProof.SHORTFALL + ROUNDING && !explained) {
      findings.add(
          Finding.of(
              "wrap-turn-under",
              STOP,
              text(
                  "Wrapped back, the turn-under falls %.1f short of what it is to have; the least is"
                      + " %.1f.",
                  wrap.worstShort(), wrap.leastTurnUnder()),
              wrap.worstShort(),
              WrapProof.SHORTFALL,
              "mm",
              OWN,
              "Cut the cover larger"));
    }
  }

  void corners(CoverPlan cover) {
    HollowRules hollows = new HollowRules(spec);
    findings.addAll(hollows.of(cover));
    double strain = 0;
    for (CornerPlan c : cover.corners()) {
      strain = Math.max(strain, c.flapStrain());
      if (c.treatment() == Treatment.PLEATS) {
        findings.add(
            Finding.of(
                "corner-pleats",
                NOTE,
                text(
                    "%s: %d pleats take up %.0f of covering; up to %d layers lie on the wall.",
                    capital(c.name()),
                    c.pleats(),
                    c.fullnessAtTrim(),
                    Math.max(c.layersFirst(), c.layersSecond())),
                OptionalDouble.of(c.pleats()),
                OptionalDouble.empty(),
                "",
                "surplus beta (s - x), Gauss-Bonnet",
                "A covering that eases more, or a lower pad, needs fewer"));
      } else if (c.easeNeeded() > 0) {
        findings.add(
            Finding.of(
                "corner-eased",
                NOTE,
                text(
                    "%s: the covering is eased by %.1f %%.",
                    capital(c.name()), 100 * c.easeNeeded()),
                100 * c.easeNeeded(),
                100 * spec.covering().ease(),
                "%",
                PRACTICE,
                "Ease from the middle of the curve outwards"));
      }
    }
    if (strain > FLAP_STRAIN) {
      findings.add(
          Finding.of(
              "corner-flap",
              NOTE,
              text(
                  "The wall bends, so the flap hidden at a corner cannot lie quite flat (about"
                      + " %.0f %% strain); nothing of it shows.",
                  100 * strain),
              100 * strain,
              100 * FLAP_STRAIN,
              "%",
              OWN,
              "Work the flap in with the fingers before the fold is closed"));
    }
  }

  void covering(WrappedPad pad, Bounds cut) {
    double along = pad.cover().stretchAlong();
    double across = pad.cover().stretchAcross();
    if (along > spec.covering().stretchAlong() + 1e-9
        || across > spec.covering().stretchAcross() + 1e-9) {
      boolean first = along - spec.covering().stretchAlong() > 0;
      findings.add(
          Finding.of(
              "cover-stretch",
              CAUTION,
              text("The stretch allowance is more than %s gives by hand.", spec.covering().name()),
              100 * (first ? along : across),
              100 * (first ? spec.covering().stretchAlong() : spec.covering().stretchAcross()),
              "%",
              spec.covering().origin().source(),
              "Take off less, or pull a test strip and measure"));
    }
    double roll = spec.covering().rollWidth();
    double acrossRoll = spec.warpAlongWidth() ? cut.width() : cut.height();
    if (roll > 0 && acrossRoll > roll) {
      findings.add(
          Finding.of(
              "cover-roll-width",
              CAUTION,
              text(
                  "The cover is %.0f across the warp and the covering %.0f wide.",
                  acrossRoll, roll),
              acrossRoll,
              roll,
              "mm",
              spec.covering().origin().source(),
              "Turn the warp the other way if the covering allows it, or join two widths"));
    }
  }

  void opening(List<Double> gap, DryFit fit) {
    if (!gap.isEmpty()) {
      double least = gap.stream().mapToDouble(Double::doubleValue).min().orElse(0);
      findings.add(
          Finding.of(
              "opening-dry-fit",
              NOTE,
              text(
                  "Try the bare base in the opening: the gap on each side must be %s.",
                  fit.gaps(gap)),
              least,
              padwright.material.Constants.value("opening-clearance"),
              "mm",
              "E. A. Johnson, Furniture Upholstery for Schools (1919), ch. IV: at least 3/16 in a"
                  + " side",
              "Plane the base rather than pull the covering thinner"));
    }
  }

  static String capital(String s) {
    return s.isEmpty() ? s : Character.toUpperCase(s.charAt(0)) + s.substring(1);
  }

  static String text(String format, Object... values) {
    return Sentence.of(format, values);
  }
}
