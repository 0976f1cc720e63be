package padwright.cover;

import java.util.List;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;

/**
 * The seams at hollow corners, as they part the covering: what of it belongs to which side, and how
 * far it falls short of the arris there.
 */
final class GussetSeams {
  /** An edge this near to a seam line lies along it, mm. */
  private static final double ON_SEAM = 1e-6;

  private final Skeleton skeleton;

  GussetSeams(Skeleton skeleton) {
    this.skeleton = skeleton;
  }

  /** What of a strip's flat lies on its own side of the seams at hollow corners beside it. */
  List<Vec2> ownSide(int i, List<Vec2> polygon) {
    List<Vec2> own = polygon;
    if (skeleton.elements().get(i).after() == Fold.GUSSET) {
      own = beforeSeam(own, skeleton.frame(i), true);
    }
    if (skeleton.previous(i).after() == Fold.GUSSET) {
      int before = Math.floorMod(i - 1, skeleton.elements().size());
      own = beforeSeam(own, skeleton.frame(before), false);
    }
    return own;
  }

  private static List<Vec2> beforeSeam(List<Vec2> polygon, CornerFrame f, boolean first) {
    Vec2[] seam = Gusset.seamLine(f, first);
    Vec2 d = seam[1].minus(seam[0]);
    Vec2 past = first ? f.before() : f.after().times(-1);
    Vec2 normal = d.left().dot(past) > 0 ? d.left() : d.right();
    return Polygons.below(polygon, normal, normal.dot(seam[0]));
  }

  /** Whether an edge of the cover runs along a seam beside a side. */
  boolean alongSeam(int i, Vec2 a, Vec2 b) {
    int before = Math.floorMod(i - 1, skeleton.elements().size());
    return (skeleton.elements().get(i).after() == Fold.GUSSET
            && onSeam(skeleton.frame(i), true, a, b))
        || (skeleton.elements().get(before).after() == Fold.GUSSET
            && onSeam(skeleton.frame(before), false, a, b));
  }

  private static boolean onSeam(CornerFrame f, boolean first, Vec2 a, Vec2 b) {
    Vec2[] seam = Gusset.seamLine(f, first);
    Vec2 d = seam[1].minus(seam[0]).unit();
    return Math.abs(d.cross(a.minus(seam[0]))) < ON_SEAM
        && Math.abs(d.cross(b.minus(seam[0]))) < ON_SEAM;
  }

  /** From the arris to the seam in the covering, on the wall at a path length. */
  static double seamWidth(CornerFrame f, double s) {
    Vec2[] seam = Gusset.seamLine(f, true);
    double s0 = f.out(true, seam[0]);
    double s1 = f.out(true, seam[1]);
    double p0 = f.past(true, seam[0]);
    double p1 = f.past(true, seam[1]);
    return Math.max(0, f.fold(true, s) - (p0 + (p1 - p0) * (s - s0) / (s1 - s0)));
  }

  /** Area of both walls beside a hollow corner that neither the covering nor its gusset covers. */
  double openBeside(int corner, Gusset piece) {
    CornerFrame f = skeleton.frame(corner);
    double tip = Gusset.tip(f);
    List<Double> levels = GussetHalf.of(f, true).level();
    double bare = 0;
    for (int k = 0; k + 1 < levels.size(); k++) {
      double s0 = Math.max(tip, levels.get(k));
      double s1 = levels.get(k + 1);
      if (s1 <= s0) {
        continue;
      }
      List<Vec2> open =
          List.of(
              new Vec2(0, s0),
              new Vec2(seamWidth(f, s0), s0),
              new Vec2(seamWidth(f, s1), s1),
              new Vec2(0, s1));
      // Both halves are alike.
      bare += 2 * StripCover.shortArea(open, piece.half());
    }
    return bare;
  }
}
