package padwright.geometry.mesh;

/**
 * How a flattening changes lengths: the two principal stretches of each triangle, length in the
 * flat over length on the surface. A sheet cut to the flat shape must stretch by {@code 1 / stretch
 * - 1} to lie on the surface: where the stretch is under 1 it is pulled longer, where it is over 1
 * it is eased in. Immutable.
 */
public final class Strain {
  private final double[] least;
  private final double[] most;
  private final double mean;
  private final double worst;
  private final int worstTriangle;

  private Strain(double[] least, double[] most, double[] area) {
    this.least = least;
    this.most = most;
    double sum = 0;
    double whole = 0;
    double largest = 0;
    int at = 0;
    for (int t = 0; t < least.length; t++) {
      double strain = of(t);
      sum += area[t] * strain;
      whole += area[t];
      if (strain > largest) {
        largest = strain;
        at = t;
      }
    }
    this.mean = sum / whole;
    this.worst = largest;
    this.worstTriangle = at;
  }

  static Strain of(TriangleFrames frames, double[] xy) {
    double[] least = new double[frames.count()];
    double[] most = new double[frames.count()];
    double[] j = new double[4];
    for (int t = 0; t < frames.count(); t++) {
      frames.matrix(xy, t, j);
      // Of a matrix [[a, b], [c, d]] the half sum and half difference of the singular values.
      double sum = Math.hypot(j[0] + j[3], j[2] - j[1]) / 2;
      double difference = Math.hypot(j[0] - j[3], j[2] + j[1]) / 2;
      least[t] = sum - difference;
      most[t] = sum + difference;
    }
    return new Strain(least, most, frames.area);
  }

  public int triangleCount() {
    return least.length;
  }

  /** The lesser principal stretch of a triangle; negative where it lies face down. */
  public double least(int t) {
    return least[t];
  }

  /** The greater principal stretch of a triangle. */
  public double most(int t) {
    return most[t];
  }

  /** A triangle's strain: the larger of its two principal stretches' distances from 1. */
  public double of(int t) {
    return Math.max(Math.abs(least[t] - 1), Math.abs(most[t] - 1));
  }

  /** Mean of the triangles' strains, by area on the surface. */
  public double mean() {
    return mean;
  }

  /** Largest strain of a triangle. */
  public double worst() {
    return worst;
  }

  /** The triangle with the largest strain. */
  public int worstTriangle() {
    return worstTriangle;
  }

  /** The least principal stretch of all. */
  public double least() {
    double l = Double.POSITIVE_INFINITY;
    for (double d : least) {
      l = Math.min(l, d);
    }
    return l;
  }

  /** The greatest principal stretch of all. */
  public double most() {
    double m = 0;
    for (double d : most) {
      m = Math.max(m, d);
    }
    return m;
  }
}
