package padwright.design;

import java.util.OptionalDouble;

/**
 * Something the maker must know about a part.
 *
 * @param rule stable id, such as {@code staple-breakthrough}
 * @param message one plain sentence
 * @param value the number found, in {@code unit}; empty where the rule has none
 * @param limit the limit it was held against; empty where there is none
 * @param unit mm, N, %, or empty
 * @param source where the limit comes from
 * @param remedy what to do about it
 */
public record Finding(
    String rule,
    Level level,
    String message,
    OptionalDouble value,
    OptionalDouble limit,
    String unit,
    String source,
    String remedy) {
  /** How grave a finding is. */
  public enum Level {
    /** Do not build this. */
    STOP,
    CAUTION,
    NOTE
  }

  public static Finding of(
      String rule,
      Level level,
      String message,
      double value,
      double limit,
      String unit,
      String source,
      String remedy) {
    return new Finding(
        rule,
        level,
        message,
        OptionalDouble.of(value),
        OptionalDouble.of(limit),
        unit,
        source,
        remedy);
  }

  /** A finding that may have a number and no limit, or neither. */
  public static Finding of(
      String rule,
      Level level,
      String message,
      OptionalDouble value,
      OptionalDouble limit,
      String unit,
      String source,
      String remedy) {
    return new Finding(rule, level, message, value, limit, unit, source, remedy);
  }

  /** A finding that has no number. */
  public static Finding plain(
      String rule, Level level, String message, String source, String remedy) {
    return new Finding(
        rule, level, message, OptionalDouble.empty(), OptionalDouble.empty(), "", source, remedy);
  }
}
