package padwright.dome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/**
 * The face of a pad in space: every point of a convex outline is moved along its normal by x(s) at
 * the height z(s) of the taut path; level in the middle. Sharp corners are mitred, as the solid's
 * are. The face ends where the covering has turned down by 45 degrees, or where a narrow bend takes
 * it further: what is steeper is wall, and its fullness is the corners' concern (our own division).
 * A narrow bend is taken as a crease, a wide one as a row of chords, so that the face is made of
 * ramps with straight sections. mm.
 */
final class DomedTop {
  /** Where the covering is steeper than this, radians, it lies on the wall; own choice. */
  static final double WALL = Math.PI / 4;

  /** A bend no longer than this, mm, is a crease, and a wider one has chords no longer; own. */
  static final double NARROW = 10;

  /** Rows nearer to each other in plan, mm, are one: chords of a narrow bend are no closer. */
  private static final double CLOSEST = 4;

  /** Slack in an angle; arithmetic only. */
  private static final double SAME = 1e-6;

  private final Path outline;
  private final List<Row> rows;
  private final double surplus;

  /**
   * Where the slope changes: so far out of the outline in plan, so high over the back of the board.
   */
  record Row(double out, double height) {}

  private DomedTop(Path outline, List<Row> rows, double surplus) {
    this.outline = outline;
    this.rows = rows;
    this.surplus = surplus;
  }

  static DomedTop of(Path outline, TautPath taut) {
    List<Row> rows = new ArrayList<>();
    double s = taut.startX();
    Vec2 end = taut.neutral().start();
    for (Segment piece : taut.neutral().segments()) {
      double before = -piece.directionAt(0).angle();
      double after = -piece.directionAt(1).angle();
      boolean narrow = piece.isArc() && piece.length() <= NARROW;
      if (before > WALL - SAME || narrow && after > WALL) {
        break;
      }
      double part = after <= WALL ? 1 : (WALL - before) / (after - before);
      if (narrow) {
        // The corner that the straight pieces beside it make.
        double reach = piece.radius() * Math.tan(Math.abs(piece.sweep()) / 2);
        add(rows, piece.start().along(piece.directionAt(0), reach));
      } else if (piece.isArc()) {
        int chords = (int) Math.ceil(part * piece.length() / NARROW);
        for (int k = 0; k <= chords; k++) {
          add(rows, piece.pointAt(part * k / chords));
        }
      } else if (rows.isEmpty()) {
        add(rows, piece.start());
      }
      s += part * piece.length();
      end = piece.pointAt(part);
      if (part < 1) {
        break;
      }
    }
    // The edge is where it is: what would make a row too close to it gives way.
    while (rows.size() > 1 && end.x() < rows.get(rows.size() - 1).out() + CLOSEST) {
      rows.remove(rows.size() - 1);
    }
    rows.add(new Row(end.x(), end.y()));
    return new DomedTop(outline, rows, s - end.x());
  }

  private static void add(List<Row> rows, Vec2 at) {
    if (rows.isEmpty() || at.x() > rows.get(rows.size() - 1).out() + CLOSEST) {
      rows.add(new Row(at.x(), at.y()));
    }
  }

  Path outline() {
    return outline;
  }

  /** From where the level middle ends to the edge of the face. */
  List<Row> rows() {
    return rows;
  }

  /** Surplus on the face for each radian that the outline turns: s - x(s). */
  double surplus() {
    return surplus;
  }

  /** The edge of the face in plan; empty where nothing is left of it. */
  Optional<Path> edge() {
    return Offset.by(outline, rows.get(rows.size() - 1).out());
  }

  /**
   * How far a point of the plan lies out of a convex outline; negative inside: the furthest out of
   * all its tangents. Outside a sharp corner it is the mitre's distance.
   */
  double out(double x, double y) {
    Vec2 p = new Vec2(x, y);
    double most = Double.NEGATIVE_INFINITY;
    for (Segment s : outline.segments()) {
      most = Math.max(most, s.isArc() ? outOfArc(s, p) : tangent(s, 0, p));
    }
    return most;
  }

  private static double outOfArc(Segment s, Vec2 p) {
    Vec2 from = s.start().minus(s.centre());
    Vec2 to = p.minus(s.centre());
    double turned = Math.atan2(from.cross(to), from.dot(to));
    double away = turned < 0 ? turned + 2 * Math.PI : turned;
    return away <= s.sweep()
        ? to.length() - s.radius()
        : Math.max(tangent(s, 0, p), tangent(s, 1, p));
  }

  private static double tangent(Segment s, double part, Vec2 p) {
    return p.minus(s.pointAt(part)).dot(s.directionAt(part).right());
  }

  double height(double x, double y) {
    double out = out(x, y);
    Row low = rows.get(0);
    if (out <= low.out()) {
      return low.height();
    }
    for (Row high : rows) {
      if (out <= high.out()) {
        double part = (out - low.out()) / (high.out() - low.out());
        return low.height() + part * (high.height() - low.height());
      }
      low = high;
    }
    return low.height();
  }
}
