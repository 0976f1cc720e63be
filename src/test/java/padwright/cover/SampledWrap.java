package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * A second way to wrap a cover, for tests only and apart from the product's: it walks over the pad
 * point by point and asks JTS whether the flat place that comes there is part of the cover, and
 * walks along the cut line and asks where each point of it ends up. For pads with straight sides
 * and upright walls: a board, flush foam, square edges, a covering of some thickness.
 */
final class SampledWrap {
  private static final double STEP = 1.0;

  final double bareArea;
  final double leastHiding;
  final double leastTurnUnder;

  /**
   * @param outline corners of the base, anticlockwise, as x0, y0, x1, y1, ...
   * @param cut corners of the trimmed cover in the same frame
   * @param wall height of the wall, foam and board
   * @param thickness of the covering
   * @param over for each corner i (between side i and side i + 1): 1 side i on top, 2 side i + 1 on
   *     top, 3 both (double pleat)
   */
  SampledWrap(double[][] outline, double[][] cut, double wall, double thickness, int[] over) {
    int n = outline.length;
    Coordinate[] ring = new Coordinate[cut.length + 1];
    for (int i = 0; i < cut.length; i++) {
      ring[i] = new Coordinate(cut[i][0], cut[i][1]);
    }
    ring[cut.length] = ring[0];
    Polygon polygon = new GeometryFactory().createPolygon(ring);
    IndexedPointInAreaLocator in = new IndexedPointInAreaLocator(polygon);
    // Down the wall to where the covering lies on the back: two quarter turns about t/2.
    double down = wall + Math.PI * thickness / 2;
    double bare = 0;
    double hiding = Double.POSITIVE_INFINITY;
    double turnUnder = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      double[] a = outline[i];
      double[] b = outline[(i + 1) % n];
      double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      double tx = (b[0] - a[0]) / length;
      double ty = (b[1] - a[1]) / length;
      for (double t = STEP / 2; t < length; t += STEP) {
        for (double s = STEP / 2; s < down; s += STEP) {
          if (!has(in, a, tx, ty, t, s)) {
            bare += STEP * STEP;
          }
        }
        // Outwards along this line until the cover ends; on the back the mitre of the corner rules.
        double reach = down;
        while (has(in, a, tx, ty, t, reach + 0.02) && reach < down + 200) {
          reach += 0.02;
        }
        double under = reach - down;
        double toCorner = Math.min(t / mitre(outline, i - 1), (length - t) / mitre(outline, i));
        if (under < toCorner - 0.1 && has(in, a, tx, ty, t, down - 0.5)) {
          turnUnder = Math.min(turnUnder, under);
        }
      }
    }
    for (double[] p : along(cut)) {
      for (int i = 0; i < n; i++) {
        hiding = Math.min(hiding, hiding(outline, i, p, down, thickness, over[i]));
      }
    }
    bareArea = bare;
    leastHiding = hiding;
    leastTurnUnder = turnUnder;
  }

  private static boolean has(
      IndexedPointInAreaLocator in, double[] a, double tx, double ty, double t, double s) {
    // Outwards is to the right of travel.
    return in.locate(new Coordinate(a[0] + tx * t + ty * s, a[1] + ty * t - tx * s))
        != Location.EXTERIOR;
  }

  private static double mitre(double[][] outline, int corner) {
    return Math.tan(turn(outline, corner) / 2);
  }

  private static double turn(double[][] outline, int corner) {
    int n = outline.length;
    int i = Math.floorMod(corner, n);
    double[] a = outline[i];
    double[] b = outline[(i + 1) % n];
    double[] c = outline[(i + 2) % n];
    double before = Math.atan2(b[1] - a[1], b[0] - a[0]);
    double after = Math.atan2(c[1] - b[1], c[0] - b[0]);
    return Math.IEEEremainder(after - before, 2 * Math.PI);
  }

  /** Distance on the wall of a raw edge point from the arris, if the fold brings it on a wall. */
  private static double hiding(
      double[][] outline, int corner, double[] p, double down, double thickness, int over) {
    int n = outline.length;
    double[] a = outline[corner];
    double[] v = outline[(corner + 1) % n];
    double before = Math.atan2(v[1] - a[1], v[0] - a[0]);
    double turn = turn(outline, corner);
    double r = Math.hypot(p[0] - v[0], p[1] - v[1]);
    // Angle of the point from the outward normal of the side before, anticlockwise.
    double angle =
        Math.IEEEremainder(
            Math.atan2(p[1] - v[1], p[0] - v[0]) - (before - Math.PI / 2), 2 * Math.PI);
    double arris = thickness / 2 * Math.tan(turn / 2);
    if (angle <= 0 || angle >= turn || r < 1e-9) {
      return Double.POSITIVE_INFINITY;
    }
    double fromFold = Math.min(angle, turn - angle);
    if (over == 3 && fromFold > turn / 4) {
      fromFold = turn / 2 - fromFold;
    }
    double depth = r * Math.cos(fromFold);
    double aside = r * Math.sin(fromFold) - arris;
    // 0.5: the sampled fold runs from the corner itself, the true one from within its bend.
    return aside < -1e-6 || depth > down - 0.5 ? Double.POSITIVE_INFINITY : aside;
  }

  private static List<double[]> along(double[][] cut) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < cut.length; i++) {
      double[] a = cut[i];
      double[] b = cut[(i + 1) % cut.length];
      int steps = Math.max(1, (int) Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / 0.25));
      for (int k = 0; k < steps; k++) {
        double f = (double) k / steps;
        points.add(new double[] {a[0] + (b[0] - a[0]) * f, a[1] + (b[1] - a[1]) * f});
      }
    }
    return points;
  }
}
