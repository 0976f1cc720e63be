package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.Skeleton.Element;
import padwright.cover.Skeleton.Side;
import padwright.cover.Skeleton.Sweep;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/**
 * The cut cover laid back on to the pad as sheets of a known outline, so that a picture can show
 * how many layers lie where: on the back in the frame of the base seen from the face, on each
 * stretch of the wall unrolled. Counted over a place of the back they are what {@link LayerCounter}
 * says. Straight stretches are exact; a round bend or a rounding is followed by chords. mm.
 */
public final class LaidCover {
  /** A bend is followed by one chord for so much of its turn, radians. */
  private static final double CHORD = Math.PI / 8;

  /** A bend round less than this is one chord, mm: no eye sees more of it. */
  private static final double SMALL = 2;

  /** Levels nearer to one another than this are one, mm. */
  private static final double SAME_LEVEL = 1e-6;

  /** Less than this, mm2, is what rounding leaves. */
  private static final double LEAST_AREA = 1e-3;

  private final Skeleton skeleton;
  private final CornerSheets[] corners;
  private final SweepSheets sweeps;
  private final List<List<Vec2>> strips = new ArrayList<>();
  private final double end;

  /**
   * Covering over a place.
   *
   * @param polygon its corners; it may double back on itself along a line
   * @param layers how many of them lie there
   */
  public record Sheet(List<Vec2> polygon, int layers) {
    public Sheet {
      polygon = List.copyOf(polygon);
    }
  }

  /**
   * A stretch of the wall unrolled, seen from the outside with the face up: x along the base
   * outline, y upwards, 0 at the level where the covering passes the base outline's line on the
   * top.
   *
   * @param name of the side
   * @param outline from where the covering leaves the flat top to where the back begins
   * @param length along the base outline
   * @param first the skeleton's element that it begins with
   * @param elements how many it is made of
   * @param gusset parts that a gusset covers
   * @param plain whether nothing but its own covering lies between its ends
   */
  public record Wall(
      String name,
      List<Vec2> outline,
      double length,
      int first,
      int elements,
      List<Sheet> sheets,
      List<List<Vec2>> gusset,
      boolean plain) {
    public Wall {
      outline = List.copyOf(outline);
      sheets = List.copyOf(sheets);
      gusset = List.copyOf(gusset);
    }
  }

  /** As for {@link LayerCounter}: the trimmed cover, and the folds and sections of the solid. */
  public LaidCover(List<Vec2> cut, Skeleton skeleton) {
    this.skeleton = skeleton;
    int n = skeleton.elements().size();
    end = CoverReach.of(cut, skeleton) + CornerCut.JOINED;
    corners = new CornerSheets[n];
    for (int i = 0; i < n; i++) {
      Fold fold = skeleton.elements().get(i).after();
      if (fold != Fold.NONE && fold != Fold.GUSSET) {
        corners[i] = new CornerSheets(cut, skeleton.frame(i), fold, end);
      }
      strips.add(skeleton.elements().get(i) instanceof Side side ? strip(cut, i, side) : List.of());
    }
    sweeps = new SweepSheets(cut, end);
  }

  /** A side's own covering with what lies beside it: x along the side, y path length. */
  private List<Vec2> strip(List<Vec2> cut, int i, Side side) {
    Vec2 along = side.along();
    Vec2 out = along.right();
    double top = skeleton.path(i).startX();
    List<Vec2> strip = new ArrayList<>();
    for (Vec2 p : Polygons.below(cut, along.left(), along.left().dot(side.from()) - top)) {
      Vec2 v = p.minus(side.from());
      strip.add(new Vec2(v.dot(along), v.dot(out)));
    }
    return strip;
  }

  /**
   * The path lengths between which the wall along an element is taken as flat; the last is where
   * the back begins. Beside another section the fold bends where that section does.
   */
  List<Double> levels(int i) {
    List<Double> list =
        skeleton
            .path(i)
            .breaks(
                bend ->
                    bend.radius() > SMALL ? (int) Math.ceil(Math.abs(bend.sweep()) / CHORD) : 1);
    int before = Math.floorMod(i - 1, corners.length);
    bends(list, before, false);
    bends(list, i, true);
    return list;
  }

  private void bends(List<Double> list, int corner, boolean first) {
    CornerFrame f = skeleton.frame(corner);
    if (f == null || f.even()) {
      return;
    }
    for (double s : f.bends(first)) {
      if (s < f.path(first).backStart()
          && list.stream().noneMatch(o -> Math.abs(o - s) < SAME_LEVEL)) {
        list.add(s);
      }
    }
    list.sort(null);
  }

  /** What lies on the wall, side by side anticlockwise. */
  public List<Wall> walls() {
    return new LaidWalls(this, skeleton).all();
  }

  /** The flaps of the corner after an element; null where none is folded there. */
  CornerSheets corner(int element) {
    return corners[element];
  }

  SweepSheets sweeps() {
    return sweeps;
  }

  /** All that lies on the back. */
  public List<Sheet> back() {
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < corners.length; i++) {
      Element e = skeleton.elements().get(i);
      TautPath path = skeleton.path(i);
      double from = path.backStart();
      if (e instanceof Side side) {
        Vec2[] frame = {side.from(), side.along(), side.along().left()};
        add(sheets, OnBack.placed(path, strip(i, side, from, end), frame), 1);
      } else if (e instanceof Sweep sweep) {
        sweeps.on(sweep, from, end).forEach(p -> add(sheets, OnBack.placed(path, sweep, p), 1));
      }
      if (e.after() != Fold.NONE) {
        corner(sheets, i, e.after());
      }
    }
    return sheets;
  }

  private void corner(List<Sheet> sheets, int i, Fold fold) {
    CornerFrame f = skeleton.frame(i);
    for (boolean first : new boolean[] {true, false}) {
      double from = f.path(first).backStart();
      for (Sheet s : fold == Fold.GUSSET ? gusset(f, first) : corners[i].on(first, from, end)) {
        add(sheets, OnBack.placed(f, first, s.polygon()), s.layers());
      }
    }
    if (corners[i] != null) {
      corners[i]
          .gather()
          .forEach(s -> add(sheets, OnBack.placed(f, true, s.polygon()), s.layers()));
    }
  }

  /** Adds a sheet, where it is one. */
  static void add(List<Sheet> sheets, List<Vec2> polygon, int layers) {
    if (sheet(polygon)) {
      sheets.add(new Sheet(polygon, layers));
    }
  }

  /** Whether a polygon is more than what rounding leaves. */
  static boolean sheet(List<Vec2> polygon) {
    return polygon.size() >= 3 && Math.abs(Polygons.signedArea(polygon)) > LEAST_AREA;
  }

  /**
   * A gusset's turn-under: its own layer and its two allowances beside its seam, and its own layer
   * alone from there to where its two halves part.
   */
  private static List<Sheet> gusset(CornerFrame f, boolean first) {
    double s = f.path(first).backStart();
    double to = f.path(first).developed();
    Vec2 slit = new Vec2(s * f.mitre(), s);
    Vec2 slitEnd = new Vec2(to * f.mitre(), to);
    Vec2 beside = new Vec2(2 * Gusset.ALLOWANCE, 0);
    Vec2 parts = new Vec2(f.fold(first, s), s);
    Vec2 partsEnd = new Vec2(f.fold(first, to), to);
    return List.of(
        new Sheet(List.of(slit.minus(beside), slit, slitEnd, slitEnd.minus(beside)), 2),
        new Sheet(List.of(slit, parts, partsEnd, slitEnd), 1));
  }

  /** A side's own covering between its folds: x along the side, y path length. */
  List<Vec2> strip(int i, Side side, double from, double to) {
    int before = Math.floorMod(i - 1, corners.length);
    List<Vec2> own = strips.get(i);
    own = Polygons.below(own, new Vec2(0, -1), -from);
    own = Polygons.below(own, new Vec2(0, 1), to);
    own = shortOf(own, before, false, 0, from, to);
    return shortOf(own, i, true, side.length(), from, to);
  }

  /** The same on the wall, where the covering ends at the seams of gussets. */
  List<Vec2> seamed(int i, Side side, double from, double to) {
    int before = Math.floorMod(i - 1, corners.length);
    List<Vec2> own = shortOfSeam(strip(i, side, from, to), before, false, 0);
    return shortOfSeam(own, i, true, side.length());
  }

  private List<Vec2> shortOfSeam(List<Vec2> strip, int corner, boolean first, double at) {
    if (skeleton.elements().get(corner).after() != Fold.GUSSET) {
      return strip;
    }
    CornerFrame f = skeleton.frame(corner);
    Vec2[] seam = Gusset.seamLine(f, first);
    double from = f.out(first, seam[0]);
    double start = f.past(first, seam[0]);
    double slope = (f.past(first, seam[1]) - start) / (f.out(first, seam[1]) - from);
    return ahead(strip, first ? 1 : -1, at, start, slope, from);
  }

  /** What of a strip lies short of its fold, or of the slit of a hollow corner, at one end. */
  private List<Vec2> shortOf(
      List<Vec2> strip, int corner, boolean first, double at, double from, double to) {
    int way = first ? 1 : -1;
    CornerFrame f = skeleton.frame(corner);
    if (f == null) {
      return ahead(strip, way, at, 0, 0, from);
    }
    double a = f.fold(first, from);
    double b = f.fold(first, to);
    List<Vec2> own = ahead(strip, way, at, a, (b - a) / (to - from), from);
    return skeleton.elements().get(corner).after() == Fold.GUSSET
        ? ahead(own, way, at, from * f.mitre(), f.mitre(), from)
        : own;
  }

  /** Where way (x - at) is no more than a + slope (y - from). */
  private static List<Vec2> ahead(
      List<Vec2> strip, int way, double at, double a, double slope, double from) {
    return Polygons.below(strip, new Vec2(way, -slope), way * at + a - slope * from);
  }
}
