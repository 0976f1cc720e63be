package padwright.material;

/**
 * A covering material.
 *
 * @param thickness mm
 * @param areaWeight g/m2
 * @param rollWidth mm; for a hide, the width of a usable rectangle
 * @param stretchAlong how far it may be stretched along the warp when pulled by hand, 0.05 = 5 %
 * @param stretchAcross the same across
 * @param ease the part of its length that can be eased away at a rounded corner, 0.05 = 5 %
 * @param nap has a pile or print with an up and a down
 * @param breathes lets air through
 * @param twoFaced both faces may show, so a piece may be turned over
 */
public record Covering(
    String id,
    String name,
    Family family,
    double thickness,
    double areaWeight,
    double rollWidth,
    double stretchAlong,
    double stretchAcross,
    double ease,
    boolean nap,
    boolean breathes,
    boolean twoFaced,
    Sourced origin) {
  /** What the trade would call it; staple spacing and grip go by it. */
  public enum Family {
    WOVEN,
    COATED,
    LEATHER,
    KNIT
  }
}
