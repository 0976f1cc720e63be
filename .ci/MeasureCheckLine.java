import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Measures the 100 mm check lines of a page on its raster, knowing nothing of the program that drew
 * it: looks for the lowest level line and the rightmost upright line of about 100 mm with a short
 * stroke across each end, and measures from stroke to stroke. Run it with a PGM file and its dots
 * an inch; it leaves with 1 where a line is missing or more than 0.1 mm off.
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
  private final int offset;
  private final double dotsPerMm;
  private final boolean turned;

  private MeasureCheckLine(
      int width, int height, byte[] pixels, int offset, double dotsPerMm, boolean turned) {
    this.width = width;
    this.height = height;
    this.pixels = pixels;
    this.offset = offset;
    this.dotsPerMm = dotsPerMm;
    this.turned = turned;
  }

  public static void main(String[] args) throws IOException {
    byte[] file = Files.readAllBytes(Path.of(args[0]));
    int[] at = {0};
    if (!word(file, at).equals("P5")) {
      throw new IOException(args[0] + " is not a binary PGM file");
    }
    int w = Integer.parseInt(word(file, at));
    int h = Integer.parseInt(word(file, at));
    if (!word(file, at).equals("255")) {
      throw new IOException(args[0] + " has not 8 bits a pixel");
    }
    double dots = Double.parseDouble(args[1]) / 25.4;
    double level = new MeasureCheckLine(w, h, file, at[0], dots, false).find();
    double upright = new MeasureCheckLine(w, h, file, at[0], dots, true).find();
    System.out.printf(Locale.ROOT, "check lines: level %.3f mm, upright %.3f mm%n", level, upright);
    if (!(Math.abs(level - LENGTH) <= MOST_OFF && Math.abs(upright - LENGTH) <= MOST_OFF)) {
      System.out.printf(Locale.ROOT, "not within %.1f mm of %.0f mm%n", MOST_OFF, LENGTH);
      System.exit(1);
    }
  }

  private static String word(byte[] file, int[] at) {
    while (file[at[0]] == '#' || Character.isWhitespace(file[at[0]])) {
      if (file[at[0]] == '#') {
        while (file[at[0]] != '\n') {
          at[0]++;
        }
      }
      at[0]++;
    }
    int from = at[0];
    while (!Character.isWhitespace(file[at[0]])) {
      at[0]++;
    }
    return new String(file, from, at[0]++ - from, java.nio.charset.StandardCharsets.US_ASCII);
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
    return 1 - (pixels[offset + at] & 0xff) / 255.0;
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
