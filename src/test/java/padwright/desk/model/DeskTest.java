package padwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.design.Job;
import padwright.desk.edit.JobEdit;
import padwright.desk.edit.PartEdit.Step;
import padwright.desk.edit.PartField;
import padwright.desk.edit.Shipped;
import padwright.measure.InputRefused;
import padwright.pattern.PartResult;

/** The workbench without a window: what is changed, what is shown then, and the way back. */
class DeskTest {
  @TempDir Path folder;

  private final ByHand work = new ByHand();
  private final ByHand window = new ByHand();
  private final Job job = Shipped.demo();
  private Desk desk;

  @BeforeEach
  void start() {
    desk = new Desk(Shipped.CATALOGUE, job, window, work, new FaultLog(folder));
    settled();
  }

  private void settled() {
    do {
      work.all();
      window.all();
    } while (work.waiting() > 0);
  }

  private PartField field(String place) {
    return desk.field(place).orElseThrow();
  }

  @Test
  void aChangeIsWorkedOutAndShown() {
    PartResult before = desk.bench().result().orElseThrow();
    AtomicInteger told = new AtomicInteger();
    desk.onChange(told::incrementAndGet);
    assertThat(desk.type(field("foam[0].thickness"), "12+12")).isEmpty();
    assertThat(desk.pad().foam().get(0).thickness()).isEqualTo(24);
    settled();
    PartResult after = desk.bench().result().orElseThrow();
    // Foam 12 mm thicker: the pad is as much higher.
    assertThat(after.shape().finishedHeight() - before.shape().finishedHeight())
        .isCloseTo(12, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(told.get()).isPositive();
    assertThat(desk.unsaved()).isTrue();
    desk.undo();
    settled();
    assertThat(desk.unsaved()).isFalse();
    assertThat(desk.bench().result()).contains(before);
  }

  @Test
  void whatIsRefusedChangesNothing() {
    Optional<InputRefused> why = desk.type(field("foam[0].thickness"), "600");
    assertThat(why.orElseThrow().path()).isEqualTo("foam[0].thickness");
    assertThat(desk.job()).isEqualTo(job);
    assertThat(desk.toUndo()).isEmpty();
  }

  /** A corner radius of the base that its size as finished leaves no room for. */
  @Test
  void aPartThatCannotBeMadeKeepsTheLastGoodResult() {
    PartResult good = desk.bench().result().orElseThrow();
    assertThat(
            desk.change(
                p ->
                    desk.edit()
                        .with(
                            p,
                            Step.put("base.size", "finished"),
                            Step.mm("base.outline.rectangle.width", 20),
                            Step.remove("host.positions"),
                            Step.mm("edge.round", 6),
                            Step.mm("foam[0].overhang", 30)),
                "small",
                ""))
        .isEmpty();
    settled();
    assertThat(desk.bench().refusal()).isPresent();
    assertThat(desk.bench().stale()).isTrue();
    assertThat(desk.bench().result()).contains(good);
    assertThat(desk.bench().drawings()).isNotEmpty();
    desk.undo();
    settled();
    assertThat(desk.bench().refusal()).isEmpty();
    assertThat(desk.bench().stale()).isFalse();
  }

  @Test
  void undoGoesAcrossPartsAndShowsThePartItIsAbout() {
    desk.type(field("foam[0].thickness"), "20");
    desk.look(4);
    desk.type(field("cover.turnUnder"), "33");
    desk.look(1);
    settled();
    desk.undo();
    assertThat(desk.now().part()).isEqualTo(4);
    assertThat(desk.job().parts().get(4)).isEqualTo(job.parts().get(4));
    desk.undo();
    assertThat(desk.now().part()).isZero();
    assertThat(desk.job()).isEqualTo(job);
    desk.redo();
    desk.redo();
    settled();
    assertThat(desk.now().part()).isEqualTo(4);
    assertThat(desk.bench().asked()).isEqualTo(desk.pad());
  }

  @Test
  void aRowOfNudgesIsOneStepUntilItIsSettled() {
    for (int i = 0; i < 5; i++) {
      assertThat(desk.nudge(field("foam[0].thickness"), 1)).isEmpty();
    }
    assertThat(desk.pad().foam().get(0).thickness()).isEqualTo(17);
    desk.settle();
    desk.nudge(field("foam[0].thickness"), -1);
    desk.undo();
    assertThat(desk.pad().foam().get(0).thickness()).isEqualTo(17);
    desk.undo();
    assertThat(desk.job()).isEqualTo(job);
  }

  /** 12 mm is 0.472 in; a 32nd of an inch (0.79 mm) is the fraction nearest to 1 mm: 1/2 in. */
  @Test
  void inAJobInInchesNudgesGoByTheMarksOfTheRule() {
    desk.change(
        JobEdit.headed(job, job.title(), "", "", padwright.design.Units.INCH), 0, "heading", "");
    settled();
    PartField thickness = field("foam[0].thickness");
    assertThat(desk.typed(thickness)).isEqualTo("0.47244 in");
    desk.nudge(thickness, 1);
    assertThat(desk.typed(thickness)).isEqualTo("1/2 in");
    desk.nudge(thickness, 1);
    assertThat(desk.typed(thickness)).isEqualTo("17/32 in");
    desk.nudge(thickness, -3);
    assertThat(desk.typed(thickness)).isEqualTo("7/16 in");
    assertThat(desk.pad().foam().get(0).thickness()).isEqualTo(11.1125);
  }

  @Test
  void anEmptyFieldIsNudgedFromTheDefaultTaken() {
    PartField grip = field("cover.grip");
    double taken = desk.bench().result().orElseThrow().spec().grip();
    assertThat(desk.typed(grip)).isEmpty();
    assertThat(desk.value(grip)).contains(taken);
    desk.nudge(grip, 2);
    assertThat(desk.pad().cover().grip()).hasValue(taken + 2);
  }

  @Test
  void everyPartHasAnAnswerOnceAllAreWorkedOut() {
    for (int i = 0; i < job.parts().size(); i++) {
      assertThat(desk.answer(i).orElseThrow().result()).isPresent();
    }
    assertThat(desk.progress()).isEqualTo(-1);
  }
}
