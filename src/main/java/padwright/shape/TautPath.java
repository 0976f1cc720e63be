package padwright.shape;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * The covering pulled taut over a section: from the flat top over the edge, down the side, round
 * the back arris and in along the back. Section coordinates, mm.
 *
 * @param hull the surface it lies on
 * @param neutral its neutral line, half the covering's thickness outside the hull; its first point
 *     is at {@code x = startX} on the flat top and its last at {@code x = -turnUnder} on the back
 * @param startX where the path starts, 0 or negative: the last place on the flat top at or inside
 *     the base outline's line
 * @param developed D: length of the neutral line less the start's distance inside the outline
 * @param backStart path length, counted as D is, at which the covering lies flat on the back
 */
public record TautPath(Path hull, Path neutral, double startX, double developed, double backStart) {

  /**
   * The neutral line's point at path length {@code s}, counted from the base outline's line on the
   * top. Beyond the end it goes on along the back, before the start along the top.
   */
  public Vec2 at(double s) {
    double left = s - startX;
    if (left <= 0) {
      return neutral.start().plus(new Vec2(left, 0));
    }
    for (Segment piece : neutral.segments()) {
      double l = piece.length();
      if (left <= l) {
        return piece.pointAt(left / l);
      }
      left -= l;
    }
    return neutral.end().plus(new Vec2(-left, 0));
  }

  /** Distance out from the base outline in plan at path length {@code s}. */
  public double out(double s) {
    return at(s).x();
  }

  /** Path length at which the last bend, round the back arris, begins. */
  public double wallEnd() {
    Segment bend = neutral.segments().get(Math.max(0, neutral.segments().size() - 2));
    return bend.isArc() ? backStart - bend.length() : backStart;
  }

  /**
   * Path lengths at which the path starts, ends, or passes from one straight or round piece to the
   * next, with the round pieces cut into {@code perArc} equal parts; ends where the back begins.
   */
  public List<Double> breaks(int perArc) {
    List<Double> at = new ArrayList<>();
    at.add(startX);
    double s = startX;
    List<Segment> pieces = neutral.segments();
    for (int i = 0; i < pieces.size() - 1; i++) {
      Segment piece = pieces.get(i);
      int parts = piece.isArc() ? perArc : 1;
      for (int k = 1; k <= parts; k++) {
        at.add(s + piece.length() * k / parts);
      }
      s += piece.length();
    }
    return at;
  }

  /** Surplus of flat over wrapped length for each radian that the outline turns: s - x(s). */
  public double surplus(double s) {
    return s - out(s);
  }
}
