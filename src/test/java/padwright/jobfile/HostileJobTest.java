package padwright.jobfile;

import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padwright.measure.InputRefused;

class HostileJobTest {
  private final JobReader reader = new JobReader(Materials.small());

  private InputRefused refusal(String text) {
    InputRefused r =
        assertTimeoutPreemptively(
            ofSeconds(10),
            () -> catchThrowableOfType(InputRefused.class, () -> reader.read("bad.json", text)));
    assertThat(r).as("not refused").isNotNull();
    assertThat(r.file()).isEqualTo("bad.json");
    assertThat(r.getMessage().length()).isLessThan(600);
    return r;
  }

  @ParameterizedTest
  @ValueSource(strings = {"NaN", "Infinity", "-Infinity", "+1", "01", ".5", "0x10", "1_000", "'6'"})
  void whatIsNoJsonNumberIsRefusedWithItsLine(String number) {
    InputRefused r = refusal(JobText.with("\"grip\": 0", "\"grip\": " + number));
    assertThat(r.line()).isEqualTo(21);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e9", "1e308", "-1e308", "1e999999999", "-1e9", "\"1e9\"", "\"NaN\""})
  void aNumberFarOutsideIsRefusedWithLineAndPath(String number) {
    InputRefused r = refusal(JobText.with("\"turnUnder\": 20", "\"turnUnder\": " + number));
    assertThat(r.line()).isEqualTo(20);
    assertThat(r.path()).isEqualTo("$.parts[0].cover.turnUnder");
  }

  @Test
  void deepNestingIsRefusedWithItsLine() {
    InputRefused r = refusal(JobText.with("\"auto\"", "[".repeat(100_000)));
    assertThat(r.line()).isEqualTo(22);
    assertThat(r.problem()).contains("nested");
  }

  @Test
  void anOverlongTextOrNumberOrNameIsRefusedWithItsLine() {
    String x = "x".repeat(1_000_000);
    assertThat(refusal(JobText.with("Forearm rest", x)).line()).isEqualTo(7);
    assertThat(refusal(JobText.with("Forearm rest", "x".repeat(121))).problem())
        .contains("121 characters");
    assertThat(refusal(JobText.with("\"corners\"", '"' + x + '"')).line()).isEqualTo(22);
    assertThat(refusal(JobText.with("\"leg\": 8", "\"leg\": " + "8".repeat(100_000))).line())
        .isEqualTo(23);
    assertThat(refusal(JobText.with("desk-rest", "d".repeat(61))).path())
        .isEqualTo("$.parts[0].id");
  }

  @Test
  void emptyAndCutOffFilesAreRefused() {
    refusal("");
    refusal("   \n");
    refusal("{");
    refusal("[]");
    refusal("null");
    assertThat(
            refusal(
                    "{\"format\":\"padwright-job\",\"version\":1,\"title\":\"t\",\n\"units\":\"mm\","
                        + "\n\"parts\":[]}")
                .line())
        .isEqualTo(3);
    String text = JobText.deskRest();
    for (int i = 1; i < text.stripTrailing().length(); i++) {
      refusal(text.substring(0, i));
    }
  }

  @Test
  void aFileThatIsMissingOrAFolderOrNoTextIsRefused(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("job.json");
    assertThat(catchThrowableOfType(InputRefused.class, () -> reader.read(file)).file())
        .isEqualTo(file.toString());
    assertThat(catchThrowableOfType(InputRefused.class, () -> reader.read(folder))).isNotNull();
    Files.write(file, new byte[] {'{', '\n', (byte) 0xff, (byte) 0xfe});
    assertThat(catchThrowableOfType(InputRefused.class, () -> reader.read(file)).line())
        .isEqualTo(2);
  }

  @Test
  void damagedFilesAreReadOrRefusedButNeverAFault() {
    Random random = new Random(20260512);
    String text = JobText.deskRest();
    String alphabet = "{}[]\",:0123456789.-eE truefalsn\n\\\u0000\u00e9";
    int refused = 0;
    for (int i = 0; i < 20_000; i++) {
      StringBuilder b = new StringBuilder(text);
      for (int n = 1 + random.nextInt(3); n > 0; n--) {
        int at = random.nextInt(b.length());
        char c = alphabet.charAt(random.nextInt(alphabet.length()));
        switch (random.nextInt(3)) {
          case 0 -> b.setCharAt(at, c);
          case 1 -> b.insert(at, c);
          default -> b.deleteCharAt(at);
        }
      }
      try {
        reader.read("bad.json", b.toString());
      } catch (InputRefused r) {
        refused++;
      }
    }
    assertThat(refused).isBetween(10_000, 20_000);
  }
}
