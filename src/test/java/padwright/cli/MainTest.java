package padwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
  @Test
  void helpNamesEveryCommandAndTheExitStatuses() {
    Cli.Said said = Cli.run("--help");
    assertThat(said.status()).isZero();
    assertThat(said.err()).isEmpty();
    assertThat(said.out())
        .contains("new ", "fit ", "check ", "figures ", "draft ", "catalogue ", "Exit status");
  }

  @ParameterizedTest
  @ValueSource(strings = {"new", "fit", "check", "figures", "draft", "catalogue"})
  void helpOfEachCommandHasAnExampleOfIt(String command) {
    Cli.Said said = Cli.run(command, "--help");
    assertThat(said.status()).isZero();
    assertThat(said.out()).startsWith("Usage: padwright " + command);
    assertThat(said.out()).containsPattern("Example:\\s+padwright " + command);
  }

  @Test
  void versionIsSaid() {
    Cli.Said said = Cli.run("--version");
    assertThat(said.status()).isZero();
    assertThat(said.out()).startsWith("Padwright ");
  }

  @Test
  void withoutCommandTheCommandsAreNamed() {
    Cli.Said said = Cli.run();
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains("new, outline, fit, check, figures, draft, catalogue or desk");
  }

  @Test
  void commandThatIsNoneIsRefusedWithTheNearest() {
    Cli.Said said = Cli.run("figure", Cli.DEMO);
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains("padwright figures");
  }

  @Test
  void optionThatIsNoneIsRefusedWithTheHelpToLookAt() {
    Cli.Said said = Cli.run("figures", Cli.DEMO, "--jsno");
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.err()).contains("--jsno", "padwright figures --help");
  }

  @Test
  void faultIsOneSentenceAndTheDetailsAreInAFile() throws IOException {
    InputStream broken =
        new InputStream() {
          @Override
          public int read() {
            throw new IllegalStateException("the spring broke");
          }
        };
    Cli.Said said = Cli.reading(broken, "new", "forearm-rest", "--ask");
    assertThat(said.status()).isEqualTo(4);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains("A fault in the program", "the spring broke");
    assertThat(said.err()).doesNotContain("\tat ");
    Matcher file = Pattern.compile("The details are in (.+)\\.\\R").matcher(said.err());
    assertThat(file.find()).isTrue();
    Path details = Path.of(file.group(1));
    assertThat(Files.readString(details)).contains("IllegalStateException", "\tat ");
    Files.delete(details);
  }

  @Test
  void outputThatCannotBeWrittenIsSaid() {
    PrintStream full =
        new PrintStream(
            new OutputStream() {
              @Override
              public void write(int b) throws IOException {
                throw new IOException("no space left");
              }
            },
            true,
            StandardCharsets.UTF_8);
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        Main.run(
            new String[] {"catalogue", "papers"},
            full,
            new PrintStream(err, true, StandardCharsets.UTF_8),
            new ByteArrayInputStream(new byte[0]));
    assertThat(status).isEqualTo(3);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("standard output");
  }
}
