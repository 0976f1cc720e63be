package padwright.desk.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.UnaryOperator;
import padwright.design.Job;
import padwright.design.WrappedPad;
import padwright.desk.edit.FieldGroup;
import padwright.desk.edit.JobEdit;
import padwright.desk.edit.PartEdit;
import padwright.desk.edit.PartField;
import padwright.desk.edit.PartFields;
import padwright.desk.edit.Remedy;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.measure.InputRefused;
import padwright.pattern.PartResult;

/**
 * The workbench without its window: the job being edited, its history, and what the engine says of
 * it. Everything is called on one thread, the window's; work is done on others and comes back to
 * it.
 */
public final class Desk {
  /** The picture that is not drawn until it is asked for. */
  public static final String WRAP_MAP = "wrap-map";

  private final Catalogue catalogue;
  private final JobReader reader;
  private final Executor window;
  private final EngineRoom room;
  private final BenchMaker bench;
  private final List<Runnable> listeners = new ArrayList<>();
  private final Map<WrappedPad, PartAnswer> answers = new HashMap<>();

  private History history;
  private Job saved;
  private Bench shown;
  private String picture = "";
  private AtomicBoolean cancelled = new AtomicBoolean();
  private int progress = -1;
  private long edition;
  private PartEdit edit;

  /**
   * @param window runs what it is given on the window's thread
   * @param work runs what it is given away from it, one after the other
   */
  public Desk(Catalogue catalogue, Job job, Executor window, Executor work, FaultLog log) {
    this.catalogue = catalogue;
    this.reader = new JobReader(catalogue);
    this.edit = new PartEdit(reader, job.units());
    this.window = window;
    this.room = new EngineRoom(catalogue, work, log::add, System::nanoTime);
    this.bench = new BenchMaker(catalogue, room, reader);
    start(job);
  }

  /** Called on the window's thread whenever anything that is shown has changed. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }

  private void changed() {
    List.copyOf(listeners).forEach(Runnable::run);
  }

  public Catalogue catalogue() {
    return catalogue;
  }

  public JobReader reader() {
    return reader;
  }

  /** Another job takes the place of the one that is there, with a history of its own. */
  public void start(Job job) {
    history = new History(new Edition(job, 0));
    saved = job;
    answers.clear();
    shown = Bench.empty(history.now().pad());
    order();
  }

  public Edition now() {
    return history.now();
  }

  public Job job() {
    return history.now().job();
  }

  public WrappedPad pad() {
    return history.now().pad();
  }

  /** What is shown of the part on the bench. */
  public Bench bench() {
    return shown;
  }

  /** What the engine said of a part of the job; empty while it has not come. */
  public Optional<PartAnswer> answer(int part) {
    return Optional.ofNullable(answers.get((WrappedPad) job().parts().get(part)));
  }

  /** How many parts are worked out, where that takes long; -1 where there is nothing to say. */
  public int progress() {
    return progress;
  }

  /** Leaves the parts that are not on the bench as they are until the next change. */
  public void cancel() {
    cancelled.set(true);
  }

  /** Whether the job differs from what was read or saved. */
  public boolean unsaved() {
    return !job().equals(saved);
  }

  /** What is on the disk now is this job. */
  public void wasSaved(Job job) {
    saved = job;
    changed();
  }

  /** Whatever is done to the job was never saved: it was made here, or left by another start. */
  public void neverSaved() {
    saved = null;
    changed();
  }

  // Editing.

  /** Changes a part at places of its job file. */
  public PartEdit edit() {
    edit = edit.in(job().units());
    return edit;
  }

  /** Puts another part on the bench. */
  public void look(int part) {
    if (part != now().part()) {
      history.settle();
      history.look(part);
      shown = Bench.empty(pad());
      order();
    }
  }

  /**
   * Changes the job.
   *
   * @param label for the words of undo
   * @param group not empty for steps of one drag or one row of nudges, which are undone together
   * @param part to put on the bench
   */
  public void change(Job next, int part, String label, String group) {
    Edition edition = new Edition(next, Math.max(0, Math.min(part, next.parts().size() - 1)));
    if (!edition.equals(now())) {
      history.add(edition, label, group);
      order();
    }
  }

  /**
   * Changes the part on the bench.
   *
   * @return why not, where it is refused; nothing is changed then
   */
  public Optional<InputRefused> change(UnaryOperator<WrappedPad> step, String label, String group) {
    try {
      WrappedPad next = step.apply(pad());
      change(JobEdit.replaced(job(), now().part(), next), now().part(), label, group);
      return Optional.empty();
    } catch (InputRefused r) {
      return Optional.of(r);
    }
  }

  /** Fills in a field of the part on the bench, as typed; refusals name what would be right. */
  public Optional<InputRefused> type(PartField field, String typed) {
    return change(p -> edit().typed(p, field, typed), field.label(), "");
  }

  /** Makes a length or number greater by so many of the field's steps, negative for less. */
  public Optional<InputRefused> nudge(PartField field, double steps) {
    Optional<Double> value = value(field);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    return set(field, field.nudged(value.get(), steps, job().units()), field.place());
  }

  /** Sets a length, in mm, or a number; one drag or row of nudges is one step to undo. */
  public Optional<InputRefused> set(PartField field, double value, String group) {
    double rounded = Math.round(value * 1e6) / 1e6;
    String text =
        switch (field.kind()) {
          case LENGTH -> PartEdit.mm(rounded);
          case COUNT -> String.valueOf(Math.round(rounded));
          default -> new java.math.BigDecimal(Double.toString(rounded)).toPlainString();
        };
    return change(p -> edit().typed(p, field, text), field.label(), group);
  }

  /** The number a field has: what is asked for, or the default that was taken. */
  public Optional<Double> value(PartField field) {
    return new FieldValues(edit(), pad(), shown.result()).value(field);
  }

  /** What a field shows where it is left empty. */
  public String taken(PartField field) {
    return new FieldValues(edit(), pad(), shown.result()).taken(field);
  }

  /** What a field holds, as it could be typed. */
  public String typed(PartField field) {
    return edit().shown(pad(), field);
  }

  /** All fields of the part on the bench. */
  public List<FieldGroup> fields() {
    return PartFields.of(pad(), catalogue);
  }

  public Optional<PartField> field(String place) {
    return PartFields.at(pad(), catalogue, place);
  }

  /** Takes a remedy. */
  public Optional<InputRefused> take(Remedy remedy) {
    return change(p -> edit().with(p, remedy.steps()), remedy.label(), "");
  }

  /** The end of a drag or of a row of nudges: what comes next is a step of its own. */
  public void settle() {
    history.settle();
  }

  public Optional<String> toUndo() {
    return history.toUndo();
  }

  public Optional<String> toRedo() {
    return history.toRedo();
  }

  public void undo() {
    if (history.toUndo().isPresent()) {
      history.undo();
      order();
    }
  }

  public void redo() {
    if (history.toRedo().isPresent()) {
      history.redo();
      order();
    }
  }

  // Results.

  /** Asks for a picture that is not drawn with every change; empty for none. */
  public void picture(String name) {
    if (!name.equals(picture)) {
      picture = name;
      order();
    }
  }

  private void order() {
    cancelled.set(true);
    AtomicBoolean own = new AtomicBoolean();
    cancelled = own;
    long number = ++edition;
    Edition wanted = history.now();
    Bench before = shown;
    boolean samePart = before.asked().id().equals(wanted.pad().id());
    if (!samePart) {
      shown = Bench.empty(wanted.pad());
    }
    BenchMaker.Wish wish = new BenchMaker.Wish(wanted, picture, samePart ? before : shown);
    progress = -1;
    room.order(
        new EngineRoom.Order(
            wanted,
            answer -> {
              Bench made = bench.of(answer, wish);
              window.execute(() -> show(number, made));
            },
            answer -> window.execute(() -> keep(answer)),
            count -> window.execute(() -> progressed(number, count)),
            () -> finish(number, wanted, own),
            own));
    changed();
  }

  private void show(long number, Bench made) {
    if (number == edition) {
      shown = made;
      changed();
    }
  }

  private void keep(PartAnswer answer) {
    answers.put(answer.asked(), answer);
    if (answers.size() > 2 * job().parts().size() + 100) {
      answers.keySet().retainAll(job().parts());
    }
  }

  private void progressed(long number, int count) {
    if (number == edition && !cancelled.get()) {
      progress = count;
      changed();
    }
  }

  /** When all parts are worked out there is time for remedies. Still on the working thread. */
  private void finish(long number, Edition wanted, AtomicBoolean own) {
    window.execute(
        () -> {
          if (number == edition) {
            progress = -1;
            changed();
          }
        });
    Optional<PartResult> result = room.answer(wanted.pad()).result();
    if (result.isPresent()) {
      List<FindingRow> rows = bench.remedies(result.get(), wanted.job().units(), own::get);
      window.execute(
          () -> {
            if (number == edition) {
              shown = shown.withFindings(rows);
              changed();
            }
          });
    }
  }
}
