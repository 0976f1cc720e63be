package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import padwright.cover.CornerPlan;
import padwright.cover.LayerCounter;
import padwright.design.PadSpec;
import padwright.design.WrappedPad.Hole;
import padwright.design.WrappedPad.Kind;
import padwright.design.WrappedPad.Side;
import padwright.fastening.StapleLine.Place;
import padwright.fastening.StaplePlan.LegVerdict;
import padwright.fastening.StaplePlan.Position;
import padwright.geometry.Vec2;
import padwright.material.Staple;
import padwright.shape.PadShape;

/** Sets the staples out, numbers them in driving order and picks the leg. */
public final class StaplePlanner {
  /** Wood left between a hole's edge and a staple, mm; own choice. */
  private static final double HOLE_CLEAR = 3;

  private final PadShape shape;
  private final PadSpec spec;
  private final Kind kind;
  private final Side front;

  public StaplePlanner(PadShape shape, PadSpec spec, Kind kind, Side front) {
    this.shape = shape;
    this.spec = spec;
    this.kind = kind;
    this.front = front;
  }

  /**
   * @param holes in the base, screws included, that staples keep clear of
   * @param leg the leg asked for; empty = the longest that passes
   * @param series every series of the catalogue, for the list of legs
   */
  public StaplePlan plan(
      List<CornerPlan> corners,
      LayerCounter layers,
      List<Hole> holes,
      OptionalDouble leg,
      List<Staple> series) {
    List<Place> places =
        new StapleLine(
                shape.outline(),
                shape.sideNames(),
                spec.spacing(),
                spec.edgeDistance(),
                spec.cornerClear(),
                spec.staple().crown(),
                corners)
            .places();
    List<Place> kept = new ArrayList<>();
    for (Place p : places) {
      Place clear = clearOf(p, holes);
      if (clear != null) {
        kept.add(clear);
      }
    }
    List<Position> positions = new ArrayList<>();
    int cornerLayers = 1;
    for (Place p : ordered(kept)) {
      int n = Math.max(1, layers.at(p.at()));
      cornerLayers = Math.max(cornerLayers, n);
      positions.add(new Position(p.at(), p.angle(), p.side(), p.corner(), n));
    }
    List<LegVerdict> legs =
        StapleDepths.all(series, cornerLayers, spec.coverThickness(), spec.leastThickness());
    double planned = leg.orElseGet(() -> pick(legs));
    return new StaplePlan(positions, planned, largestGap(kept), legs);
  }

  /** The longest leg that passes; else the longest that does not come through; else none. */
  private double pick(List<LegVerdict> legs) {
    return StapleDepths.longestPassing(legs, spec.staple().id())
        .map(LegVerdict::leg)
        .orElseGet(
            () ->
                legs.stream()
                    .filter(
                        v ->
                            v.staple().equals(spec.staple().id())
                                && v.margin() >= StapleDepths.LEAST_MARGIN)
                    .mapToDouble(LegVerdict::leg)
                    .max()
                    .orElse(0));
  }

  /** The place, or one beside it on the staple line that keeps clear; null where none is near. */
  private Place clearOf(Place p, List<Hole> holes) {
    Vec2 along = Vec2.polar(p.angle());
    for (int step = 0; step <= (int) spec.spacing(); step++) {
      for (int sign = 1; sign >= -1; sign -= 2) {
        Vec2 at = p.at().along(along, sign * step);
        if (isClear(at, holes)) {
          return new Place(at, p.angle(), p.side(), p.rank(), p.corner());
        }
        if (step == 0) {
          break;
        }
      }
    }
    return null;
  }

  private boolean isClear(Vec2 at, List<Hole> holes) {
    for (Hole h : holes) {
      double least = h.diameter() / 2 + spec.staple().crown() / 2 + HOLE_CLEAR;
      if (at.distance(new Vec2(h.x(), h.y())) < least) {
        return false;
      }
    }
    return true;
  }

  private List<Place> ordered(List<Place> places) {
    boolean round = shape.outline().segments().stream().allMatch(s -> s.isArc());
    if (round) {
      return DrivingOrder.clock(places);
    }
    boolean narrow = Math.min(shape.length(), shape.width()) <= 75;
    String seen = front.name().toLowerCase(Locale.ROOT);
    List<String> sides = List.of("front", "right", "back", "left");
    int f = sides.indexOf(seen);
    List<String> frontFirst =
        List.of(seen, sides.get((f + 2) % 4), sides.get((f + 3) % 4), sides.get((f + 1) % 4));
    boolean rest = kind == Kind.FOREARM_REST || kind == Kind.ARMREST;
    if (narrow || rest) {
      boolean alongX = shape.length() >= shape.width();
      List<String> longFirst =
          alongX
              ? List.of("front", "back", "left", "right")
              : List.of("left", "right", "front", "back");
      return DrivingOrder.sideBySide(places, longFirst);
    }
    return DrivingOrder.opposites(places, frontFirst);
  }

  /** Largest distance of a staple from the nearest other on the same side. */
  private static double largestGap(List<Place> places) {
    double largest = 0;
    for (Place p : places) {
      double nearest = Double.POSITIVE_INFINITY;
      for (Place q : places) {
        if (q != p && q.side().equals(p.side()) && p.corner() == q.corner()) {
          nearest = Math.min(nearest, p.at().distance(q.at()));
        }
      }
      if (Double.isFinite(nearest) && !p.corner()) {
        largest = Math.max(largest, nearest);
      }
    }
    return largest;
  }
}
