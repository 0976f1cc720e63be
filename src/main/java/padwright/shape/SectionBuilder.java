package padwright.shape;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.DiscHull;
import padwright.geometry.DiscHull.Turn;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * Pulls a covering taut over a stack: it follows the convex hull of the layers from the flat top to
 * the flat back, its neutral line half its thickness outside, so that every bend of angle a costs
 * half the thickness times a more (bending of a thin sheet about its middle surface).
 */
public final class SectionBuilder {
  /** Where in a covering's thickness its length stays the same over a bend; our assumption. */
  private static final double NEUTRAL = 0.5;

  /** How far inside the base outline the drawn section is cut off, beyond the turn-under. */
  private static final double INSIDE = 30;

  /** Steps of height in which a shaped foam edge is drawn; a picture, never a size. */
  private static final int EDGE_STEPS = 64;

  private SectionBuilder() {}

  /**
   * @param thickness of the covering, 0 or more
   * @param turnUnder from the base outline inwards on the back, to the trim line
   */
  public static Section build(
      Stack stack,
      List<String> foamNames,
      String boardName,
      String waddingName,
      double thickness,
      double turnUnder) {
    TautPath taut = taut(stack, thickness, turnUnder);
    double inside = -Math.max(turnUnder, Math.max(stack.foamHeight(), stack.deepest())) - INSIDE;
    return new Section(
        layers(stack, foamNames, boardName, waddingName, inside),
        taut,
        stack.edge(),
        stack.board(),
        stack.foamHeight(),
        stack.edgeHeight(),
        LaidOver.extraOfWadding(stack),
        stack.top(),
        stack.greatestX());
  }

  /** The covering's way from the top to the end of the turn-under. */
  public static TautPath taut(Stack stack, double thickness, double turnUnder) {
    List<Turn> turns = DiscHull.rightHalf(stack.discs(), stack.quarters());
    Path hull = chain(turns, 0, turnUnder);
    Path neutral = chain(turns, thickness * NEUTRAL, turnUnder);
    double startX = neutral.start().x();
    double backStart = startX;
    List<Segment> segments = neutral.segments();
    for (int i = 0; i < segments.size() - 1; i++) {
      backStart += segments.get(i).length();
    }
    return new TautPath(hull, neutral, startX, neutral.length() + startX, backStart);
  }

  /**
   * The hull's line grown outwards, as a path; its last segment is the straight run on the back.
   */
  private static Path chain(List<Turn> turns, double outside, double turnUnder) {
    List<Segment> list = new ArrayList<>();
    Vec2 flatEnd = turns.get(0).at(0, outside);
    Vec2 at = new Vec2(Math.min(0, flatEnd.x()), flatEnd.y());
    for (Turn turn : turns) {
      Vec2 from = turn.at(turn.from(), outside);
      Vec2 to = turn.at(turn.to(), outside);
      if (at.distance(from) > 1e-12) {
        list.add(Segment.line(at, from));
      }
      double angle = turn.to() - turn.from();
      if (turn.disc().radius() + outside > 0 && angle > 1e-12) {
        list.add(new Segment(from, to, -Math.tan(angle / 4)));
      }
      at = to;
    }
    list.add(Segment.line(at, new Vec2(-turnUnder, at.y())));
    return new Path(list, false);
  }

  private static List<Section.Layer> layers(
      Stack stack, List<String> foamNames, String boardName, String waddingName, double inside) {
    List<Section.Layer> layers = new ArrayList<>();
    double r = stack.backArris();
    List<Segment> board = new ArrayList<>();
    board.add(Segment.line(new Vec2(inside, 0), new Vec2(-r, 0)));
    if (r > 0) {
      board.add(Segment.arc(new Vec2(-r, r), r, -Math.PI / 2, 0));
    }
    board.add(Segment.line(new Vec2(0, r), new Vec2(0, stack.board())));
    board.add(Segment.line(new Vec2(0, stack.board()), new Vec2(inside, stack.board())));
    board.add(Segment.line(new Vec2(inside, stack.board()), new Vec2(inside, 0)));
    layers.add(
        new Section.Layer(
            Section.LayerKind.BOARD, boardName, stack.board(), 0, new Path(board, true)));
    double z = stack.board();
    boolean square = stack.edge() instanceof padwright.design.EdgeShape.Square;
    for (int i = 0; i < stack.layers().size(); i++) {
      Stack.Layer foam = stack.layers().get(i);
      boolean laid = !foam.crown() && i > 0 && !stack.bends(i - 1).isEmpty();
      List<Vec2> points = new ArrayList<>();
      points.add(new Vec2(inside, z + foam.thickness()));
      points.add(new Vec2(inside, z));
      for (int k = 0; k <= EDGE_STEPS; k += square ? EDGE_STEPS : 1) {
        double height = z + foam.thickness() * step(k);
        double limit = foam.crown() ? foam.overhang() : stack.edgeLimit(height);
        points.add(new Vec2(Math.min(foam.overhang(), limit), height));
      }
      layers.add(
          new Section.Layer(
              Section.LayerKind.FOAM,
              foamNames.get(i),
              foam.thickness(),
              foam.overhang(),
              laid ? LaidOver.shape(stack, i, inside) : Path.polygon(points)));
      z += foam.thickness();
    }
    if (stack.wadding() > 0) {
      layers.add(wadding(stack, waddingName, inside));
    }
    return layers;
  }

  /** Steps that lie closer at both ends, where a rounded edge is flattest. */
  private static double step(int k) {
    return (1 - Math.cos(Math.PI * k / EDGE_STEPS)) / 2;
  }

  /** The wadding as a band between the foam's edge and the same edge moved out. */
  private static Section.Layer wadding(Stack stack, String name, double inside) {
    if (stack.crowned()) {
      return new Section.Layer(
          Section.LayerKind.WADDING,
          name,
          stack.wadding(),
          stack.topOverhang(),
          LaidOver.wadding(stack, inside));
    }
    double top = stack.foamTop();
    double w = stack.wadding();
    List<Vec2> inner = new ArrayList<>();
    if (stack.waddingOverSides()) {
      inner.add(new Vec2(0, 0));
      inner.add(new Vec2(0, stack.board()));
    }
    double z = stack.board();
    boolean square = stack.edge() instanceof padwright.design.EdgeShape.Square;
    for (Stack.Layer foam : stack.layers()) {
      for (int k = 0; k <= EDGE_STEPS; k += square ? EDGE_STEPS : 1) {
        double height = z + foam.thickness() * step(k);
        double x = Math.min(foam.overhang(), stack.edgeLimit(height));
        if (stack.waddingOverSides() || height > top - shapedHeight(stack) - 1e-9) {
          inner.add(new Vec2(x, height));
        }
      }
      z += foam.thickness();
    }
    inner.add(new Vec2(inside, top));
    List<Vec2> points = new ArrayList<>(inner);
    double side = stack.sideWadding();
    points.add(new Vec2(inside, top + w));
    for (int i = inner.size() - 2; i >= 0; i--) {
      Vec2 p = inner.get(i);
      boolean onTop = p.y() > top - 1e-9;
      double lift = stack.waddingOverSides() ? (onTop ? w : 0) : w;
      points.add(new Vec2(p.x() + (onTop && !stack.waddingOverSides() ? 0 : side), p.y() + lift));
    }
    return new Section.Layer(
        Section.LayerKind.WADDING, name, w, stack.topOverhang(), Path.polygon(points));
  }

  /** How far below the foam's top its edge is shaped. */
  private static double shapedHeight(Stack stack) {
    if (stack.edge() instanceof padwright.design.EdgeShape.Round round) {
      return round.radius();
    }
    if (stack.edge() instanceof padwright.design.EdgeShape.Bevel bevel) {
      return bevel.size();
    }
    return stack.edge() instanceof padwright.design.EdgeShape.FullRound
        ? stack.foamHeight() / 2
        : 0;
  }
}
