package padwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import padwright.export.Drawing;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * Where a drawing has ink: answers which boxes of the plane are touched, so that no empty sheet is
 * printed and marks find a free place. Curves are taken as chords, widened by their error.
 */
final class Ink {
  /** mm; far under a printed line's width. */
  private static final double CHORD_ERROR = 0.02;

  /** A chain of points with ink within {@code reach} of it; {@code solid} is inked inside too. */
  private record Shape(
      Drawing.Item item,
      List<Vec2> points,
      boolean closed,
      boolean solid,
      double reach,
      Bounds box) {
    static Shape of(Drawing.Item item, Path path, boolean solid, double reach) {
      double grown = reach + CHORD_ERROR;
      return new Shape(
          item,
          path.flattened(CHORD_ERROR),
          path.closed(),
          solid,
          grown,
          path.bounds().grown(grown));
    }
  }

  private final List<Shape> shapes = new ArrayList<>();
  private final Bounds bounds;

  Ink(Drawing drawing, Typeface face) {
    for (Drawing.Item item : drawing.items()) {
      if (item instanceof Drawing.Stroke s) {
        shapes.add(Shape.of(s, s.path(), false, s.style().width() / 2));
      } else if (item instanceof Drawing.Fill f) {
        shapes.add(Shape.of(f, f.path(), true, 0));
      } else if (item instanceof Drawing.Text t && !t.text().isBlank()) {
        shapes.add(Shape.of(t, frame(t, face), true, 0));
      }
    }
    bounds = shapes.stream().map(Shape::box).reduce(Bounds::union).orElse(drawing.extent());
  }

  /** The box round a line of text. */
  static Path frame(Drawing.Text t, Typeface face) {
    double width = face.width(t.text(), t.height());
    double from =
        switch (t.anchor()) {
          case START -> 0;
          case MIDDLE -> -width / 2;
          case END -> -width;
        };
    double low = -Typeface.DROP * t.height();
    double high = (Typeface.CAPITAL + 0.06) * t.height();
    Vec2 u = Vec2.polar(t.angle());
    Vec2 v = u.left();
    return Path.polygon(
        t.at().along(u, from).along(v, low),
        t.at().along(u, from + width).along(v, low),
        t.at().along(u, from + width).along(v, high),
        t.at().along(u, from).along(v, high));
  }

  /** The box round all ink; the drawing's own extent where there is none. */
  Bounds bounds() {
    return bounds;
  }

  boolean touches(Bounds box) {
    return shapes.stream().anyMatch(s -> touches(s, box));
  }

  /** The items that touch the box, in the drawing's order. */
  List<Drawing.Item> within(Bounds box) {
    return shapes.stream().filter(s -> touches(s, box)).map(Shape::item).toList();
  }

  /** How many lines, areas and texts touch the box. */
  int count(Bounds box) {
    return (int) shapes.stream().filter(s -> touches(s, box)).count();
  }

  private static boolean touches(Shape s, Bounds box) {
    if (!s.box.overlaps(box)) {
      return false;
    }
    Bounds wide = box.grown(s.reach);
    int n = s.points.size();
    for (int i = 0; i + (s.closed ? 0 : 1) < n; i++) {
      if (crosses(s.points.get(i), s.points.get((i + 1) % n), wide)) {
        return true;
      }
    }
    return s.solid && inside(s.points, box.centre());
  }

  /** Whether a straight line has a point in the box (Liang and Barsky's clipping). */
  private static boolean crosses(Vec2 p, Vec2 q, Bounds b) {
    double dx = q.x() - p.x();
    double dy = q.y() - p.y();
    double[] step = {-dx, dx, -dy, dy};
    double[] room = {p.x() - b.minX(), b.maxX() - p.x(), p.y() - b.minY(), b.maxY() - p.y()};
    double from = 0;
    double to = 1;
    for (int i = 0; i < 4; i++) {
      if (step[i] == 0) {
        if (room[i] < 0) {
          return false;
        }
      } else if (step[i] < 0) {
        from = Math.max(from, room[i] / step[i]);
      } else {
        to = Math.min(to, room[i] / step[i]);
      }
    }
    return from <= to;
  }

  private static boolean inside(List<Vec2> polygon, Vec2 p) {
    boolean in = false;
    for (int i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
      Vec2 a = polygon.get(i);
      Vec2 b = polygon.get(j);
      if ((a.y() > p.y()) != (b.y() > p.y())
          && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
        in = !in;
      }
    }
    return in;
  }
}
