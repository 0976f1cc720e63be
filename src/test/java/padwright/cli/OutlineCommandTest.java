package padwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.design.Job;
import padwright.design.OutlineShape.FreePath;
import padwright.design.WrappedPad;
import padwright.jobfile.JobReader;
import padwright.material.CatalogueReader;

class OutlineCommandTest {
  private static final String PANEL = "demo/notice-panel.svg";
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  private static WrappedPad part(String text) {
    Job job = new JobReader(CatalogueReader.builtIn()).read("printed", text);
    return (WrappedPad) job.parts().get(0);
  }

  @Test
  void theReportTheSizeTheSidesAndThePointsArePrinted() {
    Cli.Said said = Cli.run("outline", PANEL);
    assertThat(said.status()).isZero();
    assertThat(said.err()).isEmpty();
    assertThat(said.out())
        .contains("1 unit is 1 mm", "read: 1 path on layer board", "left: 2 text on layer notes")
        .contains("Outline 620.0 mm x 433.6 mm, 4 sides", "side 1", "arc", "\"path\": [[")
        .contains("Inside it 84.0 mm x 84.0 mm");
  }

  @Test
  void asJsonItIsTheSameAndAJobFileTakesItsOutline() throws IOException {
    Cli.Said said = Cli.run("outline", PANEL, "--json");
    JsonNode json = JSON.readTree(said.out());
    assertThat(json.get("format").asText()).isEqualTo("SVG");
    assertThat(json.get("length").asDouble()).isEqualTo(620);
    // By hand: a sagitta of r - sqrt(r^2 - 310^2) with r = 560 over sides of 340.
    assertThat(json.get("width").asDouble())
        .isCloseTo(340 + 560 - Math.sqrt(560 * 560 - 310 * 310), within(1e-3));
    assertThat(json.get("sides")).hasSize(4);
    assertThat(json.get("openings")).hasSize(1);
    assertThat(json.get("left").get(0).get("count").asInt()).isEqualTo(2);
    assertThat(
            JSON.readTree(Cli.run("outline", PANEL, "--json", "--outline-only").out())
                .get("openings"))
        .isEmpty();
    String job =
        Cli.rest(12, 8)
            .replace(
                "{ \"rectangle\": { \"length\": 600, \"width\": 60 } }",
                json.get("outline").toString());
    assertThat(part(job).base().outline()).isInstanceOf(FreePath.class);
  }

  @Test
  void aJobIsStartedWithTheDrawnOutlineAndItsCutOuts() throws IOException {
    String file = folder.resolve("panel.json").toString();
    Cli.Said said =
        Cli.run("new", "wall-panel", "--outline", PANEL, "--board", "15", "--out", file);
    assertThat(said.status()).as(said.err()).isZero();
    assertThat(said.err()).contains("left: 2 text on layer notes");
    assertThat(said.out())
        .contains("base.size", "a drawn outline is the board's")
        .doesNotContain("base.outline", "fittings");
    WrappedPad pad = part(Files.readString(Path.of(file)));
    assertThat(((FreePath) pad.base().outline()).points()).hasSize(4);
    assertThat(pad.base().size()).isEqualTo(WrappedPad.SizeMeaning.BOARD);
    assertThat(pad.base().thickness()).isEqualTo(15);
    assertThat(pad.fittings().cutOuts()).hasSize(1);
    assertThat(pad.fittings().cutOuts().get(0).x()).isEqualTo(192);
    Cli.Said bare = Cli.run("new", "wall-panel", "--outline", PANEL, "--outline-only");
    assertThat(part(bare.out()).fittings().cutOuts()).isEmpty();
  }

  @Test
  void everyReadyMadePartCanBeStartedWithADrawnOutline() {
    for (String pattern :
        new String[] {
          "forearm-rest", "round-stool-top", "drop-in-seat", "wall-panel", "armrest", "kneeler"
        }) {
      Cli.Said said = Cli.run("new", pattern, "--outline", PANEL, "--units", "in");
      assertThat(said.status()).as(said.err()).isZero();
      assertThat(part(said.out()).base().outline()).isInstanceOf(FreePath.class);
    }
  }

  @Test
  void aLengthBesideADrawnOutlineIsRefusedAndNothingIsWritten() throws IOException {
    String file = folder.resolve("panel.json").toString();
    Cli.Said said =
        Cli.run("new", "wall-panel", "--outline", PANEL, "--length", "500", "--out", file);
    assertThat(said.status()).isEqualTo(ExitStatus.REFUSED);
    assertThat(said.err()).contains("a length is given", "drawn by its points", "in the drawing");
    assertThat(Cli.contents(folder)).isEqualTo(Map.of("", "folder"));
  }

  @Test
  void onATerminalTheSizeOfADrawnOutlineIsNotAsked() {
    Cli.Said said = Cli.answering("\n\n\n", "new", "wall-panel", "--outline", PANEL, "--ask");
    assertThat(said.status()).isZero();
    assertThat(said.err()).contains("Thickness of the board").doesNotContain("Length", "Width");
  }

  @Test
  void aDrawingThatCannotBeTakenIsRefusedWithStatusTwo() throws IOException {
    String bad =
        Cli.write(
            folder.resolve("bad.svg"), "<svg xmlns='http://www.w3.org/2000/svg'>\n<script/></svg>");
    for (String[] args :
        new String[][] {
          {"outline", bad},
          {"outline", folder.resolve("none.svg").toString()},
          {"outline", folder.toString()},
          {"outline", PANEL, "--drawn-in", "feet"},
          {"outline"},
          {"new", "wall-panel", "--outline", bad}
        }) {
      Cli.Said said = Cli.run(args);
      assertThat(said.status()).as(String.join(" ", args)).isEqualTo(ExitStatus.REFUSED);
      assertThat(said.out()).isEmpty();
      assertThat(said.err()).startsWith("Refused: ");
    }
    assertThat(Cli.run("outline", bad).err())
        .contains("bad.svg, line 2: the drawing holds a script");
  }
}
