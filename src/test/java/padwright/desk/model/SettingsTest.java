package padwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is remembered between two starts. */
class SettingsTest {
  @TempDir Path folder;

  private Path job(String name) throws IOException {
    return Files.writeString(folder.resolve(name), "{}").toAbsolutePath();
  }

  @Test
  void theJobUsedLastComesFirstAndEachIsThereOnce() throws IOException {
    Path a = job("a.json");
    Path b = job("b größe.json");
    Path c = job("c.json");
    Settings settings = new Settings(folder.resolve("kept"));
    for (Path p : List.of(a, b, c, a, folder.resolve("sub/../b größe.json"))) {
      settings.used(p);
    }
    assertThat(settings.recent()).containsExactly(b, a, c);
    assertThat(new Settings(folder.resolve("kept")).recent()).containsExactly(b, a, c);
    Files.delete(a);
    assertThat(new Settings(folder.resolve("kept")).recent()).containsExactly(b, c);
  }

  @Test
  void tenJobsAreRemembered() throws IOException {
    Settings settings = new Settings(folder.resolve("kept"));
    List<Path> all = new ArrayList<>();
    for (int i = 0; i < 14; i++) {
      all.add(0, job(i + ".json"));
      settings.used(all.get(0));
    }
    assertThat(settings.recent()).isEqualTo(all.subList(0, 10));
  }

  @Test
  void whatWasPutIsThereAtTheNextStart() {
    Settings settings = new Settings(folder.resolve("kept"));
    assertThat(settings.get("look", "light")).isEqualTo("light");
    settings.put("look", "dark");
    assertThat(new Settings(folder.resolve("kept")).get("look", "light")).isEqualTo("dark");
  }

  @Test
  void aSpoiltFileIsAsIfThereWereNone() throws IOException {
    Path file = folder.resolve("desk.properties");
    for (byte[] bytes :
        List.of(
            new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1},
            "job.0=\\u00zz".getBytes(java.nio.charset.StandardCharsets.UTF_8),
            "job.0=\\u0000x\njob.1=\njob.x=1".getBytes(java.nio.charset.StandardCharsets.UTF_8))) {
      Files.write(file, bytes);
      Settings settings = new Settings(folder);
      assertThat(settings.recent()).isEmpty();
      settings.put("look", "dark");
      assertThat(new Settings(folder).get("look", "")).isEqualTo("dark");
    }
  }

  @Test
  void aFolderThatCannotBeMadeCostsNoMoreThanTheMemory() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "x");
    Settings settings = new Settings(file.resolve("below"));
    settings.put("look", "dark");
    assertThat(settings.get("look", "")).isEqualTo("dark");
    assertThat(new Settings(file.resolve("below")).get("look", "light")).isEqualTo("light");
  }
}
