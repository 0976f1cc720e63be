package padwright.desk.solid;

/**
 * Draws lines into a painted picture where their own body is seen: a pixel takes part of a line if
 * it, or one beside it, shows the body the line belongs to and nothing of that body is clearly
 * nearer. The edges of a line are softened by how much of each pixel it covers.
 */
final class LinePainter {
  /** Width of a line, pixels. */
  private static final double WIDE = 1.3;

  /** A line this much deeper than the faces beside it, as a share, still lies on them. */
  private static final double SLACK = 1.0 / 2000;

  private final int[] pixels;
  private final int[] owners;
  private final int width;
  private final int height;
  private final int colour;

  LinePainter(int[] pixels, int[] owners, int width, int height, int colour) {
    this.pixels = pixels;
    this.owners = owners;
    this.width = width;
    this.height = height;
    this.colour = colour;
  }

  /**
   * Draws a line between two pixel places with their 1 / depth.
   *
   * @param about how many pixels beside it may show the body instead
   * @param over of each pixel, what hides lines that are farther
   */
  void line(
      double ax,
      double ay,
      double an,
      double bx,
      double by,
      double bn,
      int owner,
      float[] over,
      int about) {
    boolean flat = Math.abs(bx - ax) >= Math.abs(by - ay);
    double u0 = flat ? ax : ay;
    double u1 = flat ? bx : by;
    double v0 = flat ? ay : ax;
    double v1 = flat ? by : bx;
    if (u1 < u0) {
      line(bx, by, bn, ax, ay, an, owner, over, about);
      return;
    }
    double slope = u1 - u0 < 1e-9 ? 0 : (v1 - v0) / (u1 - u0);
    double rise = u1 - u0 < 1e-9 ? 0 : (bn - an) / (u1 - u0);
    // Across the line's own direction, so that slanted lines are no thinner.
    double half = WIDE / 2 * Math.sqrt(1 + slope * slope);
    int last = flat ? width - 1 : height - 1;
    int from = (int) Math.max(0, Math.floor(u0));
    int to = (int) Math.min(last, Math.floor(u1));
    for (int u = from; u <= to; u++) {
      double at = Math.max(u0, Math.min(u1, u + 0.5));
      double share = Math.min(u1, u + 1.0) - Math.max(u0, u);
      double v = v0 + slope * (at - u0);
      double n = an + rise * (at - u0);
      if (!shown(flat, u, v, n, owner, over, about)) {
        continue;
      }
      for (int k = (int) Math.floor(v - half); k <= v + half; k++) {
        double cover = Math.min(v + half, k + 1.0) - Math.max(v - half, k);
        blend(flat ? u : k, flat ? k : u, Math.min(1, cover) * Math.min(1, Math.max(0, share)));
      }
    }
  }

  private boolean shown(
      boolean flat, int u, double v, double n, int owner, float[] over, int about) {
    int middle = (int) Math.floor(v);
    int px = flat ? u : middle;
    int py = flat ? middle : u;
    for (int y = Math.max(0, py - about); y <= Math.min(height - 1, py + about); y++) {
      for (int x = Math.max(0, px - about); x <= Math.min(width - 1, px + about); x++) {
        int i = y * width + x;
        if (owners[i] == owner && n >= over[i] * (1 - SLACK)) {
          return true;
        }
      }
    }
    return false;
  }

  private void blend(int x, int y, double share) {
    if (x < 0 || y < 0 || x >= width || y >= height || share <= 0) {
      return;
    }
    int i = y * width + x;
    int old = pixels[i];
    int mixed = 0xFF000000;
    for (int shift = 0; shift <= 16; shift += 8) {
      int o = old >> shift & 255;
      int c = colour >> shift & 255;
      mixed |= (int) Math.round(o + (c - o) * share) << shift;
    }
    pixels[i] = mixed;
  }
}
