package padwright.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import java.io.Closeable;
import java.io.IOException;
import java.io.StringWriter;
import java.util.OptionalDouble;

/**
 * Writes one JSON document, indented, line ends as on Unix. A number has every digit of its double;
 * what is not finite is null, since JSON has no word for it.
 */
final class JsonOut implements Closeable {
  private static final JsonFactory FACTORY = new JsonFactory();

  private final StringWriter buffer = new StringWriter();
  private final StringBuilder target;
  private final int base;
  private final JsonGenerator json;

  /** What is written comes to stand at the end of {@code target} when closed. */
  JsonOut(StringBuilder target) throws IOException {
    this(target, 0);
  }

  private JsonOut(StringBuilder target, int base) throws IOException {
    this.target = target;
    this.base = base;
    json = FACTORY.createGenerator(buffer).setPrettyPrinter(new Layers(base));
  }

  /** A value that is put in its place, {@code base} deep in another document, later. */
  static JsonOut within(StringBuilder target, int base) throws IOException {
    return new JsonOut(target, base);
  }

  private void name(String name) throws IOException {
    if (name != null) {
      json.writeFieldName(name);
    }
  }

  /** Opens an object; {@code name} is null inside an array or at the top. */
  JsonOut object(String name) throws IOException {
    name(name);
    json.writeStartObject();
    return this;
  }

  JsonOut array(String name) throws IOException {
    name(name);
    json.writeStartArray();
    return this;
  }

  /** Closes the innermost object or array. */
  JsonOut end() throws IOException {
    if (json.getOutputContext().inArray()) {
      json.writeEndArray();
    } else {
      json.writeEndObject();
    }
    return this;
  }

  JsonOut text(String name, String value) throws IOException {
    name(name);
    json.writeString(value);
    return this;
  }

  JsonOut number(String name, double value) throws IOException {
    name(name);
    if (Double.isFinite(value)) {
      json.writeNumber(value);
    } else {
      json.writeNull();
    }
    return this;
  }

  JsonOut number(String name, OptionalDouble value) throws IOException {
    return number(name, value.orElse(Double.NaN));
  }

  JsonOut count(String name, int value) throws IOException {
    name(name);
    json.writeNumber(value);
    return this;
  }

  JsonOut flag(String name, boolean value) throws IOException {
    name(name);
    json.writeBoolean(value);
    return this;
  }

  JsonOut nothing(String name) throws IOException {
    name(name);
    json.writeNull();
    return this;
  }

  /** A value written before with {@link #within}. */
  JsonOut written(CharSequence value) throws IOException {
    json.writeRawValue(value.toString());
    return this;
  }

  /** A document that is JSON already; one that is not is a fault in the program. */
  JsonOut document(String name, String text) throws IOException {
    name(name);
    try (JsonParser parser = FACTORY.createParser(text)) {
      parser.nextToken();
      json.copyCurrentStructure(parser);
    }
    return this;
  }

  @Override
  public void close() throws IOException {
    json.close();
    target.append(buffer.getBuffer()).append(base == 0 ? "\n" : "");
  }
}
