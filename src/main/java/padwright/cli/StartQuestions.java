package padwright.cli;

import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import padwright.design.OutlineShape;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.jobfile.ReadyPart;
import padwright.jobfile.StartNumbers;
import padwright.jobfile.Starter;
import padwright.measure.InputRefused;
import padwright.measure.Length;
import padwright.measure.LengthUnit;
import padwright.measure.Sentence;

/**
 * Asks for the numbers that were not given, at most five, each with the ready-made part's own in
 * brackets. An empty answer, or the end of the input, takes that one.
 */
final class StartQuestions {
  /** After this many answers that are no length, asking again is of no use. */
  private static final int MOST_TRIES = 3;

  private static final String COVERING = "Thickness of the covering";

  private final Streams streams;
  private final ReadyPart ready;
  private final Units units;
  private final boolean drawn;
  private final WrappedPad pad;

  /**
   * @param drawn whether the maker gives an outline of their own
   */
  StartQuestions(Streams streams, Starter starter, ReadyPart ready, Units units, boolean drawn) {
    this.streams = streams;
    this.ready = ready;
    this.units = units;
    this.drawn = drawn;
    this.pad = (WrappedPad) starter.start(ready.id(), StartNumbers.none()).parts().get(0);
  }

  StartNumbers ask(StartNumbers given) {
    // The size of an outline drawn by its points cannot be answered with one number.
    boolean points = drawn || pad.base().outline() instanceof OutlineShape.FreePath;
    OptionalDouble length =
        points || ready.length().isEmpty()
            ? given.length()
            : ask(given.length(), ready.length().get(), () -> size(true));
    OptionalDouble width =
        points || ready.width().isEmpty()
            ? given.width()
            : ask(given.width(), ready.width().get(), () -> size(false));
    return new StartNumbers(
        length,
        width,
        ask(given.board(), "Thickness of the board", () -> pad.base().thickness()),
        ask(given.foam(), "Thickness of all foam together", this::foam),
        ask(given.covering(), COVERING, this::covering));
  }

  private OptionalDouble ask(OptionalDouble given, String question, DoubleSupplier own) {
    if (given.isPresent()) {
      return given;
    }
    String bracket = shown(own.getAsDouble());
    for (int i = 1; ; i++) {
      streams.err().print(question + bracket + ": ");
      streams.err().flush();
      String answer = streams.readLine();
      if (!streams.terminal()) {
        // Nobody typed the answer's line end, so that the next question would follow in the line.
        streams.err().println();
      }
      if (answer == null || answer.isBlank()) {
        return OptionalDouble.empty();
      }
      try {
        double mm = Length.parse(answer, StartOptions.plain(units));
        StartOptions.checkSize("this", answer, mm, question.equals(COVERING));
        return OptionalDouble.of(mm);
      } catch (InputRefused r) {
        if (i == MOST_TRIES) {
          throw new InputRefused("", 0, "", question + ": " + r.problem(), r.remedy());
        }
        streams.err().println(r.getMessage() + ".");
      }
    }
  }

  private String shown(double mm) {
    if (Double.isNaN(mm)) {
      return " [the catalogue's]";
    }
    double number = mm / StartOptions.plain(units).millimetres().doubleValue();
    String mark = units == Units.MM ? LengthUnit.MM.mark() : LengthUnit.INCH.mark();
    return " [" + Sentence.plain(Math.round(number * 1000) / 1000.0) + " " + mark + "]";
  }

  private double size(boolean length) {
    OutlineShape shape = pad.base().outline();
    if (shape instanceof OutlineShape.Rectangle r) {
      return length ? r.length() : r.width();
    }
    if (shape instanceof OutlineShape.Trapezoid t) {
      return length ? t.front() : t.depth();
    }
    if (shape instanceof OutlineShape.Ellipse e) {
      return length ? e.length() : e.width();
    }
    return ((OutlineShape.Circle) shape).diameter();
  }

  private double foam() {
    return pad.foam().stream().mapToDouble(WrappedPad.FoamLayer::thickness).sum();
  }

  private double covering() {
    return pad.cover().thickness().orElse(Double.NaN);
  }
}
