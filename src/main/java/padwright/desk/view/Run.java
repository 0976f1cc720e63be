package padwright.desk.view;

import java.util.List;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/** A chain of straight lines to paint, mm. */
public final class Run {
  private final double[] xy;
  private final boolean closed;
  private final Bounds bounds;

  private Run(double[] xy, boolean closed) {
    this.xy = xy;
    this.closed = closed;
    double minX = xy[0];
    double maxX = xy[0];
    double minY = xy[1];
    double maxY = xy[1];
    for (int i = 2; i < xy.length; i += 2) {
      minX = Math.min(minX, xy[i]);
      maxX = Math.max(maxX, xy[i]);
      minY = Math.min(minY, xy[i + 1]);
      maxY = Math.max(maxY, xy[i + 1]);
    }
    this.bounds = new Bounds(minX, minY, maxX, maxY);
  }

  /** A path by chords that stay within {@code chordError}, mm. */
  static Run of(Path path, double chordError) {
    List<Vec2> points = path.flattened(chordError);
    double[] xy = new double[2 * points.size()];
    for (int i = 0; i < points.size(); i++) {
      xy[2 * i] = points.get(i).x();
      xy[2 * i + 1] = points.get(i).y();
    }
    return new Run(xy, path.closed());
  }

  static Run of(Vec2 from, Vec2 to) {
    return new Run(new double[] {from.x(), from.y(), to.x(), to.y()}, false);
  }

  public int count() {
    return xy.length / 2;
  }

  public double x(int point) {
    return xy[2 * point];
  }

  public double y(int point) {
    return xy[2 * point + 1];
  }

  /** Whether the last point is joined to the first. */
  public boolean closed() {
    return closed;
  }

  public Bounds bounds() {
    return bounds;
  }
}
