package padwright.geometry.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How the triangles of a mesh hang together.
 *
 * @param twins for each half-edge the one that runs back along it, or -1 on the boundary
 * @param loops the boundary as loops of half-edges, in the order of their lowest half-edge
 * @param components pieces that share no vertex
 */
record MeshTopology(int[] twins, List<int[]> loops, int components) {

  /** Takes the triangles apart; refuses what is not an oriented manifold. */
  static MeshTopology of(int vertices, int[] corners) {
    int[] start = bucketStarts(vertices, corners);
    int[] out = outgoing(start, corners);
    int[] twins = twins(start, out, corners);
    checkFans(vertices, start, corners, twins);
    return new MeshTopology(twins, loops(start, out, corners, twins), pieces(vertices, corners));
  }

  private static int[] bucketStarts(int vertices, int[] corners) {
    int[] start = new int[vertices + 1];
    for (int v : corners) {
      start[v + 1]++;
    }
    for (int v = 0; v < vertices; v++) {
      if (start[v + 1] == 0) {
        throw new MeshRefused("vertex " + v + " belongs to no triangle", "leave it out");
      }
      start[v + 1] += start[v];
    }
    return start;
  }

  /** Half-edges sorted by the vertex they start from. */
  private static int[] outgoing(int[] start, int[] corners) {
    int[] at = Arrays.copyOf(start, start.length - 1);
    int[] out = new int[corners.length];
    for (int h = 0; h < corners.length; h++) {
      out[at[corners[h]]++] = h;
    }
    return out;
  }

  private static int[] twins(int[] start, int[] out, int[] corners) {
    int[] twins = new int[corners.length];
    for (int h = 0; h < corners.length; h++) {
      int a = corners[h];
      int b = corners[TriangleMesh.next(h)];
      for (int i = start[a]; i < start[a + 1]; i++) {
        if (out[i] < h && corners[TriangleMesh.next(out[i])] == b) {
          throw sameWay(a, b, out[i] / 3, h / 3, backwards(start, out, corners, a, b) >= 0);
        }
      }
      twins[h] = backwards(start, out, corners, a, b);
    }
    return twins;
  }

  private static int backwards(int[] start, int[] out, int[] corners, int a, int b) {
    for (int i = start[b]; i < start[b + 1]; i++) {
      if (corners[TriangleMesh.next(out[i])] == a) {
        return out[i];
      }
    }
    return -1;
  }

  private static MeshRefused sameWay(int a, int b, int s, int t, boolean third) {
    String edge = "the edge from vertex " + a + " to " + b;
    return third
        ? new MeshRefused(
            edge + " has three triangles or more, among them " + s + " and " + t,
            "a surface has one or two triangles on an edge")
        : new MeshRefused(
            "triangles " + s + " and " + t + " both run along " + edge,
            "turn one of them round, or take it away if it lies on a third triangle there");
  }

  /** About each vertex one fan: going round from one triangle must meet all that touch it. */
  private static void checkFans(int vertices, int[] start, int[] corners, int[] twins) {
    int[] seen = new int[vertices];
    boolean[] gone = new boolean[corners.length];
    for (int h = 0; h < corners.length; h++) {
      int v = corners[h];
      if (seen[v] > 0) {
        continue;
      }
      seen[v] = 1;
      gone[h] = true;
      for (int g = twins[previous(h)]; g >= 0 && !gone[g]; g = twins[previous(g)]) {
        gone[g] = true;
        seen[v]++;
      }
      int back = twins[h];
      while (back >= 0 && !gone[TriangleMesh.next(back)]) {
        int g = TriangleMesh.next(back);
        gone[g] = true;
        seen[v]++;
        back = twins[g];
      }
      if (seen[v] != start[v + 1] - start[v]) {
        throw new MeshRefused(
            "the triangles at vertex "
                + v
                + " meet in that point alone: going round it from one"
                + " reaches "
                + seen[v]
                + " of "
                + (start[v + 1] - start[v]),
            "give each fan of triangles a vertex of its own");
      }
    }
  }

  private static int previous(int h) {
    return h % 3 == 0 ? h + 2 : h - 1;
  }

  private static List<int[]> loops(int[] start, int[] out, int[] corners, int[] twins) {
    List<int[]> loops = new ArrayList<>();
    boolean[] used = new boolean[corners.length];
    int[] loop = new int[corners.length];
    for (int first = 0; first < corners.length; first++) {
      if (twins[first] >= 0 || used[first]) {
        continue;
      }
      int n = 0;
      int h = first;
      while (!used[h]) {
        used[h] = true;
        loop[n++] = h;
        h = boundaryFrom(start, out, twins, corners[TriangleMesh.next(h)]);
      }
      loops.add(Arrays.copyOf(loop, n));
    }
    return loops;
  }

  /** The one boundary half-edge that leaves a vertex of the boundary: its fan is open once. */
  private static int boundaryFrom(int[] start, int[] out, int[] twins, int v) {
    for (int i = start[v]; i < start[v + 1]; i++) {
      if (twins[out[i]] < 0) {
        return out[i];
      }
    }
    throw new IllegalStateException("the boundary stops at vertex " + v);
  }

  private static int pieces(int vertices, int[] corners) {
    int[] parent = new int[vertices];
    Arrays.setAll(parent, v -> v);
    int pieces = vertices;
    for (int h = 0; h < corners.length; h++) {
      int a = root(parent, corners[h]);
      int b = root(parent, corners[TriangleMesh.next(h)]);
      if (a != b) {
        parent[a] = b;
        pieces--;
      }
    }
    return pieces;
  }

  private static int root(int[] parent, int vertex) {
    int v = vertex;
    while (parent[v] != v) {
      parent[v] = parent[parent[v]];
      v = parent[v];
    }
    return v;
  }
}
