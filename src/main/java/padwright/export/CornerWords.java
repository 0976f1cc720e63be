package padwright.export;

import java.util.List;
import java.util.Locale;
import padwright.cover.CornerPlan;
import padwright.design.Units;
import padwright.design.WrappedPad.Treatment;

/** The sentence under each picture of a corner: flat, two steps, finished, from the back. */
final class CornerWords {
  private final CornerSolid c;
  private final CornerPlan plan;
  private final Units units;
  private final double clear;
  private final int layersOnBack;
  private final int staples;

  /**
   * @param clear how far staples stay from the corner until it is made
   * @param layersOnBack most layers under a staple at the corner; 0 where none is there
   * @param staples how many stand in a rounding
   */
  CornerWords(CornerSolid corner, Units units, double clear, int layersOnBack, int staples) {
    this.c = corner;
    this.plan = corner.plan();
    this.units = units;
    this.clear = clear;
    this.layersOnBack = layersOnBack;
    this.staples = staples;
  }

  static String name(Treatment t) {
    return t.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  List<String> sentences() {
    return switch (plan.treatment()) {
      case SINGLE_PLEAT, MITRED_END -> single();
      case DOUBLE_PLEAT -> doubled();
      case EASED, PLEATS, NOTCHES, AUTO -> rounded();
      case GUSSET, CLIPS ->
          throw new IllegalArgumentException("a hollow place is not folded: " + plan.name());
    };
  }

  private List<String> single() {
    int layers = Math.max(plan.layersFirst(), plan.layersSecond());
    return List.of(
        "The cover, flat, seen from its face: the corner is cut out with the cover; the relief"
            + " cut stops "
            + mm(plan.reliefStop())
            + " short of the fold that hides it.",
        "Pull the "
            + c.under()
            + " strip down and staple it to within "
            + mm(clear)
            + " of the corner; its flap stands on past the arris.",
        "Lay the flap round the arris on to the "
            + c.over()
            + " side, and fold the "
            + c.over()
            + " strip's edge under along its crease.",
        "Pull the "
            + c.over()
            + " strip down, its folded edge exactly on the arris: one straight fold shows, "
            + layers
            + " layers on the "
            + c.over()
            + " side beside it.",
        "On the back the "
            + c.over()
            + " turn-under lies over the "
            + c.under()
            + " one; drive the corner's staples last"
            + through()
            + ".");
  }

  private List<String> doubled() {
    int layers = Math.max(plan.layersFirst(), plan.layersSecond());
    return List.of(
        "The cover, flat, seen from its face: the tip of the corner is cut off with the cover, as"
            + " drawn.",
        "Pull both strips down and staple them to within "
            + mm(clear)
            + " of the corner: the surplus stands out at the arris as an ear.",
        "Press the ear in with its middle crease down the arris, and crease each half at "
            + halfDegrees(plan.turn() / 4)
            + " degrees from it.",
        "Fold both strips over it exactly at the arris: the two folds meet there, up to "
            + layers
            + " layers on a wall.",
        "On the back fold the "
            + c.over()
            + " turn-under over the "
            + c.under()
            + " one; drive the corner's staples last"
            + through()
            + ".");
  }

  private List<String> rounded() {
    boolean rim = plan.turn() > Math.PI;
    String down =
        rim
            ? "Pull down and staple front, back and both sides, opposite by opposite; "
            : "Pull the straight sides down and staple them to where the rounding begins; ";
    String fullness =
        mm(plan.fullnessAtBack())
            + " of fullness is left to take up where the covering meets the back.";
    String turn = rim ? "the rim" : "the rounding";
    return switch (plan.treatment()) {
      case PLEATS ->
          List.of(
              "The cover, flat, seen from its face: "
                  + plan.pleats()
                  + " pleats, their creases as drawn.",
              down + fullness,
              "Lay the fullness in pleats "
                  + mm(plan.pleatDepth())
                  + " deep, "
                  + (plan.pleats() > 1 ? mm(plan.row().spacing()) + " apart, " : "")
                  + (rim ? "halving the gaps in turn" : "from the middle of the rounding outwards")
                  + ", each opening away from the front.",
              "All " + plan.pleats() + " pleats run straight down the side, evenly spaced.",
              "On the back each pleat lies flat and runs on to the trim line; "
                  + held()
                  + through()
                  + ".");
      case NOTCHES ->
          List.of(
              "The cover, flat, seen from its face: "
                  + plan.pleats()
                  + " V-notches, "
                  + mm(plan.row().spacing())
                  + " apart and "
                  + mm(plan.row().mouth())
                  + " wide at the cut line, cut out with the cover; their points stop "
                  + mm(plan.row().stop())
                  + " past the back arris.",
              down + fullness,
              "Ease the fullness in along "
                  + turn
                  + ", halving the gaps in turn, in waves too small to see"
                  + eased()
                  + ".",
              "The side is smooth: no fold shows.",
              "On the back the notches close, edge to edge; a staple between each pair"
                  + through()
                  + ".");
      default ->
          List.of(
              "The cover, flat, seen from its face: " + turn + " has no cuts.",
              down + fullness,
              "Ease the fullness in along "
                  + turn
                  + ", halving the gaps in turn, in waves too small to see"
                  + eased()
                  + ".",
              "The side is smooth: no fold shows.",
              "On the back the rest of the fullness, "
                  + mm(plan.fullnessAtTrim())
                  + " at the trim line, lies in small even gathers under close staples"
                  + through()
                  + ".");
    };
  }

  /** What holds the pleats: with fewer staples than pleats not every one has its own. */
  private String held() {
    if (staples >= plan.pleats()) {
      return "a staple holds each";
    }
    return "the "
        + staples
        + " staples hold the "
        + plan.pleats()
        + " pleats between them: lay each flat under the nearest one, and add a staple where one"
        + " lifts";
  }

  /** A bench protractor is read to half a degree. */
  private static String halfDegrees(double angle) {
    return PieceNotes.plainNumber(Math.rint(2 * Math.toDegrees(angle)) / 2);
  }

  private String eased() {
    return plan.easeNeeded() > 0
        ? " (at most "
            + PieceNotes.plainNumber(Math.round(1000 * plan.easeNeeded()) / 10.0)
            + " % of its length)"
        : "";
  }

  private String through() {
    return layersOnBack > 1 ? "; through up to " + layersOnBack + " layers there" : "";
  }

  private String mm(double v) {
    double tenths = Math.round(v * 10) / 10.0;
    return units == Units.MM ? PieceNotes.plain(tenths) : PieceNotes.thickness(v, units);
  }
}
