package padwright.desk.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.Section;
import padwright.shape.TautPath;

/**
 * One layer cut across the edge of one side: a closed polygon in section coordinates (x outwards
 * from the base outline, y up from the back of the board), mm. It is cut off upright some way
 * inside, where the layer lies flat. Below its ceiling it does not reach inside: there it hangs
 * round what it lies on.
 */
final class Band {
  /** Chords keep this near to an arc, mm: not seen at any size that fits a window. */
  static final double CHORD = 0.05;

  /** A covering is drawn this thick at least, mm, so that it has an inside and an outside. */
  static final double THINNEST = 0.1;

  /** How far beyond what must be seen the covering's polygon is cut off, mm. */
  private static final double BEYOND = 10;

  /** What stands at a height is looked for this much above or below it, mm. */
  private static final double BESIDE = 1e-6;

  /** A layer thinner than this, mm, is not there. */
  private static final double FLUSH = 0.01;

  private final List<Vec2> corners;
  private final List<Vec2> outer;
  private final double inside;
  private final double lowest;
  private final double low;
  private final double high;
  private final double ceiling;

  private Band(List<Vec2> corners) {
    this(corners, corners);
  }

  private Band(List<Vec2> corners, List<Vec2> outer) {
    this.corners = List.copyOf(corners);
    this.outer = List.copyOf(outer);
    inside = corners.stream().mapToDouble(Vec2::x).min().orElseThrow();
    high = outer.stream().mapToDouble(Vec2::y).max().orElseThrow();
    List<Double> heights = heights();
    lowest = heights.get(0);
    double foot = lowest;
    for (int i = 0; i + 1 < heights.size() && foot == heights.get(i); i++) {
      double next = heights.get(i + 1);
      // What lies flush against the layer below has an edge that no pencil could draw.
      if (thick(foot, true) < FLUSH && thick(next, false) < FLUSH) {
        foot = next;
      }
    }
    low = foot;
    double top = low;
    for (double height : heights) {
      if (height > low + BESIDE && least(height, false) > inside + BESIDE) {
        top = Math.max(top, height);
      }
    }
    ceiling = top;
  }

  private double thick(double height, boolean above) {
    return most(height, above) - least(height, above);
  }

  /** A layer of board, foam or wadding. */
  static Band of(Section.Layer layer) {
    return new Band(layer.shape().flattened(CHORD));
  }

  /** Wadding laid down the sides as well: pressed to where the covering lies on it. */
  static Band pressed(Section.Layer wadding, TautPath taut) {
    List<Vec2> inner = wadding.shape().flattened(CHORD);
    double inside = inner.stream().mapToDouble(Vec2::x).min().orElseThrow();
    List<Vec2> outer = new ArrayList<>(taut.hull().flattened(CHORD));
    outer.add(new Vec2(inside, taut.hull().end().y()));
    outer.add(new Vec2(inside, taut.hull().start().y()));
    return new Band(inner, outer);
  }

  /** A flat sheet between two heights whose edge is so far out. */
  static Band sheet(double out, double low, double high) {
    double inside = out - BEYOND;
    return new Band(
        List.of(
            new Vec2(inside, low),
            new Vec2(out, low),
            new Vec2(out, high),
            new Vec2(inside, high)));
  }

  /**
   * The covering, half its thickness to either side of its neutral line.
   *
   * @param turnUnder how far it lies on the back; negative where it ends at {@code level}
   * @param level path length at which it ends where it is not turned under
   */
  static Band covering(TautPath taut, double thickness, double turnUnder, double level) {
    double half = Math.max(thickness, THINNEST) / 2;
    List<Vec2> outer = new ArrayList<>();
    List<Vec2> inner = new ArrayList<>();
    boolean turned = turnUnder >= 0;
    double s = taut.startX();
    var pieces = taut.neutral().segments();
    for (int i = 0; i < pieces.size() - 1 && (turned || s < level); i++) {
      var piece = pieces.get(i);
      double length = piece.length();
      double part = turned ? 1 : Math.min(1, (level - s) / length);
      int chords = piece.isArc() ? Math.max(4, piece.chords(CHORD / 4)) : 1;
      for (int k = 0; k <= chords; k++) {
        Vec2 at = piece.pointAt(part * k / chords);
        Vec2 out = piece.directionAt(part * k / chords).left();
        add(outer, at.along(out, half));
        add(inner, at.along(out, -half));
      }
      s += length;
    }
    double inside = Math.min(taut.startX(), -Math.max(0, turnUnder)) - BEYOND;
    if (turned) {
      double back = taut.neutral().end().y();
      outer.add(new Vec2(-turnUnder, back - half));
      outer.add(new Vec2(-turnUnder, back + half));
    }
    List<Vec2> all = new ArrayList<>();
    all.add(new Vec2(inside, outer.get(0).y()));
    all.addAll(outer);
    for (int i = inner.size() - 1; i >= 0; i--) {
      all.add(inner.get(i));
    }
    all.add(new Vec2(inside, inner.get(0).y()));
    return new Band(all);
  }

  private static void add(List<Vec2> points, Vec2 p) {
    if (points.isEmpty() || points.get(points.size() - 1).distance(p) > BESIDE) {
      points.add(p);
    }
  }

  double low() {
    return low;
  }

  double high() {
    return high;
  }

  /** The height up to which it hangs round what is inside; its lowest where it lies flat. */
  double ceiling() {
    return ceiling;
  }

  List<Double> heights() {
    return Stream.concat(corners.stream(), outer.stream())
        .map(Vec2::y)
        .sorted()
        .distinct()
        .toList();
  }

  /** How far out it reaches just above or just below a height. */
  double most(double height, boolean above) {
    return reach(outer, height, above, 1);
  }

  /** Where its inner face stands just above or just below a height. */
  double least(double height, boolean above) {
    return -reach(corners, height, above, -1);
  }

  private double reach(List<Vec2> polygon, double height, boolean above, int sign) {
    double y =
        Math.max(lowest + BESIDE, Math.min(high - BESIDE, height + (above ? BESIDE : -BESIDE)));
    double most = Double.NEGATIVE_INFINITY;
    Vec2 a = polygon.get(polygon.size() - 1);
    for (Vec2 b : polygon) {
      if ((a.y() > y) != (b.y() > y)) {
        double x = a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
        most = Math.max(most, sign * x);
      }
      a = b;
    }
    return most;
  }

  /** The outline of a path as corners, close enough to look round at any size. */
  static List<Vec2> corners(Path path) {
    List<Vec2> points = new ArrayList<>();
    points.add(path.start());
    for (var s : path.segments()) {
      int chords = chords(s);
      for (int k = 1; k <= chords; k++) {
        points.add(s.pointAt((double) k / chords));
      }
    }
    points.remove(points.size() - 1);
    return points;
  }

  /** How many chords stand for a segment of an outline: no more than 9 degrees each. */
  static int chords(Segment s) {
    int smooth = (int) Math.ceil(Math.abs(s.sweep()) / Math.toRadians(9));
    return s.isArc() ? Math.max(smooth, s.chords(3 * CHORD)) : 1;
  }
}
