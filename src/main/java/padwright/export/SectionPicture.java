package padwright.export;

import java.util.ArrayList;
import java.util.List;
import padwright.export.Drawing.Fill;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/** The parts a section's picture is made of: hatched layers, the covering's band, a torn edge. */
final class SectionPicture {
  private static final double[] SCALES = {10, 5, 4, 3, 2, 1, 0.5, 0.2, 0.1};
  private static final double WIDEST = 130;
  private static final double TALLEST = 100;

  private SectionPicture() {}

  /** The largest round scale at which it fits a sheet with its labels. */
  static double scaleFor(Bounds b) {
    for (double k : SCALES) {
      if (b.width() * k <= WIDEST && b.height() * k <= TALLEST) {
        return k;
      }
    }
    return SCALES[SCALES.length - 1];
  }

  /** A layer in grey, hatched and outlined. */
  static void fill(List<Item> items, Path shape, double grey, double angle, double pitch) {
    items.add(new Fill(shape, grey));
    items.addAll(Hatching.of(shape, angle, pitch));
    items.add(new Stroke(shape, LineStyle.SOLID));
  }

  /** The line runs clockwise over the pad, so that its left is outside. */
  static Path band(List<Segment> line, double half) {
    List<Segment> band = new ArrayList<>();
    List<Segment> inner = new ArrayList<>();
    for (Segment s : line) {
      band.add(aside(s, half));
      inner.add(0, aside(s, -half).reversed());
    }
    Vec2 tail = band.get(band.size() - 1).end();
    band.add(Segment.line(tail, inner.get(0).start()));
    band.addAll(inner);
    Vec2 last = band.get(band.size() - 1).end();
    Vec2 first = band.get(0).start();
    band.add(Segment.line(last, first));
    band.removeIf(s -> s.chord() < 1e-9);
    return new Path(band, true);
  }

  private static Segment aside(Segment s, double by) {
    return new Segment(
        s.start().along(s.directionAt(0).left(), by),
        s.end().along(s.directionAt(1).left(), by),
        s.bulge());
  }

  /** The pad goes on to the left: everything ends in a torn edge. */
  static List<Item> tornEdge(Bounds body) {
    double x = body.minX();
    double step = 3;
    List<Vec2> zigzag = new ArrayList<>();
    boolean out = false;
    for (double y = body.minY() - step; y < body.maxY() + 2 * step; y += step) {
      zigzag.add(new Vec2(x + (out ? 0.6 : 2.6), y));
      out = !out;
    }
    List<Vec2> mask = new ArrayList<>(zigzag);
    mask.add(new Vec2(x - 2, zigzag.get(zigzag.size() - 1).y()));
    mask.add(new Vec2(x - 2, zigzag.get(0).y()));
    return List.of(
        new Fill(Path.polygon(mask), 1), new Stroke(Path.polyline(zigzag), LineStyle.DIMENSION));
  }
}
