package padwright.drawing;

import java.util.Set;
import padwright.geometry.Vec2;

/** Draws the basic shapes of SVG (SVG 1.1, 9) with a pen. */
final class SvgShapes {
  /** Elements that draw. */
  static final Set<String> DRAWN =
      Set.of("path", "rect", "circle", "ellipse", "polygon", "polyline", "line");

  private SvgShapes() {}

  static void draw(String kind, SvgAttributes a, Pen pen, Budget budget) {
    switch (kind) {
      case "path" -> {
        if (a.text("d").isPresent()) {
          new PathData(a.scanner("d"), pen, budget).draw();
        }
      }
      case "rect" -> rect(a, pen);
      case "circle" -> {
        double r = length(a, "r");
        ellipse(new Vec2(length(a, "cx"), length(a, "cy")), r, r, a, pen);
      }
      case "ellipse" ->
          ellipse(
              new Vec2(length(a, "cx"), length(a, "cy")), radius(a, "rx"), radius(a, "ry"), a, pen);
      case "line" -> {
        pen.move(new Vec2(length(a, "x1"), length(a, "y1")));
        pen.line(new Vec2(length(a, "x2"), length(a, "y2")));
      }
      default -> points(a, pen);
    }
  }

  private static double length(SvgAttributes a, String name) {
    return SvgUnits.length(a, name).orElse(0);
  }

  /** An ellipse's radius; one that is left out is as the other. */
  private static double radius(SvgAttributes a, String name) {
    String other = name.equals("rx") ? "ry" : "rx";
    return SvgUnits.length(a, name).orElse(length(a, other));
  }

  private static void ellipse(Vec2 centre, double rx, double ry, SvgAttributes a, Pen pen) {
    if (rx < 0 || ry < 0) {
      throw a.refuse("a radius is negative", "Give radii over 0");
    }
    if (rx == 0 || ry == 0) {
      return;
    }
    Vec2 start = centre.plus(new Vec2(rx, 0));
    pen.move(start);
    Vec2 u = new Vec2(rx, 0);
    pen.arc(new EllipticArc(centre, u, new Vec2(0, ry), 0, 2 * Math.PI), start);
    pen.close();
  }

  private static void rect(SvgAttributes a, Pen pen) {
    double w = length(a, "width");
    double h = length(a, "height");
    if (w < 0 || h < 0) {
      throw a.refuse("a width or height is negative", "Give sizes over 0");
    }
    if (w == 0 || h == 0) {
      return;
    }
    double x = length(a, "x");
    double y = length(a, "y");
    double rx = Math.min(Math.abs(radius(a, "rx")), w / 2);
    double ry = Math.min(Math.abs(radius(a, "ry")), h / 2);
    if (rx == 0 || ry == 0) {
      rx = 0;
      ry = 0;
    }
    pen.move(new Vec2(x + rx, y));
    Vec2[] corners = {
      new Vec2(x + w, y), new Vec2(x + w, y + h), new Vec2(x, y + h), new Vec2(x, y)
    };
    for (int k = 0; k < 4; k++) {
      Vec2 along = Vec2.polar(k * Math.PI / 2);
      Vec2 on = along.left();
      Vec2 side = new Vec2(Math.rint(along.x()) * rx, Math.rint(along.y()) * ry);
      Vec2 next = new Vec2(Math.rint(on.x()) * rx, Math.rint(on.y()) * ry);
      Vec2 from = corners[k].minus(side);
      if (pen.at().distance(from) > 0) {
        pen.line(from);
      }
      if (rx > 0) {
        Vec2 centre = from.plus(next);
        Vec2 to = corners[k].plus(next);
        pen.arc(new EllipticArc(centre, next.times(-1), side, 0, Math.PI / 2), to);
      }
    }
    pen.close();
  }

  private static void points(SvgAttributes a, Pen pen) {
    if (a.text("points").isEmpty()) {
      return;
    }
    NumberScanner in = a.scanner("points");
    boolean first = true;
    while (!in.done()) {
      double x = in.number();
      Vec2 p = new Vec2(x, in.number());
      if (first) {
        pen.move(p);
      } else {
        pen.line(p);
      }
      first = false;
    }
    if (!first) {
      pen.close();
    }
  }
}
