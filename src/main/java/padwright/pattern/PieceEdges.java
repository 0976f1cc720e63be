package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import padwright.design.WrappedPad;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece.LineKind;
import padwright.pattern.PatternPiece.LineMark;
import padwright.pattern.PatternPiece.PointKind;
import padwright.pattern.PatternPiece.PointMark;

/** Middle lines, centre marks and front edges, which every piece has alike. */
final class PieceEdges {
  private PieceEdges() {}

  static void middleLines(List<LineMark> lines, Bounds b) {
    Vec2 c = b.centre();
    lines.add(
        new LineMark(
            LineKind.CENTRE, Path.line(new Vec2(b.minX(), c.y()), new Vec2(b.maxX(), c.y()))));
    lines.add(
        new LineMark(
            LineKind.CENTRE, Path.line(new Vec2(c.x(), b.minY()), new Vec2(c.x(), b.maxY()))));
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
    for (Segment s : cut.segments()) {
      int steps = s.isArc() ? 64 : 1;
      for (int k = 0; k < steps; k++) {
        Vec2 a = s.pointAt((double) k / steps);
        Vec2 d = s.pointAt((double) (k + 1) / steps).minus(a);
        double t = Math.max(0, Math.min(1, p.minus(a).dot(d) / Math.max(1e-12, d.dot(d))));
        Vec2 q = a.along(d, t);
        if (q.distance(p) < best.distance(p)) {
          best = q;
        }
      }
    }
    return best;
  }

  /** The stretch of a closed path that faces the front most squarely. */
  static Path frontEdge(Path path, WrappedPad.Side front) {
    Vec2 towards = Vec2.polar(-Math.PI / 2 + front.ordinal() * Math.PI / 2);
    Segment best = path.segments().get(0);
    double most = Double.NEGATIVE_INFINITY;
    for (Segment s : path.segments()) {
      double out = s.directionAt(0.5).right().dot(towards);
      double score = out > 0.7 ? out * s.length() : out;
      if (score > most) {
        most = score;
        best = s;
      }
    }
    return new Path(List.of(best), false);
  }
}
