package padwright;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import padwright.cli.Main;

/** Reads the repository's own pages: their command lines, what they say is printed, their links. */
final class Documents {
  private static final Pattern FENCE = Pattern.compile("(?ms)^ *```(\\w*)\\n(.*?)^ *```");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  private Documents() {}

  /** A fenced block and its language. */
  record Block(String language, String text) {}

  /** A command line as shown, and what the page says it prints; empty where it says nothing. */
  record Shown(String line, List<String> words, String prints) {}

  record Said(int status, String out, String err) {}

  /** Every page of the repository; built files are not pages. */
  static List<Path> pages() throws IOException {
    List<Path> pages = new ArrayList<>();
    for (String folder : List.of(".", "docs", "patterns", "shared", "demo")) {
      try (Stream<Path> files = Files.walk(Path.of(folder), folder.equals(".") ? 1 : 5)) {
        files.filter(f -> f.toString().endsWith(".md")).map(Path::normalize).forEach(pages::add);
      }
    }
    return pages.stream().distinct().sorted().toList();
  }

  static List<Block> blocks(Path page) throws IOException {
    List<Block> blocks = new ArrayList<>();
    Matcher m = FENCE.matcher(Files.readString(page));
    while (m.find()) {
      blocks.add(new Block(m.group(1), m.group(2)));
    }
    return blocks;
  }

  /** The program's command lines of a page, each with the text block right after it. */
  static List<Shown> commands(Path page) throws IOException {
    List<Block> blocks = blocks(page);
    List<Shown> shown = new ArrayList<>();
    for (int i = 0; i < blocks.size(); i++) {
      if (!blocks.get(i).language().equals("sh")) {
        continue;
      }
      boolean prints = i + 1 < blocks.size() && blocks.get(i + 1).language().equals("text");
      String after = prints ? blocks.get(i + 1).text() : "";
      for (String line : blocks.get(i).text().lines().flatMap(Documents::calls).toList()) {
        shown.add(new Shown(line, words(line), after));
      }
    }
    return shown;
  }

  /** What of a shell line calls the program, without the program's own name. */
  private static Stream<String> calls(String line) {
    return Stream.of(line.split("&&"))
        .map(String::strip)
        .filter(c -> c.startsWith("padwright ") || c.startsWith("target/padwright "))
        .map(c -> c.replaceFirst("^(target/)?padwright ", ""));
  }

  private static List<String> words(String line) {
    List<String> words = new ArrayList<>();
    Matcher m = WORD.matcher(line);
    while (m.find()) {
      words.add(m.group(1) != null ? m.group(1) : m.group(2));
    }
    return words;
  }

  /**
   * Runs a command as shown. Files of the repository are read where they are; all others are in
   * {@code folder}, and so is what {@code >} sends there. What is said names them as shown.
   */
  static Said run(Shown shown, Path folder) throws IOException {
    List<String> args = new ArrayList<>();
    Path sentTo = null;
    List<String> words = shown.words();
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      boolean out = i > 0 && words.get(i - 1).equals("--out");
      if (word.equals(">")) {
        sentTo = folder.resolve(words.get(++i));
      } else if (out || word.endsWith(".json") && !Files.exists(Path.of(word))) {
        args.add(folder.resolve(word).toString());
      } else {
        args.add(word);
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        Main.run(
            args.toArray(String[]::new),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            new ByteArrayInputStream(new byte[0]));
    if (sentTo != null) {
      Files.write(sentTo, out.toByteArray());
    }
    String prefix = folder + "/";
    return new Said(
        status,
        out.toString(StandardCharsets.UTF_8).replace(prefix, ""),
        err.toString(StandardCharsets.UTF_8).replace(prefix, ""));
  }
}
