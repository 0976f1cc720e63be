package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import padwright.cover.Skeleton.Element;
import padwright.cover.Skeleton.Side;
import padwright.cover.Skeleton.Sweep;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.measure.Sentence;
import padwright.shape.TautPath;

/**
 * Wraps a cut cover back on to the pad and looks whether it covers. It is given the cut line, the
 * folds and the solid, and nothing of how the cut line was found: not the developed side, not the
 * relief stop, not the turn-under.
 *
 * <p>Each side of the solid is a strip that unrolls without strain, so a stretch of it between two
 * path lengths is a trapezoid between its mitre lines. The cover's part in that trapezoid is found
 * by clipping; where its area falls short, the pad is bare. Raw edges that end up on a wall are
 * measured against the fold that hides them, and the turn-under where it ends.
 */
public final class WrapProof {
  /** A raw edge on a wall must lie this far from the fold that hides it, mm; own choice. */
  public static final double HIDING = 8;

  /** The turn-under may be this much short at the trim line, mm; own choice. */
  public static final double SHORTFALL = 3;

  /** Bare area below this is rounding, mm2: a hundredth of a mm along a 300 mm side. */
  static final double BARE = 3;

  /** Rounding allowed on a length, mm: ten times what flattening an arc costs. */
  private static final double SLACK = 0.05;

  /** Step in which a raw edge is walked along, mm; its ends are always met. */
  private static final double WALK = 2;

  private static final int PER_ARC = 6;

  private final List<Vec2> cut;
  private final Skeleton skeleton;
  private final TautPath path;
  private final List<Double> breaks;
  private double bare;
  private double leastTurnUnder = Double.POSITIVE_INFINITY;
  private double leastHiding = Double.POSITIVE_INFINITY;
  private double worstEase;

  private WrapProof(List<Vec2> cut, Skeleton skeleton, TautPath path) {
    this.cut = cut;
    this.skeleton = skeleton;
    this.path = path;
    this.breaks = path.breaks(PER_ARC);
  }

  /**
   * @param cut the cover at its trim line, anticlockwise in the frame of the base outline, stretch
   *     allowance undone, arcs flattened
   * @param skeleton the base outline with its folds
   * @param path the section of the solid; only its way down to the back is used
   * @param turnUnder what the back is to have
   * @param flapStrain known strain of hidden flaps, reported on
   */
  public static WrapReport check(
      List<Vec2> cut, Skeleton skeleton, TautPath path, double turnUnder, double flapStrain) {
    WrapProof proof = new WrapProof(cut, skeleton, path);
    proof.run();
    return proof.report(turnUnder, flapStrain);
  }

  private void run() {
    face();
    Map<Integer, List<Sweep>> rounded = new TreeMap<>();
    for (int i = 0; i < skeleton.elements().size(); i++) {
      Element e = skeleton.elements().get(i);
      if (e instanceof Side side) {
        strip(i, side);
        if (side.after() != Fold.NONE) {
          corner(skeleton.frame(i), side.after());
        }
      } else if (e instanceof Sweep sweep) {
        rounded.computeIfAbsent(sweep.corner(), k -> new ArrayList<>()).add(sweep);
      }
    }
    rounded.values().forEach(this::sweeps);
  }

  /** The flat top inside the place where the covering begins to bend. */
  private void face() {
    Path flat = Offset.by(skeleton.outline(), path.startX()).orElse(null);
    if (flat == null) {
      return;
    }
    List<Vec2> outline = flat.flattened(0.05);
    double whole = Polygons.signedArea(outline);
    bare += Math.max(0, whole - Polygons.signedArea(Polygons.inside(cut, outline)));
  }

  private void strip(int index, Side side) {
    Vec2 along = side.along();
    Vec2 out = along.right();
    double before = mitreBefore(index);
    double after = mitreAfter(index);
    List<Vec2> near = nearStrip(side, before, after);
    for (int k = 0; k + 1 < breaks.size(); k++) {
      double s0 = breaks.get(k);
      double s1 = breaks.get(k + 1);
      bare += shortArea(band(side, before, after, s0, s1), near);
    }
    turnUnder(side, out, along, before, after);
  }

  /**
   * The trapezoid of a side between two path lengths and its mitre lines; empty where the mitres
   * have met already, as over a bevel deeper than a corner's rounding.
   */
  private List<Vec2> band(Side side, double before, double after, double s0, double s1) {
    double x0 = path.out(s0);
    double x1 = path.out(s1);
    double wide0 = side.length() + x0 * (before + after);
    double wide1 = side.length() + x1 * (before + after);
    if (wide0 <= 0 && wide1 <= 0) {
      return List.of();
    }
    double a0 = s0;
    double a1 = s1;
    if (wide0 < 0) {
      a0 = s0 + (s1 - s0) * wide0 / (wide0 - wide1);
      x0 = x0 + (x1 - x0) * wide0 / (wide0 - wide1);
    } else if (wide1 < 0) {
      a1 = s0 + (s1 - s0) * wide0 / (wide0 - wide1);
      x1 = x0 + (x1 - x0) * wide0 / (wide0 - wide1);
    }
    return List.of(
        at(side, -x0 * before, a0),
        at(side, -x1 * before, a1),
        at(side, side.length() + x1 * after, a1),
        at(side, side.length() + x0 * after, a0));
  }

  private static Vec2 at(Side side, double t, double s) {
    return side.flat(t, s);
  }

  /** The cover's part near one strip, so that its bands are cut from few points. */
  private List<Vec2> nearStrip(Side side, double before, double after) {
    double end = path.backStart() + 1;
    double wide = 0;
    for (double s : breaks) {
      wide = Math.max(wide, path.out(s));
    }
    List<Vec2> box =
        List.of(
            at(side, -wide * before - 1, end),
            at(side, side.length() + wide * after + 1, end),
            at(side, side.length() + wide * after + 1, path.startX() - 1),
            at(side, -wide * before - 1, path.startX() - 1));
    return Polygons.inside(cut, box);
  }

  private static double shortArea(List<Vec2> target, List<Vec2> near) {
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
        ? 0
        : skeleton.frame(Math.floorMod(i - 1, skeleton.elements().size())).mitre();
  }

  private double mitreAfter(int i) {
    return skeleton.elements().get(i).after() == Fold.NONE ? 0 : skeleton.frame(i).mitre();
  }

  /**
   * The shortest covering on the back of a side: the nearest that the cut line comes to where the
   * back begins, between the mitres of the back.
   */
  private void turnUnder(Side side, Vec2 out, Vec2 along, double before, double after) {
    double back = path.backStart();
    double x0 = path.out(back);
    // On the back the mitres run inwards as fast as the covering does.
    for (int i = 0; i < cut.size(); i++) {
      Vec2 a = cut.get(i).minus(side.from());
      Vec2 b = cut.get((i + 1) % cut.size()).minus(side.from());
      double[] span = {0, 1};
      double ta = a.dot(along);
      double sa = a.dot(out);
      double tb = b.dot(along);
      double sb = b.dot(out);
      keep(span, back - SLACK - sa, back - SLACK - sb);
      keep(span, mitred(ta, sa, before, back, x0), mitred(tb, sb, before, back, x0));
      keep(
          span,
          mitred(side.length() - ta, sa, after, back, x0),
          mitred(side.length() - tb, sb, after, back, x0));
      if (span[1] - span[0] > 1e-9) {
        double s = Math.min(sa + (sb - sa) * span[0], sa + (sb - sa) * span[1]);
        leastTurnUnder = Math.min(leastTurnUnder, s - back - x0);
      }
    }
  }

  /** Negative inside: how far a point lies beyond the mitre line of the back. */
  private static double mitred(double t, double s, double mitre, double back, double x0) {
    return (s - back - x0) * mitre - t - 1e-9;
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

  /** Raw edges in the surplus of a corner, seen from both of its sides. */
  private void corner(CornerFrame f, Fold fold) {
    // No point of the surplus that lands on a wall is further from the corner than this.
    double reach = Math.max(path.backStart(), -path.startX()) / Math.cos(f.turn() / 2) + 1;
    FoldMap map = new FoldMap(f, fold, path);
    for (int i = 0; i < cut.size(); i++) {
      Vec2 a = cut.get(i);
      Vec2 d = cut.get((i + 1) % cut.size()).minus(a);
      double length = Math.max(1e-9, d.length());
      double foot = f.apex().minus(a).dot(d) / length;
      double aside = Math.abs(f.apex().minus(a).cross(d)) / length;
      if (aside > reach) {
        continue;
      }
      // Only the stretch of the edge within reach is walked along.
      double half = Math.sqrt(reach * reach - aside * aside);
      double from = Math.max(0, foot - half);
      double to = Math.min(length, foot + half);
      int steps = Math.max(1, (int) Math.ceil((to - from) / WALK));
      for (int k = 0; from <= to && k <= steps; k++) {
        Vec2 p = a.along(d, (from + (to - from) * k / steps) / length);
        leastHiding = Math.min(leastHiding, Math.min(map.hiding(true, p), map.hiding(false, p)));
      }
    }
  }

  /** The rounded stretches of one corner, over which the covering is eased. */
  private void sweeps(List<Sweep> sweeps) {
    List<SweepCover> covers = sweeps.stream().map(s -> new SweepCover(cut, s)).toList();
    double need = path.backStart();
    for (int i = 0; i < sweeps.size(); i++) {
      Sweep sweep = sweeps.get(i);
      double reach = covers.get(i).leastReach();
      if (reach < need - SLACK) {
        bare += (need - reach) * sweep.turn() * sweep.radius();
      }
      double end = Math.max(-sweep.radius(), path.out(need));
      worstEase = Math.max(worstEase, (need - end) / (sweep.radius() + need));
    }
    double reach = SweepCover.closedReach(covers, path);
    leastTurnUnder = Math.min(leastTurnUnder, reach - need - path.out(need));
  }

  private WrapReport report(double turnUnder, double flapStrain) {
    List<String> failures = new ArrayList<>();
    if (Double.isInfinite(leastTurnUnder)) {
      // No edge of the cover was met over the back: there is none to lie there.
      leastTurnUnder = 0;
    }
    if (bare > BARE) {
      failures.add(Sentence.of("%.0f mm2 of face or sides is bare", bare));
    }
    if (leastHiding < HIDING - SLACK) {
      failures.add(
          Sentence.of(
              "a raw edge on a wall lies %.1f mm from the fold that hides it, under %.0f",
              leastHiding, HIDING));
    }
    if (leastTurnUnder < turnUnder - SHORTFALL - SLACK) {
      failures.add(
          Sentence.of(
              "the turn-under is %.1f mm somewhere, more than %.0f short of %.1f",
              leastTurnUnder, SHORTFALL, turnUnder));
    }
    return new WrapReport(
        failures.isEmpty(),
        bare > BARE ? bare : 0,
        leastTurnUnder,
        leastHiding,
        worstEase,
        flapStrain,
        failures);
  }
}
