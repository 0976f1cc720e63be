package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.Outlines;

/**
 * A place where the outline turns: a sharp corner between two segments, or a chain of arcs that
 * join smoothly. A round outline is one chain that closes on itself.
 *
 * @param name such as "front left", or "rim" for a closed chain
 * @param first index of the segment before a sharp corner, or of the first arc of a chain
 * @param arcs how many arcs the chain has, 0 for a sharp corner
 * @param turn angle turned, radians
 * @param leastRadius of its arcs, 0 = sharp
 * @param mostRadius of its arcs
 * @param before name of the side before it
 * @param after name of the side after it
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
    Vec2 apex) {

  boolean sharp() {
    return arcs == 0;
  }

  boolean closed() {
    return turn > 2 * Math.PI - Offset.SMOOTH;
  }

  /** Every turning place of an outline, anticlockwise. */
  static List<CornerSite> of(Path outline, List<String> names) {
    List<Segment> segments = outline.segments();
    int n = segments.size();
    List<CornerSite> sites = new ArrayList<>();
    int start = 0;
    while (start < n && segments.get(start).isArc()) {
      start++;
    }
    if (start == n) {
      return List.of(chain(outline, names, 0, n));
    }
    for (int k = 0; k < n; k++) {
      int i = (start + k) % n;
      Segment here = segments.get(i);
      Segment next = segments.get((i + 1) % n);
      if (here.isArc()) {
        if (!segments.get((i + n - 1) % n).isArc()) {
          int count = 1;
          while (segments.get((i + count) % n).isArc()) {
            count++;
          }
          sites.add(chain(outline, names, i, count));
        }
      } else if (!next.isArc() && angle(here, next) > Offset.SMOOTH) {
        String before = names.get(i);
        String after = names.get((i + 1) % n);
        sites.add(
            new CornerSite(
                Outlines.cornerName(before, after),
                i,
                0,
                angle(here, next),
                0,
                0,
                before,
                after,
                here.end()));
      }
    }
    return sites;
  }

  private static CornerSite chain(Path outline, List<String> names, int first, int count) {
    List<Segment> segments = outline.segments();
    int n = segments.size();
    double turn = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int k = 0; k < count; k++) {
      Segment s = segments.get((first + k) % n);
      turn += s.sweep();
      least = Math.min(least, s.radius());
      most = Math.max(most, s.radius());
    }
    boolean closed = count == n;
    String before = closed ? names.get(first) : names.get((first + n - 1) % n);
    String after = closed ? names.get(first) : names.get((first + count) % n);
    String name = closed ? "rim" : Outlines.cornerName(before, after);
    Segment middle = segments.get((first + count / 2) % n);
    Vec2 apex = count % 2 == 1 ? middle.pointAt(0.5) : middle.start();
    return new CornerSite(name, first, count, turn, least, most, before, after, apex);
  }

  private static double angle(Segment a, Segment b) {
    Vec2 u = a.directionAt(1);
    Vec2 v = b.directionAt(0);
    return Math.atan2(u.cross(v), u.dot(v));
  }
}
