package padwright.crown;

import java.util.List;
import java.util.Optional;
import padwright.geometry.Vec2;

/**
 * What a domed top asks of the covering. Strains are fractions of its length as it is cut: positive
 * where it must stretch, negative where it must be eased in.
 *
 * @param surplus on the face for each radian that the outline turns, mm
 * @param refusal why the strain was not worked out; empty where it was
 * @param mean of the larger strain of each triangle without its sign, by area
 * @param stretched the most that it must stretch, and where
 * @param eased the most that it must be eased, negative, and where
 * @param stretchTaken the most that the covering stretches by hand in every direction, less the
 *     stretch allowance
 * @param easeTaken the most that it can be eased
 * @param spare the least by which the flattened face lies inside the line that the cover has for
 *     it; negative where the cover is short, mm
 * @param seams where seams would relieve it; empty where the covering takes it without
 * @param left largest strains with those seams: stretched, eased; zeros without seams
 * @param field the strain over the face
 * @param gaussBonnet by how much the mesh's curvature and turning miss 2 pi, radians
 */
public record CrownReport(
    double surplus,
    Optional<String> refusal,
    double mean,
    Place stretched,
    Place eased,
    double stretchTaken,
    double easeTaken,
    double spare,
    List<Seam> seams,
    double leftStretched,
    double leftEased,
    List<Sample> field,
    double gaussBonnet) {
  public CrownReport {
    seams = List.copyOf(seams);
    field = List.copyOf(field);
  }

  static CrownReport refused(double surplus, String why) {
    Place none = new Place(0, Vec2.ZERO, "", 0);
    return new CrownReport(
        surplus, Optional.of(why), 0, none, none, 0, 0, 0, List.of(), 0, 0, List.of(), 0);
  }

  /** Whether the covering takes it without a seam. */
  public boolean taken() {
    return stretched.strain() <= stretchTaken && -eased.strain() <= easeTaken;
  }

  /** Whether it takes it once the seams are sewn. */
  public boolean takenWithSeams() {
    return !seams.isEmpty() && leftStretched <= stretchTaken && -leftEased <= easeTaken;
  }

  /**
   * The larger of the two strains as a part of what the covering takes; infinite where it takes
   * none.
   */
  public double share() {
    return Math.max(part(stretched.strain(), stretchTaken), part(-eased.strain(), easeTaken));
  }

  private static double part(double strain, double taken) {
    return strain <= 0 ? 0 : strain / Math.max(0, taken);
  }

  /**
   * A strain and where it is in plan: the corner or side it is nearest to, and how far from it, mm.
   */
  public record Place(double strain, Vec2 at, String near, double away) {}

  /** A seam in plan, from the edge of the face inwards, mm. */
  public record Seam(String corner, Vec2 from, Vec2 to) {
    public double length() {
      return from.distance(to);
    }
  }

  /** One triangle of the face in plan with the strain that is larger in size, signed. */
  public record Sample(Vec2 a, Vec2 b, Vec2 c, double strain) {}
}
