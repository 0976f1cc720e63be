package padwright.cover;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.IntPredicate;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.Outlines;

/**
 * A place where a base outline turns: a sharp corner, or a chain of arcs that turn the same way and
 * run smoothly into each other. Where it turns outwards the covering has too much, where it is
 * hollow too little.
 *
 * @param first the segment before a sharp corner, or the first arc of a chain
 * @param arcs number of arcs, 0 for a sharp corner
 * @param turn in all, radians; negative where the outline is hollow
 * @param before which of the four sides the outline faces before it
 * @param after the same after it
 * @param over names of the segments before and after it
 * @param outBefore outward normal where the side before it ends
 * @param outAfter outward normal where the side after it begins
 * @param apex the corner, or the middle of the chain
 */
record CornerSite(
    String name,
    int first,
    int arcs,
    double turn,
    double leastRadius,
    double mostRadius,
    String before,
    String after,
    List<String> over,
    Vec2 outBefore,
    Vec2 outAfter,
    Vec2 apex) {
  boolean sharp() {
    return arcs == 0;
  }

  boolean hollow() {
    return turn < 0;
  }

  boolean closed() {
    return turn > 2 * Math.PI - Offset.SMOOTH;
  }

  /** Its place among the treatments that a job lists: from the front left corner, or by points. */
  int order() {
    String own = Outlines.sideOf(name);
    if (own.startsWith("point ") || own.startsWith("side ")) {
      // The corners of a free outline are named in the order of its points.
      return Integer.parseInt(own.substring(own.indexOf(' ') + 1)) - 1;
    }
    return switch (name) {
      case "front right" -> 1;
      case "back right" -> 2;
      case "back left" -> 3;
      default -> 0;
    };
  }

  /**
   * Every turning place of an outline, anticlockwise; a chain ends where two arcs are not alike.
   *
   * @param alike whether the covering ends along two sides in one way
   */
  static List<CornerSite> of(Path outline, List<String> names, BiPredicate<String, String> alike) {
    List<Segment> segments = outline.segments();
    int n = segments.size();
    List<CornerSite> sites = new ArrayList<>();
    IntPredicate goesOn =
        i -> goesOn(segments, i) && alike.test(names.get(i), names.get((i + 1) % n));
    int start = start(segments, goesOn);
    if (start == n) {
      return List.of(chain(outline, names, 0, n));
    }
    int k = 0;
    while (k < n) {
      int i = (start + k) % n;
      int count = 0;
      if (segments.get(i).isArc()) {
        count = 1;
        while (k + count < n && goesOn.test((start + k + count - 1) % n)) {
          count++;
        }
        sites.add(chain(outline, names, i, count));
      }
      int last = (start + k + Math.max(1, count) - 1) % n;
      double turn = angle(segments.get(last), segments.get((last + 1) % n));
      if (Math.abs(turn) > Outlines.CORNER) {
        sites.add(corner(outline, names, last, turn));
      }
      k += Math.max(1, count);
    }
    return sites;
  }

  /** A segment that no chain runs on into: the first line, or an arc; n where all is one chain. */
  private static int start(List<Segment> segments, IntPredicate goesOn) {
    int n = segments.size();
    for (int i = 0; i < n; i++) {
      if (!segments.get(i).isArc()) {
        return i;
      }
    }
    for (int i = 0; i < n; i++) {
      if (!goesOn.test((i + n - 1) % n)) {
        return i;
      }
    }
    return n;
  }

  /** Whether segment i and the next are arcs of one chain. */
  private static boolean goesOn(List<Segment> segments, int i) {
    Segment a = segments.get(i);
    Segment b = segments.get((i + 1) % segments.size());
    return a.isArc()
        && b.isArc()
        && a.bulge() * b.bulge() > 0
        && Math.abs(angle(a, b)) <= Outlines.CORNER;
  }

  private static CornerSite corner(Path outline, List<String> names, int i, double turn) {
    int n = names.size();
    Segment here = outline.segments().get(i);
    Segment next = outline.segments().get((i + 1) % n);
    String before = names.get(i);
    String after = names.get((i + 1) % n);
    return new CornerSite(
        Outlines.cornerName(before, after, names),
        i,
        0,
        turn,
        0,
        0,
        Outlines.facing(before, here),
        Outlines.facing(after, next),
        List.of(before, after),
        here.directionAt(1).right(),
        next.directionAt(0).right(),
        here.end());
  }

  /** How many sides as they were drawn a chain of arcs covers. */
  private static int sides(List<String> names, int first, int count) {
    Set<String> own = new LinkedHashSet<>();
    for (int k = 0; k < count; k++) {
      own.add(names.get((first + k) % names.size()));
    }
    return own.stream().mapToInt(Outlines::sidesIn).sum();
  }

  private static CornerSite chain(Path outline, List<String> names, int first, int count) {
    List<Segment> segments = outline.segments();
    int n = segments.size();
    double turn = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int k = 0; k < count; k++) {
      Segment s = segments.get((first + k) % n);
      // Joints within a chain may turn a little themselves.
      turn += s.sweep() + (k == 0 ? 0 : angle(segments.get((first + k - 1) % n), s));
      least = Math.min(least, s.radius());
      most = Math.max(most, s.radius());
    }
    boolean closed = count == n;
    int previous = closed ? first : (first + n - 1) % n;
    int next = closed ? first : (first + count) % n;
    String before = Outlines.facing(names.get(previous), segments.get(previous));
    String after = Outlines.facing(names.get(next), segments.get(next));
    String own =
        Outlines.joined(
            names.get(first), names.get((first + count - 1) % n), sides(names, first, count));
    boolean plain = Outlines.SIDES.contains(Outlines.sideOf(names.get(previous)));
    String name = closed ? "rim" : plain ? Outlines.cornerName(before, after, names) : own;
    Segment middle = segments.get((first + count / 2) % n);
    Vec2 apex = count % 2 == 1 ? middle.pointAt(0.5) : middle.start();
    return new CornerSite(
        name,
        first,
        count,
        turn,
        least,
        most,
        before,
        after,
        List.of(names.get(previous), names.get(next)),
        segments.get(first).directionAt(0).right(),
        segments.get((first + count - 1) % n).directionAt(1).right(),
        apex);
  }

  private static double angle(Segment a, Segment b) {
    Vec2 u = a.directionAt(1);
    Vec2 v = b.directionAt(0);
    return Math.atan2(u.cross(v), u.dot(v));
  }
}
