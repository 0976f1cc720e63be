package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.Skeleton.Side;
import padwright.cover.Skeleton.Sweep;
import padwright.geometry.Vec2;

/** The flat regions of a rounded or hollow stretch, and the straight sides that touch its ends. */
final class SweepFacets {
  /** A facet turns through no more than this: its chord leaves the arc by 0.03 % of the radius. */
  private static final double TURN = Math.PI / 64;

  /** Length of a touching side, mm; only its end and its direction count. */
  private static final double TOUCH = 1;

  private SweepFacets() {}

  /** Regions between two path lengths, one for each small part of the turn. */
  static List<List<Vec2>> regions(Sweep sweep, double from, double to) {
    int parts = Math.max(1, (int) Math.ceil(Math.abs(sweep.turn()) / TURN));
    List<List<Vec2>> regions = new ArrayList<>();
    for (int k = 0; k < parts; k++) {
      double a = sweep.fromAngle() + sweep.turn() * k / parts;
      double b = sweep.fromAngle() + sweep.turn() * (k + 1) / parts;
      // A chord's middle lies inside its arc, so the outer corners stand out a little.
      double wide = 1 / Math.cos((b - a) / 2);
      double near = Math.max(0, sweep.radiusAt(sweep.hollow() ? to : from));
      double far = Math.max(0, sweep.radiusAt(sweep.hollow() ? from : to)) * wide;
      double sign = sweep.hollow() ? -1 : 1;
      Vec2 c = sweep.centre();
      regions.add(
          List.of(
              c.along(Vec2.polar(a), sign * near),
              c.along(Vec2.polar(a), sign * far),
              c.along(Vec2.polar(b), sign * far),
              c.along(Vec2.polar(b), sign * near)));
    }
    return regions;
  }

  /** A straight side that ends where the sweep does, in its direction. */
  static Side tangent(Sweep sweep) {
    Vec2 end = sweep.end();
    return new Side(
        sweep.name(),
        end.along(sweep.directionAtEnd(), -TOUCH),
        end,
        false,
        sweep.after(),
        sweep.corner());
  }

  /** A straight side that starts where the sweep does, in its direction. */
  static Side tangentAtStart(Sweep sweep) {
    Vec2 start = sweep.flat(sweep.fromAngle(), 0);
    return new Side(
        sweep.name(), start, start.along(sweep.directionAtStart(), TOUCH), false, Fold.NONE, -1);
  }
}
