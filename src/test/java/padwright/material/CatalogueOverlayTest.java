package padwright.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padwright.measure.InputRefused;

/** A maker's own file over the catalogue. */
class CatalogueOverlayTest {
  private static final String FOAM =
      "\"density\": 35, \"hardness\": 160, \"firm\": true, \"sheets\": [20, \"1 in\"]";

  @TempDir Path folder;
  private final Catalogue base = CatalogueReader.builtIn();

  private Path file(String json) throws IOException {
    return Files.writeString(folder.resolve("mine.json"), json);
  }

  private Catalogue laid(String json) throws IOException {
    return CatalogueReader.overlay(base, file(json));
  }

  private InputRefused refused(String json) throws IOException {
    Path file = file(json);
    InputRefused refused =
        catchThrowableOfType(InputRefused.class, () -> CatalogueReader.overlay(base, file));
    assertThat(refused).as(json).isNotNull();
    assertThat(refused.file()).isEqualTo(file.toString());
    assertThat(refused.remedy()).isNotBlank();
    return refused;
  }

  @Test
  void aNewRowIsAddedAtTheEndAndMarkedMeasured() throws IOException {
    Catalogue mine = laid("{ \"foams\": [ { \"id\": \"blue\", " + FOAM + " } ] }");
    Foam blue = mine.foams().get(base.foams().size());
    assertThat(blue.id()).isEqualTo("blue");
    assertThat(blue.name()).isEqualTo("blue");
    assertThat(blue.sheets()).containsExactly(20.0, 25.4);
    assertThat(blue.origin()).isEqualTo(new Sourced("Your own catalogue file", Status.MEASURED));
    assertThat(mine.boards()).isEqualTo(base.boards());
  }

  @Test
  void aRowWithAKnownIdReplacesThatRowWholeInItsPlace() throws IOException {
    Catalogue mine =
        laid(
            "{ \"foams\": [ { \"id\": \"soft\", "
                + FOAM
                + ", \"source\": \"kitchen scales\", \"status\": \"own\" } ] }");
    assertThat(mine.ids(Catalogue.Kind.FOAM)).isEqualTo(base.ids(Catalogue.Kind.FOAM));
    assertThat(mine.foams().get(0).density()).isEqualTo(35);
    assertThat(mine.foams().get(0).origin()).isEqualTo(new Sourced("kitchen scales", Status.OWN));
    assertThat(base.foams().get(0).density()).isNotEqualTo(35);
  }

  @Test
  void lengthsMayBeInInches() throws IOException {
    Catalogue mine =
        laid(
            """
            { "units": "in", "boards": [ { "id": "rack", "density": 500, "specificGravity": 0.45,
              "thicknesses": [ { "nominal": 0.5 }, { "nominal": "18 mm", "lower": "17.5 mm" } ],
              "lowerTolerance": { "fixed": "1/32 in", "perMm": 0.01 } } ] }
            """);
    Board rack = mine.board("rack").orElseThrow();
    // By hand: 12.7 - (0.79375 + 0.127) and 12.7 + the same.
    assertThat(rack.thicknesses().get(0).lower()).isCloseTo(11.77925, within(1e-12));
    assertThat(rack.thicknesses().get(0).upper()).isCloseTo(13.62075, within(1e-12));
    assertThat(rack.thicknesses().get(1).lower()).isEqualTo(17.5);
    assertThat(rack.lowerLimit(25.4)).isCloseTo(24.35225, within(1e-12));
    assertThat(rack.thicknesses().get(0).origin()).isEqualTo(rack.origin());
  }

  @Test
  void whatAMakerLeavesOutOfACoveringIsTheCarefulSide() throws IOException {
    Covering plain =
        laid("{ \"coverings\": [ { \"id\": \"cloth\", \"family\": \"woven\", \"thickness\": 0,"
                + " \"areaWeight\": 300, \"rollWidth\": \"54 in\" } ] }")
            .covering("cloth")
            .orElseThrow();
    assertThat(plain.stretchAlong()).isZero();
    assertThat(plain.ease()).isZero();
    assertThat(plain.breathes()).isFalse();
    assertThat(plain.twoFaced()).isFalse();
    assertThat(plain.rollWidth()).isCloseTo(1371.6, within(1e-9));
  }

  @Test
  void theExampleInTheManualIsTaken() throws IOException {
    String manual = Files.readString(Path.of("docs", "catalogue.md"));
    String example = manual.split("```json\n", 2)[1].split("```", 2)[0];
    Catalogue mine = laid(example);
    for (Catalogue.Kind kind : Catalogue.Kind.values()) {
      assertThat(mine.ids(kind).size()).isGreaterThan(base.ids(kind).size());
    }
    assertThat(mine.paper("copy-shop-roll").orElseThrow().isRoll()).isTrue();
    assertThat(mine.board("shelf-ply").orElseThrow().lowerLimit(10)).isEqualTo(9.6);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{}                                             | $          | no section of a catalogue",
        "[]                                             | $          | is not an object",
        "{\"board\": []}                                | $.board    | \"board\" is not known",
        "{\"foams\": {}}                                | $.foams    | is not a list",
        "{\"foams\": []}                                | $.foams    | the list has 0 items",
        "{\"foams\": [3]}                               | $.foams[0] | 3 is not an object",
        "{\"units\": \"feet\", \"foams\": []}           | $.units    | \"feet\" is not known",
        "{\"format\": \"padwright-job\", \"foams\": []} | $.format   | is not known here",
        "{\"version\": 2, \"foams\": []}                | $.version  | 2 is too large",
        "{\"foams\": [{\"id\": \"x\"}]}                 | $.foams[0] | \"density\" is missing",
      })
  void aFileOfTheWrongFormIsRefused(String json, String path, String problem) throws IOException {
    InputRefused refused = refused(json);
    assertThat(refused.path()).isEqualTo(path);
    assertThat(refused.problem()).contains(problem);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"crown\": 12.7     | \"crown\": -1           | .crown       | -1 is too small",
        "\"crown\": 12.7     | \"crown\": 1.5          | .crown       | 1.5 is too small",
        "\"crown\": 12.7     | \"crown\": 1e9          | .crown       | more than the largest length",
        "\"crown\": 12.7     | \"crown\": \"9 cubits\" | .crown       | cubits",
        "\"crown\": 12.7     | \"crown\": null         | .crown       | null is not a value",
        "\"crown\": 12.7     | \"crown\": true         | .crown       | true is not a number",
        "\"crown\": 12.7     | \"crowm\": 12.7         | .crowm       | \"crowm\" is not known",
        "\"crown\": 12.7     | \"crown\":1, \"crown\":2| .crown       | given twice",
        "\"wireWidth\": 0.9  | \"wireWidth\": 0        | .wireWidth   | 0 is too small",
        "[6, 8]              | []                      | .legs        | 0 items",
        "[6, 8]              | [8, 6]                  | .legs[1]     | 6 mm comes after 8 mm",
        "[6, 8]              | [8, 8]                  | .legs[1]     | 8 mm comes after 8 mm",
        "[6, 8]              | [6, 9000]               | .legs[1]     | 9000 is too large",
        "[6, 8]              | 8                       | .legs        | 8 is not a list",
        "\"mine\"            | \"My staple\"           | .id          | not a catalogue name",
        "\"mine\"            | \"\"                    | .id          | not a catalogue name",
        "\"mine\"            | 7                       | .id          | 7 is not text",
        "\"A name\"          | \"  \"                  | .name        | not a line of text",
        "\"A name\"          | \"a\\nb\"               | .name        | not a line of text",
        "\"own\"             | \"guess\"               | .status      | \"guess\" is not known",
      })
  void aWrongValueInARowIsRefusedWithItsPlace(
      String right, String wrong, String path, String problem) throws IOException {
    String row =
        "{ \"id\": \"mine\", \"name\": \"A name\", \"wireWidth\": 0.9, \"wireThickness\": 0.7,\n"
            + " \"crown\": 12.7, \"legs\": [6, 8], \"status\": \"own\" }";
    assertThat(laid("{ \"staples\": [\n" + row + "] }").staple("mine")).isPresent();
    assertThat(row).contains(right);
    InputRefused refused = refused("{ \"staples\": [\n" + row.replace(right, wrong) + "] }");
    assertThat(refused.path()).isEqualTo("$.staples[0]" + path);
    assertThat(refused.problem()).contains(problem);
    assertThat(refused.line()).isBetween(2, 3);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "boards    | \"density\":500,\"specificGravity\":0.4,\"lowerTolerance\":{\"fixed\":0.2},\"thicknesses\":[{\"nominal\":9,\"lower\":9.5}] | thicknesses[0].lower",
        "boards    | \"density\":500,\"specificGravity\":0.4,\"lowerTolerance\":{\"fixed\":0.2},\"thicknesses\":[{\"nominal\":9,\"upper\":8.5}] | thicknesses[0].upper",
        "boards    | \"density\":500,\"specificGravity\":0.4,\"lowerTolerance\":{\"fixed\":3},\"thicknesses\":[{\"nominal\":3}] | thicknesses[0]",
        "boards    | \"density\":500,\"specificGravity\":0.4,\"lowerTolerance\":{\"fixed\":3},\"thicknesses\":[{\"nominal\":9},{\"nominal\":6}] | thicknesses[1].nominal",
        "boards    | \"density\":500,\"specificGravity\":40,\"lowerTolerance\":{\"fixed\":0.2},\"thicknesses\":[] | specificGravity",
        "boards    | \"density\":0,\"specificGravity\":0.4,\"lowerTolerance\":{\"fixed\":0.2},\"thicknesses\":[] | density",
        "boards    | \"density\":500,\"specificGravity\":0.4,\"lowerTolerance\":{\"fixed\":-0.2},\"thicknesses\":[] | lowerTolerance.fixed",
        "waddings  | \"loose\":5,\"compressed\":6,\"areaWeight\":100,\"rollWidth\":1000 | compressed",
        "coverings | \"family\":\"felted\",\"thickness\":1,\"areaWeight\":100,\"rollWidth\":1000 | family",
        "coverings | \"family\":\"woven\",\"thickness\":-1,\"areaWeight\":100,\"rollWidth\":1000 | thickness",
        "coverings | \"family\":\"woven\",\"thickness\":1,\"areaWeight\":100,\"rollWidth\":1000,\"ease\":5 | ease",
        "coverings | \"family\":\"woven\",\"thickness\":1,\"areaWeight\":100,\"rollWidth\":1000,\"nap\":\"yes\" | nap",
        "screws    | \"shank\":4,\"head\":3,\"lengths\":[20],\"edgeDistance\":12 | head",
        "papers    | \"width\":297,\"height\":210 | height",
        "papers    | \"width\":5 | width",
        "foams     | \"density\":30,\"hardness\":-1,\"sheets\":[20] | hardness",
      })
  void sizesThatContradictEachOtherAreRefused(String section, String fields, String path)
      throws IOException {
    InputRefused refused =
        refused("{ \"" + section + "\": [ { \"id\": \"mine\", " + fields + " } ] }");
    assertThat(refused.path()).isEqualTo("$." + section + "[0]." + path);
  }

  @Test
  void anIdGivenTwiceInOneFileIsRefusedWithBothLines() throws IOException {
    String row = "{ \"id\": \"blue\", " + FOAM + " }";
    InputRefused refused = refused("{ \"foams\": [\n" + row + ",\n" + row + "] }");
    assertThat(refused.line()).isEqualTo(3);
    assertThat(refused.path()).isEqualTo("$.foams[1].id");
    assertThat(refused.problem()).contains("\"blue\"").contains("line 2");
  }

  @Test
  void anUnknownSectionIsRefusedWithTheNearestOne() throws IOException {
    assertThat(refused("{ \"stapels\": [] }").remedy()).startsWith("The nearest known are staples");
  }

  @Test
  void aFileThatIsNotThereIsRefused() {
    Path absent = folder.resolve("absent.json");
    InputRefused refused =
        catchThrowableOfType(InputRefused.class, () -> CatalogueReader.overlay(base, absent));
    assertThat(refused.problem()).contains("no such file");
    assertThat(List.of(folder.toFile().list())).isEmpty();
  }
}
