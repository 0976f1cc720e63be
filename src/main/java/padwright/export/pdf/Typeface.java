package padwright.export.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The one font of a document: Liberation Sans (SIL Open Font License), which PDFBox brings with it,
 * embedded with the letters that are used. Sizes and widths in mm.
 */
final class Typeface {
  private static final String RESOURCE =
      "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  /** Height of a capital letter, as a part of the font size (1409 of 2048 in this font). */
  static final double CAPITAL = 0.688;

  /** How far letters such as g hang below the line, as a part of the font size. */
  static final double DROP = 0.212;

  /** Stands in for a character that the font has no letter for. */
  private static final int MISSING = 0x25A1;

  private final PDFont font;
  private final CmapLookup letters;

  Typeface(PDDocument document) throws IOException {
    try (InputStream in = PDType0Font.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IOException("the font " + RESOURCE + " is missing from the program");
      }
      TrueTypeFont ttf = new TTFParser().parse(new RandomAccessReadBuffer(in));
      font = PDType0Font.load(document, ttf, true);
      letters = ttf.getUnicodeCmapLookup();
    }
  }

  PDFont font() {
    return font;
  }

  /** The text with control characters as spaces and letters that the font lacks as boxes. */
  String printable(String text) {
    StringBuilder s = new StringBuilder(text.length());
    text.codePoints()
        .map(c -> Character.isISOControl(c) ? ' ' : letters.getGlyphId(c) == 0 ? MISSING : c)
        .forEach(s::appendCodePoint);
    return s.toString();
  }

  /** How long the text is at a font size, both mm. */
  double width(String text, double size) {
    try {
      return font.getStringWidth(printable(text)) / 1000.0 * size;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The text, or as much of it as fits with an ellipsis. */
  String fitted(String text, double size, double room) {
    if (width(text, size) <= room) {
      return text;
    }
    String s = text;
    while (!s.isEmpty() && width(s + "\u2026", size) > room) {
      s = s.substring(0, s.offsetByCodePoints(s.length(), -1)).stripTrailing();
    }
    return s + "\u2026";
  }
}
