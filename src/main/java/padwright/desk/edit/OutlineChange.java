package padwright.desk.edit;

import java.util.ArrayList;
import java.util.List;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.Circle;
import padwright.design.OutlineShape.Ellipse;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.design.OutlineShape.Rectangle;
import padwright.design.OutlineShape.Trapezoid;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.jobfile.PartTree;
import padwright.shape.Outlines;

/** An outline as another kind of outline of the same size, and changes of its points. */
public final class OutlineChange {
  /** A new point comes to lie on one of so many places of a leg; it can be moved after that. */
  private static final int SHARES = 1000;

  private OutlineChange() {}

  /** The tree of an outline of the kind {@code word}, as large as the one that is there. */
  static Object to(String word, WrappedPad pad, String place, Units units) {
    OutlineShape now = pad.base().outline();
    if (place.startsWith("fittings.cutOuts[")) {
      int number = Integer.parseInt(place.replaceAll("\\D", ""));
      now = pad.fittings().cutOuts().get(number).shape();
    }
    return PartTree.outline(to(word, now), units);
  }

  static OutlineShape to(String word, OutlineShape now) {
    Bounds b = path(now).bounds();
    return switch (word) {
      case "rectangle" -> new Rectangle(b.width(), b.height(), List.of(0.0, 0.0, 0.0, 0.0));
      case "trapezoid" -> new Trapezoid(b.width(), b.width(), b.height());
      case "circle" -> new Circle(Math.min(b.width(), b.height()));
      case "ellipse" -> new Ellipse(b.width(), b.height());
      case "path" -> free(now);
      default -> throw new IllegalArgumentException("outline: " + word);
    };
  }

  /** Any outline as lines and arcs, closed, anticlockwise. */
  public static Path path(OutlineShape shape) {
    return Outlines.of(shape).path();
  }

  /** Any outline by its points. */
  public static FreePath free(OutlineShape shape) {
    if (shape instanceof FreePath f) {
      return f;
    }
    List<Point> points = new ArrayList<>();
    for (Segment s : path(shape).segments()) {
      points.add(new Point(s.start(), s.isArc() ? new Leg.Arc(s.bulge()) : new Leg.Straight()));
    }
    return new FreePath(points);
  }

  /** With a point moved to another place. Controls of curves beside it go with it. */
  public static FreePath moved(FreePath path, int point, Vec2 to) {
    List<Point> points = new ArrayList<>(path.points());
    int before = Math.floorMod(point - 1, points.size());
    Vec2 by = to.minus(points.get(point).at());
    Point own = points.get(point);
    points.set(
        point,
        new Point(
            to,
            own.leg() instanceof Leg.Cubic c
                ? new Leg.Cubic(c.first().plus(by), c.second())
                : own.leg()));
    Point prior = points.get(before);
    if (prior.leg() instanceof Leg.Cubic c && before != point) {
      points.set(before, new Point(prior.at(), new Leg.Cubic(c.first(), c.second().plus(by))));
    }
    return new FreePath(points);
  }

  /** With a leg bent so that its middle lies at a place; straight where that is all but on it. */
  public static FreePath bent(FreePath path, int leg, Vec2 middle, double straightWithin) {
    List<Point> points = new ArrayList<>(path.points());
    Vec2 a = points.get(leg).at();
    Vec2 b = points.get((leg + 1) % points.size()).at();
    Vec2 chord = b.minus(a);
    // A bulge is the rise over half the chord; positive bows to the right of the way from a to b.
    double rise = chord.unit().right().dot(middle.minus(a.plus(b).times(0.5)));
    double bulge = 2 * rise / chord.length();
    points.set(
        leg,
        new Point(a, Math.abs(rise) < straightWithin ? new Leg.Straight() : new Leg.Arc(bulge)));
    return new FreePath(points);
  }

  /** With a point put into a leg; the two halves of an arc keep its radius. */
  public static FreePath split(FreePath path, int leg, double at) {
    List<Point> points = new ArrayList<>(path.points());
    Vec2 a = points.get(leg).at();
    Vec2 b = points.get((leg + 1) % points.size()).at();
    Leg own = points.get(leg).leg();
    if (own instanceof Leg.Arc arc) {
      Segment s = new Segment(a, b, arc.bulge());
      double angle = 4 * Math.atan(arc.bulge());
      points.set(leg, new Point(a, new Leg.Arc(Math.tan(angle * at / 4))));
      points.add(leg + 1, new Point(s.pointAt(at), new Leg.Arc(Math.tan(angle * (1 - at) / 4))));
    } else if (own instanceof Leg.Cubic c) {
      Vec2 p = mix(a, c.first(), at);
      Vec2 q = mix(c.first(), c.second(), at);
      Vec2 r = mix(c.second(), b, at);
      Vec2 pq = mix(p, q, at);
      Vec2 qr = mix(q, r, at);
      points.set(leg, new Point(a, new Leg.Cubic(p, pq)));
      points.add(leg + 1, new Point(mix(pq, qr, at), new Leg.Cubic(qr, r)));
    } else {
      points.add(leg + 1, new Point(mix(a, b, at), new Leg.Straight()));
    }
    return new FreePath(points);
  }

  /** How far along a leg the place on it lies that is nearest to another, a share of it. */
  public static double share(FreePath path, int leg, Vec2 near) {
    Vec2 a = path.points().get(leg).at();
    Vec2 b = path.points().get((leg + 1) % path.points().size()).at();
    Leg own = path.points().get(leg).leg();
    double best = 0.5;
    double nearest = Double.MAX_VALUE;
    for (int i = 1; i < SHARES; i++) {
      double t = (double) i / SHARES;
      double away = along(a, b, own, t).distance(near);
      if (away < nearest) {
        nearest = away;
        best = t;
      }
    }
    return best;
  }

  private static Vec2 along(Vec2 a, Vec2 b, Leg leg, double t) {
    if (leg instanceof Leg.Cubic c) {
      Vec2 pq = mix(mix(a, c.first(), t), mix(c.first(), c.second(), t), t);
      Vec2 qr = mix(mix(c.first(), c.second(), t), mix(c.second(), b, t), t);
      return mix(pq, qr, t);
    }
    return new Segment(a, b, leg instanceof Leg.Arc arc ? arc.bulge() : 0).pointAt(t);
  }

  private static Vec2 mix(Vec2 a, Vec2 b, double at) {
    return a.plus(b.minus(a).times(at));
  }

  /** Without a point: the leg before it goes straight on to the next. */
  public static FreePath without(FreePath path, int point) {
    List<Point> points = new ArrayList<>(path.points());
    int before = Math.floorMod(point - 1, points.size());
    points.set(before, new Point(points.get(before).at(), new Leg.Straight()));
    points.remove(point);
    return new FreePath(points);
  }

  /** The step that gives a part another base outline. */
  public static PartEdit.Step step(OutlineShape outline, Units units) {
    return PartEdit.Step.put("base.outline", PartTree.outline(outline, units));
  }
}
