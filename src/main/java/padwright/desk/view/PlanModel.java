package padwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padwright.design.EdgeShape;
import padwright.design.FreeOutline;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.FreePath;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Hole;
import padwright.design.WrappedPad.Run;
import padwright.design.WrappedPad.Treatment;
import padwright.desk.edit.OutlineEdit;
import padwright.desk.edit.PartEdit;
import padwright.desk.edit.RunEdit;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.measure.LengthText;
import padwright.measure.Rounding;
import padwright.shape.Outlines;

/**
 * The outline a part is given by, from its face, with what can be pointed at on it. Lies where the
 * maker drew it: points have the places they have in the job file. All in mm, y up.
 */
public final class PlanModel {
  /** A leg must be so many reaches long for its middle to have a handle apart from its ends. */
  private static final double ROOM = 4;

  private final WrappedPad pad;
  private final Units units;
  private final Vec2 middle;
  private final List<Mark> points = new ArrayList<>();
  private final List<Leg> legs = new ArrayList<>();
  private final List<Corner> corners = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private final List<Place> places = new ArrayList<>();

  /**
   * A point that can be moved.
   *
   * @param number from 0
   */
  public record Mark(int number, Vec2 at) {}

  /**
   * A stretch of the outline.
   *
   * @param number of the leg from 0; of an outline that has sizes, of the segment
   * @param side its name; empty where it is none, as a rounded corner
   * @param way anticlockwise
   * @param middle the place half way along it
   * @param outward square to it there
   * @param length along it
   * @param radius of an arc; 0 of a line or a curve
   */
  public record Leg(
      int number,
      String side,
      List<Segment> way,
      Vec2 middle,
      Vec2 outward,
      double length,
      double radius) {
    public Leg {
      way = List.copyOf(way);
    }
  }

  /** A corner and what it is folded to, where corners differ; words are empty where they do not. */
  public record Corner(Vec2 at, Vec2 outward, String words) {}

  /**
   * A cut-out.
   *
   * @param member such as {@code fittings.cutOuts[0]}
   */
  public record Opening(String member, String words, Path path) {}

  /** Something round in or on the board, or a place kept on its back. */
  public record Place(String member, String words, Path path, Vec2 at) {}

  /** What is under a pointer. */
  public sealed interface Hit {
    /** A point's handle. */
    record Point(int number) implements Hit {}

    /** The handle in the middle of a leg, which bends it. */
    record Middle(int leg) implements Hit {}

    /** A side. */
    record Side(String name) implements Hit {}

    /** A cut-out, hole or the like. */
    record Member(String name) implements Hit {}
  }

  public PlanModel(WrappedPad pad, Units units) {
    this.pad = pad;
    this.units = units;
    this.middle = OutlineEdit.middle(pad.base().outline());
    outline(pad.base().outline());
    fittings();
  }

  public WrappedPad pad() {
    return pad;
  }

  /** What the places of what lies on the board are counted from. */
  public Vec2 middle() {
    return middle;
  }

  /** Whether the outline is given by points, which can be moved, and not by sizes. */
  public boolean drawn() {
    return pad.base().outline() instanceof FreePath;
  }

  public List<Mark> points() {
    return List.copyOf(points);
  }

  public List<Leg> legs() {
    return List.copyOf(legs);
  }

  public List<Corner> corners() {
    return List.copyOf(corners);
  }

  public List<Opening> openings() {
    return List.copyOf(openings);
  }

  public List<Place> places() {
    return List.copyOf(places);
  }

  /** Whether the middle of a leg has a handle: a curve is bent by none, a short leg has no room. */
  public boolean bends(Leg leg, double reach) {
    return pad.base().outline() instanceof FreePath f
        && !(f.points().get(leg.number()).leg() instanceof OutlineShape.Leg.Cubic)
        && leg.length() > ROOM * reach;
  }

  /** Names of the sides that can be told apart, in order. */
  public List<String> sides() {
    return RunEdit.sides(pad);
  }

  public Optional<Leg> leg(String side) {
    return legs.stream().filter(l -> l.side().equals(side)).findFirst();
  }

  public Bounds bounds() {
    return new Path(legs.stream().flatMap(l -> l.way().stream()).toList(), true).bounds();
  }

  private void outline(OutlineShape shape) {
    if (shape instanceof FreePath f) {
      FreeOutline laid = FreeOutline.of(f);
      Vec2 back = laid.moved().times(-1);
      for (int k = 0; k < f.points().size(); k++) {
        points.add(new Mark(k, f.points().get(k).at()));
        List<Segment> way = new ArrayList<>();
        for (int i = 0; i < laid.sides().size(); i++) {
          if (laid.sides().get(i) == k + 1) {
            way.add(laid.path().segments().get(i).translated(back));
          }
        }
        boolean curve = f.points().get(k).leg() instanceof OutlineShape.Leg.Cubic;
        legs.add(leg(k, OutlineEdit.side(k), way, curve));
      }
    } else {
      Outlines.Named named = Outlines.of(shape);
      List<String> sides = sides();
      for (int i = 0; i < named.names().size(); i++) {
        String name = named.names().get(i);
        List<Segment> way = List.of(named.path().segments().get(i));
        legs.add(leg(i, sides.contains(name) ? name : "", way, false));
      }
    }
    cornersOf(shape);
  }

  private static Leg leg(int number, String side, List<Segment> way, boolean curve) {
    double length = way.stream().mapToDouble(Segment::length).sum();
    double left = length / 2;
    Segment at = way.get(0);
    for (Segment s : way) {
      at = s;
      if (left <= s.length()) {
        break;
      }
      left -= s.length();
    }
    double share = Math.min(1, left / at.length());
    return new Leg(
        number,
        side,
        way,
        at.pointAt(share),
        at.directionAt(share).right(),
        length,
        !curve && at.isArc() ? at.radius() : 0);
  }

  private void cornersOf(OutlineShape shape) {
    List<Treatment> each = pad.corners().treatments();
    if (sides().isEmpty() || each.size() < 2) {
      for (Mark m : points) {
        corners.add(new Corner(m.at(), outward(m.at()), ""));
      }
      return;
    }
    List<Vec2> at = points.stream().map(Mark::at).toList();
    if (at.isEmpty()) {
      Bounds b = bounds();
      double top = shape instanceof OutlineShape.Trapezoid t ? t.back() / 2 : b.maxX();
      double low = shape instanceof OutlineShape.Trapezoid t ? t.front() / 2 : b.maxX();
      at =
          List.of(
              new Vec2(-low, b.minY()),
              new Vec2(low, b.minY()),
              new Vec2(top, b.maxY()),
              new Vec2(-top, b.maxY()));
    }
    for (int k = 0; k < at.size() && k < each.size(); k++) {
      String word = each.get(k).name().toLowerCase(Locale.ROOT).replace('_', ' ');
      corners.add(new Corner(at.get(k), outward(at.get(k)), word));
    }
  }

  /** Between the two legs that meet at a place, out of the part. */
  private Vec2 outward(Vec2 at) {
    Vec2 sum = Vec2.ZERO;
    for (Leg l : legs) {
      Segment first = l.way().get(0);
      Segment last = l.way().get(l.way().size() - 1);
      if (first.start().distance(at) < 1e-6) {
        sum = sum.plus(first.directionAt(0).right());
      }
      if (last.end().distance(at) < 1e-6) {
        sum = sum.plus(last.directionAt(1).right());
      }
    }
    Vec2 from = sum.length() > 1e-6 ? sum : at.minus(bounds().centre());
    return from.length() > 1e-6 ? from.unit() : new Vec2(0, 1);
  }

  private void fittings() {
    for (int i = 0; i < pad.fittings().cutOuts().size(); i++) {
      var c = pad.fittings().cutOuts().get(i);
      Path path = Outlines.of(c.shape()).path().translated(middle.plus(new Vec2(c.x(), c.y())));
      openings.add(new Opening("fittings.cutOuts[" + i + "]", "cut-out " + (i + 1), path));
    }
    round("base.holes", "hole", pad.base().holes());
    round("host.positions", "screw", pad.host().positions());
    round("fittings.vents", "vent", pad.fittings().vents());
    for (int i = 0; i < pad.fittings().inserts().size(); i++) {
      var t = pad.fittings().inserts().get(i);
      circle("fittings.tNuts[" + i + "]", "T-nut " + (i + 1), t.x(), t.y(), t.flange());
    }
    for (int i = 0; i < pad.fittings().zones().size(); i++) {
      var z = pad.fittings().zones().get(i);
      Vec2 at = middle.plus(new Vec2(z.x(), z.y()));
      Vec2 half = new Vec2(z.length() / 2, z.width() / 2);
      Vec2 other = new Vec2(half.x(), -half.y());
      Path path = Path.polygon(at.minus(half), at.plus(other), at.plus(half), at.minus(other));
      places.add(new Place("fittings.zones[" + i + "]", "zone " + (i + 1), path, at));
    }
  }

  private void round(String list, String word, List<Hole> holes) {
    for (int i = 0; i < holes.size(); i++) {
      Hole h = holes.get(i);
      circle(list + "[" + i + "]", word + " " + (i + 1), h.x(), h.y(), h.diameter());
    }
  }

  private void circle(String member, String words, double x, double y, double diameter) {
    Vec2 at = middle.plus(new Vec2(x, y));
    places.add(new Place(member, words, Path.circle(at, diameter / 2), at));
  }

  /** What a length is called in the job's units. */
  public String length(double mm) {
    return PartEdit.shown(mm, units == Units.MM);
  }

  /** A length as it stands on the plan: to a tenth of a mm, or to the finest mark on paper. */
  public String drawn(double mm) {
    return units == Units.INCH
        ? LengthText.inches(mm, LengthText.INCH_PARTS, Rounding.NEAREST)
        : length(Math.round(mm * 10) / 10.0);
  }

  /** Which run a side is in, from 0; -1 where it is as the rest. Tells line styles apart. */
  public int run(String side) {
    return RunEdit.run(pad, side).map(r -> pad.runs().indexOf(r)).orElse(-1);
  }

  /** What a side has of its own, such as {@code round 12, turn-under 35}; else empty. */
  public String difference(String side) {
    return RunEdit.run(pad, side).map(this::words).orElse("");
  }

  private String words(Run run) {
    List<String> words = new ArrayList<>();
    run.edge().ifPresent(e -> words.add(words(e)));
    run.turnUnder().ifPresent(mm -> words.add("turn-under " + length(mm)));
    run.overhang()
        .ifPresent(
            mm -> words.add(mm < 0 ? "stepped back " + length(-mm) : "overhang " + length(mm)));
    run.open().ifPresent(o -> words.add("open, " + o.name().toLowerCase(Locale.ROOT)));
    run.passage().ifPresent(mm -> words.add("passage " + length(mm)));
    return String.join(", ", words);
  }

  private String words(EdgeShape edge) {
    if (edge instanceof EdgeShape.Round r) {
      return "round " + length(r.radius());
    } else if (edge instanceof EdgeShape.Bevel b) {
      return "bevel " + length(b.size());
    }
    return edge instanceof EdgeShape.FullRound ? "full round" : "square";
  }

  /**
   * What is nearest under a pointer: handles before members, members before sides.
   *
   * @param reach how far off it may be, mm
   */
  public Optional<Hit> at(Vec2 p, double reach) {
    return new PlanReach(this, p, reach).nearest();
  }
}
