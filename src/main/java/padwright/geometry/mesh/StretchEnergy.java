package padwright.geometry.mesh;

import java.util.Arrays;

/**
 * What a flat position of a mesh costs in stretch, mm2: zero where every length is kept, and about
 * area times the sum of the squares of both principal strains where they are small.
 */
sealed interface StretchEnergy {
  /** The energy at {@code xy}, and its derivative into {@code gradient}. */
  double evaluate(double[] xy, double[] gradient);

  /** How far one can go along a direction before this energy forbids it. */
  double longestStep(double[] xy, double[] direction);

  /**
   * As rigid as possible: area times the squared distance of each triangle's matrix from the
   * nearest rotation (Liu, Zhang, Xu, Gotsman and Gortler, "A local/global approach to mesh
   * parameterization", 2008). Cheap, and nearly quadratic; it does not forbid a triangle to flip.
   */
  record Rigid(TriangleFrames frames) implements StretchEnergy {
    @Override
    public double evaluate(double[] xy, double[] gradient) {
      Arrays.fill(gradient, 0);
      double[] j = new double[4];
      double sum = 0;
      for (int t = 0; t < frames.count(); t++) {
        frames.matrix(xy, t, j);
        double p = j[0] + j[3];
        double q = j[2] - j[1];
        double r = Math.sqrt(p * p + q * q);
        double c = r > 0 ? p / r : 1;
        double s = r > 0 ? q / r : 0;
        double d00 = j[0] - c;
        double d01 = j[1] + s;
        double d10 = j[2] - s;
        double d11 = j[3] - c;
        double area = frames.area[t];
        sum += area * (d00 * d00 + d01 * d01 + d10 * d10 + d11 * d11);
        double k = 2 * area;
        frames.addPull(gradient, t, k * d00, k * d01, k * d10, k * d11);
      }
      return sum;
    }

    @Override
    public double longestStep(double[] xy, double[] direction) {
      return Double.POSITIVE_INFINITY;
    }
  }

  /**
   * Symmetric Dirichlet: counts a length that shrinks like one that grows, and rises without limit
   * as a triangle loses its area, so none ever flips (Smith and Schaefer, "Bijective
   * parameterization with free boundaries", 2015). Scaled to agree with {@link Rigid} near
   * isometry.
   */
  record Symmetric(TriangleFrames frames) implements StretchEnergy {
    @Override
    public double evaluate(double[] xy, double[] gradient) {
      Arrays.fill(gradient, 0);
      double[] j = new double[4];
      double sum = 0;
      for (int t = 0; t < frames.count(); t++) {
        frames.matrix(xy, t, j);
        double det = j[0] * j[3] - j[1] * j[2];
        if (!(det > 0)) {
          return Double.POSITIVE_INFINITY;
        }
        double square = j[0] * j[0] + j[1] * j[1] + j[2] * j[2] + j[3] * j[3];
        double inverse = 1 / (det * det);
        double area = frames.area[t] / 4;
        sum += area * (square * (1 + inverse) - 4);
        double k = 2 * area * (1 + inverse);
        double m = 2 * area * square * inverse / det;
        frames.addPull(
            gradient,
            t,
            k * j[0] - m * j[3],
            k * j[1] + m * j[2],
            k * j[2] + m * j[1],
            k * j[3] - m * j[0]);
      }
      return sum;
    }

    @Override
    public double longestStep(double[] xy, double[] direction) {
      double longest = Double.POSITIVE_INFINITY;
      double[] j = new double[4];
      double[] d = new double[4];
      for (int t = 0; t < frames.count(); t++) {
        frames.matrix(xy, t, j);
        frames.matrix(direction, t, d);
        double c = j[0] * j[3] - j[1] * j[2];
        double b = j[0] * d[3] + d[0] * j[3] - j[1] * d[2] - d[1] * j[2];
        double a = d[0] * d[3] - d[1] * d[2];
        longest = Math.min(longest, firstRoot(a, b, c));
      }
      return longest;
    }

    /** The least positive root of {@code a t^2 + b t + c} with c positive. */
    private static double firstRoot(double a, double b, double c) {
      double discriminant = b * b - 4 * a * c;
      if (discriminant < 0) {
        return Double.POSITIVE_INFINITY;
      }
      // Both roots without cancelling: q / a and c / q.
      double q = -(b + Math.copySign(Math.sqrt(discriminant), b)) / 2;
      double one = q / a;
      double two = c / q;
      double least = Double.POSITIVE_INFINITY;
      if (one > 0) {
        least = one;
      }
      if (two > 0) {
        least = Math.min(least, two);
      }
      return least;
    }
  }
}
