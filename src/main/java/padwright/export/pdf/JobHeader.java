package padwright.export.pdf;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import padwright.design.Job;
import padwright.design.PaddedPart;

/**
 * What every page says about the job it belongs to.
 *
 * @param job the job's title
 * @param client empty where none is named
 * @param part what the maker calls the part
 * @param quantity as a maker reads it, such as "2 off and 1 mirrored"
 * @param date ISO 8601; also the date in the file's properties, so that the same job drawn with the
 *     same date gives the same bytes
 */
public record JobHeader(String job, String client, String part, String quantity, String date) {

  /** The header of one part; {@code today} serves where the job names no date. */
  public static JobHeader of(Job job, PaddedPart part, LocalDate today) {
    return new JobHeader(
        job.title(),
        job.client().orElse(""),
        part.name(),
        quantity(part.quantity(), part.mirrored()),
        job.date().orElse(today.toString()));
  }

  /** "3 off", "3 off and 1 mirrored", "1 mirrored". */
  public static String quantity(int asDrawn, int mirrored) {
    if (mirrored == 0) {
      return asDrawn + " off";
    }
    return asDrawn == 0 ? mirrored + " mirrored" : asDrawn + " off and " + mirrored + " mirrored";
  }

  /** The date as a day; a date that is not ISO 8601 counts as 1 January 2000. */
  LocalDate day() {
    try {
      return LocalDate.parse(date.length() > 10 ? date.substring(0, 10) : date);
    } catch (DateTimeParseException e) {
      return LocalDate.of(2000, 1, 1);
    }
  }

  /** One line: job, part, quantity, date. */
  String line() {
    String first = client.isEmpty() ? job : job + " for " + client;
    return first + " \u00b7 " + part + " \u00b7 " + quantity + " \u00b7 " + date;
  }
}
