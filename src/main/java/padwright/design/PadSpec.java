package padwright.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import padwright.material.Board;
import padwright.material.Covering;
import padwright.material.Foam;
import padwright.material.Staple;
import padwright.material.Wadding;

/**
 * A wrapped pad with every gap filled: catalogue rows in place of names, defaults in place of what
 * was left out. Lengths in mm.
 *
 * @param leastThickness the thinnest the board may be: measured, or its tolerance's lower limit
 * @param waddingThickness compressed; 0 without wadding
 * @param stretchX length taken off along the outline's x axis, a fraction
 * @param stretchY the same along its y axis
 * @param edgeDistance of a staple from the base's edge
 * @param cornerClear how far staples stay from a corner until it is made, at most (or a quarter of
 *     the side)
 * @param clearance gap kept per keep-clear side; 0 where the size is not an opening
 * @param assumptions the defaults that were taken, in the order of the job file
 */
public record PadSpec(
    Board board,
    double boardThickness,
    double leastThickness,
    boolean thicknessMeasured,
    double backArris,
    List<FoamSpec> foam,
    Optional<Wadding> wadding,
    double waddingThickness,
    boolean waddingOverSides,
    EdgeShape edge,
    Covering covering,
    double coverThickness,
    double turnUnder,
    double grip,
    double stretchX,
    double stretchY,
    boolean warpAlongWidth,
    double reliefStop,
    double pleatDepth,
    Staple staple,
    double spacing,
    double edgeDistance,
    double cornerClear,
    OptionalDouble pull,
    double clearance,
    double dustCoverInset,
    double dustCoverTurn,
    List<Assumption> assumptions) {
  public PadSpec {
    foam = List.copyOf(foam);
    assumptions = List.copyOf(assumptions);
  }

  /** The same with more assumptions at the end. */
  public PadSpec withAssumptions(List<Assumption> more) {
    List<Assumption> all = new ArrayList<>(assumptions);
    all.addAll(more);
    return new PadSpec(
        board,
        boardThickness,
        leastThickness,
        thicknessMeasured,
        backArris,
        foam,
        wadding,
        waddingThickness,
        waddingOverSides,
        edge,
        covering,
        coverThickness,
        turnUnder,
        grip,
        stretchX,
        stretchY,
        warpAlongWidth,
        reliefStop,
        pleatDepth,
        staple,
        spacing,
        edgeDistance,
        cornerClear,
        pull,
        clearance,
        dustCoverInset,
        dustCoverTurn,
        all);
  }

  /**
   * One foam layer, from the board upwards.
   *
   * @param overhang of its edge as built
   * @param crown set in under the layers above
   * @param laid how much larger a side it is cut because it is laid over a crown
   */
  public record FoamSpec(Foam foam, double thickness, double overhang, boolean crown, double laid) {
    /** A layer that lies flat. */
    public FoamSpec(Foam foam, double thickness, double overhang) {
      this(foam, thickness, overhang, false, 0);
    }

    /** How far outside the base's outline it is cut; negative inside. */
    public double cutOverhang() {
      return overhang + laid;
    }
  }
}
