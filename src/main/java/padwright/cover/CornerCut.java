package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Intersections;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * The cut line round a folded sharp corner: from a point on the edge of the side before it to one
 * on the edge of the side after. What it leaves of the square between the two strips is what the
 * fold needs to hide its raw edges; what it takes away would be bulk.
 */
final class CornerCut {
  /**
   * How far past the back arris the strips of a corner stay joined, mm: within it the covering is
   * gathered, not folded. Our own choice; small against the turn-under.
   */
  static final double JOINED = 5;

  /**
   * The tip of a double pleat ends this far past the arris, mm, so that it is never short of it.
   */
  private static final double PAST_THE_ARRIS = 1e-3;

  private CornerCut() {}

  /**
   * @param stop how far a relief cut stops short of the fold that hides it
   * @param before path length of the line (trim line, or cut line proper) on the side before
   * @param after the same on the side after
   */
  static List<Vec2> line(CornerFrame f, Fold fold, double stop, double before, double after) {
    double most = Math.max(before, after);
    double meetBefore = f.whereHalfSurplusIs(true, stop, most);
    double meetAfter = f.even() ? meetBefore : f.whereHalfSurplusIs(false, stop, most);
    if (fold == Fold.NONE || meetBefore >= before || meetAfter >= after) {
      return List.of(f.meet(before, after));
    }
    List<Vec2> points =
        fold == Fold.DOUBLE
            ? tipped(f, before, after)
            : relieved(f, fold, stop, before, after, meetBefore, meetAfter);
    return CornerFrame.straightened(points);
  }

  private static List<Vec2> relieved(
      CornerFrame f,
      Fold fold,
      double stop,
      double before,
      double after,
      double meetBefore,
      double meetAfter) {
    boolean acute = f.turn() > Math.PI / 2 + 1e-6;
    if (!f.even()) {
      // Either leg runs on past the bisector, as far as the other's.
      return joined(
          leg(f, true, fold.firstOver() && !acute, stop, before, f.pathBefore().topEnd()),
          leg(f, false, !fold.firstOver() && !acute, stop, after, f.pathAfter().topEnd()));
    }
    List<Vec2> first = leg(f, true, fold.firstOver() && !acute, stop, before, meetBefore);
    List<Vec2> second = leg(f, false, !fold.firstOver() && !acute, stop, after, meetAfter);
    List<Vec2> points = new ArrayList<>(first);
    for (int i = second.size() - 2; i >= 0; i--) {
      points.add(second.get(i));
    }
    return points;
  }

  /** Where the relief cut's two legs meet, between two sections; the bisector's tip if nowhere. */
  static Vec2 meeting(CornerFrame f, double stop) {
    List<Vec2> first = f.foldLine(true, stop, f.pathBefore().backStart(), f.pathBefore().topEnd());
    List<Vec2> second = f.foldLine(false, stop, f.pathAfter().backStart(), f.pathAfter().topEnd());
    for (Segment a : Path.polyline(first).segments()) {
      for (Segment b : Path.polyline(second).segments()) {
        List<Vec2> at = Intersections.between(a, b);
        if (!at.isEmpty()) {
          return at.get(0);
        }
      }
    }
    return f.tip();
  }

  /**
   * Two legs that do not come to the bisector at one place: they end where they cross, so that
   * either keeps its distance from its own fold; else where each comes to the bisector.
   */
  private static List<Vec2> joined(List<Vec2> first, List<Vec2> second) {
    for (int i = 0; i + 1 < first.size(); i++) {
      Segment a = Segment.line(first.get(i), first.get(i + 1));
      for (int k = 0; k + 1 < second.size(); k++) {
        List<Vec2> at = Intersections.between(a, Segment.line(second.get(k), second.get(k + 1)));
        if (!at.isEmpty()) {
          List<Vec2> points = new ArrayList<>(first.subList(0, i + 1));
          points.add(at.get(0));
          for (int j = k; j >= 0; j--) {
            points.add(second.get(j));
          }
          return points;
        }
      }
    }
    List<Vec2> points = new ArrayList<>(first);
    for (int i = second.size() - 1; i >= 0; i--) {
      points.add(second.get(i));
    }
    return points;
  }

  /** From the edge in to where the two legs meet, seen from one side. */
  private static List<Vec2> leg(
      CornerFrame f, boolean first, boolean over, double stop, double edge, double meet) {
    if (over) {
      return f.foldLine(first, stop, edge, meet);
    }
    // The strip that lies under is parted from the flap where the back begins, and the flap ends.
    double ends = Math.min(edge, Math.max(f.path(first).backStart() + JOINED, meet));
    List<Vec2> points = new ArrayList<>();
    double atFold = f.fold(first, ends);
    points.add(f.flat(first, backEnd(f, first, edge), edge));
    points.add(f.flat(first, backEnd(f, first, ends), ends));
    if (f.turn() > Math.PI / 2 + 1e-6) {
      points.add(f.flat(first, atFold, ends));
    }
    points.addAll(f.foldLine(first, stop, ends, meet));
    return points;
  }

  /**
   * Where a strip's turn-under ends at the corner: straight on from the fold, or along the other
   * edge of the board where the corner is sharper than square.
   */
  private static double backEnd(CornerFrame f, boolean first, double s) {
    double straight = f.fold(first, s);
    double in = s - f.path(first).backStart();
    if (f.turn() <= Math.PI / 2 || in <= 0) {
      return straight;
    }
    return straight - in / Math.abs(Math.tan(f.turn()));
  }

  /**
   * The tip cut so that, folded, its raw edge runs along the back arris: the mirror image about
   * each crease of the line where the back begins. With an upright wall that is square to the
   * bisector.
   */
  private static List<Vec2> tipped(CornerFrame f, double before, double after) {
    FoldMap map = new FoldMap(f, Fold.DOUBLE);
    List<Vec2> half = new ArrayList<>();
    for (boolean first : new boolean[] {true, false}) {
      double back = f.path(first).backStart() + PAST_THE_ARRIS;
      double fold = f.fold(first, back);
      double edge = first ? before : after;
      Vec2 onBisector = map.mirroredAboutCrease(first, f.flat(first, fold, back));
      Vec2 along = map.mirroredAboutCrease(first, f.flat(first, fold + 1, back)).minus(onBisector);
      double past = f.past(first, onBisector);
      double out = f.out(first, onBisector);
      double stepPast = f.past(first, onBisector.plus(along)) - past;
      double stepOut = f.out(first, onBisector.plus(along)) - out;
      // Where the line comes to the fold, straight over the back, or to the edge before that.
      double toFold = (fold - past) / stepPast;
      double toEdge = (edge - out) / stepOut;
      List<Vec2> side = new ArrayList<>();
      if (toFold < toEdge || stepOut <= 0) {
        side.add(f.flat(first, fold, edge));
        side.add(f.flat(first, fold, out + toFold * stepOut));
      } else {
        side.add(f.flat(first, past + toEdge * stepPast, edge));
      }
      side.add(onBisector);
      if (first) {
        half.addAll(side);
      } else {
        for (int i = side.size() - 2; i >= 0; i--) {
          half.add(side.get(i));
        }
      }
    }
    return half;
  }
}
