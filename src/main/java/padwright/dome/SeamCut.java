package padwright.dome;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;
import padwright.geometry.mesh.TriangleMesh;

/**
 * Cuts a mesh open from its boundary inwards along edges, as near as they lie to a straight line.
 */
final class SeamCut {
  private final TriangleMesh mesh;
  private final int[] corners;
  private final List<Vec3> vertices = new ArrayList<>();

  private SeamCut(TriangleMesh mesh) {
    this.mesh = mesh;
    corners = new int[3 * mesh.triangleCount()];
    for (int h = 0; h < corners.length; h++) {
      corners[h] = mesh.from(h);
    }
    for (int v = 0; v < mesh.vertexCount(); v++) {
      vertices.add(mesh.vertex(v));
    }
  }

  /**
   * The mesh cut from the boundary's vertex nearest to {@code from} to the one nearest {@code to}.
   */
  static TriangleMesh along(TriangleMesh mesh, Vec2 from, Vec2 to) {
    int n = mesh.vertexCount();
    boolean[] rim = new boolean[n];
    for (int h : mesh.boundaryLoops().get(0)) {
      rim[mesh.from(h)] = true;
    }
    int start = nearest(mesh, from, rim, true);
    int end = nearest(mesh, to, rim, false);
    int[] way = way(mesh, start, end, rim);
    return way.length < 2 ? mesh : new SeamCut(mesh).open(way);
  }

  private static int nearest(TriangleMesh mesh, Vec2 p, boolean[] rim, boolean onRim) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      Vec3 q = mesh.vertex(v);
      double away = Math.hypot(q.x() - p.x(), q.y() - p.y());
      if (rim[v] == onRim && away < least) {
        least = away;
        best = v;
      }
    }
    return best;
  }

  /** The shortest way along edges, touching the boundary at its start alone (Dijkstra, 1959). */
  private static int[] way(TriangleMesh mesh, int start, int end, boolean[] rim) {
    int n = mesh.vertexCount();
    List<List<Integer>> out = new ArrayList<>();
    for (int v = 0; v < n; v++) {
      out.add(new ArrayList<>());
    }
    for (int h = 0; h < 3 * mesh.triangleCount(); h++) {
      if (!rim[mesh.to(h)]) {
        out.get(mesh.from(h)).add(h);
      }
    }
    double[] length = new double[n];
    int[] before = new int[n];
    Arrays.fill(length, Double.POSITIVE_INFINITY);
    Arrays.fill(before, -1);
    length[start] = 0;
    PriorityQueue<double[]> open = new PriorityQueue<>((a, b) -> Double.compare(a[0], b[0]));
    open.add(new double[] {0, start});
    while (!open.isEmpty()) {
      double[] next = open.poll();
      int v = (int) next[1];
      if (v == end) {
        break;
      }
      if (next[0] > length[v]) {
        continue;
      }
      for (int h : out.get(v)) {
        double l = next[0] + mesh.length(h);
        if (l < length[mesh.to(h)]) {
          length[mesh.to(h)] = l;
          before[mesh.to(h)] = v;
          open.add(new double[] {l, mesh.to(h)});
        }
      }
    }
    List<Integer> back = new ArrayList<>();
    for (int v = end; v >= 0; v = before[v]) {
      back.add(0, v);
    }
    return back.get(0) == start ? back.stream().mapToInt(Integer::intValue).toArray() : new int[0];
  }

  private TriangleMesh open(int[] way) {
    for (int k = 0; k < way.length - 1; k++) {
      int copy = vertices.size();
      vertices.add(mesh.vertex(way[k]));
      int stop = k == 0 ? -1 : way[k - 1];
      int h = halfEdge(way[k], way[k + 1]);
      // Anticlockwise about the vertex, over the triangles left of the seam.
      while (h >= 0) {
        corners[h] = copy;
        int last = h % 3 == 0 ? h + 2 : h - 1;
        h = mesh.from(last) == stop ? -1 : mesh.twin(last);
      }
    }
    List<int[]> triangles = new ArrayList<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      triangles.add(new int[] {corners[3 * t], corners[3 * t + 1], corners[3 * t + 2]});
    }
    return TriangleMesh.of(vertices, triangles);
  }

  private int halfEdge(int from, int to) {
    for (int h = 0; h < 3 * mesh.triangleCount(); h++) {
      if (mesh.from(h) == from && mesh.to(h) == to) {
        return h;
      }
    }
    throw new IllegalStateException("no edge from " + from + " to " + to);
  }
}
