package padwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The mitres of a moved outline. Each takes in a wedge between its corner and its tip; what of the
 * other moved sides lies in there is no part of the result, though it may be further from the
 * corner than that was moved.
 */
final class OffsetMitres {
  /** A corner sharper than this, in mitre lengths for a mm moved, is cut off square. */
  private static final double LONGEST = 12;

  private final List<List<Vec2>> wedges = new ArrayList<>();
  private Boxes boxes;

  /**
   * Joins two moved sides that have to be lengthened to meet.
   *
   * @param corner of the outline
   * @param from end of the side before it, moved
   * @param da its direction
   * @param to start of the side after it, moved
   * @param db its direction
   * @param turn from one to the other, radians
   */
  void join(List<Segment> chain, Vec2 corner, Vec2 from, Vec2 da, Vec2 to, Vec2 db, double turn) {
    Vec2 gap = to.minus(from);
    double along = gap.cross(db) / da.cross(db);
    double back = da.cross(gap) / da.cross(db);
    double longest = LONGEST * gap.length() / (2 * Math.abs(Math.sin(turn / 2)));
    Vec2 first = from.along(da, Math.min(along, longest));
    Vec2 second = to.along(db, -Math.min(back, longest));
    chain.add(Segment.line(from, first));
    chain.add(Segment.line(first, second));
    chain.add(Segment.line(second, to));
    List<Vec2> wedge = List.of(corner, from, first, second, to);
    wedges.add(Polygons.signedArea(wedge) < 0 ? List.of(to, second, first, from, corner) : wedge);
  }

  /** Whether a place lies inside the wedge of a mitre, by more than rounding. */
  boolean takeIn(Vec2 p) {
    if (wedges.isEmpty()) {
      return false;
    }
    if (boxes == null) {
      boxes = new Boxes(wedges.stream().map(w -> Bounds.of(w)).toList());
    }
    for (int i : boxes.near(p, 0)) {
      if (inside(wedges.get(i), p)) {
        return true;
      }
    }
    return false;
  }

  private static boolean inside(List<Vec2> wedge, Vec2 p) {
    for (int i = 0; i < wedge.size(); i++) {
      Vec2 a = wedge.get(i);
      Vec2 side = wedge.get((i + 1) % wedge.size()).minus(a);
      // A tip that is not cut off is there twice.
      if (side.length() > OffsetNearness.NEARER
          && side.cross(p.minus(a)) < OffsetNearness.NEARER * side.length()) {
        return false;
      }
    }
    return true;
  }
}
