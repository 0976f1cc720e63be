package padwright.export;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import padwright.cover.LaidCover.Sheet;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;

/**
 * Sheets of covering on paper, and how many of them lie where. Along a straight line that is exact:
 * every edge that the line crosses is known. So hatching is drawn as lines cut where the number of
 * layers changes, and the edges of sheets where it differs from one side to the other. mm.
 */
final class LayerField {
  /** To either side of an edge, mm on paper: far under a line's width. */
  private static final double BESIDE = 0.004;

  /** A stretch shorter than this is no line that a printer draws, mm. */
  private static final double SHORTEST = 0.03;

  private final double[][] x;
  private final double[][] y;
  private final int[] layers;
  private final Bounds[] bounds;

  LayerField(List<Sheet> sheets) {
    int n = sheets.size();
    x = new double[n][];
    y = new double[n][];
    layers = new int[n];
    bounds = new Bounds[n];
    for (int i = 0; i < n; i++) {
      List<Vec2> p = sheets.get(i).polygon();
      x[i] = p.stream().mapToDouble(Vec2::x).toArray();
      y[i] = p.stream().mapToDouble(Vec2::y).toArray();
      layers[i] = sheets.get(i).layers();
      bounds[i] =
          new Bounds(
              Arrays.stream(x[i]).min().orElse(0),
              Arrays.stream(y[i]).min().orElse(0),
              Arrays.stream(x[i]).max().orElse(0),
              Arrays.stream(y[i]).max().orElse(0));
    }
  }

  /** Layers over a point. */
  int at(double px, double py) {
    int sum = 0;
    for (int i = 0; i < layers.length; i++) {
      Bounds b = bounds[i];
      if (px < b.minX() || px > b.maxX() || py < b.minY() || py > b.maxY()) {
        continue;
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
      sum += in ? layers[i] : 0;
    }
    return sum;
  }

  /** A stretch of a level line over which the number of layers is the same. */
  record Run(int row, double y, double from, double to, int layers) {}

  /** Runs of one layer and more along lines at an angle, in the frame turned back by it. */
  List<Run> runs(double angle, double pitch) {
    double c = Math.cos(-angle);
    double s = Math.sin(-angle);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      for (int k = 0; k < x[i].length; k++) {
        double v = s * x[i][k] + c * y[i][k];
        low = Math.min(low, v);
        high = Math.max(high, v);
      }
    }
    List<Run> runs = new ArrayList<>();
    if (low > high) {
      return runs;
    }
    int first = (int) Math.floor(low / pitch);
    Row[] rows = new Row[(int) Math.ceil(high / pitch) - first + 1];
    for (int i = 0; i < x.length; i++) {
      int n = x[i].length;
      for (int k = 0; k < n; k++) {
        int m = k + 1 == n ? 0 : k + 1;
        double u0 = c * x[i][k] - s * y[i][k];
        double v0 = s * x[i][k] + c * y[i][k];
        double u1 = c * x[i][m] - s * y[i][m];
        double v1 = s * x[i][m] + c * y[i][m];
        double below = Math.min(v0, v1);
        double above = Math.max(v0, v1);
        int from = (int) Math.ceil(below / pitch - 0.5);
        for (int r = from; (r + 0.5) * pitch < above; r++) {
          double v = (r + 0.5) * pitch;
          if (v0 > v != v1 > v) {
            int at = r - first;
            rows[at] = rows[at] == null ? new Row() : rows[at];
            rows[at].add(u0 + (u1 - u0) * (v - v0) / (v1 - v0), i);
          }
        }
      }
    }
    for (int r = 0; r < rows.length; r++) {
      if (rows[r] != null) {
        rows[r].runs(runs, r + first, (r + first + 0.5) * pitch, layers);
      }
    }
    return runs;
  }

  /** The crossings of one line, kept in order. */
  private static final class Row {
    private double[] at = new double[8];
    private int[] sheet = new int[8];
    private int count;

    void add(double u, int i) {
      if (count == at.length) {
        at = Arrays.copyOf(at, 2 * count);
        sheet = Arrays.copyOf(sheet, 2 * count);
      }
      int k = count++;
      while (k > 0 && at[k - 1] > u) {
        at[k] = at[k - 1];
        sheet[k] = sheet[k - 1];
        k--;
      }
      at[k] = u;
      sheet[k] = i;
    }

    void runs(List<Run> runs, int row, double y, int[] layers) {
      boolean[] in = new boolean[layers.length];
      int deep = 0;
      double from = at[0];
      for (int k = 0; k < count; k++) {
        int i = sheet[k];
        in[i] = !in[i];
        if (deep > 0 && at[k] - from > SHORTEST) {
          add(runs, new Run(row, y, from, at[k], deep));
        }
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

  /** The line drawn between two numbers of layers; null for none. */
  interface Styling {
    LineStyle between(int one, int other);
  }

  /** The edges of sheets, wherever the numbers of layers on their two sides ask for a line. */
  List<Stroke> edges(Styling styling) {
    List<Stroke> strokes = new ArrayList<>();
    Set<Long> drawn = new HashSet<>();
    for (int i = 0; i < x.length; i++) {
      List<Vec2> line = new ArrayList<>();
      LineStyle style = null;
      int n = x[i].length;
      for (int k = 0; k < n; k++) {
        int m = k + 1 == n ? 0 : k + 1;
        Vec2 a = new Vec2(x[i][k], y[i][k]);
        Vec2 d = new Vec2(x[i][m], y[i][m]).minus(a);
        double length = d.length();
        if (length < SHORTEST) {
          continue;
        }
        double[] cuts = cuts(a, a.plus(d));
        for (int c = 0; c + 1 < cuts.length; c++) {
          if ((cuts[c + 1] - cuts[c]) * length < SHORTEST) {
            continue;
          }
          Vec2 middle = a.along(d, (cuts[c] + cuts[c + 1]) / 2);
          LineStyle here = style(styling, drawn, middle, d.left().times(BESIDE / length));
          Vec2 from = a.along(d, cuts[c]);
          if (here != style
              || !line.isEmpty() && line.get(line.size() - 1).distance(from) > SHORTEST) {
            end(strokes, line, style);
            line.add(from);
          }
          line.add(a.along(d, cuts[c + 1]));
          style = here;
        }
      }
      end(strokes, line, style);
    }
    return strokes;
  }

  private LineStyle style(Styling styling, Set<Long> drawn, Vec2 p, Vec2 left) {
    LineStyle here =
        styling.between(
            at(p.x() + left.x(), p.y() + left.y()), at(p.x() - left.x(), p.y() - left.y()));
    // Where the edges of two sheets lie on one another the line is drawn once.
    long key = Math.round(p.x() * 50) * 1_000_003L + Math.round(p.y() * 50);
    return here == null || !drawn.add(key) ? null : here;
  }

  private static void end(List<Stroke> strokes, List<Vec2> line, LineStyle style) {
    if (style != null && line.size() > 1) {
      List<Vec2> kept = new ArrayList<>();
      for (int i = 0; i < line.size(); i++) {
        Vec2 p = line.get(i);
        boolean straight =
            i > 0
                && i + 1 < line.size()
                && Math.abs(
                        p.minus(kept.get(kept.size() - 1))
                            .cross(line.get(i + 1).minus(kept.get(kept.size() - 1))))
                    < 1e-4 * line.get(i + 1).distance(kept.get(kept.size() - 1))
                && p.minus(kept.get(kept.size() - 1)).dot(line.get(i + 1).minus(p)) > 0;
        if (!straight) {
          kept.add(hundredths(p));
        }
      }
      strokes.add(new Stroke(Path.polyline(kept), style));
    }
    line.clear();
  }

  /** As near as a printer comes, so that files stay small. */
  static Vec2 hundredths(Vec2 p) {
    return new Vec2(Math.round(p.x() * 100) / 100.0, Math.round(p.y() * 100) / 100.0);
  }

  /** Fractions of an edge at which it meets the edges of other sheets. */
  private double[] cuts(Vec2 a, Vec2 b) {
    Bounds box = Bounds.of(a).with(b).grown(SHORTEST);
    Vec2 d = b.minus(a);
    double square = d.dot(d);
    double[] cuts = {0, 1};
    for (int i = 0; i < x.length; i++) {
      if (!bounds[i].overlaps(box)) {
        continue;
      }
      int n = x[i].length;
      for (int k = 0; k < n; k++) {
        int m = k + 1 == n ? 0 : k + 1;
        double px = x[i][k] - a.x();
        double py = y[i][k] - a.y();
        double qx = x[i][m] - a.x();
        double qy = y[i][m] - a.y();
        double sp = d.x() * py - d.y() * px;
        double sq = d.x() * qy - d.y() * qx;
        double t = Double.NaN;
        if (Math.abs(sp) < SHORTEST * SHORTEST * Math.sqrt(square)) {
          t = (px * d.x() + py * d.y()) / square;
        } else if (sp > 0 != sq > 0) {
          double f = sp / (sp - sq);
          t = ((px + (qx - px) * f) * d.x() + (py + (qy - py) * f) * d.y()) / square;
        }
        if (t > 0 && t < 1) {
          cuts = Arrays.copyOf(cuts, cuts.length + 1);
          cuts[cuts.length - 1] = t;
        }
      }
    }
    Arrays.sort(cuts);
    return cuts;
  }

  /** The part of every sheet in a window. */
  static List<Sheet> within(List<Sheet> sheets, Bounds w) {
    List<Vec2> box =
        List.of(
            new Vec2(w.minX(), w.minY()),
            new Vec2(w.maxX(), w.minY()),
            new Vec2(w.maxX(), w.maxY()),
            new Vec2(w.minX(), w.maxY()));
    List<Sheet> list = new ArrayList<>();
    for (Sheet s : sheets) {
      List<Vec2> p = Polygons.inside(s.polygon(), box);
      if (p.size() >= 3) {
        list.add(new Sheet(p, s.layers()));
      }
    }
    return list;
  }
}
