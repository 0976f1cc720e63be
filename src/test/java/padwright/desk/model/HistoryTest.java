package padwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padwright.design.Job;
import padwright.design.Units;
import padwright.desk.edit.JobEdit;
import padwright.desk.edit.Shipped;

/** Undo and redo without limit, against a list of states with a finger on one of them. */
class HistoryTest {
  private static final Job JOB = Shipped.demo();

  private static Edition edition(int n, int part) {
    return new Edition(JobEdit.headed(JOB, "job " + n, "", "", Units.MM), part);
  }

  /** All states there have been; undone ones lie beyond the finger. */
  private static final class Listed {
    private final List<Edition> states = new ArrayList<>();

    /** The state each step was made from: the same but for the part looked at. */
    private final List<Edition> from = new ArrayList<>();

    private int finger;
    private String open = "";
    private Edition shown;

    Listed(Edition start) {
      states.add(start);
      from.add(start);
      shown = start;
    }

    void add(Edition next, String group) {
      boolean same = !group.isEmpty() && group.equals(open) && finger == states.size() - 1;
      while (states.size() > finger + 1) {
        states.remove(states.size() - 1);
        from.remove(from.size() - 1);
      }
      if (same) {
        states.set(finger, next);
      } else {
        from.add(shown);
        states.add(next);
        finger++;
      }
      open = group;
      shown = next;
    }

    void undo() {
      shown = from.get(finger--);
      open = "";
    }

    void redo() {
      shown = states.get(++finger);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void undoAndRedoGoThroughEveryStateThereWas(long seed) {
    Random random = new Random(seed);
    History history = new History(edition(0, 0));
    Listed listed = new Listed(edition(0, 0));
    for (int step = 1; step < 3_000; step++) {
      switch (random.nextInt(8)) {
        case 0, 1 -> {
          if (listed.finger > 0) {
            history.undo();
            listed.undo();
          }
        }
        case 2 -> {
          if (listed.finger < listed.states.size() - 1) {
            history.redo();
            listed.redo();
          }
        }
        case 3 -> {
          history.settle();
          listed.open = "";
        }
        case 4 -> {
          int part = random.nextInt(JOB.parts().size());
          history.settle();
          listed.open = "";
          history.look(part);
          listed.shown = new Edition(listed.shown.job(), part);
        }
        default -> {
          Edition next = edition(step, listed.shown.part());
          String group = random.nextBoolean() ? "drag " + random.nextInt(2) : "";
          history.add(next, "step " + step, group);
          listed.add(next, group);
        }
      }
      assertThat(history.now()).as("seed " + seed + " step " + step).isEqualTo(listed.shown);
      assertThat(history.toUndo().isPresent()).isEqualTo(listed.finger > 0);
      assertThat(history.toRedo().isPresent()).isEqualTo(listed.finger < listed.states.size() - 1);
    }
  }

  @Test
  void aDragIsOneStepToUndo() {
    History history = new History(edition(0, 0));
    history.add(edition(1, 0), "before", "");
    for (int i = 2; i < 50; i++) {
      history.add(edition(i, 0), "drag", "foam[0].thickness");
    }
    history.undo();
    assertThat(history.now()).isEqualTo(edition(1, 0));
    history.redo();
    assertThat(history.now()).isEqualTo(edition(49, 0));
    // A drag after that is another one, though of the same thing.
    history.add(edition(50, 0), "drag", "foam[0].thickness");
    history.undo();
    assertThat(history.now()).isEqualTo(edition(49, 0));
  }

  @Test
  void aStepIsUndoneOnThePartItWasMadeOn() {
    History history = new History(edition(0, 0));
    history.add(edition(1, 0), "thicker", "");
    history.look(3);
    history.undo();
    assertThat(history.now().part()).isZero();
    assertThat(history.toUndo()).isEqualTo(Optional.empty());
    assertThat(history.toRedo()).contains("thicker");
  }

  @Test
  void thousandsOfStepsAreKept() {
    History history = new History(edition(0, 0));
    for (int i = 1; i <= 20_000; i++) {
      history.add(edition(i, 0), "step " + i, "");
    }
    for (int i = 20_000; i > 0; i--) {
      assertThat(history.toUndo()).contains("step " + i);
      history.undo();
    }
    assertThat(history.now()).isEqualTo(edition(0, 0));
  }
}
