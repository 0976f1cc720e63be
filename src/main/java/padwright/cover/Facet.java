package padwright.cover;

import java.util.List;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;

/**
 * A part of the flat cover between folds, and where it lies on the pad.
 *
 * @param name such as "front wall" or "front right flap"
 * @param polygon its corners on the flat, anticlockwise, mm
 * @param surface where it goes
 * @param layer 1 next to the pad, growing outwards
 * @param sense whether it is the covering's outside that faces out ({@code OUTWARD}) or it is
 *     turned over
 */
public record Facet(
    String name, List<Vec2> polygon, Surface surface, int layer, CornerPlan.Sense sense) {
  public Facet {
    polygon = List.copyOf(polygon);
  }

  /** Where a facet lies; the covering's neutral surface, z up from the back of the board, mm. */
  public sealed interface Surface {
    /** The place in space of a flat point. */
    Vec3 at(Vec2 flat);

    /** Whether lengths are kept. */
    boolean exact();
  }

  /**
   * The frame that takes flat points to two lengths: {@code a} along the side and {@code b} across
   * it.
   */
  public record Frame(Vec2 origin, Vec2 along, Vec2 across) {
    double a(Vec2 p) {
      return p.minus(origin).dot(along);
    }

    double b(Vec2 p) {
      return p.minus(origin).dot(across);
    }
  }

  /**
   * A plane: origin + a u + b v.
   *
   * @param exact false for a flap that the wall's bends strain
   */
  public record Plane(Frame frame, Vec3 origin, Vec3 u, Vec3 v, boolean exact) implements Surface {
    @Override
    public Vec3 at(Vec2 flat) {
      return origin.plus(u.times(frame.a(flat))).plus(v.times(frame.b(flat)));
    }
  }

  /** A cylinder: centre + a axis + radius (cos(b / radius) e1 + sin(b / radius) e2). */
  public record Cylinder(
      Frame frame, Vec3 centre, Vec3 axis, Vec3 e1, Vec3 e2, double radius, boolean exact)
      implements Surface {
    @Override
    public Vec3 at(Vec2 flat) {
      double angle = frame.b(flat) / radius;
      return centre
          .plus(axis.times(frame.a(flat)))
          .plus(e1.times(radius * Math.cos(angle)))
          .plus(e2.times(radius * Math.sin(angle)));
    }
  }

  /**
   * A rounding over which the covering is eased: the flat point at angle theta and distance rho
   * from the centre lies at the same angle, as far out and as high as the section's path is at path
   * length rho - radius; in a hollow at radius - rho. Lengths round the corner are not kept.
   */
  public record Eased(Vec2 centre, double radius, boolean hollow, padwright.shape.TautPath path)
      implements Surface {
    @Override
    public Vec3 at(Vec2 flat) {
      Vec2 v = flat.minus(centre);
      Vec2 xz = path.at(hollow ? radius - v.length() : v.length() - radius);
      double away = hollow ? radius - xz.x() : radius + xz.x();
      Vec2 p = centre.along(v.unit(), Math.max(0, away));
      return new Vec3(p.x(), p.y(), xz.y());
    }

    @Override
    public boolean exact() {
      return false;
    }
  }
}
