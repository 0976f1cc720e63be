package padwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * Where two printed tiles meet: the trim line down the middle of their overlap and the match marks
 * on it. Everything is in the piece's mm, so both sheets draw the same.
 *
 * @param under the tile left of or above the line; its edge stays and lies underneath
 * @param over the tile right of or below the line; it is trimmed and laid on top
 * @param line the trim line
 */
record Joint(Tile under, Tile over, Path line, List<Mark> marks) {
  /** A match mark: half of it stays on each sheet. */
  record Mark(String label, Vec2 at) {
    static final double RADIUS = 2;
    static final double ARM = 3.5;
  }

  /** Marks stay this far from the line's ends, out of the overlaps that cross it, mm. */
  private static final double FROM_END = 10;

  private static final int PLACES = 24;

  Joint {
    marks = List.copyOf(marks);
  }

  boolean upright() {
    return under.row() == over.row();
  }

  /** Every joint of a tiling, its marks where there is least ink, letters running on. */
  static List<Joint> of(Tiling tiling, Ink ink) {
    List<Joint> list = new ArrayList<>();
    int[] next = {0};
    for (Tile t : tiling.tiles()) {
      tiling.at(t.row(), t.column() + 1).ifPresent(o -> list.add(between(t, o, ink, next)));
      tiling.at(t.row() + 1, t.column()).ifPresent(o -> list.add(between(t, o, ink, next)));
    }
    return list;
  }

  private static Joint between(Tile under, Tile over, Ink ink, int[] next) {
    boolean upright = under.row() == over.row();
    Bounds c = under.cell();
    Path line =
        upright
            ? Path.line(new Vec2(c.maxX(), c.minY()), new Vec2(c.maxX(), c.maxY()))
            : Path.line(new Vec2(c.minX(), c.minY()), new Vec2(c.maxX(), c.minY()));
    List<Mark> marks = new ArrayList<>();
    for (int half = 0; half < 2; half++) {
      Vec2 at = free(line, upright, half, ink);
      marks.add(new Mark(Tile.letters(next[0]++), at));
    }
    return new Joint(under, over, line, marks);
  }

  /** The place with least ink in one half of the line; of equal ones that nearest its far third. */
  private static Vec2 free(Path line, boolean upright, int half, Ink ink) {
    double length = line.length();
    double wanted = half == 0 ? 0.2 : 0.8;
    Vec2 best = null;
    double worst = Double.POSITIVE_INFINITY;
    for (int i = 0; i < PLACES; i++) {
      double t = (half + (i + 0.5) / PLACES) / 2;
      double from = t * length;
      if (from < FROM_END || length - from < FROM_END) {
        continue;
      }
      Vec2 p = line.segments().get(0).pointAt(t);
      double cost = 10 * ink.count(room(p, upright)) + Math.abs(t - wanted);
      if (cost < worst) {
        worst = cost;
        best = p;
      }
    }
    return best == null ? line.segments().get(0).pointAt(0.35 + 0.3 * half) : best;
  }

  /** What a mark and its two letters take up. */
  static Bounds room(Vec2 at, boolean upright) {
    return upright
        ? new Bounds(at.x() - 5, at.y() - 4, at.x() + 5, at.y() + 5.5)
        : new Bounds(at.x() - 9, at.y() - 4.5, at.x() + 4, at.y() + 4.5);
  }
}
