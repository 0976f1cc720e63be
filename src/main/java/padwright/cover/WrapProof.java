package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import padwright.cover.Skeleton.Element;
import padwright.cover.Skeleton.Side;
import padwright.cover.Skeleton.Sweep;
import padwright.geometry.Boxes;
import padwright.geometry.EdgeRuns;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
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
  static final double SLACK = 0.05;

  static final int PER_ARC = 6;

  private final List<Vec2> cut;
  private final EdgeRuns runs;
  private final Skeleton skeleton;
  private final List<Gusset> gussets;
  private final List<Path> clips;
  private final EdgeEnds ends;
  private final GussetSeams seams;
  private final StripCover strips;
  private double bare;
  private double leastTurnUnder = Double.POSITIVE_INFINITY;
  private double leastHiding = Double.POSITIVE_INFINITY;
  private double worstEase;

  private double worstStretch;
  private double worstShort = Double.NEGATIVE_INFINITY;
  private double shortOf;

  private WrapProof(
      List<Vec2> cut, Skeleton skeleton, List<Gusset> gussets, List<Path> clips, EdgeEnds ends) {
    this.cut = cut;
    this.runs = new EdgeRuns(cut);
    this.skeleton = skeleton;
    this.gussets = gussets;
    this.clips = clips;
    this.ends = ends;
    this.seams = new GussetSeams(skeleton);
    this.strips = new StripCover(cut, runs, skeleton, seams);
  }

  /**
   * @param cut the cover at its trim line, anticlockwise in the frame of the base outline, stretch
   *     allowance undone, arcs flattened
   * @param skeleton the base outline with its folds, and the sections of the solid, of which only
   *     the way down to the back is used
   * @param turnUnder what the back is to have
   * @param flapStrain known strain of hidden flaps, reported on
   */
  public static WrapReport check(
      List<Vec2> cut, Skeleton skeleton, double turnUnder, double flapStrain) {
    EdgeEnds ends = EdgeEnds.all(turnUnder);
    return check(cut, skeleton, List.of(), List.of(), ends, flapStrain);
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
      List<Gusset> gussets,
      List<Path> clips,
      EdgeEnds ends,
      double flapStrain) {
    WrapProof proof = new WrapProof(cut, skeleton, gussets, clips, ends);
    proof.run();
    return proof.report(flapStrain);
  }

  private void run() {
    face();
    Map<Integer, List<Integer>> rounded = new TreeMap<>();
    for (int i = 0; i < skeleton.elements().size(); i++) {
      Element e = skeleton.elements().get(i);
      if (ends.of(e.name()).bare()) {
        continue;
      }
      if (e instanceof Side side) {
        strip(i, side);
      } else if (e instanceof Sweep sweep && sweep.hollow()) {
        hollow(i, sweep);
      } else if (e instanceof Sweep sweep) {
        rounded.computeIfAbsent(sweep.site(), k -> new ArrayList<>()).add(i);
      }
      if (e.after() == Fold.GUSSET) {
        gusset(i);
      } else if (e.after() != Fold.NONE) {
        corner(i, skeleton.frame(i), e.after());
      } else if (!ends.of(e.name()).bare() && !ends.of(skeleton.next(i).name()).bare()) {
        joint(i);
      }
    }
    rounded.values().forEach(this::sweeps);
    if (!clips.isEmpty()) {
      clips();
    }
  }

  /** The flat top inside the place where the covering begins to bend. */
  private void face() {
    Path flat = skeleton.flatTop().orElse(null);
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
    if (Math.abs(turn) < StripCover.SLIGHT) {
      return;
    }
    double along = (a.segment().length() + skeleton.next(i).segment().length()) / 2;
    TautPath path = skeleton.path(i);
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
    TautPath path = skeleton.path(i);
    bare += seams.openBeside(i, piece);
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
      TautPath path = skeleton.path(i);
      bare += path.backStart() * path.backStart();
      return null;
    }
    return gussets.get(before);
  }

  /** Clips may open on the back, not on the wall. */
  private void clips() {
    Boxes walls = Boxes.of(skeleton.outline().segments());
    double deepest = 0;
    for (int i = 0; i < skeleton.elements().size(); i++) {
      deepest = Math.max(deepest, skeleton.path(i).backStart());
    }
    for (Path clip : clips) {
      clip(clip, walls, deepest);
    }
  }

  private void clip(Path clip, Boxes walls, double deepest) {
    double worst = 0;
    for (int i : walls.near(clip.start(), deepest)) {
      double away = skeleton.segment(i).distanceTo(clip.start());
      worst = Math.max(worst, skeleton.path(i).backStart() - away);
    }
    if (worst > SLACK) {
      bare += worst * worst + BARE;
    }
  }

  private void strip(int index, Side side) {
    bare += strips.bare(index, side, needed(index));
    skeleton
        .stretches(index, ends)
        .forEach(s -> reaches(s.name(), strips.turnUnder(index, side, s.from(), s.to())));
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

  /** Raw edges in the surplus of a corner, seen from both of its sides. */
  private void corner(int i, CornerFrame f, Fold fold) {
    boolean before = ends.of(skeleton.elements().get(i).name()).turned();
    boolean after = ends.of(skeleton.next(i).name()).turned();
    double least = RawEdges.leastHiding(runs, f, () -> new FoldMap(f, fold, before, after));
    leastHiding = Math.min(leastHiding, least);
  }

  /** The rounded stretches of one corner, over which the covering is eased. */
  private void sweeps(List<Integer> elements) {
    List<Sweep> sweeps = new ArrayList<>();
    List<SweepCover> covers = new ArrayList<>();
    for (int i : elements) {
      Sweep sweep = (Sweep) skeleton.elements().get(i);
      sweeps.add(sweep);
      covers.add(sweepCover(i, sweep));
    }
    int at = elements.get(0);
    TautPath path = skeleton.path(at);
    double need = needed(at);
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

  /** Path length down to which an element has to be covered whatever lies on the back. */
  private double needed(int i) {
    TautPath path = skeleton.path(i);
    return ends.of(skeleton.elements().get(i).name()).turned() ? path.backStart() : path.wallEnd();
  }

  private SweepCover sweepCover(int i, Sweep sweep) {
    int before = Math.floorMod(i - 1, skeleton.elements().size());
    return new SweepCover(runs, sweep, skeleton.path(i), skeleton.frame(before), skeleton.frame(i));
  }

  /** A hollow stretch, along which the covering is stretched. */
  private void hollow(int i, Sweep sweep) {
    TautPath path = skeleton.path(i);
    double need = needed(i);
    double reach = sweepCover(i, sweep).leastReach();
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
      boolean turned = skeleton.elements().stream().anyMatch(e -> ends.of(e.name()).turned());
      worstShort = turned ? ends.deepest() : 0;
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
