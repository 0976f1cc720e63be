package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import padwright.geometry.Vec2;

/**
 * The strain of the flap that a corner's fold hides. Where the fold is straight the flap is
 * mirrored and lies flat. Where the wall bends the fold bends with it, and the flap of width w
 * beside it has to make up the fold's turn psi within about its own width: a strain of psi, where
 * psi is the turn within a length w of the fold. An estimate, reported and never called exact.
 */
final class FlapStrain {
  /** A narrower flap, mm, lies inside the bend of the covering itself. */
  private static final double NARROWEST = 1;

  /** Strains nearer than this are one. */
  private static final double SAME = 1e-12;

  private FlapStrain() {}

  /**
   * @param at along the fold from where it begins, mm
   * @param turn of the fold, radians
   * @param width of the flap there, mm
   */
  private record Bend(double at, double turn, double width) {
    boolean reaches(double place) {
      return Math.abs(place - at) <= width / 2;
    }
  }

  static double of(CornerFrame f) {
    return f.even()
        ? of(bends(f, true))
        : Math.max(uneven(f), Math.max(of(bends(f, true)), of(bends(f, false))));
  }

  /**
   * Between two sections the two halves of the flap are unlike: by the time they come to the back
   * one is longer from the bisector's start than the other, and that is gathered along the flap.
   */
  private static double uneven(CornerFrame f) {
    double first = f.halfSurplus(true, f.pathBefore().backStart());
    double second = f.halfSurplus(false, f.pathAfter().backStart());
    return Math.min(1, Math.abs(first - second) / Math.max(NARROWEST, Math.max(first, second)));
  }

  private static double of(List<Bend> bends) {
    double worst = 0;
    for (Bend b : bends) {
      worst = Math.max(worst, at(b, bends));
    }
    return worst;
  }

  /** The fold's turn within half a flap's width to either side of a bend. */
  private static double at(Bend b, List<Bend> bends) {
    double sum = 0;
    for (Bend other : bends) {
      sum += b.reaches(other.at) ? other.turn : 0;
    }
    return Math.min(1, Math.abs(sum));
  }

  /**
   * Where along the fold the flap is strained by how much: within half its width of a bend, and
   * between two sections from where the surplus opens to the back. The largest is what {@link #of}
   * says of this side.
   */
  static List<StrainBand> along(CornerFrame f, boolean first) {
    List<Bend> bends = bends(f, first);
    double uneven = f.even() ? 0 : uneven(f);
    double[][] run = run(f, first);
    TreeSet<Double> cuts = new TreeSet<>();
    cuts.add(0.0);
    double length = run[0][run[0].length - 1];
    cuts.add(length);
    for (Bend b : bends) {
      cuts.add(Math.max(0, Math.min(length, b.at - b.width / 2)));
      cuts.add(Math.max(0, Math.min(length, b.at + b.width / 2)));
    }
    List<StrainBand> bands = new ArrayList<>();
    Double from = null;
    for (double to : cuts) {
      if (from != null) {
        double most = uneven;
        for (Bend b : bends) {
          most = b.reaches((from + to) / 2) ? Math.max(most, at(b, bends)) : most;
        }
        StrainBand last = bands.isEmpty() ? null : bands.get(bands.size() - 1);
        boolean same = last != null && Math.abs(last.most() - most) < SAME;
        double begins = same ? last.from() : level(run, from);
        if (same) {
          bands.remove(last);
        }
        bands.add(new StrainBand(begins, level(run, to), most, most));
      }
      from = to;
    }
    return bands;
  }

  /** Places along the fold and the path lengths there, down to the wall's end. */
  private static double[][] run(CornerFrame f, boolean first) {
    List<double[]> points = new ArrayList<>();
    Vec2 last = null;
    double run = 0;
    for (double s : f.bends(first)) {
      if (s > f.path(first).wallEnd() + 1e-9) {
        break;
      }
      Vec2 p = f.flat(first, f.fold(first, s), s);
      run += last == null ? 0 : p.distance(last);
      points.add(new double[] {run, s});
      last = p;
    }
    double[][] table = new double[2][points.size()];
    for (int i = 0; i < points.size(); i++) {
      table[0][i] = points.get(i)[0];
      table[1][i] = points.get(i)[1];
    }
    return table;
  }

  private static double level(double[][] run, double at) {
    int k = 0;
    while (k + 2 < run[0].length && run[0][k + 1] < at) {
      k++;
    }
    double length = run[0][k + 1] - run[0][k];
    double part = length <= 0 ? 0 : (at - run[0][k]) / length;
    return run[1][k] + (run[1][k + 1] - run[1][k]) * part;
  }

  private static List<Bend> bends(CornerFrame f, boolean first) {
    List<Bend> bends = new ArrayList<>();
    Vec2 last = null;
    Vec2 lastDirection = null;
    double run = 0;
    double lastWidth = 0;
    for (double s : f.bends(first)) {
      if (s > f.path(first).wallEnd() + 1e-9) {
        break;
      }
      Vec2 p = f.flat(first, f.fold(first, s), s);
      if (last != null && p.distance(last) > 1e-9) {
        Vec2 direction = p.minus(last).unit();
        if (lastDirection != null && lastWidth > NARROWEST) {
          double sine = lastDirection.cross(direction);
          // The bend stands where the piece before ended, with the width the flap has there.
          bends.add(new Bend(run, Math.asin(Math.max(-1, Math.min(1, sine))), lastWidth));
        }
        run += p.distance(last);
        lastDirection = direction;
      }
      last = p;
      lastWidth = f.halfSurplus(first, s);
    }
    return bends;
  }
}
