package padwright.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
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
                  // Wider than ours, so that our own message comes first: it knows path and value.
                  .maxNestingDepth(MAX_DEPTH + 1)
                  .maxStringLength(MAX_BYTES)
                  .maxNameLength(MAX_BYTES)
                  .maxNumberLength(MAX_BYTES)
                  .build())
          .build();

  private final String file;
  private final String text;
  private int values;

  /** The innermost object or list still being read; null before the first and after the last. */
  private Node open;

  private int depth;

  /** The name last read, and its line. */
  private String key;

  private int keyLine;

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
      throw root(name, "the file is larger than 16 MB", "Split it into several files");
    }
    return parse(name, decode(name, bytes));
  }

  /** Reads a document that is already text. */
  public static Node parse(String name, String text) {
    if (text.isBlank()) {
      throw root(name, "the file is empty", "Write a JSON object in { }");
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
      throw notUtf8(name, bytes, in.position());
    }
  }

  private static InputRefused notUtf8(String name, byte[] bytes, int at) {
    int line = 1;
    for (int i = 0; i < at; i++) {
      line += bytes[i] == '\n' ? 1 : 0;
    }
    return new InputRefused(
        name,
        line,
        cutOffAt(name, new String(bytes, 0, at, StandardCharsets.UTF_8)),
        "the text is not UTF-8: it holds the byte " + HexFormat.of().toHexDigits(bytes[at]),
        "Save the file again as UTF-8 text");
  }

  /** How far reading comes where the text stops here. */
  private static String cutOffAt(String name, String start) {
    try {
      return parse(name, start).path();
    } catch (InputRefused r) {
      return r.path();
    }
  }

  private Node document() {
    try (JsonParser parser = FACTORY.createParser(text)) {
      try {
        return document(parser);
      } catch (JsonProcessingException e) {
        throw SyntaxProblem.of(file, path(parser, e), text, e);
      }
    } catch (IOException e) {
      throw new IllegalStateException("a text in memory cannot fail to be read", e);
    }
  }

  private Node document(JsonParser parser) throws IOException {
    Node root = value(parser);
    if (parser.nextToken() != null) {
      Node more = node(parser, new Node.Place(file, line(parser), null, null, 0));
      throw more.refuse(
          "there is more after the end of the document: " + more.shown(), "Delete what follows it");
    }
    return root;
  }

  /** Where the parser stands; it has read a field's name before it comes upon a faulty value. */
  private String path(JsonParser p, JsonProcessingException e) {
    if (open == null) {
      return Node.ROOT;
    }
    if (open.kind() == Node.Kind.ARRAY) {
      return SyntaxProblem.betweenItems(e) ? open.path() : open.path() + "[" + open.size() + "]";
    }
    String name = p.getParsingContext().getCurrentName();
    boolean reading = name != null && (!open.has(name) || SyntaxProblem.inValueOfAField(text, e));
    return reading ? open.path() + Node.step(name) : open.path();
  }

  /**
   * The next value with all in it. A loop over the tokens and no recursion: a compiler that unrolls
   * the latter into itself takes longer over it than a job of a thousand parts.
   */
  private Node value(JsonParser p) throws IOException {
    Node done = null;
    do {
      JsonToken token = p.nextToken();
      if (token == JsonToken.FIELD_NAME) {
        fieldsName(p);
        continue;
      }
      if (token.isStructEnd()) {
        done = open;
        open = open.parent();
        depth--;
      } else {
        done = begun(p);
        if (token.isStructStart()) {
          open = done;
          depth++;
          continue;
        }
      }
      add(done);
    } while (open != null);
    return done;
  }

  private void fieldsName(JsonParser p) throws IOException {
    key = p.currentName();
    keyLine = line(p);
    if (key.length() > MAX_STRING) {
      throw Texts.nameTooLong(open, keyLine, key);
    }
  }

  /**
   * The value the parser stands at, refused where it is too much, too deep, too long, too large.
   */
  private Node begun(JsonParser p) throws IOException {
    boolean field = open != null && open.kind() == Node.Kind.OBJECT;
    int index = open == null || field ? 0 : open.size();
    int line = field ? keyLine : line(p);
    Node node = node(p, new Node.Place(file, line, open, field ? key : null, index));
    if (++values > MAX_VALUES) {
      throw node.refuse(
          "the file holds more than a million values; " + node.shown() + " is one too many",
          "Split it into several files");
    }
    switch (node.kind()) {
      case OBJECT, ARRAY -> {
        if (depth >= MAX_DEPTH) {
          throw node.refuse(
              node.shown() + " stands here; objects and lists are nested more than 32 deep",
              "Check the brackets");
        }
      }
      case STRING -> Texts.check(node);
      case NUMBER -> {
        if (Double.isInfinite(node.number())) {
          throw node.refuse(node.shown() + " is too large", "Write a smaller number");
        }
      }
      case BOOL, NULL -> {}
    }
    return node;
  }

  /** Puts a value that is read to its end where it belongs. */
  private void add(Node value) {
    Node before = open == null ? null : open.add(value);
    if (before != null) {
      throw value.refuse(
          "the field is given twice, first in line "
              + before.line()
              + " as "
              + before.excerpt()
              + ", then as "
              + value.excerpt(),
          "Delete one of the two");
    }
  }

  /** The value the parser stands at, an object or a list still empty. */
  private static Node node(JsonParser p, Node.Place place) throws IOException {
    // Asked for at one place: the parser's part in it is compiled in once, not five times.
    String text = p.getText();
    return switch (p.currentToken()) {
      case START_OBJECT -> Node.container(place, Node.Kind.OBJECT);
      case START_ARRAY -> Node.container(place, Node.Kind.ARRAY);
      case VALUE_STRING -> Node.scalar(place, Node.Kind.STRING, text);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(place, text);
      case VALUE_TRUE, VALUE_FALSE -> Node.scalar(place, Node.Kind.BOOL, text);
      default -> Node.scalar(place, Node.Kind.NULL, "null");
    };
  }

  private static Node number(Node.Place place, String found) {
    if (found.length() > MAX_NUMBER) {
      // Before it is worked out: that takes longer than its digits deserve.
      Node node = Node.number(place, found, 0);
      throw node.refuse(
          node.shown() + " is too long: " + found.length() + " characters",
          "Keep numbers to " + MAX_NUMBER + " characters");
    }
    return Node.number(place, found, Double.parseDouble(found));
  }

  private static int line(JsonParser p) {
    return p.currentTokenLocation().getLineNr();
  }

  private static InputRefused root(String name, String problem, String remedy) {
    return new InputRefused(name, 1, Node.ROOT, problem, remedy);
  }

  private static InputRefused whole(String name, String problem, String remedy) {
    return new InputRefused(name, 0, "", problem, remedy);
  }
}
