package padwright.jobfile;

import java.util.List;
import padwright.design.FreeOutline;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.geometry.Bounds;
import padwright.geometry.Crossings;
import padwright.geometry.Crossings.Crossing;
import padwright.geometry.Vec2;
import padwright.json.Node;

/**
 * Reads a free outline: a list of points, each with the side that starts there. The points are kept
 * as they are given; the checks are made on the outline they lay out.
 */
final class PathReader {
  private final Lengths lengths;

  PathReader(Lengths lengths) {
    this.lengths = lengths;
  }

  FreePath path(Node node) {
    List<Node> items = node.array(2, Limits.MOST_POINTS);
    List<Point> points = items.stream().map(this::point).toList();
    checkApart(items, points);
    if (points.size() == 2 && points.stream().allMatch(p -> p.leg() instanceof Leg.Straight)) {
      throw node.refuse(
          "two points with straight sides enclose nothing", "Give a third point, or a bulge");
    }
    FreePath path = new FreePath(points);
    checkLaidOut(node, items, path);
    return path;
  }

  private Point point(Node node) {
    if (node.kind() == Node.Kind.OBJECT) {
      node.requireObject("at", "cubic");
      List<Node> controls = node.require("cubic").array(2, 2);
      return new Point(
          pair(node.require("at")), new Leg.Cubic(pair(controls.get(0)), pair(controls.get(1))));
    }
    if (node.kind() != Node.Kind.ARRAY) {
      throw node.refuse(
          node.shown() + " is not a point of an outline",
          "Write [x, y], [x, y, bulge] or { \"at\": [x, y], \"cubic\": [[x, y], [x, y]] }");
    }
    List<Node> values = node.array(2, 3);
    Vec2 at = new Vec2(coordinate(values.get(0)), coordinate(values.get(1)));
    return new Point(at, values.size() == 2 ? new Leg.Straight() : bulge(values.get(2)));
  }

  private Vec2 pair(Node node) {
    List<Node> values = node.array(2, 2);
    return new Vec2(coordinate(values.get(0)), coordinate(values.get(1)));
  }

  private double coordinate(Node node) {
    return lengths.mm(node, -Limits.LARGEST, Limits.LARGEST);
  }

  private static Leg bulge(Node node) {
    double bulge = node.number(-Limits.MOST_BULGE, Limits.MOST_BULGE);
    if (bulge == 0) {
      return new Leg.Straight();
    }
    if (Math.abs(bulge) < Limits.LEAST_BULGE) {
      throw node.refuse(
          node.shown() + " is too small a bulge to tell from a straight side",
          "Leave it out, or give tan(a quarter of the angle the arc turns)");
    }
    return new Leg.Arc(bulge);
  }

  private void checkApart(List<Node> items, List<Point> points) {
    int n = points.size();
    for (int k = 0; k < n; k++) {
      int next = (k + 1) % n;
      double apart = points.get(k).at().distance(points.get(next).at());
      double least =
          points.get(k).leg() instanceof Leg.Straight
              ? Limits.NEAREST_POINTS
              : Limits.NEAREST_CURVED;
      if (apart >= least) {
        continue;
      }
      if (next == 0) {
        throw items
            .get(k)
            .refuse(
                "the last point is the first one again" + slip(apart),
                "Leave it out: the outline closes by itself");
      }
      throw items
          .get(next)
          .refuse(
              "point " + (next + 1) + " lies on point " + next + slip(apart),
              "Leave one of them out, or move them at least " + lengths.shown(least) + " apart");
    }
  }

  private String slip(double apart) {
    return apart < Limits.NEAREST_CURVED ? "" : ", all but " + lengths.shown(apart);
  }

  private void checkLaidOut(Node node, List<Node> items, FreePath path) {
    FreeOutline laid = FreeOutline.of(path);
    if (laid.sides().size() > Limits.MOST_PIECES) {
      throw node.refuse(
          "its curves come to " + laid.sides().size() + " arcs and lines",
          "Draw it with fewer or plainer curves: at most " + Limits.MOST_PIECES);
    }
    Bounds box = laid.path().bounds();
    double least = Math.min(box.width(), box.height());
    double most = Math.max(box.width(), box.height());
    if (least < Limits.LEAST_OUTLINE || most > Limits.LARGEST) {
      throw node.refuse(
          "the outline measures "
              + lengths.shown(box.width())
              + " x "
              + lengths.shown(box.height()),
          "Check the points and their unit: each way from "
              + lengths.shown(Limits.LEAST_OUTLINE)
              + " to "
              + lengths.shown(Limits.LARGEST));
    }
    Crossings.first(laid.path()).ifPresent(c -> refuse(c, items, laid));
    if (laid.path().area() < Limits.LEAST_AREA) {
      throw node.refuse(
          "the outline encloses no area", "Give the points in order round the outline");
    }
  }

  private void refuse(Crossing crossing, List<Node> items, FreeOutline laid) {
    int a = laid.sides().get(crossing.first());
    int b = laid.sides().get(crossing.second());
    int first = Math.min(a, b);
    int second = Math.max(a, b);
    Vec2 at = crossing.at().minus(laid.moved());
    throw items
        .get(first - 1)
        .refuse(
            (a == b
                    ? "side " + a + " crosses or touches itself"
                    : "side " + first + " and side " + second + " cross or touch")
                + " at ["
                + lengths.plain(at.x())
                + ", "
                + lengths.plain(at.y())
                + "]",
            "Move the points so that the outline goes round once (side 1 runs from the first point"
                + " to the second)");
  }
}
