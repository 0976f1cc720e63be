package padwright.cli;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.design.Units;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.measure.InputRefused;
import padwright.measure.Nearest;
import padwright.pattern.FitWish;
import padwright.pattern.FitWish.Freedom;
import picocli.CommandLine.Option;

/** What is wanted of a part, as written on the command line. */
final class FitOptions {
  private static final int MOST_ANSWERS = 50;
  private static final int NEAREST = 3;

  /** A long job would fill the screen with its ids. */
  private static final int SHOWN = 12;

  @Option(
      names = "--part",
      paramLabel = "ID",
      description = "Which part; needed where the job has several.")
  private String part;

  @Option(
      names = "--height",
      paramLabel = "H",
      required = true,
      description = "Finished height wanted, from the board's back to the covering on the face.")
  private String height;

  @Option(
      names = "--length",
      paramLabel = "L",
      description = "Another length (front of a trapezoid, diameter if round).")
  private String length;

  @Option(names = "--width", paramLabel = "W", description = "Another width, front to back.")
  private String width;

  @Option(
      names = "--size",
      paramLabel = "WHAT",
      description =
          "What length and width are the size of: finished, opening or board. As in the job if left"
              + " out.")
  private String size;

  @Option(
      names = "--free",
      paramLabel = "WHAT",
      split = ",",
      description = "What may change beside the foam's sheets: board, wadding, or board,wadding.")
  private List<String> free = new ArrayList<>();

  @Option(
      names = "--most",
      paramLabel = "N",
      description = "How many answers at most, 1 to " + MOST_ANSWERS + "; 5 if left out.")
  private int most = 5;

  /** The place of the part in the job. */
  int part(Job job) {
    List<String> ids = job.parts().stream().map(PaddedPart::id).toList();
    if (part == null && ids.size() == 1) {
      return 0;
    }
    if (part == null) {
      throw refused(
          "the job has " + ids.size() + " parts",
          "Add --part with one of "
              + String.join(", ", ids.subList(0, Math.min(SHOWN, ids.size())))
              + (ids.size() > SHOWN ? " and so on" : ""));
    }
    if (!ids.contains(part)) {
      throw refused(
          "--part: the job has no part \"" + part + "\"",
          "The nearest are " + String.join(", ", Nearest.names(part, ids, NEAREST)));
    }
    return ids.indexOf(part);
  }

  FitWish wish(Units units) {
    if (most < 1 || most > MOST_ANSWERS) {
      throw refused("--most: " + most + " answers", "Give 1 to " + MOST_ANSWERS);
    }
    Set<Freedom> freedoms = EnumSet.noneOf(Freedom.class);
    free.forEach(word -> freedoms.add(choice("--free", word, Freedom.values(), Freedom::name)));
    return new FitWish(
        positive("--height", height, units).orElseThrow(),
        positive("--length", length, units),
        positive("--width", width, units),
        Optional.ofNullable(size)
            .map(word -> choice("--size", word, SizeMeaning.values(), SizeMeaning::name)),
        freedoms,
        most);
  }

  /** Whether the outline is to have another size than in the job. */
  boolean resizes() {
    return length != null || width != null || size != null;
  }

  private static OptionalDouble positive(String option, String text, Units units) {
    OptionalDouble mm = StartOptions.length(option, text, StartOptions.plain(units));
    if (mm.isPresent() && mm.getAsDouble() <= 0) {
      throw refused(option + ": " + text.strip() + " is no size of a part", "Give more than 0");
    }
    return mm;
  }

  private static <E> E choice(String option, String word, E[] all, Function<E, String> name) {
    List<String> words = Stream.of(all).map(e -> name.apply(e).toLowerCase(Locale.ROOT)).toList();
    int at = words.indexOf(word.strip());
    if (at < 0) {
      throw refused(option + ": \"" + word + "\"", "Give one of " + String.join(", ", words));
    }
    return all[at];
  }

  private static InputRefused refused(String problem, String remedy) {
    return new InputRefused("", 0, "", problem, remedy);
  }
}
