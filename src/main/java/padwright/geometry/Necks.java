package padwright.geometry;

import java.util.Arrays;
import java.util.List;

/**
 * The narrowest place of a closed outline: the shortest way straight in from one of its sides to
 * another that faces it. Looked for from points along every side and its ends, so that it may be
 * missed by as much as half their distance makes on a side that lies aslant.
 *
 * <p>Sides that meet in a corner are no narrow place: what is turned in over both is folded there.
 */
public final class Necks {
  /** Points stand about this far apart along a side, mm. */
  private static final double STEP = 10;

  /** At most so many on one side. */
  private static final int MOST = 24;

  /** Sides face each other when the angle between them is under 30 degrees; own choice. */
  private static final double FACING = -Math.cos(Math.PI / 6);

  /** The first and last points of a side stand this far from its ends, as a part of it. */
  private static final double END = 1e-6;

  /** A side is not met where the way in starts, mm. */
  private static final double START = 1e-6;

  private Necks() {}

  /**
   * Its width, mm; infinite where no two sides face each other.
   *
   * @param outline closed, simple, anticlockwise
   * @param arcs whether curves count; if not, only straight sides face each other
   */
  public static double narrowest(Path outline, boolean arcs) {
    return narrowest(outline, arcs, Double.POSITIVE_INFINITY);
  }

  /** The same; a width over {@code most} does not matter, and is given as that. */
  static double narrowest(Path outline, boolean arcs, double most) {
    return least(outline, arcs, new double[outline.segments().size()], most);
  }

  /**
   * The room that is left between two strips that face each other, where it is least, mm; negative
   * where they overlap.
   *
   * @param depths how far each side's strip reaches in
   */
  public static double room(Path outline, double[] depths) {
    return least(outline, true, depths, Double.POSITIVE_INFINITY);
  }

  private static double least(Path outline, boolean arcs, double[] depths, double most) {
    List<Segment> segments = outline.segments();
    Bounds all = outline.bounds();
    double reach = all.width() + all.height();
    double deepest = Arrays.stream(depths).max().orElse(0);
    double least = most;
    Boxes boxes = Boxes.of(segments);
    for (int i = 0; i < segments.size(); i++) {
      Segment s = segments.get(i);
      if (s.isArc() && !arcs) {
        continue;
      }
      int steps = (int) Math.max(2, Math.min(MOST, Math.round(s.length() / STEP)));
      for (int k = 0; k <= steps; k++) {
        double at = Math.min(1 - END, Math.max(END, (double) k / steps));
        Vec2 p = s.pointAt(at);
        // What lies further than the least room so far is of no interest.
        double far = Math.min(reach, Math.max(0, least) + depths[i] + deepest + STEP);
        Segment ray = Segment.line(p, p.along(s.directionAt(at).left(), far));
        least = Math.min(least, room(segments, boxes, i, ray, arcs, depths));
      }
    }
    return least;
  }

  /** What strips leave of a way in up to the first side that it meets, if that faces its start. */
  private static double room(
      List<Segment> segments, Boxes boxes, int from, Segment ray, boolean arcs, double[] depths) {
    Vec2 p = ray.start();
    double width = Double.POSITIVE_INFINITY;
    Vec2 at = p;
    int met = -1;
    for (int j : boxes.meeting(ray.bounds())) {
      Segment other = segments.get(j);
      if (j == from && !other.isArc()) {
        continue;
      }
      for (Vec2 q : Intersections.between(ray, other)) {
        double away = q.distance(p);
        if (away > START && away < width) {
          width = away;
          at = q;
          met = j;
        }
      }
    }
    if (met < 0 || corner(segments.size(), from, met) || (segments.get(met).isArc() && !arcs)) {
      return Double.POSITIVE_INFINITY;
    }
    Vec2 in = ray.directionAt(0);
    return facing(segments.get(met), at, in) < FACING
        ? width - depths[from] - depths[met]
        : Double.POSITIVE_INFINITY;
  }

  private static boolean corner(int n, int i, int j) {
    int apart = Math.floorMod(j - i, n);
    return apart == 1 || apart == n - 1;
  }

  /** The cosine between the way in and the inward normal of what it meets. */
  private static double facing(Segment other, Vec2 at, Vec2 in) {
    if (!other.isArc()) {
      return other.directionAt(0).left().dot(in);
    }
    Vec2 towards = other.centre().minus(at).unit();
    return (other.bulge() > 0 ? towards : towards.times(-1)).dot(in);
  }
}
