package padwright.pattern;

import static padwright.design.Finding.Level.CAUTION;
import static padwright.design.Finding.Level.NOTE;
import static padwright.design.Finding.Level.STOP;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import padwright.design.Finding;
import padwright.design.PadSpec;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Open;
import padwright.design.WrappedPad.Run;
import padwright.shape.EdgeEnds;
import padwright.shape.EdgeEnds.EdgeEnd;
import padwright.shape.EdgeEnds.Kind;
import padwright.shape.Outlines;
import padwright.shape.PadShape;

/** Runs of the edge that differ from the rest: where the covering ends there, and what follows. */
final class RunRules {
  private static final String OWN = "own choice";

  private RunRules() {}

  /**
   * Where the covering ends along each side.
   *
   * @param names of the outline's stretches; a passage ends as its side does
   * @param turnUnder of the sides that no run names
   */
  static EdgeEnds ends(WrappedPad pad, List<String> names, double turnUnder) {
    Map<String, EdgeEnd> special = new HashMap<>();
    for (Run run : pad.runs()) {
      EdgeEnd end = null;
      if (run.open().isPresent()) {
        end = new EdgeEnd(run.open().get() == Open.BARE ? Kind.BARE : Kind.GLUED, 0);
      } else if (run.turnUnder().isPresent()) {
        end = new EdgeEnd(Kind.TURNED, run.turnUnder().getAsDouble());
      }
      for (String side : run.sides()) {
        if (end != null) {
          special.put(side, end);
        }
      }
    }
    for (String name : names) {
      EdgeEnd end = special.get(Outlines.sideOf(name));
      if (end != null) {
        special.put(name, end);
      }
    }
    return new EdgeEnds(new EdgeEnd(Kind.TURNED, turnUnder), special);
  }

  static List<Finding> of(WrappedPad pad, PadSpec spec, PadShape shape) {
    List<Finding> findings = new ArrayList<>();
    for (Run run : pad.runs()) {
      String sides = FindingRules.capital(String.join(", ", run.sides()));
      if (run.open().isPresent()) {
        findings.add(open(sides, run.open().get()));
      } else if (run.turnUnder().isPresent()) {
        turnUnder(findings, sides, run.turnUnder().getAsDouble(), spec, shape);
      }
    }
    findings.addAll(SectionRules.of(pad, spec, shape));
    return findings;
  }

  private static Finding open(String sides, Open open) {
    boolean bare = open == Open.BARE;
    return Finding.plain(
        "run-open",
        bare ? NOTE : CAUTION,
        sides
            + (bare
                ? ": the side is left bare; the covering ends at the edge of the face, with no"
                    + " staples and no grip. At its ends the sides beside it stop level with it."
                : ": the covering is glued to the side and cut off level with the back; glue on"
                    + " foam holds little, and nothing is stapled there."),
        OWN,
        bare
            ? "Set the part with this side against a wall"
            : "Glue it to the board's edge as well, and let it set before the corners are pulled");
  }

  /** A turn-under of its own: stated where it changes, and with room for its staples. */
  private static void turnUnder(
      List<Finding> findings, String sides, double turnUnder, PadSpec spec, PadShape shape) {
    double usual = shape.ends().usual().turnUnder();
    findings.add(
        Finding.of(
            "run-turn-under",
            NOTE,
            FindingRules.text(
                "%s: the turn-under is %.1f, elsewhere %.1f; the cut line steps where they meet.",
                sides, turnUnder, usual),
            turnUnder,
            usual,
            "mm",
            "as given in the job",
            "None needed"));
    double room = turnUnder - spec.edgeDistance();
    if (room < PadBuild.BEHIND_STAPLE) {
      findings.add(
          Finding.of(
              "run-turn-under-no-room",
              STOP,
              FindingRules.text(
                  "%s: a turn-under of %.1f leaves %.1f behind staples %.1f from the edge; %.1f is"
                      + " needed.",
                  sides, turnUnder, room, spec.edgeDistance(), PadBuild.BEHIND_STAPLE),
              room,
              PadBuild.BEHIND_STAPLE,
              "mm",
              OWN,
              "Give the run a larger turn-under, or leave it open and glue it"));
    }
  }
}
