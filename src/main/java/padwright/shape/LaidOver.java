package padwright.shape;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.DiscHull;
import padwright.geometry.DiscHull.Disc;
import padwright.geometry.DiscHull.Turn;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * Foam and wadding laid over a crown: level over it, bent round its top corner, then straight down
 * to the edge of the layer below. The foam is taken not to thin where it bends, and its length to
 * stay the same along its middle (our own rule, as for a covering). Section coordinates, mm.
 */
public final class LaidOver {
  /** Points on a bend or an edge; a picture, never a size. */
  private static final int STEPS = 24;

  private LaidOver() {}

  /** How much longer a layer is cut on a side than it reaches: 0 for one that lies flat. */
  public static double extra(Stack stack, int layer) {
    Stack.Layer l = stack.layers().get(layer);
    List<Disc> below = layer == 0 || l.crown() ? List.of() : stack.bends(layer - 1);
    if (below.isEmpty()) {
      return 0;
    }
    double half = l.thickness() / 2;
    List<Disc> discs = new ArrayList<>();
    below.forEach(b -> discs.add(new Disc(b.centre(), b.radius() + half)));
    Disc end = new Disc(new Vec2(l.overhang(), edgeBottom(stack, layer) + half), 0);
    discs.add(end);
    double length = 0;
    Vec2 at = null;
    for (Turn turn : DiscHull.rightHalf(discs)) {
      Vec2 from = turn.at(turn.from(), 0);
      length += at == null ? 0 : at.distance(from);
      if (turn.disc().equals(end)) {
        Vec2 start = DiscHull.rightHalf(discs).get(0).disc().centre();
        return Math.max(0, length - (end.centre().x() - start.x()));
      }
      length += turn.disc().radius() * (turn.to() - turn.from());
      at = turn.at(turn.to(), 0);
    }
    return 0;
  }

  /** The same for the wadding, which lies on the topmost layer. */
  static double extraOfWadding(Stack stack) {
    if (!stack.crowned() || stack.wadding() == 0) {
      return 0;
    }
    List<Stack.Layer> layers = new ArrayList<>(stack.layers());
    layers.add(new Stack.Layer(stack.wadding(), stack.topOverhang()));
    Stack under =
        new Stack(
            stack.board(), stack.backArris(), layers, stack.edge(), 0, stack.waddingOverSides());
    return extra(under, layers.size() - 1);
  }

  /** Height of a layer's lower edge where it stands at the pad's edge. */
  static double edgeBottom(Stack stack, int layer) {
    double z = stack.board();
    for (int i = 0; i < layer; i++) {
      z += stack.layers().get(i).crown() ? 0 : stack.layers().get(i).thickness();
    }
    return z;
  }

  /** The outline of a layer laid over a crown. */
  static Path shape(Stack stack, int layer, double inside) {
    double z = edgeBottom(stack, layer);
    List<Vec2> edge = edge(stack, layer);
    List<Disc> top = new ArrayList<>(stack.bends(layer));
    edge.forEach(p -> top.add(new Disc(p, 0)));
    List<Vec2> points = new ArrayList<>(line(top, inside));
    Vec2 foot = edge.get(0);
    if (points.get(points.size() - 1).distance(foot) > 1e-9) {
      points.add(foot);
    }
    List<Disc> bottom = new ArrayList<>(stack.bends(layer - 1));
    bottom.add(new Disc(new Vec2(foot.x(), z), 0));
    List<Vec2> under = line(bottom, inside);
    for (int i = under.size() - 2; i >= 0; i--) {
      points.add(under.get(i));
    }
    return Path.polygon(points);
  }

  /** The wadding over the topmost layer of a crowned stack, and down its sides where asked. */
  static Path wadding(Stack stack, double inside) {
    double w = stack.wadding();
    int last = stack.layers().size() - 1;
    List<Vec2> edge = edge(stack, last);
    List<Disc> inner = new ArrayList<>(stack.bends(last));
    List<Disc> outer = new ArrayList<>();
    inner.forEach(b -> outer.add(new Disc(b.centre(), b.radius() + w)));
    for (Vec2 p : edge) {
      inner.add(new Disc(p, 0));
      outer.add(stack.waddingOverSides() ? new Disc(p, w) : new Disc(p.plus(new Vec2(0, w)), 0));
    }
    List<Vec2> points = new ArrayList<>(line(outer, inside));
    List<Vec2> below = new ArrayList<>(line(inner, inside));
    if (stack.waddingOverSides()) {
      below.add(edge.get(0));
      for (int i = last - 1; i >= 0; i--) {
        if (!stack.layers().get(i).crown()) {
          List<Vec2> side = edge(stack, i);
          for (int k = side.size() - 1; k >= 0; k--) {
            below.add(side.get(k));
            points.add(side.get(k).plus(new Vec2(w, 0)));
          }
        }
      }
      points.add(new Vec2(w, stack.board()));
      points.add(new Vec2(w, 0));
      below.add(new Vec2(0, stack.board()));
      below.add(Vec2.ZERO);
    }
    for (int i = below.size() - 1; i >= 0; i--) {
      if (points.get(points.size() - 1).distance(below.get(i)) > 1e-9) {
        points.add(below.get(i));
      }
    }
    return Path.polygon(points);
  }

  /** The outer end of a layer from its foot upwards, as the edge shape cuts it. */
  private static List<Vec2> edge(Stack stack, int layer) {
    Stack.Layer l = stack.layers().get(layer);
    double z = edgeBottom(stack, layer);
    boolean square = stack.edge() instanceof padwright.design.EdgeShape.Square;
    List<Vec2> edge = new ArrayList<>();
    for (int k = 0; k <= STEPS; k += square ? STEPS : 1) {
      double height = z + l.thickness() * (1 - Math.cos(Math.PI * k / STEPS)) / 2;
      edge.add(new Vec2(Math.min(l.overhang(), stack.edgeLimit(height)), height));
    }
    return edge;
  }

  /** The hull's line from inside the pad to where it turns upright. */
  private static List<Vec2> line(List<Disc> discs, double inside) {
    List<Turn> turns = DiscHull.rightHalf(discs);
    List<Vec2> points = new ArrayList<>();
    points.add(new Vec2(inside, turns.get(0).at(0, 0).y()));
    for (Turn turn : turns) {
      if (turn.from() > Math.PI / 2 + 1e-9) {
        break;
      }
      double to = Math.min(turn.to(), Math.PI / 2);
      int steps = turn.disc().radius() > 0 ? STEPS : 1;
      for (int k = 0; k <= steps; k++) {
        Vec2 p = turn.at(turn.from() + (to - turn.from()) * k / steps, 0);
        if (p.distance(points.get(points.size() - 1)) > 1e-9) {
          points.add(p);
        }
      }
    }
    return points;
  }
}
