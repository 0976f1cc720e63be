package padwright.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * One piece's drawing while it is being composed: what is drawn, what room is left, and what has to
 * stand beside the piece because it found no room on it. One sheet makes one drawing.
 */
final class Sheet {
  /** Least distance of a label from a line or another label. */
  static final double CLEARANCE = 1;

  /** What stands beside the piece keeps this far from it. */
  private static final double BESIDE = 8;

  /** A middle line stops this far from what is written over it, so as not to be read into it. */
  private static final double MIDDLE_GAP = 3;

  private static final double EDGE = 5;
  private static final double NARROWEST_ROW = 130;
  private static final int LEADER_TRIES = 24;
  private static final double DOT = 0.7;

  private final Room room;
  private final List<Item> strokes = new ArrayList<>();
  private final List<Item> texts = new ArrayList<>();
  private final List<Path> middles = new ArrayList<>();
  private final List<Box> written = new ArrayList<>();
  private final List<Beside> beside = new ArrayList<>();
  private final List<Bounds> joins = new ArrayList<>();
  private Bounds extent;

  private record Beside(Patch patch, double angle, boolean leader) {}

  Sheet(Path cutLine, List<Path> innerCuts) {
    this.room = new Room(cutLine, innerCuts);
    this.extent = cutLine.bounds();
  }

  Room room() {
    return room;
  }

  /** Draws a line of the piece. */
  void line(Path path, LineStyle style) {
    strokes.add(new Stroke(path, style));
    extent = extent.union(path.bounds());
  }

  /** Keeps words off a straight line where printed sheets are joined; it is not drawn. */
  void keepOff(Path join) {
    room.add(join);
    joins.add(join.bounds());
  }

  /** Draws a middle line: it gives way, broken wherever something is written over it. */
  void middle(Path path) {
    middles.add(path);
    extent = extent.union(path.bounds());
  }

  private void drawMiddles() {
    for (Path path : middles) {
      for (Segment s : path.segments()) {
        if (s.isArc()) {
          strokes.add(new Stroke(new Path(List.of(s), false), LineStyle.CENTRE));
        } else {
          broken(s.start(), s.end());
        }
      }
    }
  }

  /** The parts of a straight line that lie in no written box. */
  private void broken(Vec2 from, Vec2 to) {
    List<double[]> gaps = new ArrayList<>();
    for (Box b : written) {
      double[] span = b.grown(MIDDLE_GAP).span(from, to);
      if (span != null) {
        gaps.add(span);
      }
    }
    gaps.sort((p, q) -> Double.compare(p[0], q[0]));
    Vec2 run = to.minus(from);
    double at = 0;
    for (double[] gap : gaps) {
      if (gap[0] > at) {
        strokes.add(
            new Stroke(Path.line(from.along(run, at), from.along(run, gap[0])), LineStyle.CENTRE));
      }
      at = Math.max(at, gap[1]);
    }
    if (at < 1) {
      strokes.add(new Stroke(Path.line(from.along(run, at), to), LineStyle.CENTRE));
    }
  }

  void items(List<? extends Item> list) {
    for (Item i : list) {
      if (i instanceof Text) {
        texts.add(i);
      } else {
        strokes.add(i);
      }
    }
  }

  /** Draws a text whose place is settled, and keeps others off it. */
  void text(Text t) {
    Box box = Lettering.box(t);
    texts.add(t);
    room.add(box);
    written.add(box);
    extent = extent.union(box.bounds());
  }

  /** A text with its middle at a point, if there is room on the piece. */
  boolean textAt(Vec2 middle, double size, double angle, String words) {
    Text t = centred(middle, size, angle, words);
    if (!room.holds(Lettering.box(t), CLEARANCE)) {
      return false;
    }
    text(t);
    return true;
  }

  static Text centred(Vec2 middle, double size, double angle, String words) {
    double drop = size * (Lettering.ASCENT - Lettering.DESCENT) / 2;
    Vec2 at = middle.plus(new Vec2(0, -drop).rotated(angle));
    return new Text(at, size, angle, Anchor.MIDDLE, false, words);
  }

  /** Puts a patch on the piece where it fits nearest to {@code wish}. */
  boolean put(Patch patch, double angle, Vec2 wish) {
    Optional<Box> box = room.nearest(patch.width(), patch.height(), angle, wish, 1.5 * CLEARANCE);
    box.ifPresent(b -> draw(patch, b));
    return box.isPresent();
  }

  private void draw(Patch patch, Box box) {
    items(patch.drawn(box));
    room.add(box);
    written.add(box);
    extent = extent.union(box.bounds());
  }

  /** Leaves a patch to stand beside the piece; with a leader where it speaks of the piece. */
  void beside(Patch patch, double angle, boolean leader) {
    beside.add(new Beside(patch, angle, leader));
  }

  /** A text off the piece with a leader to a point of it; false where no leader gets through. */
  boolean callout(Vec2 target, String words) {
    double width = Lettering.width(words, Lettering.NOTE);
    double height = Lettering.NOTE * (Lettering.ASCENT + Lettering.DESCENT);
    Bounds b = room.bounds();
    double far = b.width() + b.height();
    for (double reach = 6; reach < far + 200; reach += 4) {
      for (int i = 0; i < LEADER_TRIES; i++) {
        Vec2 way = Vec2.polar(2 * Math.PI * i / LEADER_TRIES - Math.PI / 2);
        Vec2 middle =
            target.along(way, reach).plus(new Vec2(way.x() * width / 2, way.y() * height / 2));
        Box box = new Box(middle, width, height, 0);
        Vec2 end = target.along(way, reach - 0.8);
        if (room.clearOutside(box, CLEARANCE) && room.passes(target.along(way, 2.5), end)) {
          strokes.add(new Stroke(Path.line(target, end), LineStyle.LEADER));
          room.add(lineBox(target.along(way, 2.5), end));
          text(centred(middle, Lettering.NOTE, 0, words));
          return true;
        }
      }
    }
    return false;
  }

  static Box lineBox(Vec2 a, Vec2 b) {
    return new Box(a.midpoint(b), a.distance(b), 0.2, b.minus(a).angle());
  }

  /**
   * The finished drawing, with what stands beside the piece set in rows under it or at its right.
   */
  Drawing finished(String title, String description) {
    boolean below = room.bounds().width() >= room.bounds().height();
    Bounds piece = extent;
    double limit = below ? Math.max(piece.width(), NARROWEST_ROW) : 0;
    double startX = below ? piece.minX() : piece.maxX() + BESIDE;
    double x = startX;
    double y = below ? piece.minY() - BESIDE : piece.maxY();
    double rowHeight = 0;
    Beside across = null;
    for (Beside b : beside) {
      Bounds size = new Box(Vec2.ZERO, b.patch.width(), b.patch.height(), b.angle).bounds();
      if (b.patch instanceof CheckLine && size.height() > size.width() == below) {
        across = b;
        continue;
      }
      if (x > startX && x + size.width() > startX + limit) {
        x = startX;
        y -= rowHeight + BESIDE;
        rowHeight = 0;
      }
      x = pastJoins(x, size.width());
      Vec2 middle = new Vec2(x + size.width() / 2, y - size.height() / 2);
      if (b.leader) {
        leader(size.width(), size.height(), middle, below);
      }
      draw(b.patch, new Box(middle, b.patch.width(), b.patch.height(), b.angle));
      x += size.width() + BESIDE;
      rowHeight = Math.max(rowHeight, size.height());
    }
    if (across != null) {
      checkLine(across, piece, below);
    }
    drawMiddles();
    List<Item> all = new ArrayList<>(strokes);
    all.sort(Sheet::order);
    all.addAll(texts);
    return new Drawing(title, description, extent.grown(EDGE), all);
  }

  /** Where a block of this width that begins at {@code x} or right of it meets no upright join. */
  private double pastJoins(double x, double width) {
    double from = x;
    for (Bounds j : joins) {
      boolean upright = j.width() < j.height();
      if (upright && from < j.maxX() && from + width > j.minX()) {
        from = j.maxX() + 2 * CLEARANCE;
      }
    }
    return from;
  }

  /** A check line across the rows stands at their far end, where it takes least paper. */
  private void checkLine(Beside b, Bounds piece, boolean below) {
    Bounds size = new Box(Vec2.ZERO, b.patch.width(), b.patch.height(), b.angle).bounds();
    double x = below ? extent.maxX() + BESIDE : piece.minX();
    double y = below ? piece.maxY() : extent.minY() - BESIDE;
    Vec2 middle = new Vec2(x + size.width() / 2, y - size.height() / 2);
    draw(b.patch, new Box(middle, b.patch.width(), b.patch.height(), b.angle));
  }

  /** From the edge of a block to a dot on the piece, over nothing that is written there. */
  private void leader(double width, double height, Vec2 middle, boolean below) {
    double half = (below ? width : height) / 2;
    for (double depth = 4; depth < 400; depth += 1.5) {
      for (int i = 0; i <= 16; i++) {
        double shift = half * ((i % 2 == 0 ? -i : i + 1) / 18.0);
        Vec2 from =
            below
                ? new Vec2(middle.x() + shift, middle.y() + height / 2 + 0.8)
                : new Vec2(middle.x() - width / 2 - 0.8, middle.y() + shift);
        Vec2 to = below ? from.plus(new Vec2(0, depth)) : from.plus(new Vec2(-depth, 0));
        Box dot = new Box(to, 2 * DOT, 2 * DOT, 0);
        if (room.holds(dot, 0.6) && room.passes(from, to)) {
          strokes.add(new Stroke(Path.line(from, to), LineStyle.LEADER));
          strokes.add(new Drawing.Fill(Path.circle(to, DOT), 0));
          room.add(lineBox(from, to));
          return;
        }
      }
    }
  }

  /** Lines of one kind follow each other, samples after their kind; fills last. */
  private static int order(Item p, Item q) {
    if (p instanceof Stroke a && q instanceof Stroke b) {
      int kinds = a.style().compareTo(b.style());
      return kinds != 0 ? kinds : Boolean.compare(a.sample(), b.sample());
    }
    return Boolean.compare(!(p instanceof Stroke), !(q instanceof Stroke));
  }
}
