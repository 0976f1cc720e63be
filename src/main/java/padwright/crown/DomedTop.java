package padwright.crown;

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
 * are. The face ends where the covering has turned down by 45 degrees: what is steeper is wall, and
 * its fullness is the corners' concern (our own division). mm.
 */
final class DomedTop {
  /** Where the covering is steeper than this, radians, it lies on the wall; own choice. */
  static final double WALL = Math.PI / 4;

  private final Path outline;
  private final List<Segment> path;
  private final double startX;
  private final double endX;
  private final double endS;

  private DomedTop(Path outline, TautPath taut, double endX, double endS) {
    this.outline = outline;
    this.path = taut.neutral().segments();
    this.startX = taut.startX();
    this.endX = endX;
    this.endS = endS;
  }

  static DomedTop of(Path outline, TautPath taut) {
    double s = taut.startX();
    double x = taut.neutral().start().x();
    for (Segment piece : taut.neutral().segments()) {
      double before = -piece.directionAt(0).angle();
      double after = -piece.directionAt(1).angle();
      if (before > WALL) {
        break;
      }
      double part = after <= WALL ? 1 : (WALL - before) / (after - before);
      s += part * piece.length();
      x = piece.pointAt(part).x();
      if (part < 1) {
        break;
      }
    }
    return new DomedTop(outline, taut, x, s);
  }

  /** Path length at which the face ends, counted as the developed side is. */
  double endS() {
    return endS;
  }

  /** How far out of the outline the level middle ends. */
  double startX() {
    return startX;
  }

  /** Surplus on the face for each radian that the outline turns: s - x(s). */
  double surplus() {
    return endS - endX;
  }

  /** Breadth of the sloping part in plan. */
  double breadth() {
    return endX - startX;
  }

  /** The edge of the face in plan; empty where nothing is left of it. */
  Optional<Path> edge() {
    return Offset.by(outline, endX);
  }

  /** Where the level middle ends; empty where the slopes meet in a ridge or a point. */
  Optional<Path> level() {
    return Offset.by(outline, startX);
  }

  /**
   * How far a point of the plan lies out of a convex outline; negative inside. Outside a sharp
   * corner it is the mitre's distance.
   */
  double out(double x, double y) {
    Vec2 p = new Vec2(x, y);
    double most = Double.NEGATIVE_INFINITY;
    for (Segment s : outline.segments()) {
      if (s.isArc()) {
        Vec2 c = s.centre();
        Vec2 from = s.start().minus(c);
        Vec2 to = p.minus(c);
        double turned = Math.atan2(from.cross(to), from.dot(to));
        double away = turned < 0 ? turned + 2 * Math.PI : turned;
        most =
            Math.max(
                most,
                away <= s.sweep()
                    ? to.length() - s.radius()
                    : Math.max(to.dot(s.directionAt(0).right()), to.dot(s.directionAt(1).right()))
                        - s.radius());
      } else {
        most = Math.max(most, p.minus(s.start()).dot(s.directionAt(0).right()));
      }
    }
    return most;
  }

  double height(double x, double y) {
    double out = out(x, y);
    if (out <= startX) {
      return path.get(0).start().y();
    }
    for (Segment piece : path) {
      if (out <= piece.end().x() && !piece.isArc()) {
        double part = (out - piece.start().x()) / (piece.end().x() - piece.start().x());
        return piece.start().y() + part * (piece.end().y() - piece.start().y());
      }
      Vec2 c = piece.isArc() ? piece.centre() : null;
      if (c != null && out <= Math.max(piece.end().x(), endX) + 1e-9) {
        double across = Math.min(piece.radius(), Math.abs(out - c.x()));
        return c.y() + Math.sqrt(piece.radius() * piece.radius() - across * across);
      }
    }
    return path.get(path.size() - 1).end().y();
  }
}
