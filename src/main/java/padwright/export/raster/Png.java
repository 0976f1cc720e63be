package padwright.export.raster;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Writes dots as a PNG file, by ISO/IEC 15948: eight bits a sample, with opacity only where a dot
 * is not opaque. Rows are filtered by the one above, which drawings repeat.
 */
public final class Png {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final byte DEPTH = 8;
  private static final byte RGB = 2;
  private static final byte RGB_AND_ALPHA = 6;
  private static final byte FILTER_UP = 2;
  private static final int OPAQUE = 0xFF;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private Png() {}

  /** The whole file. */
  public static byte[] of(Pixels pixels) {
    return new Png().file(pixels);
  }

  private byte[] file(Pixels p) {
    boolean opaque = true;
    for (int dot : p.argb()) {
      opaque &= dot >>> 24 == OPAQUE;
    }
    out.writeBytes(SIGNATURE);
    byte[] head = new byte[13];
    put(head, 0, p.width());
    put(head, 4, p.height());
    head[8] = DEPTH;
    head[9] = opaque ? RGB : RGB_AND_ALPHA;
    chunk("IHDR", head, head.length);
    rows(p, opaque ? 3 : 4);
    chunk("IEND", new byte[0], 0);
    return out.toByteArray();
  }

  private void rows(Pixels p, int samples) {
    Deflater deflater = new Deflater();
    try {
      byte[] above = new byte[p.width() * samples];
      byte[] row = new byte[p.width() * samples];
      byte[] filtered = new byte[row.length + 1];
      filtered[0] = FILTER_UP;
      byte[] packed = new byte[1 << 16];
      for (int y = 0; y < p.height(); y++) {
        for (int x = 0; x < p.width(); x++) {
          int dot = p.argb()[y * p.width() + x];
          int at = x * samples;
          row[at] = (byte) (dot >> 16);
          row[at + 1] = (byte) (dot >> 8);
          row[at + 2] = (byte) dot;
          if (samples == 4) {
            row[at + 3] = (byte) (dot >> 24);
          }
        }
        for (int i = 0; i < row.length; i++) {
          filtered[i + 1] = (byte) (row[i] - above[i]);
        }
        deflater.setInput(filtered);
        while (!deflater.needsInput()) {
          data(packed, deflater.deflate(packed));
        }
        byte[] spare = above;
        above = row;
        row = spare;
      }
      deflater.finish();
      while (!deflater.finished()) {
        data(packed, deflater.deflate(packed));
      }
    } finally {
      deflater.end();
    }
  }

  private void data(byte[] packed, int count) {
    if (count > 0) {
      chunk("IDAT", packed, count);
    }
  }

  private void chunk(String type, byte[] data, int count) {
    byte[] number = new byte[4];
    put(number, 0, count);
    out.writeBytes(number);
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    out.writeBytes(name);
    out.write(data, 0, count);
    CRC32 sum = new CRC32();
    sum.update(name);
    sum.update(data, 0, count);
    put(number, 0, (int) sum.getValue());
    out.writeBytes(number);
  }

  private static void put(byte[] to, int at, int value) {
    for (int i = 0; i < 4; i++) {
      to[at + i] = (byte) (value >> (24 - 8 * i));
    }
  }
}
