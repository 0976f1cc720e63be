package padwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Where two pieces of a path meet, from the closed forms of two lines, a line and a circle, and two
 * circles. Touching counts. Exact but for the rounding of doubles: the points lie within {@link
 * #TOUCH} of both pieces.
 */
public final class Intersections {
  /**
   * Nearer than this, mm, is touching: a thousand times the rounding of a sum of coordinates below
   * 10 m on a circle of 250 km, the flattest arc that is told from a line, and a thousandth of
   * anything that can be cut.
   */
  public static final double TOUCH = 1e-6;

  /** Directions whose sine is below this are parallel: a part in 1e12 of 10 m is 1e-8 mm. */
  private static final double PARALLEL = 1e-12;

  /** A line nearer than this, mm, to grazing a circle meets it once, not twice. */
  private static final double GRAZING = 1e-9;

  private Intersections() {}

  /**
   * The points that two segments share, in no order; where they run along each other, the ends of
   * the shared stretch and its middle. Both must have a length.
   */
  public static List<Vec2> between(Segment a, Segment b) {
    if (apart(a, b) || apart(b, a)) {
      return List.of();
    }
    List<Vec2> found = new ArrayList<>(4);
    ends(a, b, found);
    ends(b, a, found);
    if (alongEachOther(a, b)) {
      addMiddle(a, b, found);
      return found;
    }
    for (Vec2 p : ofSupports(a, b)) {
      addIfOnBoth(p, a, b, found);
    }
    return found;
  }

  /** Whether two lines are told apart at a glance: one lies wholly on one side of the other. */
  private static boolean apart(Segment line, Segment other) {
    if (line.isArc() || other.isArc()) {
      return false;
    }
    double dx = line.end().x() - line.start().x();
    double dy = line.end().y() - line.start().y();
    double start =
        dx * (other.start().y() - line.start().y()) - dy * (other.start().x() - line.start().x());
    double end =
        dx * (other.end().y() - line.start().y()) - dy * (other.end().x() - line.start().x());
    double touch = 2 * TOUCH * (Math.abs(dx) + Math.abs(dy));
    return start > touch && end > touch || start < -touch && end < -touch;
  }

  /**
   * The points that two segments share besides a point that is known to be on both: the end of one
   * and the start of the other. Knowing it, the other point of two circles, or of a line and a
   * circle, is found without a square root, so that a smooth joint never looks like a crossing.
   */
  static List<Vec2> besides(Segment a, Segment b, Vec2 joint) {
    List<Vec2> found = new ArrayList<>(4);
    ends(a, b, found);
    ends(b, a, found);
    if (alongEachOther(a, b)) {
      addMiddle(a, b, found);
    } else if (a.isArc() || b.isArc()) {
      addIfOnBoth(other(a, b, joint), a, b, found);
    }
    found.removeIf(p -> p.distance(joint) <= TOUCH);
    return found;
  }

  /** The second common point of the whole lines or circles, given the first; at least one arc. */
  private static Vec2 other(Segment a, Segment b, Vec2 joint) {
    if (a.isArc() && b.isArc()) {
      Vec2 axis = b.centre().minus(a.centre()).unit();
      Vec2 from = joint.minus(a.centre());
      return joint.along(axis.left(), -2 * from.dot(axis.left()));
    }
    Segment line = a.isArc() ? b : a;
    Vec2 d = line.end().minus(line.start()).unit();
    Vec2 centre = (a.isArc() ? a : b).centre();
    return joint.along(d, 2 * centre.minus(joint).dot(d));
  }

  private static void ends(Segment of, Segment on, List<Vec2> found) {
    Vec2 centre = on.isArc() ? on.centre() : Vec2.ZERO;
    for (Vec2 end : List.of(of.start(), of.end())) {
      // Most ends are told to be off an arc by its circle, without its angles.
      boolean offCircle = on.isArc() && Math.abs(end.distance(centre) - on.radius()) > 2 * TOUCH;
      if (!offCircle && on.distanceTo(end) <= TOUCH) {
        add(end, found);
      }
    }
  }

  private static void addIfOnBoth(Vec2 p, Segment a, Segment b, List<Vec2> found) {
    if (a.distanceTo(p) <= TOUCH && b.distanceTo(p) <= TOUCH) {
      add(p, found);
    }
  }

  private static void add(Vec2 p, List<Vec2> found) {
    for (Vec2 q : found) {
      if (p.distance(q) <= TOUCH) {
        return;
      }
    }
    found.add(p);
  }

  /** Whether both lie on one line or one circle and share more than a point of it. */
  private static boolean alongEachOther(Segment a, Segment b) {
    if (a.isArc() != b.isArc()) {
      return false;
    }
    if (a.isArc()) {
      return a.centre().distance(b.centre()) <= TOUCH && Math.abs(a.radius() - b.radius()) <= TOUCH;
    }
    Vec2 da = a.end().minus(a.start()).unit();
    Vec2 db = b.end().minus(b.start()).unit();
    return Math.abs(da.cross(db)) < PARALLEL
        && Math.abs(da.cross(b.start().minus(a.start()))) <= TOUCH;
  }

  /** Ends of a shared stretch were found; a point inside it says that it is more than its ends. */
  private static void addMiddle(Segment a, Segment b, List<Vec2> found) {
    double[] places = found.stream().mapToDouble(p -> fraction(a, p)).sorted().toArray();
    for (int i = 0; i + 1 < places.length; i++) {
      addIfOnBoth(a.pointAt((places[i] + places[i + 1]) / 2), a, b, found);
    }
  }

  /** Where along a segment a point of it lies, 0 to 1. */
  private static double fraction(Segment s, Vec2 p) {
    if (!s.isArc()) {
      return p.distance(s.start()) / s.chord();
    }
    Vec2 from = s.start().minus(s.centre());
    Vec2 to = p.minus(s.centre());
    double turned = Math.atan2(from.cross(to), from.dot(to)) * Math.signum(s.sweep());
    // A hair before the start is the start, not a whole turn on.
    double before = -TOUCH / s.radius();
    return (turned < before ? turned + 2 * Math.PI : turned) / Math.abs(s.sweep());
  }

  /** The common points of the whole lines or circles the segments lie on. */
  private static List<Vec2> ofSupports(Segment a, Segment b) {
    if (a.isArc() && b.isArc()) {
      return circles(a.centre(), a.radius(), b.centre(), b.radius());
    }
    if (a.isArc()) {
      return lineAndCircle(b, a.centre(), a.radius());
    }
    return b.isArc() ? lineAndCircle(a, b.centre(), b.radius()) : lines(a, b);
  }

  private static List<Vec2> lines(Segment a, Segment b) {
    Vec2 da = a.end().minus(a.start());
    Vec2 db = b.end().minus(b.start());
    double cross = da.cross(db);
    if (Math.abs(cross) < PARALLEL * da.length() * db.length()) {
      return List.of();
    }
    return List.of(a.start().along(da, b.start().minus(a.start()).cross(db) / cross));
  }

  private static List<Vec2> lineAndCircle(Segment line, Vec2 centre, double radius) {
    Vec2 d = line.end().minus(line.start()).unit();
    Vec2 foot = line.start().along(d, centre.minus(line.start()).dot(d));
    double away = foot.distance(centre);
    if (away > radius + TOUCH) {
      return List.of();
    }
    if (away > radius - GRAZING) {
      return List.of(foot);
    }
    double half = Math.sqrt((radius - away) * (radius + away));
    return List.of(foot.along(d, -half), foot.along(d, half));
  }

  private static List<Vec2> circles(Vec2 c1, double r1, Vec2 c2, double r2) {
    double apart = c1.distance(c2);
    if (apart > r1 + r2 + TOUCH || apart < Math.abs(r1 - r2) - TOUCH || apart == 0) {
      return List.of();
    }
    Vec2 axis = c2.minus(c1).times(1 / apart);
    double along = (apart + (r1 - r2) * (r1 + r2) / apart) / 2;
    double off = (r1 - along) * (r1 + along);
    Vec2 foot = c1.along(axis, along);
    if (off <= 2 * GRAZING * r1) {
      return List.of(c1.along(axis, Math.copySign(r1, along)));
    }
    double half = Math.sqrt(off);
    return List.of(foot.along(axis.left(), half), foot.along(axis.left(), -half));
  }
}
