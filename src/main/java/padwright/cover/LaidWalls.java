package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.LaidCover.Sheet;
import padwright.cover.LaidCover.Wall;
import padwright.cover.Skeleton.Element;
import padwright.cover.Skeleton.Side;
import padwright.cover.Skeleton.Sweep;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;

/**
 * Unrolls the wall side by side. Facets of a pleated rounding follow one another, each as wide as
 * it is on the base outline; so do pieces of a curve that bear one name.
 */
final class LaidWalls {
  private final LaidCover laid;
  private final Skeleton skeleton;
  private final List<Wall> walls = new ArrayList<>();

  LaidWalls(LaidCover laid, Skeleton skeleton) {
    this.laid = laid;
    this.skeleton = skeleton;
  }

  List<Wall> all() {
    int n = skeleton.elements().size();
    int first = 0;
    // A side may begin in the middle of the list's first name.
    while (first < n - 1
        && skeleton.previous(first).name().equals(skeleton.elements().get(first).name())) {
      first++;
    }
    for (int k = 0; k < n; ) {
      int run = 1;
      String name = skeleton.elements().get((first + k) % n).name();
      while (k + run < n && skeleton.elements().get((first + k + run) % n).name().equals(name)) {
        run++;
      }
      wall(name, (first + k) % n, run);
      k += run;
    }
    return walls;
  }

  private void wall(String name, int first, int run) {
    List<Sheet> sheets = new ArrayList<>();
    List<List<Vec2>> gusset = new ArrayList<>();
    double at = 0;
    boolean plain = run == 1;
    int n = skeleton.elements().size();
    for (int k = 0; k < run; k++) {
      int i = (first + k) % n;
      Element e = skeleton.elements().get(i);
      double length = e.segment().length();
      element(i, e, at, length, run > 1, sheets);
      gussets(i, at, length, sheets, gusset);
      at += length;
    }
    walls.add(
        new Wall(
            name,
            run > 1 ? stretches(first, run) : outline(first, at),
            at,
            first,
            run,
            sheets,
            gusset,
            plain));
  }

  private void element(
      int i, Element e, double at, double length, boolean joined, List<Sheet> sheets) {
    int n = skeleton.elements().size();
    int before = Math.floorMod(i - 1, n);
    CornerSheets start = laid.corner(before);
    CornerSheets stop = laid.corner(i);
    List<Double> levels = laid.levels(i);
    List<BandChain> chains = new ArrayList<>();
    for (int b = 0; b + 1 < levels.size(); b++) {
      double from = levels.get(b);
      double to = levels.get(b + 1);
      List<Sheet> band = new ArrayList<>();
      if (e instanceof Side side) {
        LaidCover.add(band, laid.seamed(i, side, from, to), 1);
      } else if (e instanceof Sweep sweep) {
        for (List<Vec2> p : laid.sweeps().on(sweep, from, to)) {
          LaidCover.add(band, scaled(p, sweep.radius()), 1);
        }
      }
      if (start != null) {
        for (Sheet s : start.on(false, from, to)) {
          band.add(moved(s, -1, 0));
        }
      }
      if (stop != null) {
        for (Sheet s : stop.on(true, from, to)) {
          band.add(moved(s, 1, length));
        }
      }
      for (Sheet s : band) {
        List<Vec2> placed =
            s.polygon().stream().map(p -> place(skeleton, p, i, at, length, joined)).toList();
        BandChain.add(chains, new Sheet(placed, s.layers()), -from, -to);
      }
    }
    chains.forEach(c -> sheets.add(c.sheet()));
  }

  private static Sheet moved(Sheet s, int way, double by) {
    return new Sheet(
        s.polygon().stream().map(p -> new Vec2(by + way * p.x(), p.y())).toList(), s.layers());
  }

  private static List<Vec2> scaled(List<Vec2> polar, double radius) {
    return polar.stream().map(p -> new Vec2(p.x() * radius, p.y())).toList();
  }

  /** Where a point of an element's strip stands on the wall. */
  static Vec2 place(Skeleton skeleton, Vec2 p, int i, double at, double length, boolean joined) {
    double x = p.x();
    if (joined && skeleton.elements().get(i) instanceof Side) {
      int before = Math.floorMod(i - 1, skeleton.elements().size());
      double start = arris(skeleton, before, false, p.y());
      double wide = Math.max(1e-6, length + start + arris(skeleton, i, true, p.y()));
      x = length * (x + start) / wide;
    }
    return new Vec2(at + x, -p.y());
  }

  /** How far past its end a side's wall runs at a level. */
  private static double arris(Skeleton skeleton, int corner, boolean first, double s) {
    CornerFrame f = skeleton.frame(corner);
    return f == null ? 0 : f.arris(first, s);
  }

  /** From where the covering leaves the flat top to where the back begins, between the mitres. */
  private List<Vec2> outline(int side, double length) {
    int before = Math.floorMod(side - 1, skeleton.elements().size());
    List<Vec2> left = new ArrayList<>();
    List<Vec2> right = new ArrayList<>();
    for (double s : laid.levels(side)) {
      left.add(new Vec2(-arris(skeleton, before, false, s), -s));
      right.add(0, new Vec2(length + arris(skeleton, side, true, s), -s));
    }
    left.addAll(right);
    return Polygons.anticlockwise(left);
  }

  /** The same of a rounding's facets, or of a passage: each as high as its own section. */
  private List<Vec2> stretches(int first, int run) {
    List<Vec2> top = new ArrayList<>();
    List<Vec2> bottom = new ArrayList<>();
    double at = 0;
    for (int k = 0; k < run; k++) {
      int i = (first + k) % skeleton.elements().size();
      double length = skeleton.segment(i).length();
      List<Double> levels = laid.levels(i);
      double last = levels.get(levels.size() - 1);
      for (double x : new double[] {at, at + length}) {
        top.add(0, new Vec2(x, -levels.get(0)));
        bottom.add(new Vec2(x, -last));
      }
      at += length;
    }
    bottom.addAll(top);
    return Polygons.anticlockwise(bottom);
  }

  private void gussets(
      int i, double at, double length, List<Sheet> sheets, List<List<Vec2>> gusset) {
    int before = Math.floorMod(i - 1, skeleton.elements().size());
    if (skeleton.elements().get(i).after() == Fold.GUSSET) {
      gusset.add(gusset(skeleton.frame(i), laid.levels(i), at + length, 1));
      sheets.add(new Sheet(gusset.get(gusset.size() - 1), 1));
    }
    if (skeleton.elements().get(before).after() == Fold.GUSSET) {
      gusset.add(gusset(skeleton.frame(before), laid.levels(i), at, -1));
      sheets.add(new Sheet(gusset.get(gusset.size() - 1), 1));
    }
  }

  /** Between the arris, which bends where the wall does, and the seam. */
  private static List<Vec2> gusset(CornerFrame f, List<Double> levels, double arris, int way) {
    double tip = Gusset.tip(f);
    List<Double> down = new ArrayList<>(List.of(tip));
    levels.stream().filter(s -> s > tip).forEach(down::add);
    List<Vec2> edge = new ArrayList<>();
    List<Vec2> seam = new ArrayList<>();
    for (double s : down) {
      double x = arris + way * f.fold(true, s);
      edge.add(new Vec2(x, -s));
      seam.add(0, new Vec2(x - way * GussetSeams.seamWidth(f, s), -s));
    }
    edge.addAll(seam);
    return edge;
  }
}
