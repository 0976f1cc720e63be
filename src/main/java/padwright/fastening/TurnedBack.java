package padwright.fastening;

import java.util.List;
import java.util.Optional;
import padwright.geometry.Path;
import padwright.geometry.PathGap;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.EdgeEnds.EdgeEnd;
import padwright.shape.PadShape;

/**
 * Where the covering lies on the back: along each side as deep as that side's turn-under, and not
 * at all along sides that are left open.
 */
public final class TurnedBack {
  private final PadShape shape;

  public TurnedBack(PadShape shape) {
    this.shape = shape;
  }

  /**
   * The turned side that something on the back comes nearest to, or reaches furthest under.
   *
   * @param away from that side's edge, mm
   * @param turnUnder of that side, mm
   */
  public record Near(double away, double turnUnder) {
    /** Left between the turn-under and it; negative where it lies under the covering. */
    public double room() {
      return away - turnUnder;
    }
  }

  /** The worst for an area on the back; empty where no side is turned under. */
  public Optional<Near> nearest(Path area) {
    Near worst = null;
    List<Segment> sides = shape.outline().segments();
    for (int i = 0; i < sides.size(); i++) {
      EdgeEnd end = end(i);
      if (end.turned()) {
        Near near = new Near(PathGap.toSegment(area, sides.get(i)), end.turnUnder());
        worst = worst == null || near.room() < worst.room() ? near : worst;
      }
    }
    return Optional.ofNullable(worst);
  }

  /** Board left to the nearest side that is stapled; infinite where none is. */
  public double toStapled(Path area) {
    double least = Double.POSITIVE_INFINITY;
    List<Segment> sides = shape.outline().segments();
    for (int i = 0; i < sides.size(); i++) {
      if (end(i).turned()) {
        least = Math.min(least, PathGap.toSegment(area, sides.get(i)));
      }
    }
    return least;
  }

  /**
   * Whether a round hole lies on bare board.
   *
   * @param open board to leave to a side without a turn-under
   */
  boolean bare(Vec2 at, double radius, double open) {
    List<Segment> sides = shape.outline().segments();
    for (int i = 0; i < sides.size(); i++) {
      EdgeEnd end = end(i);
      double taken = end.turned() ? end.turnUnder() : open;
      if (sides.get(i).distanceTo(at) < taken + radius) {
        return false;
      }
    }
    return true;
  }

  private EdgeEnd end(int side) {
    return shape.ends().of(shape.sideNames().get(side));
  }
}
