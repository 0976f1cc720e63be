package padwright.measure;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A unit a length may be written in. Every factor to mm is an exact decimal. */
public enum LengthUnit {
  MM("mm", "1"),
  CM("cm", "10"),
  METRE("m", "1000"),
  INCH("in", "25.4"),
  FOOT("ft", "304.8");

  private static final Map<String, LengthUnit> BY_MARK =
      Map.ofEntries(
          Map.entry("mm", MM),
          Map.entry("cm", CM),
          Map.entry("m", METRE),
          Map.entry("in", INCH),
          Map.entry("in.", INCH),
          Map.entry("inch", INCH),
          Map.entry("inches", INCH),
          Map.entry("\"", INCH),
          Map.entry("\u2033", INCH),
          Map.entry("\u201d", INCH),
          Map.entry("''", INCH),
          Map.entry("ft", FOOT),
          Map.entry("ft.", FOOT),
          Map.entry("foot", FOOT),
          Map.entry("feet", FOOT),
          Map.entry("'", FOOT),
          Map.entry("\u2032", FOOT),
          Map.entry("\u2019", FOOT));

  private final String mark;
  private final BigDecimal millimetres;

  LengthUnit(String mark, String millimetres) {
    this.mark = mark;
    this.millimetres = new BigDecimal(millimetres);
  }

  /** How it is written after a number. */
  public String mark() {
    return mark;
  }

  /** How many mm one of it is, exactly. */
  public BigDecimal millimetres() {
    return millimetres;
  }

  /**
   * The unit written as {@code mark}, in any case: mm, cm, m, in, inch, ", ft, feet, ' and so on.
   */
  static Optional<LengthUnit> marked(String mark) {
    return Optional.ofNullable(BY_MARK.get(mark.toLowerCase(Locale.ROOT)));
  }
}
