package padwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Parallel lines inside a polygon, by the even-odd rule: the polygon is turned so that the lines
 * are level, and each level is cut where its edges cross it.
 */
public final class HatchLines {
  private HatchLines() {}

  /**
   * @param polygon its corners in order
   * @param angle of the lines, radians
   * @param pitch between them
   */
  public static List<Segment> inside(List<Vec2> polygon, double angle, double pitch) {
    List<Vec2> turned = new ArrayList<>();
    for (Vec2 p : polygon) {
      turned.add(p.rotated(-angle));
    }
    Bounds b = Bounds.of(turned);
    List<Segment> lines = new ArrayList<>();
    for (double y = (Math.floor(b.minY() / pitch) + 0.5) * pitch; y < b.maxY(); y += pitch) {
      double[] cuts = crossings(turned, y);
      for (int i = 0; i + 1 < cuts.length; i += 2) {
        lines.add(
            Segment.line(
                new Vec2(cuts[i], y).rotated(angle), new Vec2(cuts[i + 1], y).rotated(angle)));
      }
    }
    return lines;
  }

  private static double[] crossings(List<Vec2> points, double y) {
    double[] x = new double[points.size()];
    int n = 0;
    for (int i = 0; i < points.size(); i++) {
      Vec2 p = points.get(i);
      Vec2 q = points.get((i + 1) % points.size());
      if (p.y() > y != q.y() > y) {
        x[n++] = p.x() + (q.x() - p.x()) * (y - p.y()) / (q.y() - p.y());
      }
    }
    double[] cuts = Arrays.copyOf(x, n);
    Arrays.sort(cuts);
    return cuts;
  }
}
