package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.LaidCover.Sheet;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;

/**
 * Where the flaps of one folded corner lie on its two sides, level by level as {@link LayerCounter}
 * asks for them. Their corners are given in the frame of a side: x how far past the corner along
 * it, y the path length out from it. mm.
 */
final class CornerSheets {
  private final CornerFrame f;
  private final Fold fold;
  private final List<Vec2> near;
  private final double wide;

  /**
   * @param cut the cover at its trim line
   * @param end path length that no covering goes beyond
   */
  CornerSheets(List<Vec2> cut, CornerFrame f, Fold fold, double end) {
    this.f = f;
    this.fold = fold;
    wide = 2 * end * (1 + Math.abs(f.mitre()));
    // All that is folded lies past the corner on both sides; a fold may begin a little before it.
    double least = Math.min(earliest(true), earliest(false)) - 1 - 3 * Math.abs(f.shift());
    List<Vec2> past = Polygons.below(cut, f.before().times(-1), -f.before().dot(f.apex()) - least);
    near = Polygons.below(past, f.after(), f.after().dot(f.apex()) - least);
  }

  private double earliest(boolean first) {
    return Math.min(
        f.fold(first, f.path(first).startX()), f.fold(first, f.path(first).backStart()));
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
      List<Vec2> close = Polygons.below(half(first, from, to), beyond, at);
      LaidCover.add(sheets, reflected(first, close, from, to), 1);
      LaidCover.add(sheets, reflected(first, far(first, map, beyond, at, from, to), from, to), 1);
    } else if (fold.single() && fold.firstOver() == first) {
      LaidCover.add(sheets, reflected(first, half(first, from, to), from, to), 1);
      LaidCover.add(sheets, reflected(first, otherHalf(first, from, to), from, to), 1);
    }
    return sheets;
  }

  /**
   * One layer of the surplus under a side's fold between two path lengths, as wide as its half,
   * wherever it is creased once more; empty where none is folded under.
   */
  List<Vec2> flap(boolean first, double from, double to) {
    if (near.size() < 3 || fold.single() && fold.firstOver() != first) {
      return List.of();
    }
    return reflected(first, half(first, from, to), from, to);
  }

  /** The gather at the back corner, two layers on the side before it. */
  List<Sheet> gather() {
    if (fold == Fold.NONE || fold == Fold.GUSSET || f.turn() <= LayerCounter.GATHERS) {
      return List.of();
    }
    double back = f.pathBefore().backStart();
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
    return Polygons.inside(near, Polygons.anticlockwise(surplus(first, from, to)));
  }

  /** The other half, turned over about the bisector to lie on it. */
  private List<Vec2> otherHalf(boolean first, double from, double to) {
    List<Vec2> region = surplus(first, from, to).stream().map(f::acrossBisector).toList();
    return Polygons.inside(near, Polygons.anticlockwise(region)).stream()
        .map(f::acrossBisector)
        .toList();
  }

  private List<Vec2> surplus(boolean first, double from, double to) {
    double a = f.fold(first, from);
    double b = f.fold(first, to);
    return List.of(
        f.flat(first, a, from),
        f.flat(first, Math.max(a, f.bisector(first, from)), from),
        f.flat(first, Math.max(b, f.bisector(first, to)), to),
        f.flat(first, b, to));
  }

  /** The covering beyond a double pleat's crease, turned back about it. */
  private List<Vec2> far(
      boolean first, FoldMap map, Vec2 beyond, double at, double from, double to) {
    double a = f.fold(first, from);
    double b = f.fold(first, to);
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
    List<Vec2> far =
        turned.size() < 3 ? List.of() : Polygons.inside(near, Polygons.anticlockwise(turned));
    return far.stream().map(p -> map.mirroredAboutCrease(first, p)).toList();
  }

  /** Folded over at the fold, which is followed by a chord in the band, seen from its side. */
  private List<Vec2> reflected(boolean first, List<Vec2> flap, double from, double to) {
    double a = f.fold(first, from);
    double slope = (f.fold(first, to) - a) / (to - from);
    List<Vec2> turned = new ArrayList<>(flap.size());
    for (Vec2 p : flap) {
      double s = f.out(first, p);
      turned.add(new Vec2(2 * (a + slope * (s - from)) - f.past(first, p), s));
    }
    return turned;
  }
}
