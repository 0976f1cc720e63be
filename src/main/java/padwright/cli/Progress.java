package padwright.cli;

import java.util.function.LongSupplier;
import padwright.output.Plural;

/** Says how far long work has come, on standard error, not before a second has passed. */
final class Progress {
  private static final long FIRST_NANOS = 1_000_000_000L;
  private static final long NEXT_NANOS = 500_000_000L;

  private final Streams streams;
  private final int total;
  private final boolean wanted;
  private final LongSupplier clock;
  private long next;
  private boolean said;

  /**
   * @param always also where nobody sits at a terminal
   */
  Progress(Streams streams, int total, boolean always) {
    this(streams, total, always, System::nanoTime);
  }

  Progress(Streams streams, int total, boolean always, LongSupplier clock) {
    this.clock = clock;
    this.streams = streams;
    this.total = total;
    this.wanted = always || streams.terminal();
    this.next = clock.getAsLong() + FIRST_NANOS;
  }

  void done(int parts) {
    long now = clock.getAsLong();
    if (!wanted || now - next < 0) {
      return;
    }
    next = now + NEXT_NANOS;
    said = true;
    String text = parts + " of " + Plural.of(total, "part") + " drawn";
    if (streams.terminal()) {
      streams.err().print('\r' + text);
      streams.err().flush();
    } else {
      streams.err().println(text);
    }
  }

  /** Ends the line. */
  void end() {
    if (said && streams.terminal()) {
      streams.err().println();
    }
  }
}
