package padwright.cover;

import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/**
 * The map of a corner's surplus on to the walls. A single pleat turns the half that belongs to the
 * strip on top back under it, and carries the other half round the arris with the strip that lies
 * under: both land as far from the arris as they lie from their own fold. A double pleat folds each
 * half once more, about a crease midway between fold and bisector, so that the bisector comes to
 * lie on the arris.
 */
final class FoldMap {
  private static final double ON_THE_LINE = 1e-6;

  /** A raw edge cut to end at the back may miss it by this much, mm: it cannot be seen or cut. */
  private static final double ROUNDING = 0.01;

  /** So much of the bend at the back counts as the arris itself, mm: a thin covering's own bend. */
  private static final double ARRIS = 1;

  private final CornerFrame frame;
  private final Fold fold;
  private final boolean turnedBefore;
  private final boolean turnedAfter;
  private final Vec2 tip;
  private final double halfAngleFirst;
  private final double halfAngleSecond;

  /** Both strips are turned under. */
  FoldMap(CornerFrame frame, Fold fold) {
    this(frame, fold, true, true);
  }

  /**
   * @param turnedBefore whether the strip before the corner is turned under; else it is glued and
   *     ends where its wall does, in sight and meant to be
   * @param turnedAfter the same of the strip after it
   */
  FoldMap(CornerFrame frame, Fold fold, boolean turnedBefore, boolean turnedAfter) {
    this.turnedBefore = turnedBefore;
    this.turnedAfter = turnedAfter;
    this.frame = frame;
    this.fold = fold;
    tip = frame.tip();
    halfAngleFirst = halfAngle(true);
    halfAngleSecond = frame.even() ? halfAngleFirst : halfAngle(false);
  }

  /** Between the bisector and the fold of one side. */
  private double halfAngle(boolean first) {
    Vec2 axis = frame.before().right().plus(frame.after().right()).unit();
    double back = frame.path(first).backStart();
    Vec2 end = frame.flat(first, frame.fold(first, back), back);
    return Math.acos(Math.max(-1, Math.min(1, axis.dot(end.minus(tip).unit()))));
  }

  /**
   * Where a flat point of the surplus lands, seen from one side: how far from the arris on the
   * wall, and at what path length; null where the point belongs to no surplus of that side.
   */
  Vec2 land(boolean first, Vec2 p) {
    double s = frame.out(first, p);
    double past = frame.past(first, p);
    double beyond = past - frame.fold(first, s);
    double toBisector = frame.bisector(first, s) - past;
    if (beyond < -ON_THE_LINE || toBisector < -ON_THE_LINE || s < frame.path(first).startX()) {
      return null;
    }
    if (fold != Fold.DOUBLE) {
      return new Vec2(Math.max(0, beyond), s);
    }
    Vec2 q = creased(first, p);
    double level = frame.out(first, q);
    return new Vec2(Math.max(0, frame.past(first, q) - frame.fold(first, level)), level);
  }

  /** A point between crease and bisector is turned back about the crease. */
  private Vec2 creased(boolean first, Vec2 p) {
    return beyondCrease(first, p) ? mirroredAboutCrease(first, p) : p;
  }

  /** The crease lies midway between fold and bisector; the first side's lies clockwise. */
  Vec2 crease(boolean first) {
    Vec2 axis = frame.before().right().plus(frame.after().right()).unit();
    return axis.rotated(first ? -halfAngleFirst / 2 : halfAngleSecond / 2);
  }

  boolean beyondCrease(boolean first, Vec2 p) {
    double side = crease(first).cross(p.minus(tip));
    return first ? side > 0 : side < 0;
  }

  Vec2 mirroredAboutCrease(boolean first, Vec2 p) {
    Vec2 crease = crease(first);
    Vec2 v = p.minus(tip);
    return tip.plus(crease.times(2 * v.dot(crease)).minus(v));
  }

  /**
   * Where a wall ends for the eye: the last of the bend round the back arris shows as the arris.
   */
  private double wallsEnd(boolean first) {
    TautPath path = frame.path(first);
    if (!(first ? turnedBefore : turnedAfter)) {
      return path.wallEnd() - ROUNDING;
    }
    return path.backStart()
        - Math.max(ROUNDING, Math.min(ARRIS, path.backStart() - path.wallEnd()));
  }

  /**
   * How far a raw edge point lies from the fold that hides it, if it comes to lie on a wall;
   * infinite where it does not.
   */
  double hiding(boolean first, Vec2 p) {
    Vec2 landed = land(first, p);
    if (landed == null || landed.y() >= wallsEnd(first)) {
      return Double.POSITIVE_INFINITY;
    }
    return landed.x();
  }
}
