package padwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {
  // Expected mm worked by hand from 1 in = 25.4 mm exactly (international yard and pound agreement,
  // 1959) and 1 ft = 12 in.
  @ParameterizedTest(name = "{0} in a job in {1} is {2} mm")
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "12, MM, 12",
        "12, INCH, 304.8",
        "1 in, MM, 25.4",
        "1in, MM, 25.4",
        "1 1/4 in, MM, 31.75",
        "1-1/4 in, MM, 31.75",
        "1 1/4, INCH, 31.75",
        "1 \u00bc in, MM, 31.75",
        "1\u00bc\", MM, 31.75",
        "\u00bd in, MM, 12.7",
        "3/16\", MM, 4.7625",
        "3/16\u2033, MM, 4.7625",
        "1/3 in, MM, 8.466666666666667",
        "1.5in, MM, 38.1",
        ".5 in, MM, 12.7",
        "1.5 INCHES, MM, 38.1",
        "12mm, INCH, 12",
        "12 mm, INCH, 12",
        "1.2 cm, MM, 12",
        "1.2 m, INCH, 1200",
        "2 ft, MM, 609.6",
        "2', MM, 609.6",
        "2' 6\", MM, 762",
        "2'6\", MM, 762",
        "2 ft 3 1/2 in, MM, 698.5",
        "2 ft 3, MM, 685.8",
        "-6 mm, MM, -6",
        "-1 1/4 in, MM, -31.75",
        "  7  mm , MM, 7",
        "0, MM, 0",
        "10000, MM, 10000",
        "0.003 in, MM, 0.0762",
      })
  void aLengthIsReadAsAMakerWritesIt(String text, LengthUnit plain, double mm) {
    assertThat(Length.parse(text, plain)).isEqualTo(mm);
  }

  @Test
  void theSameLengthInInchesAndInMmIsTheSameDouble() {
    for (int n = 1; n < 640; n++) {
      // 25.4 n / 64 = 0.396875 n, a finite decimal: BigDecimal holds it exactly.
      double mm = new BigDecimal("0.396875").multiply(BigDecimal.valueOf(n)).doubleValue();
      assertThat(Length.parse(n + "/64 in", LengthUnit.MM)).isEqualTo(mm);
      assertThat(Length.parse(n / 64 + " " + n % 64 + "/64", LengthUnit.INCH)).isEqualTo(mm);
      assertThat(Length.of(BigDecimal.valueOf(n / 64.0), LengthUnit.INCH)).isEqualTo(mm);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "wide",
        "NaN",
        "Infinity",
        "-Infinity",
        "1e9",
        "1e3 mm",
        "0x10",
        "1/0 in",
        "1/",
        "/4",
        "1 1/4 1/4 in",
        "1 2 in",
        "--6",
        "+6",
        "6 mm 3 mm",
        "2 ft 3 mm",
        "3 in 2 ft",
        "2 ft -3 in",
        "12 mn",
        "12 mm wide",
        "1.5.2",
        "1 1.5/2 in",
        "12;",
        "\u0661\u0662 mm",
        "mm",
        "12\u0000mm",
        "in 12"
      })
  void whatIsNoLengthIsRefusedWithAnExample(String text) {
    assertThatThrownBy(() -> Length.parse(text, LengthUnit.MM))
        .isInstanceOfSatisfying(
            InputRefused.class, r -> assertThat(r.remedy()).containsPattern("mm|10 m"));
  }

  @Test
  void aDecimalCommaIsRefusedWithTheRemedy() {
    assertThatThrownBy(() -> Length.parse("1,5 in", LengthUnit.MM))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("with a point");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"10000.001", "10.001 m", "33 ft", "394 in", "-10001", "99999999999999999 mm"})
  void aLengthOverTenMetresIsRefused(String text) {
    assertThatThrownBy(() -> Length.parse(text, LengthUnit.MM))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("10 m");
  }

  @Test
  void numbersThatAreNoLengthAreRefused() {
    for (double d : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
      assertThatThrownBy(() -> Length.of(d, LengthUnit.MM)).isInstanceOf(InputRefused.class);
    }
    for (String s : new String[] {"1e9", "1e999999999", "-1e999999999", "1e-999999999"}) {
      assertThatThrownBy(() -> Length.of(new BigDecimal(s), LengthUnit.INCH))
          .isInstanceOf(InputRefused.class);
    }
    assertThatThrownBy(() -> Length.parse("9".repeat(100_000), LengthUnit.MM))
        .isInstanceOf(InputRefused.class)
        .satisfies(e -> assertThat(e.getMessage().length()).isLessThan(300));
  }

  @Test
  void minusZeroIsZero() {
    assertThat(Double.doubleToRawLongBits(Length.parse("-0", LengthUnit.MM))).isZero();
    assertThat(Double.doubleToRawLongBits(Length.of(-0.0, LengthUnit.MM))).isZero();
  }
}
