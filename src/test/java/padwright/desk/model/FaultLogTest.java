package padwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Faults are written down with their trace, and the log does not grow for ever. */
class FaultLogTest {
  @TempDir Path folder;

  @Test
  void eachFaultIsAddedWithItsTrace() {
    FaultLog log = new FaultLog(folder.resolve("new"));
    log.add(new IllegalStateException("first"));
    log.add(new IllegalStateException("second"));
    assertThat(log.file())
        .content()
        .contains("first", "second", "FaultLogTest.eachFaultIsAddedWithItsTrace");
  }

  @Test
  void aLogPastAMillionBytesBeginsAnew() throws IOException {
    FaultLog log = new FaultLog(folder);
    Files.writeString(log.file(), "x".repeat(1_000_001));
    log.add(new IllegalStateException("latest"));
    assertThat(log.file()).content().doesNotContain("xx").contains("latest");
  }

  @Test
  void aLogThatCannotBeWrittenIsSaidOnStandardError() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "kept");
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream before = System.err;
    System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
    try {
      new FaultLog(file).add(new IllegalStateException("nowhere"));
    } finally {
      System.setErr(before);
    }
    assertThat(said.toString(StandardCharsets.UTF_8)).contains("nowhere");
    assertThat(file).hasContent("kept");
  }
}
