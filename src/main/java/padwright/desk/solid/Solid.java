package padwright.desk.solid;

import java.util.List;
import padwright.geometry.Vec3;
import padwright.pattern.PartResult;

/**
 * A part as a solid to look at: its bodies from the board outwards. Made of the part's sections and
 * the taut path of its covering, so that what is seen is what the cover was developed over. mm, in
 * the frame of the base outline with z up from the back of the board.
 *
 * @param name of the part
 * @param bodies in the order in which they are put together: board, foam, wadding, covering, then
 *     what goes on the back
 * @param centre of the box that holds them
 * @param radius of the ball about the centre that holds them
 */
public record Solid(String name, List<Body> bodies, Vec3 centre, double radius) {
  public Solid {
    bodies = List.copyOf(bodies);
  }

  /** The solid of a part. One that must not be made as it stands is shown as it stands. */
  public static Solid of(PartResult result) {
    return of(result.asked().name(), new SolidMaker(result).bodies());
  }

  static Solid of(String name, List<Body> bodies) {
    double[] low = {1e9, 1e9, 1e9};
    double[] high = {-1e9, -1e9, -1e9};
    for (Body b : bodies) {
      double[] p = b.points();
      for (int i = 0; i < p.length; i++) {
        low[i % 3] = Math.min(low[i % 3], p[i]);
        high[i % 3] = Math.max(high[i % 3], p[i]);
      }
    }
    Vec3 centre = new Vec3((low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2);
    double radius = 0;
    for (Body b : bodies) {
      double[] p = b.points();
      for (int i = 0; i < p.length; i += 3) {
        radius = Math.max(radius, centre.distance(new Vec3(p[i], p[i + 1], p[i + 2])));
      }
    }
    return new Solid(name, bodies, centre, radius);
  }

  public int triangles() {
    return bodies.stream().mapToInt(b -> b.triangles().length / 3).sum();
  }
}
