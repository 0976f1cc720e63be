package padwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import padwright.design.Job;
import padwright.design.Units;
import padwright.jobfile.JobReader;
import padwright.jobfile.JobWriter;

/**
 * The same part written in millimetres and in inches comes out the same, to 1e-9 of a mm through
 * the whole engine. An inch is 25.4 mm exactly (international yard and pound agreement, 1959).
 */
class UnitsTest {
  private static final double SAME = 1e-9;

  private final JobReader reader = new JobReader(Pads.CATALOGUE);

  static Stream<Path> jobs() throws IOException {
    try (Stream<Path> parts = Files.list(Path.of("patterns"))) {
      List<Path> ready =
          parts
              .filter(p -> !p.endsWith("index.json"))
              .filter(p -> p.toString().endsWith(".json"))
              .sorted()
              .toList();
      assertThat(ready).hasSize(9);
      return Stream.concat(Stream.of(Path.of("demo", "reading-nook.json")), ready.stream());
    }
  }

  /** As the program writes it: fractions and short decimals, what is no such thing in mm. */
  @ParameterizedTest
  @MethodSource("jobs")
  void aJobWrittenInMillimetresAndInInchesGivesTheSameFigures(Path file) {
    Job job = reader.read(file);
    same(
        reader.read("mm", JobWriter.write(in(job, Units.MM))),
        reader.read("in", JobWriter.write(in(job, Units.INCH))));
  }

  /** As another program might write it: every length a plain number of inches. */
  @ParameterizedTest
  @MethodSource("jobs")
  void everyLengthAsADecimalOfInchesGivesTheSameFigures(Path file) throws IOException {
    Job job = reader.read(file);
    JsonNode tree = new ObjectMapper().readTree(JobWriter.write(in(job, Units.INCH)));
    int[] turned = {0};
    inches(tree, turned);
    assertThat(turned[0]).as("lengths written in mm").isPositive();
    same(job, reader.read("inches", tree.toString()));
  }

  private static Job in(Job job, Units units) {
    return new Job(job.title(), job.client(), job.date(), units, job.parts());
  }

  /** Turns each text such as "12 mm" into a number of inches. */
  private static void inches(JsonNode node, int[] turned) {
    if (node instanceof ObjectNode object) {
      for (Map.Entry<String, JsonNode> field : object.properties()) {
        if (isMm(field.getValue())) {
          field.setValue(inch(field.getValue(), turned));
        }
        inches(field.getValue(), turned);
      }
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        if (isMm(array.get(i))) {
          array.set(i, inch(array.get(i), turned));
        }
        inches(array.get(i), turned);
      }
    }
  }

  private static boolean isMm(JsonNode node) {
    return node.isTextual() && node.asText().matches("-?[0-9.]+ mm");
  }

  private static JsonNode inch(JsonNode mm, int[] turned) {
    turned[0]++;
    String number = mm.asText().replace(" mm", "");
    return DecimalNode.valueOf(
        new BigDecimal(number).divide(new BigDecimal("25.4"), MathContext.DECIMAL64));
  }

  private static void same(Job a, Job b) {
    PatternEngine engine = new PatternEngine(Pads.CATALOGUE);
    PatternSet first = engine.run(a);
    PatternSet second = engine.run(b);
    assertThat(second.parts()).hasSameSizeAs(first.parts());
    for (int i = 0; i < first.parts().size(); i++) {
      Map<String, Double> x = numbers(first.parts().get(i));
      Map<String, Double> y = numbers(second.parts().get(i));
      assertThat(x).hasSizeGreaterThan(500);
      assertThat(y.keySet()).isEqualTo(x.keySet());
      x.forEach(
          (path, value) ->
              assertThat(Math.abs(y.get(path) - value))
                  .as("%s: %s and %s", path, value, y.get(path))
                  .isLessThanOrEqualTo(SAME * Math.max(1, Math.abs(value) * 1e-3)));
    }
  }

  private record Whole(Object figures, Object pieces, Object cover, Object staples) {}

  private static Map<String, Double> numbers(PartResult r) {
    return Doubles.in(new Whole(r.figures(), r.pieces(), r.cover(), r.staples()));
  }
}
