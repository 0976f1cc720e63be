package padwright.export;

import java.util.ArrayList;
import java.util.Comparator;
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
 * Notes one under the other at the side of a picture, each on a leader to what it names. They keep
 * the order of what they name from top to bottom, so that leaders do not cross.
 */
final class LabelColumn {
  private static final double PITCH = Lettering.NOTE * 1.5;
  private static final double GAP = 1;
  private static final double DOT = 0.6;

  private final List<Label> labels = new ArrayList<>();

  private record Label(Vec2 target, boolean dot, String text) {}

  void add(Vec2 target, boolean dot, String text) {
    labels.add(new Label(target, dot, text));
  }

  /**
   * @param x where the texts stand
   * @param anchor START for a column at the right of the picture, END for one at its left
   */
  List<Item> drawn(double x, Anchor anchor) {
    List<Label> sorted = new ArrayList<>(labels);
    sorted.sort(Comparator.comparingDouble((Label l) -> -l.target.y()));
    double[] y = spread(sorted);
    List<Item> items = new ArrayList<>();
    double side = anchor == Anchor.START ? -GAP : GAP;
    for (int i = 0; i < y.length; i++) {
      Label l = sorted.get(i);
      Vec2 end = new Vec2(x + side, y[i]);
      items.add(new Stroke(Path.line(l.target, end), LineStyle.LEADER));
      if (l.dot) {
        items.add(new Fill(Path.circle(l.target, DOT), 0));
      }
      double drop = Lettering.NOTE * (Lettering.ASCENT - Lettering.DESCENT) / 2;
      items.add(new Text(new Vec2(x, y[i] - drop), Lettering.NOTE, 0, anchor, false, l.text));
    }
    return items;
  }

  /** Pushes labels that stand too close apart, then sets the whole column back to its middle. */
  private static double[] spread(List<Label> sorted) {
    double[] y = new double[sorted.size()];
    double off = 0;
    for (int i = 0; i < y.length; i++) {
      double wish = sorted.get(i).target.y();
      y[i] = i == 0 ? wish : Math.min(wish, y[i - 1] - PITCH);
      off += wish - y[i];
    }
    for (int i = 0; i < y.length; i++) {
      y[i] += off / y.length;
    }
    return y;
  }
}
