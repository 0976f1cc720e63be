package padwright.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Vec2;

/**
 * Covers the inside of a closed polygon, less its holes, with triangles whose corners are the
 * polygon's and the holes' own: the constrained Delaunay triangulation of {@link Triangulation}.
 */
public final class FlatFill {
  private FlatFill() {}

  /**
   * Triples of corners, each triangle anticlockwise. Corners are counted through the outline and
   * then through the holes in their order.
   *
   * @param outline three or more different corners without crossings, anticlockwise; mm
   * @param holes each within the outline and clear of it and of one another, either way round
   * @throws MeshRefused where two corners are the same, or lines cross or run through a corner
   */
  public static int[] triangles(List<Vec2> outline, List<List<Vec2>> holes) {
    List<Vec2> points = new ArrayList<>(outline);
    holes.forEach(points::addAll);
    double[] x = points.stream().mapToDouble(Vec2::x).toArray();
    double[] y = points.stream().mapToDouble(Vec2::y).toArray();
    Triangulation triangulation = new Triangulation(x, y);
    int first = close(triangulation, points, 0, outline.size());
    for (List<Vec2> hole : holes) {
      first = close(triangulation, points, first, hole.size());
    }
    return triangulation.within(0, 1);
  }

  private static int close(Triangulation triangulation, List<Vec2> points, int first, int size) {
    for (int i = 0; i < size; i++) {
      if (!triangulation.force(first + i, first + (i + 1) % size)) {
        Vec2 p = points.get(first + i);
        throw new MeshRefused(
            "lines cross or touch near (" + p.x() + ", " + p.y() + ")", "leave a gap there");
      }
    }
    return first + size;
  }
}
