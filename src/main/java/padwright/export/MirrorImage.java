package padwright.export;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.LineMark;
import padwright.pattern.PatternPiece.PointMark;
import padwright.pattern.PatternPiece.StapleMark;

/** A piece mirrored left to right, and whether that leaves it as it was. */
final class MirrorImage {
  /** Two lines this close are the same to a maker; far above rounding noise. */
  private static final double SAME = 0.01;

  private MirrorImage() {}

  static PatternPiece of(PatternPiece p) {
    return new PatternPiece(
        p.id(),
        p.kind(),
        p.name(),
        p.quantity(),
        p.mirrored(),
        p.material(),
        p.thickness(),
        p.cutLine().mirrored(),
        p.innerCuts().stream().map(Path::mirrored).toList(),
        p.lines().stream().map(l -> new LineMark(l.kind(), l.path().mirrored())).toList(),
        p.staples().stream()
            .map(s -> new StapleMark(s.number(), flip(s.at()), Math.PI - s.angle(), s.layers()))
            .toList(),
        p.points().stream()
            .map(m -> new PointMark(m.kind(), flip(m.at()), m.diameter(), m.label()))
            .toList(),
        p.grain().map(MirrorImage::flip),
        p.nap(),
        p.side(),
        p.length(),
        p.width());
  }

  private static Vec2 flip(Vec2 v) {
    return new Vec2(-v.x(), v.y());
  }

  /**
   * Whether the piece and its mirror image can be cut from one pattern: cut lines, lines, marks,
   * grain and nap all fall on their own mirror images. The order of driving may differ.
   */
  static boolean isOwn(PatternPiece p) {
    PatternPiece m = of(p);
    if (!sameArrow(p)
        || !sameLine(List.of(p.cutLine()), List.of(m.cutLine()))
        || !sameLine(p.innerCuts(), m.innerCuts())) {
      return false;
    }
    for (PatternPiece.LineKind kind : PatternPiece.LineKind.values()) {
      if (!sameLine(paths(p, kind), paths(m, kind))) {
        return false;
      }
    }
    return samePoints(
            p.staples().stream().map(StapleMark::at).toList(),
            m.staples().stream().map(StapleMark::at).toList())
        && samePoints(
            p.points().stream().map(PointMark::at).toList(),
            m.points().stream().map(PointMark::at).toList());
  }

  private static boolean sameArrow(PatternPiece p) {
    if (p.grain().isEmpty()) {
      return true;
    }
    Vec2 g = p.grain().get().unit();
    boolean upright = Math.abs(g.x()) < SAME;
    boolean level = Math.abs(g.y()) < SAME;
    return upright || (level && !p.nap());
  }

  private static List<Path> paths(PatternPiece p, PatternPiece.LineKind kind) {
    return p.lines().stream().filter(l -> l.kind() == kind).map(LineMark::path).toList();
  }

  /** Compares corner points and the middles of segments, whatever order they come in. */
  private static boolean sameLine(List<Path> a, List<Path> b) {
    return samePoints(points(a), points(b));
  }

  private static List<Vec2> points(List<Path> paths) {
    List<Vec2> points = new ArrayList<>();
    for (Path p : paths) {
      for (Segment s : p.segments()) {
        points.add(s.start());
        points.add(s.pointAt(0.5));
        points.add(s.end());
      }
    }
    return points;
  }

  private static boolean samePoints(List<Vec2> a, List<Vec2> b) {
    if (a.size() != b.size()) {
      return false;
    }
    for (Vec2 p : a) {
      boolean found = false;
      for (Vec2 q : b) {
        if (p.distance(q) < SAME) {
          found = true;
          break;
        }
      }
      if (!found) {
        return false;
      }
    }
    return true;
  }
}
