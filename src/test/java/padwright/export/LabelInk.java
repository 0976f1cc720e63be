package padwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * Where the ink of labels lies, found without the program's own metrics or geometry: glyph outlines
 * by the Java platform's font renderer, overlaps by the JTS library.
 */
final class LabelInk {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final Font FONT = font();

  private LabelInk() {}

  private static Font font() {
    try (InputStream in =
        PDDocument.class.getResourceAsStream(
            "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException(e);
    }
  }

  /** No label may touch a line, an area or another label. */
  static void check(String name, Drawing d) {
    STRtree lines = new STRtree();
    for (Item item : d.items()) {
      if (item instanceof Stroke s) {
        Geometry line = line(s.path());
        lines.insert(line.getEnvelopeInternal(), line);
      } else if (item instanceof Drawing.Fill f) {
        Geometry fill = line(f.path());
        lines.insert(fill.getEnvelopeInternal(), fill);
      }
    }
    STRtree others = new STRtree();
    for (Item item : d.items()) {
      if (item instanceof Text t && !t.text().isBlank()) {
        Geometry ink = of(t);
        for (Object hit : lines.query(ink.getEnvelopeInternal())) {
          assertThat(ink.intersects((Geometry) hit)).as("%s: '%s' on a line", name, t).isFalse();
        }
        others.insert(ink.getEnvelopeInternal(), ink);
      }
    }
    for (Item item : d.items()) {
      if (item instanceof Text t && !t.text().isBlank()) {
        Geometry ink = of(t);
        int meets = 0;
        for (Object hit : others.query(ink.getEnvelopeInternal())) {
          meets += ink.intersects((Geometry) hit) ? 1 : 0;
        }
        assertThat(meets).as("%s: '%s' meets only itself", name, t).isEqualTo(1);
      }
    }
  }

  private static Coordinate[] ring(List<Vec2> points) {
    List<Coordinate> list = new ArrayList<>();
    points.forEach(p -> list.add(new Coordinate(p.x(), p.y())));
    list.add(list.get(0));
    return list.toArray(new Coordinate[0]);
  }

  /** What a closed path holds. */
  static Geometry area(Path path) {
    return GEOMETRY.createPolygon(ring(path.flattened(0.01)));
  }

  static Geometry line(Path path) {
    List<Vec2> points = path.flattened(0.01);
    List<Coordinate> list = new ArrayList<>();
    points.forEach(p -> list.add(new Coordinate(p.x(), p.y())));
    if (path.closed()) {
      list.add(list.get(0));
    }
    return GEOMETRY.createLineString(list.toArray(new Coordinate[0]));
  }

  /** The box round the ink of the glyphs, turned and set where the text stands. */
  static Geometry of(Text t) {
    // Measured at a hundred times the size: the platform rounds small fonts.
    Font sized = FONT.deriveFont((float) (100 * t.height()));
    FontRenderContext context = new FontRenderContext(null, true, true);
    Rectangle2D box = sized.createGlyphVector(context, t.text()).getVisualBounds();
    double advance = sized.getStringBounds(t.text(), context).getWidth() / 100;
    double shift =
        t.anchor() == Anchor.START ? 0 : t.anchor() == Anchor.MIDDLE ? -advance / 2 : -advance;
    double x1 = box.getMinX() / 100 + shift;
    double x2 = box.getMaxX() / 100 + shift;
    double y1 = -box.getMaxY() / 100;
    double y2 = -box.getMinY() / 100;
    List<Vec2> corners = new ArrayList<>();
    for (Vec2 v : List.of(new Vec2(x1, y1), new Vec2(x2, y1), new Vec2(x2, y2), new Vec2(x1, y2))) {
      corners.add(v.rotated(t.angle()).plus(t.at()));
    }
    return GEOMETRY.createPolygon(ring(corners));
  }
}
