package padwright.export;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;

/**
 * Advance widths of a TrueType font, in parts of its em, read from the tables {@code head}, {@code
 * hhea}, {@code hmtx} and {@code cmap} (format 4) as ISO/IEC 14496-22 lays them out. Reads nothing
 * else of the font, so that labels can be measured without the cost of loading it.
 */
final class FontWidths {
  private static final int FIRST_TABLE = 12;
  private static final int TABLE_ENTRY = 16;
  private static final int PLANE = 0x10000;

  private final float[] ems = new float[PLANE];

  private FontWidths(ByteBuffer font) {
    int unitsPerEm = u16(font, table(font, "head") + 18);
    int counted = u16(font, table(font, "hhea") + 34);
    int hmtx = table(font, "hmtx");
    int map = formatFour(font, table(font, "cmap"));
    int segments = u16(font, map + 6) / 2;
    int ends = map + 14;
    int starts = ends + 2 * segments + 2;
    int deltas = starts + 2 * segments;
    int offsets = deltas + 2 * segments;
    for (int s = 0; s < segments; s++) {
      int from = u16(font, starts + 2 * s);
      int to = Math.min(u16(font, ends + 2 * s), PLANE - 2);
      int offset = u16(font, offsets + 2 * s);
      for (int c = from; c <= to; c++) {
        int glyph = offset == 0 ? c : u16(font, offsets + 2 * s + offset + 2 * (c - from));
        if (glyph == 0) {
          continue;
        }
        glyph = (glyph + u16(font, deltas + 2 * s)) & 0xFFFF;
        int width = u16(font, hmtx + 4 * Math.min(glyph, counted - 1));
        ems[c] = (float) width / unitsPerEm;
      }
    }
  }

  /** Reads a font from the class path. */
  static FontWidths ofResource(String resource) {
    try (InputStream in = FontWidths.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("font " + resource + " is not on the class path");
      }
      return new FontWidths(ByteBuffer.wrap(in.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException("font " + resource + " cannot be read", e);
    }
  }

  /** The width of a character in parts of the em; 0 where the font has none. */
  float em(int codePoint) {
    return codePoint < PLANE ? ems[codePoint] : 0;
  }

  private static int formatFour(ByteBuffer font, int cmap) {
    int count = u16(font, cmap + 2);
    for (int i = 0; i < count; i++) {
      int at = cmap + font.getInt(cmap + 8 + 8 * i);
      if (u16(font, at) == 4) {
        return at;
      }
    }
    throw new IllegalStateException("the font has no character map of format 4");
  }

  private static int table(ByteBuffer font, String tag) {
    int count = u16(font, 4);
    for (int i = 0; i < count; i++) {
      int at = FIRST_TABLE + TABLE_ENTRY * i;
      boolean same = true;
      for (int k = 0; k < 4; k++) {
        same &= font.get(at + k) == tag.charAt(k);
      }
      if (same) {
        return font.getInt(at + 8);
      }
    }
    throw new IllegalStateException("the font has no table " + tag);
  }

  private static int u16(ByteBuffer font, int at) {
    return font.getShort(at) & 0xFFFF;
  }
}
