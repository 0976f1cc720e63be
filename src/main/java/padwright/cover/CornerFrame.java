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
 */
public record CornerFrame(Vec2 apex, Vec2 before, Vec2 after, double turn, double mitre) {

  /** A flap narrower than this, mm, lies inside the bend of the covering itself. */
  private static final double FLAP_BEGINS = 0.001;

  /** Halvings that bring a metre under 1e-10 mm: both hands of a part must agree to 1e-9. */
  private static final int BISECTIONS = 44;

  static CornerFrame of(Vec2 apex, Vec2 before, Vec2 after) {
    double turn = Math.atan2(before.cross(after), before.dot(after));
    return new CornerFrame(apex, before, after, turn, Math.tan(turn / 2));
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
    double past = (outAfter - outBefore * Math.cos(turn)) / Math.sin(turn);
    return flat(true, past, outBefore);
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
   * Where the covering is folded at path length s: on the arris of the wall, and straight on from
   * the wall's end over the back.
   */
  double fold(TautPath path, double s) {
    return (s >= path.wallEnd() ? path.wallOut() : path.out(s)) * mitre;
  }

  /** Half the width of the fold's surplus at path length s: from the fold to the bisector. */
  double halfSurplus(TautPath path, double s) {
    return s * mitre - fold(path, s);
  }

  /**
   * The path length at which {@link #halfSurplus} reaches {@code width}; the end if it never does.
   */
  double whereHalfSurplusIs(TautPath path, double width, double end) {
    if (halfSurplus(path, end) <= width) {
      return end;
    }
    double low = path.startX();
    double high = end;
    for (int i = 0; i < BISECTIONS; i++) {
      double mid = (low + high) / 2;
      if (halfSurplus(path, mid) < width) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return high;
  }

  /** The fold moved {@code beyond} past itself, as flat points from one path length to another. */
  List<Vec2> foldLine(TautPath path, boolean first, double beyond, double from, double to) {
    List<Vec2> points = new ArrayList<>();
    List<Double> at = new ArrayList<>();
    at.add(from);
    for (double s : path.breaks(8)) {
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
    for (double s : at) {
      points.add(flat(first, fold(path, s) + beyond, s));
    }
    return straightened(points);
  }

  /** Path length at which the surplus begins to open. */
  double tipLevel(TautPath path) {
    return whereHalfSurplusIs(path, FLAP_BEGINS, path.backStart());
  }

  /** The tip of the folded flap: where the fold leaves the bisector. */
  Vec2 tip(TautPath path) {
    double level = tipLevel(path);
    return flat(true, level * mitre, level);
  }

  /** Length of the fold from the tip of the flap to the back. */
  double arrisLength(TautPath path) {
    List<Vec2> line = foldLine(path, true, 0, tipLevel(path), path.backStart());
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
