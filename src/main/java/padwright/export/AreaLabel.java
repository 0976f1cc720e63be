package padwright.export;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.LineKind;
import padwright.pattern.PatternPiece.PointMark;

/**
 * Writes the name of an area of a piece, a cut-out or a zone: in its middle where that is free,
 * else just outside of everything that is drawn about it.
 */
final class AreaLabel {
  /** What is drawn about an area has its middle this near to the area's, mm. */
  private static final double SAME = 1;

  /** Left between the drawn lines and the words, and further off where that is taken, mm. */
  private static final double[] AWAY = {1.5, 3, 5, 8, 12};

  private static final Vec2[] WAYS = {
    new Vec2(0, 1), new Vec2(0, -1), new Vec2(1, 0), new Vec2(-1, 0)
  };

  private AreaLabel() {}

  /** Whether there was room for the words. */
  static boolean put(Sheet sheet, PatternPiece piece, PointMark mark) {
    String words = mark.label();
    if (sheet.textAt(mark.at(), Lettering.NOTE, 0, words)) {
      return true;
    }
    Bounds box = about(piece, mark.at());
    double hw = box.width() / 2 + Lettering.width(words, Lettering.NOTE) / 2;
    double hh = box.height() / 2 + Lettering.NOTE * (Lettering.ASCENT + Lettering.DESCENT) / 2;
    for (double away : AWAY) {
      for (Vec2 way : WAYS) {
        Vec2 at = mark.at().plus(new Vec2(way.x() * (hw + away), way.y() * (hh + away)));
        if (sheet.textAt(at, Lettering.NOTE, 0, words)) {
          return true;
        }
      }
    }
    return false;
  }

  private static Bounds about(PatternPiece piece, Vec2 middle) {
    List<Path> closed = new ArrayList<>(piece.innerCuts());
    piece.lines().stream()
        .filter(l -> l.path().closed() && l.kind() != LineKind.BASE_OUTLINE)
        .forEach(l -> closed.add(l.path()));
    Bounds whole = piece.cutLine().bounds();
    Bounds box = Bounds.of(middle);
    for (Path p : closed) {
      Bounds b = p.bounds();
      // A line round the whole piece may have the same middle.
      boolean within = b.width() < whole.width() / 2 || b.height() < whole.height() / 2;
      if (within && b.centre().distance(middle) < SAME) {
        box = box.union(b);
      }
    }
    return box;
  }
}
