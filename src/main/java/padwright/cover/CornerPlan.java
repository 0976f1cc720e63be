package padwright.cover;

import java.util.List;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * How one corner of the cover is folded and cut. Flat positions are in the blank's frame (the base
 * outline's, seen from the face), before any stretch allowance is taken off.
 *
 * @param name such as "front left"
 * @param treatment never AUTO
 * @param reason why this treatment
 * @param apex the base's corner, or the middle of its rounding
 * @param turn angle the outline turns here, radians
 * @param radius of the outline, 0 = sharp
 * @param over name of the side whose strip lies on top; empty where neither does
 * @param reliefStop how far the relief cut stops short of the fold that hides it; 0 without relief
 * @param folds lines on the flat cover along which the corner is folded, in order of folding
 * @param pleats number of pleats at this corner
 * @param pleatDepth depth of one of them
 * @param fullnessAtBack surplus of covering where it reaches the back, mm
 * @param fullnessAtTrim surplus at the trim line, mm
 * @param easeNeeded largest part of its length to be eased away, 0 where pleated
 * @param layersFirst most layers on the wall of the side before the corner
 * @param layersSecond most layers on the wall of the side after it
 * @param flapStrain worst strain of a folded flap that is out of sight, 0 where it lies flat
 * @param stretchNeeded how far the covering stretches along a hollow curve, a fraction; infinite
 *     where it cannot
 * @param row of the pleats, notches or clips of a curve
 */
public record CornerPlan(
    String name,
    Treatment treatment,
    String reason,
    Vec2 apex,
    double turn,
    double radius,
    String over,
    double reliefStop,
    List<Fold> folds,
    int pleats,
    double pleatDepth,
    double fullnessAtBack,
    double fullnessAtTrim,
    double easeNeeded,
    int layersFirst,
    int layersSecond,
    double flapStrain,
    double stretchNeeded,
    Row row) {
  public CornerPlan {
    folds = List.copyOf(folds);
  }

  /** How wide the covering opens at a sharp hollow corner by the time it reaches the back, mm. */
  public double opening() {
    return turn < 0 ? 2 * Math.tan(-turn / 2) * (fullnessAtBack / turn) : 0;
  }

  /**
   * Pleats, notches or clips in a row along a curve, mm; all 0 where there are none.
   *
   * @param spacing from the middle of one to the next along the base's edge
   * @param mouth of the widest notch at the cut line, 0 where none is cut out
   * @param stop how far past the back arris the tips of notches and clips stay, 0 for pleats
   */
  public record Row(double spacing, double mouth, double stop) {
    public static final Row NONE = new Row(0, 0, 0);
  }

  /** A fold of the corner on the flat cover. */
  public record Fold(Sense sense, Path line) {}

  /** Which way a fold goes, seen from the outside of the covering. */
  public enum Sense {
    /** The fold's edge stands out: it is what one sees. */
    OUTWARD,
    /** Folded in: the hidden crease. */
    INWARD
  }
}
