package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * A gusset laid against the two walls of a hollow corner, for the second wrap: it takes the seams
 * drawn on the piece and on the cover, and the place of the slit's tip.
 */
final class SampledGusset {
  /** Path length of the slit's tip. */
  final double tip;

  /** Path length down to which the piece reaches at its trim line. */
  final double reach;

  private final Gusset piece;
  private final IndexedPointInAreaLocator within;

  SampledGusset(Gusset piece, SampledOutline.Piece before) {
    this.piece = piece;
    tip = before.atEnd().right().dot(piece.slit().start().minus(before.to()));
    List<Vec2> seam = new ArrayList<>();
    seam.add(piece.seam().start());
    piece.seam().segments().forEach(s -> seam.add(s.end()));
    within = new IndexedPointInAreaLocator(SampledOutline.polygon(seam));
    reach = tip - seam.stream().mapToDouble(Vec2::y).min().orElse(0);
  }

  /** Whether the gusset lies so far from the arris on a wall at a path length. */
  boolean covers(boolean first, double fromArris, double s) {
    Coordinate at = new Coordinate(first ? -fromArris : fromArris, tip - s);
    return within.locate(at) != Location.EXTERIOR;
  }

  /** Whether a place of the flat cover lies short of the seam, on the side's own part. */
  boolean shortOfSeam(boolean first, Vec2 p, SampledOutline.Piece side) {
    Segment seam = piece.seamsOnCover().get(first ? 0 : 1).segments().get(0);
    Vec2 d = seam.end().minus(seam.start());
    Vec2 own = first ? side.atEnd().times(-1) : side.atStart();
    return d.cross(p.minus(seam.start())) * d.cross(own) >= -1e-6;
  }
}
