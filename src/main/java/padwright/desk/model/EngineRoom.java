package padwright.desk.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongSupplier;
import padwright.design.PaddedPart;
import padwright.design.WrappedPad;
import padwright.material.Catalogue;
import padwright.measure.InputRefused;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;

/**
 * Works parts out away from the window's thread. The newest edition wins: what is asked for while
 * another is being worked out takes its place as soon as the part in hand is done. The part on the
 * bench comes first; what was worked out before is not worked out again.
 */
final class EngineRoom {
  /** Work that takes longer shows how far it has come, ns. */
  static final long SHOW_PROGRESS = 300_000_000L;

  /** Answers kept, so that undo and redo cost nothing. */
  private static final int KEPT = 2_000;

  private final Function<WrappedPad, PartResult> engine;
  private final Executor work;
  private final Consumer<Throwable> log;
  private final LongSupplier clock;
  private final AtomicReference<Order> wanted = new AtomicReference<>();
  private final AtomicBoolean running = new AtomicBoolean();
  private final Map<WrappedPad, PartAnswer> kept =
      new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<WrappedPad, PartAnswer> eldest) {
          return size() > KEPT;
        }
      };

  /**
   * An edition to work out.
   *
   * @param bench called with the answer of the part on the bench, first
   * @param part called with each answer, the part on the bench included
   * @param progress called with how many parts are done where it takes long
   * @param done called when all are, or when it was cancelled
   */
  record Order(
      Edition edition,
      Consumer<PartAnswer> bench,
      Consumer<PartAnswer> part,
      Consumer<Integer> progress,
      Runnable done,
      AtomicBoolean cancelled) {}

  EngineRoom(Catalogue catalogue, Executor work, Consumer<Throwable> log, LongSupplier clock) {
    this(new PatternEngine(catalogue)::run, work, log, clock);
  }

  EngineRoom(
      Function<WrappedPad, PartResult> engine,
      Executor work,
      Consumer<Throwable> log,
      LongSupplier clock) {
    this.engine = engine;
    this.work = work;
    this.log = log;
    this.clock = clock;
  }

  /** Hands over an edition; one that waits is forgotten. Returns at once. */
  void order(Order order) {
    wanted.set(order);
    if (running.compareAndSet(false, true)) {
      work.execute(this::run);
    }
  }

  private void run() {
    try {
      Order order = wanted.getAndSet(null);
      while (order != null) {
        try {
          serve(order);
        } catch (RuntimeException | StackOverflowError | AssertionError e) {
          // What is made of an answer has its faults too; the next order is not to wait for them.
          log.accept(e);
        }
        order = wanted.getAndSet(null);
      }
    } finally {
      running.set(false);
      // One that came between the last look and here would wait for the next.
      if (wanted.get() != null && running.compareAndSet(false, true)) {
        work.execute(this::run);
      }
    }
  }

  private boolean overtaken(Order order) {
    return wanted.get() != null || order.cancelled().get();
  }

  private void serve(Order order) {
    long start = clock.getAsLong();
    PartAnswer first = answer(order.edition().pad());
    if (wanted.get() != null) {
      return;
    }
    order.bench().accept(first);
    order.part().accept(first);
    List<PaddedPart> rest = new ArrayList<>(order.edition().job().parts());
    rest.remove(order.edition().part());
    int count = 1;
    for (PaddedPart part : rest) {
      if (overtaken(order)) {
        break;
      }
      order.part().accept(answer((WrappedPad) part));
      count++;
      if (clock.getAsLong() - start > SHOW_PROGRESS) {
        order.progress().accept(count);
      }
    }
    if (wanted.get() == null) {
      order.done().run();
    }
  }

  /** The answer for a part, from before if there is one. */
  PartAnswer answer(WrappedPad pad) {
    synchronized (kept) {
      PartAnswer before = kept.get(pad);
      if (before != null) {
        return before;
      }
    }
    PartAnswer answer = workedOut(pad);
    synchronized (kept) {
      kept.put(pad, answer);
    }
    return answer;
  }

  private PartAnswer workedOut(WrappedPad pad) {
    try {
      return PartAnswer.of(engine.apply(pad));
    } catch (InputRefused r) {
      return PartAnswer.refused(pad, r);
    } catch (RuntimeException | StackOverflowError | AssertionError e) {
      return PartAnswer.faulted(pad, faulted(e));
    }
  }

  /** Logs a fault; the sentence that is shown. */
  String faulted(Throwable e) {
    log.accept(e);
    return fault(e);
  }

  private static String fault(Throwable e) {
    return "The program made a mistake here ("
        + e.getClass().getSimpleName()
        + Optional.ofNullable(e.getMessage()).map(m -> ": " + m).orElse("")
        + "). The last good result stays; undo, or change something else.";
  }

  /** A result without keeping it: for what is only tried. Empty where there is none. */
  Optional<PartResult> tried(WrappedPad pad) {
    try {
      return Optional.of(engine.apply(pad));
    } catch (RuntimeException | StackOverflowError | AssertionError e) {
      return Optional.empty();
    }
  }
}
