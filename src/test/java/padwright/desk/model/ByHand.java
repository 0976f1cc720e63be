package padwright.desk.model;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Executor;

/** Runs what it is given when a test says so. */
final class ByHand implements Executor {
  private final Deque<Runnable> waiting = new ArrayDeque<>();

  @Override
  public void execute(Runnable task) {
    waiting.add(task);
  }

  int waiting() {
    return waiting.size();
  }

  /** Runs everything there is, and what that gives. */
  void all() {
    while (!waiting.isEmpty()) {
      waiting.remove().run();
    }
  }
}
