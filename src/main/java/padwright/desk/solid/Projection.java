package padwright.desk.solid;

import padwright.geometry.Vec3;

/**
 * How a camera brings a solid into a picture: the one place where that is reckoned, for the painted
 * picture and for the graphics card alike. Pixels run to the right and down. Perspective about the
 * camera: a point so deep below it is as many times smaller.
 */
public final class Projection {
  private final double[] right;
  private final double[] up;
  private final double[] towards;
  private final Vec3 centre;
  private final double panRight;
  private final double panUp;
  private final double distance;
  private final double lens;
  private final double middleX;
  private final double middleY;

  public Projection(Camera camera, Solid solid, int width, int height) {
    double ca = Math.cos(camera.azimuth());
    double sa = Math.sin(camera.azimuth());
    double ce = Math.cos(camera.elevation());
    double se = Math.sin(camera.elevation());
    right = new double[] {ca, sa, 0};
    towards = new double[] {sa * ce, -ca * ce, se};
    up = new double[] {-sa * se, ca * se, ce};
    centre = solid.centre();
    panRight = camera.right() * solid.radius();
    panUp = camera.up() * solid.radius();
    distance = Camera.DISTANCE * solid.radius();
    lens = lens(camera.zoom(), width, height);
    middleX = width / 2.0;
    middleY = height / 2.0;
  }

  /** Pixels that a length as long as it is deep comes to. */
  static double lens(double zoom, int width, int height) {
    return zoom * Math.min(width, height) / 2.0 / Camera.HALF;
  }

  /** To the right of the middle of the view, mm. */
  public double across(double x, double y, double z) {
    return along(right, x, y, z) - panRight;
  }

  /** Above the middle of the view, mm. */
  public double above(double x, double y, double z) {
    return along(up, x, y, z) - panUp;
  }

  /** Before the camera, mm. */
  public double depth(double x, double y, double z) {
    return distance - along(towards, x, y, z);
  }

  private double along(double[] way, double x, double y, double z) {
    return way[0] * (x - centre.x()) + way[1] * (y - centre.y()) + way[2] * (z - centre.z());
  }

  public double pixelX(double across, double depth) {
    return middleX + lens * across / depth;
  }

  public double pixelY(double above, double depth) {
    return middleY - lens * above / depth;
  }

  /** A normal's share to the right, up, and towards the viewer. */
  void turned(float[] normals, int at, float[] into) {
    double x = normals[at];
    double y = normals[at + 1];
    double z = normals[at + 2];
    into[0] = (float) (right[0] * x + right[1] * y + right[2] * z);
    into[1] = (float) (up[0] * x + up[1] * y + up[2] * z);
    into[2] = (float) (towards[0] * x + towards[1] * y + towards[2] * z);
  }

  /**
   * The rows of the matrix that takes a point of the solid to the right of, below, and before a
   * camera in the origin: twelve numbers, as graphics cards want them.
   */
  public double[] matrix() {
    double[] m = new double[12];
    for (int i = 0; i < 3; i++) {
      m[i] = right[i];
      m[4 + i] = -up[i];
      m[8 + i] = -towards[i];
    }
    m[3] = across(0, 0, 0);
    m[7] = -above(0, 0, 0);
    m[11] = depth(0, 0, 0);
    return m;
  }

  /** The opening of the lens over the smaller side of the picture, radians. */
  public static double opening(Camera camera) {
    return 2 * Math.atan(Camera.HALF / camera.zoom());
  }

  /** Left, top, right and bottom of all points of a solid, in pixels. */
  double[] box(Solid solid) {
    double[] box = {1e9, 1e9, -1e9, -1e9};
    for (Body b : solid.bodies()) {
      double[] p = b.points();
      for (int i = 0; i < p.length; i += 3) {
        double depth = depth(p[i], p[i + 1], p[i + 2]);
        double x = pixelX(across(p[i], p[i + 1], p[i + 2]), depth);
        double y = pixelY(above(p[i], p[i + 1], p[i + 2]), depth);
        box[0] = Math.min(box[0], x);
        box[1] = Math.min(box[1], y);
        box[2] = Math.max(box[2], x);
        box[3] = Math.max(box[3], y);
      }
    }
    return box;
  }
}
