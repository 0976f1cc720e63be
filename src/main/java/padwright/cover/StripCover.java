package padwright.cover;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import padwright.cover.Skeleton.Element;
import padwright.cover.Skeleton.Side;
import padwright.geometry.EdgeRuns;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/**
 * What a cut cover leaves bare on the straight sides of the solid, and how far it reaches on the
 * back behind them. A stretch of a side's strip between two path lengths is a trapezoid between its
 * mitre lines; the cover's part in it is found by clipping.
 */
final class StripCover {
  /** A joint that turns less than this, radians, is smooth. */
  static final double SLIGHT = 1e-6;

  /** Path lengths differ by less where they are the same place, mm. */
  private static final double ROUNDING = 1e-6;

  /** A part of an area that rounding may take, as a sum of some hundred products. */
  private static final double ROUNDING_SHARE = 1e-12;

  /** No trim line that ends a strip lies further out than this past the developed side, mm. */
  private static final double FURTHER = 300;

  private final List<Vec2> cut;
  private final EdgeRuns runs;
  private final Skeleton skeleton;
  private final GussetSeams seams;

  /** Where each section bends, worked out once for all sides that have it. */
  private final Map<TautPath, List<Double>> bends = new IdentityHashMap<>();

  StripCover(List<Vec2> cut, EdgeRuns runs, Skeleton skeleton, GussetSeams seams) {
    this.cut = cut;
    this.runs = runs;
    this.skeleton = skeleton;
    this.seams = seams;
  }

  /** Area left bare on a side down to a path length, mm2. */
  double bare(int index, Side side, double down) {
    List<Double> levels = levels(index);
    double[] before = new double[levels.size()];
    double[] after = new double[levels.size()];
    for (int k = 0; k < before.length; k++) {
      before[k] = arrisBefore(index, levels.get(k));
      after[k] = arrisAfter(index, levels.get(k));
    }
    List<Vec2> box = stripBox(index, side, before, after);
    List<Vec2> cover = runs.inside(box);
    if (fills(cover, box)) {
      return 0;
    }
    List<Vec2> near = seams.ownSide(index, cover);
    double bare = 0;
    for (int k = 0; k + 1 < before.length; k++) {
      double s0 = levels.get(k);
      double s1 = levels.get(k + 1);
      if (s1 > down + ROUNDING) {
        break;
      }
      List<Vec2> band = band(side, s0, s1, before[k], before[k + 1], after[k], after[k + 1]);
      bare += shortArea(seams.ownSide(index, band), near);
    }
    return bare;
  }

  /** Path lengths at which the wall or one beside it bends. */
  private List<Double> levels(int index) {
    CornerFrame before = skeleton.frame(Math.floorMod(index - 1, skeleton.elements().size()));
    CornerFrame after = skeleton.frame(index);
    List<Double> own =
        bends.computeIfAbsent(skeleton.path(index), path -> path.breaks(WrapProof.PER_ARC));
    if ((before == null || before.even()) && (after == null || after.even())) {
      return own;
    }
    TreeSet<Double> all = new TreeSet<>(own);
    if (before != null) {
      all.addAll(before.bends(false));
    }
    if (after != null) {
      all.addAll(after.bends(true));
    }
    return List.copyOf(all);
  }

  /** How far past its start a side reaches at a path length, up to the arris. */
  private double arrisBefore(int i, double s) {
    int before = Math.floorMod(i - 1, skeleton.elements().size());
    return skeleton.elements().get(before).after() == Fold.NONE
        ? halfTurn(before) * skeleton.path(i).out(s)
        : skeleton.frame(before).arris(false, s);
  }

  private double arrisAfter(int i, double s) {
    return skeleton.elements().get(i).after() == Fold.NONE
        ? halfTurn(i) * skeleton.path(i).out(s)
        : skeleton.frame(i).arris(true, s);
  }

  /**
   * The trapezoid of a side between two path lengths and the arrises beside it; empty where those
   * have met already, as over a bevel deeper than a corner's rounding.
   */
  private static List<Vec2> band(
      Side side, double s0, double s1, double start0, double start1, double end0, double end1) {
    double wide0 = side.length() + start0 + end0;
    double wide1 = side.length() + start1 + end1;
    if (wide0 <= 0 && wide1 <= 0) {
      return List.of();
    }
    double f0 = wide0 < 0 ? wide0 / (wide0 - wide1) : 0;
    double f1 = wide1 < 0 ? wide0 / (wide0 - wide1) : 1;
    return List.of(
        at(side, -mix(start0, start1, f0), mix(s0, s1, f0)),
        at(side, -mix(start0, start1, f1), mix(s0, s1, f1)),
        at(side, side.length() + mix(end0, end1, f1), mix(s0, s1, f1)),
        at(side, side.length() + mix(end0, end1, f0), mix(s0, s1, f0)));
  }

  private static double mix(double a, double b, double t) {
    return t == 0 ? a : t == 1 ? b : a + (b - a) * t;
  }

  private static Vec2 at(Side side, double t, double s) {
    return side.flat(t, s);
  }

  /** Whether the cover's part of a box is all of it, so that nothing in the box is bare. */
  private static boolean fills(List<Vec2> cover, List<Vec2> box) {
    double whole = Polygons.signedArea(box);
    return Polygons.signedArea(cover) > whole * (1 - ROUNDING_SHARE);
  }

  /** What holds one strip: the cover is cut to it first, so that bands are cut from few points. */
  private List<Vec2> stripBox(int index, Side side, double[] before, double[] after) {
    TautPath path = skeleton.path(index);
    double start = Arrays.stream(before).max().orElse(0);
    double stop = Arrays.stream(after).max().orElse(0);
    return box(side, start, stop, path.startX(), path.backStart());
  }

  /**
   * A box about the flat strip of a side, with a mm to spare all round.
   *
   * @param start how far before the side's start it begins
   * @param stop how far past the side's end it ends
   * @param from path length of its inner line
   * @param to path length of its outer line
   */
  private static List<Vec2> box(Side side, double start, double stop, double from, double to) {
    return List.of(
        // The inner line first: most of the cover lies behind it.
        at(side, side.length() + stop + 1, from - 1),
        at(side, -start - 1, from - 1),
        at(side, -start - 1, to + 1),
        at(side, side.length() + stop + 1, to + 1));
  }

  static double shortArea(List<Vec2> target, List<Vec2> near) {
    double whole = Polygons.signedArea(target);
    List<Vec2> anticlockwise = target;
    if (whole < 0) {
      anticlockwise = new ArrayList<>(target);
      java.util.Collections.reverse(anticlockwise);
      whole = -whole;
    }
    return Math.max(0, whole - Polygons.signedArea(Polygons.inside(near, anticlockwise)));
  }

  private double mitreBefore(int i) {
    Element previous = skeleton.previous(i);
    return previous.after() == Fold.NONE
        ? halfTurn(Math.floorMod(i - 1, skeleton.elements().size()))
        : skeleton.frame(Math.floorMod(i - 1, skeleton.elements().size())).mitre();
  }

  private double mitreAfter(int i) {
    return skeleton.elements().get(i).after() == Fold.NONE
        ? halfTurn(i)
        : skeleton.frame(i).mitre();
  }

  /** The mitre of a slight hollow angle without a fold, past which a side has no wall. */
  private double halfTurn(int i) {
    Vec2 u = skeleton.elements().get(i).directionAtEnd();
    Vec2 v = skeleton.next(i).directionAtStart();
    double cross = u.cross(v);
    return cross < -SLIGHT ? Math.tan(Math.atan2(cross, u.dot(v)) / 2) : 0;
  }

  /**
   * The shortest covering on the back of a side: the nearest that the cut line comes to where the
   * back begins, between the mitres of the back.
   *
   * @param begin mm from the side's start where the stretch asked for begins, 0 for all of it
   * @param finish mm from its start where that ends, its length for all of it
   */
  double turnUnder(int index, Side side, double begin, double finish) {
    Vec2 along = side.along();
    Vec2 out = along.right();
    // The seam of a hollow corner is no end of the turn-under: the gusset goes on from there.
    double before = begin > 0 ? 0 : Math.max(0, mitreBefore(index));
    double after = finish < side.length() ? 0 : Math.max(0, mitreAfter(index));
    TautPath path = skeleton.path(index);
    double back = path.backStart();
    double x0 = path.out(back);
    double shortest = Double.POSITIVE_INFINITY;
    boolean slit =
        skeleton.elements().get(index).after() == Fold.GUSSET
            || skeleton.previous(index).after() == Fold.GUSSET;
    EdgeRuns own = slit ? new EdgeRuns(seams.ownSide(index, cut)) : runs;
    // On the back the mitres run inwards as fast as the covering does, so it is widest there.
    double deep = Math.max(0, x0) + WrapProof.SLACK;
    double furthest = path.developed() + FURTHER;
    List<Vec2> box = box(side, deep * before, deep * after, back, furthest);
    for (int edge : own.over(box)) {
      Vec2 p = own.from(edge);
      Vec2 q = own.to(edge);
      Vec2 a = p.minus(side.from());
      Vec2 b = q.minus(side.from());
      if (slit && seams.alongSeam(index, p, q)) {
        continue;
      }
      double[] span = {0, 1};
      double ta = a.dot(along);
      double sa = a.dot(out);
      double tb = b.dot(along);
      double sb = b.dot(out);
      if (sa > furthest && sb > furthest) {
        continue;
      }
      keep(span, back - WrapProof.SLACK - sa, back - WrapProof.SLACK - sb);
      keep(
          span, mitred(ta - begin, sa, before, back, x0), mitred(tb - begin, sb, before, back, x0));
      keep(
          span, mitred(finish - ta, sa, after, back, x0), mitred(finish - tb, sb, after, back, x0));
      if (span[1] - span[0] > 1e-9) {
        double s = Math.min(sa + (sb - sa) * span[0], sa + (sb - sa) * span[1]);
        shortest = Math.min(shortest, s - back - x0);
      }
    }
    return shortest;
  }

  /**
   * Negative inside: how far a point lies beyond the mitre line of the back. What lies on that line
   * is no part of the side: where a run of another turn-under begins, the cut line steps along it.
   */
  private static double mitred(double t, double s, double mitre, double back, double x0) {
    return (s - back - x0) * mitre - t + ROUNDING;
  }

  /** Narrows a span of an edge to where a function linear along it is not over zero. */
  private static void keep(double[] span, double fa, double fb) {
    if (fa > 0 && fb > 0) {
      span[1] = span[0] - 1;
      return;
    }
    if (fa > 0) {
      span[0] = Math.max(span[0], fa / (fa - fb));
    } else if (fb > 0) {
      span[1] = Math.min(span[1], fa / (fa - fb));
    }
  }
}
