package padwright.drawing;

import java.util.ArrayList;
import java.util.List;
import padwright.design.FreeOutline;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.geometry.Bounds;
import padwright.geometry.Crossings;
import padwright.geometry.CubicArcs;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * A closed chain made fit for a job file: coordinates to a thousandth of a mm, no side without a
 * length.
 *
 * @param path its points as drawn, moved
 * @param laid the same laid out, where it was drawn
 * @param box its bounding box
 * @param chords its corner points, to look for points inside
 * @param dropped how many sides were too short to keep
 */
record Loop(
    Chain chain,
    FreePath path,
    FreeOutline outline,
    Path laid,
    Bounds box,
    List<Vec2> chords,
    int dropped) {
  private static final double FLAT = 0.05;
  private static final double BULGE_STEP = 1e8;

  /** The loop moved by {@code by}; null where it encloses nothing. */
  static Loop of(Chain chain, Vec2 by) {
    List<Point> points = rounded(chain, by);
    int drawn = points.size();
    points = apart(points);
    boolean straight = points.stream().allMatch(p -> p.leg() instanceof Leg.Straight);
    if (points.size() < (straight ? 3 : 2)) {
      return null;
    }
    FreePath path = new FreePath(points);
    FreeOutline outline = FreeOutline.of(path);
    Path laid = outline.path().translated(outline.moved().times(-1));
    return new Loop(
        chain, path, outline, laid, laid.bounds(), laid.flattened(FLAT), drawn - points.size());
  }

  /** A closed chain, turned to run anticlockwise, with its bounding box where it was drawn. */
  record Drawn(Chain chain, Bounds box) {
    /** So that a positive bulge bows out; the first point stays the first. */
    static Drawn of(Chain chain) {
      List<Segment> sides = new ArrayList<>();
      int n = chain.points().size();
      for (int k = 0; k < n; k++) {
        Point p = chain.points().get(k);
        Vec2 to = chain.points().get((k + 1) % n).at();
        if (p.leg() instanceof Leg.Cubic c) {
          sides.addAll(CubicArcs.of(p.at(), c.first(), c.second(), to));
        } else {
          sides.add(new Segment(p.at(), to, p.leg() instanceof Leg.Arc a ? a.bulge() : 0));
        }
      }
      if (sides.isEmpty()) {
        return new Drawn(chain, Bounds.of(chain.start()));
      }
      Path path = new Path(sides, true);
      return new Drawn(path.signedArea() < 0 ? chain.reversed() : chain, path.bounds());
    }

    double area() {
      return box.width() * box.height();
    }

    boolean tooSmall() {
      return Math.min(box.width(), box.height()) < DrawingLimits.LEAST;
    }
  }

  boolean contains(Loop other) {
    return box().contains(other.chords.get(0)) && inside(other.chords.get(0));
  }

  private boolean inside(Vec2 p) {
    return Polygons.contains(chords, p);
  }

  boolean crosses(Loop other) {
    return box().overlaps(other.box()) && Crossings.between(laid, other.laid).isPresent();
  }

  private static List<Point> rounded(Chain chain, Vec2 by) {
    List<Point> points = new ArrayList<>();
    int n = chain.points().size();
    for (int k = 0; k < n; k++) {
      Point p = chain.points().get(k);
      Vec2 at = p.at().plus(by);
      Vec2 to = chain.points().get((k + 1) % n).at().plus(by);
      if (p.leg() instanceof Leg.Cubic c) {
        Vec2 first = c.first().plus(by);
        Vec2 second = c.second().plus(by);
        if (at.distance(to) < 2 * DrawingLimits.SHORTEST_CURVED
            && at.distance(first) > at.distance(to)) {
          halved(points, at, first, second, to);
          continue;
        }
        points.add(new Point(round(at), new Leg.Cubic(round(first), round(second))));
      } else {
        points.add(new Point(round(at), leg(p.leg())));
      }
    }
    return points;
  }

  /** A curve back to its own start, cut in two at its middle (de Casteljau). */
  private static void halved(List<Point> out, Vec2 p0, Vec2 p1, Vec2 p2, Vec2 p3) {
    Vec2 a = p0.midpoint(p1);
    Vec2 b = p1.midpoint(p2);
    Vec2 c = p2.midpoint(p3);
    Vec2 ab = a.midpoint(b);
    Vec2 bc = b.midpoint(c);
    out.add(new Point(round(p0), new Leg.Cubic(round(a), round(ab))));
    out.add(new Point(round(ab.midpoint(bc)), new Leg.Cubic(round(bc), round(c))));
  }

  private static Leg leg(Leg leg) {
    if (leg instanceof Leg.Arc a) {
      double bulge = Math.rint(a.bulge() * BULGE_STEP) / BULGE_STEP;
      return Math.abs(bulge) < DrawingLimits.LEAST_BULGE ? new Leg.Straight() : new Leg.Arc(bulge);
    }
    return leg;
  }

  static double round(double mm) {
    double steps = Math.pow(10, DrawingLimits.DIGITS);
    return Math.rint(mm * steps) / steps + 0.0;
  }

  private static Vec2 round(Vec2 p) {
    return new Vec2(round(p.x()), round(p.y()));
  }

  /** Without sides that are too short: a point on the one before it gives that one its side. */
  private static List<Point> apart(List<Point> points) {
    List<Point> kept = new ArrayList<>();
    for (Point p : points) {
      int last = kept.size() - 1;
      if (last >= 0 && tooShort(kept.get(last), p.at())) {
        kept.set(last, new Point(kept.get(last).at(), p.leg()));
      } else {
        kept.add(p);
      }
    }
    while (kept.size() > 1 && tooShort(kept.get(kept.size() - 1), kept.get(0).at())) {
      kept.remove(kept.size() - 1);
    }
    return kept;
  }

  private static boolean tooShort(Point from, Vec2 to) {
    return from.at().distance(to)
        < (from.leg() instanceof Leg.Straight
            ? DrawingLimits.SHORTEST
            : DrawingLimits.SHORTEST_CURVED);
  }
}
