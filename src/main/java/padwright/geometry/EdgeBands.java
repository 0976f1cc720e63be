package padwright.geometry;

import java.util.Arrays;
import java.util.List;

/**
 * A polygon's edges sorted into level bands, so that a place is tested against few of them. Worth
 * making where many places are asked for.
 */
public final class EdgeBands {
  private final List<Vec2> polygon;
  private final Bounds box;
  private final double height;
  private final int count;

  /** The edges of all bands, band after band. */
  private final int[] edges;

  /** Where in {@code edges} each band begins, and where the last one ends. */
  private final int[] begins;

  /** The polygon closes itself: its first point is not repeated at the end. */
  public EdgeBands(List<Vec2> polygon) {
    this.polygon = polygon;
    box = Bounds.of(polygon);
    count = Math.max(1, polygon.size() / 4);
    height = Math.max(1e-9, box.height() / count);
    int[] low = new int[polygon.size()];
    int[] high = new int[polygon.size()];
    begins = new int[count + 1];
    for (int i = 0; i < low.length; i++) {
      low[i] = band(Math.min(polygon.get(i).y(), next(i).y()));
      high[i] = band(Math.max(polygon.get(i).y(), next(i).y()));
      for (int k = low[i]; k <= high[i]; k++) {
        begins[k + 1]++;
      }
    }
    for (int k = 0; k < count; k++) {
      begins[k + 1] += begins[k];
    }
    edges = new int[begins[count]];
    int[] filled = Arrays.copyOf(begins, count);
    for (int i = 0; i < low.length; i++) {
      for (int k = low[i]; k <= high[i]; k++) {
        edges[filled[k]++] = i;
      }
    }
  }

  private Vec2 next(int i) {
    return polygon.get(i + 1 == polygon.size() ? 0 : i + 1);
  }

  private int band(double y) {
    return (int) Math.max(0, Math.min(count - 1, (y - box.minY()) / height));
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
      for (int at = begins[k]; at < begins[k + 1]; at++) {
        int j = edges[at];
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
    int band = band(p.y());
    for (int at = begins[band]; at < begins[band + 1]; at++) {
      int j = edges[at];
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
