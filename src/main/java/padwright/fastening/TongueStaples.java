package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import padwright.design.PadSpec;
import padwright.design.WrappedPad.Hole;
import padwright.fastening.FittingPlan.Opening;
import padwright.fastening.StapleLine.Place;
import padwright.fastening.StaplePlan.Position;
import padwright.fastening.TurnedThrough.Tongue;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.shape.PadShape;

/**
 * The staples that hold the tongues of a cut-out on the back, as far from its edge as the others
 * are from the base's. They come last, for the covering is slit only when it is fast all round. A
 * tongue that has no room for a crown between its sides gets none and is glued.
 */
public final class TongueStaples {
  /** Covering left beside a crown, mm; own choice. */
  private static final double BESIDE = 1;

  private final FittingPlan fittings;
  private final PadShape shape;
  private final PadSpec spec;

  public TongueStaples(FittingPlan fittings, PadShape shape, PadSpec spec) {
    this.fittings = fittings;
    this.shape = shape;
    this.spec = spec;
  }

  /** The plan with the tongues' staples after all others. */
  public StaplePlan after(StaplePlan plan, List<Hole> holes) {
    if (fittings.cutOuts().stream().noneMatch(o -> o.turned().isPresent())) {
      return plan;
    }
    List<Position> all = new ArrayList<>(plan.positions());
    Crowns crowns = new Crowns(spec.staple().crown());
    plan.positions().forEach(p -> crowns.take(place(p.at(), p.angle(), p.side())));
    List<Vec2> base = shape.outline().flattened(SlitPlanner.SAGITTA);
    for (Opening o : fittings.cutOuts()) {
      KeepClear clear = others(o, holes);
      for (Place p : places(o)) {
        boolean free = clear.allows(p.at(), spec.staple().crown()) && crowns.free(p);
        if (free && Polygons.contains(base, p.at())) {
          crowns.take(p);
          all.add(new Position(p.at(), p.angle(), p.side(), false, 1));
        }
      }
    }
    return new StaplePlan(all, plan.leg(), plan.largestGap(), plan.legs());
  }

  /** Everything but the cut-out itself, whose own edge its staples are set out from. */
  private KeepClear others(Opening o, List<Hole> holes) {
    List<Opening> rest = fittings.cutOuts().stream().filter(c -> c != o).toList();
    return new FittingPlan(rest, fittings.vents(), fittings.inserts(), List.of()).keepClear(holes);
  }

  /** How many tongues of a cut-out are too narrow for a crown where staples would be. */
  public static int glued(TurnedThrough turned, PadSpec spec) {
    double depth = turned.wall() + spec.edgeDistance();
    double least = spec.staple().crown() + 2 * BESIDE;
    return (int) turned.tongues().stream().filter(t -> t.width(depth) < least).count();
  }

  private List<Place> places(Opening o) {
    List<Place> places = new ArrayList<>();
    TurnedThrough turned = o.turned().filter(TurnedThrough::reaches).orElse(null);
    if (turned == null) {
      return places;
    }
    double depth = turned.wall() + spec.edgeDistance();
    double crown = spec.staple().crown() + 2 * BESIDE;
    for (Tongue t : turned.tongues()) {
      double[] sides = t.sides(depth);
      double span = sides[1] - sides[0] - crown;
      if (span < 0) {
        continue;
      }
      Vec2 u = t.along();
      Vec2 line = t.from().along(u.left(), -spec.edgeDistance());
      double middle = (sides[0] + sides[1]) / 2;
      double closest = Crowns.pitch(spec.staple().crown());
      int gaps = span < closest ? 0 : (int) Math.ceil(span / Math.max(closest, spec.spacing()));
      for (int k = 0; k <= gaps; k++) {
        double at = gaps == 0 ? middle : middle - span / 2 + span * k / gaps;
        places.add(place(line.along(u, at), u.angle(), o.name()));
      }
    }
    return places;
  }

  private static Place place(Vec2 at, double angle, String side) {
    return new Place(at, angle, side, 0, false);
  }
}
