package padwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import padwright.cover.CornerPlan;
import padwright.design.Finding;
import padwright.design.WrappedPad;
import padwright.fastening.StaplePlan;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;

/**
 * Where on a part's drawings a finding is to be seen.
 *
 * @param drawing name of the drawing to show
 * @param at places and lines on it; none where the whole drawing is meant
 */
public record FindingSpot(String drawing, Highlight at) {
  private static final String BASE = "base";
  private static final String COVER = "cover";
  private static final String SECTION = "section";

  /** The drawing that shows a finding best, and the places on it. */
  public static FindingSpot of(Finding finding, PartResult result) {
    String rule = finding.rule();
    if (rule.startsWith("staple-")) {
      return on(BASE, staples(result), List.of(), result);
    } else if (rule.startsWith("mount-screw")) {
      return on(BASE, holes(result.mounting().positions()), List.of(), result);
    } else if (rule.startsWith("vent-")) {
      return on(BASE, holes(result.asked().fittings().vents()), List.of(), result);
    } else if (rule.startsWith("insert-")) {
      List<Vec2> at =
          result.asked().fittings().inserts().stream().map(i -> new Vec2(i.x(), i.y())).toList();
      return on(BASE, at, List.of(), result);
    } else if (rule.startsWith("zone-")) {
      List<Vec2> at =
          result.asked().fittings().zones().stream().map(z -> new Vec2(z.x(), z.y())).toList();
      return on(BASE, at, List.of(), result);
    } else if (rule.startsWith("cutout-")) {
      List<Vec2> at =
          result.asked().fittings().cutOuts().stream().map(c -> new Vec2(c.x(), c.y())).toList();
      return on(BASE, at, List.of(), result);
    } else if (rule.startsWith("run-")) {
      return on(COVER, List.of(), sides(finding, result), result);
    } else if (rule.startsWith("foam-") || rule.startsWith("edge-") || rule.startsWith("dome-")) {
      return new FindingSpot(SECTION, Highlight.NONE);
    }
    return on(COVER, corners(finding, result), List.of(), result);
  }

  private static FindingSpot on(
      String name, List<Vec2> places, List<Path> paths, PartResult result) {
    return result.pieces().stream()
        .filter(p -> p.id().equals(name))
        .findFirst()
        .map(p -> new FindingSpot(name, drawn(p, places, paths)))
        .orElse(new FindingSpot(SECTION, Highlight.NONE));
  }

  private static Highlight drawn(PatternPiece piece, List<Vec2> places, List<Path> paths) {
    return new Highlight(
        places.stream().map(p -> PiecePlace.drawn(piece, p)).toList(),
        paths.stream().map(p -> PiecePlace.drawn(piece, p)).toList());
  }

  /**
   * Those through the most layers: where a staple first holds too little, or comes through last.
   */
  private static List<Vec2> staples(PartResult result) {
    int most =
        result.staples().positions().stream().mapToInt(StaplePlan.Position::layers).max().orElse(0);
    return result.staples().positions().stream()
        .filter(p -> p.layers() == most)
        .map(StaplePlan.Position::at)
        .toList();
  }

  private static List<Vec2> holes(List<WrappedPad.Hole> holes) {
    return holes.stream().map(h -> new Vec2(h.x(), h.y())).toList();
  }

  /** The corners that a finding names; all of them where it names none. */
  private static List<Vec2> corners(Finding finding, PartResult result) {
    String words = finding.message().toLowerCase(Locale.ROOT);
    List<Vec2> named = new ArrayList<>();
    List<Vec2> all = new ArrayList<>();
    for (CornerPlan c : result.cover().corners()) {
      all.add(c.apex());
      if (words.contains(c.name().toLowerCase(Locale.ROOT))) {
        named.add(c.apex());
      }
    }
    return finding.rule().startsWith("corner-") || !named.isEmpty()
        ? named.isEmpty() ? all : named
        : List.of();
  }

  /** The sides that a finding names; those of all runs where it names none. */
  private static List<Path> sides(Finding finding, PartResult result) {
    String words = finding.message().toLowerCase(Locale.ROOT);
    List<Path> named = new ArrayList<>();
    List<Path> all = new ArrayList<>();
    List<Segment> segments = result.shape().outline().segments();
    for (int i = 0; i < segments.size(); i++) {
      String side = result.shape().sideNames().get(i);
      Path path = new Path(List.of(segments.get(i)), false);
      if (result.asked().runs().stream().anyMatch(r -> r.sides().contains(side))) {
        all.add(path);
      }
      if (words.contains(side.toLowerCase(Locale.ROOT))) {
        named.add(path);
      }
    }
    return named.isEmpty() ? all : named;
  }
}
