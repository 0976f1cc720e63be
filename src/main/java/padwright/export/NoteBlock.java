package padwright.export;

import java.util.ArrayList;
import java.util.List;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * Lines of text set in columns, each perhaps with a sample of a line in front of it. mm.
 *
 * @param entries each at its place
 */
record NoteBlock(double width, double height, List<Entry> entries) implements Patch {
  private static final double GUTTER = 6;
  private static final double HEADING_GAP = 1.2;
  private static final double SAMPLE = 16;
  private static final double SAMPLE_GAP = 2;

  NoteBlock {
    entries = List.copyOf(entries);
  }

  /** A line of text; {@code x}, {@code y} of its baseline from the block's upper left corner. */
  record Entry(double x, double y, double size, String text, LineStyle sample) {}

  /** Text alone, in a number of columns under a heading; an empty heading takes no room. */
  static NoteBlock of(String heading, List<String> notes, int columns) {
    List<Sampled> list = notes.stream().map(n -> new Sampled(null, n)).toList();
    return set(heading, list, columns);
  }

  /** A text and the line it explains, or null. */
  record Sampled(LineStyle style, String text) {}

  static NoteBlock set(String heading, List<Sampled> notes, int columns) {
    List<Entry> entries = new ArrayList<>();
    double width = 0;
    double top = 0;
    if (!heading.isEmpty()) {
      width = Lettering.width(heading, Lettering.NAME);
      entries.add(new Entry(0, -Lettering.ASCENT * Lettering.NAME, Lettering.NAME, heading, null));
      top = Lettering.NAME + HEADING_GAP;
    }
    int rows = (notes.size() + columns - 1) / columns;
    double x = 0;
    for (int c = 0; c * rows < notes.size(); c++) {
      double wide = 0;
      for (int r = 0; r < rows && c * rows + r < notes.size(); r++) {
        Sampled note = notes.get(c * rows + r);
        double indent = note.style == null ? 0 : SAMPLE + SAMPLE_GAP;
        double y =
            -top - Lettering.ASCENT * Lettering.NOTE - r * Lettering.NOTE * Lettering.LEADING;
        entries.add(new Entry(x, y, Lettering.NOTE, note.text, note.style));
        wide = Math.max(wide, indent + Lettering.width(note.text, Lettering.NOTE));
      }
      width = Math.max(width, x + wide);
      x += wide + GUTTER;
    }
    double height = 0;
    for (Entry e : entries) {
      height = Math.max(height, -e.y + Lettering.DESCENT * e.size);
    }
    return new NoteBlock(width, height, entries);
  }

  @Override
  public List<Item> drawn(Box box) {
    List<Item> items = new ArrayList<>();
    Vec2 corner = box.at(-0.5, 0.5);
    for (Entry e : entries) {
      double indent = 0;
      if (e.sample != null) {
        double y = e.y + Lettering.NOTE * 0.3;
        Vec2 a = new Vec2(e.x, y).rotated(box.angle()).plus(corner);
        Vec2 b = new Vec2(e.x + SAMPLE, y).rotated(box.angle()).plus(corner);
        items.add(new Stroke(Path.line(a, b), e.sample, true));
        indent = SAMPLE + SAMPLE_GAP;
      }
      Vec2 at = new Vec2(e.x + indent, e.y).rotated(box.angle()).plus(corner);
      items.add(new Text(at, e.size, box.angle(), Anchor.START, false, e.text));
    }
    return items;
  }
}
