package padwright.desk.view;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import padwright.design.WrappedPad;
import padwright.pattern.PartResult;
import padwright.shape.Section;

/**
 * Across which edge a part is cut: the one that most sides share, or a side that has its own.
 *
 * @param side empty for the usual one
 * @param run number of the run that gives the side its own edge; empty for the usual one
 */
public record SectionCut(String side, OptionalInt run) {
  /** The edge of every side that was not given another. */
  public static final SectionCut USUAL = new SectionCut("", OptionalInt.empty());

  /** What it is called in a list. */
  public String title() {
    return side.isEmpty() ? "usual edge" : side;
  }

  /** The usual edge, and one side for each other section there is; passages are left out. */
  public static List<SectionCut> all(PartResult result) {
    List<SectionCut> cuts = new ArrayList<>(List.of(USUAL));
    Set<Section> seen = new HashSet<>(List.of(result.shape().section()));
    // Straight sides first: a rounding that shares a side's section is not what it is called.
    for (boolean arcs : new boolean[] {false, true}) {
      for (int i = 0; i < result.shape().sideNames().size(); i++) {
        String name = result.shape().sideNames().get(i);
        boolean passage = result.shape().sections().passages().containsKey(name);
        if (result.shape().outline().segments().get(i).isArc() == arcs
            && !passage
            && seen.add(result.shape().sections().of(name))) {
          cuts.add(new SectionCut(name, run(result.asked(), name)));
        }
      }
    }
    return cuts;
  }

  private static OptionalInt run(WrappedPad pad, String side) {
    for (int i = 0; i < pad.runs().size(); i++) {
      if (pad.runs().get(i).sides().contains(side)) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  Section of(PartResult result) {
    return side.isEmpty() ? result.shape().section() : result.shape().sections().of(side);
  }

  /** The field that a size of this edge stands in: the run's own where the run gives it. */
  String place(WrappedPad pad, String usual) {
    if (run.isEmpty() || run.getAsInt() >= pad.runs().size()) {
      return usual;
    }
    WrappedPad.Run own = pad.runs().get(run.getAsInt());
    String before = "runs[" + run.getAsInt() + "].";
    if (usual.equals("cover.turnUnder") && own.turnUnder().isPresent()) {
      return before + "turnUnder";
    }
    if (usual.endsWith(".overhang") && own.overhang().isPresent()) {
      return before + "overhang";
    }
    return usual.startsWith("edge.") && own.edge().isPresent() ? before + usual : usual;
  }
}
