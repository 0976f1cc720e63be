package padwright.geometry.mesh;

/** The height of a surface over each point of the plan, mm. */
@FunctionalInterface
public interface HeightField {
  double at(double x, double y);
}
