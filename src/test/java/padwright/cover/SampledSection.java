package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.design.EdgeShape;
import padwright.design.PadSpec;

/**
 * The way of a taut covering over the edge of a pad, found from points of the solid alone, for the
 * second wrap. In each direction from straight up to straight down the furthest point of the built
 * up layers carries the covering; its neutral line lies half a thickness outside. Section
 * coordinates, x out from the base outline, z up from the back of the board, mm.
 */
final class SampledSection {
  /** Directions looked in over the half turn: a bend of 50 mm is followed within 0.001 mm. */
  private static final int DIRECTIONS = 6000;

  /** Points on every shaped edge and every arris. */
  private static final int POINTS = 300;

  private final List<double[]> solid = new ArrayList<>();
  private final List<double[]> arris = new ArrayList<>();
  private final double[] level;
  private final double[] x;

  /** Last place on the flat top at or inside the outline. */
  final double startX;

  /** Path length where the covering lies flat on the back. */
  final double backStart;

  /** Path length where the bend round the back arris begins. */
  final double wallEnd;

  SampledSection(PadSpec spec) {
    layers(spec);
    double side = spec.waddingOverSides() ? spec.waddingThickness() : 0;
    for (int k = 0; k <= POINTS; k++) {
      double a = Math.PI / 2 * k / POINTS;
      double r = spec.backArris();
      arris.add(new double[] {-r + r * Math.cos(a), r - r * Math.sin(a), 0});
    }
    if (side > 0) {
      // The wadding ends level with the back of the board.
      arris.add(new double[] {side, 0, 0});
    }
    List<double[]> way = new ArrayList<>();
    double bend = Double.NaN;
    double run = 0;
    for (int k = 0; k <= DIRECTIONS; k++) {
      double turn = Math.min(Math.PI - 1e-7, Math.max(1e-7, Math.PI * k / DIRECTIONS));
      double[] carrier = furthest(turn);
      double out = carrier[2] + spec.coverThickness() / 2;
      double[] p = {carrier[0] + out * Math.sin(turn), carrier[1] + out * Math.cos(turn)};
      if (way.isEmpty() && p[0] > 0) {
        way.add(new double[] {0, p[1]});
      }
      if (!way.isEmpty()) {
        double[] last = way.get(way.size() - 1);
        run += Math.hypot(p[0] - last[0], p[1] - last[1]);
      }
      way.add(p);
      if (Double.isNaN(bend) && arris.contains(carrier)) {
        bend = run;
      }
    }
    startX = way.get(0)[0];
    level = new double[way.size()];
    x = new double[way.size()];
    double s = startX;
    for (int i = 0; i < x.length; i++) {
      double[] p = way.get(i);
      double[] last = way.get(Math.max(0, i - 1));
      s += Math.hypot(p[0] - last[0], p[1] - last[1]);
      level[i] = s;
      x[i] = p[0];
    }
    backStart = s;
    wallEnd = startX + bend;
  }

  /** How far out from the outline the covering lies at a path length; on the back it runs in. */
  double out(double s) {
    if (s <= startX) {
      return s;
    }
    if (s >= backStart) {
      return x[x.length - 1] - (s - backStart);
    }
    int low = 0;
    int high = level.length - 1;
    while (high - low > 1) {
      int mid = (low + high) / 2;
      if (level[mid] <= s) {
        low = mid;
      } else {
        high = mid;
      }
    }
    double span = level[high] - level[low];
    return span < 1e-12 ? x[low] : x[low] + (x[high] - x[low]) * (s - level[low]) / span;
  }

  /** Where a fold lies that follows the arris down the wall and goes straight on over the back. */
  double fold(double s) {
    return out(Math.min(s, wallEnd));
  }

  /** How far in from the outline the covering lies on the back at a path length. */
  double depth(double s) {
    return s - backStart - out(backStart);
  }

  private double[] furthest(double turn) {
    double most = Double.NEGATIVE_INFINITY;
    double[] best = null;
    for (List<double[]> points : List.of(solid, arris)) {
      for (double[] p : points) {
        double reach = p[0] * Math.sin(turn) + p[1] * Math.cos(turn) + p[2];
        if (reach > most + 1e-12) {
          most = reach;
          best = p;
        }
      }
    }
    return best;
  }

  /** Board and foam, each point with the wadding that is rolled round it as its radius. */
  private void layers(PadSpec spec) {
    double rolled = spec.waddingOverSides() ? spec.waddingThickness() : 0;
    double z = spec.boardThickness();
    solid.add(new double[] {0, z, 0});
    double foam = spec.foam().stream().mapToDouble(PadSpec.FoamSpec::thickness).sum();
    double top = z + foam;
    double edge = spec.foam().get(spec.foam().size() - 1).overhang();
    for (PadSpec.FoamSpec layer : spec.foam()) {
      for (int k = 0; k <= POINTS; k++) {
        double height = z + layer.thickness() * k / POINTS;
        double cut = edge - setIn(spec.edge(), top - height, foam);
        boolean shaped = cut < edge || top - height < 1e-9;
        double out = Math.min(layer.overhang(), shaped ? cut : Double.POSITIVE_INFINITY);
        solid.add(new double[] {out, height, rolled});
        if (shaped && rolled == 0) {
          solid.add(new double[] {out, height + spec.waddingThickness(), 0});
        }
      }
      z += layer.thickness();
    }
  }

  /** How far an edge shape cuts in at a depth below the top of the foam. */
  private static double setIn(EdgeShape shape, double below, double foam) {
    if (shape instanceof EdgeShape.Round round) {
      return below >= round.radius() ? 0 : quarter(round.radius(), below);
    }
    if (shape instanceof EdgeShape.Bevel bevel) {
      return Math.max(0, bevel.size() - below);
    }
    return shape instanceof EdgeShape.FullRound ? quarter(foam / 2, below) : 0;
  }

  private static double quarter(double r, double below) {
    return r - Math.sqrt(Math.max(0, below * (2 * r - below)));
  }
}
