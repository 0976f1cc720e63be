package padwright.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import padwright.measure.InputRefused;

/**
 * Reads one JSON document (RFC 8259, UTF-8) into {@link Node}s that know their line and path.
 * Strict: no comments, no trailing commas, no NaN or infinity, nothing after the document, no
 * repeated key, no character that XML could not carry on (the text ends up in drawings). Anything
 * wrong, too long or too deep is thrown as {@link InputRefused}.
 */
public final class LocatedJson {
  /** Room for a job of a thousand parts with every field written out, thirty times over. */
  public static final int MAX_BYTES = 16 * 1024 * 1024;

  /** The deepest documents of ours nest ten levels. */
  public static final int MAX_DEPTH = 32;

  /** Longer than any note a maker writes. */
  public static final int MAX_STRING = 10_000;

  /** Keeps a file of empty lists from filling the memory. */
  public static final int MAX_VALUES = 1_000_000;

  private static final int MAX_NUMBER = 100;

  /** Shared because making one costs more than reading a small file; it is never reconfigured. */
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  // One more than ours, so that our own message comes first.
                  .maxNestingDepth(MAX_DEPTH + 1)
                  .maxStringLength(MAX_STRING)
                  .maxNameLength(MAX_STRING)
                  .maxNumberLength(MAX_NUMBER)
                  .build())
          .build();

  private final String file;
  private final String text;
  private int values;

  private LocatedJson(String file, String text) {
    this.file = file;
    this.text = text;
  }

  /** Reads a file; its name in refusals is the path as given. */
  public static Node read(Path path) {
    String name = path.toString();
    if (!Files.exists(path)) {
      throw whole(name, "there is no such file", "Check the name and the folder");
    }
    if (!Files.isRegularFile(path)) {
      throw whole(name, "this is not a file", "Give the name of a JSON file");
    }
    try (InputStream in = Files.newInputStream(path)) {
      return parse(name, in);
    } catch (IOException e) {
      throw whole(name, "the file cannot be read", "Check that you may read it");
    }
  }

  /** Reads a stream to its end; does not close it. */
  public static Node parse(String name, InputStream in) throws IOException {
    byte[] bytes = in.readNBytes(MAX_BYTES + 1);
    if (bytes.length > MAX_BYTES) {
      throw whole(name, "the file is larger than 16 MB", "Split it into several files");
    }
    return parse(name, decode(name, bytes));
  }

  /** Reads a document that is already text. */
  public static Node parse(String name, String text) {
    if (text.isBlank()) {
      throw whole(name, "the file is empty", "Write a JSON object in { }");
    }
    return new LocatedJson(name, text).document();
  }

  private static String decode(String name, byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    try {
      CharBuffer out =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(in);
      // Some editors put a byte order mark in front; it means nothing in UTF-8.
      boolean marked = out.hasRemaining() && out.charAt(0) == '\uFEFF';
      return out.subSequence(marked ? 1 : 0, out.remaining()).toString();
    } catch (CharacterCodingException e) {
      int line = 1;
      for (int i = 0; i < in.position(); i++) {
        line += bytes[i] == '\n' ? 1 : 0;
      }
      throw new InputRefused(
          name, line, "", "the text is not UTF-8", "Save the file again as UTF-8 text");
    }
  }

  private Node document() {
    try (JsonParser parser = FACTORY.createParser(text)) {
      return document(parser);
    } catch (JsonProcessingException e) {
      throw SyntaxProblem.of(file, text, e, e instanceof JsonEOFException);
    } catch (IOException e) {
      throw new IllegalStateException("a text in memory cannot fail to be read", e);
    }
  }

  private Node document(JsonParser parser) throws IOException {
    try {
      parser.nextToken();
      Node root = value(parser, null, null, parser.currentTokenLocation().getLineNr(), 0);
      if (parser.nextToken() != null) {
        throw at(parser, "there is more after the end of the document", "Delete what follows it");
      }
      return root;
    } catch (StreamConstraintsException e) {
      // The exception often has no place of its own; the parser still knows where it stopped.
      throw new InputRefused(
          file,
          parser.currentLocation().getLineNr(),
          "",
          "a text or a number is too long",
          "Keep texts to 10,000 characters and numbers to 100");
    }
  }

  private Node value(JsonParser p, Node parent, String key, int line, int depth)
      throws IOException {
    Node.Place place =
        new Node.Place(file, line, parent, key, key == null && parent != null ? parent.size() : 0);
    if (++values > MAX_VALUES) {
      throw at(p, "the file holds more than a million values", "Split it into several files");
    }
    JsonToken token = p.currentToken();
    switch (token) {
      case START_OBJECT, START_ARRAY -> {
        if (depth >= MAX_DEPTH) {
          throw at(p, "objects and lists are nested more than 32 deep", "Check the brackets");
        }
        return token == JsonToken.START_OBJECT
            ? object(p, Node.container(place, Node.Kind.OBJECT), depth + 1)
            : list(p, Node.container(place, Node.Kind.ARRAY), depth + 1);
      }
      case VALUE_STRING -> {
        Node string = Node.scalar(place, Node.Kind.STRING, p.getText());
        if (!printable(string.string())) {
          throw string.refuse(
              "the text holds a character that cannot be printed", "Write it without");
        }
        return string;
      }
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
        String found = p.getText();
        double number = Double.parseDouble(found);
        Node node = Node.number(place, found, number);
        if (Double.isInfinite(number)) {
          throw node.refuse(node.shown() + " is too large", "Write a smaller number");
        }
        return node;
      }
      case VALUE_TRUE, VALUE_FALSE -> {
        return Node.scalar(place, Node.Kind.BOOL, p.getText());
      }
      default -> {
        return Node.scalar(place, Node.Kind.NULL, "null");
      }
    }
  }

  private Node object(JsonParser p, Node object, int depth) throws IOException {
    while (p.nextToken() != JsonToken.END_OBJECT) {
      String key = p.currentName();
      int line = p.currentTokenLocation().getLineNr();
      p.nextToken();
      Node child = value(p, object, key, line, depth);
      Node before = object.add(child);
      if (before != null) {
        throw child.refuse(
            "the field is given twice, first in line " + before.line(), "Delete one of the two");
      }
    }
    return object;
  }

  private Node list(JsonParser p, Node list, int depth) throws IOException {
    while (p.nextToken() != JsonToken.END_ARRAY) {
      list.add(value(p, list, null, p.currentTokenLocation().getLineNr(), depth));
    }
    return list;
  }

  /** Whether XML 1.0 (section 2.2) can carry the text: no control characters, no half pairs. */
  private static boolean printable(String s) {
    for (int i = 0; i < s.length(); ) {
      int c = s.codePointAt(i);
      boolean carried =
          (c >= 0x20 && c <= 0xD7FF)
              || (c >= 0xE000 && c <= 0xFFFD)
              || c >= 0x10000
              || c == '\t'
              || c == '\n'
              || c == '\r';
      if (!carried) {
        return false;
      }
      i += Character.charCount(c);
    }
    return true;
  }

  private InputRefused at(JsonParser p, String problem, String remedy) {
    return new InputRefused(file, p.currentTokenLocation().getLineNr(), "", problem, remedy);
  }

  private static InputRefused whole(String name, String problem, String remedy) {
    return new InputRefused(name, 0, "", problem, remedy);
  }
}
