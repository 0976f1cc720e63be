package padwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTextTest {
  // Worked by hand: 1/16 in = 1.5875 mm, 1/32 in = 0.79375 mm.
  @ParameterizedTest(name = "{0} mm in 1/{1} {2} is {3}")
  @CsvSource({
    "25.4, 16, NEAREST, 1 in",
    "31.75, 16, NEAREST, 1 1/4 in",
    "12.7, 16, UP, 1/2 in",
    "4.7625, 16, DOWN, 3/16 in",
    "48, 16, NEAREST, 1 7/8 in",
    "48, 16, DOWN, 1 7/8 in",
    "48, 16, UP, 1 15/16 in",
    "48, 32, DOWN, 1 7/8 in",
    "48, 32, UP, 1 29/32 in",
    "0.4, 16, DOWN, 0 in",
    "0.4, 16, UP, 1/16 in",
    "0, 16, UP, 0 in",
    "-6.35, 16, NEAREST, -1/4 in",
    "-31.75, 32, NEAREST, -1 1/4 in",
    "304.8, 1, NEAREST, 12 in",
  })
  void inchesPrintAsFractions(double mm, int parts, Rounding rounding, String text) {
    assertThat(LengthText.inches(mm, parts, rounding)).isEqualTo(text);
  }

  @ParameterizedTest(name = "{0} mm to {1} digits {2} is {3}")
  @CsvSource({
    "57.5708, 1, NEAREST, 57.6 mm",
    "57.5708, 1, DOWN, 57.5 mm",
    "57.5708, 4, NEAREST, 57.5708 mm",
    "57.51, 1, UP, 57.6 mm",
    "0.04, 1, NEAREST, 0.0 mm",
    "-0.04, 1, NEAREST, 0.0 mm",
    "12, 0, UP, 12 mm",
    "9999.96, 1, UP, 10000.0 mm",
  })
  void mmPrintWithTheDigitsAsked(double mm, int digits, Rounding rounding, String text) {
    assertThat(LengthText.mm(mm, digits, rounding)).isEqualTo(text);
  }

  @Test
  void noiseOfASumDoesNotMoveALengthToTheNextMark() {
    double sum = 0;
    for (int i = 0; i < 125; i++) {
      sum += 25.4 / 100;
    }
    assertThat(sum).isNotEqualTo(31.75);
    assertThat(LengthText.inches(sum, 16, Rounding.UP)).isEqualTo("1 1/4 in");
    assertThat(LengthText.inches(31.75 + 1e-9, 16, Rounding.UP)).isEqualTo("1 1/4 in");
    assertThat(LengthText.inches(31.75 - 1e-9, 16, Rounding.DOWN)).isEqualTo("1 1/4 in");
    assertThat(LengthText.mm(0.1 + 0.2, 1, Rounding.UP)).isEqualTo("0.3 mm");
  }

  @Test
  void aBaseIsNeverPrintedLargerNorACoverSmallerThanItIs() {
    Random random = new Random(20260401);
    for (int i = 0; i < 20_000; i++) {
      double mm = random.nextDouble() * (Length.LARGEST - 25.4);
      for (int parts : new int[] {16, 32}) {
        String down = LengthText.inches(mm, parts, Rounding.DOWN);
        String up = LengthText.inches(mm, parts, Rounding.UP);
        double below = Length.parse(down, LengthUnit.MM);
        double above = Length.parse(up, LengthUnit.MM);
        assertThat(below).isLessThanOrEqualTo(mm + LengthText.ON_THE_MARK);
        assertThat(above).isGreaterThanOrEqualTo(mm - LengthText.ON_THE_MARK);
        assertThat(above - below).isLessThan(25.4 / parts + 1e-9);
      }
    }
  }

  @Test
  void printingDoesNotDependOnTheMachinesLanguage() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(LengthText.mm(1234.56)).isEqualTo("1234.6 mm");
      Locale.setDefault(Locale.GERMANY);
      assertThat(LengthText.in(LengthUnit.MM, 1234.56, Rounding.UP)).isEqualTo("1234.6 mm");
      assertThat(LengthText.in(LengthUnit.INCH, 25.4, Rounding.UP)).isEqualTo("1 in");
    } finally {
      Locale.setDefault(before);
    }
  }

  /** Exact decimals are the reference; lengths near a mark and far from one, both signs. */
  @Test
  void roundingAgreesWithExactDecimals() {
    Random random = new Random(20261125);
    BigDecimal slack = BigDecimal.valueOf(LengthText.ON_THE_MARK);
    for (int i = 0; i < 20_000; i++) {
      int digits = random.nextInt(4);
      double mm = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(7));
      if (i % 2 == 0) {
        mm = Math.rint(mm * 2 * Math.pow(10, digits)) / 2 / Math.pow(10, digits);
        mm += (random.nextInt(5) - 2) * LengthText.ON_THE_MARK / 2;
      }
      BigDecimal exact = new BigDecimal(mm);
      assertThat(LengthText.mmNumber(mm, digits, Rounding.NEAREST))
          .isEqualTo(exact.setScale(digits, RoundingMode.HALF_UP).toPlainString());
      assertThat(LengthText.mmNumber(mm, digits, Rounding.DOWN))
          .isEqualTo(exact.add(slack).setScale(digits, RoundingMode.FLOOR).toPlainString());
      assertThat(LengthText.mmNumber(mm, digits, Rounding.UP))
          .isEqualTo(exact.subtract(slack).setScale(digits, RoundingMode.CEILING).toPlainString());
    }
  }

  @Test
  void whatIsNotFiniteIsAFaultOfTheCaller() {
    assertThatThrownBy(() -> LengthText.mm(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> LengthText.inches(1, 12, Rounding.UP))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
