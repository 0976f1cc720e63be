package padwright.pattern;

import static padwright.design.Finding.Level.CAUTION;
import static padwright.design.Finding.Level.NOTE;
import static padwright.design.Finding.Level.STOP;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.CloseCorners;
import padwright.cover.CornerPlan;
import padwright.cover.CoverPlan;
import padwright.cover.Gusset;
import padwright.design.Finding;
import padwright.design.PadSpec;
import padwright.design.WrappedPad.Treatment;

/** What is to be said where an outline is hollow and the covering has too little length. */
final class HollowRules {
  /** A gusset that slants by less, mm, is sewn without a word: a stitch. */
  private static final double SLANTED = 2;

  /** From this part of what they need, the folds of two corners can be laid on each other; own. */
  private static final double OVERLAP = 0.5;

  /** Stretches that differ by less look the same to a tenth of a per cent. */
  private static final double ALIKE = 0.001;

  private static final String SOURCE = "2 tan(beta/2) (s - x), two mitres that part";

  private final PadSpec spec;

  HollowRules(PadSpec spec) {
    this.spec = spec;
  }

  List<Finding> of(CoverPlan cover) {
    List<Finding> findings = new ArrayList<>();
    for (CornerPlan c : cover.corners()) {
      if (c.treatment() == Treatment.GUSSET) {
        findings.add(
            Finding.of(
                "corner-gusset",
                CAUTION,
                FindingRules.text(
                    "%s is hollow: the covering is slit there and opens %.0f at the back; a gusset"
                        + " has to be sewn in before the cover goes on.",
                    FindingRules.capital(c.name()), c.opening()),
                c.opening(),
                0,
                "mm",
                SOURCE,
                FindingRules.text(
                    "Cut the gusset, sew it with %.0f of allowance at the trim line running out to"
                        + " nothing at the tip%s, and try it on an off-cut first",
                    Gusset.ALLOWANCE, shaped(cover, c))));
      } else if (c.treatment() == Treatment.CLIPS) {
        findings.add(stretch(c));
      }
    }
    return findings;
  }

  static Finding overlaps() {
    return Finding.plain(
        "cover-overlaps",
        STOP,
        "The cut line would cross itself: a hollow is too narrow for the walls and turn-unders"
            + " of both its sides, or the cuts of two tight corners meet.",
        "the blank's own outline",
        "Widen the hollow, take less foam or turn-under, or cover the part in two pieces with"
            + " a seam");
  }

  /** Corners nearer than what the covering does at both of them takes. */
  static List<Finding> close(List<CloseCorners.Pair> pairs) {
    List<Finding> findings = new ArrayList<>();
    for (CloseCorners.Pair p : pairs) {
      // Folds that only overlap can be laid on each other; of less than half nothing lies flat.
      boolean folds = !p.hollow() && p.apart() >= OVERLAP * p.needed();
      findings.add(
          Finding.of(
              "corners-close",
              folds ? CAUTION : STOP,
              FindingRules.text(
                  p.hollow()
                      ? "%s and %s are %.1f apart, and what the covering of both takes of %s, down"
                          + " the wall and under the back, is %.1f: there is no strip left between"
                          + " them to staple."
                      : "%s and %s are %.1f apart, and what their turn-unders take of %s under the"
                          + " back is %.1f: their folds lie on each other.",
                  FindingRules.capital(p.first()),
                  p.second(),
                  p.apart(),
                  p.side(),
                  p.needed()),
              p.apart(),
              p.needed(),
              "mm",
              "the wall and turn-under times tan(beta/2), and the seam's allowance",
              p.hollow()
                  ? "Bring the corners further apart, take less foam or turn-under, or cover the"
                      + " part in two pieces with a seam"
                  : "Draw them as one corner or as one arc, which is pleated; or take less"
                      + " turn-under"));
    }
    return findings;
  }

  /** What a shaped edge asks of the gusset, whose arris bends there. */
  private static String shaped(CoverPlan cover, CornerPlan c) {
    return cover.gussets().stream()
        .filter(g -> g.corner().equals(c.name()))
        .map(HollowRules::shaped)
        .findFirst()
        .orElse("");
  }

  private static String shaped(Gusset g) {
    if (g.halved()) {
      return "; over the shaped edge no one piece lies without a fold, so its two halves are cut"
          + " apart: sew them together down the arris first";
    }
    return g.slant() < SLANTED
        ? ""
        : FindingRules.text(
            "; its seams are as long as the cover's, but over the shaped edge it has to give %.0f"
                + " aslant between crease and seam",
            g.slant());
  }

  private Finding stretch(CornerPlan c) {
    double gives = Math.min(spec.covering().stretchAlong(), spec.covering().stretchAcross());
    boolean takes = c.stretchNeeded() <= gives;
    boolean cannot = Double.isInfinite(c.stretchNeeded());
    String need =
        cannot
            ? "cannot be stretched round it, since the wall is deeper than its radius"
            : FindingRules.text(
                Math.abs(c.stretchNeeded() - gives) < ALIKE
                    ? "has to stretch %.2f %% along it and gives %.2f %%"
                    : "has to stretch %.1f %% along it and gives %.1f %%",
                100 * c.stretchNeeded(),
                100 * gives);
    return Finding.of(
        "hollow-stretch",
        takes ? NOTE : STOP,
        FindingRules.text(
            "%s is hollow%s: the covering %s; %d %s the turn-under open%s.",
            FindingRules.capital(c.name()),
            c.radius() > 0 ? FindingRules.text(" with a radius of %.0f", c.radius()) : "",
            need,
            c.pleats(),
            c.pleats() == 1 ? "clip lets" : "clips let",
            c.row().spacing() > 0
                ? FindingRules.text(
                    ", %.1f apart, %.0f short of the back arris", c.row().spacing(), c.row().stop())
                : ""),
        cannot ? -1 : 100 * c.stretchNeeded(),
        100 * gives,
        "%",
        "(r - x) / (r - s) - 1, arcs about one centre; stretch: "
            + spec.covering().origin().source(),
        takes
            ? "Pull along the curve from its middle to its ends"
            : "Take a covering that stretches more, a lower pad or a larger radius; or a hollow"
                + " corner instead of the curve, with a gusset");
  }
}
