package padwright.output;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/**
 * Works on many things side by side, hands the results over in order, and holds only a few of them
 * at a time.
 */
public final class InOrder {
  /** Below this, starting threads costs more than they save. */
  private static final int FEW = 12;

  /** How many results a thread may be ahead of the one that is handed over next. */
  private static final int AHEAD = 3;

  /** Threads more than processors: some always wait for the disk. */
  private static final int WAITING = 2;

  private InOrder() {}

  /** One step of work. */
  @FunctionalInterface
  public interface Work<I, O> {
    O on(I item) throws Exception;
  }

  /** Takes the results, one at a time. */
  @FunctionalInterface
  public interface Taker<O> {
    void take(O result) throws Exception;
  }

  /**
   * Hands over {@code work} of each item.
   *
   * @throws Exception the first in the items' order that {@code work} threw; by then no work is
   *     going on any more
   */
  public static <I, O> void each(List<I> items, Work<I, O> work, Taker<O> taker) throws Exception {
    int threads = Math.min(Runtime.getRuntime().availableProcessors() + WAITING, items.size());
    if (items.size() < FEW || threads < 2) {
      for (I item : items) {
        taker.take(work.on(item));
      }
      return;
    }
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      Deque<Future<O>> going = new ArrayDeque<>();
      for (I item : items) {
        if (going.size() == threads * AHEAD) {
          taker.take(result(going.remove()));
        }
        going.add(pool.submit(() -> work.on(item)));
      }
      while (!going.isEmpty()) {
        taker.take(result(going.remove()));
      }
    } finally {
      stop(pool);
    }
  }

  private static <O> O result(Future<O> future) throws Exception {
    try {
      return future.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw e.getCause() instanceof Exception cause ? cause : e;
    }
  }

  /** Waits for what is going on, so that nothing is written after its folder is cleared. */
  private static void stop(ExecutorService pool) throws InterruptedException {
    pool.shutdownNow();
    boolean ended = false;
    while (!ended) {
      ended = pool.awaitTermination(1, TimeUnit.MINUTES);
    }
  }
}
