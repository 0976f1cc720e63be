package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.CornerPlan.Sense;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * The lines on the flat cover along which a corner or a pleat is folded, in the order of folding.
 */
final class CornerFolds {
  /** A line needs two ends, mm; arithmetic only. */
  private static final double NOTHING = 1e-6;

  private CornerFolds() {}

  /**
   * @param stop how far a relief cut stops short of the fold; infinite where nothing is cut out
   */
  static List<CornerPlan.Fold> of(CornerFrame f, Fold fold, double stop) {
    List<CornerPlan.Fold> folds = new ArrayList<>();
    double level = f.tipLevel(true);
    Vec2 tip = f.tip(level);
    if (fold == Fold.DOUBLE) {
      doubled(folds, f, tip);
    } else {
      if (!f.even()) {
        Vec2 end = CornerCut.meeting(f, stop);
        if (end.distance(tip) > NOTHING) {
          add(folds, Sense.INWARD, Path.line(tip, end));
        }
        return walls(folds, f, fold, stop, level);
      }
      double edge = f.pathBefore().developed();
      double meet = Double.isInfinite(stop) ? edge : f.whereHalfSurplusIs(true, stop, edge);
      add(folds, Sense.INWARD, Path.line(tip, f.flat(true, f.bisector(true, meet), meet)));
    }
    return walls(folds, f, fold, stop, level);
  }

  /**
   * The two folds along the arris, one in each strip.
   *
   * @param level where the surplus begins to open, seen from the side before
   */
  private static List<CornerPlan.Fold> walls(
      List<CornerPlan.Fold> folds, CornerFrame f, Fold fold, double stop, double level) {
    for (boolean first : new boolean[] {true, false}) {
      // The strip on top is folded all the way; the one beneath only as far as it is joined.
      boolean onTop = fold != Fold.DOUBLE && fold.firstOver() == first;
      double edge = f.path(first).developed();
      boolean square = f.turn() <= Math.PI / 2 + 1e-6;
      double to =
          Double.isInfinite(stop) || (onTop && square)
              ? edge
              : Math.min(edge, f.path(first).backStart() + CornerCut.JOINED);
      double from = first || f.even() ? level : f.tipLevel(false);
      add(folds, Sense.OUTWARD, Path.polyline(f.foldLine(first, 0, from, to)));
    }
    return folds;
  }

  /** The bisector, which comes to lie on the arris, and a crease midway to each fold. */
  private static void doubled(List<CornerPlan.Fold> folds, CornerFrame f, Vec2 tip) {
    FoldMap map = new FoldMap(f, Fold.DOUBLE);
    double end = f.pathBefore().backStart();
    Vec2 corner = f.flat(true, f.fold(true, end), end);
    add(folds, Sense.OUTWARD, Path.line(tip, map.mirroredAboutCrease(true, corner)));
    for (boolean first : new boolean[] {true, false}) {
      // The crease ends where its own mirror line, the back arris, crosses it.
      Vec2 crease = map.crease(first);
      Vec2 out = first ? f.before().right() : f.after().right();
      double length = (f.path(first).backStart() - f.tipLevel(first)) / crease.dot(out);
      add(folds, Sense.INWARD, Path.line(tip, tip.along(crease, length)));
    }
  }

  private static void add(List<CornerPlan.Fold> folds, Sense sense, Path line) {
    folds.add(new CornerPlan.Fold(sense, line));
  }
}
