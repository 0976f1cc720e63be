package padwright.desk.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;
import padwright.geometry.mesh.FlatFill;
import padwright.geometry.mesh.MeshRefused;

/**
 * Puts a body together from rings: walls between neighbouring rings, and flat faces over rings with
 * the rings of holes left out.
 */
final class BodyMaker {
  /** Corners nearer than this are one, mm. */
  private static final double SAME = 1e-7;

  private final List<Vec3> points = new ArrayList<>();
  private final List<int[]> triangles = new ArrayList<>();
  private final List<int[]> marked = new ArrayList<>();

  /**
   * Adds walls from the first ring to the last. Their outside is on the right of an upward wall
   * about an anticlockwise ring.
   *
   * @param arrises for each point of each ring, whether a line is drawn to the next
   * @return the points of the first and of the last ring
   */
  int[][] walls(List<List<Vec3>> rings, boolean[][] arrises) {
    int[] first = null;
    int[] last = null;
    for (int k = 0; k < rings.size(); k++) {
      int[] ring = ring(rings.get(k), last);
      if (last != null) {
        wall(last, ring);
      }
      for (int i = 0; i < ring.length; i++) {
        if (arrises[k][i]) {
          marked.add(new int[] {ring[i], ring[(i + 1) % ring.length]});
        }
      }
      first = first == null ? ring : first;
      last = ring;
    }
    return new int[][] {first, last};
  }

  /** Points of a ring: shared with the neighbour along it, or with the ring before, if the same. */
  private int[] ring(List<Vec3> ring, int[] before) {
    int n = ring.size();
    int[] ids = new int[n];
    // Begun where two neighbours differ, so that no place is shared across the beginning.
    int start = 0;
    while (start < n - 1 && ring.get(start).distance(ring.get((start + n - 1) % n)) < SAME) {
      start++;
    }
    for (int k = 0; k < n; k++) {
      int i = (start + k) % n;
      int last = ids[(i + n - 1) % n];
      Vec3 p = ring.get(i);
      if (k > 0 && p.distance(points.get(last)) < SAME) {
        ids[i] = last;
      } else if (before != null && p.distance(points.get(before[i])) < SAME) {
        ids[i] = before[i];
      } else {
        ids[i] = points.size();
        points.add(p);
      }
    }
    return ids;
  }

  private void wall(int[] low, int[] high) {
    int n = low.length;
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      // The shorter diagonal lies nearer to the surface that the wall stands for.
      double a = points.get(low[i]).distance(points.get(high[j]));
      double b = points.get(low[j]).distance(points.get(high[i]));
      if (a <= b) {
        add(low[i], low[j], high[j]);
        add(low[i], high[j], high[i]);
      } else {
        add(low[i], low[j], high[i]);
        add(low[j], high[j], high[i]);
      }
    }
  }

  private void add(int a, int b, int c) {
    if (a != b && b != c && c != a) {
      triangles.add(new int[] {a, b, c});
    }
  }

  /**
   * Adds a flat face within a ring. Where the ring crosses itself, as where hardly anything is left
   * inside, there is no face.
   *
   * @param up whether its outside is above
   * @param holes rings within it
   */
  void face(int[] ring, List<int[]> holes, boolean up) {
    List<Integer> ids = new ArrayList<>(distinct(ring));
    int[] outline = ids.stream().mapToInt(Integer::intValue).toArray();
    List<List<Vec2>> inner = new ArrayList<>();
    for (int[] hole : holes) {
      List<Integer> own = distinct(hole);
      ids.addAll(own);
      inner.add(own.stream().map(this::flat).toList());
    }
    if (outline.length < 3) {
      return;
    }
    int[] fill;
    try {
      fill = FlatFill.triangles(Arrays.stream(outline).mapToObj(this::flat).toList(), inner);
    } catch (MeshRefused refused) {
      return;
    }
    for (int t = 0; t < fill.length; t += 3) {
      int a = ids.get(fill[t]);
      int b = ids.get(fill[t + (up ? 1 : 2)]);
      int c = ids.get(fill[t + (up ? 2 : 1)]);
      add(a, b, c);
    }
  }

  private static List<Integer> distinct(int[] ring) {
    return IntStream.range(0, ring.length)
        .filter(i -> ring[i] != ring[(i + 1) % ring.length])
        .mapToObj(i -> ring[i])
        .toList();
  }

  private Vec2 flat(int point) {
    Vec3 p = points.get(point);
    return new Vec2(p.x(), p.y());
  }

  /** Whether a ring lies within another, seen from above. */
  static boolean within(List<Vec3> ring, List<Vec3> other) {
    List<Vec2> polygon = other.stream().map(p -> new Vec2(p.x(), p.y())).toList();
    return ring.stream().allMatch(p -> Polygons.contains(polygon, new Vec2(p.x(), p.y())));
  }

  Body body(String name, Body.Kind kind, int layer) {
    double[] xyz = new double[3 * points.size()];
    for (int i = 0; i < points.size(); i++) {
      xyz[3 * i] = points.get(i).x();
      xyz[3 * i + 1] = points.get(i).y();
      xyz[3 * i + 2] = points.get(i).z();
    }
    int[] corners = triangles.stream().flatMapToInt(Arrays::stream).toArray();
    Facets facets = new Facets(xyz, corners);
    int[] edges = facets.edges();
    return new Body(
        name,
        kind,
        layer,
        xyz,
        corners,
        facets.normals(),
        edges,
        facets.arrises(edges, marked),
        facets.hollows(edges));
  }
}
