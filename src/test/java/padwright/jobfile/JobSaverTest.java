package padwright.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobSaverTest {
  @TempDir Path folder;

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aNewFileHoldsTheTextAndNothingElseIsLeft() throws IOException {
    JobSaver.save(folder.resolve("job.json"), "caf\u00e9\n");
    assertThat(Files.readString(folder.resolve("job.json"))).isEqualTo("caf\u00e9\n");
    assertThat(names()).containsExactly("job.json");
  }

  @Test
  void theVersionBeforeIsKeptBesideIt() throws IOException {
    Path file = folder.resolve("job.json");
    JobSaver.save(file, "one");
    JobSaver.save(file, "two");
    JobSaver.save(file, "three");
    // Saving the same again must not lose the version before.
    JobSaver.save(file, "three");
    assertThat(Files.readString(file)).isEqualTo("three");
    assertThat(Files.readString(folder.resolve("job.json.previous"))).isEqualTo("two");
    assertThat(names()).containsExactly("job.json", "job.json.previous");
  }

  @Test
  void aSaveThatFailsLeavesTheFileAsItWasAndNothingHalfWritten() throws IOException {
    Path file = folder.resolve("job.json");
    JobSaver.save(file, "one");
    // A folder that is not empty stands where the version before should go.
    Files.createDirectories(folder.resolve("job.json.previous/x"));
    assertThatThrownBy(() -> JobSaver.save(file, "two")).isInstanceOf(IOException.class);
    assertThat(Files.readString(file)).isEqualTo("one");
    assertThat(names()).containsExactly("job.json", "job.json.previous");
  }

  @Test
  void aFolderOrAMissingFolderIsAnErrorThatSaysSo() {
    assertThatThrownBy(() -> JobSaver.save(folder, "x"))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("a folder has this name");
    assertThatThrownBy(() -> JobSaver.save(folder.resolve("no/job.json"), "x"))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("no such folder");
  }

  @Test
  void whatARunThatWasCutOffLeftBehindIsNotInTheWay() throws IOException {
    Path file = folder.resolve("job.json");
    Files.writeString(folder.resolve("job.json.0.part"), "half");
    JobSaver.save(file, "whole");
    assertThat(Files.readString(file)).isEqualTo("whole");
  }

  @Test
  void aLinkStaysALinkToTheFileThatIsSaved() throws IOException {
    Path real = folder.resolve("real.json");
    JobSaver.save(real, "one");
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), real);
    JobSaver.save(link, "two");
    assertThat(link).isSymbolicLink();
    assertThat(Files.readString(real)).isEqualTo("two");
  }

  @Test
  void aReaderNeverSeesHalfAFile() throws Exception {
    Path file = folder.resolve("job.json");
    String a = "a".repeat(200_000);
    String b = "b".repeat(300_000);
    JobSaver.save(file, a);
    AtomicBoolean half = new AtomicBoolean();
    AtomicBoolean done = new AtomicBoolean();
    Thread watcher =
        new Thread(
            () -> {
              while (!done.get()) {
                try {
                  String seen = Files.readString(file);
                  if (!seen.equals(a) && !seen.equals(b)) {
                    half.set(true);
                  }
                } catch (IOException e) {
                  half.set(true);
                }
              }
            });
    watcher.start();
    for (int i = 0; i < 50; i++) {
      JobSaver.save(file, i % 2 == 0 ? b : a);
    }
    done.set(true);
    watcher.join();
    assertThat(half).isFalse();
  }
}
