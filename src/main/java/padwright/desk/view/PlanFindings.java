package padwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import padwright.design.Finding;
import padwright.desk.edit.PlanItem;
import padwright.geometry.Vec2;

/** What of a plan a finding names: sides, points, cut-outs and the like. */
public final class PlanFindings {
  private PlanFindings() {}

  /**
   * What of the plan a finding names, sides first; nothing where it speaks of the part as a whole.
   *
   * @param items all there are
   */
  public static List<PlanItem> named(Finding finding, List<PlanItem> items) {
    List<PlanItem> named = new ArrayList<>();
    for (boolean side : new boolean[] {true, false}) {
      items.stream()
          .filter(i -> i instanceof PlanItem.Side == side && names(finding.message(), i.words()))
          .forEach(named::add);
    }
    return named;
  }

  /**
   * A word with a number means one thing wherever it stands; "back" and "left" are sides only where
   * a sentence begins with them: "Front, left: ..." or "Front to left: ...".
   */
  private static boolean names(String sentence, String words) {
    if (Character.isDigit(words.charAt(words.length() - 1))) {
      String whole = "(?<!\\w)" + Pattern.quote(words) + "(?!\\d)";
      return Pattern.compile(whole, Pattern.CASE_INSENSITIVE).matcher(sentence).find();
    }
    int colon = sentence.indexOf(':');
    String head = sentence.substring(0, Math.max(0, colon)).toLowerCase(Locale.ROOT);
    return List.of(head.split(", | to | and ")).contains(words.toLowerCase(Locale.ROOT));
  }

  /** Where on the plan a thing is marked; empty where it has no one place. */
  public static Optional<Vec2> place(PlanItem item, PlanModel plan) {
    if (item instanceof PlanItem.Point p) {
      return Optional.of(plan.points().get(p.number()).at());
    } else if (item instanceof PlanItem.Side s) {
      return plan.leg(s.name()).map(PlanModel.Leg::middle);
    } else if (item instanceof PlanItem.Member m) {
      return plan.openings().stream()
          .filter(o -> o.member().equals(m.member()))
          .map(o -> o.path().bounds().centre())
          .findFirst()
          .or(
              () ->
                  plan.places().stream()
                      .filter(p -> p.member().equals(m.member()))
                      .map(PlanModel.Place::at)
                      .findFirst());
    }
    return Optional.empty();
  }
}
