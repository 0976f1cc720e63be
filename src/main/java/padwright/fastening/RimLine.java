package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import padwright.design.WrappedPad.Side;
import padwright.fastening.StapleLine.Place;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/** Sets staples out round a base whose whole edge is one rounding. Lengths in mm. */
final class RimLine {
  private RimLine() {}

  /** A round base: even steps along the staple line, the first in the middle of the front. */
  static List<Place> places(Path outline, double in, double spacing, double crown, Side seen) {
    List<Place> places = new ArrayList<>();
    Path line = Offset.by(outline, -in).orElse(outline);
    double length = line.length();
    int n = Math.max(4, StapleLine.count(length, crown));
    int quartered = n - n % 4;
    // A multiple of four puts one at each quarter of the clock; closer ones may leave no room.
    if (length / (quartered + 4) >= Crowns.pitch(crown)) {
      n = n % 4 == 0 ? n : quartered + 4;
    } else if (length / quartered <= spacing) {
      n = quartered;
    }
    double front = frontDistance(line, Vec2.polar(-Math.PI / 2 + seen.ordinal() * Math.PI / 2));
    for (int j = 0; j < n; j++) {
      double at = (front + j * length / n) % length;
      int last = line.segments().size() - 1;
      int i = 0;
      // Rounding may leave a place a hair past the end of the last segment: that is its end.
      while (i < last && at > line.segments().get(i).length()) {
        at -= line.segments().get(i).length();
        i++;
      }
      Segment s = line.segments().get(i);
      double fraction = Math.min(1, at / s.length());
      Vec2 direction = s.directionAt(fraction);
      places.add(
          new Place(
              s.pointAt(fraction), direction.angle(), facing(direction.right().angle()), j, false));
    }
    return places;
  }

  /** Distance along a closed path of its furthest point in a direction. */
  private static double frontDistance(Path line, Vec2 towards) {
    double run = 0;
    double best = 0;
    double furthest = Double.NEGATIVE_INFINITY;
    for (Segment s : line.segments()) {
      int steps = 64;
      for (int k = 0; k < steps; k++) {
        Vec2 p = s.pointAt((double) k / steps);
        if (p.dot(towards) > furthest + 1e-9) {
          furthest = p.dot(towards);
          best = run + s.length() * k / steps;
        }
      }
      run += s.length();
    }
    return best;
  }

  private static String facing(double normal) {
    int quarter = (int) Math.floor((normal + 0.75 * Math.PI) / (Math.PI / 2) + 1e-9);
    return List.of("front", "right", "back", "left").get(Math.floorMod(quarter, 4));
  }
}
