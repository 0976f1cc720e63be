package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;
import padwright.pattern.Pads;

/**
 * A pad with one hollow corner, covered by a covering of no thickness, and the walls about that
 * corner as points in space: what lies in them is measured there by chords. Foam of 40 on a board
 * of 12; both walls are the same curve in the section, moved along their side.
 */
final class SpaceHollow {
  /** The edges looked at, with the curve of the taut covering over each, worked by hand. */
  enum Edge {
    SQUARE,
    ROUND_10,
    ROUND_18,
    BEVEL_15,
    FULL_ROUND,
    OVERHANG_4,
    OVERHANG_15
  }

  private static final double HEIGHT = 52;
  private static final double BOARD = 12;
  private static final double CHORD = 0.01;

  private final Edge edge;
  private final double turn;
  private final List<Vec2> section = new ArrayList<>();
  private final List<Double> level = new ArrayList<>();

  /**
   * @param turn how far the outline turns inwards, radians
   */
  SpaceHollow(Edge edge, double turn) {
    this.edge = edge;
    this.turn = turn;
    switch (edge) {
      case SQUARE -> walk(new Vec2(0, HEIGHT), new Vec2(0, 0));
      case ROUND_10 -> rounded(10);
      case ROUND_18 -> rounded(18);
      // Half the foam: from a quarter turn on the covering hangs straight down to the board.
      case FULL_ROUND -> rounded(20);
      case BEVEL_15 -> walk(new Vec2(-15, HEIGHT), new Vec2(0, HEIGHT - 15), new Vec2(0, 0));
      case OVERHANG_4 -> overhang(4);
      case OVERHANG_15 -> overhang(15);
    }
  }

  private void rounded(double radius) {
    Vec2[] points = new Vec2[4002];
    for (int k = 0; k <= 4000; k++) {
      double a = Math.PI / 2 * k / 4000;
      points[k] = new Vec2(radius * (Math.sin(a) - 1), HEIGHT - radius + radius * Math.cos(a));
    }
    points[4001] = new Vec2(0, 0);
    walk(points);
  }

  /** From the foam's lower edge the covering goes straight in to the board's. */
  private void overhang(double by) {
    walk(new Vec2(0, HEIGHT), new Vec2(by, HEIGHT), new Vec2(by, BOARD), new Vec2(0, 0));
  }

  private void walk(Vec2... corners) {
    section.add(corners[0]);
    level.add(corners[0].x());
    for (int i = 0; i + 1 < corners.length; i++) {
      int parts = (int) Math.ceil(corners[i].distance(corners[i + 1]) / CHORD);
      for (int k = 1; k <= parts; k++) {
        Vec2 p = corners[i].plus(corners[i + 1].minus(corners[i]).times((double) k / parts));
        level.add(level.get(level.size() - 1) + p.distance(section.get(section.size() - 1)));
        section.add(p);
      }
    }
  }

  Pads pads() {
    Pads pads = new Pads();
    double x = 700 * Math.cos(turn / 2);
    double y = 700 * Math.sin(turn / 2);
    List<OutlineShape.Point> points = new ArrayList<>();
    for (Vec2 p :
        List.of(
            new Vec2(-x, -400), new Vec2(x, -400), new Vec2(x, y), Vec2.ZERO, new Vec2(-x, y))) {
      points.add(new OutlineShape.Point(p, new OutlineShape.Leg.Straight()));
    }
    pads.outline = new OutlineShape.FreePath(points);
    pads.covering = "woven-wool";
    pads.coverThickness = OptionalDouble.of(0);
    double over = edge == Edge.OVERHANG_4 ? 4 : edge == Edge.OVERHANG_15 ? 15 : 0;
    pads.foam = List.of(Pads.layer(HEIGHT - BOARD, over));
    pads.thickness = BOARD;
    pads.edge =
        switch (edge) {
          case ROUND_10 -> new EdgeShape.Round(10);
          case ROUND_18 -> new EdgeShape.Round(18);
          case BEVEL_15 -> new EdgeShape.Bevel(15);
          case FULL_ROUND -> new EdgeShape.FullRound();
          default -> new EdgeShape.Square();
        };
    return pads;
  }

  /** The frame of the outline has its origin in the middle of its box. */
  private Vec2 apex() {
    double y = 700 * Math.sin(turn / 2);
    return new Vec2(0, (400 - y) / 2);
  }

  /** Along the side before the corner, which comes down to it from the right, or after it. */
  private Vec2 along(boolean first) {
    return Vec2.polar(first ? Math.PI + turn / 2 : Math.PI - turn / 2);
  }

  /** Path length at which the back begins. */
  double backStart() {
    return level.get(level.size() - 1);
  }

  /** Path length of a flat point of the cover, out from the side before the corner. */
  double level(Vec2 flat) {
    return flat.minus(apex()).dot(along(true).right());
  }

  private Vec2 section(double s) {
    if (s >= backStart()) {
      // On the back, level with its board and in from the edge.
      return new Vec2(-(s - backStart()), 0);
    }
    if (s <= level.get(0)) {
      return new Vec2(s, HEIGHT);
    }
    int low = 0;
    int high = level.size() - 1;
    while (high - low > 1) {
      int mid = (low + high) / 2;
      if (level.get(mid) <= s) {
        low = mid;
      } else {
        high = mid;
      }
    }
    double t = (s - level.get(low)) / (level.get(high) - level.get(low));
    return section.get(low).plus(section.get(high).minus(section.get(low)).times(t));
  }

  /** A place of the covering in space, so far past the corner along one of its sides. */
  private Vec3 at(boolean first, double past, double s) {
    Vec2 p = section(s);
    Vec2 way = first ? along(true) : along(false).times(-1);
    Vec2 plan = apex().along(way, past).along(along(first).right(), p.x());
    return new Vec3(plan.x(), plan.y(), p.y());
  }

  private static double between(Vec3 a, Vec3 b) {
    return a.minus(b).length();
  }

  /** Length in space of a straight line drawn on the flat cover. */
  double length(Path flat, boolean first) {
    double sum = 0;
    int parts = 5000;
    Vec3 last = null;
    for (int k = 0; k <= parts; k++) {
      Vec2 p = flat.start().plus(flat.end().minus(flat.start()).times((double) k / parts));
      Vec2 v = p.minus(apex());
      double past = first ? v.dot(along(true)) : -v.dot(along(false));
      Vec3 here = at(first, past, v.dot(along(first).right()));
      sum += last == null ? 0 : between(last, here);
      last = here;
    }
    return sum;
  }

  /** Where the two walls meet: the same distance out from both sides. */
  private Vec3 onArris(double s) {
    Vec2 p = section(s);
    Vec2 plan = apex().along(new Vec2(0, 1), p.x() / Math.cos(turn / 2));
    return new Vec3(plan.x(), plan.y(), p.y());
  }

  /** Length of the arris in space between two path lengths. */
  double arris(double from, double to) {
    double sum = 0;
    int parts = 2000;
    for (int k = 0; k < parts; k++) {
      sum +=
          between(
              onArris(from + (to - from) * k / parts),
              onArris(from + (to - from) * (k + 1) / parts));
    }
    return sum;
  }

  /** From the arris level along the wall to a seam drawn on the flat cover before the corner. */
  double rung(Path seam, double s) {
    double from = level(seam.start());
    double part = (s - from) / (level(seam.end()) - from);
    Vec2 p = seam.start().plus(seam.end().minus(seam.start()).times(part));
    return between(onArris(s), at(true, p.minus(apex()).dot(along(true)), s));
  }
}
