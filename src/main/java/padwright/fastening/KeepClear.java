package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import padwright.design.WrappedPad.Hole;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.PathGap;
import padwright.geometry.PathPlaces;
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

  /**
   * A closed path and the board left between it and a staple.
   *
   * @param places of the path, made once: staples ask some hundred times
   */
  private record Area(PathPlaces places, Bounds box, double margin) {
    static Area of(Path path, double margin) {
      return new Area(new PathPlaces(path, PathGap.CHORD_ERROR), path.bounds(), margin);
    }

    boolean nearer(Vec2 at, double least) {
      return box.grown(least).contains(at)
          && (places.nearer(at, least) || box.contains(at) && places.contains(at));
    }
  }

  /** The same and an area more. */
  public KeepClear and(Path area, double margin) {
    KeepClear more = new KeepClear(holes);
    more.areas.addAll(areas);
    more.areas.add(Area.of(area, margin));
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
      if (a.nearer(at, a.margin() + crown / 2)) {
        return false;
      }
    }
    return true;
  }
}
