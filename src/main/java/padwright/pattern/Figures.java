package padwright.pattern;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The sizes of one part, mm at full precision; areas mm2.
 *
 * @param finished length, width and height of the covered part
 * @param base the board
 * @param foam each layer's cut size, from the board upwards
 * @param wadding cut size; empty list without wadding
 * @param standOff how far the turn-under stands proud of the board's back
 * @param bareGap opening less base on each side (front, right, back, left), for the dry fit; empty
 *     where the size is not an opening
 * @param weight kg of one part
 */
public record Figures(
    Box finished,
    Box base,
    List<Box> foam,
    List<Box> wadding,
    List<Box> dustCover,
    CoverFigures cover,
    StapleFigures staples,
    double standOff,
    List<Double> bareGap,
    double weight) {
  /** Length along x, width along y, height or thickness. */
  public record Box(double length, double width, double height) {}

  /**
   * The cover.
   *
   * @param length at the trim line
   * @param perSide from the base outline's line on the top to the end of the turn-under
   * @param area of the cut piece
   * @param perSideBySide the same under the name of each side, after limits of a narrow base
   */
  public record CoverFigures(
      double length,
      double width,
      double perSide,
      double area,
      double cutLength,
      double cutWidth,
      double turnUnder,
      double grip,
      Map<String, Double> perSideBySide) {}

  /**
   * The staples, for one layer of covering and for the most layers at a corner.
   *
   * @param leg the leg checked, nominal
   * @param suggestedLeg the longest leg that passes; empty where none does
   */
  public record StapleFigures(
      double leg,
      int count,
      double spacing,
      StapleDepth single,
      StapleDepth corner,
      OptionalDouble suggestedLeg) {}

  /**
   * How deep a staple goes through a number of layers.
   *
   * @param penetration nominal leg less the layers, into the board
   * @param margin least board thickness less penetration: board left under the point
   * @param hold inside leg less the layers: what holds
   */
  public record StapleDepth(int layers, double penetration, double margin, double hold) {}
}
