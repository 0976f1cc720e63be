package padwright.pattern;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import padwright.design.Finding;
import padwright.dome.DomeAnalyst;
import padwright.dome.DomeReport;
import padwright.dome.DomeReport.Seam;

/**
 * What a domed top gives cause to say: whether the covering takes it, and where seams would help.
 */
final class DomeRules {
  private static final String SOURCE =
      "Reckoned: the face laid flat so that its lengths stay as true as can be; what the covering"
          + " takes is the catalogue's";

  private static final String TRY_IT =
      "Pin a piece of the covering over the foam before you cut the cover";

  private DomeRules() {}

  static List<Finding> findings(Optional<DomeReport> dome) {
    return dome.map(d -> List.of(finding(d))).orElse(List.of());
  }

  private static Finding finding(DomeReport d) {
    if (d.refusal().isPresent()) {
      return Finding.of(
          "dome-unknown",
          Finding.Level.CAUTION,
          FindingRules.text(
              "the top is domed, and what that asks of the covering is not known: %s",
              d.refusal().get()),
          d.surplus(),
          DomeAnalyst.SURPLUS,
          "mm",
          SOURCE,
          TRY_IT);
    }
    String asked =
        FindingRules.text(
            "over the domed top the covering must stretch by up to %.1f %% (%s) and be eased by up"
                + " to %.1f %% (%s)",
            100 * d.stretched().strain(),
            d.stretched().near(),
            -100 * d.eased().strain(),
            d.eased().near());
    String takes =
        FindingRules.text("%.1f %% and %.1f %%", 100 * d.stretchTaken(), 100 * d.easeTaken());
    if (d.taken()) {
      return Finding.of(
          "dome-taken",
          Finding.Level.NOTE,
          asked + "; it takes " + takes,
          asked(d),
          taken(d),
          "%",
          SOURCE,
          "Pull it over the dome from the middle of each side first, and work what is full at the"
              + " corners out to the edge before you fold them");
    }
    String message = asked + "; it takes only " + takes;
    if (d.takenWithSeams()) {
      return Finding.of(
          "dome-seams",
          Finding.Level.CAUTION,
          message,
          asked(d),
          taken(d),
          "%",
          SOURCE,
          "Sew " + seams(d) + "; or let the corners' pleats begin on the face");
    }
    String other = "ower the crown or set it in less, or take a covering that stretches more";
    return Finding.of(
        "dome-too-full",
        Finding.Level.CAUTION,
        message,
        asked(d),
        taken(d),
        "%",
        SOURCE,
        d.seams().isEmpty() ? "L" + other : "Even with " + seams(d) + ": l" + other);
  }

  private static String seams(DomeReport d) {
    Set<String> where = new LinkedHashSet<>();
    Set<String> slits = new LinkedHashSet<>();
    double longest = 0;
    for (Seam s : d.seams()) {
      where.add(s.corner());
      if (s.hollow()) {
        slits.add(s.corner());
      }
      longest = Math.max(longest, s.length());
    }
    return FindingRules.text(
        "%s (%s), up to %.0f mm long, from the edge of the face inwards, which leaves %.1f %% to"
            + " stretch and %.1f %% to ease%s",
        d.seams().size() == 1 ? "a seam" : d.seams().size() + " seams",
        String.join(", ", where),
        longest,
        100 * d.leftStretched(),
        -100 * d.leftEased(),
        slits.isEmpty()
            ? ""
            : " (at "
                + String.join(", ", slits)
                + " the outline is hollow: there the seam opens, and a piece has to be let in)");
  }

  /** Whether it is the stretch that is over its limit, or nearer to it. */
  private static boolean stretched(DomeReport d) {
    return d.stretched().strain() * d.easeTaken() >= -d.eased().strain() * d.stretchTaken();
  }

  private static double asked(DomeReport d) {
    return 100 * (stretched(d) ? d.stretched().strain() : -d.eased().strain());
  }

  private static double taken(DomeReport d) {
    return 100 * (stretched(d) ? d.stretchTaken() : d.easeTaken());
  }
}
