package padwright.geometry;

/** A point or a vector of the plane, in mm. */
public record Vec2(double x, double y) {
  public static final Vec2 ZERO = new Vec2(0, 0);

  /** The unit vector at {@code angle} radians anticlockwise from the x axis. */
  public static Vec2 polar(double angle) {
    return new Vec2(Math.cos(angle), Math.sin(angle));
  }

  public Vec2 plus(Vec2 o) {
    return new Vec2(x + o.x, y + o.y);
  }

  public Vec2 minus(Vec2 o) {
    return new Vec2(x - o.x, y - o.y);
  }

  public Vec2 times(double k) {
    return new Vec2(x * k, y * k);
  }

  /** This point moved by {@code k} times {@code direction}. */
  public Vec2 along(Vec2 direction, double k) {
    return new Vec2(x + direction.x * k, y + direction.y * k);
  }

  public double dot(Vec2 o) {
    return x * o.x + y * o.y;
  }

  public double cross(Vec2 o) {
    return x * o.y - y * o.x;
  }

  public double length() {
    return Math.sqrt(x * x + y * y);
  }

  public double distance(Vec2 o) {
    double dx = x - o.x;
    double dy = y - o.y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** The vector of length 1 in this direction; the zero vector has none and gives NaN. */
  public Vec2 unit() {
    double l = length();
    return new Vec2(x / l, y / l);
  }

  /** Turned a quarter turn to the right: the outward normal of an anticlockwise outline. */
  public Vec2 right() {
    return new Vec2(y, -x);
  }

  /** Turned a quarter turn to the left. */
  public Vec2 left() {
    return new Vec2(-y, x);
  }

  public Vec2 rotated(double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return new Vec2(c * x - s * y, s * x + c * y);
  }

  public double angle() {
    return Math.atan2(y, x);
  }

  public Vec2 midpoint(Vec2 o) {
    return new Vec2((x + o.x) / 2, (y + o.y) / 2);
  }
}
