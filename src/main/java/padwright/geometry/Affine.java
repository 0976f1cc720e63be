package padwright.geometry;

/**
 * A map of the plane that keeps straight lines straight: x' = a x + c y + e, y' = b x + d y + f;
 * the order in which SVG and PDF write a matrix.
 */
public record Affine(double a, double b, double c, double d, double e, double f) {
  public static final Affine IDENTITY = new Affine(1, 0, 0, 1, 0, 0);

  public static Affine scale(double x, double y) {
    return new Affine(x, 0, 0, y, 0, 0);
  }

  public static Affine moved(double x, double y) {
    return new Affine(1, 0, 0, 1, x, y);
  }

  /** Anticlockwise where y runs up. */
  public static Affine turn(double radians) {
    double c = Math.cos(radians);
    double s = Math.sin(radians);
    return new Affine(c, s, -s, c, 0, 0);
  }

  /** Scaled evenly, then moved so that {@code from} comes to {@code to}. */
  public static Affine scaledOnto(double k, Vec2 from, Vec2 to) {
    return new Affine(k, 0, 0, k, to.x() - k * from.x(), to.y() - k * from.y());
  }

  /** {@code inner} first, then this. */
  public Affine after(Affine inner) {
    return new Affine(
        a * inner.a + c * inner.b,
        b * inner.a + d * inner.b,
        a * inner.c + c * inner.d,
        b * inner.c + d * inner.d,
        a * inner.e + c * inner.f + e,
        b * inner.e + d * inner.f + f);
  }

  public Vec2 at(Vec2 p) {
    return new Vec2(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
  }

  /** A direction: the move is left out. */
  public Vec2 vector(Vec2 v) {
    return new Vec2(a * v.x() + c * v.y(), b * v.x() + d * v.y());
  }

  /** How many times larger areas become; negative where it mirrors. */
  public double determinant() {
    return a * d - b * c;
  }

  public boolean finite() {
    return Double.isFinite(a + b + c + d + e + f);
  }
}
