package padwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A polygon's edges sorted into level bands, so that a place is tested against few of them. Worth
 * making where many places are asked for.
 */
public final class EdgeBands {
  private final List<Vec2> polygon;
  private final List<List<Integer>> bands = new ArrayList<>();
  private final Bounds box;
  private final double height;

  /** The polygon closes itself: its first point is not repeated at the end. */
  public EdgeBands(List<Vec2> polygon) {
    this.polygon = polygon;
    Bounds b = Bounds.of(polygon.get(0));
    for (Vec2 p : polygon) {
      b = b.with(p);
    }
    box = b;
    int n = Math.max(1, polygon.size() / 4);
    height = Math.max(1e-9, b.height() / n);
    for (int i = 0; i < n; i++) {
      bands.add(new ArrayList<>());
    }
    for (int i = 0; i < polygon.size(); i++) {
      double y0 = polygon.get(i).y();
      double y1 = next(i).y();
      for (int k = band(Math.min(y0, y1)); k <= band(Math.max(y0, y1)); k++) {
        bands.get(k).add(i);
      }
    }
  }

  private Vec2 next(int i) {
    return polygon.get(i + 1 == polygon.size() ? 0 : i + 1);
  }

  private int band(double y) {
    return (int) Math.max(0, Math.min(bands.size() - 1, (y - box.minY()) / height));
  }

  private boolean outside(Vec2 p, Vec2 q) {
    return Math.max(p.x(), q.x()) < box.minX()
        || Math.min(p.x(), q.x()) > box.maxX()
        || Math.max(p.y(), q.y()) < box.minY()
        || Math.min(p.y(), q.y()) > box.maxY();
  }

  /** Adds the fractions of the way from p to q at which it crosses an edge, each once. */
  void crossings(Vec2 p, Vec2 q, List<Double> cuts) {
    if (outside(p, q)) {
      return;
    }
    Vec2 d = q.minus(p);
    int first = band(Math.min(p.y(), q.y()));
    int last = band(Math.max(p.y(), q.y()));
    for (int k = first; k <= last; k++) {
      for (int j : bands.get(k)) {
        Vec2 r = polygon.get(j);
        Vec2 e = next(j).minus(r);
        // An edge in several bands is taken in the first that the way runs through.
        if (k != Math.max(first, band(Math.min(r.y(), r.y() + e.y())))) {
          continue;
        }
        double cross = d.cross(e);
        if (cross == 0) {
          continue;
        }
        double t = r.minus(p).cross(e) / cross;
        double u = r.minus(p).cross(d) / cross;
        if (t > 0 && t < 1 && u >= 0 && u <= 1) {
          cuts.add(t);
        }
      }
    }
  }

  /** As {@link Polygons#contains}. */
  public boolean contains(Vec2 p) {
    if (outside(p, p)) {
      return false;
    }
    boolean in = false;
    for (int j : bands.get(band(p.y()))) {
      Vec2 a = polygon.get(j);
      Vec2 b = next(j);
      if ((a.y() > p.y()) != (b.y() > p.y())
          && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
        in = !in;
      }
    }
    return in;
  }
}
