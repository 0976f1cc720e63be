package padwright.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import padwright.measure.InputRefused;
import padwright.measure.Length;
import padwright.measure.LengthUnit;

/** The published schema, read by a JSON Schema validator that knows nothing of this program. */
class JobSchemaTest {
  private static final JsonSchemaFactory FACTORY =
      JsonSchemaFactory.getInstance(VersionFlag.V202012);
  private static final JsonSchema SCHEMA =
      FACTORY.getSchema(Documents.json(Documents.text("docs/job.schema.json")));

  private final JobReader reader = new JobReader(Materials.small());

  private static Set<ValidationMessage> faults(String text) {
    return SCHEMA.validate(Documents.json(text));
  }

  static List<String> goodJobs() {
    List<String> jobs = new ArrayList<>(Documents.examples());
    Documents.shipped().forEach(file -> jobs.add(Documents.text(file)));
    jobs.add(JobText.deskRest());
    return jobs;
  }

  @Test
  void theSchemaIsItselfAProperSchema() {
    JsonSchema meta =
        FACTORY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertThat(meta.validate(Documents.json(Documents.text("docs/job.schema.json")))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("goodJobs")
  void theSchemaTakesEveryJobFileThatIsShippedOrPrinted(String text) {
    assertThat(faults(text)).isEmpty();
  }

  @Test
  void theSchemaTakesWhatTheProgramWrites() {
    RandomJobs jobs = new RandomJobs(20260701);
    for (int i = 0; i < 300; i++) {
      String text = JobWriter.write(jobs.job());
      assertThat(faults(text)).as(text).isEmpty();
    }
  }

  // Rows as in JobRefusalTest: a piece of desk-rest.json and what stands there instead.
  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
      "padwright-job"|"other"
      "version": 1|"version": 2
      "version": 1|"version": "1"
      "version": 1,|
      "title": "Reading nook"|"title": " "
      "title": "Reading nook"|"title": null
      "title": "Reading nook"|"title": "t", "date": "7 March"
      "title": "Reading nook"|"title": "t", "titel": "u"
      "units": "mm"|"units": "cm"
      "units": "mm",|
      "desk-rest"|"desk rest"
      "desk-rest"|""
      "quantity": 2|"quantity": 0
      "quantity": 2|"quantity": 1.5
      "quantity": 2|"quantity": 1e9
      "quantity": 2|"quantity": 2, "mirrored": -1
      "quantity": 2|"quantity": 2, "kind": "stool"
      "quantity": 2|"quantity": 2, "front": "up"
      "build": "wrapped"|"build": "boxed"
      { "length": 600, "width": 60 }|{ "length": -600, "width": 60 }
      { "length": 600, "width": 60 }|{ "length": 600, "width": 0 }
      { "length": 600, "width": 60 }|{ "length": 1e9, "width": 60 }
      { "length": 600, "width": 60 }|{ "length": "60 mn", "width": 60 }
      { "length": 600, "width": 60 }|{ "length": "-60 mm", "width": 60 }
      { "length": 600, "width": 60 }|{ "length": "0 mm", "width": 60 }
      { "length": 600, "width": 60 }|{ "length": true, "width": 60 }
      { "length": 600, "width": 60 }|{ "length": 600 }
      { "length": 600, "width": 60 }|{ "length": 600, "width": 60, "radii": [1, 2, 3] }
      { "length": 600, "width": 60 }|{ "length": 600, "width": 60, "radius": 1, "radii": [1, 2, 3, 4] }
      { "rectangle": { "length": 600, "width": 60 } }|{ }
      { "rectangle": { "length": 600, "width": 60 } }|{ "circle": {"diameter": 9}, "ellipse": {"length": 9, "width": 9} }
      { "rectangle": { "length": 600, "width": 60 } }|{ "circel": {"diameter": 9} }
      "birch-plywood",|"mdf", "sides": { "left": "clear" },
      "birch-plywood",|"mdf", "sides": { "top": "free" },
      "birch-plywood",|"mdf", "backArris": -1,
      "birch-plywood",|"mdf", "holes": [{ "x": 0, "y": 0 }],
      { "foam": "firm", "thickness": 12 },|{ "foam": "firm" },
      { "foam": "firm", "thickness": 12 },|{ "foam": "firm", "thicknes": 12 },
      { "foam": "firm", "thickness": 12 },|5,
      "overhang": 3|"overhang": "wide"
      { "round": 6 }|{ "bevel": 0 }
      { "round": 6 }|{ "round": 6, "bevel": 6 }
      { "round": 6 }|"rounded"
      { "round": 6 }|6
      "thickness": 1.0|"thickness": -0.1
      "turnUnder": 20|"turnUnder": 0
      "turnUnder": 20|"hem": 20
      "along": 0|"along": 0.5
      "along": 0|"along": "3 %"
      "grip": 0|"grip": 0, "warp": "across"
      "auto"|"folded"
      "auto"|5
      "auto"|{ "each": ["auto"] }
      "auto"|{ "treatment": "auto", "each": ["auto", "auto", "auto", "auto"] }
      "leg": 8|"leg": 0
      "leg": 8|"pull": "1 N"
      "corners": "auto",|"host": { "finish": "bare" },
      "corners": "auto",|"host": { "fixing": "glue" },
      "corners": "auto",|"host": { "fixing": "screws" },
      "corners": "auto",|"host": { "fixing": "tape", "screw": "no-8" },
      "corners": "auto",|"dustCover": 5,
      "corners": "auto",|"dustCover": { "inset": -1 },
      "corners": "auto",|"wadding": { "wadding": "polyester-150", "over": "sides" },
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": 5 }
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0]] }
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], 5, [90, 90]] }
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90], [90, 90]] }
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, "x"], [90, 90]] }
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 0, 101], [90, 90]] }
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 0, "1"], [90, 90]] }
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [{ "at": [0, 0] }, [90, 0], [45, -60]] }
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [{ "at": [0, 0], "cubic": [[1, 2]] }, [90, 0], [45, -60]] }
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [{ "at": [0, 0], "bulge": 1 }, [90, 0], [45, -60]] }
      "corners": "auto",|"runs": [{ "sides": [], "open": "bare" }],
      "corners": "auto",|"runs": [{ "sides": ["left"] }],
      "corners": "auto",|"runs": [{ "sides": ["left"], "open": "bare", "turnUnder": 20 }],
      "corners": "auto",|"runs": [{ "sides": ["left"], "open": "free" }],
      "corners": "auto",|"runs": [{ "side": ["left"], "open": "bare" }],
      "corners": "auto",|"fittings": { "holes": [] },
      "corners": "auto",|"fittings": { "cutOuts": [{ "outline": { "circle": { "diameter": 40 } }, "x": 0, "y": 0, "covering": "cut" }] },
      "corners": "auto",|"fittings": { "cutOuts": [{ "outline": { "circle": { "diameter": 40 } }, "x": 0 }] },
      "corners": "auto",|"fittings": { "zones": [{ "kind": "glue", "x": 0, "y": 0, "length": 9, "width": 9 }] },
      """)
  void theSchemaRefusesWhatTheReaderRefusesWhereASchemaCan(String before, String after) {
    String text = JobText.with(before, after == null ? "" : after);
    assertThat(faults(text)).isNotEmpty();
    assertThatThrownBy(() -> reader.read("x", text)).isInstanceOf(InputRefused.class);
  }

  @Test
  void partsMayNotBeEmptyNorFoamLeftOut() {
    String text = JobText.deskRest();
    String empty = text.substring(0, text.indexOf("{ \"id\"")) + "] }";
    assertThat(faults(empty)).isNotEmpty();
    assertThatThrownBy(() -> reader.read("x", empty)).isInstanceOf(InputRefused.class);
    String bare =
        text.substring(0, text.indexOf("\"foam\": [")) + text.substring(text.indexOf("\"edge\""));
    assertThat(faults(bare)).isNotEmpty();
    assertThatThrownBy(() -> reader.read("x", bare)).isInstanceOf(InputRefused.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12",
        "12mm",
        "12 mm",
        "1.5in",
        "1.5 IN",
        "1 1/4 in",
        "1-1/4 in",
        "3/16\"",
        "1\u00bc in",
        "\u00bd in",
        "2 ft",
        "2 ft 3 in",
        "2' 3 1/2\"",
        ".5 in",
        " 7 mm ",
        "-1/4 in",
        "2 ft 3",
        "0 mm",
        "1 m",
        "1.2 cm",
        "12 inches",
        "",
        "wide",
        "1e3",
        "1/0 in",
        "1 2 in",
        "6 mm 3 mm",
        "2 ft 3 mm",
        "1,5 in",
        "12 mn",
        "+6",
        "--6",
        "in 12",
        "NaN"
      })
  void schemaAndReaderAgreeOnWhatALengthLooksLike(String length) {
    String text =
        JobText.with("\"overhang\": 3", "\"overhang\": \"" + length.replace("\"", "\\\"") + '"');
    boolean readable;
    try {
      Length.parse(length, LengthUnit.MM);
      readable = true;
    } catch (InputRefused r) {
      readable = false;
    }
    assertThat(faults(text).isEmpty()).isEqualTo(readable);
  }
}
