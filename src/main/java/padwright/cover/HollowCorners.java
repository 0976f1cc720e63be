package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.EdgeSections;
import padwright.shape.Outlines;

/**
 * An outline as it is covered: a hollow curve too tight for the covering to be stretched round it
 * is taken for the sharp hollow corner where the sides beside it would meet, so that a gusset is
 * let in there. The board keeps its curve; the gusset has more covering than the curve needs, by
 * the difference of the two sides' length to the arc's.
 */
final class HollowCorners {
  private HollowCorners() {}

  /**
   * @param sections the covering's length down the wall and under is that of the curve's own
   */
  static Outlines.Named sharpened(Path outline, List<String> names, EdgeSections sections) {
    List<Segment> segments = new ArrayList<>(outline.segments());
    List<String> kept = new ArrayList<>(names);
    for (int i = 0; i < segments.size(); i++) {
      int n = segments.size();
      Segment arc = segments.get(i);
      Segment before = segments.get(Math.floorMod(i - 1, n));
      Segment after = segments.get((i + 1) % n);
      if (!arc.isArc() || arc.bulge() > 0 || n < 4) {
        continue;
      }
      double developed = sections.path(kept.get(i)).developed();
      Vec2 apex = arc.radius() > developed * TIGHT ? null : meet(before, after);
      if (apex == null) {
        continue;
      }
      segments.set(Math.floorMod(i - 1, n), Segment.line(before.start(), apex));
      segments.set((i + 1) % n, Segment.line(apex, after.end()));
      segments.remove(i);
      kept.remove(i);
      i--;
    }
    return segments.size() == names.size()
        ? new Outlines.Named(outline, names)
        : new Outlines.Named(new Path(segments, true), kept);
  }

  /** A hollow radius under this many times the developed side cannot be clipped and stretched. */
  private static final double TIGHT = 1.25;

  /** Where two straight sides beside a hollow curve meet; null where they do not. */
  private static Vec2 meet(Segment before, Segment after) {
    if (before.isArc() || after.isArc()) {
      return null;
    }
    Vec2 u = before.directionAt(1);
    Vec2 v = after.directionAt(0);
    double cross = u.cross(v);
    if (cross > -Math.sin(CornerSite.CORNER)) {
      return null;
    }
    double along = after.start().minus(before.end()).cross(v) / cross;
    double back = after.start().minus(before.end()).cross(u) / cross;
    return along >= 0 && back <= 0 ? before.end().along(u, along) : null;
  }
}
