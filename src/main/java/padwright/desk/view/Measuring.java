package padwright.desk.view;

import java.util.List;
import java.util.Optional;
import padwright.design.Units;
import padwright.desk.view.Measure.Measured;
import padwright.desk.view.Measure.Place;
import padwright.geometry.Vec2;

/**
 * Measuring as it goes on: a cross that is moved by hand or key, the place it means, and the points
 * set so far. After the second point the next one begins anew. mm of the drawing.
 */
public final class Measuring {
  private final Measure measure;
  private Vec2 cross;
  private Place meant;
  private Place first;
  private Place second;

  /**
   * @param start where the cross is at first
   * @param reach how far it looks for a place, mm
   */
  public Measuring(Measure measure, Vec2 start, double reach) {
    this.measure = measure;
    moveTo(start, reach);
  }

  /** Puts the cross somewhere. */
  public void moveTo(Vec2 point, double reach) {
    cross = point;
    meant = measure.snap(point, reach);
  }

  /** Puts the cross on the next place with a name, or on the one before; round at the end. */
  public void jump(boolean forward) {
    List<Place> places = measure.places();
    if (places.isEmpty()) {
      return;
    }
    int n = places.size();
    int at = places.indexOf(meant);
    if (at < 0) {
      at = nearest(places);
    } else {
      at = (at + (forward ? 1 : n - 1)) % n;
    }
    meant = places.get(at);
    cross = meant.at();
  }

  private int nearest(List<Place> places) {
    int best = 0;
    for (int i = 1; i < places.size(); i++) {
      if (places.get(i).at().distance(cross) < places.get(best).at().distance(cross)) {
        best = i;
      }
    }
    return best;
  }

  /** Sets a point where the cross means to be. */
  public void set() {
    if (first == null || second != null) {
      first = meant;
      second = null;
    } else {
      second = meant;
    }
  }

  public Vec2 cross() {
    return cross;
  }

  /** The place the cross means. */
  public Place meant() {
    return meant;
  }

  public Optional<Place> first() {
    return Optional.ofNullable(first);
  }

  public Optional<Place> second() {
    return Optional.ofNullable(second);
  }

  /** Between the two points, or from the first to where the cross is; empty before the first. */
  public Optional<Measured> measured() {
    return first().map(f -> Measure.between(f.at(), second().orElse(meant).at()));
  }

  /** What is to be read and heard of it now. */
  public String sentence(Units units) {
    String here = meant.kind().words();
    if (first == null) {
      return "Measure: set the first point (" + here + ")";
    }
    String size = Measure.between(first.at(), second().orElse(meant).at()).sentence(units);
    return second == null ? size + " (" + here + ")" : size;
  }
}
