package padwright.geometry.mesh;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

/**
 * The Delaunay triangulation of points of the plane, in which given edges can be forced. Points are
 * put in one at a time and edges flipped until no circle through a triangle holds another point
 * (Lawson, 1977); forced edges come in by flipping those across them (Sloan, "A fast algorithm for
 * generating constrained Delaunay triangulations", 1993). Sides are decided exactly, so the same
 * points always give the same triangles. Three points far outside hold all others; their triangles
 * are never within the outline.
 */
final class Triangulation {
  /** How far outside the three holding points lie, in sizes of what they hold. */
  private static final double OUTSIDE = 50;

  /** A forced edge needs about the square of the edges across it; ten times that is a fault. */
  private static final int MOST_FLIPS = 10;

  private final double[] x;
  private final double[] y;
  private final int points;
  private final int[] corners;
  private final int[] twins;
  private final int[] out;
  private final boolean[] forced;
  private final boolean[] bounds;
  private final Deque<Integer> suspect = new ArrayDeque<>();
  private int triangles;
  private int last;

  /**
   * Triangulates points.
   *
   * @throws MeshRefused where two are the same
   */
  Triangulation(double[] px, double[] py) {
    points = px.length;
    x = Arrays.copyOf(px, points + 3);
    y = Arrays.copyOf(py, points + 3);
    out = new int[points + 3];
    int most = 2 * points + 1;
    corners = new int[3 * most];
    twins = new int[3 * most];
    forced = new boolean[3 * most];
    bounds = new boolean[3 * most];
    hold();
    for (int p = 0; p < points; p++) {
      insert(p);
    }
  }

  private void hold() {
    Bounds box = Bounds.of(new Vec2(x[0], y[0]));
    for (int p = 1; p < points; p++) {
      box = box.with(new Vec2(x[p], y[p]));
    }
    double cx = box.centre().x();
    double cy = box.centre().y();
    double far = OUTSIDE * Math.max(box.width(), box.height());
    x[points] = cx - far;
    y[points] = cy - far;
    x[points + 1] = cx + far;
    y[points + 1] = cy - far;
    x[points + 2] = cx;
    y[points + 2] = cy + far;
    triangles = 1;
    set(0, points, points + 1, points + 2, -1, -1, -1);
  }

  private void set(int t, int a, int b, int c, int ab, int bc, int ca) {
    int h = 3 * t;
    corners[h] = a;
    corners[h + 1] = b;
    corners[h + 2] = c;
    out[a] = h;
    out[b] = h + 1;
    out[c] = h + 2;
    join(h, ab);
    join(h + 1, bc);
    join(h + 2, ca);
  }

  private void join(int h, int twin) {
    twins[h] = twin;
    if (twin >= 0) {
      twins[twin] = h;
    }
    forced[h] = twin >= 0 && forced[twin];
    bounds[h] = twin >= 0 && bounds[twin];
  }

  private int side(int a, int b, int c) {
    return Predicates.orientation(x[a], y[a], x[b], y[b], x[c], y[c]);
  }

  private static int next(int h) {
    return TriangleMesh.next(h);
  }

  private static int previous(int h) {
    return h % 3 == 0 ? h + 2 : h - 1;
  }

  private void insert(int p) {
    int t = locate(p);
    int a = corners[3 * t];
    int b = corners[3 * t + 1];
    int c = corners[3 * t + 2];
    for (int v : new int[] {a, b, c}) {
      if (x[v] == x[p] && y[v] == y[p]) {
        throw new MeshRefused(
            "two points lie at (" + x[p] + ", " + y[p] + ")", "leave a gap there");
      }
    }
    int ab = twins[3 * t];
    int bc = twins[3 * t + 1];
    int ca = twins[3 * t + 2];
    int u = triangles++;
    int w = triangles++;
    set(t, a, b, p, ab, -1, -1);
    set(u, b, c, p, bc, -1, 3 * t + 1);
    set(w, c, a, p, ca, 3 * t + 2, 3 * u + 1);
    suspect.add(3 * t);
    suspect.add(3 * u);
    suspect.add(3 * w);
    last = t;
    settle(p);
  }

  /** Flips suspect edges across from p until none has a point in its circle. */
  private void settle(int p) {
    while (!suspect.isEmpty()) {
      int h = suspect.removeLast();
      int g = twins[h];
      if (g < 0 || corners[previous(h)] != p) {
        continue;
      }
      // A point on an edge first makes a triangle without area there: away with it at once.
      if (side(corners[h], corners[next(h)], p) == 0 || inCircle(h)) {
        int t = h / 3;
        int s = g / 3;
        flip(h);
        suspect.add(3 * t + 1);
        suspect.add(3 * s);
      }
    }
  }

  /** Whether the point across a half-edge lies within the circle of its triangle. */
  private boolean inCircle(int h) {
    int a = corners[h];
    int b = corners[next(h)];
    int c = corners[previous(h)];
    int d = corners[previous(twins[h])];
    return Predicates.inCircle(x[a], y[a], x[b], y[b], x[c], y[c], x[d], y[d]) > 0;
  }

  /** Walks from the last triangle towards p until no edge has p on its far side. */
  private int locate(int p) {
    int t = last;
    int came = -1;
    while (true) {
      int across = -1;
      for (int h = 3 * t; h < 3 * t + 3; h++) {
        if (h != came && side(corners[h], corners[next(h)], p) < 0) {
          across = h;
          break;
        }
      }
      if (across < 0) {
        return t;
      }
      came = twins[across];
      t = came / 3;
    }
  }

  /**
   * Turns the edge of a half-edge to the other diagonal of its two triangles: (a, b, c) and (b, a,
   * d) become (c, a, d) and (d, b, c).
   */
  private void flip(int h) {
    int g = twins[h];
    int t = h / 3;
    int s = g / 3;
    int a = corners[h];
    int b = corners[next(h)];
    int c = corners[previous(h)];
    int d = corners[previous(g)];
    int bc = twins[next(h)];
    int ca = twins[previous(h)];
    int ad = twins[next(g)];
    int db = twins[previous(g)];
    set(t, c, a, d, ca, ad, -1);
    set(s, d, b, c, db, bc, 3 * t + 2);
  }

  /** The half-edge from one point to another, or -1. */
  private int find(int from, int to) {
    int first = out[from];
    int h = first;
    do {
      if (corners[next(h)] == to) {
        return h;
      }
      h = twins[previous(h)];
    } while (h >= 0 && h != first);
    // About a holding point there is no full round: the rest of it lies the other way.
    while (h < 0 && twins[first] >= 0) {
      first = next(twins[first]);
      if (corners[next(first)] == to) {
        return first;
      }
    }
    return -1;
  }

  /**
   * Makes the straight edge between two points an edge for good, and a bound of {@link #within}.
   *
   * @return false where another point, or a forced edge, lies in the way
   */
  boolean force(int from, int to) {
    boolean made = keep(from, to);
    if (made) {
      int h = find(from, to);
      bounds[h] = true;
      bounds[twins[h]] = true;
    }
    return made;
  }

  /** As {@link #force}, for an edge that bounds nothing. */
  boolean keep(int from, int to) {
    int h = find(from, to);
    if (h < 0) {
      Deque<int[]> across = across(from, to);
      if (across == null) {
        return false;
      }
      int flips = MOST_FLIPS * (across.size() + 1) * (across.size() + 1);
      while (!across.isEmpty()) {
        if (flips-- == 0) {
          throw new IllegalStateException("the edge from " + from + " to " + to + " does not come");
        }
        int[] edge = across.removeFirst();
        int e = find(edge[0], edge[1]);
        int c = corners[previous(e)];
        int d = corners[previous(twins[e])];
        // Only in a convex quadrilateral can the diagonal turn.
        if (side(c, d, edge[0]) * side(c, d, edge[1]) >= 0) {
          across.addLast(edge);
          continue;
        }
        flip(e);
        if (crosses(from, to, c, d)) {
          across.addLast(new int[] {c, d});
        }
      }
      h = find(from, to);
    }
    forced[h] = true;
    forced[twins[h]] = true;
    return true;
  }

  private boolean crosses(int a, int b, int c, int d) {
    return c != a && c != b && d != a && d != b && side(a, b, c) * side(a, b, d) < 0;
  }

  /** The edges that cross a segment, from its start; null where something lies in the way. */
  private Deque<int[]> across(int from, int to) {
    int h = out[from];
    int first = h;
    // The triangle at the start into which the segment runs.
    while (side(from, corners[next(h)], to) <= 0 || side(from, corners[previous(h)], to) >= 0) {
      if (side(from, corners[next(h)], to) == 0 && ahead(from, corners[next(h)], to)) {
        return null;
      }
      h = twins[previous(h)];
      if (h == first) {
        return null;
      }
    }
    Deque<int[]> edges = new ArrayDeque<>();
    int edge = next(h);
    while (true) {
      if (forced[edge]) {
        return null;
      }
      edges.addLast(new int[] {corners[edge], corners[next(edge)]});
      int g = twins[edge];
      int p = corners[previous(g)];
      if (p == to) {
        return edges;
      }
      int side = side(from, to, p);
      if (side == 0) {
        return null;
      }
      edge = side > 0 ? next(g) : previous(g);
    }
  }

  private boolean ahead(int from, int p, int to) {
    return (x[p] - x[from]) * (x[to] - x[from]) + (y[p] - y[from]) * (y[to] - y[from]) > 0;
  }

  /**
   * The triangles on the left of a bounding edge, up to the next such edges, after flipping what
   * forcing edges has left with a point in its circle.
   */
  int[] within(int from, int to) {
    int first = find(from, to) / 3;
    boolean[] inside = new boolean[triangles];
    int[] queue = new int[triangles];
    inside[first] = true;
    queue[0] = first;
    int count = 1;
    for (int i = 0; i < count; i++) {
      for (int h = 3 * queue[i]; h < 3 * queue[i] + 3; h++) {
        int other = bounds[h] || twins[h] < 0 ? -1 : twins[h] / 3;
        if (other >= 0 && !inside[other]) {
          inside[other] = true;
          queue[count++] = other;
        }
      }
    }
    improve(queue, count);
    int[] list = new int[3 * count];
    for (int i = 0; i < count; i++) {
      System.arraycopy(corners, 3 * queue[i], list, 3 * i, 3);
    }
    return list;
  }

  private void improve(int[] list, int count) {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int i = 0; i < count; i++) {
        for (int h = 3 * list[i]; h < 3 * list[i] + 3; h++) {
          if (!forced[h] && inCircle(h)) {
            flip(h);
            changed = true;
          }
        }
      }
    }
  }
}
