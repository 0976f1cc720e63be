package padwright.desk.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.function.UnaryOperator;
import padwright.design.FreeOutline;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.desk.edit.PartEdit.Step;
import padwright.geometry.Vec2;
import padwright.measure.InputRefused;
import padwright.measure.LengthUnit;
import padwright.shape.Outlines;

/**
 * Changes the points and legs of a part's outline, and with it what counts on them: runs and
 * corners keep their sides and points where some come or go, and what is in or on the board stays
 * where it is there, though its places are measured from the middle of the outline.
 *
 * <p>Points and legs are counted from 0; leg k runs from point k and is side k + 1. Every change is
 * read back by the reader of job files.
 */
public final class OutlineEdit {
  /** A bend is kept to this share: over a metre to a millionth of a mm, like places. */
  private static final double BULGE = 1e9;

  /** Places are kept to a millionth of a mm, so that no sum leaves a tail of digits. */
  private static final double KEPT = 1e6;

  private static final List<String> PLACED =
      List.of(
          "base.holes",
          "host.positions",
          "fittings.cutOuts",
          "fittings.vents",
          "fittings.tNuts",
          "fittings.zones");

  private final PartEdit edit;
  private final WrappedPad pad;
  private final Units units;

  public OutlineEdit(PartEdit edit, WrappedPad pad) {
    this.edit = edit;
    this.pad = pad;
    this.units = edit.plain() == LengthUnit.MM ? Units.MM : Units.INCH;
  }

  /**
   * The outline by its points.
   *
   * @throws InputRefused where it is of another kind
   */
  public FreePath path() {
    if (pad.base().outline() instanceof FreePath f) {
      return f;
    }
    throw new InputRefused(
        "",
        0,
        "base.outline",
        "this outline has sizes and no points of its own",
        "Change its sizes, or draw it by its points");
  }

  public WrappedPad moved(int point, Vec2 to) {
    return same(OutlineChange.moved(path(), point, rounded(to)));
  }

  /** Bends a leg so that its middle lies at a place. */
  public WrappedPad bent(int leg, Vec2 middle, double straightWithin) {
    return same(kept(OutlineChange.bent(path(), leg, middle, straightWithin), leg));
  }

  /** Moves the first or the second control of a curve. */
  public WrappedPad control(int leg, boolean second, Vec2 to) {
    Leg.Cubic c = (Leg.Cubic) path().points().get(leg).leg();
    Vec2 at = rounded(to);
    return same(legged(leg, second ? new Leg.Cubic(c.first(), at) : new Leg.Cubic(at, c.second())));
  }

  /** Makes a leg straight. */
  public WrappedPad straight(int leg) {
    return same(legged(leg, new Leg.Straight()));
  }

  /**
   * Makes a leg an arc of a radius; it keeps to its side, and a straight one bows outwards.
   *
   * @throws InputRefused where the leg's ends are further apart than the circle is wide
   */
  public WrappedPad radius(int leg, double radius) {
    Vec2 a = path().points().get(leg).at();
    Vec2 b = path().points().get((leg + 1) % path().points().size()).at();
    double half = a.distance(b) / 2;
    if (radius < half) {
      throw new InputRefused(
          "",
          0,
          "base.outline",
          "a circle of radius "
              + FieldWords.of(radius, units)
              + " does not reach over the "
              + FieldWords.of(2 * half, units)
              + " between the side's ends",
          "Give at least " + FieldWords.of(half, units));
    }
    // The rise of the flatter of the two arcs over the chord.
    double flat = (radius - Math.sqrt(radius * radius - half * half)) / half;
    double now = path().points().get(leg).leg() instanceof Leg.Arc arc ? arc.bulge() : 0;
    double size = Math.abs(now) > 1 ? 1 / flat : flat;
    boolean right = now == 0 ? anticlockwise() : now > 0;
    return same(kept(legged(leg, new Leg.Arc(right ? size : -size)), leg));
  }

  /** Moves the far end of a leg along it, so that its ends are so far apart. */
  public WrappedPad length(int leg, double length) {
    List<Point> points = path().points();
    int end = (leg + 1) % points.size();
    Vec2 a = points.get(leg).at();
    return moved(end, a.along(points.get(end).at().minus(a).unit(), length));
  }

  /** Puts a point into a leg, at a share of it; its halves have what the side had. */
  public WrappedPad split(int leg, double at) {
    FreePath next = OutlineChange.split(path(), leg, at);
    return counted(
        next,
        sides -> {
          List<String> all = new ArrayList<>();
          for (String side : sides) {
            int k = leg(side);
            all.add(side(k <= leg ? k : k + 1));
            if (k == leg) {
              all.add(side(k + 1));
            }
          }
          return all;
        },
        k -> k <= leg ? k : k == leg + 1 ? -1 : k - 1);
  }

  /** Takes a point out; the leg before it goes straight on, and has what it had. */
  public WrappedPad without(int point) {
    FreePath next = OutlineChange.without(path(), point);
    return counted(
        next,
        sides ->
            sides.stream()
                .mapToInt(OutlineEdit::leg)
                .filter(k -> k != point)
                .mapToObj(k -> side(k < point ? k : k - 1))
                .toList(),
        k -> k < point ? k : k + 1);
  }

  /**
   * The same outline by its points; its runs and corners stay on the same sides and corners. Where
   * its size is not that of the board, the base may come out smaller by a layer or two of covering:
   * the folds at a drawn corner count on every side.
   */
  public WrappedPad byPoints() {
    OutlineShape shape = pad.base().outline();
    if (shape instanceof FreePath) {
      return pad;
    }
    List<String> names = Outlines.of(shape).names();
    FreePath next = OutlineChange.free(shape);
    return counted(
        next, sides -> new NamedSides(names, pad).numbered(sides), k -> corner(names, k));
  }

  /** Which corner of the named outline a point stands for; -1 where a curve only begins or ends. */
  private static int corner(List<String> names, int point) {
    String name = names.get(point);
    List<String> corners = List.of("front left", "front right", "back right", "back left");
    if (name.endsWith(" corner")) {
      return corners.indexOf(name.substring(0, name.length() - " corner".length()));
    }
    String before = names.get(Math.floorMod(point - 1, names.size()));
    return before.endsWith(" corner") ? -1 : Outlines.SIDES.indexOf(name);
  }

  private WrappedPad same(FreePath next) {
    return edit.with(pad, steps(next));
  }

  /**
   * @param sides the sides of a run as they are called then
   * @param corner for each point of the next outline the corner it was; negative for a new one
   */
  private WrappedPad counted(
      FreePath next, UnaryOperator<List<String>> sides, IntUnaryOperator corner) {
    List<Step> steps = steps(next);
    List<Object> runs = new ArrayList<>();
    for (Object run : edit.asked(pad, "runs").map(l -> (List<?>) l).orElse(List.of())) {
      Map<String, Object> own = copy(run);
      List<String> now = sides.apply(pad.runs().get(runs.size()).sides());
      own.put("sides", now);
      runs.add(own);
    }
    runs.removeIf(r -> ((List<?>) copy(r).get("sides")).isEmpty());
    if (!pad.runs().isEmpty()) {
      steps.add(runs.isEmpty() ? Step.remove("runs") : Step.put("runs", runs));
    }
    Optional<Object> each = edit.asked(pad, "corners.each");
    if (each.isPresent()) {
      List<?> was = (List<?>) each.get();
      List<Object> now = new ArrayList<>(Collections.nCopies(next.points().size(), "auto"));
      for (int k = 0; k < now.size(); k++) {
        int old = corner.applyAsInt(k);
        if (old >= 0 && old < was.size()) {
          now.set(k, was.get(old));
        }
      }
      steps.add(Step.put("corners.each", now));
    }
    return edit.with(pad, steps);
  }

  private List<Step> steps(FreePath next) {
    List<Step> steps = new ArrayList<>(List.of(OutlineChange.step(next, units)));
    Vec2 by = middle(pad.base().outline()).minus(middle(next));
    if (by.length() > 1 / KEPT) {
      for (String list : PLACED) {
        edit.asked(pad, list).ifPresent(l -> steps.add(Step.put(list, shifted((List<?>) l, by))));
      }
    }
    return steps;
  }

  /** The point that places on the board are measured from, where the outline is drawn. */
  public static Vec2 middle(OutlineShape shape) {
    return shape instanceof FreePath f ? FreeOutline.of(f).moved().times(-1) : Vec2.ZERO;
  }

  private List<Object> shifted(List<?> places, Vec2 by) {
    List<Object> all = new ArrayList<>();
    for (Object place : places) {
      Map<String, Object> m = copy(place);
      m.put("x", PartEdit.mm(shifted(m.get("x"), by.x())));
      m.put("y", PartEdit.mm(shifted(m.get("y"), by.y())));
      all.add(m);
    }
    return all;
  }

  private double shifted(Object length, double by) {
    double mm = TypedLength.parse(length.toString(), edit.plain()) + by;
    return Math.round(mm * KEPT) / KEPT;
  }

  private static Map<String, Object> copy(Object map) {
    Map<String, Object> m = new LinkedHashMap<>();
    ((Map<?, ?>) map).forEach((k, v) -> m.put((String) k, v));
    return m;
  }

  private FreePath legged(int leg, Leg to) {
    List<Point> points = new ArrayList<>(path().points());
    points.set(leg, new Point(points.get(leg).at(), to));
    return new FreePath(points);
  }

  private static FreePath kept(FreePath path, int leg) {
    List<Point> points = new ArrayList<>(path.points());
    Point p = points.get(leg);
    if (p.leg() instanceof Leg.Arc arc) {
      double bulge = Math.round(arc.bulge() * BULGE) / BULGE;
      points.set(leg, new Point(p.at(), bulge == 0 ? new Leg.Straight() : new Leg.Arc(bulge)));
    }
    return new FreePath(points);
  }

  /** Whether the points go round anticlockwise, so that out of the part is to the right. */
  public boolean anticlockwise() {
    // One drawn the other way is laid out from its last side.
    return FreeOutline.of(path()).sides().get(0) == 1;
  }

  private static Vec2 rounded(Vec2 p) {
    return new Vec2(Math.round(p.x() * KEPT) / KEPT, Math.round(p.y() * KEPT) / KEPT);
  }

  /** The name of a leg's side. */
  public static String side(int leg) {
    return "side " + (leg + 1);
  }

  private static int leg(String side) {
    return Integer.parseInt(side.substring("side ".length())) - 1;
  }
}
