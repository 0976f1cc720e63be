package padwright.fastening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
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
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.material.Staple;
import padwright.shape.Outlines;
import padwright.shape.PadShape;

/** Sets the staples out, numbers them in driving order and picks the leg. */
public final class StaplePlanner {
  /** No staple in pressed fibre board this near to a corner, mm: 3/4 in, trade page on MDF. */
  private static final double PRESSED_FIBRE_CORNER = 19.05;

  /** A part to this width is stapled one long side after the other, mm; own choice. */
  private static final double NARROW = 75;

  /** Chords may leave the base's arcs by this where a staple makes way for a hole, mm. */
  private static final double FLAT = 0.01;

  /** Past this a staple has come round a corner on to another side: the cosine of 45 degrees. */
  private static final double HALF_TURNED = 0.7;

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
   * The plan of a base with round holes only.
   *
   * @param holes in the base, screws included, that staples keep clear of
   */
  public StaplePlan plan(
      List<CornerPlan> corners,
      LayerCounter layers,
      List<Hole> holes,
      OptionalDouble leg,
      List<Staple> series) {
    return plan(corners, layers, new KeepClear(holes), leg, series);
  }

  /**
   * @param clear what staples keep away from: holes, screws included, and cut-outs
   * @param leg the leg asked for; empty = the longest that passes
   * @param series every series of the catalogue, for the list of legs
   */
  public StaplePlan plan(
      List<CornerPlan> corners,
      LayerCounter layers,
      KeepClear clear,
      OptionalDouble leg,
      List<Staple> series) {
    List<Place> places =
        new StapleLine(
                shape.outline(),
                shape.sideNames(),
                spec.spacing(),
                spec.edgeDistance(),
                spec.cornerClear(),
                spec.board().pressedFibre() ? PRESSED_FIBRE_CORNER : 0,
                spec.staple().crown(),
                corners,
                front,
                shape.ends().stapled())
            .places();
    boolean round = StapleLine.isRim(corners);
    HoleRows rows =
        new HoleRows(spec.spacing(), Crowns.pitch(spec.staple().crown()), at -> isClear(at, clear));
    List<Place> kept = kept(round ? places : rows.setOut(places), clear);
    List<Position> positions = new ArrayList<>();
    int cornerLayers = 1;
    for (Place p : ordered(kept, round)) {
      int n = Math.max(1, layersUnder(layers, p));
      cornerLayers = Math.max(cornerLayers, n);
      positions.add(new Position(p.at(), p.angle(), p.side(), p.corner(), n));
    }
    List<LegVerdict> legs =
        StapleDepths.all(series, cornerLayers, spec.coverThickness(), spec.leastThickness());
    double planned = leg.orElseGet(() -> pick(legs));
    return new StaplePlan(positions, planned, largestGap(kept, round), legs);
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

  /** Places that holes and other crowns leave: those on a hole move once the rest have theirs. */
  private List<Place> kept(List<Place> places, KeepClear clear) {
    Crowns crowns = new Crowns(spec.staple().crown());
    Place[] kept = new Place[places.size()];
    for (int i = 0; i < kept.length; i++) {
      Place p = places.get(i);
      if (isClear(p.at(), clear) && crowns.free(p)) {
        crowns.take(p);
        kept[i] = p;
      }
    }
    List<Vec2> outline = null;
    for (int i = 0; i < kept.length; i++) {
      if (!isClear(places.get(i).at(), clear)) {
        outline = outline == null ? shape.outline().flattened(FLAT) : outline;
        kept[i] = besideHole(places.get(i), clear, crowns, outline);
      }
    }
    return Arrays.stream(kept).filter(Objects::nonNull).toList();
  }

  /** The nearest place along the staple line that keeps clear; null where none is near. */
  private Place besideHole(Place p, KeepClear clear, Crowns crowns, List<Vec2> outline) {
    for (int step = 1; step <= (int) spec.spacing(); step++) {
      for (int sign = 1; sign >= -1; sign -= 2) {
        Vec2 aside = p.at().along(Vec2.polar(p.angle()), sign * step);
        Place moved = onTheLine(p, aside, outline);
        if (moved != null && isClear(moved.at(), clear) && crowns.free(moved)) {
          crowns.take(moved);
          return moved;
        }
      }
    }
    return null;
  }

  /** On a curve the line bends inwards from its tangent; off the base there is no place. */
  private Place onTheLine(Place p, Vec2 aside, List<Vec2> outline) {
    if (!Polygons.contains(outline, aside)) {
      return null;
    }
    Vec2 edge = nearest(aside);
    double in = aside.distance(edge);
    if (in >= spec.edgeDistance() - FLAT) {
      return new Place(aside, p.angle(), p.side(), p.rank(), p.corner());
    }
    Vec2 inwards = aside.minus(edge).unit();
    Vec2 at = edge.along(inwards, spec.edgeDistance());
    boolean turned = Math.abs(inwards.dot(Vec2.polar(p.angle()))) > HALF_TURNED;
    return turned ? null : new Place(at, inwards.right().angle(), p.side(), p.rank(), p.corner());
  }

  private Vec2 nearest(Vec2 p) {
    Vec2 best = shape.outline().start();
    for (Segment s : shape.outline().segments()) {
      Vec2 q = s.nearest(p);
      best = q.distance(p) < best.distance(p) ? q : best;
    }
    return best;
  }

  private boolean isClear(Vec2 at, KeepClear clear) {
    return clear.allows(at, spec.staple().crown());
  }

  private List<Place> ordered(List<Place> places, boolean round) {
    if (round) {
      return DrivingOrder.clock(places);
    }
    boolean narrow = Math.min(shape.length(), shape.width()) <= NARROW;
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
      return DrivingOrder.sideBySide(places, longFirst, facing());
    }
    return DrivingOrder.opposites(places, frontFirst, facing());
  }

  /** Which of the four sides each name of a side faces, by its longest segment. */
  private Map<String, String> facing() {
    Map<String, String> facing = new HashMap<>();
    Map<String, Double> longest = new HashMap<>();
    for (int i = 0; i < shape.sideNames().size(); i++) {
      String name = shape.sideNames().get(i);
      Segment s = shape.outline().segments().get(i);
      if (s.length() > longest.getOrDefault(name, 0.0)) {
        longest.put(name, s.length());
        facing.put(name, Outlines.facing(name, s));
      }
    }
    return facing;
  }

  /** The most layers under its crown: at its middle and at either leg. */
  private int layersUnder(LayerCounter layers, Place p) {
    Vec2 leg = Vec2.polar(p.angle()).times(spec.staple().crown() / 2);
    return Math.max(
        layers.at(p.at()), Math.max(layers.at(p.at().plus(leg)), layers.at(p.at().minus(leg))));
  }

  /** Largest distance between neighbours along a side, or round a round base. */
  private double largestGap(List<Place> places, boolean round) {
    if (round) {
      List<Place> turned = new ArrayList<>(places);
      turned.sort(Comparator.comparingDouble(p -> p.at().angle()));
      double last = turned.isEmpty() ? 0 : apart(turned.get(0), turned.get(turned.size() - 1));
      return Math.max(last, widest(turned));
    }
    double largest = 0;
    Map<String, List<Place>> rows = new HashMap<>();
    for (Place p : places) {
      rows.computeIfAbsent(p.side(), k -> new ArrayList<>()).add(p);
    }
    for (String side : new LinkedHashSet<>(shape.sideNames())) {
      List<Place> row = new ArrayList<>(rows.getOrDefault(side, List.of()));
      // In their order round the edge: along one direction a bow of over a quarter turn comes back.
      Map<Place, Double> along = new IdentityHashMap<>();
      row.forEach(p -> along.put(p, along(side, p.at())));
      row.sort(Comparator.comparingDouble(along::get));
      largest = Math.max(largest, widest(row));
    }
    return largest;
  }

  /** How far along the stretches of a side the place nearest to a staple lies, mm. */
  private double along(String side, Vec2 p) {
    double run = 0;
    double at = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < shape.sideNames().size(); i++) {
      Segment s = shape.outline().segments().get(i);
      if (!shape.sideNames().get(i).equals(side)) {
        continue;
      }
      double away = s.distanceTo(p);
      if (away < least) {
        least = away;
        at = run + s.length() * s.fractionNearest(p);
      }
      run += s.length();
    }
    return at;
  }

  private static double widest(List<Place> row) {
    double widest = 0;
    for (int i = 0; i + 1 < row.size(); i++) {
      widest = Math.max(widest, apart(row.get(i), row.get(i + 1)));
    }
    return widest;
  }

  private static double apart(Place a, Place b) {
    return a.at().distance(b.at());
  }
}
