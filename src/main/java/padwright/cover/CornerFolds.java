package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.CornerPlan.Sense;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/**
 * The lines on the flat cover along which a corner or a pleat is folded, in the order of folding.
 */
final class CornerFolds {
  private CornerFolds() {}

  /**
   * @param stop how far a relief cut stops short of the fold; infinite where nothing is cut out
   */
  static List<CornerPlan.Fold> of(CornerFrame f, Fold fold, TautPath path, double stop) {
    List<CornerPlan.Fold> folds = new ArrayList<>();
    double edge = path.developed();
    double tip = f.tipLevel(path);
    if (fold == Fold.DOUBLE) {
      doubled(folds, f, path);
    } else {
      double meet = Double.isInfinite(stop) ? edge : f.whereHalfSurplusIs(path, stop, edge);
      add(folds, Sense.INWARD, Path.line(f.tip(path), f.flat(true, meet * f.mitre(), meet)));
    }
    for (boolean first : new boolean[] {true, false}) {
      // The strip on top is folded all the way; the one beneath only as far as it is joined.
      boolean onTop = fold != Fold.DOUBLE && fold.firstOver() == first;
      boolean square = f.turn() <= Math.PI / 2 + 1e-6;
      double to =
          Double.isInfinite(stop) || (onTop && square)
              ? edge
              : Math.min(edge, path.backStart() + CornerCut.JOINED);
      add(folds, Sense.OUTWARD, Path.polyline(f.foldLine(path, first, 0, tip, to)));
    }
    return folds;
  }

  /** The bisector, which comes to lie on the arris, and a crease midway to each fold. */
  private static void doubled(List<CornerPlan.Fold> folds, CornerFrame f, TautPath path) {
    FoldMap map = new FoldMap(f, Fold.DOUBLE, path);
    double back = path.backStart();
    Vec2 tip = f.tip(path);
    Vec2 end = f.flat(true, f.fold(path, back), back);
    add(folds, Sense.OUTWARD, Path.line(tip, map.mirroredAboutCrease(true, end)));
    for (boolean first : new boolean[] {true, false}) {
      // The crease ends where its own mirror line, the back arris, crosses it.
      Vec2 crease = map.crease(first);
      Vec2 out = first ? f.before().right() : f.after().right();
      double length = (back - f.tipLevel(path)) / crease.dot(out);
      add(folds, Sense.INWARD, Path.line(tip, tip.along(crease, length)));
    }
  }

  private static void add(List<CornerPlan.Fold> folds, Sense sense, Path line) {
    folds.add(new CornerPlan.Fold(sense, line));
  }
}
