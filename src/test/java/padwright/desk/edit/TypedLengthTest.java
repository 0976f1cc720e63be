package padwright.desk.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import padwright.measure.InputRefused;
import padwright.measure.LengthUnit;

/** What a maker types comes to the mm worked by hand, to the last bit; an inch is 25.4 mm. */
class TypedLengthTest {
  /** Each value worked by hand beside it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "12; 12",
        "12+12; 24",
        " 12 + 12 ; 24",
        "12 + 12 + 6 - 3; 27",
        "3*12; 36",
        "3 × 12; 36",
        "600-2*18; 564", // 600 - 36
        "600 - 2*18; 564",
        "(600-18)/2; 291", // 582 / 2
        "(600 − 18) / 2; 291",
        "600-18/2; 591", // 600 - 9: eighteen halves are no fraction of a mm beside a whole
        "600-18/2+1; 592",
        "20+600-18/2; 611",
        "2 - 1/4; 1.75",
        "3/4; 0.75",
        "1-1/4 in; 31.75", // 1.25 x 25.4
        "1 1/4 in; 31.75",
        "1¼ in; 31.75",
        "1 1/4 in + 6 mm; 37.75", // 31.75 + 6
        "6 mm + 1 1/4 in; 37.75",
        "1/4 in * 4; 25.4",
        "4 * 1/4 in; 25.4",
        "1 in / 4; 6.35",
        "2 ft 3 in; 685.8", // 27 x 25.4
        "2 ft 3 in + 5 mm; 690.8",
        "1 cm + 1 mm; 11",
        "1 m - 1 cm; 990",
        "1 in - 1; 24.4", // the plain number is a mm
        "-6; -6",
        "-6 + 2; -4",
        "-(6 + 2); -8",
        "2 - -1; 3",
        "0.1+0.2; 0.3", // binary fractions alone would make 0.30000000000000004
        "1.1*3; 3.3",
        "((12)); 12",
        "20000/4 - 4000; 1000",
      })
  void aSumInMm(String typed, double mm) {
    assertThat(TypedLength.parse(typed, LengthUnit.MM)).isEqualTo(mm);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "12; 304.8",
        "1 1/4; 31.75",
        "1-1/4; 31.75",
        "2 - 1/4; 44.45", // 1.75 x 25.4
        "3/4; 19.05",
        "1/4 + 1/4; 12.7",
        "24 - 2*3/4; 571.5", // 22.5 x 25.4
        "24 - 20 mm; 589.6", // 609.6 - 20
        "12 + 1/3; 313.2666666667", // 304.8 + 8.4666..., to a tenth of a millionth
      })
  void aPlainNumberIsInTheJobsUnit(String typed, double mm) {
    assertThat(TypedLength.parse(typed, LengthUnit.INCH))
        .isCloseTo(mm, org.assertj.core.api.Assertions.within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "+",
        "-",
        "12+",
        "*3",
        "12 12",
        "(12",
        "12)",
        "()",
        "1/0",
        "12/0",
        "12/(3-3)",
        "5 in * 2 in",
        "5 / (2 in)",
        "12 kg",
        "1,5",
        "1,5 + 2",
        "twelve",
        "12 + x",
        "9999 + 2",
        "-9999 - 2",
        "1e5",
        "1 +* 2",
        "NaN",
        "Infinity",
        "0x10",
        "12;",
        "3..5 + 1",
        "1/2/",
        "//",
        "10001",
        "1 ft 2 ft",
        "1 in 2 ft + 3"
      })
  void whatIsNoLengthIsRefusedInWords(String typed) {
    InputRefused r = refused(typed);
    assertThat(r.problem()).isNotBlank();
    assertThat(r.remedy()).isNotBlank();
  }

  @Test
  void hostileTextsAreRefusedSoon() {
    for (String text :
        new String[] {
          "(".repeat(100_000),
          "(".repeat(119) + "1",
          "-".repeat(119) + "(",
          "9".repeat(118) + "+1",
          "1+".repeat(5_000) + "1",
          "1 " + " ".repeat(100) + "x",
          "1/" + "3".repeat(100) + "*2/",
          "\u0000+1",
          "\ud800+1",
          "1" + " 1".repeat(59)
        }) {
      long start = System.nanoTime();
      InputRefused r = refused(text);
      assertThat(r.getMessage().length()).isLessThan(400);
      // A second is a thousand times what it takes; a text that doubles the work at each sign
      // would take years.
      assertThat(System.nanoTime() - start).isLessThan(1_000_000_000L);
    }
  }

  @Test
  void theWordsSayWhatIsWrong() {
    assertThat(refused("5 in * 2 in").problem()).contains("area");
    assertThat(refused("12/(3-3)").problem()).contains("divides by zero");
    assertThat(refused("(12+1").problem()).contains("closing bracket");
    assertThat(refused("12+").problem()).contains("ends where a number should stand");
    assertThat(refused("12 + x").problem()).contains("\"x\"");
    assertThat(refused("9999 + 2").problem()).contains("10 m");
  }

  private static InputRefused refused(String typed) {
    InputRefused r =
        catchThrowableOfType(InputRefused.class, () -> TypedLength.parse(typed, LengthUnit.MM));
    assertThat(r).as(typed).isNotNull();
    return r;
  }
}
