import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.util.Locale;

/**
 * Measures the 100 mm check lines of a page on its raster, knowing nothing of the program that drew
 * it: looks for the lowest level line and the rightmost upright line of about 100 mm with a short
 * stroke across each end, and measures from stroke to stroke. Run it with the dots an inch and the
 * pages, one PGM after the other, on standard input; it leaves with 1 where a page lacks a line or
 * one is more than 0.1 mm off.
 */
public final class MeasureCheckLine {
  private static final double LENGTH = 100;
  private static final double MOST_OFF = 0.1;

  /** Where to look for a line: far beyond what is allowed, so that a false one is found. */
  private static final double SEARCH = 4;

  /** Beside the line, where only the end strokes are, mm: their half length is 1.2. */
  private static final double BESIDE = 0.7;

  private final int width;
  private final int height;
  private final byte[] pixels;
  private final double dotsPerMm;
  private final boolean turned;

  private MeasureCheckLine(
      int width, int height, byte[] pixels, double dotsPerMm, boolean turned) {
    this.width = width;
    this.height = height;
    this.pixels = pixels;
    this.dotsPerMm = dotsPerMm;
    this.turned = turned;
  }

  public static void main(String[] args) throws IOException {
    double dots = Double.parseDouble(args[0]) / 25.4;
    int pages = 0;
    int wrong = 0;
    double worst = 0;
    try (DataInputStream in = new DataInputStream(new BufferedInputStream(System.in))) {
      for (int first = in.read(); first >= 0; first = in.read()) {
        pages++;
        MeasureCheckLine page = read(first, in, dots, false);
        double level = page.find();
        double upright =
            new MeasureCheckLine(page.width, page.height, page.pixels, dots, true).find();
        double off = Math.max(Math.abs(level - LENGTH), Math.abs(upright - LENGTH));
        if (off <= MOST_OFF) {
          worst = Math.max(worst, off);
        } else { // also where there is no line: its length is not a number
          wrong++;
          System.out.printf(
              Locale.ROOT,
              "page %d: level %.3f mm, upright %.3f mm, not within %.1f of %.0f%n",
              pages,
              level,
              upright,
              MOST_OFF,
              LENGTH);
        }
      }
    }
    System.out.printf(
        Locale.ROOT, "check lines of %d pages, at most %.3f mm off%n", pages, worst);
    if (wrong > 0 || pages == 0) {
      System.exit(1);
    }
  }

  private static MeasureCheckLine read(int first, DataInputStream in, double dots, boolean turned)
      throws IOException {
    String kind = (char) first + word(in);
    if (!kind.equals("P5")) {
      throw new IOException("not a binary PGM page: " + kind);
    }
    int w = Integer.parseInt(word(in));
    int h = Integer.parseInt(word(in));
    if (!word(in).equals("255")) {
      throw new IOException("a page has not 8 bits a pixel");
    }
    byte[] pixels = new byte[w * h];
    in.readFully(pixels);
    return new MeasureCheckLine(w, h, pixels, dots, turned);
  }

  /** The next word of a header and the one space after it. */
  private static String word(DataInputStream in) throws IOException {
    int c = in.readUnsignedByte();
    while (c == '#' || Character.isWhitespace(c)) {
      while (c == '#' && in.readUnsignedByte() != '\n') {
        // the rest of a comment
      }
      c = in.readUnsignedByte();
    }
    StringBuilder word = new StringBuilder();
    while (!Character.isWhitespace(c)) {
      word.append((char) c);
      c = in.readUnsignedByte();
    }
    return word.toString();
  }

  /** How far along a line one can go, and how many lines there are. */
  private int along() {
    return turned ? height : width;
  }

  private int lines() {
    return turned ? width : height;
  }

  /** 0 = white, 1 = black. */
  private double ink(int x, int line) {
    int at = turned ? x * width + line : line * width + x;
    return 1 - (pixels[at] & 0xff) / 255.0;
  }

  /** The length of the last line found, mm; NaN where there is none. */
  private double find() {
    for (int line = lines() - 1; line >= 0; line--) {
      int from = 0;
      for (int x = 0; x <= along(); x++) {
        if (x < along() && ink(x, line) > 0.5) {
          continue;
        }
        double mm = (x - from) / dotsPerMm;
        if (Math.abs(mm - LENGTH) < SEARCH) {
          double length = betweenStrokes(from, x, line);
          if (!Double.isNaN(length)) {
            return length;
          }
        }
        from = x + 1;
      }
    }
    return Double.NaN;
  }

  private double betweenStrokes(int from, int to, int line) {
    int beside = (int) Math.round(BESIDE * dotsPerMm);
    double sum = 0;
    for (int side = -beside; side <= beside; side += 2 * beside) {
      double first = stroke(from, line + side);
      double last = stroke(to, line + side);
      sum += last - first;
    }
    return sum / 2 / dotsPerMm;
  }

  /** The middle of the ink near {@code x}; NaN where there is no stroke. */
  private double stroke(int x, int line) {
    if (line < 0 || line >= lines()) {
      return Double.NaN;
    }
    int reach = (int) Math.round(0.6 * dotsPerMm);
    double ink = 0;
    double moment = 0;
    for (int i = Math.max(0, x - reach); i < Math.min(along(), x + reach); i++) {
      ink += ink(i, line);
      moment += ink(i, line) * (i + 0.5);
    }
    return ink < 1 ? Double.NaN : moment / ink;
  }
}
