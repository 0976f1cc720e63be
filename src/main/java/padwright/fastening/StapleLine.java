package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import padwright.cover.CornerPlan;
import padwright.design.WrappedPad.Side;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.PathPlaces;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * Sets staples out along a base's edge: on a side from its middle outwards in equal gaps that never
 * exceed the spacing, staying off the corners until they are made; closer on curves.
 */
final class StapleLine {
  /** Spacing on a curve, mm; practice. */
  static final double ON_CURVES = 12;

  /** Below this radius of the staple line a rounded corner is stapled from its two sides. mm. */
  private static final double SMALL_CURVE = 13;

  /** Where in a flap of the relief stop's width its staple goes, from the arris; own choice. */
  private static final double THROUGH_FLAP = 0.7;

  /** At a corner that turns less, radians, the fold is stapled across, as where two folds meet. */
  private static final double SLIGHT_TURN = 0.6;

  /** Staples stay at most this share of a short side off its corners; own choice. */
  private static final double CORNER_SHARE = 0.25;

  /** Chords may leave the outline by this where a place is looked for inside it, mm. */
  private static final double FLAT = 0.01;

  private final Path outline;
  private final boolean convex;
  private final PathPlaces inside;

  /** Straight sides' inward normals, null at arcs; asked for at every place. */
  private final Vec2[] inwardsOfSide;

  private final List<String> names;
  private final double spacing;
  private final double in;
  private final double cornerClear;
  private final double cornerLeast;
  private final double crown;
  private final List<CornerPlan> corners;
  private final Side seen;
  private final Predicate<String> stapled;

  /**
   * @param cornerClear how far from a corner a side's staples stay until it is made
   * @param cornerLeast how far every crown stays from a sharp corner for good; 0 where the board
   *     does not split there
   */
  StapleLine(
      Path outline,
      List<String> names,
      double spacing,
      double edgeDistance,
      double cornerClear,
      double cornerLeast,
      double crown,
      List<CornerPlan> corners,
      Side seen,
      Predicate<String> stapled) {
    this.outline = outline;
    this.convex = Offset.convex(outline);
    this.inside = new PathPlaces(outline, FLAT);
    this.inwardsOfSide =
        outline.segments().stream()
            .map(s -> s.isArc() ? null : s.directionAt(0).left())
            .toArray(Vec2[]::new);
    this.names = names;
    this.spacing = Math.max(spacing, Crowns.pitch(crown));
    this.in = edgeDistance;
    this.cornerClear = cornerClear;
    this.cornerLeast = cornerLeast;
    this.crown = crown;
    this.corners = corners;
    this.seen = seen;
    this.stapled = stapled;
  }

  /**
   * A place for a staple.
   *
   * @param rank how many places from the middle of its side, signed
   */
  record Place(Vec2 at, double angle, String side, int rank, boolean corner) {}

  /** In the order in which places are kept where two would meet: folds, sides, curves. */
  List<Place> places() {
    List<Place> places = new ArrayList<>();
    List<Segment> segments = outline.segments();
    if (isRim(corners)) {
      return RimLine.places(outline, in, spacing, crown, seen);
    }
    corners.stream()
        .filter(c -> c.turn() > 0 && c.radius() - in < SMALL_CURVE)
        .forEach(c -> fold(places, c));
    List<Place> made = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      Segment s = segments.get(i);
      if (!s.isArc() && stapled.test(names.get(i))) {
        side(places, made, i);
      }
    }
    for (int i = 0; i < segments.size(); i++) {
      Segment s = segments.get(i);
      if (s.isArc() && inner(s) >= SMALL_CURVE && stapled.test(names.get(i))) {
        curve(places, s, names.get(i));
      }
    }
    places.addAll(made);
    return places;
  }

  /** Whether the whole edge is one rounding. */
  static boolean isRim(List<CornerPlan> corners) {
    return corners.size() == 1 && corners.get(0).turn() > 2 * Math.PI - 1e-6;
  }

  /** The radius of the staple line along an arc: a hollow's grows inwards. */
  private double inner(Segment arc) {
    return arc.bulge() > 0 ? arc.radius() - in : arc.radius() + in;
  }

  /**
   * The staple that holds a corner's fold: through the strip on top and the flap under it, or
   * across the corner where two folds meet.
   */
  private void fold(List<Place> places, CornerPlan corner) {
    for (int i = 0; i < outline.segments().size() && corner.turn() > SLIGHT_TURN; i++) {
      Segment s = outline.segments().get(i);
      if (!s.isArc()
          && names.get(i).equals(corner.over())
          && (starts(s, corner) || ends(s, corner))) {
        double t = alongFold(s, corner);
        if (!stapled.test(names.get(i))) {
          return;
        }
        Place place = on(s, starts(s, corner) ? t : s.length() - t, names.get(i), 0, true);
        if (inside.contains(place.at())) {
          places.add(place);
        }
        return;
      }
    }
    Vec2 inwards = inwards(corner);
    // As deep from both sides as the edge distance asks.
    double depth = Math.max(in / Math.cos(corner.turn() / 2), cornerLeast);
    addInside(
        places,
        new Place(
            corner.apex().along(inwards, depth),
            inwards.left().angle(),
            corner.name() + " corner",
            0,
            true));
  }

  private static boolean starts(Segment s, CornerPlan corner) {
    return s.start().distance(corner.apex()) < 1e-9;
  }

  private static boolean ends(Segment s, CornerPlan corner) {
    return s.end().distance(corner.apex()) < 1e-9;
  }

  /** How far from the corner its staple stands along the side whose strip lies on top. */
  private double alongFold(Segment side, CornerPlan corner) {
    // Its outer leg goes through the flap, and still half the edge distance from the other edge.
    double least = Math.max(THROUGH_FLAP * corner.reliefStop(), (crown + in) / 2);
    least = Math.max(least, offCorner());
    // At a sharp corner further along, so that the other edge stays as far.
    double t = (least + in * Math.max(0, -Math.cos(corner.turn()))) / Math.sin(corner.turn());
    return Math.min(t, side.length() / 2);
  }

  /** How far along a side a staple's outer leg is just far enough from the corner. */
  private double offCorner() {
    return cornerLeast <= in ? 0 : crown / 2 + Math.sqrt(cornerLeast * cornerLeast - in * in);
  }

  /** How near to an end of a side its own staples may come for the one that holds the fold. */
  private double roomAtEnd(int i, boolean start) {
    Segment s = outline.segments().get(i);
    for (CornerPlan c : corners) {
      if (c.radius() > 0 || !(start ? starts(s, c) : ends(s, c))) {
        continue;
      }
      if (c.over().equals(names.get(i))) {
        return alongFold(s, c) + Crowns.pitch(crown);
      }
      // The fold's staple lies across the end of this side, or across the corner.
      double beside = in + (c.over().isEmpty() ? crown : crown / 2) + Crowns.APART;
      return Math.max(beside, c.turn() > 0 ? offCorner() : 0);
    }
    return 0;
  }

  private Vec2 inwards(CornerPlan corner) {
    Vec2 sum = Vec2.ZERO;
    for (Segment s : outline.segments()) {
      if (s.isArc() && s.pointAt(0.5).distance(corner.apex()) < 1e-9) {
        return s.directionAt(0.5).left();
      }
      if (s.start().distance(corner.apex()) < 1e-9) {
        sum = sum.plus(s.directionAt(0).left());
      } else if (s.end().distance(corner.apex()) < 1e-9) {
        sum = sum.plus(s.directionAt(1).left());
      }
    }
    return sum.unit();
  }

  /** Whether a side runs on into a curve or a line that has staples of its own. */
  private boolean open(int i, int step) {
    Segment own = outline.segments().get(i);
    Segment next = outline.segments().get(Math.floorMod(i + step, outline.segments().size()));
    return next.isArc()
        ? inner(next) >= SMALL_CURVE
        : Math.abs(own.directionAt(0).cross(next.directionAt(0))) < Offset.SMOOTH;
  }

  private void side(List<Place> places, List<Place> made, int i) {
    Segment s = outline.segments().get(i);
    String name = names.get(i);
    boolean openStart = open(i, -1);
    boolean openEnd = open(i, 1);
    double length = s.length();
    double room = Math.max(roomAtEnd(i, true), roomAtEnd(i, false));
    double clear = Math.max(Math.min(cornerClear, length * CORNER_SHARE), room);
    double from = openStart ? Math.min(spacing / 2, length / 4) : clear;
    double to = length - (openEnd ? Math.min(spacing / 2, length / 4) : clear);
    double middle = (from + to) / 2;
    int last = row(places, s, name, middle, Math.max(0, to - from));
    // When the corner is made the rest of the side follows, as near as two crowns can meet.
    double nearest = Math.max(in + crown * 1.5, room);
    double left = clear - nearest;
    int more = Math.max(0, (int) Math.ceil(left / spacing - 1e-9));
    if (more > 0 && left / more < Crowns.pitch(crown)) {
      more = (int) Math.floor(left / Crowns.pitch(crown));
    }
    double gap = more == 0 ? 0 : Math.min(spacing, left / more);
    for (int j = 1; j <= more; j++) {
      double t = clear - j * gap;
      if (!openStart) {
        addInside(made, on(s, t, name, -(last + j), true));
      }
      if (!openEnd) {
        addInside(made, on(s, length - t, name, last + j, true));
      }
    }
  }

  /**
   * A row of equal gaps about a middle: with a staple in the middle where crowns leave room for an
   * even number of gaps. Gives the highest rank.
   */
  private int row(List<Place> places, Segment s, String name, double middle, double span) {
    double pitch = Crowns.pitch(crown);
    int gaps = 2 * (int) Math.ceil(span / 2 / spacing - 1e-9);
    if (gaps > 0 && span / gaps < pitch) {
      gaps = (int) Math.ceil(span / spacing - 1e-9);
    }
    double gap = gaps == 0 ? 0 : span / gaps;
    if (gaps > 0 && gap < pitch) {
      gaps--;
      gap = Math.min(spacing, gaps == 0 ? 0 : span / gaps);
    }
    int last = (gaps + 1) / 2;
    for (int j = 0; j <= gaps; j++) {
      double off = j - gaps / 2.0;
      int rank = (int) (Math.signum(off) * Math.ceil(Math.abs(off)));
      addInside(places, on(s, middle + off * gap, name, rank, false));
    }
    return last;
  }

  /** At a corner sharper than square a side's staples must not come too near to its other edge. */
  private void addInside(List<Place> places, Place p) {
    boolean tooNear = convex ? outsideALine(p.at(), in - 1e-6) : inside.nearer(p.at(), in - 1e-6);
    if (inside.contains(p.at()) && !tooNear) {
      places.add(p);
    }
  }

  private boolean outsideALine(Vec2 p, double least) {
    for (int i = 0; i < inwardsOfSide.length; i++) {
      if (fromLine(i, p) < least) {
        return true;
      }
    }
    return false;
  }

  /** How far inside the line of a side a point is; any distance inside an arc is enough. */
  private double fromLine(int i, Vec2 p) {
    Vec2 start = outline.segments().get(i).start();
    Vec2 n = inwardsOfSide[i];
    return n == null
        ? Double.POSITIVE_INFINITY
        : (p.x() - start.x()) * n.x() + (p.y() - start.y()) * n.y();
  }

  private Place on(Segment s, double t, String name, int rank, boolean corner) {
    Vec2 along = s.directionAt(0);
    Vec2 at = s.start().along(along, t).along(along.left(), in);
    return new Place(at, along.angle(), name, rank, corner);
  }

  private void curve(List<Place> places, Segment s, String name) {
    int n = Math.max(1, count(inner(s) * Math.abs(s.sweep()), crown));
    // A curve of a free outline is a side of its own; one that joins two sides is their corner.
    boolean corner = !name.startsWith("side ");
    for (int j = 0; j < n; j++) {
      Vec2 out = s.directionAt((j + 0.5) / n).right();
      Vec2 at = s.pointAt((j + 0.5) / n).along(out, -in);
      Place place = new Place(at, out.left().angle(), name, j - n / 2, corner);
      addInside(places, place);
    }
  }

  /** How many staples a length of curve takes: close, but no closer than their crowns allow. */
  static int count(double length, double crown) {
    int close = (int) Math.ceil(length / ON_CURVES - 1e-9);
    return Math.min(close, (int) Math.floor(length / Crowns.pitch(crown) + 1e-9));
  }
}
