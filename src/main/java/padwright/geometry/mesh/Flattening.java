package padwright.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.geometry.Vec2;

/** A surface laid flat, with what that does to its lengths. Immutable; mm. */
public final class Flattening {
  /** Which energy found it. */
  public enum Method {
    /** As rigid as possible. */
    RIGID,
    /** Symmetric Dirichlet, because as rigid as possible would have flipped triangles. */
    SYMMETRIC
  }

  private final TriangleMesh surface;
  private final double[] xy;
  private final Strain strain;
  private final Method method;
  private final QuasiNewton.Outcome outcome;
  private final int flipped;
  private final boolean overlaps;

  Flattening(
      TriangleMesh surface,
      TriangleFrames frames,
      double[] xy,
      Method method,
      QuasiNewton.Outcome outcome) {
    this.surface = surface;
    this.xy = xy;
    this.method = method;
    this.outcome = outcome;
    this.strain = Strain.of(frames, xy);
    this.flipped = frames.flipped(xy);
    this.overlaps = SelfCrossing.of(outline());
  }

  public TriangleMesh surface() {
    return surface;
  }

  /** Where a vertex of the surface lies in the flat. */
  public Vec2 point(int v) {
    return new Vec2(xy[2 * v], xy[2 * v + 1]);
  }

  /** The boundary in the flat, anticlockwise, the first point not repeated. */
  public List<Vec2> outline() {
    List<Vec2> points = new ArrayList<>();
    for (int h : surface.boundaryLoops().get(0)) {
      points.add(point(surface.from(h)));
    }
    return points;
  }

  public Strain strain() {
    return strain;
  }

  public Method method() {
    return method;
  }

  /** Steps that the energy took to settle. */
  public int iterations() {
    return outcome.steps();
  }

  /** Whether the energy came to rest within the limit of steps. */
  public boolean settled() {
    return outcome.settled();
  }

  /** The energy reached, mm2: about area times squared strain. */
  public double energy() {
    return outcome.energy();
  }

  /** Triangles that lie face down in the flat or have no area there. */
  public int flipped() {
    return flipped;
  }

  /** Whether the flat's outline crosses itself, so that it cannot be cut in one piece. */
  public boolean overlaps() {
    return overlaps;
  }

  /** Why this flat cannot be used as a pattern; empty where it can. */
  public Optional<String> refusal() {
    if (flipped > 0) {
      return Optional.of(
          flipped
              + " of "
              + surface.triangleCount()
              + " triangles would lie face down in the flat");
    }
    if (overlaps) {
      return Optional.of("the flat overlaps itself, so it cannot be cut in one piece");
    }
    if (!settled()) {
      return Optional.of("the flat did not come to rest in " + iterations() + " steps");
    }
    return Optional.empty();
  }
}
