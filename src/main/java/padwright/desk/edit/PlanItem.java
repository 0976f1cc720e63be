package padwright.desk.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import padwright.design.OutlineShape.FreePath;
import padwright.design.WrappedPad;
import padwright.shape.Outlines;

/** Something on the plan of a part that can be chosen and changed. */
public sealed interface PlanItem {
  /** The outline as a whole: its kind, and its sizes where it has some. */
  record Outline() implements PlanItem {
    @Override
    public String words() {
      return "Outline";
    }
  }

  /**
   * A point of a drawn outline.
   *
   * @param number from 0
   */
  record Point(int number) implements PlanItem {
    @Override
    public String words() {
      return "Point " + (number + 1);
    }
  }

  /**
   * A side.
   *
   * @param number of the leg of a drawn outline, of the segment of another, from 0
   * @param name as runs name it
   */
  record Side(int number, String name) implements PlanItem {
    @Override
    public String words() {
      return capital(name);
    }
  }

  /**
   * A cut-out, hole, screw place, vent, T-nut or zone.
   *
   * @param member its place, such as {@code fittings.cutOuts[0]}
   */
  record Member(String member, String title) implements PlanItem {
    @Override
    public String words() {
      return title;
    }
  }

  /** What a maker calls it. */
  String words();

  /** All of a part, in order: the outline, its points and sides as they follow, then the rest. */
  static List<PlanItem> of(WrappedPad pad) {
    List<PlanItem> items = new ArrayList<>(List.of(new Outline()));
    List<String> sides = RunEdit.sides(pad);
    if (pad.base().outline() instanceof FreePath) {
      for (int k = 0; k < sides.size(); k++) {
        items.add(new Point(k));
        items.add(new Side(k, sides.get(k)));
      }
    } else {
      List<String> names = Outlines.of(pad.base().outline()).names();
      for (int k = 0; k < names.size(); k++) {
        if (sides.contains(names.get(k))) {
          items.add(new Side(k, names.get(k)));
        }
      }
    }
    for (FieldGroup g : new PartListFields(pad).all()) {
      if (!g.member().startsWith("runs[")) {
        items.add(new Member(g.member(), g.title()));
      }
    }
    return items;
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
