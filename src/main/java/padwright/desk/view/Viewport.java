package padwright.desk.view;

import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

/**
 * Where a drawing in mm, y up, lies in a view in points, y down from its upper left corner. A point
 * is the toolkit's, however many dots of the screen it covers. Never changes: each movement gives
 * another one.
 *
 * @param scale points a mm
 * @param left where the drawing's origin lies, points from the left; may be outside the view
 * @param top the same from the top
 * @param width of the view, points
 * @param height of the view, points
 */
public record Viewport(double scale, double left, double top, double width, double height) {
  /** A piece as long as the largest length taken, 10 m, still fits into a view of 200 points. */
  public static final double LEAST_SCALE = 0.02;

  /** Some twenty times life size: a tenth of a mm is seen apart, and nothing is gained beyond. */
  public static final double MOST_SCALE = 80;

  /** A view has at least a point each way, so that nothing is divided by nought. */
  private static final double LEAST_SIDE = 1;

  /** A drawing of no size, such as a single point, is shown as if it were this large, mm. */
  private static final double LEAST_EXTENT = 1;

  public Viewport {
    if (!(scale > 0) || !Double.isFinite(scale + left + top + width + height)) {
      throw new IllegalArgumentException("no view: " + scale + " " + left + " " + top);
    }
    width = Math.max(LEAST_SIDE, width);
    height = Math.max(LEAST_SIDE, height);
  }

  /** The whole of a box in the middle of a view, with a margin of so many points round it. */
  public static Viewport fit(Bounds extent, double width, double height, double margin) {
    double w = Math.max(LEAST_SIDE, width - 2 * margin);
    double h = Math.max(LEAST_SIDE, height - 2 * margin);
    double scale =
        Math.min(
            w / Math.max(LEAST_EXTENT, extent.width()),
            h / Math.max(LEAST_EXTENT, extent.height()));
    return about(extent.centre(), limited(scale), width, height);
  }

  private static Viewport about(Vec2 middle, double scale, double width, double height) {
    return new Viewport(
        scale, width / 2 - middle.x() * scale, height / 2 + middle.y() * scale, width, height);
  }

  private static double limited(double scale) {
    return Math.max(LEAST_SCALE, Math.min(MOST_SCALE, scale));
  }

  public double screenX(double x) {
    return left + x * scale;
  }

  public double screenY(double y) {
    return top - y * scale;
  }

  /** A place of the drawing, mm, in points of the view. */
  public Vec2 toScreen(Vec2 place) {
    return new Vec2(screenX(place.x()), screenY(place.y()));
  }

  /** A point of the view as a place of the drawing, mm. */
  public Vec2 toDrawing(Vec2 point) {
    return new Vec2((point.x() - left) / scale, (top - point.y()) / scale);
  }

  /** The part of the drawing that lies in the view, mm. */
  public Bounds visible() {
    return Bounds.of(toDrawing(Vec2.ZERO)).with(toDrawing(new Vec2(width, height)));
  }

  /**
   * Larger or smaller by a factor, within the limits; what lies under {@code point} stays there.
   */
  public Viewport zoomed(Vec2 point, double factor) {
    Vec2 still = toDrawing(point);
    double s = limited(scale * factor);
    return new Viewport(s, point.x() - still.x() * s, point.y() + still.y() * s, width, height);
  }

  /** The drawing moved by so many points, right and down. */
  public Viewport panned(double right, double down) {
    return new Viewport(scale, left + right, top + down, width, height);
  }

  /** Another size of the view; what was in its middle stays there. */
  public Viewport resized(double newWidth, double newHeight) {
    return about(visible().centre(), scale, newWidth, newHeight);
  }

  /** Moved back, where needed, until {@code least} points of a box's width and height are seen. */
  public Viewport holding(Bounds extent, double least) {
    double x = held(screenX(extent.minX()), screenX(extent.maxX()), width, least);
    double y = held(screenY(extent.maxY()), screenY(extent.minY()), height, least);
    return x == 0 && y == 0 ? this : panned(x, y);
  }

  private static double held(double from, double to, double room, double least) {
    double keep = Math.min(least, Math.min(to - from, room));
    if (to < keep) {
      return keep - to;
    }
    return from > room - keep ? room - keep - from : 0;
  }

  /** Moved as little as shows a box with a margin of so many points; smaller where it must be. */
  public Viewport revealing(Bounds box, double margin) {
    boolean fits =
        box.width() * scale + 2 * margin <= width && box.height() * scale + 2 * margin <= height;
    if (!fits) {
      return fit(box, width, height, margin);
    }
    double x = into(screenX(box.minX()), screenX(box.maxX()), width, margin);
    double y = into(screenY(box.maxY()), screenY(box.minY()), height, margin);
    return x == 0 && y == 0 ? this : panned(x, y);
  }

  private static double into(double from, double to, double room, double margin) {
    if (from < margin) {
      return margin - from;
    }
    return to > room - margin ? room - margin - to : 0;
  }
}
