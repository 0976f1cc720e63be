package padwright.desk.screen;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import javafx.scene.text.Font;

/** The letters that drawings are set in, the same as on paper, so that words keep to their room. */
final class DrawingFonts {
  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private DrawingFonts() {}

  /**
   * @param size of the body, points
   */
  static Font of(double size) {
    return Font.font(Family.NAME, size);
  }

  /** Loaded when first asked for; another sans where the toolkit cannot read it. */
  private static final class Family {
    static final String NAME = load();

    private static String load() {
      try (InputStream in = DrawingFonts.class.getResourceAsStream(FILE)) {
        Font font = in == null ? null : Font.loadFont(in, 12);
        return font == null ? "SansSerif" : font.getFamily();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
