package padwright.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import padwright.measure.InputRefused;
import padwright.measure.LengthUnit;

class LocatedJsonTest {
  @TempDir Path folder;

  private static InputRefused refusal(Runnable reading) {
    InputRefused refused = catchThrowableOfType(InputRefused.class, reading::run);
    assertThat(refused).isNotNull();
    assertThat(refused.problem()).isNotBlank().doesNotEndWith(".").doesNotContain("jackson");
    assertThat(refused.remedy()).isNotBlank();
    return refused;
  }

  private static InputRefused refused(String text) {
    return refusal(() -> LocatedJson.parse("a.json", text));
  }

  private static InputRefused refusedBytes(byte[] bytes) {
    return refusal(
        () -> {
          try {
            LocatedJson.parse("a.json", new ByteArrayInputStream(bytes));
          } catch (IOException e) {
            throw new AssertionError(e);
          }
        });
  }

  @Test
  void everyValueKnowsItsLineAndPath() {
    Node root =
        LocatedJson.parse(
            "a.json",
            """
            { "parts": [
                { "id": "x" },
                { "id": "y",
                  "base": { "odd name": 12.5 } } ] }
            """);
    Node second = root.require("parts").array().get(1);
    Node odd = second.require("base").require("odd name");
    assertThat(root.path()).isEqualTo("$");
    assertThat(second.path()).isEqualTo("$.parts[1]");
    assertThat(second.line()).isEqualTo(3);
    assertThat(odd.path()).isEqualTo("$.parts[1].base['odd name']");
    assertThat(odd.line()).isEqualTo(4);
    assertThat(odd.number()).isEqualTo(12.5);
  }

  @Test
  void valuesAreReadAsWhatTheyAre() {
    Node root =
        LocatedJson.parse(
            "a.json",
            "{\"s\":\"1 1/4 in\",\"n\":-0.0,\"e\":1.5e2,\"i\":2.0,\"t\":true,\"f\":false,\"l\":[1,2]}");
    assertThat(root.require("s").string()).isEqualTo("1 1/4 in");
    assertThat(Double.doubleToRawLongBits(root.require("n").number())).isZero();
    assertThat(root.require("e").number()).isEqualTo(150);
    assertThat(root.require("i").integer(1, 9)).isEqualTo(2);
    assertThat(root.require("t").bool()).isTrue();
    assertThat(root.require("f").bool()).isFalse();
    assertThat(root.require("l").array()).extracting(Node::number).containsExactly(1.0, 2.0);
    assertThat(root.get("absent")).isEmpty();
    assertThat(root.fields().keySet()).containsExactly("s", "n", "e", "i", "t", "f", "l");
  }

  @Test
  void anUnknownFieldIsRefusedWithTheNearestKnownOne() {
    Node root = LocatedJson.parse("a.json", "{\n \"thicknes\": 4 }");
    InputRefused refused = refusal(() -> root.requireObject("thickness", "foam", "overhang"));
    assertThat(refused.line()).isEqualTo(2);
    assertThat(refused.path()).isEqualTo("$.thicknes");
    assertThat(refused.problem()).contains("\"thicknes\"");
    assertThat(refused.remedy()).startsWith("The nearest known are thickness");
  }

  @Test
  void aRepeatedFieldIsRefusedWithBothLines() {
    InputRefused refused = refused("{\"a\": 1,\n\"b\": 2,\n\"a\": 3}");
    assertThat(refused.line()).isEqualTo(3);
    assertThat(refused.path()).isEqualTo("$.a");
    assertThat(refused.problem()).contains("twice").contains("line 1");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"a\": NaN}",
        "{\"a\": -Infinity}",
        "{\"a\": 1,}",
        "[1,,2]",
        "{'a': 1}",
        "{a: 1}",
        "{\"a\": 1} x",
        "{\"a\": 1} {}",
        "{\"a\": 1 // remark\n}",
        "{\"a\": 01}",
        "{\"a\": .5}",
        "{\"a\": +5}",
        "{\"a\": 5.}",
        "{\"a\": 0x10}",
        "{\"a\": tru}",
        "{\"a\": \"tab\there\"}",
        "{\"a\": \"\\q\"}",
        "]",
        "{\"a\"",
        "{\"a\": \"open",
        "[1",
        "",
        "  \n "
      })
  void whatIsNotJsonIsRefused(String text) {
    InputRefused refused = refused(text);
    assertThat(refused.file()).isEqualTo("a.json");
  }

  @Test
  void aSyntaxProblemNamesItsLineAndShowsTheText() {
    InputRefused refused = refused("{\n  \"a\": 1,\n  \"b\": NaN\n}");
    assertThat(refused.line()).isEqualTo(3);
    assertThat(refused.problem()).contains("NaN");
  }

  @Test
  void aNumberBeyondDoubleIsRefused() {
    assertThat(refused("{\"a\": 1e999}").problem()).contains("1e999 is too large");
  }

  @Test
  void textThatXmlCannotCarryIsRefused() {
    assertThat(refused("{\"a\": \"\\u0000\"}").path()).isEqualTo("$.a");
    assertThat(refused("{\"a\": \"\\ud800\"}").path()).isEqualTo("$.a");
    assertThat(LocatedJson.parse("a", "[\"\\ud83d\\ude00 \\n\"]").array()).hasSize(1);
  }

  @Test
  void deepNestingIsRefusedAndTheDeepestAllowedIsRead() {
    String allowed = "[".repeat(32) + "]".repeat(32);
    assertThat(LocatedJson.parse("a", allowed).array()).hasSize(1);
    assertThat(refused("[".repeat(33) + "]".repeat(33)).problem()).contains("32 deep");
    assertThat(refused("{\"a\":".repeat(100_000)).problem()).contains("32 deep");
  }

  @Test
  void overlongInputIsRefused() {
    assertThat(LocatedJson.parse("a", "[\"" + "x".repeat(10_000) + "\"]").array()).hasSize(1);
    assertThat(refused("[\"" + "x".repeat(10_001) + "\"]").problem()).contains("too long");
    assertThat(refused("[\"" + "x".repeat(1_000_000) + "\"]").problem()).contains("too long");
    assertThat(refused("{\"" + "x".repeat(20_000) + "\":1}").problem()).contains("too long");
    assertThat(refused("[" + "1".repeat(101) + "]").problem()).contains("too long");
    assertThat(refused("[" + "[],".repeat(1_000_000) + "1]").problem()).contains("million");
    assertThat(refusedBytes(" ".repeat(16 * 1024 * 1024 + 1).getBytes(StandardCharsets.UTF_8)))
        .hasMessageContaining("16 MB");
  }

  @Test
  void textThatIsNotUtf8IsRefusedWithItsLine() {
    byte[] latin = "{\n\"a\": \"caf\u00e9\"}".getBytes(StandardCharsets.ISO_8859_1);
    InputRefused refused = refusedBytes(latin);
    assertThat(refused.problem()).contains("UTF-8");
    assertThat(refused.line()).isEqualTo(2);
  }

  @Test
  void aByteOrderMarkIsPassedOver() throws IOException {
    Path file = folder.resolve("marked.json");
    Files.writeString(file, "\uFEFF{\"a\": \"caf\u00e9\"}");
    assertThat(LocatedJson.read(file).require("a").string()).isEqualTo("caf\u00e9");
  }

  @Test
  void aFileThatIsNotThereIsRefusedByName() {
    Path absent = folder.resolve("absent.json");
    assertThat(refusal(() -> LocatedJson.read(absent)).file()).isEqualTo(absent.toString());
    assertThat(refusal(() -> LocatedJson.read(folder)).problem()).contains("not a file");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "string | 12     | 12 is not text in quotes",
        "number | \"12\" | \"12\" is not a number",
        "bool   | 1      | 1 is not true or false",
        "array  | {}     | an object in { } is not a list in [ ]",
        "object | []     | a list in [ ] is not an object in { }",
        "number | null   | null is not a value here",
      })
  void aWrongTypeIsRefusedWithTheValueFound(String asked, String json, String problem) {
    Node node = LocatedJson.parse("a.json", "[\n" + json + "]").array().get(0);
    InputRefused refused =
        refusal(
            () -> {
              switch (asked) {
                case "string" -> node.string();
                case "number" -> node.number();
                case "bool" -> node.bool();
                case "array" -> node.array();
                default -> node.fields();
              }
            });
    assertThat(refused.problem()).isEqualTo(problem);
    assertThat(refused.line()).isEqualTo(2);
    assertThat(refused.path()).isEqualTo("$[0]");
  }

  @Test
  void rangesAndChoicesAreHeld() {
    List<Node> items = LocatedJson.parse("a", "[0, 2.5, 1e9, \"fim\"]").array();
    assertThat(refusal(() -> items.get(0).number(1, 10000)).problem()).isEqualTo("0 is too small");
    assertThat(refusal(() -> items.get(2).number(1, 10000)).remedy())
        .isEqualTo("Give a number from 1 to 10000");
    assertThat(refusal(() -> items.get(1).integer(0, 9)).problem()).contains("not a whole number");
    assertThat(refusal(() -> items.get(2).integer(0, 9)).problem()).contains("too large");
    assertThat(refusal(() -> items.get(3).oneOf(List.of("soft", "firm", "medium"))).remedy())
        .startsWith("The nearest known are firm");
    Node all = LocatedJson.parse("a", "[1, 2]");
    assertThat(refusal(() -> all.array(4, 4)).remedy()).isEqualTo("Give exactly 4");
    assertThat(refusal(() -> all.array(3, 5)).problem()).isEqualTo("the list has 2 items");
    assertThat(refusal(() -> LocatedJson.parse("a", "{}").require("id")).problem())
        .isEqualTo("the field \"id\" is missing");
  }

  @Test
  void aLengthIsANumberInTheFilesUnitsOrTextWithItsOwn() {
    // International inch of 1959: exactly 25.4 mm.
    List<Node> items =
        LocatedJson.parse(
                "a", "[1.25, \"1 1/4 in\", \"12 mm\", \"3 turnips\", true, 1e9, 1e-99999999999]")
            .array();
    assertThat(items.get(0).length(LengthUnit.INCH)).isEqualTo(31.75);
    assertThat(items.get(0).length(LengthUnit.MM)).isEqualTo(1.25);
    assertThat(items.get(1).length(LengthUnit.MM)).isEqualTo(31.75);
    assertThat(items.get(2).length(LengthUnit.INCH)).isEqualTo(12);
    for (int i = 3; i < items.size(); i++) {
      Node node = items.get(i);
      assertThat(refusal(() -> node.length(LengthUnit.MM)).path()).isEqualTo("$[" + i + "]");
    }
  }

  @Test
  void aNullIsNotToBeLeftOutWhereTheFieldIsNeeded() {
    Node root = LocatedJson.parse("x", "{ \"title\": null, \"list\": [null] }");
    assertThatThrownBy(() -> root.require("title").string())
        .hasMessageContaining("Write text in quotes")
        .hasMessageNotContaining("leave");
    assertThatThrownBy(() -> root.get("title").orElseThrow().string())
        .hasMessageContaining("or leave the field out");
    assertThatThrownBy(() -> root.require("list").array().get(0).string())
        .hasMessageContaining("or take it out");
  }

  @Test
  void aCountIsAskedForAsAWholeNumber() {
    Node root = LocatedJson.parse("x", "{ \"quantity\": \"two\" }");
    assertThatThrownBy(() -> root.require("quantity").integer(1, 9))
        .hasMessageContaining("such as 2")
        .hasMessageNotContaining("12.5");
  }
}
