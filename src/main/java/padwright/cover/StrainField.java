package padwright.cover;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import padwright.cover.LaidCover.Sheet;
import padwright.cover.LaidCover.Wall;
import padwright.cover.Skeleton.Element;
import padwright.cover.Skeleton.Side;
import padwright.cover.Skeleton.Sweep;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.EdgeRuns;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.shape.EdgeEnds;
import padwright.shape.Outlines;
import padwright.shape.TautPath;

/**
 * Where on back and sides the covering has to give, and by how much: areas that lie within one step
 * of strain each, in the frames of {@link LaidCover}. Round arcs are eased and hollow ones
 * stretched by the ratio of two radii; a slight hollow corner is stretched over a set length on
 * either side; a flap out of sight is strained where its fold bends. Lengths in mm, strains are
 * fractions of the covering's length on the flat. A joint under {@link Outlines#CORNER} has no
 * area.
 */
public final class StrainField {
  /**
   * Where a step begins, fractions: what is under the first no hand feels. Own choice; a step also
   * begins at what the covering takes.
   */
  static final double[] STEPS = {0.005, 0.01, 0.02, 0.04, 0.06, 0.08, 0.1, 0.15, 0.2, 0.3, 0.5};

  /** Two steps nearer than this are one. */
  private static final double SAME_STEP = 1e-3;

  private final LaidCover laid;
  private final CoverPlan plan;
  private final Skeleton skeleton;
  private final EdgeEnds ends;
  private final double easeTaken;
  private final double stretchTaken;
  private final SweepStrain[] sweeps;

  /** What a strain does to the covering. */
  public enum Kind {
    /** It has too much length, which is worked in. */
    EASED,
    /** It has too little length, and is pulled. */
    STRETCHED,
    /** It is pulled on one edge and gathered on the other, hidden under a fold. An estimate. */
    FLAP
  }

  /**
   * A part of the covering whose strain lies within one step.
   *
   * @param least strain in it, a fraction, 0 or more
   * @param most strain in it; infinite where the covering cannot come to lie
   * @param over more than the covering takes; never of a flap, for which nothing is known
   * @param polygon its corners
   */
  public record Area(Kind kind, double least, double most, boolean over, List<Vec2> polygon) {
    public Area {
      polygon = List.copyOf(polygon);
    }
  }

  /**
   * The largest strains of one side, fractions, 0 where there is none.
   *
   * @param eased at the back arris, or where an open side ends
   * @param easedUnder on the back, less what is notched out
   * @param atTrim whether that is at the trim line
   * @param stretched on the wall and down to the tips of the clips; infinite where it cannot be
   */
  public record OfSide(double eased, double easedUnder, boolean atTrim, double stretched) {}

  /**
   * @param trim the trimmed cover, its arcs as chords, which {@code laid} was made from
   * @param easeTaken part of its length that the covering can be eased by
   * @param stretchTaken part of its length that it can be stretched by
   */
  public StrainField(
      List<Vec2> trim,
      CoverPlan plan,
      LaidCover laid,
      EdgeEnds ends,
      double easeTaken,
      double stretchTaken) {
    this.laid = laid;
    this.plan = plan;
    this.ends = ends;
    this.easeTaken = easeTaken;
    this.stretchTaken = stretchTaken;
    skeleton = plan.skeleton();
    int n = skeleton.elements().size();
    sweeps = new SweepStrain[n];
    EdgeRuns runs = null;
    for (int i = 0; i < n; i++) {
      if (skeleton.elements().get(i) instanceof Sweep sweep && !ends.of(sweep.name()).bare()) {
        TautPath path = skeleton.path(i);
        DoubleUnaryOperator notched = s -> 0;
        if (plan.corners().get(sweep.site()).treatment() == Treatment.NOTCHES) {
          runs = runs == null ? new EdgeRuns(trim) : runs;
          CornerFrame before = skeleton.frame(Math.floorMod(i - 1, n));
          notched = new SweepCover(runs, sweep, path, before, skeleton.frame(i))::notched;
        }
        sweeps[i] = new SweepStrain(sweep, path, open(sweep, path), notched);
      }
    }
  }

  /** Path length at which the clips of a hollow stretch begin. */
  private double open(Sweep sweep, TautPath path) {
    double open = Double.POSITIVE_INFINITY;
    for (int i = 0; i < plan.clips().size() && sweep.hollow(); i++) {
      Vec2 tip = plan.clips().get(i).start();
      double out = sweep.out(tip);
      if (out > path.backStart()
          && out < path.developed()
          && sweep.into(sweep.angle(tip)) <= -sweep.turn()) {
        open = Math.min(open, out);
      }
    }
    return open;
  }

  private double[] steps(double taken) {
    double[] apart = Arrays.stream(STEPS).filter(s -> Math.abs(s - taken) > SAME_STEP).toArray();
    return DoubleStream.concat(Arrays.stream(apart), DoubleStream.of(taken)).sorted().toArray();
  }

  private double[] steps(Sweep sweep) {
    return steps(sweep.hollow() ? stretchTaken : easeTaken);
  }

  /** What one side of the wall has to give, in numbers. */
  public OfSide of(Wall w) {
    double eased = 0;
    double under = 0;
    double atTrim = 0;
    double stretched = 0;
    for (int k = 0; k < w.elements(); k++) {
      int i = (w.first() + k) % sweeps.length;
      if (sweeps[i] != null) {
        boolean hollow = ((Sweep) skeleton.elements().get(i)).hollow();
        boolean turned = ends.of(w.name()).turned();
        double most = sweeps[i].most(turned);
        double trim = turned ? sweeps[i].atTrim() : 0;
        eased = hollow ? eased : Math.max(eased, most);
        atTrim = hollow ? atTrim : Math.max(atTrim, trim);
        under = hollow || !turned ? under : Math.max(under, sweeps[i].mostUnder());
        stretched = hollow ? Math.max(stretched, Math.max(most, trim)) : stretched;
      } else if (skeleton.elements().get(i) instanceof Side side) {
        boolean turned = ends.of(w.name()).turned();
        double to = skeleton.path(i).backStart() + (turned ? HollowChooser.CLIP_TIP : 0);
        for (Pull p : pulls(i, side)) {
          stretched = Math.max(stretched, p.at(skeleton.path(i), to));
        }
      }
    }
    return new OfSide(eased, under, atTrim >= under, stretched);
  }

  /** The areas of strain on the back, in the frame of the base seen from the face. */
  public List<Area> back() {
    List<Area> areas = new ArrayList<>();
    for (int i = 0; i < sweeps.length; i++) {
      Element e = skeleton.elements().get(i);
      TautPath path = skeleton.path(i);
      if (!ends.of(e.name()).turned()) {
        continue;
      }
      if (e instanceof Sweep sweep && sweeps[i] != null) {
        int at = i;
        List<StrainBand> bands = sweeps[i].onBack(steps(sweep));
        sweep(sweep, bands, p -> overBase(at, OnBack.placed(path, sweep, p)), areas);
      } else if (e instanceof Side side) {
        Vec2[] frame = {side.from(), side.along(), side.along().left()};
        double from = path.backStart();
        List<Double> levels = List.of(from, from + HollowChooser.CLIP_TIP);
        pulled(i, side, levels, p -> OnBack.placed(path, p, frame), areas);
      }
    }
    return areas;
  }

  /** The areas of strain on a side, in its frame. */
  public List<Area> on(Wall w) {
    List<Area> areas = new ArrayList<>();
    if (ends.of(w.name()).bare()) {
      return areas;
    }
    double at = 0;
    boolean joined = w.elements() > 1;
    for (int k = 0; k < w.elements(); k++) {
      int i = (w.first() + k) % sweeps.length;
      Element e = skeleton.elements().get(i);
      double length = e.segment().length();
      double start = at;
      UnaryOperator<List<Vec2>> placed =
          p -> p.stream().map(v -> LaidWalls.place(skeleton, v, i, start, length, joined)).toList();
      if (e instanceof Sweep sweep && sweeps[i] != null) {
        double r = sweep.radius();
        UnaryOperator<List<Vec2>> along =
            p -> p.stream().map(v -> new Vec2(start + v.x() * r, -v.y())).toList();
        sweep(sweep, sweeps[i].onWall(steps(sweep)), along, areas);
      } else if (e instanceof Side side) {
        pulled(i, side, skeleton.path(i).breaks(SweepStrain.PER_BEND), placed, areas);
      }
      flaps(Math.floorMod(i - 1, sweeps.length), false, i, length, placed, areas);
      flaps(i, true, i, length, placed, areas);
      at += length;
    }
    return areas;
  }

  /** Past a sharp corner at the end of a curve its turn-under lies beyond the base. */
  private List<Vec2> overBase(int i, List<Vec2> polygon) {
    List<Vec2> p = polygon;
    CornerFrame start = skeleton.frame(Math.floorMod(i - 1, sweeps.length));
    if (start != null && start.turn() > 0) {
      p = Polygons.below(p, start.before().right(), start.before().right().dot(start.apex()));
    }
    CornerFrame end = skeleton.frame(i);
    return end == null || end.turn() < 0
        ? p
        : Polygons.below(p, end.after().right(), end.after().right().dot(end.apex()));
  }

  private void sweep(
      Sweep sweep, List<StrainBand> bands, UnaryOperator<List<Vec2>> placed, List<Area> to) {
    for (StrainBand b : bands) {
      for (List<Vec2> p : laid.sweeps().on(sweep, b.from(), b.to())) {
        add(sweep.hollow() ? Kind.STRETCHED : Kind.EASED, b, placed.apply(p), to);
      }
    }
  }

  private void add(Kind kind, StrainBand b, List<Vec2> polygon, List<Area> to) {
    double taken = kind == Kind.EASED ? easeTaken : stretchTaken;
    boolean over =
        kind != Kind.FLAP && b.most() > taken + SAME_STEP / 2 && b.least() >= taken - 1e-9;
    // Rounding leaves slivers where two steps meet.
    if (LaidCover.sheet(polygon)) {
      to.add(new Area(kind, b.least(), b.most(), over, polygon));
    }
  }

  /** The end of a side at a slight hollow corner, over which the covering is stretched. */
  private record Pull(boolean atEnd, double opens) {
    double at(TautPath path, double s) {
      return opens * path.surplus(s);
    }
  }

  private List<Pull> pulls(int i, Side side) {
    List<Pull> pulls = new ArrayList<>();
    if (ends.of(side.name()).bare()) {
      return pulls;
    }
    for (boolean atEnd : new boolean[] {false, true}) {
      int corner = atEnd ? i : Math.floorMod(i - 1, sweeps.length);
      Element e = skeleton.elements().get(corner);
      Vec2 u = e.directionAtEnd();
      Vec2 v = skeleton.next(corner).directionAtStart();
      double turn = Math.atan2(u.cross(v), u.dot(v));
      if (e.after() == Fold.NONE && turn < -Outlines.CORNER) {
        pulls.add(new Pull(atEnd, Math.tan(-turn / 2) / HollowChooser.STRETCHED));
      }
    }
    return pulls;
  }

  private void pulled(
      int i, Side side, List<Double> levels, UnaryOperator<List<Vec2>> placed, List<Area> to) {
    for (Pull pull : pulls(i, side)) {
      TautPath path = skeleton.path(i);
      double wide = Math.min(HollowChooser.STRETCHED, side.length() / 2);
      for (StrainBand b : StrainBand.of(s -> pull.at(path, s), levels, steps(stretchTaken))) {
        List<Vec2> own = laid.seamed(i, side, b.from(), b.to());
        own =
            pull.atEnd
                ? Polygons.below(own, new Vec2(-1, 0), wide - side.length())
                : Polygons.below(own, new Vec2(1, 0), wide);
        add(Kind.STRETCHED, b, placed.apply(own), to);
      }
    }
  }

  /** The flap of a corner on the wall of one of its sides. */
  private void flaps(
      int corner,
      boolean first,
      int element,
      double length,
      UnaryOperator<List<Vec2>> placed,
      List<Area> to) {
    CornerSheets sheets = laid.corner(corner);
    Element e = skeleton.elements().get(corner);
    if (sheets == null || plan.corners().get(e.corner()).flapStrain() <= STEPS[0]) {
      return;
    }
    List<BandChain> chains = new ArrayList<>();
    List<StrainBand> bands = FlapStrain.along(skeleton.frame(corner), first);
    List<Double> levels = laid.levels(element);
    for (int k = 0; k < bands.size(); k++) {
      StrainBand b = bands.get(k);
      for (int l = 0; l + 1 < levels.size() && b.most() >= STEPS[0]; l++) {
        double from = Math.max(b.from(), levels.get(l));
        double end = Math.min(b.to(), levels.get(l + 1));
        List<Vec2> flap = end > from ? sheets.flap(first, from, end) : List.of();
        if (flap.size() >= 3) {
          List<Vec2> there =
              flap.stream().map(p -> new Vec2(first ? length + p.x() : -p.x(), p.y())).toList();
          BandChain.add(chains, new Sheet(placed.apply(there), k), -from, -end);
        }
      }
    }
    for (BandChain c : chains) {
      add(Kind.FLAP, bands.get(c.sheet().layers()), c.sheet().polygon(), to);
    }
  }
}
