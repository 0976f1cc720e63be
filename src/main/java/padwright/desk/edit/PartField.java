package padwright.desk.edit;

import java.util.List;
import padwright.design.Units;
import padwright.measure.LengthUnit;

/**
 * A field of a part that can be filled in.
 *
 * @param place in the job file, such as {@code foam[1].thickness}
 * @param label what a maker calls it
 * @param optional it may be left empty, and a default is taken then
 * @param choices what a {@link Kind#CHOICE} offers; else empty
 * @param step how far one nudge goes, mm or the field's own unit
 */
public record PartField(
    String place, String label, Kind kind, boolean optional, List<Choice> choices, double step) {
  /** A 64th of an inch is an inch halved so often. */
  private static final int FINEST_HALVINGS = 6;

  public PartField {
    choices = List.copyOf(choices);
  }

  /**
   * How far one nudge goes in a job of such units, mm or the field's own unit: where lengths are
   * inches, the fraction of an inch on the rule that comes nearest, no finer than a 64th.
   */
  public double step(Units units) {
    if (kind != Kind.LENGTH || units == Units.MM || step <= 0) {
      return step;
    }
    double inch = LengthUnit.INCH.millimetres().doubleValue();
    long halvings = Math.round(Math.log(inch / step) / Math.log(2));
    return inch / (1L << Math.max(0, Math.min(FINEST_HALVINGS, halvings)));
  }

  /**
   * A value so many steps further. An inch rule has marks; what lies between two of them goes to
   * the nearest one.
   */
  public double nudged(double value, double steps, Units units) {
    double own = step(units);
    double next = value + steps * own;
    return own == step ? next : Math.rint(next / own) * own;
  }

  /** What is filled in. */
  public enum Kind {
    LENGTH,
    /** A fraction shown in hundredths. */
    PERCENT,
    COUNT,
    NUMBER,
    CHOICE,
    WORDS,
    FLAG
  }

  /**
   * One of several.
   *
   * @param value as in the job file
   * @param label as a maker says it
   */
  public record Choice(String value, String label) {}

  static PartField length(String place, String label, boolean optional, double step) {
    return new PartField(place, label, Kind.LENGTH, optional, List.of(), step);
  }

  static PartField choice(String place, String label, boolean optional, List<Choice> choices) {
    return new PartField(place, label, Kind.CHOICE, optional, choices, 0);
  }
}
