package padwright.cover;

import java.util.ArrayList;
import java.util.List;
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

  private FlapStrain() {}

  private record Bend(double at, double turn, double width) {}

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
    return Math.abs(first - second) / Math.max(NARROWEST, Math.max(first, second));
  }

  private static double of(List<Bend> bends) {
    double worst = 0;
    for (Bend b : bends) {
      double sum = 0;
      for (Bend other : bends) {
        if (Math.abs(other.at - b.at) <= b.width / 2) {
          sum += other.turn;
        }
      }
      worst = Math.max(worst, Math.abs(sum));
    }
    return Math.min(1, worst);
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
