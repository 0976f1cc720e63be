package padwright.fastening;

import padwright.material.Staple;

/**
 * What a fastener holds before it pulls out of side grain, at ultimate load.
 *
 * <p>Wood Handbook, FPL-GTR-282 (2021): smooth nails Eq. 8-1, p = 54.12 G^2.5 D L; wood screws Eq.
 * 8-10, p = 108.25 G^2 D L; in N and mm, G the specific gravity on volume at 12 % moisture. A
 * staple as two such nails of the wire's equivalent diameter sqrt(a b) (EN 1995-1-1, 8.4) is an
 * extrapolation of ours, and so is board in place of side grain; it is shown as one.
 */
public final class Withdrawal {
  private static final double NAIL = 54.12;
  private static final double NAIL_EXPONENT = 2.5;
  private static final double SCREW = 108.25;
  private static final double SCREW_EXPONENT = 2;

  private Withdrawal() {}

  /** A smooth nail of a diameter driven in by a length, N. */
  public static double nail(double gravity, double diameter, double length) {
    return NAIL * Math.pow(gravity, NAIL_EXPONENT) * diameter * Math.max(0, length);
  }

  /** A wood screw of a shank diameter, its thread in by a length, N. */
  public static double screw(double gravity, double shank, double length) {
    return SCREW * Math.pow(gravity, SCREW_EXPONENT) * shank * Math.max(0, length);
  }

  /** The diameter of a round wire that stands for a flat one, mm. */
  public static double equivalentDiameter(double width, double thickness) {
    return Math.sqrt(width * thickness);
  }

  /** A staple of two legs, each in by a length, N. */
  public static double staple(Staple staple, double gravity, double length) {
    double d = equivalentDiameter(staple.wireWidth(), staple.wireThickness());
    return 2 * nail(gravity, d, length);
  }
}
