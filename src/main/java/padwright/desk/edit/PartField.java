package padwright.desk.edit;

import java.util.List;

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
  public PartField {
    choices = List.copyOf(choices);
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
