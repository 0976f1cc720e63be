package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.Skeleton.Element;
import padwright.cover.Skeleton.Side;
import padwright.cover.Skeleton.Sweep;
import padwright.geometry.Bounds;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.shape.EdgeEnds;
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

  static final double LEAST_AREA = 1e-3;

  private final List<Vec2> cut;
  private final Skeleton skeleton;
  private final TautPath path;
  private final CornerSheets[] corners;
  private final SweepSheets sweeps;
  private final List<Double> levels;
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
   * @param eased largest part of its length that the covering is eased by on it, a fraction
   * @param stretched largest part of its length that it is stretched by; infinite where it cannot
   * @param gusset parts that a gusset covers
   * @param plain whether nothing but its own covering lies between its ends
   */
  public record Wall(
      String name,
      List<Vec2> outline,
      double length,
      double eased,
      double stretched,
      List<Sheet> sheets,
      List<List<Vec2>> gusset,
      boolean plain) {
    public Wall {
      outline = List.copyOf(outline);
      sheets = List.copyOf(sheets);
      gusset = List.copyOf(gusset);
    }
  }

  /** As for {@link LayerCounter}: the trimmed cover, the folds and the solid. */
  public LaidCover(List<Vec2> cut, Skeleton skeleton, TautPath path) {
    this.cut = cut;
    this.skeleton = skeleton;
    this.path = path;
    Bounds base = skeleton.outline().bounds();
    double most = path.developed();
    for (Vec2 p : cut) {
      double dx = Math.max(base.minX() - p.x(), p.x() - base.maxX());
      double dy = Math.max(base.minY() - p.y(), p.y() - base.maxY());
      most = Math.max(most, Math.max(dx, dy));
    }
    end = most + CornerCut.JOINED;
    corners = new CornerSheets[skeleton.elements().size()];
    for (int i = 0; i < corners.length; i++) {
      Fold fold = skeleton.elements().get(i).after();
      if (fold != Fold.NONE && fold != Fold.GUSSET) {
        corners[i] = new CornerSheets(cut, skeleton.frame(i), fold, path, end);
      }
    }
    sweeps = new SweepSheets(cut, end);
    levels = levelsOf(path);
  }

  /**
   * The path lengths between which the wall is taken as flat; the last is where the back begins.
   */
  private static List<Double> levelsOf(TautPath path) {
    List<Double> list = new ArrayList<>();
    double s = path.startX();
    list.add(s);
    var pieces = path.neutral().segments();
    for (int i = 0; i + 1 < pieces.size(); i++) {
      var piece = pieces.get(i);
      int parts =
          piece.isArc() && piece.radius() > SMALL
              ? (int) Math.ceil(Math.abs(piece.sweep()) / CHORD)
              : 1;
      for (int k = 1; k <= parts; k++) {
        list.add(s + piece.length() * k / parts);
      }
      s += piece.length();
    }
    return list;
  }

  /** What lies on the wall, side by side anticlockwise. */
  public List<Wall> walls(EdgeEnds ends) {
    return new LaidWalls(this, skeleton, path, ends).all();
  }

  /** The flaps of the corner after an element; null where none is folded there. */
  CornerSheets corner(int element) {
    return corners[element];
  }

  SweepSheets sweeps() {
    return sweeps;
  }

  List<Double> levels() {
    return levels;
  }

  /** All that lies on the back. */
  public List<Sheet> back() {
    List<Sheet> sheets = new ArrayList<>();
    double from = path.backStart();
    for (int i = 0; i < corners.length; i++) {
      Element e = skeleton.elements().get(i);
      if (e instanceof Side side) {
        add(sheets, onBack(strip(i, side, from, end), frame(side)), 1);
      } else if (e instanceof Sweep sweep) {
        sweeps.on(sweep, from, end).forEach(p -> add(sheets, onBack(sweep, p), 1));
      }
      if (e.after() == Fold.NONE) {
        continue;
      }
      CornerFrame f = skeleton.frame(i);
      for (boolean first : new boolean[] {true, false}) {
        for (Sheet s : e.after() == Fold.GUSSET ? allowances(f) : corners[i].on(first, from, end)) {
          add(sheets, onBack(f, first, s.polygon()), s.layers());
        }
      }
      if (corners[i] != null) {
        corners[i].gather().forEach(s -> add(sheets, onBack(f, true, s.polygon()), s.layers()));
      }
    }
    return sheets;
  }

  private static Vec2[] frame(Side side) {
    return new Vec2[] {side.from(), side.along(), side.along().left()};
  }

  private static void add(List<Sheet> sheets, List<Vec2> polygon, int layers) {
    if (polygon.size() >= 3 && Math.abs(Polygons.signedArea(polygon)) > LEAST_AREA) {
      sheets.add(new Sheet(polygon, layers));
    }
  }

  /**
   * The gusset's own layer and its two allowances beside its seam, as far as it is turned under.
   */
  private List<Sheet> allowances(CornerFrame f) {
    double s = path.backStart();
    double to = path.developed();
    double width = 2 * Gusset.ALLOWANCE;
    return List.of(
        new Sheet(
            List.of(
                new Vec2(s * f.mitre() - width, s),
                new Vec2(s * f.mitre(), s),
                new Vec2(to * f.mitre(), to),
                new Vec2(to * f.mitre() - width, to)),
            2));
  }

  /** A side's own covering between its folds: x along the side, y path length. */
  List<Vec2> strip(int i, Side side, double from, double to) {
    int before = Math.floorMod(i - 1, corners.length);
    Vec2 along = side.along();
    Vec2 out = along.right();
    List<Vec2> near = new ArrayList<>();
    for (Vec2 p : Polygons.below(cut, along.left(), along.left().dot(side.from()) - from)) {
      Vec2 v = p.minus(side.from());
      near.add(new Vec2(v.dot(along), v.dot(out)));
    }
    near = Polygons.below(near, new Vec2(0, 1), to);
    near = shortOf(near, before, -1, 0, from, to);
    return shortOf(near, i, 1, side.length(), from, to);
  }

  /** What of a strip lies short of its fold, or of the slit of a hollow corner, at one end. */
  private List<Vec2> shortOf(
      List<Vec2> strip, int corner, int way, double at, double from, double to) {
    Fold fold = skeleton.elements().get(corner).after();
    double a = fold == Fold.NONE ? 0 : skeleton.frame(corner).fold(true, from);
    double b = fold == Fold.NONE ? 0 : skeleton.frame(corner).fold(true, to);
    List<Vec2> own = ahead(strip, way, at, a, (b - a) / (to - from), from);
    return fold == Fold.GUSSET
        ? ahead(
            own,
            way,
            at,
            from * skeleton.frame(corner).mitre(),
            skeleton.frame(corner).mitre(),
            from)
        : own;
  }

  /** Where way (x - at) is no more than a + slope (y - from). */
  private static List<Vec2> ahead(
      List<Vec2> strip, int way, double at, double a, double slope, double from) {
    return Polygons.below(strip, new Vec2(way, -slope), way * at + a - slope * from);
  }

  /**
   * The back, in from the edge, for path lengths out from it. Over a rounded back arris everything
   * from the edge to where the covering comes to lie flat is as it is there.
   */
  private List<Vec2> inwards(List<Vec2> polygon) {
    double shift = path.backStart() + path.out(path.backStart());
    double round = -path.out(path.backStart());
    List<Vec2> in = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      Vec2 p = polygon.get(i);
      Vec2 last = polygon.get((i + polygon.size() - 1) % polygon.size());
      Vec2 next = polygon.get((i + 1) % polygon.size());
      boolean at = round > 0 && atBack(p);
      if (at && atBack(last)) {
        in.add(new Vec2(p.x(), 0));
      }
      in.add(new Vec2(p.x(), p.y() - shift));
      if (at && atBack(next)) {
        in.add(new Vec2(p.x(), 0));
      }
    }
    return in;
  }

  private boolean atBack(Vec2 p) {
    return Math.abs(p.y() - path.backStart()) < 1e-9;
  }

  private List<Vec2> onBack(List<Vec2> strip, Vec2[] frame) {
    return inwards(strip).stream()
        .map(p -> frame[0].along(frame[1], p.x()).along(frame[2], p.y()))
        .toList();
  }

  private List<Vec2> onBack(CornerFrame f, boolean first, List<Vec2> flap) {
    Vec2 past = first ? f.before() : f.after().times(-1);
    Vec2 in = first ? f.before().left() : f.after().left();
    return onBack(flap, new Vec2[] {f.apex(), past, in});
  }

  /** A rounding's own covering: x is the angle into it. */
  private List<Vec2> onBack(Sweep sweep, List<Vec2> strip) {
    return inwards(strip).stream().map(p -> sweep.flat(sweep.at(p.x()), -p.y())).toList();
  }
}
