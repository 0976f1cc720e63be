package padwright.drawing;

import java.util.ArrayList;
import java.util.List;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.drawing.Chain.Source;
import padwright.geometry.Affine;
import padwright.geometry.Vec2;

/** Draws one element: takes strokes in its own coordinates and keeps chains in mm, y up. */
final class Pen {
  private final Affine map;
  private final Source source;
  private final Budget budget;
  private final List<Chain> chains = new ArrayList<>();
  private List<Point> points = new ArrayList<>();
  private Vec2 start = Vec2.ZERO;
  private Vec2 at = Vec2.ZERO;

  /**
   * @param map from the element's coordinates to mm
   */
  Pen(Affine map, Source source, Budget budget) {
    this.map = map;
    this.source = source;
    this.budget = budget;
  }

  Vec2 at() {
    return at;
  }

  /** Where the chain being drawn began. */
  Vec2 start() {
    return start;
  }

  void move(Vec2 to) {
    finish(false);
    start = to;
    at = to;
  }

  void line(Vec2 to) {
    add(new Point(map.at(at), new Leg.Straight()));
    at = to;
  }

  void cubic(Vec2 first, Vec2 second, Vec2 to) {
    add(new Point(map.at(at), new Leg.Cubic(map.at(first), map.at(second))));
    at = to;
  }

  /** The same curve as a cubic: its control points are two thirds of the way. */
  void quadratic(Vec2 control, Vec2 to) {
    Vec2 first = at.plus(control.minus(at).times(2.0 / 3));
    Vec2 second = to.plus(control.minus(to).times(2.0 / 3));
    cubic(first, second, to);
  }

  void arc(EllipticArc arc, Vec2 to) {
    arc.mapped(map).sides().forEach(this::add);
    at = to;
  }

  private void add(Point point) {
    budget.point(source.line());
    Vec2 p = point.at();
    if (!Double.isFinite(p.x() + p.y())) {
      throw budget.refuse(
          source.line(), "a point lies beyond all numbers", "Check the numbers and transforms");
    }
    points.add(point);
  }

  /** Back to where the chain began, with a straight side where there is a way to go. */
  void close() {
    if (!at.equals(start)) {
      line(start);
    }
    finish(true);
    at = start;
  }

  private void finish(boolean closed) {
    if (!points.isEmpty()) {
      chains.add(Chain.of(points, map.at(at), closed, source));
      points = new ArrayList<>();
    }
  }

  List<Chain> chains() {
    finish(false);
    return chains;
  }
}
