package padwright.desk.solid;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Paints bodies as a camera sees them, without a graphics card: what is nearer hides what is
 * farther (a buffer of depths, Catmull, 1974), light comes from over the viewer's left shoulder,
 * and arrises and outlines are drawn where they are seen. The same input always gives the same
 * pixels. An object keeps its buffers from one picture to the next; it is not for two threads at
 * once.
 */
public final class SolidPainter {
  /** Direction of the light from over the left shoulder, of length 1. */
  public static final float LIGHT_X = -0.36f;

  public static final float LIGHT_Y = 0.48f;
  public static final float LIGHT_Z = 0.8f;

  /** Shares of the light: all round, from over the shoulder, and along the view. */
  public static final float ROUND = 0.36f;

  public static final float KEY = 0.44f;
  public static final float VIEW = 0.24f;

  /** How far beside its pixel a face's depth may be what a line on it has, in pixels. */
  private static final double BESIDE = 3;

  private static final int NOBODY = -1;

  private int[] pixels = new int[0];
  private float[] depths = new float[0];
  private float[] behind = new float[0];
  private int[] owners = new int[0];
  private int width;
  private int height;

  // Of the body being painted: pixel places, 1 / depth, and light at each corner.
  private double[] x = new double[0];
  private double[] y = new double[0];
  private double[] near = new double[0];
  private boolean[] seen = new boolean[0];

  /**
   * Paints a picture, row by row from the top; the array is the painter's own and is painted over
   * by the next picture.
   */
  public int[] paint(
      Solid solid, Opening.Stage stage, Camera camera, Palette palette, int wide, int high) {
    size(wide, high);
    Arrays.fill(pixels, palette.background());
    Arrays.fill(depths, 0);
    Arrays.fill(owners, NOBODY);
    Projection projection = new Projection(camera, solid, width, height);
    List<Body> bodies = stage.bodies();
    for (int i = 0; i < bodies.size(); i++) {
      project(bodies.get(i), projection);
      faces(bodies.get(i), i, projection, palette.of(bodies.get(i)));
    }
    LinePainter lines = new LinePainter(pixels, owners, width, height, palette.line());
    for (int i = 0; i < bodies.size(); i++) {
      project(bodies.get(i), projection);
      lines(bodies.get(i), i, lines);
    }
    return pixels;
  }

  /** The body that is seen at a pixel; empty beside the solid. */
  public static Optional<Body> pick(
      Solid solid, Opening.Stage stage, Camera camera, int wide, int high, double px, double py) {
    SolidPainter painter = new SolidPainter();
    Projection projection = new Projection(camera, solid, wide, high);
    Optional<Body> found = Optional.empty();
    double nearest = 0;
    for (Body body : stage.bodies()) {
      painter.project(body, projection);
      double at = painter.nearest(body, px, py);
      if (at > nearest) {
        nearest = at;
        found = Optional.of(body);
      }
    }
    return found;
  }

  private void size(int wide, int high) {
    if (width != wide || height != high) {
      width = wide;
      height = high;
      pixels = new int[wide * high];
      depths = new float[wide * high];
      behind = new float[wide * high];
      owners = new int[wide * high];
    }
  }

  private void project(Body body, Projection projection) {
    double[] p = body.points();
    int n = p.length / 3;
    if (x.length < n) {
      x = new double[n];
      y = new double[n];
      near = new double[n];
    }
    for (int i = 0; i < n; i++) {
      double depth = projection.depth(p[3 * i], p[3 * i + 1], p[3 * i + 2]);
      x[i] = projection.pixelX(projection.across(p[3 * i], p[3 * i + 1], p[3 * i + 2]), depth);
      y[i] = projection.pixelY(projection.above(p[3 * i], p[3 * i + 1], p[3 * i + 2]), depth);
      near[i] = 1 / depth;
    }
    int[] t = body.triangles();
    if (seen.length < t.length / 3) {
      seen = new boolean[t.length / 3];
    }
    for (int i = 0; i < t.length; i += 3) {
      // Pixels run down, so what turns anticlockwise before the eye turns clockwise here.
      seen[i / 3] = cross(t[i], t[i + 1], x[t[i + 2]], y[t[i + 2]]) < 0;
    }
  }

  /** Twice the area of a triangle of pixels. */
  private double cross(int a, int b, double px, double py) {
    return (x[b] - x[a]) * (py - y[a]) - (y[b] - y[a]) * (px - x[a]);
  }

  private double nearest(Body body, double px, double py) {
    int[] t = body.triangles();
    double nearest = 0;
    for (int i = 0; i < t.length; i += 3) {
      if (!seen[i / 3]) {
        continue;
      }
      double area = cross(t[i], t[i + 1], x[t[i + 2]], y[t[i + 2]]);
      double c = cross(t[i], t[i + 1], px, py) / area;
      double a = cross(t[i + 1], t[i + 2], px, py) / area;
      double b = 1 - a - c;
      if (a >= 0 && b >= 0 && c >= 0) {
        nearest = Math.max(nearest, a * near[t[i]] + b * near[t[i + 1]] + c * near[t[i + 2]]);
      }
    }
    return nearest;
  }

  private void faces(Body body, int owner, Projection projection, int colour) {
    int[] t = body.triangles();
    float[] turned = new float[3];
    float[] light = new float[3];
    int[] shades = shades(colour);
    for (int i = 0; i < t.length; i += 3) {
      if (!seen[i / 3]) {
        continue;
      }
      for (int k = 0; k < 3; k++) {
        projection.turned(body.normals(), 3 * (i + k), turned);
        float lit = turned[0] * LIGHT_X + turned[1] * LIGHT_Y + turned[2] * LIGHT_Z;
        light[k] = ROUND + KEY * Math.max(0, lit) + VIEW * Math.max(0, turned[2]);
      }
      fill(t[i], t[i + 1], t[i + 2], light, owner, shades);
    }
  }

  /** A colour in every light from none to full. */
  private static int[] shades(int colour) {
    int[] shades = new int[256];
    for (int i = 0; i < 256; i++) {
      int r = (colour >> 16 & 255) * i / 255;
      int g = (colour >> 8 & 255) * i / 255;
      int b = (colour & 255) * i / 255;
      shades[i] = 0xFF000000 | r << 16 | g << 8 | b;
    }
    return shades;
  }

  /** Fills the pixels whose middles lie in a triangle; depth and light run evenly over it. */
  private void fill(int a, int b, int c, float[] light, int owner, int[] shades) {
    int top = (int) Math.max(0, Math.ceil(Math.min(y[a], Math.min(y[b], y[c])) - 0.5));
    int bottom =
        (int) Math.min(height - 1.0, Math.floor(Math.max(y[a], Math.max(y[b], y[c])) - 0.5));
    double area = cross(a, b, x[c], y[c]);
    double nx = ((near[b] - near[a]) * (y[c] - y[a]) - (near[c] - near[a]) * (y[b] - y[a])) / area;
    double ny = ((near[c] - near[a]) * (x[b] - x[a]) - (near[b] - near[a]) * (x[c] - x[a])) / area;
    double lx = ((light[1] - light[0]) * (y[c] - y[a]) - (light[2] - light[0]) * (y[b] - y[a]));
    double ly = ((light[2] - light[0]) * (x[b] - x[a]) - (light[1] - light[0]) * (x[c] - x[a]));
    lx /= area;
    ly /= area;
    double slope = BESIDE * (Math.abs(nx) + Math.abs(ny));
    for (int row = top; row <= bottom; row++) {
      double at = row + 0.5;
      double from = Double.POSITIVE_INFINITY;
      double to = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < 3; k++) {
        int p = k == 0 ? a : k == 1 ? b : c;
        int q = k == 0 ? b : k == 1 ? c : a;
        if (y[p] <= at != y[q] <= at) {
          double hit = x[p] + (x[q] - x[p]) * (at - y[p]) / (y[q] - y[p]);
          from = Math.min(from, hit);
          to = Math.max(to, hit);
        }
      }
      int left = (int) Math.max(0, Math.ceil(from - 0.5));
      int right = (int) Math.min(width - 1.0, Math.ceil(to - 0.5) - 1);
      double dx = left + 0.5 - x[a];
      double n = near[a] + nx * dx + ny * (at - y[a]);
      double l = 255 * (light[0] + lx * dx + ly * (at - y[a]));
      int i = row * width + left;
      for (int column = left; column <= right; column++) {
        if (n > depths[i]) {
          depths[i] = (float) n;
          behind[i] = (float) (n - slope);
          owners[i] = owner;
          pixels[i] = shades[(int) Math.max(0, Math.min(255, l))];
        }
        n += nx;
        l += 255 * lx;
        i++;
      }
    }
  }

  /** Draws arrises of which a face is seen, and edges where the body turns away. */
  private void lines(Body body, int owner, LinePainter painter) {
    int[] e = body.edges();
    boolean[] arrises = body.arrises();
    for (int i = 0; i < arrises.length; i++) {
      boolean left = seen[e[4 * i + 2]];
      boolean right = e[4 * i + 3] >= 0 && seen[e[4 * i + 3]];
      boolean hollow = body.hollows()[i];
      if ((left != right && !hollow) || ((left || right) && arrises[i])) {
        int a = e[4 * i];
        int b = e[4 * i + 1];
        // Only what bulges may lie a little behind the faces that are seen beside it.
        float[] over = hollow ? depths : behind;
        int about = hollow ? 0 : 1;
        painter.line(x[a], y[a], near[a], x[b], y[b], near[b], owner, over, about);
      }
    }
  }
}
