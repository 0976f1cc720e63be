package padwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file {@code padwright} that starts the jar, with a Java of its own that only says how. */
class StarterTest {
  private static final String FAKE_JAVA =
      "#!/bin/sh\nfor a in \"$@\"; do echo \"<$a>\"; done\nexit 3\n";

  @TempDir private Path temp;
  private Path folder;

  @BeforeEach
  void copied() throws IOException {
    assumeTrue(
        temp.getFileSystem().supportedFileAttributeViews().contains("posix"),
        "skipped: no shell of the Unix kind here");
    folder = Files.createDirectories(temp.resolve("a work shop"));
    Files.copy(Path.of("src/main/starters/padwright"), folder.resolve("padwright"));
    executable(folder.resolve("padwright"));
    Path bin = Files.createDirectories(temp.resolve("java home/bin"));
    Files.writeString(bin.resolve("java"), FAKE_JAVA);
    executable(bin.resolve("java"));
  }

  @Test
  void passesEveryWordAndTheExitStatusOn() throws Exception {
    built();
    Run run = start(folder.resolve("padwright"), "figures", "my desk.json", "--json");
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out())
        .containsSubsequence(
            "-jar>",
            folder.toRealPath().resolve("padwright.jar") + ">",
            "<figures>",
            "<my desk.json>",
            "<--json>");
  }

  @Test
  void isFoundThroughALinkOnTheWayToPrograms() throws Exception {
    built();
    Path link = Files.createDirectories(temp.resolve("links")).resolve("padwright");
    Files.createSymbolicLink(link, Path.of("../a work shop/padwright"));
    assertThat(start(link, "check").out())
        .contains(folder.toRealPath().resolve("padwright.jar") + ">");
  }

  @Test
  void saysWhatToDoBeforeTheJarIsBuilt() throws Exception {
    Run run = start(folder.resolve("padwright"), "check");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).contains("Refused:", "padwright.jar", "mvn -q package -DskipTests");
  }

  @Test
  void theOneForWindowsStartsTheSameWay() throws IOException {
    String unix = Files.readString(Path.of("src/main/starters/padwright"));
    String windows = Files.readString(Path.of("src/main/starters/padwright.cmd"));
    assertThat(options(windows)).isNotEmpty().isEqualTo(options(unix));
    assertThat(windows.lines().count()).isGreaterThan(1);
    assertThat(windows.replace("\r\n", "")).as("line ends of Windows").doesNotContain("\n");
  }

  private static List<String> options(String script) {
    List<String> options = new ArrayList<>();
    for (String word : script.split("[ \r\n]+")) {
      if (word.startsWith("-XX:") || word.startsWith("-Xm")) {
        options.add(word);
      }
    }
    return options;
  }

  private void built() throws IOException {
    Files.writeString(folder.resolve("padwright.jar"), "");
  }

  private static void executable(Path file) {
    assertThat(file.toFile().setExecutable(true)).isTrue();
  }

  private record Run(int status, String out) {}

  private Run start(Path starter, String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of(starter.toString()));
    command.addAll(List.of(words));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("JAVA_HOME", temp.resolve("java home").toString());
    Process process = builder.start();
    try (InputStream out = process.getInputStream()) {
      String said = new String(out.readAllBytes(), StandardCharsets.UTF_8);
      return new Run(process.waitFor(), said);
    }
  }
}
