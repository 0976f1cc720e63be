package padwright.jobfile;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import padwright.design.Units;
import padwright.json.Node;
import padwright.measure.LengthUnit;

/**
 * Reads the lengths of one job: a number in the job's units or a text with its own. Answers in mm;
 * refuses with the value's place.
 */
final class Lengths {
  private static final int SHOWN_DIGITS = 3;

  private final LengthUnit unit;

  Lengths(Units units) {
    this.unit = unitOf(units);
  }

  static LengthUnit unitOf(Units units) {
    return units == Units.MM ? LengthUnit.MM : LengthUnit.INCH;
  }

  /** A length from {@code least} to {@code most} mm, both included. */
  double mm(Node node, double least, double most) {
    double mm = node.length(unit);
    if (mm < least) {
      throw node.refuse(
          node.shown() + tooSmall(mm, least), "Give a length from " + range(least, most));
    }
    if (mm > most) {
      throw node.refuse(node.shown() + " is too large", "Give a length from " + range(least, most));
    }
    return mm;
  }

  /** The same of a field that may be left out. */
  OptionalDouble optional(Node object, String field, double least, double most) {
    Optional<Node> node = object.get(field);
    return node.isPresent()
        ? OptionalDouble.of(mm(node.get(), least, most))
        : OptionalDouble.empty();
  }

  private static String tooSmall(double mm, double least) {
    if (least < 0) {
      return " is too small";
    }
    if (mm < 0) {
      return " is negative";
    }
    return mm == 0 ? " is zero" : " is too small";
  }

  private String range(double least, double most) {
    return shown(least) + " to " + shown(most);
  }

  /** A length for a message, in the job's units, rounded to the third digit. */
  String shown(double mm) {
    return plain(mm) + " " + unit.mark();
  }

  /** The same without the unit. */
  String plain(double mm) {
    return BigDecimal.valueOf(mm)
        .divide(unit.millimetres(), SHOWN_DIGITS, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
