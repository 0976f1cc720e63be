package padwright.export.pdf;

import padwright.geometry.Vec2;

/**
 * A map of the plane, x' = a x + c y + e and y' = b x + d y + f: the order PDF writes a matrix in.
 */
record Affine(double a, double b, double c, double d, double e, double f) {
  /** Points in a millimetre. */
  static final double POINTS = 72 / 25.4;

  static Affine identity() {
    return new Affine(1, 0, 0, 1, 0, 0);
  }

  static Affine moved(double x, double y) {
    return new Affine(1, 0, 0, 1, x, y);
  }

  /** Scaled evenly, then moved so that {@code from} comes to {@code to}. */
  static Affine scaledOnto(double k, Vec2 from, Vec2 to) {
    return new Affine(k, 0, 0, k, to.x() - k * from.x(), to.y() - k * from.y());
  }

  /** {@code inner} first, then this. */
  Affine after(Affine inner) {
    return new Affine(
        a * inner.a + c * inner.b,
        b * inner.a + d * inner.b,
        a * inner.c + c * inner.d,
        b * inner.c + d * inner.d,
        a * inner.e + c * inner.f + e,
        b * inner.e + d * inner.f + f);
  }

  Vec2 at(Vec2 p) {
    return new Vec2(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
  }
}
