package padwright.desk.solid;

/**
 * A body grown by a line's width, of which a graphics card draws the far side only, in the colour
 * of lines: what stands out beyond the body itself is its outline.
 *
 * @param points x, y, z of each corner of each triangle
 * @param normals one for each of them
 * @param triangles three points each
 */
public record Shadow(float[] points, float[] normals, int[] triangles) {
  public static Shadow of(Body body, double radius) {
    float[] from = body.floats();
    float[] normals = body.normals();
    int[] corners = body.triangles();
    float[] points = new float[3 * corners.length];
    int[] triangles = new int[corners.length];
    double by = radius * LineBars.THICK;
    for (int c = 0; c < corners.length; c++) {
      triangles[c] = c;
      for (int i = 0; i < 3; i++) {
        points[3 * c + i] = (float) (from[3 * corners[c] + i] + by * normals[3 * c + i]);
      }
    }
    return new Shadow(points, normals, triangles);
  }
}
