package padwright.desk.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import padwright.geometry.Vec2;

/**
 * The bands of one layer, one for each section that the part has, brought to chains of equally many
 * points that answer one another: from the ceiling down the inner face, over the lower edge and up
 * the outer face to the top. A layer that lies flat has the outer face alone. Points that answer
 * one another lie at the same height, or at the end of the band where it is shorter.
 */
final class Chains {
  /** Heights nearer than this are one, mm. */
  private static final double SAME = 1e-5;

  /** A face that stands out by more than this at one height has a step there, mm. */
  private static final double STEP = 1e-3;

  /** A bend this tight, mm along it, that turns this far is looked upon as an arris. */
  private static final double TIGHT = 5;

  private static final double SHARP = Math.toRadians(50);

  private final List<Band> bands;
  private final List<Vec2[]> points;
  private int outer;

  private Chains(List<Band> bands, List<Vec2[]> points) {
    this.bands = bands;
    this.points = points;
  }

  static Chains of(List<Band> bands) {
    Chains chains = new Chains(bands, new ArrayList<>());
    double ceiling = bands.stream().mapToDouble(Band::ceiling).max().orElseThrow();
    double low = bands.stream().mapToDouble(Band::low).min().orElseThrow();
    if (ceiling > low + SAME) {
      List<Vec2[]> inner = chains.face(low, ceiling, false);
      for (int k = inner.size() - 1; k >= 0; k--) {
        chains.points.add(inner.get(k));
      }
    }
    chains.outer = chains.points.size();
    double high = bands.stream().mapToDouble(Band::high).max().orElseThrow();
    chains.points.addAll(chains.face(low, high, true));
    return chains;
  }

  /**
   * The covering turned through a hole, out from the hole's edge: from the face of the board's side
   * of it, up; it lies against the wall of the hole, and on the back so far about it.
   */
  static Chains lining(double thickness, double flap, double low, double high) {
    double inside = -Math.max(thickness, Band.THINNEST);
    double[][] way = {
      {0, low}, {0, 0}, {flap, 0}, {flap, inside}, {inside, inside}, {inside, high}
    };
    List<Vec2[]> points = new ArrayList<>();
    for (double[] p : way) {
      points.add(new Vec2[] {new Vec2(p[0], p[1])});
    }
    return new Chains(List.of(), points);
  }

  /** How many points a chain has. */
  int size() {
    return points.size();
  }

  /** Point {@code k} of the chain of a band. */
  Vec2 at(int band, int k) {
    return points.get(k)[band];
  }

  /** How many bands answer one another. */
  int bands() {
    return points.get(0).length;
  }

  /** Adds a chain part of the way from one band's to another's, and gives its number. */
  int between(int a, int b, double share) {
    for (int k = 0; k < points.size(); k++) {
      Vec2[] row = points.get(k);
      Vec2[] more = Arrays.copyOf(row, row.length + 1);
      more[row.length] = row[a].along(row[b].minus(row[a]), share);
      points.set(k, more);
    }
    return bands() - 1;
  }

  /** Whether two bands have every point at the same height as its like. */
  boolean level(int a, int b) {
    return a == b || points.stream().allMatch(p -> p[a].y() == p[b].y());
  }

  /**
   * The point nearest along the chain to point {@code k}, on the same face of the layer and further
   * up, at which two bands are at the same height.
   */
  int lastLevel(int a, int b, int k) {
    int way = k < outer ? -1 : 1;
    int at = k;
    while (at + way >= 0 && at + way < size() && at(a, at).y() != at(b, at).y()) {
      at += way;
    }
    return at;
  }

  private List<Vec2[]> face(double low, double high, boolean outer) {
    TreeSet<Double> heights = new TreeSet<>();
    for (Band b : bands) {
      b.heights().stream().filter(h -> h >= low && h <= high).forEach(heights::add);
    }
    List<Vec2[]> all = new ArrayList<>();
    double last = Double.NEGATIVE_INFINITY;
    for (double h : heights) {
      if (h < last + SAME) {
        continue;
      }
      last = h;
      Vec2[] below = h > low + SAME ? row(h, false, outer) : null;
      Vec2[] above = h < high - SAME ? row(h, true, outer) : null;
      if (below != null) {
        all.add(below);
      }
      if (above != null && (below == null || apart(below, above))) {
        all.add(above);
      }
    }
    return thinned(all);
  }

  private Vec2[] row(double h, boolean above, boolean outer) {
    Vec2[] row = new Vec2[bands.size()];
    for (int i = 0; i < row.length; i++) {
      Band b = bands.get(i);
      double end = outer ? b.high() : b.ceiling();
      double at = Math.max(b.low(), Math.min(end, h));
      boolean over = at <= b.low() || (at < end && above);
      boolean flat = !outer && b.ceiling() <= b.low();
      row[i] = new Vec2(outer || flat ? b.most(at, over) : b.least(at, over), at);
    }
    return row;
  }

  private static boolean apart(Vec2[] a, Vec2[] b) {
    for (int i = 0; i < a.length; i++) {
      if (a[i].distance(b[i]) > STEP) {
        return true;
      }
    }
    return false;
  }

  /** Leaves out rows that lie on the straight between others (Douglas and Peucker, 1973). */
  private static List<Vec2[]> thinned(List<Vec2[]> rows) {
    boolean[] kept = new boolean[rows.size()];
    kept[0] = true;
    kept[rows.size() - 1] = true;
    thin(rows, kept, 0, rows.size() - 1);
    List<Vec2[]> left = new ArrayList<>();
    for (int k = 0; k < kept.length; k++) {
      if (kept[k]) {
        left.add(rows.get(k));
      }
    }
    return left;
  }

  private static void thin(List<Vec2[]> rows, boolean[] kept, int from, int to) {
    int worst = -1;
    double most = Band.CHORD;
    for (int k = from + 1; k < to; k++) {
      for (int b = 0; b < rows.get(k).length; b++) {
        Vec2 p = rows.get(k)[b];
        Vec2 near = padwright.geometry.Segment.line(rows.get(from)[b], rows.get(to)[b]).nearest(p);
        if (near.distance(p) > most) {
          most = near.distance(p);
          worst = k;
        }
      }
    }
    if (worst >= 0) {
      kept[worst] = true;
      thin(rows, kept, from, worst);
      thin(rows, kept, worst, to);
    }
  }

  /**
   * The points at which a band bends so tightly that a line is drawn along it, though it is cut
   * into chords too small to be arrises by themselves.
   */
  boolean[] arrises(int band) {
    boolean[] marked = new boolean[size()];
    int k = 1;
    while (k < size() - 1) {
      int end = k;
      double turn = Math.abs(turn(band, k));
      double length = 0;
      while (end + 1 < size() - 1
          && turn > SAME
          && length + at(band, end).distance(at(band, end + 1)) < TIGHT
          && Math.abs(turn(band, end + 1)) > SAME) {
        length += at(band, end).distance(at(band, end + 1));
        end++;
        turn += Math.abs(turn(band, end));
      }
      if (end > k && turn > SHARP) {
        marked[(k + end) / 2] = true;
      }
      k = end + 1;
    }
    return marked;
  }

  private double turn(int b, int k) {
    Vec2 in = at(b, k).minus(at(b, k - 1));
    Vec2 out = at(b, k + 1).minus(at(b, k));
    return in.length() < SAME || out.length() < SAME ? 0 : Math.atan2(in.cross(out), in.dot(out));
  }
}
