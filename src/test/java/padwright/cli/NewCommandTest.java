package padwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padwright.design.Job;
import padwright.design.OutlineShape.Rectangle;
import padwright.design.WrappedPad;
import padwright.jobfile.JobReader;
import padwright.material.CatalogueReader;

class NewCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  private static WrappedPad read(String text) {
    Job job = new JobReader(CatalogueReader.builtIn()).read("printed", text);
    return (WrappedPad) job.parts().get(0);
  }

  @Test
  void withoutNameTheReadyMadePartsAreListed() throws IOException {
    Cli.Said said = Cli.run("new");
    assertThat(said.status()).isZero();
    assertThat(said.out())
        .contains("forearm-rest", "round-stool-top", "drop-in-seat", "wall-panel")
        .contains("armrest", "kneeler");
    JsonNode list = JSON.readTree(Cli.run("new", "--json").out()).get("patterns");
    assertThat(list).hasSize(9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "forearm-rest",
        "round-stool-top",
        "drop-in-seat",
        "wall-panel",
        "armrest",
        "kneeler"
      })
  void everyReadyMadePartCanBeBuiltAsItStands(String pattern) {
    String file = folder.resolve(pattern + ".json").toString();
    assertThat(Cli.run("new", pattern, "--out", file).status()).isZero();
    Cli.Said said = Cli.run("check", file);
    assertThat(said.status()).as(said.out()).isZero();
  }

  @Test
  void printedJobCanBeReadAndHasTheNumbersGiven() {
    Cli.Said said =
        Cli.run(
            "new",
            "forearm-rest",
            "--length",
            "23 5/8 in",
            "--width",
            "65mm",
            "--board",
            "15",
            "--foam",
            "30",
            "--cover",
            "1.2");
    assertThat(said.status()).isZero();
    WrappedPad pad = read(said.out());
    Rectangle outline = (Rectangle) pad.base().outline();
    // 23 5/8 in = 23.625 x 25.4 mm.
    assertThat(outline.length()).isCloseTo(600.075, within(1e-9));
    assertThat(outline.width()).isEqualTo(65);
    assertThat(pad.base().thickness()).isEqualTo(15);
    assertThat(pad.foam().stream().mapToDouble(WrappedPad.FoamLayer::thickness).sum())
        .isCloseTo(30, within(1e-9));
    assertThat(pad.cover().thickness()).hasValue(1.2);
    assertThat(said.err()).contains("Taken because it was not given", "cover.covering");
    assertThat(said.err()).doesNotContain("base.thickness ");
  }

  @Test
  void nobodyIsAskedAwayFromATerminal() {
    Cli.Said said = Cli.answering("500\n", "new", "forearm-rest");
    assertThat(said.status()).isZero();
    assertThat(said.err()).doesNotContain("[600 mm]");
    assertThat(((Rectangle) read(said.out()).base().outline()).length()).isEqualTo(600);
  }

  @Test
  void answersAreTakenFromStandardInputAndAnEmptyOneIsTheDefault() {
    Cli.Said said = Cli.answering("500\n\n18\n", "new", "forearm-rest", "--ask");
    assertThat(said.status()).isZero();
    WrappedPad pad = read(said.out());
    Rectangle outline = (Rectangle) pad.base().outline();
    assertThat(outline.length()).isEqualTo(500);
    assertThat(outline.width()).isEqualTo(60);
    assertThat(pad.base().thickness()).isEqualTo(18);
    assertThat(said.err()).contains("[600 mm]", "[60 mm]", "[12 mm]", "[24 mm]", "[1 mm]");
  }

  @Test
  void onATerminalOnlyWhatIsMissingIsAsked() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Streams streams =
        new Streams(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            new ByteArrayInputStream("seven\n19 mm\n".getBytes(StandardCharsets.UTF_8)),
            true);
    String[] args = {"new", "round-stool-top", "--length", "350", "--foam", "50"};
    assertThat(Main.run(args, streams)).isZero();
    String asked = err.toString(StandardCharsets.UTF_8);
    assertThat(asked).contains("Thickness of the board", "\"seven\" is not a length");
    assertThat(asked).doesNotContain("Diameter", "Thickness of all foam");
    assertThat(read(out.toString(StandardCharsets.UTF_8)).base().thickness()).isEqualTo(19);
  }

  @Test
  void answersThatAreNoLengthThreeTimesAreRefused() {
    Cli.Said said = Cli.answering("a\nb\nc\nd\n", "new", "kneeler", "--ask");
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains("Refused: Length of the board");
  }

  @Test
  void plainNumbersAreInchesWhereTheJobIs() {
    Cli.Said said = Cli.run("new", "forearm-rest", "--units", "in", "--length", "20");
    assertThat(said.out()).contains("\"units\": \"in\"", "\"length\": 20");
    assertThat(((Rectangle) read(said.out()).base().outline()).length())
        .isCloseTo(508, within(1e-9));
    assertThat(Cli.run("new", "forearm-rest", "--units", "cm").status()).isEqualTo(2);
  }

  @Test
  void fileIsWrittenAndNotOverwrittenByAnotherJob() throws IOException {
    Path file = folder.resolve("desk.json");
    String name = file.toString();
    Cli.Said first = Cli.run("new", "forearm-rest", "--out", name);
    assertThat(first.status()).isZero();
    assertThat(first.out()).contains("written to " + name, "Taken because it was not given");
    String text = Files.readString(file);
    read(text);
    assertThat(Cli.run("new", "forearm-rest", "--out", name).status()).isZero();
    Cli.Said other = Cli.run("new", "kneeler", "--out", name);
    assertThat(other.status()).isEqualTo(2);
    assertThat(other.err()).contains(name, "another job", "--replace");
    assertThat(Files.readString(file)).isEqualTo(text);
    assertThat(Cli.run("new", "kneeler", "--out", name, "--replace").status()).isZero();
    assertThat(Files.readString(file)).contains("kneeler");
    assertThat(Files.readString(folder.resolve("desk.json.previous"))).isEqualTo(text);
  }

  @Test
  void fileThatCannotBeWrittenIsSaid() throws IOException {
    Cli.Said noFolder = Cli.run("new", "kneeler", "--out", folder.resolve("no/x.json").toString());
    assertThat(noFolder.status()).isEqualTo(3);
    assertThat(noFolder.err()).startsWith("Cannot write: ").contains("no such folder");
    Cli.Said isFolder = Cli.run("new", "kneeler", "--out", folder.toString());
    assertThat(isFolder.status()).isEqualTo(3);
    assertThat(Cli.contents(folder)).hasSize(1);
  }

  @Test
  void jsonHasTheJobAndWhatWasTaken() throws IOException {
    Cli.Said said = Cli.run("new", "wall-panel", "--board", "9", "--json");
    assertThat(said.status()).isZero();
    assertThat(said.err()).isEmpty();
    JsonNode all = JSON.readTree(said.out());
    assertThat(all.get("pattern").asText()).isEqualTo("wall-panel");
    assertThat(all.get("file").isNull()).isTrue();
    assertThat(all.get("job").get("parts").get(0).get("base").get("thickness").asDouble())
        .isEqualTo(9);
    assertThat(all.get("taken").get(0).get("reason").asText()).isNotBlank();
    read(all.get("job").toString());
  }

  @Test
  void wrongNumbersAndNamesAreRefused() {
    Cli.Said name = Cli.run("new", "stool-top");
    assertThat(name.status()).isEqualTo(2);
    assertThat(name.err()).contains("\"stool-top\"", "round-stool-top");
    Cli.Said length = Cli.run("new", "kneeler", "--length", "1,5 in");
    assertThat(length.status()).isEqualTo(2);
    assertThat(length.err()).contains("--length: ", "1,5 in");
    Cli.Said width = Cli.run("new", "round-stool-top", "--width", "300");
    assertThat(width.status()).isEqualTo(2);
    assertThat(width.err()).contains("round");
  }
}
