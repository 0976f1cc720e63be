package padwright.export;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * Parallel lines inside a closed path, by the even-odd rule: the path is turned so that the lines
 * are level, and each level is cut where the path's edges cross it.
 */
final class Hatching {
  private static final double CHORD_ERROR = 0.05;

  private Hatching() {}

  /**
   * @param angle of the lines, radians
   * @param pitch between them, mm
   */
  static List<Item> of(Path path, double angle, double pitch) {
    List<Vec2> turned = new ArrayList<>();
    for (Vec2 p : path.flattened(CHORD_ERROR)) {
      turned.add(p.rotated(-angle));
    }
    Bounds b = Bounds.of(turned);
    List<Item> lines = new ArrayList<>();
    for (double y = (Math.floor(b.minY() / pitch) + 0.5) * pitch; y < b.maxY(); y += pitch) {
      double[] cuts = crossings(turned, y);
      for (int i = 0; i + 1 < cuts.length; i += 2) {
        Vec2 from = new Vec2(cuts[i], y).rotated(angle);
        Vec2 to = new Vec2(cuts[i + 1], y).rotated(angle);
        lines.add(new Stroke(Path.line(from, to), LineStyle.HATCH));
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
