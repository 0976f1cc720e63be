package padwright.pattern;

import java.util.List;
import java.util.Optional;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * One flat piece to cut, at full size, in the frame of the base outline seen from the face (x to
 * the right, y up, the front at the bottom, origin in the middle of the base). mm.
 *
 * @param id short name unique in the part, such as {@code foam-1}; file names are made from it
 * @param quantity how many for the whole job line, as drawn
 * @param mirrored how many more as the mirror image
 * @param material what it is cut from, as a maker says it
 * @param thickness of that material
 * @param cutLine closed, anticlockwise
 * @param innerCuts holes, closed
 * @param grain direction of the covering's warp or the board's long grain; empty where it does not
 *     matter
 * @param nap whether the grain arrow has an up
 * @param side which side of the material faces up while marking
 * @param length cut size along x
 * @param width cut size along y
 */
public record PatternPiece(
    String id,
    Kind kind,
    String name,
    int quantity,
    int mirrored,
    String material,
    double thickness,
    Path cutLine,
    List<Path> innerCuts,
    List<LineMark> lines,
    List<StapleMark> staples,
    List<PointMark> points,
    Optional<Vec2> grain,
    boolean nap,
    SideUp side,
    double length,
    double width) {
  public PatternPiece {
    innerCuts = List.copyOf(innerCuts);
    lines = List.copyOf(lines);
    staples = List.copyOf(staples);
    points = List.copyOf(points);
  }

  /** What kind of piece it is. */
  public enum Kind {
    BASE,
    FOAM,
    WADDING,
    COVER,
    DUST_COVER,
    PACKING,
    /** Let in where a hollow corner is slit. */
    GUSSET
  }

  /** Which side is up when the pattern lies on the material. */
  public enum SideUp {
    /** Drawn as seen from the face. */
    FACE,
    /** Marked on the back: the drawing is mirrored left to right when printed. */
    BACK,
    /** Both alike. */
    EITHER
  }

  /** A line on the piece that is not its cut line. */
  public record LineMark(LineKind kind, Path path) {}

  /** What a line means; each kind is drawn with a dash of its own. */
  public enum LineKind {
    /** Where the turn-under is trimmed after stapling. */
    TRIM,
    /** Where the covering bends over an edge of the pad. */
    FOLD,
    /** A fold of a pleat. */
    CREASE,
    /** Where two pieces are sewn together. */
    SEAM,
    /** Where staples go. */
    STAPLE,
    /** A cut into the piece that runs out of its cut line; made when the piece is cut out. */
    RELIEF,
    /** A cut over a cut-out, made when the cover is fast all round. */
    SLIT,
    /** Kept for hook-and-loop or tape. */
    ZONE,
    /** Middle lines. */
    CENTRE,
    /** The base's outline, shown on another piece. */
    BASE_OUTLINE,
    /** The front edge. */
    FRONT
  }

  /**
   * A staple: on the back of the base, or where it goes through the flat cover.
   *
   * @param number order of driving, from 1
   * @param angle direction of its crown, radians
   * @param layers of covering under it, from the wrap proof
   */
  public record StapleMark(int number, Vec2 at, double angle, int layers) {}

  /** A marked point. */
  public record PointMark(PointKind kind, Vec2 at, double diameter, String label) {}

  /** What a point means. */
  public enum PointKind {
    /** Middle of a side; on the cut line, to be matched on every piece. */
    CENTRE_MARK,
    /** Centre of a screw or bolt. */
    SCREW,
    /** Centre of a hole. */
    HOLE,
    /** Middle of a cut-out or zone that the label names; nothing is drawn there. */
    AREA
  }
}
