package padwright.export;

import java.util.ArrayList;
import java.util.List;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.Fill;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * The arrow of the grain with its word over it. Two heads where the material has no up and down,
 * one where it has.
 *
 * @param headAtStart with one head: it is at the left end of the word
 */
record GrainArrow(double length, String word, boolean oneHead, boolean headAtStart)
    implements Patch {
  private static final double HEAD = 5;
  private static final double HALF_HEAD = 1.6;
  private static final double GAP = 2;

  /** Arrow lengths tried, longest first. */
  static final double[] LENGTHS = {90, 60, 40, 25, 16};

  @Override
  public double width() {
    return Math.max(length, Lettering.width(word, Lettering.NOTE));
  }

  @Override
  public double height() {
    return HALF_HEAD + GAP + Lettering.NOTE;
  }

  @Override
  public List<Item> drawn(Box box) {
    List<Item> items = new ArrayList<>();
    Vec2 u = Vec2.polar(box.angle());
    Vec2 middle = box.at(0, -0.5).along(u.left(), HALF_HEAD);
    Vec2 a = middle.along(u, -length / 2);
    Vec2 b = middle.along(u, length / 2);
    boolean atStart = !oneHead || headAtStart;
    boolean atEnd = !oneHead || !headAtStart;
    items.add(
        new Stroke(
            Path.line(atStart ? a.along(u, HEAD / 2) : a, atEnd ? b.along(u, -HEAD / 2) : b),
            LineStyle.ARROW));
    if (atStart) {
      items.add(head(a, u));
    }
    if (atEnd) {
      items.add(head(b, u.times(-1)));
    }
    Vec2 text = middle.along(u.left(), GAP + Lettering.DESCENT * Lettering.NOTE);
    items.add(new Text(text, Lettering.NOTE, box.angle(), Anchor.MIDDLE, false, word));
    return items;
  }

  /** A filled head with its tip at {@code tip}; {@code back} points from the tip along the line. */
  static Fill head(Vec2 tip, Vec2 back) {
    Vec2 foot = tip.along(back, HEAD);
    return new Fill(
        Path.polygon(tip, foot.along(back.left(), HALF_HEAD), foot.along(back.left(), -HALF_HEAD)),
        0);
  }
}
