package padwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;

class CatalogueCommandTest {
  @TempDir private Path folder;

  @Test
  void everySectionIsPrintedWithItsSources() {
    Cli.Said said = Cli.run("catalogue");
    assertThat(said.status()).isZero();
    assertThat(said.out())
        .contains("Boards (", "Foams (", "Waddings (", "Coverings (", "Staples (")
        .contains("Screws (", "Papers (", "Where they come from", "birch-plywood");
  }

  @Test
  void oneSectionIsPrintedAlone() {
    Cli.Said said = Cli.run("catalogue", "papers");
    assertThat(said.status()).isZero();
    // ISO 216: A4 is 210 x 297.
    assertThat(said.out()).containsPattern("(?m)^ +a4 .* 210 +297$");
    assertThat(said.out()).doesNotContain("birch-plywood");
  }

  @Test
  void jsonGivenBackIsTheSameCatalogue() throws IOException {
    Cli.Said said = Cli.run("catalogue", "--json");
    assertThat(said.status()).isZero();
    assertThat(said.err()).isEmpty();
    Path file = folder.resolve("all.json");
    Cli.write(file, said.out());
    assertThat(CatalogueReader.overlay(Catalogue.empty(), file))
        .isEqualTo(CatalogueReader.builtIn());
  }

  @Test
  void jsonOfOneSectionHasItAlone() throws IOException {
    JsonNode all = new ObjectMapper().readTree(Cli.run("catalogue", "foams", "--json").out());
    assertThat(all.has("foams")).isTrue();
    assertThat(all.has("boards")).isFalse();
    assertThat(all.get("foams").get(0).get("source").asText()).isNotBlank();
  }

  @Test
  void unknownSectionIsRefusedWithTheNearest() {
    Cli.Said said = Cli.run("catalogue", "stapels");
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains("\"stapels\"", "The nearest are staples");
  }

  @Test
  void ownRowsAreShown() throws IOException {
    String rows =
        Cli.write(
            folder.resolve("mine.json"),
            """
            { "papers": [ { "id": "shop-roll", "name": "Copy shop roll", "width": "36 in" } ] }
            """);
    Cli.Said said = Cli.run("catalogue", "papers", "--catalogue", rows);
    assertThat(said.out()).containsPattern("shop-roll +Copy shop roll +914\\.4 +roll");
    assertThat(said.out()).contains("Your own catalogue file. (measured)");
  }
}
