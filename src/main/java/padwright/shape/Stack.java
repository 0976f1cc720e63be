package padwright.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.design.EdgeShape;
import padwright.geometry.DiscHull.Disc;
import padwright.geometry.Vec2;

/**
 * The built-up layers under the covering at one place of the edge, in section coordinates (x
 * outwards from the base outline, y up from the back of the board), mm.
 *
 * @param board thickness of the board
 * @param backArris radius on its back arris
 * @param layers foam from the board upwards
 * @param edge shape of the foam's top edge
 * @param wadding compressed thickness, 0 without
 * @param waddingOverSides whether it goes down the sides to the back of the board
 * @param turning on the way from this edge shape to another; empty but within a passage
 */
public record Stack(
    double board,
    double backArris,
    List<Layer> layers,
    EdgeShape edge,
    double wadding,
    boolean waddingOverSides,
    Optional<Turning> turning) {
  /** Points on a shaped edge for each layer: 48 keep within 0.03 mm of a 50 mm arc. */
  private static final int EDGE_SAMPLES = 48;

  /** The same between two shapes, where neighbouring stretches differ by more. */
  private static final int TURNING_SAMPLES = 24;

  public Stack {
    layers = List.copyOf(layers);
  }

  public Stack(
      double board,
      double backArris,
      List<Layer> layers,
      EdgeShape edge,
      double wadding,
      boolean waddingOverSides) {
    this(board, backArris, layers, edge, wadding, waddingOverSides, Optional.empty());
  }

  /**
   * An edge between two shapes.
   *
   * @param into the other shape
   * @param share how far on the way to it, 0 to 1
   */
  public record Turning(EdgeShape into, double share) {}

  /**
   * A foam layer: its thickness, and its edge beyond the base outline. A crown is set in, and the
   * layers above it are laid over it.
   */
  public record Layer(double thickness, double overhang, boolean crown) {
    public Layer(double thickness, double overhang) {
      this(thickness, overhang, false);
    }
  }

  /** Whether the top is domed by a crown. */
  public boolean crowned() {
    return layers.stream().anyMatch(Layer::crown);
  }

  /** Height of the foam at the edge over the back of the board: crowns do not reach it. */
  double edgeTop() {
    double height = board;
    for (Layer layer : layers) {
      height += layer.crown() ? 0 : layer.thickness();
    }
    return height;
  }

  /**
   * What the layers below the top of layer {@code upTo} bend over: the top corner of each crown,
   * with the foam laid over it as the radius of the bend. In foam that does not thin where it bends
   * every surface above the corner is as far from it as the layers between are thick.
   */
  List<Disc> bends(int upTo) {
    List<Disc> bends = new ArrayList<>();
    double z = board;
    for (int i = 0; i <= upTo; i++) {
      z += layers.get(i).thickness();
      if (layers.get(i).crown()) {
        double over = 0;
        for (int k = i + 1; k <= upTo; k++) {
          over += layers.get(k).crown() ? 0 : layers.get(k).thickness();
        }
        bends.add(new Disc(new Vec2(layers.get(i).overhang(), z), over));
      }
    }
    return bends;
  }

  /** The same layers with another edge shape. */
  public Stack withEdge(EdgeShape shape) {
    return new Stack(board, backArris, layers, shape, wadding, waddingOverSides);
  }

  /** The same with the edge of every layer but a crown so far beyond the base outline. */
  public Stack withOverhang(double overhang) {
    List<Layer> moved =
        layers.stream().map(l -> l.crown() ? l : new Layer(l.thickness(), overhang)).toList();
    return new Stack(board, backArris, moved, edge, wadding, waddingOverSides);
  }

  /**
   * The layers part of the way to others of the same heights: at every height the edge stands in a
   * straight line between where the two stand.
   *
   * @param share 0 for these, 1 for the others
   */
  public Stack towards(Stack other, double share) {
    List<Layer> between = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      Layer a = layers.get(i);
      Layer b = other.layers.get(i);
      between.add(
          new Layer(
              a.thickness(), a.overhang() + (b.overhang() - a.overhang()) * share, a.crown()));
    }
    Optional<Turning> turning =
        edge.equals(other.edge) ? Optional.empty() : Optional.of(new Turning(other.edge, share));
    return new Stack(board, backArris, between, edge, wadding, waddingOverSides, turning);
  }

  public double foamHeight() {
    double height = 0;
    for (Layer layer : layers) {
      height += layer.thickness();
    }
    return height;
  }

  /** Height of the foam's top over the back of the board. */
  public double foamTop() {
    return board + foamHeight();
  }

  /** How far inside the base outline the furthest layer is stepped back; 0 where none is. */
  double deepest() {
    double most = 0;
    for (Layer layer : layers) {
      most = Math.max(most, -layer.overhang());
    }
    return most;
  }

  /** Height of the foam at the edge over the board's face. */
  public double edgeHeight() {
    return edgeTop() - board;
  }

  /** How far beyond the base outline a layer is cut: one laid over a crown by its bend further. */
  public double cutOverhang(int layer) {
    return layers.get(layer).overhang() + LaidOver.extra(this, layer);
  }

  /** The layers that reach the edge. */
  List<Layer> edgeLayers() {
    return crowned() ? layers.stream().filter(l -> !l.crown()).toList() : layers;
  }

  /** Height of the face before the covering. */
  public double top() {
    return foamTop() + wadding;
  }

  /** How far the wadding stands out at the sides. */
  public double sideWadding() {
    return waddingOverSides ? wadding : 0;
  }

  /** The edge of the topmost layer beyond the base outline. */
  double topOverhang() {
    return layers.isEmpty() ? 0 : layers.get(layers.size() - 1).overhang();
  }

  /** The furthest out that foam may reach at a height, as the edge shape cuts it. */
  double edgeLimit(double height) {
    double own = edgeLimit(edge, height);
    if (turning.isEmpty()) {
      return own;
    }
    double other = edgeLimit(turning.get().into(), height);
    if (Double.isInfinite(own) && Double.isInfinite(other)) {
      return own;
    }
    double o = topOverhang();
    double share = turning.get().share();
    return Math.min(o, own) * (1 - share) + Math.min(o, other) * share;
  }

  private double edgeLimit(EdgeShape shape, double height) {
    double o = topOverhang();
    double below = edgeTop() - height;
    if (shape instanceof EdgeShape.Round round && below < round.radius()) {
      double r = round.radius();
      double up = r - below;
      return o - r + Math.sqrt(Math.max(0, r * r - up * up));
    }
    if (shape instanceof EdgeShape.Bevel bevel && below < bevel.size()) {
      return o - (bevel.size() - below);
    }
    if (shape instanceof EdgeShape.FullRound) {
      double r = edgeHeight() / 2;
      double up = Math.abs(r - below);
      return o - r + Math.sqrt(Math.max(0, r * r - up * up));
    }
    return Double.POSITIVE_INFINITY;
  }

  /** The discs whose hull the covering lies on. */
  public List<Disc> discs() {
    double side = sideWadding();
    List<Disc> discs = new ArrayList<>();
    discs.add(new Disc(new Vec2(-backArris, backArris), backArris));
    discs.add(new Disc(new Vec2(0, board), 0));
    if (side > 0) {
      // Trimmed level with the back of the board, so that it adds no bulk under the staples.
      discs.add(new Disc(new Vec2(side, 0), 0));
    }
    double z = board;
    for (Layer layer : edgeLayers()) {
      for (double height : new double[] {z, z + layer.thickness()}) {
        double x = Math.min(layer.overhang(), edgeLimit(height));
        addFoamCorner(discs, new Vec2(x, height), 0);
      }
      z += layer.thickness();
    }
    for (Disc bend : crowned() ? bends(layers.size() - 1) : List.<Disc>of()) {
      discs.add(new Disc(bend.centre(), bend.radius() + wadding));
    }
    if (turning.isEmpty() && lowerLayersCarryTheEdge()) {
      wholeEdge(discs);
    } else {
      sampledEdge(discs);
    }
    return discs;
  }

  /**
   * Those of {@link #discs()} that are rounded above only: a rounded edge and the bend over a crown
   * go straight down from where they are upright, however large their radius.
   */
  public List<Disc> quarters() {
    List<Disc> quarters = new ArrayList<>();
    for (Disc bend : crowned() ? bends(layers.size() - 1) : List.<Disc>of()) {
      quarters.add(new Disc(bend.centre(), bend.radius() + wadding));
    }
    if (edge instanceof EdgeShape.Round && turning.isEmpty() && lowerLayersCarryTheEdge()) {
      wholeEdge(quarters);
    }
    return quarters;
  }

  /** Whether no layer that the edge shape reaches stands further back than the topmost. */
  private boolean lowerLayersCarryTheEdge() {
    double z = board;
    for (Layer layer : edgeLayers()) {
      z += layer.thickness();
      boolean reached = Double.isFinite(edgeLimit(z - 1e-9));
      if (reached && layer.overhang() < topOverhang() - 1e-9) {
        return false;
      }
    }
    return true;
  }

  private void wholeEdge(List<Disc> discs) {
    double o = topOverhang();
    if (edge instanceof EdgeShape.Round round) {
      double r = round.radius();
      addFoamCorner(discs, new Vec2(o - r, edgeTop() - r), r);
    } else if (edge instanceof EdgeShape.Bevel bevel) {
      addFoamCorner(discs, new Vec2(o - bevel.size(), edgeTop()), 0);
      // Wadding on the top lies down over the bevel as well.
      addShapedCorner(discs, new Vec2(o, edgeTop() - bevel.size()), 0);
    } else if (edge instanceof EdgeShape.FullRound) {
      double r = edgeHeight() / 2;
      addFoamCorner(discs, new Vec2(o - r, edgeTop() - r), r);
    }
  }

  /** The edge as points, where it cuts through layers that stand further back than the topmost. */
  private void sampledEdge(List<Disc> discs) {
    double z = board;
    for (Layer layer : edgeLayers()) {
      int samples = turning.isEmpty() ? EDGE_SAMPLES : TURNING_SAMPLES;
      for (int k = 0; k <= samples; k++) {
        double height = z + layer.thickness() * k / samples;
        double x = Math.min(layer.overhang(), edgeLimit(height));
        addShapedCorner(discs, new Vec2(x, height), 0);
      }
      z += layer.thickness();
    }
  }

  /** A corner of foam: with wadding over it where that covers the sides, or where it is the top. */
  private void addFoamCorner(List<Disc> discs, Vec2 centre, double radius) {
    if (waddingOverSides || centre.y() + radius > edgeTop() - 1e-9) {
      addShapedCorner(discs, centre, radius);
    } else {
      discs.add(new Disc(centre, radius));
    }
  }

  /** A corner under the wadding: it is rolled round it, or lies on top and is cut flush. */
  private void addShapedCorner(List<Disc> discs, Vec2 centre, double radius) {
    if (waddingOverSides) {
      discs.add(new Disc(centre, radius + wadding));
      return;
    }
    discs.add(new Disc(centre, radius));
    if (wadding > 0) {
      discs.add(new Disc(centre.plus(new Vec2(0, wadding)), radius));
    }
  }

  /** How far the stack reaches beyond the base outline without the covering; never negative. */
  public double greatestX() {
    double most = 0;
    for (Disc d : discs()) {
      most = Math.max(most, d.centre().x() + d.radius());
    }
    return most;
  }
}
