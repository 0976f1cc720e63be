package padwright.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import padwright.measure.InputRefused;
import padwright.measure.LengthUnit;

/**
 * Reads a drawn outline from an SVG or an ASCII DXF file; which of them it is, its first characters
 * say. Only the bytes of the file itself are read; {@link DrawingLimits} says how much of it.
 *
 * <p>Refused with {@link InputRefused}: what is over a limit or cut off, what holds scripts, event
 * handlers, entities or links out of the file, and a drawing without one closed outline that goes
 * round once. Left, and named in the report: everything else that is no outline.
 */
public final class DrawingReader {
  private static final String BINARY_DXF = "AutoCAD Binary DXF";

  private DrawingReader() {}

  /**
   * Reads a file.
   *
   * @param plain the unit of plain numbers, used only where the file names none
   */
  public static DrawnOutline read(Path file, Optional<LengthUnit> plain) {
    String name = file.toString();
    if (!Files.exists(file)) {
      throw refuse(name, "there is no such file", "Check the name and the folder");
    }
    if (!Files.isRegularFile(file)) {
      throw refuse(name, "this is not a file", "Give the name of an SVG or DXF file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(DrawingLimits.MOST_BYTES + 1);
      return read(name, bytes, plain, System::nanoTime);
    } catch (IOException e) {
      throw refuse(name, "the file cannot be read", "Check that you may read it");
    }
  }

  /** Reads a drawing that is in memory; {@code name} stands for the file in refusals. */
  public static DrawnOutline read(String name, byte[] bytes, Optional<LengthUnit> plain) {
    return read(name, bytes, plain, System::nanoTime);
  }

  static DrawnOutline read(
      String name, byte[] bytes, Optional<LengthUnit> plain, LongSupplier clock) {
    if (bytes.length > DrawingLimits.MOST_BYTES) {
      throw refuse(
          name,
          "the file is larger than " + DrawingLimits.MOST_BYTES / (1024 * 1024) + " MB",
          "Save the outline alone in a file of its own");
    }
    Budget budget = new Budget(name, clock);
    Tally tally = new Tally();
    Assembly assembly = new Assembly(budget, tally);
    String head = head(bytes);
    if (head.startsWith("<")) {
      SvgReader svg = new SvgReader(budget, tally, plain);
      List<Chain> chains = svg.read(bytes);
      return assembly.outline(chains, "SVG", svg.scale(), svg.notes());
    }
    String text = dxf(name, bytes, head);
    DxfReader dxf = new DxfReader(budget, tally, plain);
    List<Chain> chains = dxf.read(text);
    return assembly.outline(chains, "DXF", dxf.scale(), List.of());
  }

  /** The first characters, without byte order marks, zeros and spaces. */
  private static String head(byte[] bytes) {
    int most = Math.min(bytes.length, 64);
    String start = new String(bytes, 0, most, StandardCharsets.ISO_8859_1);
    return start.replaceFirst("^[\\u00ef\\u00bb\\u00bf\\u00fe\\u00ff\\u0000\\s]+", "");
  }

  private static String dxf(String name, byte[] bytes, String head) {
    if (head.startsWith(BINARY_DXF)) {
      throw refuse(name, "this is a binary DXF file", "Save the drawing as ASCII DXF");
    }
    for (byte b : bytes) {
      if (b == 0) {
        throw refuse(
            name,
            "this is no text, so neither SVG nor DXF",
            "Save the drawing as SVG or ASCII DXF");
      }
    }
    if (!head.matches("(?s)(0\\s+SECTION|999\\s).*")) {
      throw refuse(name, "this is neither SVG nor DXF", "Save the drawing as SVG or ASCII DXF");
    }
    // Names of layers are all that may be outside ASCII; they are only shown.
    return new String(bytes, StandardCharsets.UTF_8);
  }

  private static InputRefused refuse(String name, String problem, String remedy) {
    return new InputRefused(name, 0, "", problem, remedy);
  }
}
