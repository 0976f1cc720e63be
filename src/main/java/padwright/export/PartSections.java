package padwright.export;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import padwright.export.SectionDrawing.Facts;
import padwright.pattern.PartResult;
import padwright.shape.Section;

/** The sections of a part as drawings: the usual one, and one for each side that has another. */
public final class PartSections {
  private PartSections() {}

  public static List<NamedDrawing> all(PartHeader header, PartResult result) {
    List<NamedDrawing> all = new ArrayList<>();
    all.add(new NamedDrawing("section", usual(header, result)));
    Set<Section> drawn = new HashSet<>();
    // Straight sides first: a rounded corner that shares a side's section is not what it is called.
    for (boolean arcs : new boolean[] {false, true}) {
      for (int i = 0; i < result.shape().sideNames().size(); i++) {
        if (result.shape().outline().segments().get(i).isArc() == arcs) {
          side(all, drawn, header, result, result.shape().sideNames().get(i));
        }
      }
    }
    return all;
  }

  private static void side(
      List<NamedDrawing> all,
      Set<Section> drawn,
      PartHeader header,
      PartResult result,
      String side) {
    Section own = result.shape().sections().of(side);
    boolean passage = result.shape().sections().passages().containsKey(side);
    if (!passage && own != result.shape().section() && drawn.add(own)) {
      all.add(new NamedDrawing("section " + side, of(header, result, own, side + " ")));
    }
  }

  /** The section along every side that was not given another. */
  public static Drawing usual(PartHeader header, PartResult result) {
    return of(header, result, result.shape().section(), "");
  }

  private static Drawing of(PartHeader header, PartResult result, Section section, String where) {
    var staples = result.figures().staples();
    Facts facts =
        new Facts(
            result.shape().finishedHeight(),
            result.figures().standOff(),
            staples.leg(),
            staples.single().penetration(),
            staples.single().margin());
    return SectionDrawing.of(header, section, where, result.spec(), facts);
  }
}
