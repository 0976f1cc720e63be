package padwright.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padwright.material.CatalogueReader;
import padwright.measure.InputRefused;

/** Every kind of refusal names file, line, path, value and remedy, whatever it is that is wrong. */
class RefusalKindsTest {
  @TempDir private Path folder;

  // Kind, what is replaced in desk-rest.json (see there for the lines; empty: the whole file) and
  // by
  // what, then line, path, and the value as it must be said. In a replacement @N is N times the
  // character after it, so that long ones stay readable here.
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
      unknown field, text|"title":|"titel": "u", "title":|3|$.titel|its value is "u"
      unknown field, number|"units":|"unit": 7, "units":|4|$.unit|its value is 7
      unknown field, long text|"title":|"titel": "@9000x", "title":|3|$.titel|its value is "xxxxxxxxxx
      unknown field, object|"title":|"titel": {"a": [1, true]}, "title":|3|$.titel|its value is {"a": [1, true]}
      duplicate key|"quantity": 2|"quantity": 2, "quantity": 3|8|$.parts[0].quantity|line 8 as 2, then as 3
      duplicate key, object|"edge":|"foam": {}, "edge":|19|$.parts[0].foam|then as {}
      negative|"turnUnder": 20|"turnUnder": -20|20|$.parts[0].cover.turnUnder|-20 is negative
      zero|"turnUnder": 20|"turnUnder": 0|20|$.parts[0].cover.turnUnder|0 is zero
      NaN|"grip": 0|"grip": NaN|21|$.parts[0].cover.grip|NaN is not JSON
      Infinity|"grip": 0|"grip": Infinity|21|$.parts[0].cover.grip|Infinity is not JSON
      minus Infinity|"grip": 0|"grip": -Infinity|21|$.parts[0].cover.grip|-Infinity is not JSON
      NaN in a list|"auto"|{ "each": ["auto", NaN] }|22|$.parts[0].corners.each[1]|NaN is not JSON
      leading plus|"grip": 0|"grip": +1|21|$.parts[0].cover.grip|+1 is not JSON
      leading nought|"grip": 0|"grip": 01|21|$.parts[0].cover.grip|01 is not JSON
      bare point|"grip": 0|"grip": .5|21|$.parts[0].cover.grip|.5 is not JSON
      point without digits|"grip": 0|"grip": 5.|21|$.parts[0].cover.grip|5. is not JSON
      hexadecimal|"grip": 0|"grip": 0x10|21|$.parts[0].cover.grip|0x10 is not JSON
      NaN given again|"grip": 0|"grip": 0, "grip": NaN|21|$.parts[0].cover.grip|NaN is not JSON
      bare word|"grip": 0|"grip": ten|21|$.parts[0].cover.grip|ten is not JSON
      single quotes|"grip": 0|"grip": '6'|21|$.parts[0].cover.grip|'6'
      name without quotes|"grip": 0|grip: 0|21|$.parts[0].cover|grip is not JSON
      comma left over|"grip": 0|"grip": 0,|21|$.parts[0].cover|"grip": 0,
      wrong bracket|{ "round": 6 }|{ "round": 6 ]|19|$.parts[0].edge|"round": 6 ]
      1e9|"turnUnder": 20|"turnUnder": 1e9|20|$.parts[0].cover.turnUnder|1e9 is more than
      1e9 of a number|"along": 0|"along": 1e9|21|$.parts[0].cover.stretchAllowance.along|1e9 is too large
      1e999|"turnUnder": 20|"turnUnder": 1e999|20|$.parts[0].cover.turnUnder|1e999 is too large
      1e999 as text|"turnUnder": 20|"turnUnder": "1e999"|20|$.parts[0].cover.turnUnder|"1e999"
      overlong name of a part|Forearm rest|@200x|7|$.parts[0].name|"xxxxxxxxxx
      overlong text|Forearm rest|@10001x|7|$.parts[0].name|"xxxxxxxxxx
      hugely long text|Forearm rest|@1000000x|7|$.parts[0].name|"xxxxxxxxxx
      overlong field name|"corners"|"@10001x"|22|$.parts[0]['xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx...']|10001 characters
      overlong number|"leg": 8|"leg": @101~8|23|$.parts[0].staples.leg|8888888888
      hugely long number|"leg": 8|"leg": @100000~8|23|$.parts[0].staples.leg|8888888888
      overlong fraction|"leg": 8|"leg": 0.@100000~8|23|$.parts[0].staples.leg|0.8888
      overlong length|"leg": 8|"leg": "@65~8"|23|$.parts[0].staples.leg|"8888888888
      too many parts of a list|"auto"|{ "each": ["auto", "auto", "auto", "auto", "auto"] }|22|$.parts[0].corners.each|5 items
      deep nesting|"auto"|@100000[|22|$.parts[0].corners[0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0]|a list in [ ]
      truncated after a name|"leg": 8, "spacing": 25, "edgeDistance": 10 }|"leg":@END|23|$.parts[0].staples.leg|"leg":
      truncated in a text|"auto",|"au@END|22|$.parts[0].corners|"au
      truncated in an object|{ "round": 6 },|{ "round": 6@END|19|$.parts[0].edge.round|"round": 6
      truncated after a comma|"version": 1,|"version": 1,@END|2|$|"version": 1,
      truncated in a list|"auto",|{ "each": ["auto"@END|22|$.parts[0].corners.each|["auto"
      truncated in a list after a comma|"auto",|{ "each": ["auto", @END|22|$.parts[0].corners.each[1]|["auto",
      truncated at the start||{|1|$|{
      empty file|||1|$|empty
      a second document||{} [1, 2]|1|$|a list in [ ]
      text after the end||{} x|1|$|x is not JSON
      not an object||[]|1|$|a list in [ ]
      empty parts||{"format":"padwright-job","version":1,"title":"t","units":"mm","parts":[]}|1|$.parts|0 items
      wrong type, text|"quantity": 2|"quantity": "2"|8|$.parts[0].quantity|"2" is not a number
      wrong type, list|"quantity": 2|"quantity": [2]|8|$.parts[0].quantity|a list in [ ] is not a number
      wrong type, null|"quantity": 2|"quantity": null|8|$.parts[0].quantity|null
      missing field|"version": 1,||1|$|"version" is missing
      missing row|"birch-plywood"|"birch"|12|$.parts[0].base.board|"birch" is not known
      wrong unit|"turnUnder": 20|"turnUnder": "2 cubits"|20|$.parts[0].cover.turnUnder|"2 cubits" has an unknown unit "cubits"
      bad word|"auto"|"folded"|22|$.parts[0].corners|"folded" is not known
      no length|"turnUnder": 20|"turnUnder": ""|20|$.parts[0].cover.turnUnder|""
      blank label|"title": "Reading nook"|"title": " "|3|$.title|" "
      line break|"title": "Reading nook"|"title": "a\\nb"|3|$.title|"a?b"
      unprintable|"title": "Reading nook"|"title": "a\\u0007b"|3|$.title|U+0007
      two ways of one thing|"auto"|{ "treatment": "auto", "each": ["eased"] }|22|$.parts[0].corners.each|["eased"]
      two shapes|{ "round": 6 }|{ "round": 6, "bevel": 7 }|19|$.parts[0].edge|{"round": 6, "bevel": 7}
      screws without the host's thickness|"corners": "auto",|"host": { "fixing": "screws" }, "corners": "auto",|22|$.parts[0].host|"thickness" is missing, and it is needed with screws: {"fixing": "screws"}
      hole outside|"birch-plywood",|"mdf", "holes": [{ "x": 1, "y": 31, "diameter": 4 }],|12|$.parts[0].base.holes[0]|1, 31: its middle
      """)
  void aJobIsRefusedWithFileLinePathValueAndRemedy(
      String kind, String before, String after, int line, String path, String value)
      throws IOException {
    String put = written(after == null ? "" : after);
    String text = before == null ? put : JobText.with(before, put);
    text = text.contains("@END") ? text.substring(0, text.indexOf("@END")) : text;
    Path file = Files.writeString(folder.resolve("job.json"), text);
    InputRefused r =
        catchThrowableOfType(InputRefused.class, () -> new JobReader(Materials.small()).read(file));
    saysAll(r, file, line, path, value);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
      unknown section|{"board": [1]}|1|$.board|its value is [1]
      no section|{"version": 1}|1|$|{"version": 1}
      unknown field|{"screws": [{"idd": {"a": 1}}]}|1|$.screws[0].idd|its value is {"a": 1}
      NaN|{"screws": [{"id": "a", "shank": NaN}]}|1|$.screws[0].shank|NaN is not JSON
      negative|{"screws": [{"id": "a", "shank": -4}]}|1|$.screws[0].shank|-4 is too small
      1e9|{"screws": [{"id": "a", "shank": 1e9}]}|1|$.screws[0].shank|1e9 is more than
      wrong unit|{"screws": [{"id": "a", "shank": "4 ells"}]}|1|$.screws[0].shank|"4 ells"
      missing|{"screws": [{"id": "a"}]}|1|$.screws[0]|"shank" is missing
      wrong type|{"screws": [{"id": 7}]}|1|$.screws[0].id|7 is not text
      bad word|{"units": "feet", "screws": []}|1|$.units|"feet" is not known
      empty section|{"screws": []}|1|$.screws|0 items
      truncated|{"screws": [{"id": "a", "shank": |1|$.screws[0].shank|"shank":
      empty||1|$|empty
      """)
  void aCatalogueIsRefusedWithFileLinePathValueAndRemedy(
      String kind, String text, int line, String path, String value) throws IOException {
    Path file = Files.writeString(folder.resolve("mine.json"), text == null ? "" : text);
    InputRefused r =
        catchThrowableOfType(
            InputRefused.class, () -> CatalogueReader.overlay(CatalogueReader.builtIn(), file));
    saysAll(r, file, line, path, value);
  }

  @Test
  void textThatIsNotUtf8IsRefusedWithItsPlaceAndByte() throws IOException {
    String cafe = JobText.with("Forearm rest", "caf\u00e9");
    Path file = Files.write(folder.resolve("job.json"), cafe.getBytes(StandardCharsets.ISO_8859_1));
    JobReader reader = new JobReader(Materials.small());
    // ISO 8859-1: e with an acute accent is E9, which begins a longer character in UTF-8.
    saysAll(
        catchThrowableOfType(InputRefused.class, () -> reader.read(file)),
        file,
        7,
        "$.parts[0].name",
        "byte e9");
    // The byte order mark of UTF-16 is FE FF; of UTF-8 it is EF BB BF and means nothing.
    Files.write(file, JobText.deskRest().getBytes(StandardCharsets.UTF_16));
    saysAll(
        catchThrowableOfType(InputRefused.class, () -> reader.read(file)), file, 1, "$", "byte fe");
    Files.writeString(file, "\uFEFF" + JobText.deskRest());
    assertThat(reader.read(file).parts()).hasSize(1);
  }

  private static void saysAll(InputRefused r, Path file, int line, String path, String value) {
    assertThat(r).as("not refused").isNotNull();
    assertThat(r.file()).isEqualTo(file.toString());
    assertThat(r.line()).as(r.getMessage()).isEqualTo(line);
    assertThat(r.path()).as(r.getMessage()).isEqualTo(path);
    assertThat(r.problem()).contains(value);
    assertThat(r.problem().length()).as(r.problem()).isLessThan(200);
    assertThat(r.remedy()).isNotBlank();
    assertThat(r.getMessage()).startsWith(file + ", line " + line + ": " + path + ": ");
  }

  /** Writes out {@code @N} and what follows, N times; a ~ parts N from a digit. */
  private static String written(String text) {
    return Pattern.compile("@(\\d+)~?(.)")
        .matcher(text)
        .replaceAll(m -> Matcher.quoteReplacement(m.group(2).repeat(Integer.parseInt(m.group(1)))));
  }
}
