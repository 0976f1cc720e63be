package padwright.cli;

import java.util.OptionalDouble;
import padwright.design.Units;
import padwright.jobfile.StartNumbers;
import padwright.measure.InputRefused;
import padwright.measure.Length;
import padwright.measure.LengthUnit;
import picocli.CommandLine.Option;

/** The numbers a job can be started with, as written on the command line. */
final class StartOptions {
  @Option(names = "--length", paramLabel = "L", description = "Length, or diameter if round.")
  private String length;

  @Option(names = "--width", paramLabel = "L", description = "Width or depth, front to back.")
  private String width;

  @Option(names = "--board", paramLabel = "L", description = "Thickness of the board.")
  private String board;

  @Option(names = "--foam", paramLabel = "L", description = "Thickness of all foam together.")
  private String foam;

  @Option(names = "--cover", paramLabel = "L", description = "Thickness of the covering.")
  private String cover;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "mm or in: of numbers without a unit, and of the job file. mm if left out.")
  private String units = "mm";

  @Option(
      names = "--ask",
      negatable = true,
      description = "Ask for what is not given, or (--no-ask) never ask.")
  private Boolean ask;

  /** Whether to ask for what is missing; unless said otherwise, where there is someone to ask. */
  boolean asks(boolean terminal) {
    return ask == null ? terminal : ask;
  }

  Units units() {
    return switch (units) {
      case "mm" -> Units.MM;
      case "in" -> Units.INCH;
      default ->
          throw new InputRefused(
              "", 0, "", "--units: \"" + units + "\" is no unit of a job", "Give mm or in");
    };
  }

  StartNumbers read() {
    LengthUnit plain = plain(units());
    return new StartNumbers(
        size("--length", length, plain),
        size("--width", width, plain),
        size("--board", board, plain),
        size("--foam", foam, plain),
        thickness("--cover", cover, plain));
  }

  static LengthUnit plain(Units units) {
    return units == Units.MM ? LengthUnit.MM : LengthUnit.INCH;
  }

  /** A length over 0. */
  private static OptionalDouble size(String option, String text, LengthUnit plain) {
    OptionalDouble length = length(option, text, plain);
    length.ifPresent(mm -> checkSize(option, text, mm, false));
    return length;
  }

  /** Of the covering, which may be 0: it is left out of every sum then. */
  private static OptionalDouble thickness(String option, String text, LengthUnit plain) {
    OptionalDouble thickness = length(option, text, plain);
    thickness.ifPresent(mm -> checkSize(option, text, mm, true));
    return thickness;
  }

  /** Refuses a size that is negative, or zero where it may not be. */
  static void checkSize(String name, String text, double mm, boolean zero) {
    if (mm < 0 || mm == 0 && !zero) {
      throw new InputRefused(
          "",
          0,
          "",
          name + ": " + text.strip() + " is " + (mm < 0 ? "negative" : "zero"),
          zero ? "Give a thickness of 0 or more" : "Give a length over 0, up to 10 m");
    }
  }

  /** A length given to an option, mm; empty where the option is not there. */
  static OptionalDouble length(String option, String text, LengthUnit plain) {
    if (text == null) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(Length.parse(text, plain));
    } catch (InputRefused r) {
      throw new InputRefused("", 0, "", option + ": " + r.problem(), r.remedy());
    }
  }
}
