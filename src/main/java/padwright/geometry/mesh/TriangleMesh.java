package padwright.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Vec3;

/**
 * A surface made of triangles, with or without a boundary; mm. It is a manifold (an edge has one or
 * two triangles, and the triangles about a vertex form one fan), all its triangles run the same way
 * round, none is degenerate, and every vertex belongs to a triangle. Immutable.
 *
 * <p>Half-edge {@code 3 t + k} runs from corner {@code k} of triangle {@code t} to corner {@code (k
 * + 1) % 3}.
 */
public final class TriangleMesh {
  /**
   * Least height of a triangle as a part of its longest edge. Below it a cotangent has lost half of
   * a double's digits.
   */
  public static final double FLATTEST = 1e-8;

  /** Largest coordinate taken, mm: a thousand times the largest part. */
  public static final double FARTHEST = 1e7;

  private final double[] xyz;
  private final int[] corners;
  private final int[] twins;
  private final List<int[]> loops;
  private final int components;

  private TriangleMesh(double[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
    checkNumbers();
    checkTriangles();
    MeshTopology topology = MeshTopology.of(xyz.length / 3, corners);
    this.twins = topology.twins();
    this.loops = topology.loops();
    this.components = topology.components();
  }

  /**
   * A mesh of these vertices and triangles, each three vertex numbers from 0.
   *
   * @throws MeshRefused where the triangles are none, not a manifold, not oriented alike,
   *     degenerate or name a vertex that is not there; where a vertex is not a number or belongs to
   *     no triangle
   */
  public static TriangleMesh of(List<Vec3> vertices, List<int[]> triangles) {
    double[] xyz = new double[3 * vertices.size()];
    for (int i = 0; i < vertices.size(); i++) {
      Vec3 p = vertices.get(i);
      xyz[3 * i] = p.x();
      xyz[3 * i + 1] = p.y();
      xyz[3 * i + 2] = p.z();
    }
    int[] corners = new int[3 * triangles.size()];
    for (int t = 0; t < triangles.size(); t++) {
      int[] triangle = triangles.get(t);
      if (triangle.length != 3) {
        throw new MeshRefused(
            "triangle " + t + " has " + triangle.length + " corners", "a triangle has three");
      }
      System.arraycopy(triangle, 0, corners, 3 * t, 3);
    }
    return new TriangleMesh(xyz, corners);
  }

  /** The same from plain arrays, which become the mesh's own. */
  static TriangleMesh owning(double[] xyz, int[] corners) {
    return new TriangleMesh(xyz, corners);
  }

  private void checkNumbers() {
    for (int i = 0; i < xyz.length; i++) {
      if (!(Math.abs(xyz[i]) <= FARTHEST)) {
        throw new MeshRefused(
            "vertex " + i / 3 + ": " + "xyz".charAt(i % 3) + " is " + xyz[i],
            "a coordinate is a number of mm within " + FARTHEST + " of the origin");
      }
    }
  }

  private void checkTriangles() {
    if (corners.length == 0) {
      throw new MeshRefused("the mesh has no triangle", "it needs at least one");
    }
    int n = xyz.length / 3;
    for (int i = 0; i < corners.length; i++) {
      if (corners[i] < 0 || corners[i] >= n) {
        throw new MeshRefused(
            "triangle " + i / 3 + " names vertex " + corners[i], "vertices are 0 to " + (n - 1));
      }
    }
    for (int t = 0; t < corners.length / 3; t++) {
      double longest = Math.max(length(3 * t), Math.max(length(3 * t + 1), length(3 * t + 2)));
      double height = 2 * area(t) / longest;
      if (!(height > FLATTEST * longest)) {
        throw new MeshRefused(
            "triangle "
                + t
                + " (vertices "
                + named(t)
                + ") is degenerate: its longest edge is "
                + longest
                + " mm and its height on it "
                + (longest > 0 ? height : 0)
                + " mm",
            "its height must be over " + FLATTEST + " of that edge");
      }
    }
  }

  private String named(int t) {
    return corners[3 * t] + ", " + corners[3 * t + 1] + ", " + corners[3 * t + 2];
  }

  public int vertexCount() {
    return xyz.length / 3;
  }

  public int triangleCount() {
    return corners.length / 3;
  }

  /** Each edge once. */
  public int edgeCount() {
    int boundary = 0;
    for (int twin : twins) {
      boundary += twin < 0 ? 1 : 0;
    }
    return (corners.length + boundary) / 2;
  }

  public Vec3 vertex(int v) {
    return new Vec3(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
  }

  /** The three vertices of a triangle, in its sense of rotation. */
  public int[] triangle(int t) {
    return new int[] {corners[3 * t], corners[3 * t + 1], corners[3 * t + 2]};
  }

  /** The vertex that half-edge {@code h} starts from. */
  public int from(int h) {
    return corners[h];
  }

  /** The vertex that half-edge {@code h} runs to. */
  public int to(int h) {
    return corners[next(h)];
  }

  /** The half-edge that runs back along {@code h} in the next triangle; -1 on the boundary. */
  public int twin(int h) {
    return twins[h];
  }

  static int next(int h) {
    return h % 3 == 2 ? h - 2 : h + 1;
  }

  /** Length of a half-edge, mm. */
  public double length(int h) {
    return distance(from(h), to(h));
  }

  double distance(int v, int w) {
    double x = xyz[3 * v] - xyz[3 * w];
    double y = xyz[3 * v + 1] - xyz[3 * w + 1];
    double z = xyz[3 * v + 2] - xyz[3 * w + 2];
    return Math.sqrt(x * x + y * y + z * z);
  }

  /** Area of a triangle, mm2. */
  public double area(int t) {
    int a = 3 * corners[3 * t];
    int b = 3 * corners[3 * t + 1];
    int c = 3 * corners[3 * t + 2];
    double ux = xyz[b] - xyz[a];
    double uy = xyz[b + 1] - xyz[a + 1];
    double uz = xyz[b + 2] - xyz[a + 2];
    double vx = xyz[c] - xyz[a];
    double vy = xyz[c + 1] - xyz[a + 1];
    double vz = xyz[c + 2] - xyz[a + 2];
    double x = uy * vz - uz * vy;
    double y = uz * vx - ux * vz;
    double z = ux * vy - uy * vx;
    return Math.sqrt(x * x + y * y + z * z) / 2;
  }

  /** Area of the whole, mm2. */
  public double area() {
    double sum = 0;
    for (int t = 0; t < triangleCount(); t++) {
      sum += area(t);
    }
    return sum;
  }

  /** The angle of a triangle at the start of half-edge {@code h}, radians. */
  public double angle(int h) {
    int t = h - h % 3;
    int a = corners[h];
    int b = corners[t + (h + 1) % 3];
    int c = corners[t + (h + 2) % 3];
    double ab = distance(a, b);
    double ac = distance(a, c);
    double bc = distance(b, c);
    // From sine and cosine together: either alone loses digits where it is near 1.
    return Math.atan2(4 * area(t / 3), ab * ab + ac * ac - bc * bc);
  }

  /**
   * The boundary as closed loops of half-edges, each with the surface on its left; empty for a
   * closed surface.
   */
  public List<int[]> boundaryLoops() {
    List<int[]> copy = new ArrayList<>();
    loops.forEach(l -> copy.add(l.clone()));
    return copy;
  }

  /** How many pieces it is in that share no vertex. */
  public int components() {
    return components;
  }

  /** Vertices less edges and triangles: 1 for a disc, 2 for a closed sphere, 0 for a ring. */
  public int eulerCharacteristic() {
    return vertexCount() - edgeCount() + triangleCount();
  }

  /** One piece with one boundary and no handle, as flattening needs it. */
  public boolean isDisc() {
    return components == 1 && loops.size() == 1 && eulerCharacteristic() == 1;
  }

  /** Coordinates x, y, z of each vertex in turn; the mesh's own, not to be written. */
  double[] xyz() {
    return xyz;
  }

  /** Three vertices a triangle; the mesh's own, not to be written. */
  int[] corners() {
    return corners;
  }
}
