package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.LaidCover.Sheet;
import padwright.geometry.Vec2;

/**
 * A sheet that goes on from one band of the wall to the next, joined into one: a line between two
 * bands is no edge of the covering. mm.
 */
final class BandChain {
  /** Points nearer than this are one, mm. */
  private static final double ONE = 1e-6;

  private final int layers;
  private List<Vec2> polygon;
  private double end;

  private BandChain(Sheet sheet, double end) {
    polygon = sheet.polygon();
    layers = sheet.layers();
    this.end = end;
  }

  Sheet sheet() {
    return new Sheet(polygon, layers);
  }

  /** Joins a sheet of a band on to the chain that it continues, or begins another. */
  static void add(List<BandChain> chains, Sheet sheet, double from, double to) {
    for (BandChain c : chains) {
      if (c.end == from && c.layers == sheet.layers() && c.join(sheet.polygon(), from)) {
        c.end = to;
        return;
      }
    }
    chains.add(new BandChain(sheet, to));
  }

  private boolean join(List<Vec2> next, double level) {
    int a = levelEdge(polygon, level);
    int b = levelEdge(next, level);
    if (a < 0
        || b < 0
        || polygon.get(a).distance(after(next, b)) > ONE
        || after(polygon, a).distance(next.get(b)) > ONE) {
      return false;
    }
    List<Vec2> joined = new ArrayList<>(polygon.size() + next.size());
    for (int k = 1; k <= polygon.size(); k++) {
      joined.add(polygon.get((a + k) % polygon.size()));
    }
    for (int k = 2; k < next.size(); k++) {
      joined.add(next.get((b + k) % next.size()));
    }
    polygon = joined;
    return true;
  }

  /** The one edge at a level; -1 where there are none or several. */
  private static int levelEdge(List<Vec2> p, double level) {
    int found = -1;
    for (int i = 0; i < p.size(); i++) {
      Vec2 q = after(p, i);
      if (Math.abs(p.get(i).y() - level) < ONE
          && Math.abs(q.y() - level) < ONE
          && p.get(i).distance(q) > ONE) {
        if (found >= 0) {
          return -1;
        }
        found = i;
      }
    }
    return found;
  }

  private static Vec2 after(List<Vec2> p, int i) {
    return p.get(i + 1 == p.size() ? 0 : i + 1);
  }
}
