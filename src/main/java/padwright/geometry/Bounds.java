package padwright.geometry;

import java.util.List;

/** An upright box of the plane, in mm. */
public record Bounds(double minX, double minY, double maxX, double maxY) {
  /** The box that holds places, of which there is at least one. */
  public static Bounds of(List<Vec2> places) {
    Bounds b = of(places.get(0));
    for (Vec2 p : places) {
      b = b.with(p);
    }
    return b;
  }

  public static Bounds of(Vec2 p) {
    return new Bounds(p.x(), p.y(), p.x(), p.y());
  }

  public double width() {
    return maxX - minX;
  }

  public double height() {
    return maxY - minY;
  }

  public Vec2 centre() {
    return new Vec2((minX + maxX) / 2, (minY + maxY) / 2);
  }

  public Bounds with(Vec2 p) {
    return new Bounds(
        Math.min(minX, p.x()), Math.min(minY, p.y()), Math.max(maxX, p.x()), Math.max(maxY, p.y()));
  }

  public Bounds union(Bounds o) {
    return new Bounds(
        Math.min(minX, o.minX),
        Math.min(minY, o.minY),
        Math.max(maxX, o.maxX),
        Math.max(maxY, o.maxY));
  }

  public Bounds grown(double by) {
    return new Bounds(minX - by, minY - by, maxX + by, maxY + by);
  }

  public boolean contains(Vec2 p) {
    return p.x() >= minX && p.x() <= maxX && p.y() >= minY && p.y() <= maxY;
  }

  /** True where the two boxes share at least a point. */
  public boolean overlaps(Bounds o) {
    return minX <= o.maxX && o.minX <= maxX && minY <= o.maxY && o.minY <= maxY;
  }
}
