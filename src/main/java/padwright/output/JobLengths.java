package padwright.output;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padwright.design.Finding;
import padwright.design.Units;
import padwright.measure.LengthText;
import padwright.measure.Rounding;
import padwright.measure.Sentence;

/**
 * Prints lengths given in mm the way a job wants them: mm first in a job in mm, and in a job in
 * inches inches first, in fractions where they are measured and in thousandths where they are only
 * compared, with the mm after them. A length that is not finite is a dash.
 */
public record JobLengths(Units units) {
  private static final Pattern WHOLLY_MM = Pattern.compile("(-?\\d+(?:\\.\\d+)?) mm");

  public boolean inches() {
    return units == Units.INCH;
  }

  /** Without the unit, to a tenth of a mm. */
  public static String mm(double mm, Rounding rounding) {
    return Double.isFinite(mm) ? LengthText.mmNumber(mm, LengthText.MM_DIGITS, rounding) : "-";
  }

  /** Without the unit, to a thirty-second. */
  public static String inches(double mm, Rounding rounding) {
    if (!Double.isFinite(mm)) {
      return "-";
    }
    String text = LengthText.inches(mm, LengthText.INCH_PARTS, rounding);
    return text.substring(0, text.length() - " in".length());
  }

  /** In running text: {@code 20.0 mm}, or {@code 25/32 in (20.0 mm)}. */
  public String spoken(double mm) {
    return spoken(mm, mm(mm, Rounding.NEAREST));
  }

  /** A leg, which is named by its whole or half mm: {@code 8}, or {@code 5/16 in (8 mm)}. */
  public String leg(double mm) {
    return inches() ? spoken(mm, Sentence.plain(Math.round(mm * 10) / 10.0)) : Sentence.plain(mm);
  }

  private String spoken(double mm, String text) {
    return inches() ? inches(mm, Rounding.NEAREST) + " in (" + text + " mm)" : text + " mm";
  }

  /** A depth in a table: {@code 7.0}, or {@code 0.276 (7.0)}. */
  public String depth(double mm) {
    String text = mm(mm, Rounding.NEAREST);
    return inches() && Double.isFinite(mm) ? LengthText.thousandths(mm) + " (" + text + ")" : text;
  }

  /** The head of a table of depths. */
  public String depthUnit() {
    return inches() ? "in (mm)" : "mm";
  }

  /** The value of a default: one that is a length in mm gets its inches. */
  public String value(String text) {
    Matcher m = WHOLLY_MM.matcher(text);
    return inches() && m.matches() ? spoken(Double.parseDouble(m.group(1)), m.group(1)) : text;
  }

  /** What a finding in mm comes to in inches; empty where there is nothing to say. */
  public String beside(Finding f) {
    if (!inches() || !f.unit().equals("mm") || !finite(f.value())) {
      return "";
    }
    return " In inches: found "
        + LengthText.thousandths(f.value().getAsDouble())
        + (finite(f.limit()) ? ", limit " + LengthText.thousandths(f.limit().getAsDouble()) : "")
        + ".";
  }

  /** What to add to a heading over sentences, whose plain numbers are mm in every job. */
  public String inSentences() {
    return inches() ? " (plain lengths in mm)" : "";
  }

  private static boolean finite(OptionalDouble d) {
    return d.isPresent() && Double.isFinite(d.getAsDouble());
  }
}
