package padwright.pattern;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import padwright.cover.CoverPlan;
import padwright.geometry.EdgeBands;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.PadShape;
import padwright.shape.Passage;
import padwright.shape.Section;
import padwright.shape.TautPath;

/** The lines on a flat cover along which it bends over the pad's edges. */
final class FoldLines {
  /** A bend on a larger radius than this is shown by the lines where it begins and ends, mm. */
  private static final double ROUND = 3;

  private final PadShape shape;
  private final CoverPlan cover;
  private static final double NEAR = 1e-6;

  private final List<Path> found = new ArrayList<>();
  private EdgeBands within;

  /** The outline moved in to a level, for all sides that have the very section it belongs to. */
  private final Map<Section, Map<Double, Optional<Path>>> inner = new IdentityHashMap<>();

  private FoldLines(PadShape shape, CoverPlan cover) {
    this.shape = shape;
    this.cover = cover;
  }

  /** Every bend: a sharp one by its middle, a round one by its beginning and its end. */
  static List<Path> of(PadShape shape, CoverPlan cover) {
    FoldLines lines = new FoldLines(shape, cover);
    if (shape.sections().special().isEmpty()) {
      for (double level : bends(shape.section().taut())) {
        lines.allRound(level);
      }
      return lines.found;
    }
    for (int i = 0; i < shape.outline().segments().size(); i++) {
      Passage passage = shape.sections().passages().get(shape.sideNames().get(i));
      if (passage != null) {
        lines.passage(i, passage);
        continue;
      }
      for (double level : bends(shape.sections().path(shape.sideNames().get(i)))) {
        lines.line(i, level);
      }
    }
    return lines.found;
  }

  /** The line along which staples go, where it lies on the cover and not in what was cut away. */
  static List<Path> staples(PadShape shape, CoverPlan cover, double edgeDistance) {
    FoldLines lines = new FoldLines(shape, cover);
    for (int i = 0; i < shape.outline().segments().size(); i++) {
      String side = shape.sideNames().get(i);
      if (!shape.ends().of(side).turned()) {
        continue;
      }
      double from = onBack(shape.sections().at(side, true).taut(), edgeDistance);
      double to = onBack(shape.sections().at(side, false).taut(), edgeDistance);
      if (from == to) {
        lines.line(i, from);
      } else {
        lines.aslant(i, from, to);
      }
    }
    return lines.found;
  }

  /** Path length at which a covering lies so far inside the base's edge, on the back. */
  private static double onBack(TautPath taut, double in) {
    return taut.backStart() + in + taut.out(taut.backStart());
  }

  /**
   * Along a passage the first and the last bend run from where they lie in one section to where
   * they lie in the other; those between may begin or end within it.
   */
  private void passage(int i, Passage passage) {
    List<Double> from = bends(passage.start().taut());
    List<Double> to = bends(passage.end().taut());
    if (from.size() == to.size()) {
      for (int k = 0; k < from.size(); k++) {
        aslant(i, from.get(k), to.get(k));
      }
    } else {
      aslant(i, from.get(0), to.get(0));
      aslant(i, from.get(from.size() - 1), to.get(to.size() - 1));
    }
  }

  private void aslant(int i, double from, double to) {
    Segment s = shape.outline().segments().get(i);
    Vec2 out = s.directionAt(0).right();
    found.add(Path.line(s.start().along(out, from), s.end().along(out, to)));
  }

  /** Path lengths at which a covering bends. */
  private static List<Double> bends(TautPath taut) {
    List<Double> levels = new ArrayList<>();
    double s = taut.startX();
    for (Segment piece : taut.neutral().segments()) {
      if (piece.isArc()) {
        if (piece.radius() > ROUND) {
          levels.add(s);
          levels.add(s + piece.length());
        } else {
          levels.add(s + piece.length() / 2);
        }
      }
      s += piece.length();
    }
    if (levels.isEmpty()) {
      // A covering of no thickness bends in a point.
      double run = taut.startX();
      List<Segment> pieces = taut.neutral().segments();
      for (int i = 0; i + 1 < pieces.size(); i++) {
        run += pieces.get(i).length();
        levels.add(run);
      }
    }
    return levels;
  }

  /** The line at one path length, all round. */
  private void allRound(double level) {
    for (int i = 0; i < shape.outline().segments().size(); i++) {
      line(i, level);
    }
  }

  /** The line along one side. */
  private void line(int i, double level) {
    List<Segment> outline = shape.outline().segments();
    Segment s = outline.get(i);
    Segment previous = outline.get(Math.floorMod(i - 1, outline.size()));
    Segment next = outline.get((i + 1) % outline.size());
    String name = shape.sideNames().get(i);
    if (level > shape.ends().of(name).level(shape.sections().path(name)) + NEAR) {
      // The covering of an open side ends before it.
      return;
    }
    if (s.isArc()) {
      double out = Math.signum(s.bulge()) * level;
      if (s.radius() + out > 0) {
        Vec2 c = s.centre();
        double k = (s.radius() + out) / s.radius();
        found.add(
            new Path(
                List.of(
                    new Segment(
                        c.plus(s.start().minus(c).times(k)),
                        c.plus(s.end().minus(c).times(k)),
                        s.bulge())),
                false));
      }
      return;
    }
    if (level < 0) {
      Section own = shape.sections().of(shape.sideNames().get(i));
      inner
          .computeIfAbsent(own, k -> new HashMap<>())
          .computeIfAbsent(level, k -> movedIn(own, k))
          .ifPresent(p -> found.addAll(matching(p, s)));
      return;
    }
    Vec2 out = s.directionAt(0).right().times(level);
    Vec2 along = s.directionAt(0);
    Vec2 from = s.start().plus(out).along(along, -hollow(previous, s) * level);
    Vec2 to = s.end().plus(out).along(along, hollow(s, next) * level);
    if (within == null) {
      within = new EdgeBands(cover.cut().flattened(0.05));
    }
    if (within.contains(from.midpoint(to))) {
      found.add(Path.line(from, to));
    }
  }

  /**
   * Inside the outline the lines of two sides meet at a mitre: each side's line is that of the
   * outline moved in so far, the sides with another section by their own flat top.
   */
  private Optional<Path> movedIn(Section own, double level) {
    ToDoubleFunction<Section> in = other -> other == own ? level : other.taut().startX();
    return Offset.by(
        shape.outline(),
        shape.sections().each(shape.sideNames(), true, in),
        shape.sections().each(shape.sideNames(), false, in));
  }

  /** How far a line stops short of a hollow corner for each mm it lies out: at the bisector. */
  private static double hollow(Segment before, Segment after) {
    Vec2 u = before.directionAt(1);
    Vec2 v = after.directionAt(0);
    double cross = u.cross(v);
    return cross < -1e-6 ? Math.tan(Math.atan2(cross, u.dot(v)) / 2) : 0;
  }

  private static List<Path> matching(Path inner, Segment side) {
    List<Path> lines = new ArrayList<>();
    for (Segment s : inner.segments()) {
      if (!s.isArc()
          && Math.abs(s.directionAt(0).cross(side.directionAt(0))) < 1e-9
          && s.directionAt(0).dot(side.directionAt(0)) > 0) {
        lines.add(new Path(List.of(s), false));
      }
    }
    return lines;
  }
}
