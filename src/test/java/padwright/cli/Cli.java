package padwright.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Runs the program in this process and keeps what it says. */
final class Cli {
  static final String DEMO = "demo/reading-nook.json";

  private Cli() {}

  record Said(int status, String out, String err) {}

  static Said run(String... args) {
    return answering("", args);
  }

  /** With {@code input} piped in. */
  static Said answering(String input, String... args) {
    return reading(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)), args);
  }

  static Said reading(InputStream in, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream printOut = new PrintStream(out, true, StandardCharsets.UTF_8);
    PrintStream printErr = new PrintStream(err, true, StandardCharsets.UTF_8);
    int status = Main.run(args, printOut, printErr, in);
    printOut.flush();
    printErr.flush();
    return new Said(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /**
   * A job of one forearm rest, 600 x 60, edge rounded to 6, turn-under 20, covering 1.0 thick.
   *
   * @param board thickness of birch plywood
   * @param leg of its staples
   */
  static String rest(double board, double leg) {
    return """
        { "format": "padwright-job", "version": 1, "title": "Desk", "units": "mm",
          "parts": [ { "id": "rest", "name": "Rest", "build": "wrapped", "kind": "forearm rest",
            "base": { "outline": { "rectangle": { "length": 600, "width": 60 } }, "size": "board",
              "board": "birch-plywood", "thickness": %s },
            "foam": [ { "foam": "firm", "thickness": 24, "overhang": 0 } ],
            "edge": { "round": 6 },
            "cover": { "covering": "knit-backed-vinyl", "thickness": 1, "turnUnder": 20 },
            "staples": { "leg": %s } } ] }
        """
        .formatted(board, leg);
  }

  static String write(Path file, String text) throws IOException {
    Files.writeString(file, text);
    return file.toString();
  }

  /** Every file and folder below {@code root}, hidden ones too, with its contents. */
  static Map<String, String> contents(Path root) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(root)) {
      for (Path p : paths.toList()) {
        String name = root.relativize(p).toString();
        all.put(
            name,
            Files.isDirectory(p)
                ? "folder"
                : new String(Files.readAllBytes(p), StandardCharsets.ISO_8859_1));
      }
    }
    return all;
  }
}
