package padwright.export;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * The lines between regions of a field of layers: the edges of its sheets, cut wherever they meet
 * another, and kept where the numbers of layers on their two sides differ. mm.
 */
final class LayerEdges {
  /** To either side of an edge, mm on paper: far under a line's width. */
  private static final double BESIDE = 0.004;

  /** A point this near to the line between its neighbours, mm, is left out. */
  private static final double STRAIGHT = 0.02;

  private final LayerField field;
  private final LineStyle inside;
  private final LineStyle ofAll;
  private final List<Item> strokes = new ArrayList<>();
  private final Set<Long> drawn = new HashSet<>();

  /**
   * @param inside line between two regions of covering
   * @param ofAll line where there is no covering beyond
   */
  LayerEdges(LayerField field, LineStyle inside, LineStyle ofAll) {
    this.field = field;
    this.inside = inside;
    this.ofAll = ofAll;
  }

  List<Item> drawn() {
    for (int i = 0; i < field.sheets(); i++) {
      sheet(field.x[i], field.y[i]);
    }
    return strokes;
  }

  private void sheet(double[] x, double[] y) {
    List<Vec2> line = new ArrayList<>();
    LineStyle style = null;
    for (int k = 0; k < x.length; k++) {
      int m = k + 1 == x.length ? 0 : k + 1;
      Vec2 a = new Vec2(x[k], y[k]);
      Vec2 d = new Vec2(x[m], y[m]).minus(a);
      double length = d.length();
      if (length < LayerField.SHORTEST) {
        continue;
      }
      Vec2 beside = d.left().times(BESIDE / length);
      double[] cuts = cuts(a, a.plus(d));
      for (int c = 0; c + 1 < cuts.length; c++) {
        if ((cuts[c + 1] - cuts[c]) * length < LayerField.SHORTEST) {
          continue;
        }
        LineStyle here = style(a.along(d, (cuts[c] + cuts[c + 1]) / 2), beside);
        Vec2 from = a.along(d, cuts[c]);
        boolean apart =
            !line.isEmpty() && line.get(line.size() - 1).distance(from) > LayerField.SHORTEST;
        if (here != style || apart) {
          end(line, style);
        }
        if (line.isEmpty()) {
          line.add(from);
        }
        line.add(a.along(d, cuts[c + 1]));
        style = here;
      }
    }
    end(line, style);
  }

  private LineStyle style(Vec2 p, Vec2 left) {
    int one = field.at(p.x() + left.x(), p.y() + left.y());
    int other = field.at(p.x() - left.x(), p.y() - left.y());
    if (one == other || one == LayerField.BEYOND || other == LayerField.BEYOND) {
      return null;
    }
    // Where the edges of two sheets lie on one another the line is drawn once.
    long key = Math.round(p.x() * 50) * 1_000_003L + Math.round(p.y() * 50);
    return drawn.add(key) ? one == 0 || other == 0 ? ofAll : inside : null;
  }

  private void end(List<Vec2> line, LineStyle style) {
    if (style != null && line.size() > 1) {
      List<Vec2> kept = new ArrayList<>();
      for (int i = 0; i < line.size(); i++) {
        if (i == 0 || i + 1 == line.size() || !straight(kept, line.get(i), line.get(i + 1))) {
          kept.add(hundredths(line.get(i)));
        }
      }
      strokes.add(new Stroke(Path.polyline(kept), style));
    }
    line.clear();
  }

  private static boolean straight(List<Vec2> kept, Vec2 p, Vec2 next) {
    Vec2 last = kept.get(kept.size() - 1);
    Vec2 d = next.minus(last);
    return Math.abs(p.minus(last).cross(d)) < STRAIGHT * d.length()
        && p.minus(last).dot(next.minus(p)) > 0;
  }

  /** As near as a printer comes, so that files stay small. */
  static Vec2 hundredths(Vec2 p) {
    return new Vec2(Math.round(p.x() * 100) / 100.0, Math.round(p.y() * 100) / 100.0);
  }

  /** Fractions of an edge at which it meets the edges of other sheets, or the outline. */
  private double[] cuts(Vec2 a, Vec2 b) {
    Bounds box = Bounds.of(a).with(b).grown(LayerField.SHORTEST);
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double square = dx * dx + dy * dy;
    double near = LayerField.SHORTEST * LayerField.SHORTEST * Math.sqrt(square);
    double[] cuts = new double[8];
    int count = 2;
    cuts[1] = 1;
    for (int i = 0; i <= field.sheets(); i++) {
      if (!field.bounds[i].overlaps(box)) {
        continue;
      }
      double[] xs = field.x[i];
      double[] ys = field.y[i];
      for (int k = 0, last = xs.length - 1; k < xs.length; last = k++) {
        double px = xs[last] - a.x();
        double py = ys[last] - a.y();
        double sp = dx * py - dy * px;
        double sq = dx * (ys[k] - a.y()) - dy * (xs[k] - a.x());
        double t = Double.NaN;
        if (Math.abs(sp) < near) {
          t = (px * dx + py * dy) / square;
        } else if (sp > 0 != sq > 0) {
          double f = sp / (sp - sq);
          t = ((px + (xs[k] - xs[last]) * f) * dx + (py + (ys[k] - ys[last]) * f) * dy) / square;
        }
        if (t > 0 && t < 1) {
          cuts = count == cuts.length ? Arrays.copyOf(cuts, 2 * count) : cuts;
          cuts[count++] = t;
        }
      }
    }
    double[] sorted = Arrays.copyOf(cuts, count);
    Arrays.sort(sorted);
    return sorted;
  }
}
