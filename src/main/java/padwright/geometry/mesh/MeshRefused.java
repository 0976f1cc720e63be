package padwright.geometry.mesh;

/**
 * A mesh or an outline that cannot be taken, with the place, the value found and what would be
 * right.
 */
public final class MeshRefused extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  public MeshRefused(String problem, String remedy) {
    super(problem + "; " + remedy);
  }
}
