package padwright.fastening;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import padwright.design.WrappedPad.Hole;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.material.Screw;

/**
 * How the finished part is held.
 *
 * @param packing the strip or panel that fills the gap the turn-under leaves, or empty where there
 *     is no room
 * @param packingThickness its thickness, mm
 * @param screw empty unless screwed
 * @param screwLength the length planned with
 * @param positions screw positions, from the face
 * @param steps what to do, in order, one sentence each
 */
public record Mounting(
    Optional<Path> packing,
    double packingThickness,
    Optional<Screw> screw,
    OptionalDouble screwLength,
    List<Hole> positions,
    List<String> steps) {
  /** A strip is this many times as long as it is wide; our own choice. */
  private static final double STRIP = 3;

  public Mounting {
    positions = List.copyOf(positions);
    steps = List.copyOf(steps);
  }

  /** Whether packing of this outline is a strip in the hand; else it is a panel. */
  public static boolean strip(Path packing) {
    Bounds b = packing.bounds();
    return Math.min(b.width(), b.height()) * STRIP < Math.max(b.width(), b.height());
  }
}
