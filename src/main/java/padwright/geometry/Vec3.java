package padwright.geometry;

/** A point or a vector of space, in mm; z points up from the back of the board. */
public record Vec3(double x, double y, double z) {
  public Vec3 plus(Vec3 o) {
    return new Vec3(x + o.x, y + o.y, z + o.z);
  }

  public Vec3 minus(Vec3 o) {
    return new Vec3(x - o.x, y - o.y, z - o.z);
  }

  public Vec3 times(double k) {
    return new Vec3(x * k, y * k, z * k);
  }

  public double dot(Vec3 o) {
    return x * o.x + y * o.y + z * o.z;
  }

  public double length() {
    return Math.sqrt(dot(this));
  }

  public double distance(Vec3 o) {
    return minus(o).length();
  }
}
