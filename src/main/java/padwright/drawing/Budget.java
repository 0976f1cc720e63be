package padwright.drawing;

import java.util.function.LongSupplier;
import padwright.measure.InputRefused;

/** What one file may still use up: time, elements and points. Asked in every loop over its text. */
final class Budget {
  private final String file;
  private final LongSupplier clock;
  private final long start;
  private int elements;
  private int points;

  /**
   * @param clock nanoseconds that only go forward
   */
  Budget(String file, LongSupplier clock) {
    this.file = file;
    this.clock = clock;
    this.start = clock.getAsLong();
  }

  String file() {
    return file;
  }

  /** Refuses when the time is up. */
  void time() {
    if (clock.getAsLong() - start > DrawingLimits.MOST_NANOS) {
      throw refuse(
          0,
          "reading it takes more than "
              + DrawingLimits.MOST_NANOS / 1_000_000_000L
              + " seconds, so it is given up",
          "Save the outline alone in a file of its own");
    }
  }

  /** Counts an element; its number. */
  int element(int line) {
    time();
    if (++elements > DrawingLimits.MOST_ELEMENTS) {
      throw refuse(
          line,
          "the drawing has more than " + DrawingLimits.MOST_ELEMENTS + " elements",
          "Save the outline alone in a file of its own");
    }
    return elements;
  }

  void point(int line) {
    if ((++points & 0xFF) == 0) {
      time();
    }
    if (points > DrawingLimits.MOST_DRAWN_POINTS) {
      throw refuse(
          line,
          "more than " + DrawingLimits.MOST_DRAWN_POINTS + " points are drawn",
          "Save the outline alone in a file of its own, or simplify it");
    }
  }

  InputRefused refuse(int line, String problem, String remedy) {
    return new InputRefused(file, line, "", problem, remedy);
  }
}
