package padwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padwright.Documents.Block;
import padwright.Documents.Said;
import padwright.Documents.Shown;

/**
 * What the pages of the repository say is so: commands, what they print, rules, links, pictures.
 */
class DocsTest {
  private static final Path README = Path.of("README.md");
  private static final Path GUIDE = Path.of("docs/guide.md");
  private static final Path PICTURES = Path.of("docs/pictures");
  private static final String LEFT_OUT = "...";

  /** Each picture, and the drawing of the demo that {@code .ci/pictures} makes it from. */
  private static final Map<String, String> DRAWN_FROM =
      Map.of(
          "forearm-rest-section.svg", "desk-rest/section.svg",
          "forearm-rest-cover.svg", "desk-rest/cover.svg",
          "forearm-rest-corner.svg", "desk-rest/corner-mitred-end.svg",
          "stool-top-base.svg", "stool-top/base.svg",
          "corner-bench-wrap-map.svg", "corner-bench/wrap-map.svg");

  /** Screens of the workbench, which {@code .ci/screens} draws. */
  private static final List<String> SCREENS =
      List.of("desk-rest.png", "desk-bench.png", "desk-plan.png");

  private static final Pattern RULE =
      Pattern.compile("Finding\\.(?:of|plain)\\(\\s*\"([^\"]+)\",\\s*([^,\"]+),");
  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| `([a-z-]+)` \\| ((?:stop|caution|note)[a-z ]*) \\|");
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");

  /** A folder at the root of somebody's machine. */
  private static final Pattern MACHINE_PATH =
      Pattern.compile("(?<![\\w.)/<])/(?:home|root|Users|usr|opt|var|tmp|work|mnt|srv)\\b");

  private static final Pattern REGISTRY =
      Pattern.compile("(?i)\\b(?:repo\\d*|registry|proxy|mirror|index|nexus)\\.[\\w-]+\\.\\w+");

  @ParameterizedTest
  @ValueSource(strings = {"README.md", "docs/guide.md"})
  void everyCommandShownDoesWhatThePageSays(String page, @TempDir Path folder) throws IOException {
    List<Shown> commands = Documents.commands(Path.of(page));
    assertThat(commands).hasSizeGreaterThan(2);
    for (Shown shown : commands) {
      Said said = Documents.run(shown, folder);
      assertThat(said.status()).as("%s: %s%n%s", page, shown.line(), said.err()).isZero();
      holdsInOrder(page, shown, said.out());
    }
  }

  /** Lines of a quoted text come in its order; those between are left out only where it says so. */
  private static void holdsInOrder(String page, Shown shown, String printed) {
    List<String> lines = printed.lines().map(String::stripTrailing).toList();
    int at = -1;
    boolean gap = true;
    for (String line : shown.prints().lines().map(String::stripTrailing).toList()) {
      if (line.equals(LEFT_OUT)) {
        gap = true;
        continue;
      }
      int next = lines.subList(at + 1, lines.size()).indexOf(line);
      assertThat(next)
          .as("%s, %s: is not printed here: %s%nbut%n%s", page, shown.line(), line, printed)
          .isNotNegative();
      assertThat(gap || next == 0)
          .as("%s, %s: lines are missing before: %s", page, shown.line(), line)
          .isTrue();
      at += next + 1;
      gap = false;
    }
  }

  @Test
  void theReadmeHasExactlyTwoCommandsForAFreshMachine() throws IOException {
    String text = Files.readString(README);
    int from = text.indexOf("## Two commands");
    int to = text.indexOf("\n## ", from + 1);
    assertThat(from).isPositive();
    List<String> lines =
        Documents.blocks(README).stream()
            .filter(b -> b.language().equals("sh"))
            .map(Block::text)
            .filter(b -> text.indexOf(b) > from && text.indexOf(b) < to)
            .flatMap(String::lines)
            .toList();
    assertThat(lines)
        .containsExactly(
            "mvn -q package -DskipTests && target/padwright draft demo/reading-nook.json --out out",
            "mvn -B verify");
  }

  @Test
  void theReadmeShowsTheDemosOwnPart() throws IOException {
    String job =
        Documents.blocks(README).stream()
            .filter(b -> b.language().equals("json"))
            .map(Block::text)
            .findFirst()
            .orElseThrow();
    String demo = Files.readString(Path.of("demo/reading-nook.json"));
    assertThat(demo.replaceAll("\\s", "")).contains(job.replaceAll("\\s", ""));
  }

  @Test
  void theGuidesTableHasEveryRuleOfTheCodeWithItsLevels() throws IOException {
    Map<String, String> coded = new TreeMap<>();
    int made = 0;
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        String text = Files.readString(file);
        RULE.matcher(text).results().forEach(m -> coded.put(m.group(1), levels(m.group(2))));
        made += (int) Pattern.compile("Finding\\.(?:of|plain)\\(").matcher(text).results().count();
      }
    }
    assertThat(coded).as("no finding is made in a way that is not seen here").hasSize(made);
    Map<String, String> told = new TreeMap<>();
    for (MatchResult m : ROW.matcher(Files.readString(GUIDE)).results().toList()) {
      assertThat(told.put(m.group(1), levels(m.group(2)))).as(m.group(1)).isNull();
    }
    assertThat(told).isEqualTo(coded);
  }

  private static String levels(String text) {
    Matcher m = Pattern.compile("stop|caution|note").matcher(text.toLowerCase(Locale.ROOT));
    return String.join(" ", new TreeSet<>(m.results().map(MatchResult::group).toList()));
  }

  @TestFactory
  Stream<DynamicTest> everyLinkLeadsSomewhere() throws IOException {
    return Documents.pages().stream()
        .map(p -> DynamicTest.dynamicTest(p.toString(), () -> linksResolve(p)));
  }

  private static void linksResolve(Path page) throws IOException {
    Path home = page.toAbsolutePath().getParent();
    for (MatchResult m : LINK.matcher(Files.readString(page)).results().toList()) {
      String link = m.group(1);
      if (link.matches("[a-z]+:.*")) {
        continue;
      }
      String[] parts = link.split("#", 2);
      Path target = parts[0].isEmpty() ? page.toAbsolutePath() : home.resolve(parts[0]);
      assertThat(target).as("%s links to %s", page, link).exists();
      if (parts.length == 2) {
        assertThat(anchors(target)).as("%s links to %s", page, link).contains(parts[1]);
      }
    }
  }

  private static List<String> anchors(Path page) throws IOException {
    return Files.readString(page)
        .lines()
        .filter(l -> l.startsWith("#"))
        .map(l -> l.replaceFirst("^#+ ", "").toLowerCase(Locale.ROOT))
        .map(l -> l.replaceAll("[^a-z0-9 -]", "").replace(' ', '-'))
        .toList();
  }

  @TestFactory
  Stream<DynamicTest> noPageNamesAMachineOrARegistry() throws IOException {
    List<Path> pages = new ArrayList<>(Documents.pages());
    try (Stream<Path> pictures = Files.list(PICTURES)) {
      pictures.filter(p -> p.toString().endsWith(".svg")).forEach(pages::add);
    }
    return pages.stream()
        .map(
            p ->
                DynamicTest.dynamicTest(
                    p.toString(),
                    () ->
                        assertThat(Files.readString(p))
                            .doesNotContainPattern(MACHINE_PATH)
                            .doesNotContainPattern(REGISTRY)));
  }

  @Test
  void everyDecisionIsListedAndSaysWhatWouldReverseIt() throws IOException {
    Path folder = Path.of("docs/decisions");
    String list = Files.readString(folder.resolve("README.md"));
    List<Path> pages =
        Documents.pages().stream()
            .filter(p -> p.startsWith(folder) && !p.endsWith("README.md"))
            .toList();
    assertThat(pages).isNotEmpty();
    for (Path page : pages) {
      assertThat(page.getFileName().toString()).matches("\\d{4}-[a-z-]+\\.md");
      assertThat(list).contains("(" + page.getFileName() + ")");
      assertThat(Files.readString(page))
          .contains("**Context.**", "**Decision.**", "**Why.**", "**What would reverse it.**");
    }
  }

  /** What a picture says is what the program says now; where a label stands may have moved. */
  @Test
  void thePicturesSayWhatTheProgramDraws(@TempDir Path folder) throws IOException {
    String line = "draft demo/reading-nook.json --out drawn --svg-only --date 2026-03-07";
    Said said = Documents.run(new Shown(line, List.of(line.split(" ")), ""), folder);
    assertThat(said.status()).as(said.err()).isZero();
    try (Stream<Path> pictures = Files.list(PICTURES)) {
      List<String> names = new ArrayList<>(DRAWN_FROM.keySet());
      names.addAll(SCREENS);
      assertThat(pictures.map(p -> p.getFileName().toString()).toList())
          .containsExactlyInAnyOrderElementsOf(names);
    }
    assertThat(Files.readString(Path.of(".ci/screens"))).contains(SCREENS);
    for (Map.Entry<String, String> e : DRAWN_FROM.entrySet()) {
      assertThat(Files.readString(Path.of(".ci/pictures"))).contains(e.getKey(), e.getValue());
      assertThat(words(PICTURES.resolve(e.getKey())))
          .as("draw %s again with .ci/pictures", e.getKey())
          .isNotEmpty()
          .isEqualTo(words(folder.resolve("drawn").resolve(e.getValue())));
    }
  }

  private static List<String> words(Path svg) throws IOException {
    return Pattern.compile(">([^<>]*\\S[^<>]*)<")
        .matcher(Files.readString(svg))
        .results()
        .map(m -> m.group(1))
        .sorted()
        .toList();
  }
}
