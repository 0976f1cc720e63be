package padwright.drawing;

import java.util.ArrayList;
import java.util.List;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.geometry.Vec2;

/**
 * Sides drawn one after the other, in mm with y up.
 *
 * @param points each with the side that starts there; at least one
 * @param end where the last side ends; of a closed chain its first point
 * @param source the elements it was drawn with
 */
record Chain(List<Point> points, Vec2 end, boolean closed, List<Source> source) {
  /**
   * An element of the drawing.
   *
   * @param kind such as LINE or rect
   * @param layer the layer or the group it is on; empty where there is none
   * @param line of the file, from 1
   * @param number its own in the drawing
   */
  record Source(String kind, String layer, int line, int number) {}

  Chain {
    points = List.copyOf(points);
    source = List.copyOf(source);
  }

  static Chain of(List<Point> points, Vec2 end, boolean closed, Source source) {
    return new Chain(points, end, closed, List.of(source));
  }

  Vec2 start() {
    return points.get(0).at();
  }

  int line() {
    return source.get(0).line();
  }

  /** The same sides the other way. */
  Chain reversed() {
    List<Point> back = new ArrayList<>(points.size());
    Vec2 from = end;
    for (int i = points.size() - 1; i >= 0; i--) {
      Point p = points.get(i);
      back.add(new Point(from, reversed(p.leg())));
      from = p.at();
    }
    return new Chain(back, from, closed, source);
  }

  private static Leg reversed(Leg leg) {
    if (leg instanceof Leg.Arc a) {
      return new Leg.Arc(-a.bulge());
    }
    return leg instanceof Leg.Cubic c ? new Leg.Cubic(c.second(), c.first()) : leg;
  }

  /** Chains that follow each other to a loop; each starts where the one before ends, or near. */
  static Chain loop(List<Chain> chains) {
    List<Point> points = new ArrayList<>();
    List<Source> sources = new ArrayList<>();
    Vec2 before = chains.get(chains.size() - 1).end;
    for (Chain c : chains) {
      points.add(new Point(before.midpoint(c.start()), c.points.get(0).leg()));
      points.addAll(c.points.subList(1, c.points.size()));
      sources.addAll(c.source);
      before = c.end;
    }
    return new Chain(points, points.get(0).at(), true, sources);
  }
}
