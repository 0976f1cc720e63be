package padwright.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import padwright.design.FreeOutline;
import padwright.design.OutlineShape.FreePath;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/** Drawings for tests. */
final class Drawings {
  private Drawings() {}

  /** An SVG drawing whose user unit is a mm, 400 by 300. */
  static String svg(String content) {
    return svg("width='400mm' height='300mm' viewBox='0 0 400 300'", content);
  }

  static String svg(String root, String content) {
    return "<svg xmlns='http://www.w3.org/2000/svg' " + root + ">\n" + content + "\n</svg>";
  }

  static DrawnOutline read(String text) {
    return DrawingReader.read("a.svg", text.getBytes(StandardCharsets.UTF_8), Optional.empty());
  }

  static byte[] file(String name) {
    try (InputStream in = Drawings.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static DrawnOutline dxf(String name) {
    return DrawingReader.read(name, file(name), Optional.empty());
  }

  /** Where it was drawn: the lower left of the outline at the origin. */
  static Path laid(FreePath path) {
    FreeOutline laid = FreeOutline.of(path);
    return laid.path().translated(laid.moved().times(-1));
  }

  static double area(DrawnOutline drawn) {
    return laid(drawn.outline()).area();
  }

  static List<Vec2> chords(DrawnOutline drawn) {
    return laid(drawn.outline()).flattened(1e-4);
  }
}
