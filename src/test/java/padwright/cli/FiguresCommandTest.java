package padwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FiguresCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  private String job(double board, double leg) throws IOException {
    return Cli.write(folder.resolve("job.json"), Cli.rest(board, leg));
  }

  private static JsonNode part(Cli.Said said) throws IOException {
    return JSON.readTree(said.out()).get("parts").get(0);
  }

  private static List<String> keys(JsonNode node) {
    List<String> keys = new ArrayList<>();
    for (Iterator<String> i = node.fieldNames(); i.hasNext(); ) {
      keys.add(i.next());
    }
    return keys;
  }

  @Test
  void jsonHasEveryAgreedName() throws IOException {
    Cli.Said said = Cli.run("figures", job(12, 8), "--json");
    assertThat(said.status()).isZero();
    assertThat(said.err()).isEmpty();
    JsonNode part = part(said);
    assertThat(keys(part)).contains("id", "finished", "base", "foam", "cover", "staples");
    assertThat(keys(part.get("finished"))).containsExactly("length", "width", "height");
    assertThat(keys(part.get("base"))).containsExactly("length", "width", "thickness");
    assertThat(keys(part.get("foam").get(0))).containsExactly("length", "width", "thickness");
    assertThat(keys(part.get("cover")))
        .contains("length", "width", "perSide", "area", "cutLength", "cutWidth");
    assertThat(keys(part.get("staples")))
        .contains("leg", "count", "spacing", "layers", "penetration", "margin", "hold")
        .contains("suggestedLeg", "corner");
    assertThat(keys(part.get("staples").get("corner")))
        .containsExactly("layers", "penetration", "margin", "hold");
    assertThat(part.get("findings").isArray()).isTrue();
  }

  @Test
  void jsonHasTheWorkedFiguresOfTheRest() throws IOException {
    // Worked by hand: 24 + 12 + 20 + pi/2 x 1.0 - (2 - pi/2) x 6 = 54.9956 a side.
    JsonNode part = part(Cli.run("figures", job(12, 8), "--json"));
    double side = 24 + 12 + 20 + Math.PI / 2 - (2 - Math.PI / 2) * 6;
    JsonNode cover = part.get("cover");
    assertThat(cover.get("perSide").asDouble()).isCloseTo(side, within(5e-4));
    assertThat(cover.get("length").asDouble()).isCloseTo(600 + 2 * side, within(1e-3));
    assertThat(cover.get("width").asDouble()).isCloseTo(60 + 2 * side, within(1e-3));
    // EN 315 lower limit of nominal 12 birch plywood is 11.5 (maker's data sheet).
    JsonNode staples = part.get("staples");
    assertThat(staples.get("layers").asInt()).isEqualTo(1);
    assertThat(staples.get("penetration").asDouble()).isCloseTo(8 - 1.0, within(1e-9));
    assertThat(staples.get("margin").asDouble()).isCloseTo(11.5 - 7.0, within(1e-9));
  }

  @Test
  void figuresArePrintedEvenWithAStop() throws IOException {
    // Leg 12 through one layer of 1.0 goes 11 into a board of 9.
    String job = job(9, 12);
    Cli.Said said = Cli.run("figures", job, "--json");
    assertThat(said.status()).isEqualTo(1);
    JsonNode part = part(said);
    assertThat(part.get("cover").get("length").asDouble()).isGreaterThan(600);
    List<JsonNode> stops = new ArrayList<>();
    part.get("findings")
        .forEach(
            f -> {
              assertThat(keys(f))
                  .contains("rule", "level", "message", "source")
                  .contains("value", "limit", "unit", "remedy");
              if (f.get("level").asText().equals("stop")) {
                stops.add(f);
              }
            });
    assertThat(stops).isNotEmpty();
    assertThat(stops.get(0).get("rule").asText()).startsWith("staple");
    Cli.Said table = Cli.run("figures", job);
    assertThat(table.status()).isEqualTo(1);
    assertThat(table.out()).contains("Cover, cut size", "stop ");
  }

  @Test
  void numbersAreFiniteOrNull() throws IOException {
    Cli.Said said = Cli.run("figures", Cli.DEMO, "--json");
    assertThat(said.out()).doesNotContain("NaN", "Infinity");
    JsonNode all = JSON.readTree(said.out());
    assertThat(all.get("parts")).hasSize(7);
    // A leg that passes is a number; where the size is no opening there is no gap.
    assertThat(all.get("parts").get(0).get("bareGap").isNull()).isTrue();
    assertThat(all.get("parts").get(2).get("bareGap").get("front").isNumber()).isTrue();
  }

  @Test
  void fullPrecisionIsKept() throws IOException {
    String text = Cli.rest(12, 8).replace("\"length\": 600", "\"length\": \"23 5/8 in\"");
    String file = Cli.write(folder.resolve("inch.json"), text);
    JsonNode part = part(Cli.run("figures", file, "--json"));
    assertThat(part.get("base").get("length").asDouble()).isCloseTo(600.075, within(1e-9));
  }

  @Test
  void tablesShowMmAndInchesAndWhatWasTaken() throws IOException {
    Cli.Said said = Cli.run("figures", job(12, 8));
    assertThat(said.status()).isZero();
    // 710.0 = 600 + 2 x 54.9956 rounded up; 709.9912 mm = 894.5/32 in, up to 27 31/32.
    assertThat(said.out()).containsPattern("Cover, trim line +710\\.0 +170\\.0 .* 27 31/32 ");
    // 600 mm = 755.9/32 in, rounded down for the saw: 23 19/32 in.
    assertThat(said.out()).containsPattern("Base, Birch plywood .* 23 19/32 ");
    assertThat(said.out()).contains("Taken because it was left out", "cover.grip");
    for (String line : said.out().split("\n")) {
      assertThat(line).doesNotEndWith(" ");
    }
  }

  /** The rest in inches, 23 5/8 x 2 3/8, board 1/2, foam 1, turn-under 3/4, leg 5/16. */
  private static String inches() {
    return Cli.rest(12, 8)
        .replace("\"mm\"", "\"in\"")
        .replace("\"length\": 600, \"width\": 60", "\"length\": \"23 5/8\", \"width\": \"2 3/8\"")
        .replace("\"thickness\": 12.0", "\"thickness\": \"1/2\"")
        .replace("\"thickness\": 24", "\"thickness\": 1")
        .replace("\"round\": 6", "\"round\": \"1/4\"")
        .replace(
            "\"thickness\": 1, \"turnUnder\": 20",
            "\"thickness\": \"1/32\", \"turnUnder\": \"3/4\"")
        .replace("\"leg\": 8.0", "\"leg\": \"5/16\"");
  }

  @Test
  void aJobInInchesIsPrintedInInchesFirst() throws IOException {
    String out = Cli.run("figures", Cli.write(folder.resolve("in.json"), inches())).out();
    assertThat(out).contains("length  width  height mm");
    // By hand: 23 5/8 in = 600.075, 2 3/8 in = 60.325 and 1/2 in = 12.7 mm.
    assertThat(out)
        .containsPattern("Base, Birch plywood +23 5/8 +2 3/8 +1/2 +600\\.0 +60\\.3 +12\\.7");
    assertThat(out).containsPattern("Turn-under +3/4 in +19\\.1 mm");
    assertThat(out).contains("leg 5/16 in (7.9 mm)", "Findings (plain lengths in mm)");
    // 7.9375 less a covering of 1/32 in = 0.79375 goes 7.14375 mm = 0.28125 in into the board.
    assertThat(out).containsPattern("1 layer +0\\.281 \\(7\\.1\\)");
    assertThat(out).contains("sq ft ", "lb ");
    // A default in mm comes with its inches: 12 / 25.4 = 15.1/32.
    assertThat(out).containsPattern("cover\\.grip +15/32 in \\(12\\.0 mm\\)");
  }

  @Test
  void findingsOfAJobInInchesSayTheirNumbersInInches() throws IOException {
    String deep = inches().replace("\"leg\": \"5/16\"", "\"leg\": \"5/8\"");
    String job = Cli.write(folder.resolve("in.json"), deep);
    // 15.875 - 0.79375 goes 15.08125 deep, more than the 12.7 of the board: less than nothing is
    // left.
    assertThat(oneLine(Cli.run("figures", job).out()))
        .containsPattern("In inches: found -0\\.\\d{3}, limit 0\\.000\\.");
    Cli.Said check = Cli.run("check", job);
    assertThat(oneLine(check.out()))
        .contains("Plain lengths in the sentences are mm.", "In inches: found -0.");
    assertThat(Cli.run("check", job(12, 8)).out()).doesNotContain("In inches", "Plain lengths");
    String draft =
        Cli.run("draft", job, "--svg-only", "--out", folder.resolve("o").toString()).err();
    assertThat(oneLine(draft)).contains("In inches: found -0.");
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void refusedJobSaysWhereAndPrintsNothing() throws IOException {
    String file =
        Cli.write(
            folder.resolve("bad.json"),
            Cli.rest(12, 8).replace("\"thickness\": 24", "\"thickness\": -24"));
    Cli.Said said = Cli.run("figures", file, "--json");
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err())
        .startsWith("Refused: " + file + ", line 5: $.parts[0].foam[0].thickness");
  }

  @Test
  void missingFileIsRefused() {
    Cli.Said said = Cli.run("figures", "no-such-job.json");
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.err()).contains("no-such-job.json: there is no such file");
  }

  @Test
  void sizesThatCannotBeMadeAreRefusedWithTheirPart() throws IOException {
    // Finished 60 wide over a covering of 20 a side and foam leaves a base too narrow to exist.
    String text =
        Cli.rest(12, 8)
            .replace("\"width\": 60", "\"width\": 30")
            .replace("\"size\": \"board\"", "\"size\": \"finished\"")
            .replace("\"thickness\": 1,", "\"thickness\": 16,");
    String file = Cli.write(folder.resolve("thin.json"), text);
    Cli.Said said = Cli.run("figures", file);
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err())
        .contains(
            file + ", line 3: $.parts[0].base.outline: part \"rest\": nothing is left",
            "written is {\"rectangle\": {\"length\": 600");
  }

  @Test
  void ownCatalogueIsLaidOver() throws IOException {
    String rows =
        Cli.write(
            folder.resolve("mine.json"),
            """
            { "format": "padwright-catalogue", "version": 1,
              "coverings": [ { "id": "knit-backed-vinyl", "family": "coated", "thickness": 2,
                "areaWeight": 900, "rollWidth": 1400 } ] }
            """);
    String job =
        Cli.write(folder.resolve("job.json"), Cli.rest(12, 8).replace("\"thickness\": 1, ", ""));
    double own =
        part(Cli.run("figures", job, "--json", "--catalogue", rows))
            .get("cover")
            .get("perSide")
            .asDouble();
    // 2.0 instead of 1.0 thick adds pi/2 a side.
    double side = 24 + 12 + 20 + Math.PI / 2 * 2 - (2 - Math.PI / 2) * 6;
    assertThat(own).isCloseTo(side, within(5e-4));
  }

  @Test
  void assumptionsAndCornersAreInTheJson() throws IOException {
    JsonNode part = part(Cli.run("figures", job(12, 8), "--json"));
    for (JsonNode a : part.get("assumptions")) {
      assertThat(keys(a)).containsExactly("field", "value", "reason", "status");
    }
    assertThat(part.get("corners")).hasSize(4);
    assertThat(part.get("wrap").get("proved").asBoolean()).isTrue();
    Map<String, JsonNode> sides = Map.of("s", part.get("cover").get("perSideBySide"));
    assertThat(keys(sides.get("s"))).contains("front", "right", "back", "left");
  }

  @Test
  void onlyWhatWasLeftOutIsListedAsTaken() throws IOException {
    // The rest gives size and edge; said again with the usual values they stay given.
    String silent = Cli.rest(12, 8);
    String said =
        silent
            .replace("\"edge\": { \"round\": 6 }", "\"edge\": \"square\", \"front\": \"front\"")
            .replace("\"turnUnder\": 20", "\"turnUnder\": 20, \"warp\": \"length\"")
            .replace("\"staples\"", "\"corners\": \"auto\", \"dustCover\": true, \"staples\"");
    assertThat(taken(silent)).contains("front ", "cover.warp", "corners ", "dustCover ");
    assertThat(taken(silent)).doesNotContain("base.size");
    assertThat(taken(said))
        .doesNotContain("base.size", "\n  edge ", "front ", "cover.warp", "corners ", "dustCover ")
        .contains("base.backArris", "host.fixing");
  }

  private String taken(String job) throws IOException {
    String out = Cli.run("figures", Cli.write(folder.resolve("taken.json"), job)).out();
    return out.substring(out.indexOf("Taken because it was left out"));
  }

  @Test
  void aRoundPartHasNoCornersForItsLayersToLieAt() {
    String out = Cli.run("figures", Cli.DEMO).out();
    String stool = out.substring(out.indexOf("(stool-top)"));
    stool = stool.substring(0, stool.indexOf("Findings"));
    assertThat(stool).contains(", at the rim's pleats").doesNotContain(", at the corners");
  }

  @Test
  void everyLegSaysWhatItDoesAtTheCornersToo() throws IOException {
    JsonNode staples = part(Cli.run("figures", job(12, 8), "--json")).get("staples");
    int layers = staples.get("corner").get("layers").asInt();
    assertThat(layers).isGreaterThan(1);
    for (JsonNode leg : staples.get("legs")) {
      // Covering 1.0: each layer more takes 1.0 from the hold and leaves 1.0 more board.
      double more = layers - 1;
      assertThat(leg.get("corner").get("margin").asDouble())
          .isCloseTo(leg.get("margin").asDouble() + more, within(1e-9));
      assertThat(leg.get("corner").get("hold").asDouble())
          .isCloseTo(leg.get("hold").asDouble() - more, within(1e-9));
    }
  }

  @Test
  void theTableListsTheLegsOfTheSeriesUsedWithTheirVerdicts() throws IOException {
    String out = Cli.run("figures", job(12, 8)).out();
    // Birch plywood 12 is at least 11.5 (maker's data sheet); 11.5 - (12 - 1.0) = 0.5.
    assertThat(out).contains("Legs, mm").containsPattern("(?m)^  8 +4\\.5 ");
    assertThat(out).containsPattern("(?m)^  12 +0\\.5 .* only 0\\.5 of board left");
  }
}
