package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import padwright.design.PadSpec;
import padwright.design.WrappedPad.Hole;
import padwright.fastening.FittingPlan.Opening;
import padwright.fastening.FittingPlan.Patch;
import padwright.fastening.FittingPlan.Round;
import padwright.geometry.PathGap;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.shape.PadShape;

/**
 * Whether a base wants holes for the air, and where they would lie. The rule is our own, drawn from
 * one published example: a drop-in seat in leather, its air holes 1 in across and about 5 in from
 * each corner (Woodworker's Journal 32-6, 2008, p. 63). Between those of the corners as many more
 * as keep the pitch; one row, or one hole, where two would stand closer than {@link #TWO_ROWS}. mm.
 */
public final class VentPlanner {
  /** Foam up to this breathes through its edge fast enough, mm; own limit. */
  public static final double FOAM = 25;

  /** 1 in: the published example. */
  public static final double DIAMETER = 25.4;

  /** About 5 in from each side of a corner: the published example. mm. */
  public static final double FROM_SIDES = 127;

  /** Holes stand no further apart than this, mm; own choice. */
  public static final double PITCH = 300;

  /** Two rows nearer to each other than this are one, mm; own choice. */
  static final double TWO_ROWS = 100;

  /** Board left between two holes, mm; own choice. */
  public static final double APART = 10;

  /** How far a hole may move for what is in its way, and in which steps. mm. */
  private static final double STEP = 5;

  /** Chords may leave the base's arcs by this where a hole is inside by far more, mm. */
  private static final double FLAT = 0.1;

  private static final int STEPS = 24;
  private static final int WAYS = 24;

  private final PadShape shape;
  private final PadSpec spec;
  private final FittingPlan fittings;
  private final List<Round> holes;
  private final StaplePlan staples;
  private final List<Vec2> chords;

  /**
   * @param holes the base's own and the screws'
   */
  public VentPlanner(
      PadShape shape, PadSpec spec, FittingPlan fittings, List<Round> holes, StaplePlan staples) {
    this.shape = shape;
    this.spec = spec;
    this.fittings = fittings;
    this.holes = List.copyOf(holes);
    this.staples = staples;
    chords = shape.outline().flattened(FLAT);
  }

  /** Where holes for the air would lie, clear of turn-unders, staples and fittings. */
  public List<Hole> places() {
    List<Vec2> taken = new ArrayList<>();
    boolean same = shape.ends().special().isEmpty();
    if (same && Math.min(shape.length(), shape.width()) < 2 * spec.turnUnder() + DIAMETER) {
      return List.of();
    }
    for (double x : row(shape.length())) {
      for (double y : row(shape.width())) {
        Vec2 at = nearestFree(new Vec2(x, y), taken);
        if (at != null) {
          taken.add(at);
        }
      }
    }
    return taken.stream().map(p -> new Hole(p.x(), p.y(), DIAMETER)).toList();
  }

  /** Places along one size of the base, from its middle. */
  private static List<Double> row(double size) {
    double reach = size - 2 * FROM_SIDES;
    if (reach < TWO_ROWS) {
      return List.of(0.0);
    }
    int gaps = (int) Math.ceil(reach / PITCH - 1e-9);
    List<Double> row = new ArrayList<>();
    for (int k = 0; k <= gaps; k++) {
      row.add(-reach / 2 + reach * k / gaps);
    }
    return row;
  }

  private Vec2 nearestFree(Vec2 wish, List<Vec2> taken) {
    if (free(wish, taken)) {
      return wish;
    }
    for (int step = 1; step <= STEPS; step++) {
      for (int k = 0; k < WAYS; k++) {
        Vec2 at = wish.along(Vec2.polar(2 * Math.PI * k / WAYS), step * STEP);
        if (free(at, taken)) {
          return at;
        }
      }
    }
    return null;
  }

  private boolean free(Vec2 at, List<Vec2> taken) {
    double r = DIAMETER / 2;
    if (!Polygons.contains(chords, at) || !new TurnedBack(shape).bare(at, r, APART)) {
      return false;
    }
    double crown = spec.staple().crown() / 2 + KeepClear.HOLE_CLEAR;
    boolean clear =
        taken.stream().allMatch(p -> p.distance(at) >= 2 * r + APART)
            && staples.positions().stream().allMatch(p -> p.at().distance(at) >= r + crown);
    for (Round h : all()) {
      clear = clear && h.at().distance(at) >= h.outer() / 2 + r + APART;
    }
    for (Opening o : fittings.cutOuts()) {
      clear = clear && PathGap.toArea(at, o.hole()) >= o.turnUnder() + r + APART;
    }
    for (Patch z : fittings.zones()) {
      clear = clear && PathGap.toArea(at, z.area()) >= r;
    }
    return clear;
  }

  private List<Round> all() {
    List<Round> all = new ArrayList<>(holes);
    all.addAll(fittings.inserts());
    all.addAll(fittings.vents());
    return all;
  }
}
