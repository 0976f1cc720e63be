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
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.measure.Sentence;
import padwright.shape.EdgeEnds;
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

  /** A joint that turns less than this, radians, is smooth. */
  private static final double SLIGHT = 1e-6;

  /** An edge this near to a seam line lies along it, mm. */
  private static final double ON_SEAM = 1e-6;

  private final List<Vec2> cut;
  private final Skeleton skeleton;
  private final TautPath path;
  private final List<Gusset> gussets;
  private final List<Path> clips;
  private final EdgeEnds ends;
  private final List<Double> breaks;
  private double bare;
  private double leastTurnUnder = Double.POSITIVE_INFINITY;
  private double leastHiding = Double.POSITIVE_INFINITY;
  private double worstEase;

  private double worstStretch;
  private double worstShort = Double.NEGATIVE_INFINITY;
  private double shortOf;

  private WrapProof(
      List<Vec2> cut,
      Skeleton skeleton,
      TautPath path,
      List<Gusset> gussets,
      List<Path> clips,
      EdgeEnds ends) {
    this.cut = cut;
    this.skeleton = skeleton;
    this.path = path;
    this.gussets = gussets;
    this.clips = clips;
    this.ends = ends;
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
    EdgeEnds ends = EdgeEnds.all(turnUnder);
    return check(cut, skeleton, path, List.of(), List.of(), ends, flapStrain);
  }

  /**
   * The same with slits and what is let into them.
   *
   * @param gussets in the order of the hollow corners along the skeleton
   * @param clips cuts in the turn-under along hollow curves
   * @param ends what each side is to have
   */
  public static WrapReport check(
      List<Vec2> cut,
      Skeleton skeleton,
      TautPath path,
      List<Gusset> gussets,
      List<Path> clips,
      EdgeEnds ends,
      double flapStrain) {
    WrapProof proof = new WrapProof(cut, skeleton, path, gussets, clips, ends);
    proof.run();
    return proof.report(flapStrain);
  }

  private void run() {
    face();
    Map<Integer, List<Sweep>> rounded = new TreeMap<>();
    for (int i = 0; i < skeleton.elements().size(); i++) {
      Element e = skeleton.elements().get(i);
      if (ends.of(e.name()).bare()) {
        continue;
      }
      if (e instanceof Side side) {
        strip(i, side);
      } else if (e instanceof Sweep sweep && sweep.hollow()) {
        hollow(sweep);
      } else if (e instanceof Sweep sweep) {
        rounded.computeIfAbsent(sweep.site(), k -> new ArrayList<>()).add(sweep);
      }
      if (e.after() == Fold.GUSSET) {
        gusset(i);
      } else if (e.after() != Fold.NONE) {
        corner(skeleton.frame(i), e.after());
      } else if (!ends.of(e.name()).bare() && !ends.of(skeleton.next(i).name()).bare()) {
        joint(i);
      }
    }
    rounded.values().forEach(this::sweeps);
    for (Path clip : clips) {
      clip(clip);
    }
  }

  /** The flat top inside the place where the covering begins to bend. */
  private void face() {
    Path flat = Offset.by(skeleton.outline(), path.startX()).orElse(null);
    if (flat == null) {
      return;
    }
    List<Vec2> outline = flat.flattened(0.05);
    double whole = Polygons.signedArea(outline);
    double covered =
        Offset.convex(flat)
            ? Polygons.signedArea(Polygons.inside(cut, outline))
            : Polygons.commonArea(cut, outline);
    bare += Math.max(0, whole - covered);
  }

  /** Where two stretches meet at a slight angle without a fold, the covering gives. */
  private void joint(int i) {
    Element a = skeleton.elements().get(i);
    Vec2 u = a.directionAtEnd();
    Vec2 v = skeleton.next(i).directionAtStart();
    double turn = Math.atan2(u.cross(v), u.dot(v));
    if (Math.abs(turn) < SLIGHT) {
      return;
    }
    double along = (a.segment().length() + skeleton.next(i).segment().length()) / 2;
    double need = path.backStart();
    double strain = Math.abs(turn) * (need - path.out(need)) / (along + need);
    if (turn > 0) {
      worstEase = Math.max(worstEase, strain);
    } else {
      worstStretch = Math.max(worstStretch, strain);
    }
  }

  /** A gusset against what its hollow corner leaves open on both walls. */
  private void gusset(int i) {
    Gusset piece = gussetAfter(i);
    if (piece == null) {
      return;
    }
    CornerFrame f = skeleton.frame(i);
    double tip = Gusset.tip(f, path);
    List<Double> levels = path.breaks(Gusset.PER_ARC);
    for (int k = 0; k + 1 < levels.size(); k++) {
      double s0 = Math.max(tip, levels.get(k));
      double s1 = levels.get(k + 1);
      if (s1 <= s0) {
        continue;
      }
      List<Vec2> open =
          List.of(
              new Vec2(0, s0),
              new Vec2(seamWidth(f, s0), s0),
              new Vec2(seamWidth(f, s1), s1),
              new Vec2(0, s1));
      // Both halves are alike.
      bare += 2 * shortArea(open, piece.half());
    }
    double reach = piece.half().stream().mapToDouble(Vec2::y).max().orElse(0);
    // It ends where the trim line of the sides beside it does, or is glued with them.
    if (ends.of(skeleton.elements().get(i).name()).turned()) {
      leastTurnUnder =
          Math.min(leastTurnUnder, reach - path.backStart() - path.out(path.backStart()));
    }
  }

  private Gusset gussetAfter(int i) {
    int before = 0;
    for (int k = 0; k < i; k++) {
      before += skeleton.elements().get(k).after() == Fold.GUSSET ? 1 : 0;
    }
    if (before >= gussets.size()) {
      bare += path.backStart() * path.backStart();
      return null;
    }
    return gussets.get(before);
  }

  /** From the arris to the seam in the covering, on the wall at a path length. */
  private double seamWidth(CornerFrame f, double s) {
    Vec2[] seam = Gusset.seamLine(f, path, true);
    double s0 = f.out(true, seam[0]);
    double s1 = f.out(true, seam[1]);
    double p0 = f.past(true, seam[0]);
    double p1 = f.past(true, seam[1]);
    return Math.max(0, f.fold(path, s) - (p0 + (p1 - p0) * (s - s0) / (s1 - s0)));
  }

  /** A clip may open on the back, not on the wall. */
  private void clip(Path clip) {
    double least = Double.POSITIVE_INFINITY;
    for (Segment s : skeleton.outline().segments()) {
      least = Math.min(least, s.distanceTo(clip.start()));
    }
    if (least < path.backStart() - SLACK) {
      bare += (path.backStart() - least) * (path.backStart() - least) + BARE;
    }
  }

  private void strip(int index, Side side) {
    Vec2 along = side.along();
    Vec2 out = along.right();
    double before = mitreBefore(index);
    double after = mitreAfter(index);
    List<Vec2> near = ownSide(index, nearStrip(side, before, after));
    double covered = ends.of(side.name()).turned() ? path.backStart() : path.wallEnd();
    for (int k = 0; k + 1 < breaks.size(); k++) {
      double s0 = breaks.get(k);
      double s1 = breaks.get(k + 1);
      if (s1 > covered + SLACK) {
        break;
      }
      bare += shortArea(ownSide(index, band(side, before, after, s0, s1)), near);
    }
    if (ends.of(side.name()).turned()) {
      reaches(side.name(), turnUnder(index, side, out, along, before, after));
    }
  }

  /** Notes the least covering on the back of a side. */
  private void reaches(String side, double least) {
    if (Double.isInfinite(least)) {
      // No edge was met: the mitres beside a narrow facet meet before the covering ends.
      return;
    }
    leastTurnUnder = Math.min(leastTurnUnder, least);
    double wanted = ends.of(side).turnUnder();
    if (wanted - least > worstShort) {
      worstShort = wanted - least;
      shortOf = wanted;
    }
  }

  /** What of a strip's flat lies on its own side of the seams at hollow corners beside it. */
  private List<Vec2> ownSide(int i, List<Vec2> polygon) {
    List<Vec2> own = polygon;
    if (skeleton.elements().get(i).after() == Fold.GUSSET) {
      own = beforeSeam(own, skeleton.frame(i), true);
    }
    if (skeleton.previous(i).after() == Fold.GUSSET) {
      int before = Math.floorMod(i - 1, skeleton.elements().size());
      own = beforeSeam(own, skeleton.frame(before), false);
    }
    return own;
  }

  private List<Vec2> beforeSeam(List<Vec2> polygon, CornerFrame f, boolean first) {
    Vec2[] seam = Gusset.seamLine(f, path, first);
    Vec2 d = seam[1].minus(seam[0]);
    Vec2 past = first ? f.before() : f.after().times(-1);
    Vec2 normal = d.left().dot(past) > 0 ? d.left() : d.right();
    return Polygons.below(polygon, normal, normal.dot(seam[0]));
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
    double least = 0;
    for (double s : breaks) {
      wide = Math.max(wide, path.out(s));
      least = Math.min(least, path.out(s));
    }
    // A mitre at a hollow corner runs the other way: there the furthest is where x is least.
    double start = before < 0 ? least * before : wide * before;
    double stop = after < 0 ? least * after : wide * after;
    List<Vec2> box =
        List.of(
            at(side, -start - 1, end),
            at(side, side.length() + stop + 1, end),
            at(side, side.length() + stop + 1, path.startX() - 1),
            at(side, -start - 1, path.startX() - 1));
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
   */
  private double turnUnder(
      int index, Side side, Vec2 out, Vec2 along, double before, double after) {
    double back = path.backStart();
    double x0 = path.out(back);
    List<Vec2> cut = ownSide(index, this.cut);
    double shortest = Double.POSITIVE_INFINITY;
    // The seam of a hollow corner is no end of the turn-under: the gusset goes on from there.
    before = Math.max(0, before);
    after = Math.max(0, after);
    // On the back the mitres run inwards as fast as the covering does.
    for (int i = 0; i < cut.size(); i++) {
      Vec2 a = cut.get(i).minus(side.from());
      Vec2 b = cut.get((i + 1) % cut.size()).minus(side.from());
      if (alongSeam(index, cut.get(i), cut.get((i + 1) % cut.size()))) {
        continue;
      }
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
        shortest = Math.min(shortest, s - back - x0);
      }
    }
    return shortest;
  }

  private boolean alongSeam(int i, Vec2 a, Vec2 b) {
    int before = Math.floorMod(i - 1, skeleton.elements().size());
    return (skeleton.elements().get(i).after() == Fold.GUSSET
            && onSeam(skeleton.frame(i), true, a, b))
        || (skeleton.elements().get(before).after() == Fold.GUSSET
            && onSeam(skeleton.frame(before), false, a, b));
  }

  private boolean onSeam(CornerFrame f, boolean first, Vec2 a, Vec2 b) {
    Vec2[] seam = Gusset.seamLine(f, path, first);
    Vec2 d = seam[1].minus(seam[0]).unit();
    return Math.abs(d.cross(a.minus(seam[0]))) < ON_SEAM
        && Math.abs(d.cross(b.minus(seam[0]))) < ON_SEAM;
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
    List<SweepCover> covers = sweeps.stream().map(this::sweepCover).toList();
    double need = needed(sweeps.get(0).name());
    for (int i = 0; i < sweeps.size(); i++) {
      Sweep sweep = sweeps.get(i);
      double reach = covers.get(i).leastReach();
      if (reach < need - SLACK) {
        bare += (need - reach) * sweep.turn() * sweep.radius();
      }
      double end = Math.max(-sweep.radius(), path.out(need));
      worstEase = Math.max(worstEase, (need - end) / (sweep.radius() + need));
    }
    String name = sweeps.get(0).name();
    if (ends.of(name).turned()) {
      reaches(name, SweepCover.closedReach(covers, path) - need - path.out(need));
    }
  }

  /** Path length down to which a side has to be covered whatever lies on the back. */
  private double needed(String side) {
    return ends.of(side).turned() ? path.backStart() : path.wallEnd();
  }

  private SweepCover sweepCover(Sweep sweep) {
    int i = skeleton.elements().indexOf(sweep);
    int before = Math.floorMod(i - 1, skeleton.elements().size());
    return new SweepCover(cut, sweep, path, skeleton.frame(before), skeleton.frame(i));
  }

  /** A hollow stretch, along which the covering is stretched. */
  private void hollow(Sweep sweep) {
    double need = needed(sweep.name());
    double reach = sweepCover(sweep).leastReach();
    if (reach < need - SLACK) {
      bare += (need - reach) * -sweep.turn() * sweep.radius();
    }
    if (ends.of(sweep.name()).turned()) {
      reaches(sweep.name(), reach - need - path.out(need));
    }
    double flat = sweep.radius() - need;
    double strain =
        flat <= 0 ? Double.POSITIVE_INFINITY : (sweep.radius() - path.out(need)) / flat - 1;
    worstStretch = Math.max(worstStretch, strain);
  }

  private WrapReport report(double flapStrain) {
    List<String> failures = new ArrayList<>();
    if (Double.isInfinite(leastTurnUnder)) {
      // No edge of the cover was met over the back: there is none to lie there.
      leastTurnUnder = 0;
      worstShort = ends.deepest();
      shortOf = worstShort;
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
    if (worstShort > SHORTFALL + SLACK) {
      failures.add(
          Sentence.of(
              "the turn-under is %.1f mm somewhere, more than %.0f short of %.1f",
              shortOf - worstShort, SHORTFALL, shortOf));
    }
    return new WrapReport(
        failures.isEmpty(),
        bare > BARE ? bare : 0,
        leastTurnUnder,
        worstShort,
        leastHiding,
        worstEase,
        worstStretch,
        flapStrain,
        failures);
  }
}
