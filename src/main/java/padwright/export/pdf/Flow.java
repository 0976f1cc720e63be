package padwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import padwright.export.Drawing.LineStyle;
import padwright.geometry.Bounds;

/**
 * Lays blocks of text out in columns, by the real widths of the letters. A line never lies over
 * another and never leaves its column; a heading is not parted from its first line.
 */
final class Flow {
  private static final double LEADING = 1.32;
  private static final double HEADING = 1.15;
  private static final double BLANK_LENGTH = 22;

  /** One line in place: where its column starts, its baseline. */
  private record Placed(int column, double x, double y, Line line) {}

  private record Line(Block block, boolean first, double indent, double size, String text) {
    boolean heading() {
      return block.kind() == Block.Kind.HEADING;
    }
  }

  private final Typeface face;
  private final double size;

  /**
   * @param size of the plain text, mm
   */
  Flow(Typeface face, double size) {
    this.face = face;
    this.size = size;
  }

  /** Blocks in place. */
  final class Laid {
    private final List<Placed> lines;
    private final int columns;
    private final double lowest;

    private Laid(List<Placed> lines, double lowest) {
      this.lines = lines;
      this.lowest = lowest;
      columns = lines.isEmpty() ? 0 : lines.get(lines.size() - 1).column + 1;
    }

    /** How many columns were filled. */
    int columns() {
      return columns;
    }

    /** The lowest baseline of all columns. */
    double lowest() {
      return lowest;
    }

    /** Draws what stands in columns {@code from} to before {@code to}. */
    void draw(PdfPainter p, int from, int to) throws IOException {
      for (Placed l : lines) {
        if (l.column >= from && l.column < to) {
          Flow.this.draw(p, l);
        }
      }
    }
  }

  /** Fills the columns one after the other, as many as it takes. */
  Laid lay(List<Block> blocks, IntFunction<Bounds> columns) {
    List<Placed> placed = new ArrayList<>();
    int column = 0;
    Bounds c = columns.apply(0);
    double y = c.maxY();
    double lowest = y;
    for (int i = 0; i < blocks.size(); i++) {
      Block b = blocks.get(i);
      double gap = y == c.maxY() ? 0 : gap(b);
      List<Line> lines = lines(b, c.width());
      double needed = gap + height(lines);
      if (b.kind() == Block.Kind.HEADING && i + 1 < blocks.size()) {
        needed += gap(blocks.get(i + 1)) + height(lines(blocks.get(i + 1), c.width()));
      }
      if (y - needed < c.minY() && y < c.maxY()) {
        column++;
        c = columns.apply(column);
        y = c.maxY();
        gap = 0;
        lines = lines(b, c.width());
      }
      y -= gap;
      for (Line l : lines) {
        if (y - LEADING * l.size < c.minY() && y < c.maxY()) {
          column++;
          c = columns.apply(column);
          y = c.maxY();
        }
        y -= LEADING * l.size;
        placed.add(new Placed(column, c.minX() + l.indent, y, l));
        lowest = Math.min(lowest, y);
      }
    }
    return new Laid(placed, lowest);
  }

  private double gap(Block b) {
    return size
        * (b.kind() == Block.Kind.HEADING ? 0.8 : b.kind() == Block.Kind.BLANK ? 0.5 : 0.15);
  }

  private static double height(List<Line> lines) {
    return lines.stream().mapToDouble(l -> LEADING * l.size).sum()
        + Typeface.DROP * lines.get(0).size;
  }

  private List<Line> lines(Block b, double width) {
    double s = b.kind() == Block.Kind.HEADING ? size * HEADING : size;
    double indent = indent(b);
    double room = width - indent - (b.kind() == Block.Kind.BLANK ? BLANK_LENGTH + 8 : 0);
    // Bold strokes stand a little outside the letter.
    double safe = b.kind() == Block.Kind.HEADING ? room * 0.98 : room;
    List<Line> list = new ArrayList<>();
    for (String text : Wrap.lines(face, b.text(), s, safe)) {
      list.add(new Line(b, list.isEmpty(), indent, s, text));
    }
    return list;
  }

  private double indent(Block b) {
    double box = b.kind() == Block.Kind.TICK ? size * 1.4 : 0;
    return b.marker().isEmpty() || b.kind() == Block.Kind.BLANK
        ? box
        : box + Math.max(size * 1.7, face.width(b.marker(), size) + size * 0.6);
  }

  private void draw(PdfPainter p, Placed l) throws IOException {
    Line line = l.line;
    if (line.heading()) {
      p.text(l.x, l.y, line.size, true, line.text);
      return;
    }
    double left = l.x - line.indent;
    if (line.first && line.block.kind() == Block.Kind.TICK) {
      double side = 0.8 * size;
      p.box(
          new Bounds(left, l.y - 0.05 * size, left + side, l.y - 0.05 * size + side),
          LineStyle.CHECK);
      left += size * 1.4;
    }
    if (line.first && line.block.kind() != Block.Kind.BLANK && !line.block.marker().isEmpty()) {
      p.text(left, l.y, size, true, line.block.marker());
    }
    p.text(l.x, l.y, line.size, false, line.text);
    if (line.first && line.block.kind() == Block.Kind.BLANK) {
      double from = l.x + face.width(line.text, size) + 2;
      p.line(from, l.y - 0.4, from + BLANK_LENGTH, l.y - 0.4, LineStyle.DIMENSION);
      p.text(from + BLANK_LENGTH + 1, l.y, size, false, line.block.marker());
    }
  }
}
