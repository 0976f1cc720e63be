package padwright.drawing;

import java.util.ArrayList;
import java.util.List;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.drawing.Chain.Source;
import padwright.drawing.DxfGroups.Entity;
import padwright.drawing.DxfGroups.Group;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * Turns one DXF entity into a chain, in mm; its codes are those of the DXF reference, R12 and on.
 */
final class DxfShapes {
  /** Ends of a line that differ less than this in height lie flat, drawing units. */
  private static final double FLAT = 1e-6;

  private static final int CLOSED = 1;

  /** A vertex that only steers a curve (flag 16). */
  private static final int STEERS = 16;

  private final DxfGroups groups;
  private final double unit;
  private final Budget budget;

  /**
   * @param unit mm of one drawing unit
   */
  DxfShapes(DxfGroups groups, double unit, Budget budget) {
    this.groups = groups;
    this.unit = unit;
    this.budget = budget;
  }

  /** Whether the entity is drawn in the plane: seen from above, or from below (mirrored). */
  boolean inPlane(Entity e) {
    double x = groups.number(e, 210, 0);
    double y = groups.number(e, 220, 0);
    return Math.hypot(x, y) < FLAT && groups.number(e, 230, 1) != 0;
  }

  boolean flat(Entity line) {
    return Math.abs(groups.number(line, 30, 0) - groups.number(line, 31, 0)) < FLAT;
  }

  private boolean mirrored(Entity e) {
    return groups.number(e, 230, 1) < 0;
  }

  /** A line; its points are in the drawing's own coordinates, mirrored or not. */
  Chain line(Entity e, Source source) {
    Vec2 from = point(groups.number(e, 10, 0), groups.number(e, 20, 0), false);
    Vec2 to = point(groups.number(e, 11, 0), groups.number(e, 21, 0), false);
    budget.point(source.line());
    return Chain.of(List.of(new Point(from, new Leg.Straight())), to, false, source);
  }

  /** An arc from its first angle anticlockwise to its second, or a whole circle. */
  Chain arc(Entity e, Source source, boolean whole) {
    double from = whole ? 0 : groups.number(e, 50, 0);
    double given = whole ? 360 : groups.number(e, 51, 0) - from;
    double turn = given - 360 * Math.floor(given / 360);
    if (turn == 0 && given != 0) {
      // From 0 to 360, as a whole circle is written by some.
      turn = 360;
    }
    double radius = groups.number(e, 40, 0);
    if (!(radius > 0) || turn == 0) {
      throw budget.refuse(
          source.line(), "the " + e.kind() + " has no radius or no length", "Delete it");
    }
    Vec2 centre = new Vec2(groups.number(e, 10, 0), groups.number(e, 20, 0));
    int n = turn > 180 ? 2 : 1;
    List<Vec2> at = new ArrayList<>();
    for (int i = 0; i <= n; i++) {
      at.add(centre.along(Vec2.polar(Math.toRadians(from + turn * i / n)), radius));
    }
    double bulge = Math.tan(Math.toRadians(turn / n) / 4);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      points.add(new Point(point(at.get(i), e), leg(bulge, e)));
      budget.point(source.line());
    }
    return Chain.of(points, whole ? points.get(0).at() : point(at.get(n), e), whole, source);
  }

  /** A light polyline: its vertices are groups of the one entity. */
  Chain light(Entity e, Source source) {
    List<double[]> vertices = new ArrayList<>();
    for (Group g : e.groups()) {
      if (g.code() == 10) {
        vertices.add(new double[] {groups.number(g), 0, 0});
      } else if (!vertices.isEmpty() && (g.code() == 20 || g.code() == 42)) {
        vertices.get(vertices.size() - 1)[g.code() == 20 ? 1 : 2] = groups.number(g);
      }
    }
    return polyline(vertices, e, source);
  }

  /** An old polyline with the vertices that follow it. */
  Chain heavy(Entity e, List<Entity> following, Source source) {
    List<double[]> vertices = new ArrayList<>();
    for (Entity v : following) {
      if ((groups.flags(v, 70) & STEERS) == 0) {
        vertices.add(
            new double[] {
              groups.number(v, 10, 0), groups.number(v, 20, 0), groups.number(v, 42, 0)
            });
      }
    }
    return polyline(vertices, e, source);
  }

  /** Null where there are not two vertices. */
  private Chain polyline(List<double[]> vertices, Entity e, Source source) {
    boolean closed = (groups.flags(e, 70) & CLOSED) != 0;
    int sides = closed ? vertices.size() : vertices.size() - 1;
    List<Point> points = new ArrayList<>();
    for (int k = 0; k < sides; k++) {
      double[] v = vertices.get(k);
      double[] w = vertices.get((k + 1) % vertices.size());
      Vec2 from = point(new Vec2(v[0], v[1]), e);
      Vec2 to = point(new Vec2(w[0], w[1]), e);
      budget.point(source.line());
      if (from.equals(to)) {
        continue;
      }
      if (Math.abs(v[2]) <= 1) {
        points.add(new Point(from, leg(v[2], e)));
      } else {
        // More than a half circle: halved, so that it stays well told.
        Vec2 middle = new Segment(from, to, mirrored(e) ? -v[2] : v[2]).pointAt(0.5);
        double half = Math.tan(Math.atan(v[2]) / 2);
        points.add(new Point(from, leg(half, e)));
        points.add(new Point(middle, leg(half, e)));
      }
    }
    if (points.isEmpty()) {
      return null;
    }
    double[] last = vertices.get(closed ? 0 : vertices.size() - 1);
    return Chain.of(points, point(new Vec2(last[0], last[1]), e), closed, source);
  }

  private Leg leg(double bulge, Entity e) {
    if (bulge == 0) {
      return new Leg.Straight();
    }
    return new Leg.Arc(mirrored(e) ? -bulge : bulge);
  }

  private Vec2 point(Vec2 p, Entity e) {
    return point(p.x(), p.y(), mirrored(e));
  }

  /** Seen from below (extrusion 0, 0, -1) the x axis points the other way (arbitrary axis rule). */
  private Vec2 point(double x, double y, boolean mirrored) {
    return new Vec2((mirrored ? -x : x) * unit, y * unit);
  }
}
