package padwright.cover;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * A gusset laid against the two walls of a hollow corner, for the second wrap: it takes the lines
 * drawn on its pieces and on the cover, and follows arris and seam by their lengths in space. Where
 * so much of the arris and so much of the seam have been used, the piece reaches from one to the
 * other.
 */
final class SampledGusset {
  /** Between two places at which the arris is measured, mm. */
  private static final double STEP = 0.1;

  /** Path length of the slit's tip. */
  final double tip;

  /** Path length down to which the piece reaches at its trim line. */
  final double reach;

  private final Gusset piece;
  private final SampledSection section;
  private final double mitre;
  private final double seamPerLevel;
  private final List<Double> arris = new ArrayList<>();

  SampledGusset(
      Gusset piece,
      SampledOutline.Piece before,
      SampledOutline.Piece after,
      SampledSection section) {
    this.piece = piece;
    this.section = section;
    Vec2 u = before.atEnd();
    Vec2 v = after.atStart();
    mitre = Math.tan(Math.atan2(u.cross(v), u.dot(v)) / 2);
    tip = u.right().dot(piece.slit().start().minus(before.to()));
    Path seam = piece.seamsOnCover().get(0);
    seamPerLevel = seam.length() / u.right().dot(seam.end().minus(seam.start()));
    double shortest = Math.min(length(seam(true)), length(seam(false)));
    reach = tip + shortest / seamPerLevel;
    arris.add(0.0);
    for (double s = tip; s < reach; s += STEP) {
      double last = arris.get(arris.size() - 1);
      arris.add(last + Math.hypot(STEP, mitre * (out(s + STEP) - out(s))));
    }
  }

  /** Past the wall's end the halves run straight on. */
  private double out(double s) {
    return section.out(Math.min(s, section.wallEnd));
  }

  private Gusset.Piece half(boolean first) {
    return piece.pieces().get(first ? 0 : piece.pieces().size() - 1);
  }

  /** From the tip down. */
  private List<Vec2> seam(boolean first) {
    List<Vec2> all = points(half(first).seam());
    if (piece.halved()) {
      return all;
    }
    int top = 0;
    for (int i = 0; i < all.size(); i++) {
      top = all.get(i).y() > all.get(top).y() ? i : top;
    }
    if (!first) {
      return all.subList(top, all.size());
    }
    List<Vec2> left = new ArrayList<>(all.subList(0, top + 1));
    Collections.reverse(left);
    return left;
  }

  private static List<Vec2> points(Path path) {
    List<Vec2> points = new ArrayList<>();
    points.add(path.start());
    path.segments().forEach(s -> points.add(s.end()));
    return points;
  }

  private static double length(List<Vec2> line) {
    double sum = 0;
    for (int i = 0; i + 1 < line.size(); i++) {
      sum += line.get(i).distance(line.get(i + 1));
    }
    return sum;
  }

  /** So far along a line, past its end straight on. */
  private static Vec2 along(List<Vec2> line, double length) {
    double left = length;
    int i = 0;
    while (i + 2 < line.size() && left > line.get(i).distance(line.get(i + 1))) {
      left -= line.get(i).distance(line.get(i + 1));
      i++;
    }
    return line.get(i).along(line.get(i + 1).minus(line.get(i)).unit(), left);
  }

  /** Whether the gusset lies so far from the arris on a wall at a path length. */
  boolean covers(boolean first, double fromArris, double s) {
    if (s > reach) {
      return false;
    }
    double down = arris.get((int) ((s - tip) / STEP));
    Vec2 foot = along(points(half(first).arris()), down);
    Vec2 end = along(seam(first), (s - tip) * seamPerLevel);
    return fromArris <= foot.distance(end) + STEP;
  }

  /** Whether a place of the flat cover lies short of the seam, on the side's own part. */
  boolean shortOfSeam(boolean first, Vec2 p, SampledOutline.Piece side) {
    Segment seam = piece.seamsOnCover().get(first ? 0 : 1).segments().get(0);
    Vec2 d = seam.end().minus(seam.start());
    Vec2 own = first ? side.atEnd().times(-1) : side.atStart();
    return d.cross(p.minus(seam.start())) * d.cross(own) >= -1e-6;
  }
}
