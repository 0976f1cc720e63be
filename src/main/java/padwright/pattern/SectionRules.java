package padwright.pattern;

import static padwright.design.Finding.Level.CAUTION;
import static padwright.design.Finding.Level.NOTE;
import static padwright.design.Finding.Level.STOP;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import padwright.design.Finding;
import padwright.design.PadSpec;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Run;
import padwright.shape.Outlines;
import padwright.shape.PadShape;
import padwright.shape.Passage;

/** What becomes of the edge where its shape or overhang changes. */
final class SectionRules {
  private static final String OWN = "own choice";

  private SectionRules() {}

  static List<Finding> of(WrappedPad pad, PadSpec spec, PadShape shape) {
    List<Finding> findings = new ArrayList<>();
    Outlines.Named outline = new Outlines.Named(shape.outline(), shape.sideNames());
    for (RunStacks.Change change : RunStacks.changes(outline, shape.sections())) {
      findings.add(
          change.sharp()
              ? atCorner(change, shape)
              : change.hollow() ? hollow(change) : smooth(change, pad, shape));
    }
    for (String name : shape.sideNames()) {
      Passage passage = shape.sections().passages().get(name);
      if (passage != null) {
        findings.add(passage(name, passage, spec));
      }
    }
    return findings;
  }

  private static Finding atCorner(RunStacks.Change change, PadShape shape) {
    double before = shape.sections().at(change.before(), false).taut().developed();
    double after = shape.sections().at(change.after(), true).taut().developed();
    return Finding.of(
        "run-section",
        NOTE,
        FindingRules.text(
            "%s: the edge changes its shape or overhang at the corner; both edges run on to"
                + " the arris between them and are mitred there, and the cover's sides are"
                + " %.1f and %.1f.",
            where(change), before, after),
        before,
        after,
        "mm",
        OWN,
        "Shape the foam right up to the corner from both sides, then pull the covering");
  }

  private static Finding hollow(RunStacks.Change change) {
    return Finding.plain(
        "run-section-hollow",
        STOP,
        where(change)
            + ": the edge changes its shape or overhang at a hollow corner, and a gusset between"
            + " two sections is not worked out.",
        OWN,
        "Let the run end at a corner that points outwards, or on a straight side with a passage");
  }

  /** A change without a corner for which no passage was laid: none asked, or no room for it. */
  private static Finding smooth(RunStacks.Change change, WrappedPad pad, PadShape shape) {
    OptionalDouble asked = OptionalDouble.empty();
    var before = shape.sections().at(change.before(), false);
    var after = shape.sections().at(change.after(), true);
    for (Run run : pad.runs()) {
      var own = shape.sections().of(run.sides().get(0));
      if (run.passage().isPresent() && (own == before || own == after)) {
        asked = run.passage();
      }
    }
    if (asked.isEmpty()) {
      return Finding.plain(
          "run-section-smooth",
          STOP,
          where(change)
              + ": the edge changes its shape or overhang where there is no corner, and the job does"
              + " not say over what length one passes into the other.",
          OWN,
          "Give the run a \"passage\", a length of the straight side beyond it, or let it end at a"
              + " sharp corner that points outwards");
    }
    double straight = 0;
    for (int i = 0; i < shape.sideNames().size(); i++) {
      String name = shape.sideNames().get(i);
      boolean own = pad.runs().stream().anyMatch(r -> r.sides().contains(Outlines.sideOf(name)));
      boolean beside = !own && (name.equals(change.before()) || name.equals(change.after()));
      if (beside && !shape.outline().segments().get(i).isArc()) {
        straight = Math.max(straight, shape.outline().segments().get(i).length());
      }
    }
    boolean curve = straight == 0;
    return Finding.of(
        "run-passage-no-room",
        STOP,
        curve
            ? FindingRules.text(
                "%s: a passage of %.1f finds no straight side beyond the run: a curve begins there.",
                where(change), asked.getAsDouble())
            : FindingRules.text(
                "%s: a passage of %.1f, with %.0f of the side left beside it, finds no room on a"
                    + " straight side of %.1f.",
                where(change), asked.getAsDouble(), PassageLayer.LEFT, straight),
        asked.getAsDouble(),
        Math.max(0, straight - PassageLayer.LEFT),
        "mm",
        OWN,
        curve
            ? "Name the curve beside the run in the run as well, or end the run at a sharp corner"
            : "Make the passage shorter, or name the curve beside the run in the run as well");
  }

  private static Finding passage(String name, Passage passage, PadSpec spec) {
    double most = Math.min(spec.covering().stretchAlong(), spec.covering().stretchAcross());
    double from = passage.start().taut().developed();
    double to = passage.end().taut().developed();
    boolean taken = passage.stretch() <= most;
    String sentence =
        FindingRules.text(
            "%s: over %.1f the edge passes from one shape or overhang into the other in straight"
                + " lines, the cover's side from %.1f to %.1f; the covering is stretched there by"
                + " %.1f %% at most%s.",
            FindingRules.capital(name),
            passage.length(),
            from,
            to,
            100 * passage.stretch(),
            taken ? "" : FindingRules.text(", more than the %.1f %% it takes", 100 * most));
    return Finding.of(
        "run-passage",
        taken ? NOTE : CAUTION,
        sentence,
        100 * passage.stretch(),
        100 * most,
        "%",
        "length of a thread along the passage, by Pythagoras",
        taken
            ? "Mark both ends of the passage on the foam and shape it to a straightedge between them"
            : most > 0
                ? FindingRules.text(
                    "Make the passage %.0f long", Math.ceil(passage.lengthFor(most)))
                : "Let the edge change at a sharp corner that points outwards");
  }

  private static String where(RunStacks.Change change) {
    return FindingRules.capital(change.before()) + " to " + change.after();
  }
}
