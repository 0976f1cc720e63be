package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/**
 * A sharp corner of the base outline on the flat cover. A point near it is given by how far it lies
 * past the corner along one of its two sides ({@code past}) and how far out from that side ({@code
 * s}, path length from the base outline's line on the top).
 *
 * @param apex the corner of the base outline
 * @param before direction of travel along the side before the corner
 * @param after the same along the side after it
 * @param turn angle between them, radians, over 0
 * @param mitre tan of half the turn: how far a mitre runs past the corner for each mm out
 * @param pathBefore the covering's way over the edge of the side before the corner
 * @param pathAfter the same over the side after it; both come from one height to one back
 * @param shift how far past the corner the bisector of the surplus runs where it crosses the line
 *     of the side before, 0 where both sides have one section; between two sections the halves are
 *     no mirror images, and the flap has to give
 */
public record CornerFrame(
    Vec2 apex,
    Vec2 before,
    Vec2 after,
    double turn,
    double mitre,
    TautPath pathBefore,
    TautPath pathAfter,
    double shift) {

  /** A flap narrower than this, mm, lies inside the bend of the covering itself. */
  private static final double FLAP_BEGINS = 0.001;

  /** Parts of a bend in which a fold that follows it is drawn. */
  private static final int PER_ARC = 8;

  /** Halvings that bring a metre under 1e-10 mm: both hands of a part must agree to 1e-9. */
  private static final int BISECTIONS = 44;

  static CornerFrame of(
      Vec2 apex, Vec2 before, Vec2 after, TautPath pathBefore, TautPath pathAfter) {
    double turn = Math.atan2(before.cross(after), before.dot(after));
    double mitre = Math.tan(turn / 2);
    // The surplus is halved from where the folds at the two walls' ends cross: each lies as far
    // past
    // the corner there as the other wall stands out.
    double shift =
        pathBefore == pathAfter ? 0 : (pathAfter.wallOut() - pathBefore.wallOut()) / Math.sin(turn);
    return new CornerFrame(apex, before, after, turn, mitre, pathBefore, pathAfter, shift);
  }

  TautPath path(boolean first) {
    return first ? pathBefore : pathAfter;
  }

  /** Whether both sides have the same section, so that all is alike on both. */
  boolean even() {
    return pathBefore == pathAfter;
  }

  /** How far past the corner, along a side so far out, the line of the other side is met. */
  private static double meetPast(double turn, double own, double other) {
    return (other - own * Math.cos(turn)) / Math.sin(turn);
  }

  /** How far past the corner a wall so far out meets the plane of the other wall so far out. */
  double pastPlane(double own, double other) {
    return meetPast(turn, own, other);
  }

  /** A flat point seen from the side before (first) or after the corner. */
  Vec2 flat(boolean first, double past, double s) {
    return first
        ? apex.along(before, past).along(before.right(), s)
        : apex.along(after, -past).along(after.right(), s);
  }

  /** Where a line so far out from the side before meets one so far out from the side after. */
  Vec2 meet(double outBefore, double outAfter) {
    if (outBefore == outAfter) {
      return flat(true, outBefore * mitre, outBefore);
    }
    return flat(true, meetPast(turn, outBefore, outAfter), outBefore);
  }

  /** How far a flat point lies past the corner, seen from one of its sides. */
  double past(boolean first, Vec2 p) {
    Vec2 v = p.minus(apex);
    return first ? v.dot(before) : -v.dot(after);
  }

  /** How far out a flat point lies, seen from one of the corner's sides. */
  double out(boolean first, Vec2 p) {
    return p.minus(apex).dot(first ? before.right() : after.right());
  }

  /**
   * Where the arris between the two walls runs at path length s of one side: as far past the corner
   * as the other wall stands out at the same height.
   */
  double arris(boolean first, double s) {
    TautPath own = path(first);
    double out = own.out(s);
    if (even()) {
      return out * mitre;
    }
    TautPath other = path(!first);
    if (s <= own.topEnd()) {
      // On the flat top the sides part along a line to the corner where both begin to bend.
      double from = meetPast(turn, own.startX(), other.startX());
      double to = meetPast(turn, own.topEnd(), other.topEnd());
      double flat = own.topEnd() - own.startX();
      return flat <= 0 ? to : from + (to - from) * Math.max(0, s - own.startX()) / flat;
    }
    double level =
        s >= own.backStart()
            ? other.backStart() + s - own.backStart()
            : other.levelAt(own.at(s).y());
    return meetPast(turn, out, other.out(level));
  }

  /**
   * Where the covering is folded at path length s: on the arris of the wall, and straight on from
   * the wall's end over the back.
   */
  double fold(boolean first, double s) {
    TautPath own = path(first);
    if (even()) {
      return (s >= own.wallEnd() ? own.wallOut() : own.out(s)) * mitre;
    }
    return s >= own.wallEnd()
        ? meetPast(turn, own.wallOut(), path(!first).wallOut())
        : arris(first, s);
  }

  /** How far past the corner the bisector of the surplus runs, seen from one side. */
  double bisector(boolean first, double s) {
    return s * mitre + (first ? shift : -shift);
  }

  /** The flat point as far on the other side of the surplus's bisector. */
  Vec2 acrossBisector(Vec2 p) {
    if (even()) {
      return flat(false, past(true, p), out(true, p));
    }
    Vec2 on = flat(true, shift, 0);
    Vec2 axis = before.right().plus(after.right()).unit();
    Vec2 v = p.minus(on);
    return on.plus(axis.times(2 * v.dot(axis)).minus(v));
  }

  /** Half the width of the fold's surplus at path length s: from the fold to the bisector. */
  double halfSurplus(boolean first, double s) {
    return bisector(first, s) - fold(first, s);
  }

  /**
   * The path length at which {@link #halfSurplus} reaches {@code width}; the end if it never does.
   */
  double whereHalfSurplusIs(boolean first, double width, double end) {
    if (halfSurplus(first, end) <= width) {
      return end;
    }
    double low = path(first).startX();
    double high = end;
    for (int i = 0; i < BISECTIONS; i++) {
      double mid = (low + high) / 2;
      if (halfSurplus(first, mid) < width) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return high;
  }

  /** The fold moved {@code beyond} past itself, as flat points from one path length to another. */
  List<Vec2> foldLine(boolean first, double beyond, double from, double to) {
    List<Vec2> points = new ArrayList<>();
    for (double s : foldLevels(first, from, to)) {
      points.add(flat(first, fold(first, s) + beyond, s));
    }
    return straightened(points);
  }

  /** Path lengths at which the fold may bend, from one to another. */
  private List<Double> foldLevels(boolean first, double from, double to) {
    TautPath path = path(first);
    List<Double> at = new ArrayList<>();
    at.add(from);
    for (double s : bends(first)) {
      if (s > Math.min(from, to) + 1e-6 && s < Math.max(from, to) - 1e-6 && s <= path.wallEnd()) {
        at.add(s);
      }
    }
    if (to < from) {
      at.sort(java.util.Comparator.reverseOrder());
    } else {
      at.sort(java.util.Comparator.naturalOrder());
    }
    at.add(to);
    return at;
  }

  /** Path lengths of one side at which either wall bends. */
  List<Double> bends(boolean first) {
    TautPath path = path(first);
    List<Double> own = path.breaks(PER_ARC);
    if (even()) {
      return own;
    }
    List<Double> all = new ArrayList<>(own);
    for (double s : path(!first).breaks(PER_ARC)) {
      double level = path.levelAt(path(!first).at(s).y());
      if (all.stream().noneMatch(o -> Math.abs(o - level) < 1e-9)) {
        all.add(level);
      }
    }
    all.sort(null);
    return all;
  }

  /** Path length at which the surplus begins to open. */
  double tipLevel(boolean first) {
    if (!even()) {
      return path(first).topEnd();
    }
    return whereHalfSurplusIs(first, FLAP_BEGINS, path(first).backStart());
  }

  /** The tip of the folded flap: where the fold leaves the bisector. */
  Vec2 tip() {
    return tip(tipLevel(true));
  }

  /** The same where {@link #tipLevel} of the side before is known. */
  Vec2 tip(double level) {
    return flat(true, even() ? bisector(true, level) : arris(true, level), level);
  }

  /** Length of the fold from the tip of the flap to the back. */
  double arrisLength() {
    List<Vec2> line = foldLine(true, 0, tipLevel(true), pathBefore.backStart());
    double sum = 0;
    for (int i = 0; i + 1 < line.size(); i++) {
      sum += line.get(i).distance(line.get(i + 1));
    }
    // Never short of the straight way, so that what is cut to this length reaches the back.
    return Math.max(sum, line.get(0).distance(line.get(line.size() - 1)));
  }

  /** Takes out points that lie on the line between their neighbours. */
  static List<Vec2> straightened(List<Vec2> points) {
    List<Vec2> out = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Vec2 p = points.get(i);
      if (i > 0 && i < points.size() - 1) {
        Vec2 a = out.get(out.size() - 1);
        Vec2 b = points.get(i + 1);
        double away = Math.abs(p.minus(a).cross(b.minus(a)));
        if (away <= 1e-7 * Math.max(1, a.distance(b))) {
          continue;
        }
      }
      out.add(p);
    }
    return out;
  }
}
