package padwright.geometry;

import java.util.Arrays;

/**
 * How far in from a closed outline two strips of one width along it meet: half of its narrowest
 * place, and no further than where the outline moved in comes apart or vanishes. The short side of
 * a cut-off corner is no such place; the strips beside it meet as those at a corner do.
 */
public final class MeetingDepth {
  /** Depths are told apart to this, mm. */
  private static final double NEAR = 1e-6;

  private MeetingDepth() {}

  /**
   * The depth asked for, or where strips meet before that, mm.
   *
   * @param outline closed, simple, anticlockwise
   * @param asked over 0, mm
   */
  public static double upTo(Path outline, double asked) {
    boolean convex = Offset.convex(outline);
    double most = Math.min(asked, Necks.narrowest(outline, !convex, 2 * asked) / 2);
    // At its very meeting a strip's edge has no area left.
    if (whole(outline, convex, most - NEAR)) {
      return most;
    }
    double low = 0;
    double high = most;
    while (high - low > NEAR) {
      double middle = (low + high) / 2;
      if (whole(outline, convex, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** Whether the outline moved in is still one. */
  private static boolean whole(Path outline, boolean convex, double depth) {
    if (depth <= 0) {
      return true;
    }
    if (convex) {
      return Offset.by(outline, -depth).isPresent();
    }
    double[] in = new double[outline.segments().size()];
    Arrays.fill(in, -depth);
    return OffsetCurve.loops(outline, in).size() == 1;
  }
}
