package padwright.export;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.Fill;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Lines;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * Writes a drawing as SVG 1.1 text at true scale: sizes in mm, one user unit a mm, y down from the
 * top of the drawing. Arcs stay arcs. Lines of one kind stand in one group, whose id names the kind
 * ({@code cut-line}, {@code fold-lines} and so on; {@code -2} is added where a kind comes again).
 * Has no state.
 */
public final class SvgWriter {
  /** Digits kept after the point: a ten-thousandth of a mm. */
  private static final double STEPS_PER_MM = 10_000;

  /** Digits of a radius: more, because an arc's middle is found from its ends and radius. */
  private static final double STEPS_PER_MM_OF_RADIUS = 1_000_000;

  /**
   * The most one arc command sweeps. Near half a turn the middle of an arc is very sensitive to the
   * rounding of its ends (an error e moves it by the root of 2 r e), so arcs are divided.
   */
  private static final double LARGEST_SWEEP = Math.PI / 2 + 1e-9;

  private static final String LABELS = "labels";
  private static final String FILLS = "fills";
  private static final String SAMPLE = "sample-";

  private final StringBuilder out = new StringBuilder(16_384);
  private final Map<String, Integer> groups = new HashMap<>();
  private final double left;
  private final double top;

  private SvgWriter(Bounds extent) {
    this.left = extent.minX();
    this.top = extent.maxY();
  }

  /** The whole file, to be encoded in UTF-8. */
  public static String write(Drawing drawing) {
    return new SvgWriter(drawing.extent()).file(drawing);
  }

  private String file(Drawing d) {
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
        .append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"");
    number(d.extent().width());
    out.append("mm\" height=\"");
    number(d.extent().height());
    out.append("mm\" viewBox=\"0 0 ");
    number(d.extent().width());
    out.append(' ');
    number(d.extent().height());
    out.append("\">\n<title>");
    escaped(d.title());
    out.append("</title>\n<desc>");
    escaped(d.description());
    out.append("</desc>\n");
    String open = "";
    for (Item item : d.items()) {
      String group = group(item);
      if (!group.equals(open)) {
        if (!open.isEmpty()) {
          out.append("</g>\n");
        }
        open(group, item);
        open = group;
      }
      draw(item);
    }
    if (!open.isEmpty()) {
      out.append("</g>\n");
    }
    return out.append("</svg>\n").toString();
  }

  private static String group(Item item) {
    if (item instanceof Stroke s) {
      return group(s.style(), s.sample());
    }
    if (item instanceof Lines l) {
      return group(l.style(), l.sample());
    }
    return item instanceof Text ? LABELS : FILLS;
  }

  private static String group(LineStyle style, boolean sample) {
    return sample ? SAMPLE + style.group() : style.group();
  }

  private void open(String group, Item item) {
    int times = groups.merge(group, 1, Integer::sum);
    out.append("<g id=\"").append(group);
    if (times > 1) {
      out.append('-').append(times);
    }
    out.append("\" class=\"").append(group).append('"');
    if (item instanceof Stroke || item instanceof Lines) {
      LineStyle style = item instanceof Stroke s ? s.style() : ((Lines) item).style();
      out.append(" fill=\"none\" stroke=\"#000000\" stroke-width=\"");
      number(style.width());
      out.append("\" stroke-linejoin=\"round\"");
      double[] dashes = style.dashes();
      if (dashes.length > 0) {
        out.append(" stroke-dasharray=\"");
        for (int i = 0; i < dashes.length; i++) {
          if (i > 0) {
            out.append(',');
          }
          number(dashes[i]);
        }
        out.append('"');
      }
    } else if (item instanceof Text) {
      out.append(" font-family=\"").append(Lettering.FAMILIES).append("\" fill=\"#000000\"");
    }
    out.append(">\n");
  }

  private void draw(Item item) {
    if (item instanceof Stroke s) {
      out.append("<path d=\"");
      path(s.path());
      out.append("\"/>\n");
    } else if (item instanceof Lines l) {
      out.append("<path d=\"");
      lines(l);
      out.append("\"/>\n");
    } else if (item instanceof Fill f) {
      out.append("<path d=\"");
      path(f.path());
      out.append("\" fill=\"");
      String level = Integer.toHexString(0x100 | (int) Math.round(f.grey() * 255)).substring(1);
      out.append('#').append(level).append(level).append(level).append("\"/>\n");
    } else if (item instanceof Text t) {
      text(t);
    }
  }

  private void text(Text t) {
    out.append("<text x=\"");
    number(t.at().x() - left);
    out.append("\" y=\"");
    number(top - t.at().y());
    out.append("\" font-size=\"");
    number(t.height());
    out.append('"');
    if (t.anchor() != Anchor.START) {
      out.append(" text-anchor=\"").append(t.anchor() == Anchor.MIDDLE ? "middle" : "end");
      out.append('"');
    }
    if (t.bold()) {
      out.append(" font-weight=\"bold\"");
    }
    if (t.angle() != 0) {
      out.append(" transform=\"rotate(");
      number(-Math.toDegrees(t.angle()));
      out.append(' ');
      number(t.at().x() - left);
      out.append(' ');
      number(top - t.at().y());
      out.append(")\"");
    }
    out.append('>');
    escaped(t.text());
    out.append("</text>\n");
  }

  private void path(Path path) {
    out.append('M');
    point(path.start());
    List<Segment> segments = path.segments();
    for (int i = 0; i < segments.size(); i++) {
      Segment s = segments.get(i);
      boolean last = path.closed() && i == segments.size() - 1;
      if (s.isArc()) {
        arc(s);
      } else if (!last) { // the closing command draws the last line
        out.append('L');
        point(s.end());
      }
    }
    if (path.closed()) {
      out.append('Z');
    }
  }

  /** All in one path, each line's end told from its start. */
  private void lines(Lines l) {
    for (int i = 0; i < l.count(); i++) {
      Vec2 from = l.start(i);
      Vec2 to = l.end(i);
      out.append('M');
      point(from);
      out.append('l');
      number(to.x() - from.x());
      out.append(' ');
      number(from.y() - to.y());
    }
  }

  private void arc(Segment s) {
    int parts = (int) Math.ceil(Math.abs(s.sweep()) / LARGEST_SWEEP);
    double radius = s.radius();
    for (int i = 1; i <= parts; i++) {
      out.append('A');
      rounded(radius, STEPS_PER_MM_OF_RADIUS);
      out.append(' ');
      rounded(radius, STEPS_PER_MM_OF_RADIUS);
      out.append(" 0 0 ").append(s.bulge() > 0 ? '0' : '1').append(' ');
      point(i == parts ? s.end() : s.pointAt((double) i / parts));
    }
  }

  private void point(Vec2 p) {
    number(p.x() - left);
    out.append(' ');
    number(top - p.y());
  }

  private void number(double value) {
    rounded(value, STEPS_PER_MM);
  }

  /** A plain decimal, whatever the machine's language; trailing noughts dropped. */
  private void rounded(double value, double steps) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a number a drawing can hold: " + value);
    }
    long n = Math.round(value * steps);
    if (n < 0) {
      out.append('-');
      n = -n;
    }
    long unit = (long) steps;
    out.append(n / unit);
    long rest = n % unit;
    if (rest > 0) {
      out.append('.');
      while (rest > 0) {
        unit /= 10;
        out.append((char) ('0' + rest / unit));
        rest %= unit;
      }
    }
  }

  /** Text with what XML 1.0 cannot hold shown as a question mark. */
  private void escaped(String text) {
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        default -> {
          boolean allowed =
              (c >= 0x20 && c <= 0xD7FF)
                  || (c >= 0xE000 && c <= 0xFFFD)
                  || c >= 0x10000
                  || c == '\t';
          out.appendCodePoint(allowed ? c : '?');
        }
      }
    }
  }
}
