package padwright.export;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.CornerPlan.Fold;
import padwright.cover.CornerPlan.Sense;
import padwright.cover.CoverPlan;
import padwright.export.Drawing.LineStyle;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;

/** The flat cover round one corner: its true lines, cut off by a window. */
final class FlatCorner {
  private static final double CHORD_ERROR = 0.2;
  private static final double PAPER = 0.93;

  private final CornerSolid corner;
  private final Vec2 across;
  private final Vec2 out;
  private final double[] window;
  private final double edge;

  FlatCorner(CornerSolid corner, double edge) {
    this.corner = corner;
    this.edge = edge;
    this.out = corner.towards();
    this.across = out.left();
    double turn = Math.min(corner.plan().turn(), RoundPictures.WIDEST);
    double r = corner.plan().radius();
    boolean hollow = turn < 0;
    double half = Math.max(edge * (hollow ? 1.7 : 1.05), (r + edge) * Math.sin(turn / 2));
    double in = r * (1 - Math.cos(turn / 2)) + 0.55 * edge;
    double far = (hollow ? 1.5 : 1.05) * edge / Math.cos(turn / 2);
    this.window = new double[] {-half, half, -in, far};
  }

  Scene scene(CoverPlan cover, Path outline) {
    Scene s = Scene.flat(corner.apex(), out);
    List<Vec2> paper = local(cover.cut().flattened(CHORD_ERROR));
    for (int side = 0; side < 4 && !paper.isEmpty(); side++) {
      paper = clipped(paper, side);
    }
    if (paper.size() > 2) {
      s.face(PAPER, world(paper));
    }
    lines(s, LineStyle.OUTLINE, outline);
    lines(s, LineStyle.TRIM, cover.trim());
    lines(s, LineStyle.CUT, cover.cut());
    for (Fold f : corner.plan().folds()) {
      lines(s, f.sense() == Sense.OUTWARD ? LineStyle.FOLD : crease(), f.line());
    }
    if (corner.plan().radius() == 0) {
      // Side names in the middle of their strips, so that the next pictures can be followed.
      for (boolean first : new boolean[] {true, false}) {
        Vec2 along = first ? corner.alongFirst() : corner.alongSecond();
        Vec2 outward = first ? corner.outFirst() : corner.outSecond();
        // Beside the slit of a hollow corner the strips cross; further along each is by itself.
        double beside = corner.plan().turn() < 0 ? 1.4 : 0.45;
        Vec2 at = corner.apex().along(along, beside * edge).along(outward, 0.42 * edge);
        s.name(new Vec3(at.x(), at.y(), 0), first ? corner.first() : corner.second());
      }
    }
    return s;
  }

  /** Many small creases side by side are thin full lines: their dashes would run together. */
  private LineStyle crease() {
    return corner.plan().radius() > 0 ? LineStyle.DIMENSION : LineStyle.CREASE;
  }

  /** A line of the flat cover as far as the picture shows it. */
  void lines(Scene s, LineStyle style, Path path) {
    List<Vec2> points = new ArrayList<>(path.flattened(CHORD_ERROR));
    if (path.closed()) {
      points.add(points.get(0));
    }
    points = local(points);
    for (int i = 0; i + 1 < points.size(); i++) {
      Vec2 middle = new Vec2((window[0] + window[1]) / 2, (window[2] + window[3]) / 2);
      Box box = new Box(middle, window[1] - window[0], window[3] - window[2], 0);
      double[] span = box.span(points.get(i), points.get(i + 1));
      if (span != null && span[1] > span[0]) {
        Vec2 run = points.get(i + 1).minus(points.get(i));
        Vec2 a = points.get(i).along(run, span[0]);
        Vec2 b = points.get(i).along(run, span[1]);
        s.line(style, world(List.of(a, b)));
      }
    }
  }

  private List<Vec2> local(List<Vec2> points) {
    List<Vec2> list = new ArrayList<>();
    for (Vec2 p : points) {
      Vec2 d = p.minus(corner.apex());
      list.add(new Vec2(d.dot(across), d.dot(out)));
    }
    return list;
  }

  private List<Vec3> world(List<Vec2> points) {
    List<Vec3> list = new ArrayList<>();
    for (Vec2 p : points) {
      Vec2 w = corner.apex().along(across, p.x()).along(out, p.y());
      list.add(new Vec3(w.x(), w.y(), 0));
    }
    return list;
  }

  /** What of a polygon lies on the inner side of one edge of the window (Sutherland-Hodgman). */
  private List<Vec2> clipped(List<Vec2> polygon, int side) {
    List<Vec2> kept = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      Vec2 a = polygon.get(i);
      Vec2 b = polygon.get((i + 1) % polygon.size());
      double da = inside(a, side);
      double db = inside(b, side);
      if (da >= 0) {
        kept.add(a);
      }
      if (da >= 0 != db >= 0) {
        kept.add(a.along(b.minus(a), da / (da - db)));
      }
    }
    return kept;
  }

  private double inside(Vec2 p, int side) {
    return switch (side) {
      case 0 -> p.x() - window[0];
      case 1 -> window[1] - p.x();
      case 2 -> p.y() - window[2];
      default -> window[3] - p.y();
    };
  }
}
