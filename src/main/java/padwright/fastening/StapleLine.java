package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.CornerPlan;
import padwright.geometry.Path;
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

  private final Path outline;
  private final List<String> names;
  private final double spacing;
  private final double in;
  private final double cornerClear;
  private final double crown;
  private final List<CornerPlan> corners;

  StapleLine(
      Path outline,
      List<String> names,
      double spacing,
      double edgeDistance,
      double cornerClear,
      double crown,
      List<CornerPlan> corners) {
    this.outline = outline;
    this.names = names;
    this.spacing = spacing;
    this.in = edgeDistance;
    this.cornerClear = cornerClear;
    this.crown = crown;
    this.corners = corners;
  }

  /**
   * A place for a staple.
   *
   * @param rank how many places from the middle of its side, signed
   */
  record Place(Vec2 at, double angle, String side, int rank, boolean corner) {}

  List<Place> places() {
    List<Place> places = new ArrayList<>();
    List<Segment> segments = outline.segments();
    boolean round = segments.stream().allMatch(Segment::isArc);
    if (round) {
      rim(places);
      return places;
    }
    for (int i = 0; i < segments.size(); i++) {
      Segment s = segments.get(i);
      if (!s.isArc()) {
        side(places, s, names.get(i), open(i, -1), open(i, 1));
      } else if (s.radius() - in >= SMALL_CURVE) {
        curve(places, s, names.get(i));
      }
    }
    corners.stream().filter(c -> c.radius() - in < SMALL_CURVE).forEach(c -> fold(places, c));
    return places;
  }

  /**
   * The staple that holds a corner's fold: through the strip on top and the flap under it, or
   * across the corner where two folds meet.
   */
  private void fold(List<Place> places, CornerPlan corner) {
    Vec2 apex = corner.apex();
    for (int i = 0; i < outline.segments().size(); i++) {
      Segment s = outline.segments().get(i);
      boolean starts = s.start().distance(apex) < 1e-9;
      boolean ends = s.end().distance(apex) < 1e-9;
      if (names.get(i).equals(corner.over()) && (starts || ends)) {
        // At a sharp corner further along, so that the other edge stays as far.
        double t =
            (THROUGH_FLAP * corner.reliefStop() + in * Math.max(0, -Math.cos(corner.turn())))
                / Math.sin(corner.turn());
        places.add(on(s, starts ? t : s.length() - t, names.get(i), 0, true));
        return;
      }
    }
    Vec2 inwards = inwards(corner);
    // As deep from both sides as the edge distance asks.
    double depth = in / Math.cos(corner.turn() / 2);
    places.add(
        new Place(
            apex.along(inwards, depth),
            inwards.left().angle(),
            corner.name() + " corner",
            0,
            true));
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

  /** Whether a side runs on into a curve that has staples of its own. */
  private boolean open(int i, int step) {
    Segment next = outline.segments().get(Math.floorMod(i + step, outline.segments().size()));
    return next.isArc() && next.radius() - in >= SMALL_CURVE;
  }

  private void side(
      List<Place> places, Segment s, String name, boolean openStart, boolean openEnd) {
    double length = s.length();
    double clear = Math.min(cornerClear, length / 4);
    double from = openStart ? Math.min(spacing / 2, length / 4) : clear;
    double to = length - (openEnd ? Math.min(spacing / 2, length / 4) : clear);
    double half = (to - from) / 2;
    int k = Math.max(1, (int) Math.ceil(half / spacing - 1e-9));
    if (2 * half < crown * 1.5) {
      k = 0;
    }
    double gap = k == 0 ? 0 : half / k;
    double middle = (from + to) / 2;
    for (int j = -k; j <= k; j++) {
      places.add(on(s, middle + j * gap, name, j, false));
    }
    // When the corner is made the rest of the side follows, as near as two crowns can meet.
    double nearest = in + crown * 1.5;
    int more = (int) Math.ceil((clear - nearest) / spacing - 1e-9);
    for (int j = 0; j < more; j++) {
      double t = nearest + j * (clear - nearest) / more;
      if (!openStart) {
        places.add(on(s, t, name, -(k + more - j), true));
      }
      if (!openEnd) {
        places.add(on(s, length - t, name, k + more - j, true));
      }
    }
  }

  private Place on(Segment s, double t, String name, int rank, boolean corner) {
    Vec2 along = s.directionAt(0);
    Vec2 at = s.start().along(along, t).along(along.left(), in);
    return new Place(at, along.angle(), name, rank, corner);
  }

  private void curve(List<Place> places, Segment s, String name) {
    double inner = s.radius() - in;
    int n = Math.max(1, (int) Math.ceil(inner * s.sweep() / ON_CURVES - 1e-9));
    for (int j = 0; j < n; j++) {
      Vec2 out = s.directionAt((j + 0.5) / n).right();
      places.add(
          new Place(s.centre().along(out, inner), out.left().angle(), name, j - n / 2, true));
    }
  }

  /** A round base: even steps along the staple line, the first in the middle of the front. */
  private void rim(List<Place> places) {
    Path line = padwright.geometry.Offset.by(outline, -in).orElse(outline);
    double length = line.length();
    int n = Math.max(4, (int) Math.ceil(length / ON_CURVES - 1e-9));
    n += (4 - n % 4) % 4;
    double front = frontDistance(line);
    for (int j = 0; j < n; j++) {
      double at = (front + j * length / n) % length;
      Segment s = line.segments().get(0);
      for (Segment candidate : line.segments()) {
        s = candidate;
        if (at <= s.length()) {
          break;
        }
        at -= s.length();
      }
      double fraction = Math.min(1, at / s.length());
      Vec2 direction = s.directionAt(fraction);
      places.add(
          new Place(
              s.pointAt(fraction), direction.angle(), facing(direction.right().angle()), j, false));
    }
  }

  /** Distance along a closed path of its lowest point. */
  private static double frontDistance(Path line) {
    double run = 0;
    double best = 0;
    double lowest = Double.POSITIVE_INFINITY;
    for (Segment s : line.segments()) {
      int steps = 64;
      for (int k = 0; k < steps; k++) {
        Vec2 p = s.pointAt((double) k / steps);
        if (p.y() < lowest - 1e-9) {
          lowest = p.y();
          best = run + s.length() * k / steps;
        }
      }
      run += s.length();
    }
    return best;
  }

  private static String facing(double normal) {
    int quarter = (int) Math.floor((normal + 0.75 * Math.PI) / (Math.PI / 2) + 1e-9);
    return List.of("front", "right", "back", "left").get(Math.floorMod(quarter, 4));
  }
}
