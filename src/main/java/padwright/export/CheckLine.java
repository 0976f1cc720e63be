package padwright.export;

import java.util.List;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/** A line of exactly 100 mm to lay a rule against, to see that the print is at full size. */
record CheckLine() implements Patch {
  static final double LENGTH = 100;

  private static final double TICK = 2;

  @Override
  public double width() {
    return LENGTH;
  }

  @Override
  public double height() {
    return 2 * TICK + 0.6 + Lettering.NOTE;
  }

  @Override
  public List<Item> drawn(Box box) {
    Vec2 up = Vec2.polar(box.angle()).left();
    Vec2 a = box.at(-0.5, -0.5).along(up, TICK);
    Vec2 b = box.at(0.5, -0.5).along(up, TICK);
    Vec2 text = a.midpoint(b).along(up, Lettering.DESCENT * Lettering.NOTE + 0.8);
    return List.of(
        new Stroke(Path.line(a, b), LineStyle.CHECK),
        new Stroke(Path.line(a.along(up, -TICK), a.along(up, TICK)), LineStyle.CHECK),
        new Stroke(Path.line(b.along(up, -TICK), b.along(up, TICK)), LineStyle.CHECK),
        new Text(text, Lettering.NOTE, box.angle(), Anchor.MIDDLE, false, "check: 100 mm"));
  }
}
