package padwright.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;

import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.material.CatalogueReader;
import padwright.measure.InputRefused;

class JobDocumentTest {
  private final JobReader reader = new JobReader(CatalogueReader.builtIn());

  static List<String> shipped() {
    return Documents.shipped();
  }

  static List<String> examples() {
    return Documents.examples();
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void theDemoAndEveryReadyMadePartIsAJobFileThatSurvivesWriting(String file) {
    Job job = reader.read(Path.of(file));
    assertThat(reader.read(file, JobWriter.write(job))).isEqualTo(job);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleInTheDescriptionIsAJobFileThatSurvivesWriting(String text) {
    Job job = reader.read("docs/job.md", text);
    assertThat(reader.read("docs/job.md", JobWriter.write(job))).isEqualTo(job);
  }

  @Test
  void theFullExampleUsesEveryFieldThereIs() {
    String full = Documents.examples().get(0);
    assertThat(Documents.fieldsOf(Documents.json(full)))
        .containsExactlyElementsOf(Documents.schemaFields());
  }

  @Test
  void theDescriptionNamesEveryFieldAndEveryWord() {
    String prose = Documents.text("docs/job.md").replaceAll("(?s)```json\n.*?```", "");
    for (String field : Documents.schemaFields()) {
      assertThat(prose).as(field).containsPattern("[`\". ]" + field + "[`\":]");
    }
    for (String word : Documents.schemaWords()) {
      assertThat(prose).as(word).contains('"' + word + '"');
    }
  }

  @Test
  void everyFieldOfTheSchemaIsKnownToTheReaderAndTheOtherWayRound() {
    // The reader names what it knows when it meets what it does not; ask at every level by taking
    // one field of the full example away and putting a stranger there.
    String full = Documents.examples().get(0);
    for (String field : new TreeSet<>(Documents.schemaFields())) {
      String strange = full.replaceFirst('"' + field + "\":", "\"" + field + "Zz\":");
      assertThat(strange).as(field).isNotEqualTo(full);
      assertThatThrownBy(() -> reader.read("docs/job.md", strange))
          .as(field)
          .isInstanceOf(InputRefused.class);
    }
    TreeSet<String> words = new TreeSet<>(List.of("mm", "in", "square", "full round"));
    words.addAll(List.of("length", "width", "top", "top and sides"));
    words.addAll(Words.KIND.all());
    words.addAll(Words.SIDE.all());
    words.addAll(Words.SIZE.all());
    words.addAll(Words.NEIGHBOUR.all());
    words.addAll(Words.TREATMENT.all());
    words.addAll(Words.FIXING.all());
    words.addAll(Words.FINISH.all());
    words.addAll(Words.OPEN.all());
    words.addAll(Words.THROUGH.all());
    words.addAll(Words.ZONE.all());
    assertThat(Documents.schemaWords()).containsExactlyElementsOf(words);
  }

  @Test
  void theDemoIsTheReadingNook() {
    Job job = reader.read(Path.of("demo/reading-nook.json"));
    assertThat(job.title()).isEqualTo("Reading nook");
    assertThat(job.parts())
        .extracting(PaddedPart::id, PaddedPart::quantity)
        .containsExactly(
            tuple("desk-rest", 2),
            tuple("stool-top", 4),
            tuple("reading-chair", 1),
            tuple("wall-panel", 2),
            tuple("window-seat", 1),
            tuple("corner-bench", 1),
            tuple("booth-back", 1));
  }
}
