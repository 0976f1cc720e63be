package padwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * An ellipse as a smooth chain of arcs: in each quarter the arcs turn through equal angles of the
 * ellipse's normal, each pair of neighbours shares its tangent (a biarc between two points and
 * their tangents), and the number of arcs grows until the chain keeps a stated distance from the
 * ellipse.
 */
public final class EllipseArcs {
  /** How far the chain may leave the true ellipse, mm: a tenth of what a knife can follow. */
  public static final double CHORD_ERROR = 0.01;

  private static final int MOST_BIARCS = 64;
  private static final int SAMPLES = 7;

  private EllipseArcs() {}

  /** Half axes {@code a} along x and {@code b} along y; starts at normal angle -135 degrees. */
  public static Path of(double a, double b) {
    if (Math.abs(a - b) < 1e-9) {
      List<Segment> list = new ArrayList<>();
      for (int q = 0; q < 4; q++) {
        double from = -0.75 * Math.PI + q * Math.PI / 2;
        list.add(Segment.arc(Vec2.ZERO, a, from, from + Math.PI / 2));
      }
      return new Path(list, true);
    }
    for (int n = 1; n <= MOST_BIARCS; n *= 2) {
      Path path = chain(a, b, n);
      if (n == MOST_BIARCS || deviation(path, a, b) <= CHORD_ERROR) {
        return path;
      }
    }
    throw new IllegalStateException("unreachable");
  }

  /** {@code n} biarcs in each eighth of the turn. */
  private static Path chain(double a, double b, int n) {
    List<Segment> list = new ArrayList<>();
    int total = 8 * n;
    for (int i = 0; i < total; i++) {
      double from = -0.75 * Math.PI + 2 * Math.PI * i / total;
      double to = -0.75 * Math.PI + 2 * Math.PI * (i + 1) / total;
      list.addAll(
          Biarc.between(
              point(a, b, from), Vec2.polar(from).left(), point(a, b, to), Vec2.polar(to).left()));
    }
    return new Path(list, true);
  }

  /** The point of the ellipse whose outward normal has this angle. */
  public static Vec2 point(double a, double b, double normal) {
    double c = Math.cos(normal);
    double s = Math.sin(normal);
    double k = Math.sqrt(a * a * c * c + b * b * s * s);
    return new Vec2(a * a * c / k, b * b * s / k);
  }

  /** The largest distance of the chain from the ellipse, to first order. */
  static double deviation(Path path, double a, double b) {
    double worst = 0;
    for (Segment s : path.segments()) {
      for (int i = 0; i <= SAMPLES; i++) {
        Vec2 p = s.pointAt((double) i / SAMPLES);
        double f = p.x() * p.x() / (a * a) + p.y() * p.y() / (b * b) - 1;
        double gradient = 2 * Math.hypot(p.x() / (a * a), p.y() / (b * b));
        worst = Math.max(worst, Math.abs(f) / gradient);
      }
    }
    return worst;
  }
}
