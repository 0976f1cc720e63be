package padwright.cover;

import java.util.function.Supplier;
import padwright.geometry.EdgeRuns;
import padwright.geometry.Vec2;

/** Walks the raw edges of a cut cover near a corner and looks how well its folds hide them. */
final class RawEdges {
  /** Step in which a raw edge is walked along, mm; its ends are always met. */
  private static final double WALK = 2;

  private RawEdges() {}

  /**
   * The least distance, mm, of a raw edge that ends up on a wall of the corner from the fold that
   * hides it, seen from both sides; infinite where none does.
   *
   * @param folds how the corner's surplus is folded on to its walls
   */
  static double leastHiding(EdgeRuns cut, CornerFrame f, Supplier<FoldMap> folds) {
    // No point of the surplus that lands on a wall is further from the corner than this.
    double deep = Math.max(f.pathBefore().backStart(), f.pathAfter().backStart());
    double wide = -Math.min(f.pathBefore().startX(), f.pathAfter().startX());
    double reach = Math.max(deep, wide) / Math.cos(f.turn() / 2) + Math.abs(f.shift()) + 1;
    double least = Double.POSITIVE_INFINITY;
    FoldMap map = null;
    for (int edge : cut.near(f.apex(), reach)) {
      Vec2 a = cut.from(edge);
      Vec2 d = cut.to(edge).minus(a);
      double length = Math.max(1e-9, d.length());
      double foot = f.apex().minus(a).dot(d) / length;
      double aside = Math.abs(f.apex().minus(a).cross(d)) / length;
      if (aside > reach) {
        continue;
      }
      // At most corners no edge comes so near, and the map is not wanted.
      map = map == null ? folds.get() : map;
      // Only the stretch of the edge within reach is walked along.
      double half = Math.sqrt(reach * reach - aside * aside);
      double from = Math.max(0, foot - half);
      double to = Math.min(length, foot + half);
      int steps = Math.max(1, (int) Math.ceil((to - from) / WALK));
      for (int k = 0; from <= to && k <= steps; k++) {
        Vec2 p = a.along(d, (from + (to - from) * k / steps) / length);
        least = Math.min(least, Math.min(map.hiding(true, p), map.hiding(false, p)));
      }
    }
    return least;
  }
}
