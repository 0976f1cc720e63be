package padwright.cover;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import padwright.cover.LaidCover.Sheet;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/**
 * Where the flaps of one folded corner lie on its two sides, level by level as {@link LayerCounter}
 * asks for them. Their corners are given in the frame of a side: x how far past the corner along
 * it, y the path length out from it. mm.
 */
final class CornerSheets {
  /** A gather is counted at corners that turn more than this, as {@link LayerCounter} does. */
  private static final double GATHERS = Math.PI / 8;

  private static final double LEAST_AREA = 1e-3;

  private final CornerFrame f;
  private final Fold fold;
  private final TautPath path;
  private final List<Vec2> near;
  private final double wide;

  /**
   * @param cut the cover at its trim line
   * @param end path length that no covering goes beyond
   */
  CornerSheets(List<Vec2> cut, CornerFrame f, Fold fold, TautPath path, double end) {
    this.f = f;
    this.fold = fold;
    this.path = path;
    wide = 2 * end * (1 + Math.abs(f.mitre()));
    // All that is folded lies past the corner on both sides; a fold may begin a little before it.
    double least = Math.min(f.fold(true, path.startX()), f.fold(true, path.backStart())) - 1;
    List<Vec2> past = Polygons.below(cut, f.before().times(-1), -f.before().dot(f.apex()) - least);
    near = Polygons.below(past, f.after(), f.after().dot(f.apex()) - least);
  }

  /**
   * The flaps on one of the two sides between two path lengths.
   *
   * @param first on the side before the corner, else on that after it
   */
  List<Sheet> on(boolean first, double from, double to) {
    List<Sheet> sheets = new ArrayList<>();
    if (near.size() < 3) {
      return sheets;
    }
    if (fold == Fold.DOUBLE) {
      FoldMap map = new FoldMap(f, fold);
      Vec2 crease = map.crease(first);
      Vec2 beyond = first ? crease.left() : crease.right();
      double at = beyond.dot(f.tip());
      add(
          sheets,
          reflected(seen(first, Polygons.below(half(first, from, to), beyond, at)), from, to));
      add(sheets, reflected(far(first, map, beyond, at, from, to), from, to));
    } else if (fold.single() && fold.firstOver() == first) {
      add(sheets, reflected(seen(first, half(first, from, to)), from, to));
      add(sheets, reflected(seen(!first, half(!first, from, to)), from, to));
    }
    return sheets;
  }

  /** The gather at the back corner, two layers on the side before it. */
  List<Sheet> gather() {
    if (fold == Fold.NONE || fold == Fold.GUSSET || f.turn() <= GATHERS) {
      return List.of();
    }
    double back = path.backStart();
    double at = f.fold(true, back);
    return List.of(
        new Sheet(
            List.of(
                new Vec2(at - CornerCut.JOINED, back),
                new Vec2(at, back),
                new Vec2(at, back + CornerCut.JOINED),
                new Vec2(at - CornerCut.JOINED, back + CornerCut.JOINED)),
            2));
  }

  /** What the fold takes on in a band: the half of the surplus that belongs to a side. */
  private List<Vec2> half(boolean first, double from, double to) {
    double a = f.fold(true, from);
    double b = f.fold(true, to);
    return Polygons.inside(
        near,
        anticlockwise(
            List.of(
                f.flat(first, a, from),
                f.flat(first, Math.max(a, from * f.mitre()), from),
                f.flat(first, Math.max(b, to * f.mitre()), to),
                f.flat(first, b, to))));
  }

  /** The covering beyond a double pleat's crease, turned back about it. */
  private List<Vec2> far(
      boolean first, FoldMap map, Vec2 beyond, double at, double from, double to) {
    double a = f.fold(true, from);
    double b = f.fold(true, to);
    List<Vec2> band =
        List.of(
            f.flat(first, a, from),
            f.flat(first, wide, from),
            f.flat(first, wide, to),
            f.flat(first, b, to));
    List<Vec2> turned =
        Polygons.below(band, beyond, at).stream()
            .map(p -> map.mirroredAboutCrease(first, p))
            .toList();
    List<Vec2> far = turned.size() < 3 ? List.of() : Polygons.inside(near, anticlockwise(turned));
    return seen(first, far.stream().map(p -> map.mirroredAboutCrease(first, p)).toList());
  }

  private List<Vec2> seen(boolean first, List<Vec2> flat) {
    return flat.stream().map(p -> new Vec2(f.past(first, p), f.out(first, p))).toList();
  }

  /** Folded over at the fold, which is followed by a chord in the band. */
  private List<Vec2> reflected(List<Vec2> flap, double from, double to) {
    double a = f.fold(true, from);
    double slope = (f.fold(true, to) - a) / (to - from);
    return flap.stream()
        .map(p -> new Vec2(2 * (a + slope * (p.y() - from)) - p.x(), p.y()))
        .toList();
  }

  private static void add(List<Sheet> sheets, List<Vec2> polygon) {
    if (polygon.size() >= 3 && Math.abs(Polygons.signedArea(polygon)) > LEAST_AREA) {
      sheets.add(new Sheet(polygon, 1));
    }
  }

  static List<Vec2> anticlockwise(List<Vec2> polygon) {
    if (Polygons.signedArea(polygon) >= 0) {
      return polygon;
    }
    List<Vec2> turned = new ArrayList<>(polygon);
    Collections.reverse(turned);
    return turned;
  }
}
