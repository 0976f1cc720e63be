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
import padwright.geometry.MovedIn;
import padwright.geometry.Necks;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.shape.EdgeEnds;
import padwright.shape.EdgeEnds.EdgeEnd;
import padwright.shape.EdgeEnds.Kind;
import padwright.shape.Outlines;
import padwright.shape.PadShape;

/** Runs of the edge that differ from the rest: where the covering ends there, and what follows. */
final class RunRules {
  private static final String OWN = "own choice";

  /** Sides that face each other less squarely, degrees, still pull against each other. */
  private static final double SPLAY = 45;

  /** Where along a side it is asked which way it faces. */
  private static final double[] ACROSS = {0, 0.25, 0.5, 0.75, 1};

  /** Turn-unders are told apart to this, mm. */
  private static final double NEAR = 0.01;

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
        meets(findings, run, sides, shape);
      }
    }
    if (shape.sideNames().stream().noneMatch(shape.ends().stapled())) {
      findings.add(allOpen(shape));
    } else if (oneWay(shape)) {
      findings.add(
          Finding.plain(
              "run-one-way",
              STOP,
              "The sides that hold the covering, turned under or glued, all face one way: it"
                  + " cannot be pulled taut over the others, which are left bare.",
              OWN,
              "Turn a side that faces them under as well, or glue it"));
    }
    findings.addAll(SectionRules.of(pad, spec, shape));
    return findings;
  }

  /** Whether what holds the covering lies within less than half a turn. */
  private static boolean oneWay(PadShape shape) {
    List<Double> held = new ArrayList<>();
    for (int i = 0; i < shape.sideNames().size(); i++) {
      if (!shape.ends().of(shape.sideNames().get(i)).bare()) {
        for (double at : ACROSS) {
          held.add(shape.outline().segments().get(i).directionAt(at).angle());
        }
      }
    }
    held.sort(Double::compare);
    double widest = 0;
    for (int k = 0; k < held.size(); k++) {
      double next = k + 1 < held.size() ? held.get(k + 1) : held.get(0) + 2 * Math.PI;
      widest = Math.max(widest, next - held.get(k));
    }
    return widest > Math.PI + Math.toRadians(SPLAY);
  }

  private static Finding allOpen(PadShape shape) {
    boolean bare = shape.sideNames().stream().allMatch(n -> shape.ends().of(n).bare());
    return Finding.plain(
        "run-all-open",
        bare ? STOP : CAUTION,
        bare
            ? "Every side is left bare: nothing holds the covering, which ends at the edge of the"
                + " face all round."
            : "No side is turned under: nothing is stapled, and only glue on the sides holds the"
                + " covering.",
        OWN,
        "Turn at least two sides that face each other under and staple them");
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

  /** A turn-under of its own must not run into one from the other side of the base. */
  private static void meets(List<Finding> findings, Run run, String sides, PadShape shape) {
    double asked = run.turnUnder().orElse(0);
    if (!meet(run, asked, shape)) {
      return;
    }
    double low = 0;
    double high = asked;
    while (high - low > NEAR) {
      double middle = (low + high) / 2;
      if (meet(run, middle, shape)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    findings.add(
        Finding.of(
            "run-turn-under-meets",
            STOP,
            FindingRules.text(
                "%s: a turn-under of %.1f runs into that of another side; %.1f is the most that the"
                    + " base has room for.",
                sides, asked, low),
            asked,
            low,
            "mm",
            "geometry of the base",
            FindingRules.text(
                "Give the run a turn-under of %.1f or less, or the sides that face it less",
                Math.floor(low * 10) / 10)));
  }

  private static boolean meet(Run run, double turnUnder, PadShape shape) {
    double[] in = new double[shape.sideNames().size()];
    double[] out = new double[in.length];
    for (int i = 0; i < in.length; i++) {
      String name = shape.sideNames().get(i);
      EdgeEnd end = shape.ends().of(name);
      in[i] =
          run.sides().contains(name) || run.sides().contains(Outlines.sideOf(name))
              ? turnUnder
              : end.turnUnder();
      out[i] = -in[i];
    }
    return Necks.room(shape.outline(), in) < -NEAR
        || (mitred(shape.outline(), in) && !MovedIn.of(shape.outline(), out, out).whole());
  }

  /** Whether strips of different depths meet in corners only, so that they can be mitred. */
  private static boolean mitred(Path outline, double[] in) {
    List<Segment> segments = outline.segments();
    for (int i = 0; i < in.length; i++) {
      int next = (i + 1) % in.length;
      double turn = segments.get(i).directionAt(1).cross(segments.get(next).directionAt(0));
      if (in[i] != in[next] && Math.abs(turn) < Outlines.CORNER) {
        return false;
      }
    }
    return true;
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
