package padwright.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.geometry.CubicArcs;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * A free outline as a closed anticlockwise path, the middle of its bounding box at the origin.
 *
 * @param path lines and arcs; cubic curves within {@link CubicArcs#CHORD_ERROR}
 * @param sides for each segment the side it belongs to, counted from 1 as the maker gave them
 * @param corners for each segment the point it starts from, counted from 1; 0 inside a curve
 * @param moved what was added to the maker's coordinates
 */
public record FreeOutline(Path path, List<Integer> sides, List<Integer> corners, Vec2 moved) {
  /** Points nearer than this, mm, are one. */
  private static final double SAME = 1e-6;

  public FreeOutline {
    sides = List.copyOf(sides);
    corners = List.copyOf(corners);
  }

  /** Lays the outline out; it is not checked for crossings. */
  public static FreeOutline of(FreePath shape) {
    List<Segment> segments = new ArrayList<>();
    List<Integer> sides = new ArrayList<>();
    List<Integer> corners = new ArrayList<>();
    int n = shape.points().size();
    for (int k = 0; k < n; k++) {
      Point from = shape.points().get(k);
      Vec2 to = shape.points().get((k + 1) % n).at();
      int before = segments.size();
      segments.addAll(side(from, to));
      for (int i = before; i < segments.size(); i++) {
        sides.add(k + 1);
        corners.add(i == before ? k + 1 : 0);
      }
    }
    Path path = new Path(segments, true);
    if (path.signedArea() < 0) {
      path = path.reversed();
      Collections.reverse(sides);
      // Reversed, a segment starts where it ended: at the point that the next one started from.
      List<Integer> starts = new ArrayList<>();
      int m = corners.size();
      for (int i = 0; i < m; i++) {
        starts.add(corners.get(Math.floorMod(m - i, m)));
      }
      corners = starts;
    }
    Vec2 moved = path.bounds().centre().times(-1);
    return new FreeOutline(path.translated(moved), sides, corners, moved);
  }

  private static List<Segment> side(Point from, Vec2 to) {
    Leg leg = from.leg();
    if (leg instanceof Leg.Cubic c) {
      return CubicArcs.of(from.at(), c.first(), c.second(), to);
    }
    if (from.at().distance(to) < SAME) {
      return List.of();
    }
    double bulge = leg instanceof Leg.Arc a ? a.bulge() : 0;
    return List.of(new Segment(from.at(), to, bulge));
  }
}
