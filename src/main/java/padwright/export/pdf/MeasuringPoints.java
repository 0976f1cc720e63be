package padwright.export.pdf;

import java.util.List;
import java.util.Optional;
import padwright.export.Drawing;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * Four points of a piece's cut line to measure between once the sheets are taped: its corners, or
 * what lies furthest towards them. They are on the cut line, so they are always printed.
 *
 * @param points front left, front right, back right, back left as drawn
 */
record MeasuringPoints(List<Vec2> points) {
  static final List<String> NAMES = List.of("P", "Q", "R", "S");

  /** mm; points are for a tape measure. */
  private static final double CHORD_ERROR = 0.01;

  /** Prefers the point further along x where a cut-off corner has many equally far out. */
  private static final double ALONG = 1.001;

  MeasuringPoints {
    points = List.copyOf(points);
  }

  /** Of the drawing's largest closed cut line; empty where it has none. */
  static Optional<MeasuringPoints> of(Drawing drawing) {
    return cutLine(drawing).map(MeasuringPoints::on);
  }

  static Optional<Path> cutLine(Drawing drawing) {
    Path largest = null;
    for (Drawing.Item item : drawing.items()) {
      if (item instanceof Drawing.Stroke s
          && s.style() == Drawing.LineStyle.CUT
          && s.path().closed()
          && (largest == null || s.path().area() > largest.area())) {
        largest = s.path();
      }
    }
    return Optional.ofNullable(largest);
  }

  private static MeasuringPoints on(Path path) {
    Bounds b = path.bounds();
    List<Vec2> all = path.flattened(CHORD_ERROR);
    return new MeasuringPoints(
        List.of(
            furthest(all, b, -1, -1),
            furthest(all, b, 1, -1),
            furthest(all, b, 1, 1),
            furthest(all, b, -1, 1)));
  }

  private static Vec2 furthest(List<Vec2> all, Bounds b, int sx, int sy) {
    Vec2 best = all.get(0);
    double most = Double.NEGATIVE_INFINITY;
    for (Vec2 p : all) {
      Vec2 d = p.minus(b.centre());
      double out = ALONG * sx * d.x() / b.width() + sy * d.y() / b.height();
      if (out > most) {
        most = out;
        best = p;
      }
    }
    return best;
  }

  double between(int i, int j) {
    return points.get(i).distance(points.get(j));
  }
}
