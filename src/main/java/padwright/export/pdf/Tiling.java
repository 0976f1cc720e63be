package padwright.export.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import padwright.geometry.Affine;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.material.Paper;

/**
 * A piece cut up for a paper. Neighbouring sheets overlap by {@link #OVERLAP}; sheets that would
 * come out empty are left out. The paper lies the way, and the grid stands where, the fewest sheets
 * are needed.
 *
 * @param sheet the page every tile is printed on
 * @param rows of the whole grid, empty ones too
 * @param columns of the whole grid, empty ones too
 * @param tiles those with ink, row by row from the top
 */
record Tiling(Sheet sheet, int rows, int columns, List<Tile> tiles) {
  /** mm; enough for tape, and for half a mark on either side of the trim line. */
  static final double OVERLAP = 10;

  /** Bare paper round a piece on a roll, both ends together, mm. */
  private static final double ROLL_EASE = 8;

  /** Lengths that differ by less are the same; arithmetic only, mm. */
  private static final double SAME = 1e-6;

  /** Lines this close leave no room for a word, mm: less than a note is high. */
  private static final double CLOSE = 3;

  /** Where the grid may stand over the piece: the middle first, then towards either end. */
  private static final double[] SHIFTS = {0.5, 0.38, 0.62, 0.25, 0.75, 0.12, 0.88, 0, 1};

  Tiling {
    tiles = List.copyOf(tiles);
  }

  static Tiling best(Ink ink, Paper paper, PrintCorrection correction) {
    List<Tiling> all = new ArrayList<>();
    for (boolean turned : new boolean[] {false, true}) {
      Sheet sheet = sheet(ink.bounds(), paper, turned, correction);
      for (double sx : SHIFTS) {
        for (double sy : SHIFTS) {
          all.add(over(ink, sheet, sx, sy));
        }
      }
    }
    Comparator<Tiling> fewest =
        Comparator.comparingInt((Tiling t) -> t.tiles.size())
            .thenComparingDouble(t -> t.tiles.size() * t.sheet.paperHeight());
    Tiling least = all.stream().min(fewest).orElseThrow();
    return all.stream()
        .filter(t -> fewest.compare(t, least) == 0)
        .min(Comparator.comparingInt(t -> t.inkOnJoints(ink)))
        .orElseThrow();
  }

  /** How much lies along or across the overlaps: words cut in two, lines hidden by trim lines. */
  private int inkOnJoints(Ink ink) {
    int sum = 0;
    double half = OVERLAP / 2;
    for (Tile t : tiles) {
      Bounds c = t.cell();
      if (at(t.row(), t.column() + 1).isPresent()) {
        sum += ink.count(new Bounds(c.maxX() - half, c.minY(), c.maxX() + half, c.maxY()));
      }
      if (at(t.row() + 1, t.column()).isPresent()) {
        sum += ink.count(new Bounds(c.minX(), c.minY() - half, c.maxX(), c.minY() + half));
      }
    }
    return sum;
  }

  private static Sheet sheet(Bounds ink, Paper paper, boolean turned, PrintCorrection correction) {
    if (!paper.isRoll()) {
      return new Sheet(paper.width(), paper.height(), turned, correction);
    }
    double extent = turned ? ink.width() : ink.height();
    double furniture = turned ? Sheet.SIDE : Sheet.FOOT;
    double longest = Sheet.longestOnRoll(correction) - furniture;
    int pages = count(extent, longest);
    double window = (extent + (pages - 1) * OVERLAP) / pages;
    double room =
        Math.min(longest + furniture, Math.max(Sheet.LEAST_ROOM, window + ROLL_EASE + furniture));
    return Sheet.ofRoll(paper.width(), room, turned, correction);
  }

  /** How many windows of this length, overlapping, reach over an extent. */
  static int count(double extent, double window) {
    return extent <= window + SAME
        ? 1
        : (int) Math.ceil((extent - OVERLAP - SAME) / (window - OVERLAP));
  }

  private static Tiling over(Ink ink, Sheet sheet, double shiftX, double shiftY) {
    Bounds b = ink.bounds();
    double w = sheet.window().width();
    double h = sheet.window().height();
    int columns = count(b.width(), w);
    int rows = count(b.height(), h);
    double left = b.minX() - shiftX * (columns * (w - OVERLAP) + OVERLAP - b.width());
    double top = b.maxY() + shiftY * (rows * (h - OVERLAP) + OVERLAP - b.height());
    return new Tiling(sheet, rows, columns, tiles(ink, sheet, rows, columns, left, top));
  }

  /** The same grid over another drawing of the piece, where it needs no more sheets. */
  Optional<Tiling> again(Ink ink) {
    Tile first = tiles.get(0);
    double w = sheet.window().width() - OVERLAP;
    double h = sheet.window().height() - OVERLAP;
    double left = first.window().minX() - first.column() * w;
    double top = first.window().maxY() + first.row() * h;
    Bounds grid =
        new Bounds(left, top - rows * h - OVERLAP, left + columns * w + OVERLAP, top).grown(SAME);
    Bounds b = ink.bounds();
    boolean holds =
        grid.contains(new Vec2(b.minX(), b.minY())) && grid.contains(new Vec2(b.maxX(), b.maxY()));
    Tiling same = new Tiling(sheet, rows, columns, tiles(ink, sheet, rows, columns, left, top));
    return holds && same.tiles.size() <= tiles.size() ? Optional.of(same) : Optional.empty();
  }

  /** Lines close together over the places of sheets that are left out. */
  List<Path> unprinted() {
    Tile first = tiles.get(0);
    double w = sheet.window().width() - OVERLAP;
    double h = sheet.window().height() - OVERLAP;
    double left = first.window().minX() - first.column() * w;
    double top = first.window().maxY() + first.row() * h;
    Set<List<Integer>> printed = new HashSet<>();
    tiles.forEach(t -> printed.add(List.of(t.row(), t.column())));
    List<Path> lines = new ArrayList<>();
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        for (double y = CLOSE; !printed.contains(List.of(r, c)) && y < h; y += CLOSE) {
          double at = top - r * h - y;
          lines.add(Path.line(new Vec2(left + c * w, at), new Vec2(left + (c + 1) * w, at)));
        }
      }
    }
    return lines;
  }

  private static List<Tile> tiles(
      Ink ink, Sheet sheet, int rows, int columns, double left, double top) {
    double w = sheet.window().width();
    double h = sheet.window().height();
    List<Tile> tiles = new ArrayList<>();
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        double x = left + c * (w - OVERLAP);
        double y = top - r * (h - OVERLAP);
        Bounds window = new Bounds(x, y - h, x + w, y);
        Bounds cell =
            new Bounds(
                x + (c == 0 ? 0 : OVERLAP / 2),
                y - h + (r == rows - 1 ? 0 : OVERLAP / 2),
                x + w - (c == columns - 1 ? 0 : OVERLAP / 2),
                y - (r == 0 ? 0 : OVERLAP / 2));
        if (rows * columns == 1 || ink.touches(cell)) {
          tiles.add(new Tile(r, c, window, cell));
        }
      }
    }
    return tiles;
  }

  /** The printed tile at a place of the grid. */
  Optional<Tile> at(int row, int column) {
    return tiles.stream().filter(t -> t.row() == row && t.column() == column).findFirst();
  }

  /** The box round all printed tiles as they lie when taped together. */
  Bounds assembled() {
    return tiles.stream().map(Tile::cell).reduce(Bounds::union).orElseThrow();
  }

  /** From the piece's mm to the sheet's, for one tile. */
  Affine place(Tile tile) {
    Bounds to = sheet.window();
    return Affine.moved(to.minX() - tile.window().minX(), to.minY() - tile.window().minY());
  }
}
