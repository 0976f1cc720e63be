package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/**
 * What is let in at a hollow corner. The covering is slit there along the bisector and opens; the
 * gusset fills what opens on both walls. Its seam runs straight from the tip of the slit, and takes
 * its allowance out of the covering: nothing at the tip, {@link #ALLOWANCE} at the trim line. Each
 * half is laid out rung by rung from the lengths that it has on the pad ({@link GussetHalf}), so
 * that its seam is as long as the cover's. It is one piece, creased along the arris; where an edge
 * is shaped so deep that no single piece fits it, its halves are cut apart and sewn together down
 * the arris, each as it unrolls from its wall.
 *
 * <p>Both walls beside it have one section; where the job asks for two the part is stopped.
 *
 * @param corner name of the corner
 * @param slit on the flat cover, from the tip out to the cut line
 * @param pieces one, or the half of the side before the corner and that of the side after it
 * @param seamsOnCover the two seam lines on the flat cover, before and after the corner
 * @param half the half on the side before the corner as its rungs cover the wall: x from the arris,
 *     y path length; closed polygon up to its seam line
 * @param slant the most that a rung's end lies higher or lower against its start than it does on
 *     the wall, mm: what the covering of one piece has to give aslant
 * @param shortBy the most that a rung is shorter than on the wall, mm
 */
public record Gusset(
    String corner,
    Path slit,
    List<Piece> pieces,
    List<Path> seamsOnCover,
    List<Vec2> half,
    double slant,
    double shortBy) {
  /** Seam allowance at the trim line, mm; own choice. */
  public static final double ALLOWANCE = 12;

  /** Where the covering opens less than this on one wall, mm, it stretches. */
  private static final double OPENS = 0.5;

  /** One piece of covering may slant so far, mm, before its halves are cut apart. */
  private static final double MOST_SLANT = 12;

  public Gusset {
    pieces = List.copyOf(pieces);
    half = List.copyOf(half);
    seamsOnCover = List.copyOf(seamsOnCover);
  }

  /**
   * A piece to cut. Its own frame: x across, y up, 0 at the tip and negative below it. Seen from
   * the outside.
   *
   * @param seam what is sewn to the cover: bottom to tip to bottom, or from the tip of a half down
   * @param arris from the tip to a little past the back arris: the crease along the middle, or of a
   *     half what is sewn to the other one
   * @param cut closed cut line
   * @param opening slit up the middle, so that its two halves turn under apart; none in a half
   */
  public record Piece(Path seam, Path arris, Path cut, Optional<Path> opening) {}

  /** Whether its two halves are pieces of their own. */
  public boolean halved() {
    return pieces.size() > 1;
  }

  /** How much longer a seam line is on the cover than on the gusset, mm: rounding. */
  public double easing() {
    double cover = seamsOnCover.stream().mapToDouble(Path::length).sum();
    double own = pieces.stream().mapToDouble(p -> p.seam().length()).sum();
    return (cover - own) / seamsOnCover.size();
  }

  /** How far the covering falls short of the arris on each wall at a path length. */
  private static double lack(CornerFrame f, double s) {
    return f.fold(true, s) - s * f.mitre();
  }

  /** Path length of the slit's tip. */
  static double tip(CornerFrame f) {
    TautPath path = f.pathBefore();
    double low = path.startX();
    double high = path.backStart();
    if (lack(f, high) <= OPENS) {
      return high;
    }
    for (int i = 0; i < 44; i++) {
      double mid = (low + high) / 2;
      if (lack(f, mid) < OPENS) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return low;
  }

  /** A seam line on the flat cover: from the tip along a strip, seen from one side. */
  static Vec2[] seamLine(CornerFrame f, boolean first) {
    double tip = tip(f);
    double end = f.pathBefore().developed();
    return new Vec2[] {
      f.flat(first, tip * f.mitre(), tip),
      f.flat(first, end * f.mitre() - ALLOWANCE / Math.cos(f.turn() / 2), end)
    };
  }

  /** What of a flat polygon lies on one side's part of a hollow corner, short of the slit. */
  static List<Vec2> beforeSlit(List<Vec2> polygon, CornerFrame f, boolean first) {
    Vec2 past = first ? f.before() : f.after().times(-1);
    Vec2 bisector = f.flat(first, f.mitre(), 1).minus(f.apex());
    Vec2 normal = bisector.left().dot(past) > 0 ? bisector.left() : bisector.right();
    return Polygons.below(polygon, normal, normal.dot(f.apex()));
  }

  private static Path seamPath(CornerFrame f, boolean first) {
    Vec2[] line = seamLine(f, first);
    return Path.line(line[0], line[1]);
  }

  static Gusset of(String corner, CornerFrame f, double grip) {
    double tip = tip(f);
    double end = f.pathBefore().developed();
    Path slit =
        Path.line(
            f.flat(true, tip * f.mitre(), tip), f.flat(true, (end + grip) * f.mitre(), end + grip));
    // Both sides have one section, so the halves are mirror images.
    GussetHalf half = GussetHalf.of(f, true);
    GussetPieces pieces = new GussetPieces(half, f.pathBefore().backStart(), f.turn(), grip);
    Optional<GussetHalf.Straight> one = half.straightened().filter(s -> s.slant() <= MOST_SLANT);
    return new Gusset(
        corner,
        slit,
        one.map(s -> List.of(pieces.whole(s))).orElseGet(pieces::halves),
        List.of(seamPath(f, true), seamPath(f, false)),
        covered(half, one),
        one.map(GussetHalf.Straight::slant).orElse(0.0),
        one.map(GussetHalf.Straight::shortBy).orElse(0.0));
  }

  /** The rungs as drawn, laid back on the wall. */
  private static List<Vec2> covered(GussetHalf half, Optional<GussetHalf.Straight> one) {
    int n = half.level().size();
    List<Vec2> polygon = new ArrayList<>();
    polygon.add(new Vec2(0, half.level().get(n - 1)));
    polygon.add(new Vec2(0, half.level().get(0)));
    // At the tip the covering is pulled to the arris.
    polygon.add(new Vec2(OPENS, half.level().get(0)));
    for (int i = 1; i < n; i++) {
      int rung = i;
      double width =
          one.map(s -> s.seam().get(rung).distance(new Vec2(0, s.down().get(rung))))
              .orElseGet(() -> half.width(rung));
      polygon.add(new Vec2(width, half.level().get(i)));
    }
    return polygon;
  }
}
