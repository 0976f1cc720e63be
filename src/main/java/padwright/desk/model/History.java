package padwright.desk.model;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * Every state the job has been in, without limit: jobs share all parts that did not change, so that
 * a step costs little. Not safe for several threads.
 */
final class History {
  private record Step(Edition before, Edition after, String label, String group) {}

  private final Deque<Step> done = new ArrayDeque<>();
  private final Deque<Step> undone = new ArrayDeque<>();
  private Edition now;

  History(Edition start) {
    now = start;
  }

  Edition now() {
    return now;
  }

  /**
   * A new state.
   *
   * @param label what was done, for the words of undo
   * @param group changes that follow one another with the same one, not empty, are one step: a drag
   */
  void add(Edition next, String label, String group) {
    Step last = done.peek();
    if (last != null && !group.isEmpty() && group.equals(last.group()) && undone.isEmpty()) {
      done.pop();
      done.push(new Step(last.before(), next, label, group));
    } else {
      done.push(new Step(now, next, label, group));
    }
    undone.clear();
    now = next;
  }

  /** Another part on the bench, which is no step of its own. */
  void look(int part) {
    now = new Edition(now.job(), part);
  }

  /** Ends a group, so that the next change is a step of its own. */
  void settle() {
    Step last = done.peek();
    if (last != null && !last.group().isEmpty()) {
      done.pop();
      done.push(new Step(last.before(), last.after(), last.label(), ""));
    }
  }

  Optional<String> toUndo() {
    return Optional.ofNullable(done.peek()).map(Step::label);
  }

  Optional<String> toRedo() {
    return Optional.ofNullable(undone.peek()).map(Step::label);
  }

  void undo() {
    // A nudge after undo and redo is not part of the row before them.
    settle();
    Step step = done.pop();
    undone.push(step);
    // The part that the step was made on, wherever the maker has looked since.
    now = step.before();
  }

  void redo() {
    Step step = undone.pop();
    done.push(step);
    now = step.after();
  }
}
