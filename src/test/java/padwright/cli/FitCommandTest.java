package padwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.design.Job;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.jobfile.JobReader;
import padwright.material.CatalogueReader;

/** The sums are board + foam + covering: {@link Cli#rest} has a board of 12 and covering of 1. */
class FitCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  private String job;

  @BeforeEach
  void writeJob() throws IOException {
    job = Cli.write(folder.resolve("rest.json"), Cli.rest(12, 8));
  }

  private static Job read(Path file) {
    return new JobReader(CatalogueReader.builtIn()).read(file);
  }

  private static List<Double> sheets(JsonNode answer) {
    List<Double> sheets = new ArrayList<>();
    answer.get("foam").forEach(f -> sheets.add(f.get("thickness").asDouble()));
    return sheets;
  }

  @Test
  void tableHasRankHeightErrorBaseAndMakeUp() {
    Cli.Said said = Cli.run("fit", job, "--height", "37", "--most", "2");
    assertThat(said.status()).isZero();
    assertThat(said.err()).isEmpty();
    assertThat(said.out()).startsWith("Rest (rest), 37.0 mm high wanted");
    // 12 + 24 + 1 = 37 with two sheets of 12; a sheet of 25 comes to 38.
    assertThat(said.out())
        .containsPattern("(?m)^ +1 +37\\.0 +0\\.00 +no +602\\.0 x 62\\.0 +600\\.0 x 60\\.0 +2 ")
        .containsPattern("(?m)^ +2 +38\\.0 +\\+1\\.00 +no +602\\.0 x 62\\.0 +600\\.0 x 60\\.0 +1 ")
        .contains("Board 12, firm 12, firm 12. A single sheet misses by +1.00.")
        .contains("Board 12, firm 25. A single sheet; the error is within")
        // 12 + 6 + 1 and 12 + 3 x 100 + 1.
        .contains("19.0 mm to 313.0 mm high")
        // Joint Industry Foam Standards 10.2.1: 1/16 in = 1.5875 mm.
        .contains("1/16 in or 1.59 mm");
  }

  @Test
  void jsonHasEveryFigureOfEachAnswer() throws IOException {
    Cli.Said said = Cli.run("fit", job, "--height", "37", "--most", "4", "--json");
    assertThat(said.status()).isZero();
    JsonNode all = JSON.readTree(said.out());
    assertThat(all.get("part").asText()).isEqualTo("rest");
    assertThat(all.get("sheetTolerance").asDouble()).isCloseTo(25.4 / 16, within(1e-12));
    assertThat(all.get("least").asDouble()).isCloseTo(19, within(1e-9));
    assertThat(all.get("most").asDouble()).isCloseTo(313, within(1e-9));
    assertThat(all.get("saved").isNull()).isTrue();
    assertThat(all.get("answers")).hasSize(4);
    JsonNode first = all.get("answers").get(0);
    assertThat(sheets(first)).containsExactly(12.0, 12.0);
    assertThat(first.get("error").asDouble()).isCloseTo(0, within(1e-9));
    assertThat(first.get("errorWithFewerSheets").asDouble()).isCloseTo(1, within(1e-9));
    assertThat(first.get("base").get("length").asDouble()).isCloseTo(600, within(1e-9));
    assertThat(first.get("finished").get("height").asDouble()).isCloseTo(37, within(1e-9));
    assertThat(first.get("findings")).isNotNull();
    // 20 is 4 too low, more than a sheet of foam may be off.
    JsonNode last = all.get("answers").get(3);
    assertThat(last.get("error").asDouble()).isCloseTo(-4, within(1e-9));
    assertThat(last.get("withinSheetTolerance").asBoolean()).isFalse();
  }

  @Test
  void aJobInInchesGetsTheSameAnswersAndItsOwnUnits() throws IOException {
    String inches =
        Cli.write(
            folder.resolve("inch.json"),
            Cli.rest(12, 8)
                .replace("\"units\": \"mm\"", "\"units\": \"in\"")
                .replaceAll("\": ([\\d.]+)([ ,}])", "\": \"$1 mm\"$2")
                .replace("\"version\": \"1 mm\"", "\"version\": 1"));
    JsonNode inMm = JSON.readTree(Cli.run("fit", job, "--height", "38.1", "--json").out());
    Cli.Said said = Cli.run("fit", inches, "--height", "1.5", "--json");
    assertThat(said.err()).isEmpty();
    assertThat(JSON.readTree(said.out())).isEqualTo(inMm);
    Cli.Said text = Cli.run("fit", inches, "--height", "1 1/2 in", "--most", "3");
    // 38.1 - 13 = 25.1: the sheet of 25 is 0.1 mm = 0.004 in low, the one of 1 in 0.3 = 0.012 high.
    assertThat(text.out()).startsWith("Rest (rest), 1 1/2 in (38.1 mm) high wanted");
    assertThat(text.out())
        .contains("height in", "-0.004", "+0.012")
        .contains("Board 12 mm, firm 25 mm.", "Board 12 mm, firm 1 in.");
  }

  @Test
  void answerIsSavedAsAJobThatComesOutThatHigh() throws IOException {
    Path file = folder.resolve("higher.json");
    Cli.Said said =
        Cli.run("fit", job, "--height", "37", "--answer", "2", "--save", file.toString());
    assertThat(said.status()).isZero();
    assertThat(said.out()).contains("Answer 2 written to " + file, "Next: padwright check");
    WrappedPad pad = (WrappedPad) read(file).parts().get(0);
    assertThat(pad.foam().stream().map(FoamLayer::thickness).toList()).containsExactly(25.0);
    JsonNode figures = JSON.readTree(Cli.run("figures", file.toString(), "--json").out());
    assertThat(figures.get("parts").get(0).get("finished").get("height").asDouble())
        .isCloseTo(12 + 25 + 1, within(1e-9));
  }

  @Test
  void onlyTheNamedPartChangesAndItsNewSizeWithIt() {
    Path file = folder.resolve("chair.json");
    String[] args = {
      "fit", Cli.DEMO, "--part", "wall-panel", "--height", "35", "--length", "700", "--width", "450"
    };
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("--size", "opening", "--save", file.toString()));
    assertThat(Cli.run(all.toArray(String[]::new)).status()).isZero();
    Job before = read(Path.of(Cli.DEMO));
    Job after = read(file);
    assertThat(after.title()).isEqualTo(before.title());
    assertThat(after.parts().subList(0, 3)).isEqualTo(before.parts().subList(0, 3));
    WrappedPad panel = (WrappedPad) after.parts().get(3);
    assertThat(panel.base().size()).isEqualTo(SizeMeaning.OPENING);
    assertThat(panel.base().outline())
        .isEqualTo(
            new padwright.design.OutlineShape.Rectangle(700, 450, List.of(0.0, 0.0, 0.0, 0.0)));
  }

  @Test
  void anotherJobIsNotWrittenOverUnlessAsked() throws IOException {
    String before = Files.readString(Path.of(job));
    Cli.Said said = Cli.run("fit", job, "--height", "40", "--save", job);
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains("another job", "--replace");
    assertThat(Files.readString(Path.of(job))).isEqualTo(before);
    assertThat(Cli.run("fit", job, "--height", "40", "--save", job, "--replace").status()).isZero();
    assertThat(Files.readString(folder.resolve("rest.json.previous"))).isEqualTo(before);
    // Its own answer is the best again, and nothing is left to write.
    Cli.Said again = Cli.run("fit", job, "--height", "40", "--save", job);
    assertThat(again.status()).isZero();
    assertThat(again.out()).contains("As the part stands");
  }

  @Test
  void whereEveryMakeUpHasAStopTheStatusIsOneAndNothingIsWritten() throws IOException {
    // A leg of 12 in a board that may be 11.5 thin: 11 of it go in, 0.5 is left; a leg of 16 comes
    // through whatever the foam.
    String through = Cli.write(folder.resolve("through.json"), Cli.rest(12, 16));
    Path file = folder.resolve("none.json");
    Cli.Said said = Cli.run("fit", through, "--height", "37", "--save", file.toString());
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.out())
        .contains("No make-up is left", "Not to be built", "staple-breakthrough, A leg of 16.0");
    assertThat(file).doesNotExist();
    JsonNode json = JSON.readTree(Cli.run("fit", through, "--height", "37", "--json").out());
    assertThat(json.get("answers")).isEmpty();
    assertThat(json.get("rejected").get(0).get("findings").get(0).get("rule").asText())
        .isEqualTo("staple-breakthrough");
  }

  @Test
  void whatCannotBeTakenIsRefusedWithItsPlace() {
    refused("--height: \"nought\"", "fit", job, "--height", "nought");
    refused("--height: -3 is no size", "fit", job, "--height=-3");
    refused("--height", "fit", job);
    refused("7 parts. Add --part with one of desk-rest", "fit", Cli.DEMO, "--height", "40");
    refused("no part \"desk\"", "fit", Cli.DEMO, "--part", "desk", "--height", "40");
    refused("--size: \"hole\"", "fit", job, "--height", "40", "--size", "hole");
    refused("--free: \"foam\"", "fit", job, "--height", "40", "--free", "board,foam");
    refused("--most: 0", "fit", job, "--height", "40", "--most", "0");
    refused("--answer names", "fit", job, "--height", "40", "--answer", "1");
    String file = folder.resolve("x.json").toString();
    refused("no answer 9", "fit", job, "--height", "40", "--answer", "9", "--save", file);
    // 12 + 6 + 1.
    refused(
        "$.parts[0].foam: part \"rest\": a finished height of 15.0 mm",
        "fit",
        job,
        "--height",
        "15");
    refused("the least is 19.0 mm", "fit", job, "--height", "15");
    refused("is round", "fit", Cli.DEMO, "--part", "stool-top", "--height", "80", "--width", "300");
    // The demo's rest has screws 200 from its middle.
    refused(
        "with this size, $.parts[0].host.positions[0]",
        "fit",
        Cli.DEMO,
        "--part",
        "desk-rest",
        "--height",
        "40",
        "--length",
        "300");
    assertThat(folder.resolve("x.json")).doesNotExist();
  }

  private static void refused(String says, String... args) {
    Cli.Said said = Cli.run(args);
    assertThat(said.status()).as(said.err()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains(says);
  }
}
