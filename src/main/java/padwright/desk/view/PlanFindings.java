package padwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import padwright.design.Finding;
import padwright.desk.edit.PlanItem;
import padwright.geometry.Vec2;

/** Which sides and points of a plan a finding names. */
public final class PlanFindings {
  private PlanFindings() {}

  /**
   * What of the plan a finding names, sides before points; nothing where it speaks of the part as a
   * whole.
   *
   * @param items all there are
   */
  public static List<PlanItem> named(Finding finding, List<PlanItem> items) {
    List<PlanItem> named = new ArrayList<>();
    items.stream()
        .filter(i -> i instanceof PlanItem.Side && names(finding, i.words()))
        .forEach(named::add);
    items.stream()
        .filter(i -> i instanceof PlanItem.Point && names(finding, i.words()))
        .forEach(named::add);
    return named;
  }

  /** Whole words only: "side 1" is not named by "side 12", nor "front" by "front left". */
  private static boolean names(Finding finding, String words) {
    String rest =
        Character.isDigit(words.charAt(words.length() - 1)) ? "(?!\\d)" : "(?! left| right)\\b";
    Pattern word =
        Pattern.compile(
            "(?<!back |front |\\w)" + Pattern.quote(words) + rest, Pattern.CASE_INSENSITIVE);
    return word.matcher(finding.message()).find();
  }

  /** Where on the plan a thing is marked; empty where it has no one place. */
  public static Optional<Vec2> place(PlanItem item, PlanModel plan) {
    if (item instanceof PlanItem.Point p) {
      return Optional.of(plan.points().get(p.number()).at());
    } else if (item instanceof PlanItem.Side s) {
      return plan.leg(s.name()).map(PlanModel.Leg::middle);
    }
    return Optional.empty();
  }
}
