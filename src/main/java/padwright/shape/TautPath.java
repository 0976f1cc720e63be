package padwright.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * The covering pulled taut over a section: from the flat top over the edge, down the side, round
 * the back arris and in along the back. Section coordinates, mm.
 *
 * <p>{@code hull} is the surface it lies on. {@code neutral} is its neutral line, half the
 * covering's thickness outside the hull; its first point is at {@code x = startX} on the flat top
 * and its last at {@code x = -turnUnder} on the back. {@code startX} is 0 or negative: the last
 * place on the flat top at or inside the base outline's line. {@code developed} is D: the length of
 * the neutral line less the start's distance inside the outline. {@code backStart} is the path
 * length, counted as D is, at which the covering lies flat on the back.
 */
public final class TautPath {
  /** A piece that falls less than this is level, mm. */
  private static final double LEVEL = 1e-12;

  private final Path hull;
  private final Path neutral;
  private final double startX;
  private final double developed;
  private final double backStart;
  // Asked for thousands of times by the proof, so worked out once.
  private final double[] lengths;
  private final Vec2[] centres;
  private final double[] sweeps;
  private final double wallEnd;
  private final double wallOut;

  public TautPath(Path hull, Path neutral, double startX, double developed, double backStart) {
    this.hull = hull;
    this.neutral = neutral;
    this.startX = startX;
    this.developed = developed;
    this.backStart = backStart;
    List<Segment> pieces = neutral.segments();
    lengths = new double[pieces.size()];
    centres = new Vec2[pieces.size()];
    sweeps = new double[pieces.size()];
    for (int i = 0; i < pieces.size(); i++) {
      Segment piece = pieces.get(i);
      lengths[i] = piece.length();
      centres[i] = piece.isArc() ? piece.centre() : Vec2.ZERO;
      sweeps[i] = piece.sweep();
    }
    int bend = Math.max(0, pieces.size() - 2);
    wallEnd = pieces.get(bend).isArc() ? backStart - lengths[bend] : backStart;
    wallOut = at(wallEnd).x();
  }

  public Path hull() {
    return hull;
  }

  public Path neutral() {
    return neutral;
  }

  public double startX() {
    return startX;
  }

  public double developed() {
    return developed;
  }

  public double backStart() {
    return backStart;
  }

  /**
   * The neutral line's point at path length {@code s}, counted from the base outline's line on the
   * top. Beyond the end it goes on along the back, before the start along the top.
   */
  public Vec2 at(double s) {
    double left = s - startX;
    if (left <= 0) {
      return neutral.start().plus(new Vec2(left, 0));
    }
    for (int i = 0; i < lengths.length; i++) {
      if (left <= lengths[i]) {
        double fraction = left / lengths[i];
        Segment piece = neutral.segments().get(i);
        return sweeps[i] == 0
            ? piece.pointAt(fraction)
            : centres[i].plus(piece.start().minus(centres[i]).rotated(sweeps[i] * fraction));
      }
      left -= lengths[i];
    }
    return neutral.end().plus(new Vec2(-left, 0));
  }

  /**
   * Path length at which the covering comes down to a height, from the end of the flat top to where
   * the back begins; the nearest of the two where it never does.
   */
  public double levelAt(double height) {
    double s = startX;
    for (int i = 0; i < lengths.length - 1; i++) {
      Segment piece = neutral.segments().get(i);
      double from = piece.start().y();
      double to = piece.end().y();
      if (height >= to && from - to > LEVEL) {
        return height >= from ? s : s + lengths[i] * fraction(i, height);
      }
      s += lengths[i];
    }
    return backStart;
  }

  /** Where along a falling piece a height is reached, 0 to 1. */
  private double fraction(int i, double height) {
    Segment piece = neutral.segments().get(i);
    if (sweeps[i] == 0) {
      return (piece.start().y() - height) / (piece.start().y() - piece.end().y());
    }
    // Every bend turns clockwise from the top to the back, so its height falls all along.
    double radius = piece.start().distance(centres[i]);
    double sine = Math.max(-1, Math.min(1, (height - centres[i].y()) / radius));
    double angle = Math.asin(sine);
    return (piece.start().minus(centres[i]).angle() - angle) / -sweeps[i];
  }

  /** Distance out from the base outline in plan at path length {@code s}. */
  public double out(double s) {
    return at(s).x();
  }

  /** Path length at which the flat top ends and the covering begins to bend down. */
  public double topEnd() {
    Segment first = neutral.segments().get(0);
    boolean level = sweeps[0] == 0 && first.end().y() == first.start().y();
    return level ? startX + lengths[0] : startX;
  }

  /** How far out the wall ends, where the last bend begins. */
  public double wallOut() {
    return wallOut;
  }

  /** Path length at which the last bend, round the back arris, begins. */
  public double wallEnd() {
    return wallEnd;
  }

  /**
   * Path lengths at which the path starts, ends, or passes from one straight or round piece to the
   * next, with the round pieces cut into {@code perArc} equal parts; ends where the back begins.
   */
  public List<Double> breaks(int perArc) {
    return breaks(piece -> perArc);
  }

  /** The same with as many parts for each round piece as asked for. */
  public List<Double> breaks(ToIntFunction<Segment> perArc) {
    List<Double> at = new ArrayList<>();
    at.add(startX);
    double s = startX;
    List<Segment> pieces = neutral.segments();
    for (int i = 0; i < pieces.size() - 1; i++) {
      Segment piece = pieces.get(i);
      int parts = piece.isArc() ? perArc.applyAsInt(piece) : 1;
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
