package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import padwright.design.WrappedPad.Hole;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * Screw places on a base that is no plain shape: of the points of a grid that keep clear of the
 * edge, first the one deepest inside, then always the one furthest from those taken.
 */
final class SpreadPlaces {
  private static final int MOST = 4;
  private static final int GRID = 24;

  /** Screws nearer to each other than this hold no better, mm; own choice. */
  private static final double APART = 60;

  private SpreadPlaces() {}

  static List<Hole> in(Path outline, double clear, double diameter) {
    List<Vec2> polygon = outline.flattened(0.1);
    Bounds b = outline.bounds();
    List<Vec2> places = new ArrayList<>();
    List<Double> deep = new ArrayList<>();
    for (int i = 1; i < GRID; i++) {
      for (int j = 1; j < GRID; j++) {
        Vec2 p = new Vec2(b.minX() + b.width() * i / GRID, b.minY() + b.height() * j / GRID);
        double depth = depth(outline, p);
        if (depth >= clear && Polygons.contains(polygon, p)) {
          places.add(p);
          deep.add(depth);
        }
      }
    }
    List<Hole> holes = new ArrayList<>();
    List<Vec2> taken = new ArrayList<>();
    while (holes.size() < MOST) {
      Vec2 best = null;
      double most = taken.isEmpty() ? 0 : APART;
      for (int i = 0; i < places.size(); i++) {
        Vec2 p = places.get(i);
        double far =
            taken.isEmpty()
                ? deep.get(i)
                : taken.stream().mapToDouble(p::distance).min().orElseThrow();
        if (far > most + 1e-9) {
          most = far;
          best = p;
        }
      }
      if (best == null) {
        return holes;
      }
      taken.add(best);
      holes.add(new Hole(best.x(), best.y(), diameter));
    }
    return holes;
  }

  private static double depth(Path outline, Vec2 p) {
    double least = Double.POSITIVE_INFINITY;
    for (Segment s : outline.segments()) {
      least = Math.min(least, s.distanceTo(p));
    }
    return least;
  }
}
