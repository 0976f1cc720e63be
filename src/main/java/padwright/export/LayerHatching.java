package padwright.export;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import padwright.cover.LaidCover.Sheet;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Lines;
import padwright.export.Drawing.Stroke;
import padwright.export.LayerField.Run;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * A field of layers drawn: hatched differently for one, two, three and more layers, with the number
 * written into every region that has room for it. mm on paper.
 */
final class LayerHatching {
  /** Between the lines of two layers; those of one stand twice as far apart. */
  static final double PITCH = 1.8;

  private static final double DENSE = 1.0;

  /** Rows in which room for a number is looked for. */
  private static final double ROW = 0.5;

  /** More than so many times its width makes a number's place no better. */
  private static final double ROOM = 4;

  /** Hatching shorter than this is a speck, mm. */
  private static final double LEAST = 0.25;

  private static final double CLEAR = 0.35;

  /** Longer than the speck that rounding leaves between two sheets, mm. */
  private static final double SEEN = 0.4;

  /** How the regions of a field are told apart. */
  interface Look {
    /** What is written into a region of a number. */
    String words(int number);

    /** The hatching of regions whose numbers lie between two. */
    List<Pattern> patterns(int least, int most);
  }

  /** Parallel lines over the regions wanted; angle in radians, pitch in mm. */
  record Pattern(double angle, double pitch, Predicate<Run> wanted) {}

  /** Numbers that are layers. */
  private static final class Layers implements Look {
    @Override
    public String words(int number) {
      return Integer.toString(number);
    }

    @Override
    public List<Pattern> patterns(int least, int most) {
      List<Pattern> list = new ArrayList<>();
      if (least < 4) {
        list.add(new Pattern(Math.PI / 4, PITCH, r -> r.layers() == 3 || even(r, 1)));
      }
      if (most > 1) {
        list.add(new Pattern(-Math.PI / 4, PITCH, r -> r.layers() == 2 || r.layers() == 3));
      }
      if (most > 3) {
        list.add(new Pattern(0, DENSE, r -> r.layers() > 3));
        list.add(new Pattern(Math.PI / 2, DENSE, r -> r.layers() > 3));
      }
      return list;
    }
  }

  private final LayerField field;
  private final List<Box> boxes;
  private double[] ends = new double[256];
  private int count;

  private LayerHatching(LayerField field, List<Box> boxes) {
    this.field = field;
    this.boxes = boxes;
  }

  /** The items of a field, and the most layers that lie anywhere on it. */
  record Drawn(List<Item> items, int most) {}

  /**
   * @param outline of what the sheets lie on; nothing is drawn beyond it
   * @param ofAll line where there is no covering beyond
   */
  static Drawn of(List<Sheet> sheets, List<Vec2> outline, LineStyle ofAll) {
    return of(sheets, outline, ofAll, new Layers());
  }

  /** The same with another look. */
  static Drawn of(List<Sheet> sheets, List<Vec2> outline, LineStyle ofAll, Look look) {
    LayerField field = new LayerField(sheets, outline);
    List<Run> rows = field.runs(0, ROW);
    List<Item> numbers = new ArrayList<>();
    List<Box> boxes = new ArrayList<>();
    label(rows, look, numbers, boxes);
    List<Item> items = hatched(field, rows, look, boxes, false);
    items.addAll(new LayerEdges(field, LineStyle.MARK, ofAll).drawn());
    items.addAll(numbers);
    int most = 0;
    for (Run r : rows) {
      most = r.length() > SEEN ? Math.max(most, r.layers()) : most;
    }
    return new Drawn(items, most);
  }

  private static List<Item> hatched(
      LayerField field, List<Run> rows, Look look, List<Box> boxes, boolean sample) {
    int most = 0;
    int least = Integer.MAX_VALUE;
    for (Run r : rows) {
      most = Math.max(most, r.layers());
      least = Math.min(least, r.layers());
    }
    LayerHatching hatching = new LayerHatching(field, boxes);
    for (Pattern p : look.patterns(least, most)) {
      hatching.lines(p.angle, p.pitch, p.wanted);
    }
    List<Item> items = new ArrayList<>();
    if (hatching.count > 0) {
      double[] ends = Arrays.copyOf(hatching.ends, hatching.count);
      items.add(new Lines(ends, LineStyle.HATCH, sample));
    }
    return items;
  }

  private static boolean even(Run r, int layers) {
    return r.layers() == layers && Math.floorMod(r.row(), 2) == 0;
  }

  private void lines(double angle, double pitch, Predicate<Run> wanted) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    for (Run r : field.runs(angle, pitch)) {
      if (wanted.test(r)) {
        around(
            new Vec2(c * r.from() - s * r.y(), s * r.from() + c * r.y()),
            new Vec2(c * r.to() - s * r.y(), s * r.to() + c * r.y()),
            0);
      }
    }
  }

  /** A line, left out where a number stands. */
  private void around(Vec2 p, Vec2 q, int first) {
    for (int i = first; i < boxes.size(); i++) {
      double[] span = boxes.get(i).span(p, q);
      if (span != null) {
        Vec2 d = q.minus(p);
        around(p, p.along(d, span[0]), i + 1);
        around(p.along(d, span[1]), q, i + 1);
        return;
      }
    }
    if (p.distance(q) > LEAST) {
      if (count == ends.length) {
        ends = Arrays.copyOf(ends, 2 * count);
      }
      for (Vec2 end : new Vec2[] {LayerEdges.hundredths(p), LayerEdges.hundredths(q)}) {
        ends[count++] = end.x();
        ends[count++] = end.y();
      }
    }
  }

  /** Writes one number into each region where it finds room, near the region's middle. */
  private static void label(List<Run> rows, Look look, List<Item> numbers, List<Box> boxes) {
    int n = rows.size();
    int[] region = new int[n];
    int before = 0;
    int start = 0;
    for (int i = 0; i < n; i++) {
      region[i] = i;
      Run r = rows.get(i);
      if (i > 0 && rows.get(i - 1).row() != r.row()) {
        before = rows.get(i - 1).row() == r.row() - 1 ? start : i;
        start = i;
      }
      for (int k = before; k < start; k++) {
        Run o = rows.get(k);
        if (o.layers() == r.layers() && o.from() < r.to() && r.from() < o.to()) {
          region[root(region, i)] = root(region, k);
        }
      }
    }
    double[] best = new double[n];
    double[] weight = new double[n];
    double[] middle = new double[n];
    for (int i = 0; i < n; i++) {
      Run r = rows.get(i);
      weight[root(region, i)] += r.to() - r.from();
      middle[root(region, i)] += r.y() * (r.to() - r.from());
    }
    Vec2[] spot = new Vec2[n];
    double tall = Lettering.NOTE * (Lettering.ASCENT - 0.02);
    int half = (int) Math.ceil((tall / 2 + CLEAR) / ROW);
    for (int i = 0; i < n; i++) {
      Run r = rows.get(i);
      if (look.words(r.layers()).isEmpty()) {
        continue;
      }
      double wide = Lettering.width(look.words(r.layers()), Lettering.NOTE) + 2 * CLEAR;
      int root = root(region, i);
      double off = Math.abs(r.y() - middle[root] / weight[root]);
      // Well in the middle counts for as much as some room to the left and right.
      if (r.to() - r.from() < wide || spot[root] != null && score(r, wide, off) <= best[root]) {
        continue;
      }
      double[] span = free(rows, i, half);
      if (span != null && span[1] - span[0] > wide) {
        double score = Math.min(span[1] - span[0], ROOM * wide) - off;
        if (spot[root] == null || score > best[root]) {
          best[root] = score;
          spot[root] = new Vec2((span[0] + span[1]) / 2, r.y());
        }
      }
    }
    for (int i = 0; i < n; i++) {
      if (spot[i] != null) {
        String words = look.words(rows.get(i).layers());
        numbers.add(centred(spot[i], words));
        double wide = Lettering.width(words, Lettering.NOTE);
        boxes.add(new Box(spot[i], wide + 2 * CLEAR, tall + 2 * CLEAR, 0));
      }
    }
  }

  private static double score(Run r, double wide, double off) {
    return Math.min(r.to() - r.from(), ROOM * wide) - off;
  }

  /** The part of a run that the same number of layers goes on over, so many rows up and down. */
  private static double[] free(List<Run> rows, int i, int half) {
    Run r = rows.get(i);
    double from = r.from();
    double to = r.to();
    for (int way = -1; way <= 1; way += 2) {
      int k = i;
      for (int step = 1; step <= half; step++) {
        int row = r.row() + way * step;
        double bestFrom = 0;
        double bestTo = -1;
        while (k >= 0 && k < rows.size() && way * (rows.get(k).row() - row) <= 0) {
          Run o = rows.get(k);
          if (o.row() == row && o.layers() == r.layers()) {
            double a = Math.max(from, o.from());
            double b = Math.min(to, o.to());
            if (b - a > bestTo - bestFrom) {
              bestFrom = a;
              bestTo = b;
            }
          }
          k += way;
        }
        if (bestTo <= bestFrom) {
          return null;
        }
        from = bestFrom;
        to = bestTo;
      }
    }
    return new double[] {from, to};
  }

  private static int root(int[] region, int i) {
    int r = i;
    while (region[r] != r) {
      region[r] = region[region[r]];
      r = region[r];
    }
    return r;
  }

  private static Item centred(Vec2 at, String words) {
    return padwright.export.Sheet.centred(at, Lettering.NOTE, 0, words);
  }

  /** A small field of a number of layers without its number, for a legend. */
  static List<Item> sample(Bounds b, int layers) {
    return sample(b, layers, new Layers());
  }

  static List<Item> sample(Bounds b, int number, Look look) {
    List<Vec2> box = LayerField.corners(b);
    LayerField field = new LayerField(List.of(new Sheet(box, number)), box);
    List<Item> items = hatched(field, field.runs(0, ROW), look, List.of(), true);
    items.add(new Stroke(Path.polygon(box), LineStyle.MARK, true));
    return items;
  }
}
