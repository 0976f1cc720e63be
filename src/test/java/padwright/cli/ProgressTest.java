package padwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private Progress progress(boolean terminal, boolean always, long... clock) {
    PrintStream said = new PrintStream(err, true, StandardCharsets.UTF_8);
    PrintStream none =
        new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    Streams streams = new Streams(none, said, InputStream.nullInputStream(), terminal);
    int[] at = {0};
    return new Progress(streams, 9, always, () -> clock[at[0]++] * 1_000_000L);
  }

  private String said() {
    return err.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
  }

  @Test
  void nothingIsSaidInTheFirstSecond() {
    Progress p = progress(true, true, 0, 400, 999);
    p.done(1);
    p.done(2);
    p.end();
    assertThat(said()).isEmpty();
  }

  @Test
  void longWorkIsSaidHalfASecondApart() {
    Progress p = progress(false, true, 0, 1000, 1400, 1500);
    p.done(1);
    p.done(2);
    p.done(3);
    p.end();
    assertThat(said()).isEqualTo("1 of 9 parts drawn\n3 of 9 parts drawn\n");
  }

  @Test
  void oneLineIsWrittenOverOnATerminal() {
    Progress p = progress(true, false, 0, 1000, 2000);
    p.done(1);
    p.done(2);
    p.end();
    assertThat(said()).isEqualTo("\r1 of 9 parts drawn\r2 of 9 parts drawn\n");
  }

  @Test
  void awayFromATerminalNothingIsSaidUnlessAsked() {
    Progress p = progress(false, false, 0, 5000);
    p.done(1);
    p.end();
    assertThat(said()).isEmpty();
  }
}
