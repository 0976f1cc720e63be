package padwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import padwright.design.Job;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.desk.edit.JobEdit;
import padwright.desk.edit.PartEdit;
import padwright.desk.edit.Shipped;
import padwright.jobfile.JobReader;
import padwright.measure.InputRefused;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;

/** Work away from the window: the newest wins, faults are caught, nothing is done twice. */
class EngineRoomTest {
  private static final Job JOB = Shipped.demo();
  private static final PatternEngine ENGINE = new PatternEngine(Shipped.CATALOGUE);

  private final ByHand work = new ByHand();
  private final List<Throwable> log = new ArrayList<>();
  private final AtomicLong clock = new AtomicLong();
  private final List<WrappedPad> ran = new ArrayList<>();
  private final List<PartAnswer> benches = new ArrayList<>();
  private final List<PartAnswer> parts = new ArrayList<>();
  private final List<Integer> progress = new ArrayList<>();
  private final AtomicLong done = new AtomicLong();

  private EngineRoom room(Function<WrappedPad, PartResult> engine) {
    return new EngineRoom(
        pad -> {
          ran.add(pad);
          return engine.apply(pad);
        },
        work,
        log::add,
        clock::get);
  }

  private EngineRoom.Order order(Edition edition, AtomicBoolean cancelled) {
    return new EngineRoom.Order(
        edition, benches::add, parts::add, progress::add, done::incrementAndGet, cancelled);
  }

  private EngineRoom.Order order(int part) {
    return order(new Edition(JOB, part), new AtomicBoolean());
  }

  private static PartResult run(WrappedPad pad) {
    return ENGINE.run(pad);
  }

  @Test
  void theNewestEditionWins() {
    EngineRoom room = room(EngineRoomTest::run);
    room.order(order(0));
    room.order(order(1));
    room.order(order(2));
    assertThat(work.waiting()).isEqualTo(1);
    work.all();
    assertThat(benches).extracting(PartAnswer::asked).containsExactly(new Edition(JOB, 2).pad());
    assertThat(ran.get(0)).isEqualTo(new Edition(JOB, 2).pad());
    assertThat(done).hasValue(1);
  }

  @Test
  void oneThatComesWhileAnotherIsWorkedOutTakesItsPlace() {
    EngineRoom[] room = new EngineRoom[1];
    room[0] =
        room(
            pad -> {
              if (pad.equals(new Edition(JOB, 0).pad())) {
                room[0].order(order(1));
              }
              return run(pad);
            });
    room[0].order(order(0));
    work.all();
    assertThat(benches).extracting(PartAnswer::asked).containsExactly(new Edition(JOB, 1).pad());
    assertThat(done).hasValue(1);
  }

  @Test
  void everyPartIsWorkedOutOnceThoughAskedForAgain() {
    EngineRoom room = room(EngineRoomTest::run);
    for (int i = 0; i < 3; i++) {
      room.order(order(i));
      work.all();
    }
    assertThat(ran).hasSameSizeAs(JOB.parts());
    assertThat(parts).hasSize(3 * JOB.parts().size());
  }

  @Test
  void aFaultOfTheEngineIsLoggedAndTheOtherPartsAreWorkedOut() {
    for (Throwable fault :
        List.of(
            new IllegalStateException("a slip"), new StackOverflowError(), new AssertionError())) {
      log.clear();
      parts.clear();
      EngineRoom room =
          room(
              pad -> {
                if (pad.equals(JOB.parts().get(0))) {
                  EngineRoomTest.<RuntimeException>thrown(fault);
                }
                return run(pad);
              });
      room.order(order(0));
      work.all();
      assertThat(log).containsExactly(fault);
      assertThat(parts.get(0).fault().orElseThrow()).contains("last good result stays");
      assertThat(parts).hasSameSizeAs(JOB.parts());
      assertThat(parts.subList(1, parts.size())).allMatch(a -> a.result().isPresent());
    }
  }

  @SuppressWarnings("unchecked") // so that a test may throw anything
  private static <T extends Throwable> void thrown(Throwable t) throws T {
    throw (T) t;
  }

  @Test
  void aFaultInWhatIsMadeOfAnAnswerDoesNotStopTheNext() {
    EngineRoom room = room(EngineRoomTest::run);
    IllegalStateException slip = new IllegalStateException("a drawing slipped");
    room.order(
        new EngineRoom.Order(
            new Edition(JOB, 0),
            a -> {
              throw slip;
            },
            parts::add,
            progress::add,
            done::incrementAndGet,
            new AtomicBoolean()));
    work.all();
    assertThat(log).containsExactly(slip);
    room.order(order(1));
    work.all();
    assertThat(benches).hasSize(1);
    assertThat(done).hasValue(1);
  }

  @Test
  void aRefusalIsAnAnswerAndNoFault() {
    InputRefused why = new InputRefused("", 0, "edge", "cannot be made", "make it smaller");
    EngineRoom room =
        room(
            pad -> {
              throw why;
            });
    room.order(order(0));
    work.all();
    assertThat(benches.get(0).refusal()).contains(why);
    assertThat(log).isEmpty();
  }

  @Test
  void progressIsSaidOnlyWhereItTakesLong() {
    EngineRoom quick = room(EngineRoomTest::run);
    quick.order(order(0));
    work.all();
    assertThat(progress).isEmpty();
    EngineRoom slow =
        room(
            pad -> {
              clock.addAndGet(EngineRoom.SHOW_PROGRESS / 2);
              return run(pad);
            });
    slow.order(order(0));
    work.all();
    // 0.15 s a part: after two parts it is 0.3 s, and after three it is more.
    assertThat(progress.get(0)).isEqualTo(3);
    assertThat(progress).last().isEqualTo(JOB.parts().size());
  }

  @Test
  void cancelledWorkLeavesTheOtherPartsAndSaysSo() {
    AtomicBoolean cancelled = new AtomicBoolean();
    EngineRoom room =
        room(
            pad -> {
              cancelled.set(ran.size() == 2);
              return run(pad);
            });
    room.order(order(new Edition(JOB, 0), cancelled));
    work.all();
    assertThat(parts).hasSize(2);
    assertThat(done).hasValue(1);
  }

  @Test
  void undoFindsWhatWasWorkedOutBefore() {
    EngineRoom room = room(EngineRoomTest::run);
    room.order(order(0));
    work.all();
    int before = ran.size();
    WrappedPad changed =
        new PartEdit(new JobReader(Shipped.CATALOGUE), Units.MM)
            .with((WrappedPad) JOB.parts().get(0), PartEdit.Step.mm("foam[0].thickness", 20));
    room.order(order(new Edition(JobEdit.replaced(JOB, 0, changed), 0), new AtomicBoolean()));
    work.all();
    assertThat(ran).hasSize(before + 1);
    room.order(order(0));
    work.all();
    assertThat(ran).hasSize(before + 1);
  }
}
