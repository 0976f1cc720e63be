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

/** Dimension lines: a line between slanted ticks, with its size over it or at its end. */
final class Dimensions {
  private static final double TICK = 1.2;
  private static final double TEXT_GAP = 0.8;
  private static final double BESIDE_GAP = 3;

  private Dimensions() {}

  /** A line with a slanted tick at each end. */
  static List<Item> bar(Vec2 from, Vec2 to) {
    List<Item> items = new ArrayList<>();
    items.add(stroke(from, to));
    Vec2 u = to.distance(from) > 0 ? to.minus(from).unit() : new Vec2(1, 0);
    Vec2 slant = u.plus(u.left()).times(TICK / Math.sqrt(2));
    items.add(stroke(from.minus(slant), from.plus(slant)));
    items.add(stroke(to.minus(slant), to.plus(slant)));
    return items;
  }

  /** A level dimension, its text over the middle, or right of it where it is too short. */
  static List<Item> level(double x1, double x2, double y, String text) {
    List<Item> items = bar(new Vec2(Math.min(x1, x2), y), new Vec2(Math.max(x1, x2), y));
    double drop = Lettering.NOTE * Lettering.DESCENT;
    if (Lettering.width(text, Lettering.NOTE) < Math.abs(x2 - x1) - 2) {
      Vec2 at = new Vec2((x1 + x2) / 2, y + TEXT_GAP + drop);
      items.add(new Text(at, Lettering.NOTE, 0, Anchor.MIDDLE, false, text));
    } else {
      Vec2 at = new Vec2(Math.max(x1, x2) + BESIDE_GAP, y - Lettering.NOTE * 0.27);
      items.add(new Text(at, Lettering.NOTE, 0, Anchor.START, false, text));
    }
    return items;
  }

  /** An upright dimension, its text turned along it. */
  static List<Item> upright(double x, double y1, double y2, String text) {
    List<Item> items = bar(new Vec2(x, y1), new Vec2(x, y2));
    Vec2 at = new Vec2(x - TEXT_GAP - Lettering.NOTE * Lettering.DESCENT, (y1 + y2) / 2);
    items.add(new Text(at, Lettering.NOTE, Math.PI / 2, Anchor.MIDDLE, false, text));
    return items;
  }

  static Item stroke(Vec2 a, Vec2 b) {
    return new Stroke(Path.line(a, b), LineStyle.DIMENSION);
  }
}
