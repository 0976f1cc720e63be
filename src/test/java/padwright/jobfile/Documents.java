package padwright.jobfile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The written descriptions of the job file, and the job files that ship with the program. */
final class Documents {
  private static final Pattern EXAMPLE = Pattern.compile("(?s)```json\n(.*?)```");

  private Documents() {}

  static String text(String file) {
    try {
      return Files.readString(Path.of(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static JsonNode json(String text) {
    try {
      return new ObjectMapper().readTree(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The job files printed in docs/job.md, in order. */
  static List<String> examples() {
    return EXAMPLE.matcher(text("docs/job.md")).results().map(m -> m.group(1)).toList();
  }

  /** The demo and every ready-made part. */
  static List<String> shipped() {
    try (Stream<Path> files =
        Stream.concat(Files.list(Path.of("patterns")), Files.list(Path.of("demo")))) {
      return files
          .map(Path::toString)
          .filter(f -> f.endsWith(".json") && !f.endsWith("index.json"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every field the schema knows, anywhere. */
  static TreeSet<String> schemaFields() {
    return propertiesIn(json(text("docs/job.schema.json")));
  }

  private static TreeSet<String> propertiesIn(JsonNode node) {
    TreeSet<String> names = new TreeSet<>();
    node.path("properties").fieldNames().forEachRemaining(names::add);
    node.forEach(child -> names.addAll(propertiesIn(child)));
    return names;
  }

  /** Every word the schema allows where there is a choice of words. */
  static TreeSet<String> schemaWords() {
    TreeSet<String> words = new TreeSet<>();
    for (JsonNode choice : json(text("docs/job.schema.json")).findValues("enum")) {
      choice.forEach(word -> words.add(word.asText()));
    }
    return words;
  }

  /** Every field name used in a JSON text. */
  static TreeSet<String> fieldsOf(JsonNode node) {
    TreeSet<String> names = new TreeSet<>();
    node.fieldNames().forEachRemaining(names::add);
    node.forEach(child -> names.addAll(fieldsOf(child)));
    return names;
  }
}
