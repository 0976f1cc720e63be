package padwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.design.WrappedPad.Treatment;

class CheckCommandTest {
  @TempDir private Path folder;

  @Test
  void stopIsSaidWithItsRemedyAndSetsTheStatus() throws IOException {
    // Leg 12 through a covering of 1.0 goes 11 into a board of 9: it comes out of the face.
    String job = Cli.write(folder.resolve("job.json"), Cli.rest(9, 12));
    Cli.Said said = Cli.run("check", job);
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.err()).isEmpty();
    assertThat(said.out()).contains("Rest (rest)", "stop ", "1 stop", "Do not build");
    assertThat(said.out()).doesNotContain("Cover, cut size");
  }

  @Test
  void jobWithoutStopIsFine() {
    Cli.Said said = Cli.run("check", Cli.DEMO);
    assertThat(said.status()).isZero();
    assertThat(said.out()).contains("Reading nook", "0 stops", "in 7 parts");
  }

  @Test
  void theFullExampleOfTheDescriptionIsAJobToDraft() throws IOException {
    String page = Files.readString(Path.of("docs/job.md"));
    String full = page.substring(page.indexOf("```json\n") + 8);
    full = full.substring(0, full.indexOf("```"));
    Cli.Said said = Cli.run("check", Cli.write(folder.resolve("job.json"), full));
    assertThat(said.status()).as(said.out()).isZero();
    assertThat(said.out()).contains("0 stops", "in 6 parts");
    // Every way to make a corner is asked for by name somewhere.
    for (Treatment t : Treatment.values()) {
      assertThat(full).contains('"' + t.name().toLowerCase(Locale.ROOT).replace('_', ' ') + '"');
    }
  }

  @Test
  void jsonAloneIsOnStandardOutput() throws IOException {
    String job = Cli.write(folder.resolve("job.json"), Cli.rest(9, 12));
    Cli.Said said = Cli.run("check", job, "--json");
    assertThat(said.status()).isEqualTo(1);
    JsonNode part = new ObjectMapper().readTree(said.out()).get("parts").get(0);
    assertThat(part.get("id").asText()).isEqualTo("rest");
    assertThat(part.get("findings").get(0).get("level").asText()).isEqualTo("stop");
    assertThat(part.get("findings").get(0).get("remedy").asText()).isNotBlank();
    assertThat(part.has("cover")).isFalse();
  }

  @Test
  void missingCatalogueIsRefused() {
    Cli.Said said = Cli.run("check", Cli.DEMO, "--catalogue", "none.json");
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains("none.json");
  }
}
