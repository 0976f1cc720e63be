package padwright.dome;

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
 * @param stretched the most that it must stretch, and where; the mean of a patch
 * @param eased the most that it must be eased, negative, and where; the mean of a patch
 * @param stretchTaken the most that the covering stretches by hand in every direction, less the
 *     stretch allowance
 * @param easeTaken the most that it can be eased
 * @param seams where seams would relieve it; empty where the covering takes it without
 * @param leftStretched the most that it must stretch once those are sewn
 * @param leftEased the most that it must be eased then, negative
 * @param gaussBonnet by how much the mesh's curvature and turning miss 2 pi, radians
 */
public record DomeReport(
    double surplus,
    Optional<String> refusal,
    double mean,
    Place stretched,
    Place eased,
    double stretchTaken,
    double easeTaken,
    List<Seam> seams,
    double leftStretched,
    double leftEased,
    double gaussBonnet) {
  public DomeReport {
    seams = List.copyOf(seams);
  }

  static DomeReport refused(double surplus, String why) {
    Place none = new Place(0, Vec2.ZERO, "");
    return new DomeReport(surplus, Optional.of(why), 0, none, none, 0, 0, List.of(), 0, 0, 0);
  }

  /** Whether the covering takes it without a seam. */
  public boolean taken() {
    return takes(stretched.strain(), eased.strain());
  }

  /** Whether it takes it once the seams are sewn. */
  public boolean takenWithSeams() {
    return !seams.isEmpty() && takes(leftStretched, leftEased);
  }

  private boolean takes(double stretch, double ease) {
    return stretch <= stretchTaken && -ease <= easeTaken;
  }

  /** A strain and where it is in plan: the corner or side it is nearest to. */
  public record Place(double strain, Vec2 at, String near) {}

  /**
   * A seam in plan, from the edge of the face inwards, mm, at a corner or rounding.
   *
   * @param hollow whether the outline is hollow there: the covering is slit and a piece let in,
   *     where at another corner what is too much is sewn away
   */
  public record Seam(String corner, Vec2 from, Vec2 to, boolean hollow) {
    public double length() {
      return from.distance(to);
    }
  }
}
