package padwright.shape;

import java.util.List;
import padwright.design.EdgeShape;
import padwright.geometry.Path;

/**
 * The pad cut across its edge, in the plane of the outward normal: x outwards from the base
 * outline, y up from the back of the board (so y here is the pad's z). mm.
 *
 * @param layers from the board upwards, as built, before the covering is pulled over
 * @param taut the covering pulled over them
 * @param edge shape of the foam's top edge
 * @param boardThickness nominal
 * @param foamHeight sum of the foam layers
 * @param edgeHeight of the foam where it stands at the edge: crowns do not reach it
 * @param waddingLaid how much larger a side the wadding is cut because it lies over a crown
 * @param top height of the face before the covering, over the back of the board
 * @param greatestX how far the built-up section reaches beyond the base outline, without the
 *     covering; 0 when flush, never negative
 */
public record Section(
    List<Layer> layers,
    TautPath taut,
    EdgeShape edge,
    double boardThickness,
    double foamHeight,
    double edgeHeight,
    double waddingLaid,
    double top,
    double greatestX) {
  public Section {
    layers = List.copyOf(layers);
  }

  /** How far the topmost foam layer's edge stands beyond the base outline; 0 without foam. */
  public double topOverhang() {
    double overhang = 0;
    for (Layer layer : layers) {
      overhang = layer.kind() == LayerKind.FOAM ? layer.overhang() : overhang;
    }
    return overhang;
  }

  /** What a layer is. */
  public enum LayerKind {
    BOARD,
    FOAM,
    WADDING
  }

  /**
   * One layer of the section, cut off some way inside the edge.
   *
   * @param shape closed, in section coordinates
   * @param overhang of its edge beyond the base outline
   */
  public record Layer(LayerKind kind, String name, double thickness, double overhang, Path shape) {}
}
