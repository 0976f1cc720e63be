package padwright.export;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import padwright.cover.LaidCover.Sheet;
import padwright.geometry.Bounds;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;

/**
 * Sheets of covering on paper inside the outline of what they lie on, and how many of them lie
 * where. Along a straight line that is exact: every edge that the line crosses is known. mm.
 */
final class LayerField {
  /** What {@link #at} says of a place that the covering does not lie on at all. */
  static final int BEYOND = -1;

  /** A stretch shorter than this is no line that a printer draws, mm. */
  static final double SHORTEST = 0.03;

  final double[][] x;
  final double[][] y;
  final Bounds[] bounds;
  private final int[] layers;

  /** The last loop is the outline: what lies outside it is not drawn. */
  private final int mask;

  LayerField(List<Sheet> sheets, List<Vec2> outline) {
    mask = sheets.size();
    x = new double[mask + 1][];
    y = new double[mask + 1][];
    layers = new int[mask + 1];
    bounds = new Bounds[mask + 1];
    for (int i = 0; i <= mask; i++) {
      List<Vec2> p = i == mask ? outline : sheets.get(i).polygon();
      int n = p.size();
      x[i] = new double[n];
      y[i] = new double[n];
      for (int k = 0; k < n; k++) {
        x[i][k] = p.get(k).x();
        y[i][k] = p.get(k).y();
      }
      layers[i] = i == mask ? 0 : sheets.get(i).layers();
      bounds[i] = Bounds.of(p);
    }
  }

  /** How many loops are sheets; the outline's comes after them. */
  int sheets() {
    return mask;
  }

  /** Layers over a point; {@link #BEYOND} outside the outline. */
  int at(double px, double py) {
    if (!in(mask, px, py)) {
      return BEYOND;
    }
    int sum = 0;
    for (int i = 0; i < mask; i++) {
      sum += in(i, px, py) ? layers[i] : 0;
    }
    return sum;
  }

  private boolean in(int i, double px, double py) {
    Bounds b = bounds[i];
    if (px < b.minX() || px > b.maxX() || py < b.minY() || py > b.maxY()) {
      return false;
    }
    boolean in = false;
    double[] xs = x[i];
    double[] ys = y[i];
    for (int k = 0, last = xs.length - 1; k < xs.length; last = k++) {
      if (ys[last] > py != ys[k] > py
          && px < (xs[k] - xs[last]) * (py - ys[last]) / (ys[k] - ys[last]) + xs[last]) {
        in = !in;
      }
    }
    return in;
  }

  /** A stretch of a level line over which the number of layers is the same. */
  record Run(int row, double y, double from, double to, int layers) {
    double length() {
      return to - from;
    }
  }

  /** Runs of one layer and more along lines at an angle, in the frame turned back by it. */
  List<Run> runs(double angle, double pitch) {
    double c = Math.cos(-angle);
    double s = Math.sin(-angle);
    double[][] u = new double[mask + 1][];
    double[][] v = new double[mask + 1][];
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (int i = 0; i <= mask; i++) {
      int n = x[i].length;
      u[i] = new double[n];
      v[i] = new double[n];
      for (int k = 0; k < n; k++) {
        u[i][k] = c * x[i][k] - s * y[i][k];
        v[i][k] = s * x[i][k] + c * y[i][k];
        low = Math.min(low, v[i][k]);
        high = Math.max(high, v[i][k]);
      }
    }
    int first = (int) Math.floor(low / pitch);
    Row[] rows = new Row[(int) Math.ceil(high / pitch) - first + 1];
    for (int i = 0; i <= mask; i++) {
      crossings(u[i], v[i], i, pitch, first, rows);
    }
    List<Run> runs = new ArrayList<>();
    for (int r = 0; r < rows.length; r++) {
      if (rows[r] != null) {
        rows[r].runs(runs, r + first, (r + first + 0.5) * pitch, layers);
      }
    }
    return runs;
  }

  private static void crossings(
      double[] u, double[] v, int loop, double pitch, int first, Row[] rows) {
    for (int k = 0, last = u.length - 1; k < u.length; last = k++) {
      double v0 = v[last];
      double v1 = v[k];
      double above = Math.max(v0, v1);
      int from = (int) Math.ceil(Math.min(v0, v1) / pitch - 0.5);
      for (int r = from; (r + 0.5) * pitch < above; r++) {
        double level = (r + 0.5) * pitch;
        if (v0 > level != v1 > level) {
          int at = r - first;
          if (rows[at] == null) {
            rows[at] = new Row();
          }
          rows[at].add(u[last] + (u[k] - u[last]) * (level - v0) / (v1 - v0), loop);
        }
      }
    }
  }

  /** The crossings of one line, kept in order. */
  private static final class Row {
    private double[] at = new double[8];
    private int[] loop = new int[8];
    private int count;

    void add(double u, int i) {
      if (count == at.length) {
        at = Arrays.copyOf(at, 2 * count);
        loop = Arrays.copyOf(loop, 2 * count);
      }
      int k = count++;
      while (k > 0 && at[k - 1] > u) {
        at[k] = at[k - 1];
        loop[k] = loop[k - 1];
        k--;
      }
      at[k] = u;
      loop[k] = i;
    }

    void runs(List<Run> runs, int row, double y, int[] layers) {
      int outline = layers.length - 1;
      boolean[] in = new boolean[layers.length];
      int deep = 0;
      double from = at[0];
      for (int k = 0; k < count; k++) {
        int i = loop[k];
        if (in[outline] && deep > 0 && at[k] - from > SHORTEST) {
          add(runs, new Run(row, y, from, at[k], deep));
        }
        in[i] = !in[i];
        // Sheets that end and begin at one place leave no gap between them.
        from = at[k];
        deep += in[i] ? layers[i] : -layers[i];
      }
    }

    private static void add(List<Run> runs, Run run) {
      Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
      if (last != null
          && last.row == run.row
          && last.layers == run.layers
          && run.from - last.to < SHORTEST) {
        runs.set(runs.size() - 1, new Run(run.row, run.y, last.from, run.to, run.layers));
      } else {
        runs.add(run);
      }
    }
  }

  /** The part of every sheet in a window. */
  static List<Sheet> within(List<Sheet> sheets, Bounds w) {
    List<Sheet> list = new ArrayList<>();
    for (Sheet s : sheets) {
      List<Vec2> p = clipped(s.polygon(), w);
      if (p.size() >= 3) {
        list.add(new Sheet(p, s.layers()));
      }
    }
    return list;
  }

  /** The part of a polygon in a window. */
  static List<Vec2> clipped(List<Vec2> polygon, Bounds w) {
    return Bounds.of(polygon).overlaps(w) ? Polygons.inside(polygon, corners(w)) : List.of();
  }

  /** The corners of a box, anticlockwise. */
  static List<Vec2> corners(Bounds w) {
    return List.of(
        new Vec2(w.minX(), w.minY()),
        new Vec2(w.maxX(), w.minY()),
        new Vec2(w.maxX(), w.maxY()),
        new Vec2(w.minX(), w.maxY()));
  }
}
