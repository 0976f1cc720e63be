package padwright.export.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import padwright.export.Drawing;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.LineStyle;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/** Draws one tile of a piece: the pattern, its trim lines and match marks, and the furniture. */
final class TilePage {
  /** Dots, unlike any line of a pattern; mm. */
  private static final double[] TRIM_DASH = {0.5, 2.5};

  private static final double TRIM_WIDTH = 0.2;
  private static final double NOTE = 2.6;
  private static final double MAP_WIDTH = 28;
  private static final int PLACES = 16;

  private final Drawing drawing;
  private final Ink ink;
  private final Tiling tiling;
  private final List<Joint> joints;

  TilePage(Drawing drawing, Ink ink, Tiling tiling, List<Joint> joints) {
    this.drawing = drawing;
    this.ink = ink;
    this.tiling = tiling;
    this.joints = joints;
  }

  void addTo(PdfBook book, Tile tile) throws IOException {
    book.page(
        tiling.sheet(),
        p -> {
          PdfPainter piece = p.within(tiling.place(tile));
          piece.clipped(tile.window(), () -> pattern(piece, tile));
          boolean single = tiling.tiles().size() == 1;
          double from = 0;
          if (!single) {
            from = Furniture.map(p, tiling, tile, Sheet.FOOT - 2, MAP_WIDTH) + 4;
          }
          Furniture.draw(
              p, tiling.sheet(), book.header(), single ? "" : tile.label(), drawing.title(), from);
        });
  }

  private void pattern(PdfPainter p, Tile tile) throws IOException {
    for (Drawing.Item item : ink.within(tile.window())) {
      if (!(item instanceof Drawing.Text t) || shows(p.face(), t, tile)) {
        p.paint(item);
      }
    }
    for (Joint j : joints) {
      if (j.under().equals(tile) || j.over().equals(tile)) {
        p.stroke(longer(j, tile), TRIM_WIDTH, TRIM_DASH);
        for (Joint.Mark m : j.marks()) {
          mark(p, m, j.upright());
        }
        var note = note(p.face(), j, tile);
        if (note.isPresent()) {
          p.text(note.get());
        }
      }
    }
    if (tiling.tiles().size() > 1) {
      var points = MeasuringPoints.of(drawing);
      if (points.isPresent()) {
        measuring(p, points.get(), tile);
      }
    }
  }

  /**
   * Whether a text is printed on a sheet: where it is whole; one that lies over a join is printed
   * on both sheets, so that it reads once they are taped.
   */
  boolean shows(Typeface face, Drawing.Text text, Tile tile) {
    Bounds box = Ink.frame(text, face).bounds();
    return holds(tile.window(), box)
        || joints.stream().anyMatch(j -> j.line().bounds().overlaps(box))
        || tiling.tiles().stream().noneMatch(t -> holds(t.window(), box));
  }

  private static boolean holds(Bounds window, Bounds box) {
    return window.contains(new Vec2(box.minX(), box.minY()))
        && window.contains(new Vec2(box.maxX(), box.maxY()));
  }

  /** The trim line over the whole of this sheet's print, so that the knife runs off it. */
  private static Path longer(Joint j, Tile tile) {
    Vec2 at = j.line().start();
    Bounds w = tile.window();
    return j.upright()
        ? Path.line(new Vec2(at.x(), w.minY()), new Vec2(at.x(), w.maxY()))
        : Path.line(new Vec2(w.minX(), at.y()), new Vec2(w.maxX(), at.y()));
  }

  private static void mark(PdfPainter p, Joint.Mark m, boolean upright) throws IOException {
    Vec2 c = m.at();
    double arm = Joint.Mark.ARM;
    p.stroke(Path.circle(c, Joint.Mark.RADIUS), LineStyle.CHECK);
    p.line(c.x() - arm, c.y(), c.x() + arm, c.y(), LineStyle.CHECK);
    p.line(c.x(), c.y() - arm, c.x(), c.y() + arm, LineStyle.CHECK);
    if (upright) {
      p.text(c.x() - 1, c.y() + 2.9, 3, Anchor.END, m.label());
      p.text(c.x() + 1, c.y() + 2.9, 3, Anchor.START, m.label());
    } else {
      p.text(c.x() - 4.2, c.y() + 0.9, 3, Anchor.END, m.label());
      p.text(c.x() - 4.2, c.y() - 3, 3, Anchor.END, m.label());
    }
  }

  /**
   * Says what to do at the line, in the strip that is cut off or covered, where it is free and the
   * sheet holds all of it; empty where there is no such place.
   */
  Optional<Drawing.Text> note(Typeface face, Joint j, Tile tile) {
    boolean trimmed = j.over().equals(tile);
    String text =
        trimmed ? "trim here, lay on " + j.under().label() : j.over().label() + " is laid on here";
    double half = face.width(text, NOTE) / 2 + 1;
    double out = trimmed ? -2.5 : 2.5;
    Path line = j.line();
    for (int i = 0; i < PLACES; i++) {
      // From the middle outwards, either way in turn.
      double t = 0.5 + (i % 2 == 0 ? 1 : -1) * (i + 1) / 2 * 0.9 / PLACES;
      Vec2 c = line.segments().get(0).pointAt(t);
      Bounds room;
      Vec2 at;
      if (j.upright()) {
        double x = c.x() + out;
        at = new Vec2(x + 0.9, c.y());
        room = new Bounds(x - 2, c.y() - half, x + 2, c.y() + half);
      } else {
        double y = c.y() - out;
        at = new Vec2(c.x(), y - 0.9);
        room = new Bounds(c.x() - half, y - 2, c.x() + half, y + 2);
      }
      boolean onMark =
          j.marks().stream().anyMatch(m -> Joint.room(m.at(), j.upright()).overlaps(room));
      if (!onMark && !ink.touches(room) && holds(tile.window(), room)) {
        double angle = j.upright() ? Math.PI / 2 : 0;
        return Optional.of(new Drawing.Text(at, NOTE, angle, Anchor.MIDDLE, false, text));
      }
    }
    return Optional.empty();
  }

  private void measuring(PdfPainter p, MeasuringPoints points, Tile tile) throws IOException {
    for (int i = 0; i < 4; i++) {
      Vec2 c = points.points().get(i);
      p.line(c.x() - 3, c.y(), c.x() + 3, c.y(), LineStyle.CHECK);
      p.line(c.x(), c.y() - 3, c.x(), c.y() + 3, LineStyle.CHECK);
      var letter =
          new Drawing.Text(letterPlace(c), 4, 0, Anchor.MIDDLE, true, MeasuringPoints.NAMES.get(i));
      if (shows(p.face(), letter, tile)) {
        p.text(letter);
      }
    }
  }

  /** The first of sixteen places round a point where its letter lies on nothing. */
  private Vec2 letterPlace(Vec2 c) {
    for (double far : new double[] {5, 8}) {
      for (int k = 0; k < 8; k++) {
        Vec2 middle = c.along(Vec2.polar(Math.PI / 4 + k * Math.PI / 4), far);
        Bounds room = new Bounds(middle.x() - 2, middle.y() - 2, middle.x() + 2, middle.y() + 2);
        if (!ink.touches(room)) {
          return new Vec2(middle.x(), middle.y() - 1.4);
        }
      }
    }
    return new Vec2(c.x() + 5, c.y() + 3);
  }
}
