package padwright.desk.screen;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import padwright.desk.view.SectionForm.Kind;
import padwright.desk.view.SectionForm.Line;
import padwright.geometry.Bounds;
import padwright.geometry.HatchLines;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/** Draws hatched areas, lines, dimensions and words that are cut where they do not fit. */
final class FormBrush {
  private static final double TICK = 4;
  private static final double GENTLE = Math.atan(0.4);
  private static final String MORE = "\u2026";

  private final GraphicsContext g;
  private final FormColours colours;
  private final double text;

  FormBrush(GraphicsContext g, FormColours colours, double text) {
    this.g = g;
    this.colours = colours;
    this.text = text;
  }

  void clear(double width, double height) {
    g.setFill(colours.paper());
    g.fillRect(0, 0, width, height);
  }

  private void path(List<Vec2> points, boolean closed) {
    g.beginPath();
    for (int i = 0; i < points.size(); i++) {
      Vec2 p = points.get(i);
      if (i == 0) {
        g.moveTo(p.x(), p.y());
      } else {
        g.lineTo(p.x(), p.y());
      }
    }
    if (closed) {
      g.closePath();
    }
  }

  /** A layer: its tone, its hatching, its outline. */
  void area(Kind kind, int number, List<Vec2> outline, boolean heavy) {
    if (outline.size() < 3) {
      return;
    }
    path(outline, true);
    g.setFill(colours.tone(kind, number));
    g.fill();
    hatch(kind, number, outline);
    outline(outline, true, heavy ? 2.5 : 1);
  }

  private void hatch(Kind kind, int number, List<Vec2> outline) {
    g.setStroke(colours.faint());
    g.setLineWidth(0.6);
    switch (kind) {
      case BOARD -> slanted(outline, 7, -Math.PI / 4);
      case FOAM -> {
        slanted(outline, 14, number % 2 == 0 ? Math.PI / 4 : -GENTLE);
        if (number % 2 == 1) {
          slanted(outline, 14, GENTLE);
        }
      }
      case WADDING -> slanted(outline, 4, Math.PI / 2);
      case COVER, EDGE, STAPLES -> {}
    }
  }

  /**
   * Lines at a pitch across themselves, in one stroke: cut to the outline beforehand, since a clip
   * makes the toolkit blend the whole canvas.
   *
   * @param angle of the lines, radians, y downwards
   */
  private void slanted(List<Vec2> outline, double pitch, double angle) {
    g.beginPath();
    for (Segment line : HatchLines.inside(outline, angle, pitch)) {
      g.moveTo(line.start().x(), line.start().y());
      g.lineTo(line.end().x(), line.end().y());
    }
    g.stroke();
  }

  void outline(List<Vec2> points, boolean closed, double width) {
    path(points, closed);
    g.setStroke(width > 2 ? colours.accent() : colours.ink());
    g.setLineWidth(width);
    g.stroke();
  }

  /** A band of a thickness, such as the covering. */
  void band(List<Vec2> points, double width, Color colour) {
    path(points, false);
    g.setStroke(colour);
    g.setLineWidth(width);
    g.stroke();
  }

  void line(Line l, boolean dashed) {
    line(l, dashed, colours.faint(), 0.8);
  }

  void line(Line l, boolean dashed, Color colour, double width) {
    g.setStroke(colour);
    g.setLineWidth(width);
    if (dashed) {
      g.setLineDashes(7, 3, 2, 3);
    }
    g.strokeLine(l.from().x(), l.from().y(), l.to().x(), l.to().y());
    g.setLineDashes();
  }

  /** A measured length between slanted ticks. */
  void bar(Vec2 from, Vec2 to, boolean heavy) {
    Color colour = heavy ? colours.accent() : colours.ink();
    line(new Line(from, to), false, colour, heavy ? 2 : 1);
    for (Vec2 p : List.of(from, to)) {
      Vec2 slant = new Vec2(TICK / 2 + 0.5, -TICK / 2 - 0.5);
      line(new Line(p.minus(slant), p.plus(slant)), false, colour, heavy ? 2 : 1.2);
    }
  }

  /** A handle, so large. */
  void dot(Vec2 at, double r) {
    g.setFill(colours.paper());
    g.fillOval(at.x() - r, at.y() - r, 2 * r, 2 * r);
    g.setStroke(colours.accent());
    g.setLineWidth(r > 4 ? 2.2 : 1.3);
    g.strokeOval(at.x() - r, at.y() - r, 2 * r, 2 * r);
  }

  /** The torn edge where the pad goes on. */
  void torn(double x, double from, double to) {
    double step = 7;
    int n = (int) Math.ceil((to - from + 2 * step) / step);
    g.setFill(colours.paper());
    g.beginPath();
    g.moveTo(x - 6, from - step);
    for (int i = 0; i <= n; i++) {
      g.lineTo(x + (i % 2 == 0 ? 1 : 6), from - step + i * step);
    }
    g.lineTo(x - 6, from - step + n * step);
    g.closePath();
    g.fill();
    g.setStroke(colours.faint());
    g.setLineWidth(0.8);
    for (int i = 0; i < n; i++) {
      g.strokeLine(
          x + (i % 2 == 0 ? 1 : 6),
          from - step + i * step,
          x + (i % 2 == 0 ? 6 : 1),
          from - step + (i + 1) * step);
    }
  }

  /** Words in a box, cut with an ellipsis where they are longer. */
  void words(String words, Bounds box, TextAlignment align, boolean bold, Color colour) {
    Font font =
        Font.font(Font.getDefault().getFamily(), bold ? FontWeight.BOLD : FontWeight.NORMAL, text);
    g.setFont(font);
    g.setFill(colour);
    g.setTextBaseline(VPos.CENTER);
    g.setTextAlign(align);
    double x =
        switch (align) {
          case RIGHT -> box.maxX();
          case CENTER -> box.centre().x();
          default -> box.minX();
        };
    g.fillText(fitting(words, font, box.width()), x, box.centre().y());
  }

  /** Words in at most two lines, broken after a comma or colon where one is too short. */
  List<String> broken(String words, double room) {
    Font font = Font.font(Font.getDefault().getFamily(), text);
    if (width(words, font) <= room) {
      return List.of(words);
    }
    int at = words.length();
    while (at > 1 && width(words.substring(0, at), font) > room) {
      at = Math.max(words.lastIndexOf(", ", at - 2), words.lastIndexOf(": ", at - 2)) + 1;
    }
    return at <= 1 ? List.of(words) : List.of(words.substring(0, at), words.substring(at).strip());
  }

  static double width(String words, Font font) {
    Text t = new Text(words);
    t.setFont(font);
    return t.getLayoutBounds().getWidth();
  }

  static String fitting(String words, Font font, double room) {
    if (width(words, font) <= room) {
      return words;
    }
    int n = words.length();
    while (n > 1 && width(words.substring(0, n) + MORE, font) > room) {
      n--;
    }
    return words.substring(0, n).stripTrailing() + MORE;
  }
}
