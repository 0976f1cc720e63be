package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import padwright.geometry.Vec2;
import padwright.pattern.PartResult;

/** Covers spoilt on purpose, with JTS as the knife. */
final class SpoiltCover {
  private SpoiltCover() {}

  static List<Vec2> trim(PartResult part) {
    return part.cover().trim().flattened(0.01);
  }

  /** The blank so much less on every side. */
  static List<Vec2> less(PartResult part, double by) {
    SampledOutline outline = new SampledOutline(part.cover().skeleton());
    double developed = part.shape().section().taut().developed();
    Geometry smaller = outline.moved(developed - by);
    return knife(trim(part), smaller, OverlayNG.INTERSECTION);
  }

  /** Laid on askew. */
  static List<Vec2> shifted(PartResult part, Vec2 by) {
    return trim(part).stream().map(p -> p.plus(by)).toList();
  }

  /**
   * At one fold the cover is cut away to {@code past} within the strip, as deep as a relief cut.
   */
  static List<Vec2> cutPastTheFold(PartResult part, int fold, double past) {
    SampledOutline outline = new SampledOutline(part.cover().skeleton());
    SampledSection section = new SampledSection(part.spec());
    SampledOutline.Piece side = outline.pieces.get(fold);
    double end = side.length();
    double from = section.backStart - 20;
    double to = section.backStart + 200;
    return knife(
        trim(part),
        SampledOutline.polygon(
            List.of(
                side.flat(end - past, from),
                side.flat(end - past, to),
                side.flat(end + 60, to),
                side.flat(end + 60, from))),
        OverlayNG.DIFFERENCE);
  }

  /** A notch in the middle of one piece of the outline that goes up the wall. */
  static List<Vec2> notchTooDeep(PartResult part, int piece, double above, double mouth) {
    SampledOutline.Piece side = new SampledOutline(part.cover().skeleton()).pieces.get(piece);
    SampledSection section = new SampledSection(part.spec());
    double middle = side.length() / 2;
    double edge = section.backStart + 60;
    return knife(
        trim(part),
        SampledOutline.polygon(
            List.of(
                side.flat(middle, section.backStart - above),
                side.flat(middle - mouth / 2, edge),
                side.flat(middle + mouth / 2, edge))),
        OverlayNG.DIFFERENCE);
  }

  private static List<Vec2> knife(List<Vec2> cover, Geometry tool, int how) {
    Geometry left = OverlayNGRobust.overlay(SampledOutline.polygon(cover), tool, how);
    Polygon most = null;
    for (int g = 0; g < left.getNumGeometries(); g++) {
      Polygon part = (Polygon) left.getGeometryN(g);
      most = most == null || part.getArea() > most.getArea() ? part : most;
    }
    List<Vec2> points = new ArrayList<>();
    Coordinate[] ring = most.getExteriorRing().getCoordinates();
    for (int i = ring.length - 1; i > 0; i--) {
      // JTS goes round clockwise.
      points.add(new Vec2(ring[i].x, ring[i].y));
    }
    return points;
  }
}
