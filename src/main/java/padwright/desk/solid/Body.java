package padwright.desk.solid;

/**
 * One thing that the solid is made of, as triangles with their corners anticlockwise seen from
 * outside; mm, in the frame of the base outline with z up from the back of the board. The arrays
 * are handed out as they are, for painters to read; nobody writes to them.
 */
public final class Body {
  private final String name;
  private final Kind kind;
  private final int layer;
  private final double[] points;
  private final int[] triangles;
  private final float[] normals;
  private final int[] edges;
  private final boolean[] arrises;
  private final boolean[] hollows;

  /** What a body is. */
  public enum Kind {
    PACKING,
    BOARD,
    FOAM,
    WADDING,
    COVERING,
    DUST_COVER
  }

  Body(
      String name,
      Kind kind,
      int layer,
      double[] points,
      int[] triangles,
      float[] normals,
      int[] edges,
      boolean[] arrises,
      boolean[] hollows) {
    this.name = name;
    this.kind = kind;
    this.layer = layer;
    this.points = points;
    this.triangles = triangles;
    this.normals = normals;
    this.edges = edges;
    this.arrises = arrises;
    this.hollows = hollows;
  }

  /** What a maker calls it, such as "foam layer 2". */
  public String name() {
    return name;
  }

  public Kind kind() {
    return kind;
  }

  /** Number of a foam layer from the board upwards, from 1; 0 of anything else. */
  public int layer() {
    return layer;
  }

  /** x, y, z of each point. */
  public double[] points() {
    return points;
  }

  /** The same as a graphics card wants them. */
  public float[] floats() {
    float[] floats = new float[points.length];
    for (int i = 0; i < floats.length; i++) {
      floats[i] = (float) points[i];
    }
    return floats;
  }

  /** Three points of each triangle. */
  public int[] triangles() {
    return triangles;
  }

  /** x, y, z of the outward normal at each corner of each triangle: alike where it looks smooth. */
  public float[] normals() {
    return normals;
  }

  /**
   * Two points of each edge, and the triangle on its left and on its right going from the first to
   * the second; -1 where there is none.
   */
  public int[] edges() {
    return edges;
  }

  /** Whether an edge is drawn from wherever it is seen: an arris, or a tight bend. */
  public boolean[] arrises() {
    return arrises;
  }

  /** Whether the body turns inwards along an edge: its outline is never seen there. */
  public boolean[] hollows() {
    return hollows;
  }

  /** The volume that its triangles enclose, mm3 (divergence theorem, one tetrahedron each). */
  public double volume() {
    double six = 0;
    for (int t = 0; t < triangles.length; t += 3) {
      int a = 3 * triangles[t];
      int b = 3 * triangles[t + 1];
      int c = 3 * triangles[t + 2];
      six +=
          points[a] * (points[b + 1] * points[c + 2] - points[b + 2] * points[c + 1])
              + points[a + 1] * (points[b + 2] * points[c] - points[b] * points[c + 2])
              + points[a + 2] * (points[b] * points[c + 1] - points[b + 1] * points[c]);
    }
    return six / 6;
  }

  /** Whether every edge has a triangle on either side. */
  public boolean closed() {
    for (int e = 0; e < edges.length; e += 4) {
      if (edges[e + 2] < 0 || edges[e + 3] < 0) {
        return false;
      }
    }
    return true;
  }

  @Override
  public String toString() {
    return name + ", " + triangles.length / 3 + " triangles";
  }
}
