package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import padwright.design.WrappedPad.Hole;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.PathGap;
import padwright.geometry.Vec2;

/**
 * What staples keep away from: round holes, and areas of any outline. A staple's crown is taken as
 * a disc, whichever way it lies, so that the answer errs on the safe side. mm.
 */
public final class KeepClear {
  /** Wood left between a hole's edge and a staple, mm; own choice. */
  static final double HOLE_CLEAR = 3;

  private final List<Hole> holes;
  private final List<Area> areas = new ArrayList<>();

  /** Round holes alone, screws and barrels of T-nuts among them. */
  public KeepClear(List<Hole> holes) {
    this.holes = List.copyOf(holes);
  }

  /** A closed path and the board left between it and a staple. */
  private record Area(Path path, Bounds box, double margin) {}

  /** The same and an area more. */
  public KeepClear and(Path area, double margin) {
    KeepClear more = new KeepClear(holes);
    more.areas.addAll(areas);
    more.areas.add(new Area(area, area.bounds(), margin));
    return more;
  }

  /** Whether a staple with its middle here leaves enough board to everything. */
  boolean allows(Vec2 at, double crown) {
    for (Hole h : holes) {
      double least = h.diameter() / 2 + crown / 2 + HOLE_CLEAR;
      if (at.distance(new Vec2(h.x(), h.y())) < least) {
        return false;
      }
    }
    for (Area a : areas) {
      double least = a.margin() + crown / 2;
      if (a.box().grown(least).contains(at) && PathGap.toArea(at, a.path()) < least) {
        return false;
      }
    }
    return true;
  }
}
