package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import padwright.design.WrappedPad;
import padwright.geometry.Bounds;
import padwright.geometry.Intersections;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece.LineKind;
import padwright.pattern.PatternPiece.LineMark;
import padwright.pattern.PatternPiece.PointKind;
import padwright.pattern.PatternPiece.PointMark;

/** Middle lines, centre marks and front edges, which every piece has alike. */
final class PieceEdges {
  /** A straight side that faces the front within 25 degrees is a front. */
  private static final double SQUARELY = 0.9;

  /** Arcs that face the front within 45 degrees are part of it. */
  private static final double HALF = 0.7;

  /** Chords may leave a piece's arcs by this where a line is looked for over it, mm. */
  private static final double FLAT = 0.01;

  /** A shorter stretch of a middle line shows nothing, mm. */
  private static final double SHORT = 1;

  private PieceEdges() {}

  /** The middle lines of a piece's box, as far as they run over the piece. */
  static void middleLines(List<LineMark> lines, Path piece) {
    Bounds b = piece.bounds();
    Vec2 c = b.centre();
    Segment across = Segment.line(new Vec2(b.minX(), c.y()), new Vec2(b.maxX(), c.y()));
    Segment along = Segment.line(new Vec2(c.x(), b.minY()), new Vec2(c.x(), b.maxY()));
    boolean convex = Offset.convex(piece);
    List<Vec2> polygon = convex ? List.of() : piece.flattened(FLAT);
    for (Segment middle : List.of(across, along)) {
      if (convex) {
        lines.add(new LineMark(LineKind.CENTRE, new Path(List.of(middle), false)));
      } else {
        over(piece, polygon, middle).forEach(p -> lines.add(new LineMark(LineKind.CENTRE, p)));
      }
    }
  }

  /** The stretches of a straight line that lie over a piece, whose chords are a polygon. */
  private static List<Path> over(Path piece, List<Vec2> polygon, Segment line) {
    List<Double> at = new ArrayList<>(List.of(0.0, line.length()));
    for (Segment s : piece.segments()) {
      Intersections.between(line, s).forEach(p -> at.add(p.distance(line.start())));
    }
    at.sort(null);
    List<Path> stretches = new ArrayList<>();
    for (int i = 0; i + 1 < at.size(); i++) {
      Vec2 from = line.pointAt(at.get(i) / line.length());
      Vec2 to = line.pointAt(at.get(i + 1) / line.length());
      if (from.distance(to) > SHORT && Polygons.contains(polygon, from.midpoint(to))) {
        stretches.add(Path.line(from, to));
      }
    }
    return stretches;
  }

  /** Where the piece's middle lines cross its cut line. */
  static List<PointMark> centreMarks(Path cut) {
    Bounds b = cut.bounds();
    Vec2 c = b.centre();
    List<PointMark> marks = new ArrayList<>();
    for (Vec2 p :
        List.of(
            new Vec2(c.x(), b.minY()),
            new Vec2(b.maxX(), c.y()),
            new Vec2(c.x(), b.maxY()),
            new Vec2(b.minX(), c.y()))) {
      marks.add(new PointMark(PointKind.CENTRE_MARK, nearest(cut, p), 0, ""));
    }
    return marks;
  }

  private static Vec2 nearest(Path cut, Vec2 p) {
    Vec2 best = cut.start();
    double least = best.distance(p);
    for (Segment s : cut.segments()) {
      Vec2 q = s.nearest(p);
      double distance = q.distance(p);
      if (distance < least) {
        best = q;
        least = distance;
      }
    }
    return best;
  }

  /**
   * The front of a closed path: the longest straight side that faces it, or on a round one all the
   * arcs that do.
   */
  static Path frontEdge(Path path, WrappedPad.Side front) {
    Vec2 towards = towards(front);
    List<Segment> segments = path.segments();
    Segment straight = null;
    for (Segment s : segments) {
      if (!s.isArc()
          && facing(s, towards) > SQUARELY
          && (straight == null || s.length() > straight.length())) {
        straight = s;
      }
    }
    if (straight != null) {
      return new Path(List.of(straight), false);
    }
    return roundFront(path, towards);
  }

  /**
   * The front of a cover's cut line, which notches and relief cuts may break: their sides face
   * anywhere and are no edge of the part. What counts is the front of the base it is wrapped round.
   */
  static Path frontEdge(Path cut, Path outline, WrappedPad.Side front) {
    Vec2 towards = towards(front);
    Segment base = frontEdge(outline, front).segments().get(0);
    if (base.isArc()) {
      return roundFront(cut, towards);
    }
    Vec2 from = base.pointAt(0.5);
    Vec2 out = base.directionAt(0.5).right();
    Segment furthest = null;
    double most = 0;
    for (Segment s : cut.segments()) {
      double at = s.isArc() || facing(s, out) < SQUARELY ? 0 : reach(from, out, s);
      if (at > most) {
        most = at;
        furthest = s;
      }
    }
    return furthest == null ? roundFront(cut, towards) : new Path(List.of(furthest), false);
  }

  /** How far along a ray a straight segment crosses it; 0 where it does not. */
  private static double reach(Vec2 from, Vec2 out, Segment s) {
    double a = s.start().minus(from).cross(out);
    double b = s.end().minus(from).cross(out);
    if (a * b > 0 || a == b) {
      return 0;
    }
    return s.start().along(s.end().minus(s.start()), a / (a - b)).minus(from).dot(out);
  }

  private static Vec2 towards(WrappedPad.Side front) {
    return Vec2.polar(-Math.PI / 2 + front.ordinal() * Math.PI / 2);
  }

  /** What lies furthest forward and faces the front, with what faces it beside that. */
  private static Path roundFront(Path path, Vec2 towards) {
    List<Segment> segments = path.segments();
    int n = segments.size();
    int first = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      Segment s = segments.get(i);
      double forward = s.pointAt(0.5).dot(towards);
      if (facing(s, towards) > HALF && forward > most + 1e-9) {
        most = forward;
        first = i;
      }
    }
    int last = first;
    while (last - first < n - 1 && facing(segments.get((last + 1) % n), towards) > HALF) {
      last++;
    }
    while (last - first < n - 1
        && facing(segments.get(Math.floorMod(first - 1, n)), towards) > HALF) {
      first--;
    }
    List<Segment> edge = new ArrayList<>();
    for (int i = first; i <= last; i++) {
      edge.add(segments.get(Math.floorMod(i, n)));
    }
    return new Path(edge, false);
  }

  private static double facing(Segment s, Vec2 towards) {
    return s.directionAt(0.5).right().dot(towards);
  }
}
