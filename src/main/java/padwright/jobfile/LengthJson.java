package padwright.jobfile;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import padwright.design.Units;
import padwright.measure.Length;
import padwright.measure.LengthText;
import padwright.measure.LengthUnit;
import padwright.measure.Rounding;

/**
 * Writes a length in mm as a job file's value, such that reading it gives the very same double: a
 * plain number in a job in mm; in a job in inches a number, a fraction, or a text in mm where
 * inches would need a long tail of digits.
 */
final class LengthJson {
  /** Finest fraction on a maker's rule. */
  private static final int PARTS = 64;

  /** Decimals of an inch that a maker would write; a tenth of a thousandth. */
  private static final int INCH_DECIMALS = 4;

  private LengthJson() {}

  /** A {@link BigDecimal} for a number, or a text. */
  static Object of(double mm, Units units) {
    return units == Units.MM ? number(BigDecimal.valueOf(mm)) : inches(mm);
  }

  /** A plain number: no exponent where there need be none, no empty decimals. */
  static BigDecimal number(BigDecimal n) {
    BigDecimal stripped = n.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  private static Object inches(double mm) {
    String fraction = LengthText.inches(mm, PARTS, Rounding.NEAREST);
    if (Length.parse(fraction, LengthUnit.INCH) == mm) {
      return fraction.contains("/")
          ? fraction
          : new BigDecimal(fraction.substring(0, fraction.indexOf(' ')));
    }
    BigDecimal decimal =
        BigDecimal.valueOf(mm)
            .divide(LengthUnit.INCH.millimetres(), MathContext.DECIMAL64)
            .setScale(INCH_DECIMALS, RoundingMode.HALF_EVEN);
    return Length.of(decimal, LengthUnit.INCH) == mm
        ? number(decimal)
        : number(BigDecimal.valueOf(mm)).toPlainString() + " mm";
  }
}
