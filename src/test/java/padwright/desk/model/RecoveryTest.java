package padwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.desk.edit.Shipped;

/** What was not saved is there after a kill; what another workbench edits is left to it. */
class RecoveryTest {
  @TempDir Path folder;

  /** No process has this number: Linux ends at 4194304, and others well below. */
  private static final long GONE = 99_999_999_999L;

  private static long alive() {
    return ProcessHandle.current().parent().map(ProcessHandle::pid).orElse(1L);
  }

  @Test
  void theJobOfAKilledWorkbenchIsFoundByTheNext() throws IOException {
    Path file = folder.resolve("nook.json");
    new Recovery(folder, GONE).keep(Shipped.demo(), Optional.of(file));
    Recovery next = new Recovery(folder, GONE + 1);
    assertThat(next.left()).hasSize(1);
    Recovery.Left left = next.left().get(0);
    assertThat(left.file()).contains(file.toAbsolutePath());
    assertThat(Shipped.READER.read(left.copy())).isEqualTo(Shipped.demo());
    Recovery.forget(left.copy());
    assertThat(next.left()).isEmpty();
    try (var files = Files.list(folder)) {
      assertThat(files).isEmpty();
    }
  }

  @Test
  void whatWasSavedIsNotOfferedAgain() throws IOException {
    Recovery own = new Recovery(folder, GONE);
    own.keep(Shipped.demo(), Optional.empty());
    own.keep(Shipped.everyField(), Optional.empty());
    own.clear();
    assertThat(new Recovery(folder, GONE + 1).left()).isEmpty();
    try (var files = Files.list(folder)) {
      assertThat(files).isEmpty();
    }
  }

  @Test
  void aWorkbenchThatStillRunsKeepsItsOwn() throws IOException {
    new Recovery(folder, alive()).keep(Shipped.demo(), Optional.empty());
    assertThat(new Recovery(folder, GONE).left()).isEmpty();
    Recovery own = new Recovery(folder, ProcessHandle.current().pid());
    own.keep(Shipped.demo(), Optional.empty());
    assertThat(own.left()).isEmpty();
  }

  /** A machine started anew gives out the same numbers again. */
  @Test
  void aProcessThatBeganLaterIsNotTheOneThatLeftIt() throws IOException {
    Recovery first = new Recovery(folder, alive());
    first.keep(Shipped.demo(), Optional.empty());
    Path copy = folder.resolve("unsaved-" + alive() + ".json");
    Files.setLastModifiedTime(copy, FileTime.from(Instant.parse("2001-01-01T00:00:00Z")));
    assertThat(new Recovery(folder, GONE).left()).hasSize(1);
    // The new process of the same number does not write over it.
    Recovery again = new Recovery(folder, alive());
    again.keep(Shipped.everyField(), Optional.empty());
    assertThat(again.left()).hasSize(1);
    assertThat(Shipped.READER.read(again.left().get(0).copy())).isEqualTo(Shipped.demo());
  }

  @Test
  void theLatestComesFirst() throws IOException {
    for (long n = 0; n < 3; n++) {
      new Recovery(folder, GONE + n).keep(Shipped.demo(), Optional.empty());
      Files.setLastModifiedTime(
          folder.resolve("unsaved-" + (GONE + n) + ".json"),
          FileTime.from(Instant.ofEpochSecond(1_000_000 + (n * 7) % 3)));
    }
    assertThat(new Recovery(folder, GONE + 9).left())
        .extracting(l -> l.at().getEpochSecond())
        .containsExactly(1_000_002L, 1_000_001L, 1_000_000L);
  }

  @Test
  void strangeFilesDoNotHideWhatWasLeft() throws IOException {
    new Recovery(folder, GONE).keep(Shipped.demo(), Optional.empty());
    Files.writeString(folder.resolve("unsaved-" + "9".repeat(40) + ".json"), "{}");
    Files.writeString(folder.resolve("unsaved-x.json"), "{}");
    Files.createDirectories(folder.resolve("unsaved-" + (GONE + 1) + ".json"));
    Files.write(folder.resolve("unsaved-" + GONE + ".json.where"), new byte[] {(byte) 0xff, 0});
    assertThat(new Recovery(folder, GONE + 9).left())
        .extracting(Recovery.Left::file)
        .containsExactly(Optional.empty());
    Files.writeString(folder.resolve("unsaved-" + GONE + ".json.where"), "a\u0000b\n");
    assertThat(new Recovery(folder, GONE + 9).left()).hasSize(1);
    assertThat(new Recovery(folder.resolve("none"), GONE).left()).isEmpty();
  }

  /**
   * Killed, not stopped, while it writes copies as fast as it can: the newest whole one is there.
   */
  @Test
  void aProcessKilledInTheMidstOfItsWorkLeavesAJobThatCanBeRead() throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                DeskToKill.class.getName(),
                folder.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try (BufferedReader said =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      assertThat(said.readLine()).isEqualTo("kept");
    } finally {
      process.destroyForcibly().waitFor();
    }
    Recovery.Left left = new Recovery(folder, GONE).left().get(0);
    assertThat(Shipped.READER.read(left.copy()).parts().get(0).name()).startsWith("Rest number ");
  }
}
