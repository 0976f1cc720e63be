package padwright.desk.model;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import padwright.design.Job;
import padwright.jobfile.JobSaver;
import padwright.jobfile.JobWriter;
import padwright.measure.InputRefused;
import padwright.output.WriteFailure;

/**
 * Where the job on the desk comes from and goes to: files, those used last, and a copy of what is
 * not saved, for when the program is stopped. Called on the window's thread; disks are waited for
 * on another.
 */
public final class DeskFiles {
  private final Desk desk;
  private final Settings settings;
  private final Recovery recovery;
  private final Executor window;
  private final Executor disk;
  private final AtomicReference<Runnable> keeping = new AtomicReference<>();
  private Optional<Path> file = Optional.empty();
  private Job kept;

  /**
   * @param disk runs what it is given away from the window's thread, one after the other
   * @param process the number of this process
   */
  public DeskFiles(Desk desk, Settings settings, Executor window, Executor disk, long process) {
    this.desk = desk;
    this.settings = settings;
    this.window = window;
    this.disk = disk;
    this.recovery = new Recovery(settings.folder(), process);
    this.kept = desk.job();
    desk.onChange(this::keep);
  }

  /** Work that another start left unsaved. */
  public record Unsaved(Path copy, Optional<Path> file, String when) {}

  /** The job's file; empty where it has none yet. */
  public Optional<Path> file() {
    return file;
  }

  /** What the window's title says: the file's name, or the job's title. */
  public String name() {
    return file.map(f -> f.getFileName().toString()).orElse(desk.job().title());
  }

  /** Opens a job file; what is on the desk is gone then, so ask first. */
  public void open(Path chosen, Consumer<String> problem) {
    disk.execute(
        () -> {
          try {
            Job job = desk.reader().read(chosen);
            window.execute(() -> opened(job, Optional.of(chosen)));
          } catch (InputRefused r) {
            window.execute(() -> problem.accept(r.getMessage()));
          }
        });
  }

  private void opened(Job job, Optional<Path> from) {
    file = from;
    kept = job;
    from.ifPresent(settings::used);
    desk.start(job);
    disk.execute(recovery::clear);
  }

  /** A job that was read from no file of the maker's: a ready-made one, or the demo. */
  public void begin(Job job) {
    opened(job, Optional.empty());
  }

  /** Saves to the job's own file. */
  public void save(Consumer<String> problem, Runnable done) {
    saveAs(file.orElseThrow(), problem, done);
  }

  public void saveAs(Path chosen, Consumer<String> problem, Runnable done) {
    Job job = desk.job();
    disk.execute(
        () -> {
          try {
            JobSaver.save(chosen, JobWriter.write(job));
            recovery.clear();
            window.execute(
                () -> {
                  file = Optional.of(chosen);
                  settings.used(chosen);
                  desk.wasSaved(job);
                  done.run();
                });
          } catch (IOException e) {
            window.execute(() -> problem.accept(WriteFailure.sentence(e)));
          }
        });
  }

  /** Keeps a copy of every change; where several wait for the disk, the newest alone is written. */
  private void keep() {
    Job job = desk.job();
    if (job == kept || !desk.unsaved()) {
      return;
    }
    kept = job;
    Optional<Path> own = file;
    Runnable write =
        () -> {
          try {
            recovery.keep(job, own);
          } catch (IOException e) {
            // The next change tries again; saving itself says what is wrong with the disk.
            window.execute(() -> kept = null);
          }
        };
    if (keeping.getAndSet(write) == null) {
      disk.execute(() -> keeping.getAndSet(null).run());
    }
  }

  /** What other starts left unsaved, the latest first. */
  public List<Unsaved> unsaved() {
    return recovery.left().stream()
        .map(
            l ->
                new Unsaved(
                    l.copy(), l.file(), l.at().toString().substring(0, 16).replace('T', ' ')))
        .toList();
  }

  /** Puts such work on the desk, as not saved. */
  public void recover(Unsaved left, Consumer<String> problem) {
    try {
      Job job = desk.reader().read(left.copy());
      file = left.file();
      kept = null;
      desk.start(job);
      desk.neverSaved();
      // After the copy of its own, which waits for the same disk: at no time is there none.
      disk.execute(() -> Recovery.forget(left.copy()));
    } catch (InputRefused r) {
      problem.accept(r.getMessage());
    }
  }

  public void forget(Unsaved left) {
    Recovery.forget(left.copy());
  }

  /** The desk is closed, and what was not saved is not wanted. */
  public void close() {
    recovery.clear();
  }

  /** What kind of file was dropped on the desk. */
  public enum Dropped {
    JOB,
    DRAWING,
    OTHER
  }

  public static Dropped kind(Path path) {
    String name = path.getFileName().toString().toLowerCase(Locale.ROOT);
    if (!Files.isRegularFile(path)) {
      return Dropped.OTHER;
    }
    return name.endsWith(".json")
        ? Dropped.JOB
        : name.endsWith(".svg") || name.endsWith(".dxf") ? Dropped.DRAWING : Dropped.OTHER;
  }

  /** Makes a drawing's outline that of the part on the bench; says what was read and what left. */
  public void draw(Path drawing, Consumer<String> problem, Consumer<String> said) {
    disk.execute(
        () -> {
          try {
            var drawn = padwright.drawing.DrawingReader.read(drawing, Optional.empty());
            window.execute(() -> outline(drawn, drawing.getFileName().toString(), problem, said));
          } catch (InputRefused r) {
            window.execute(() -> problem.accept(r.getMessage()));
          }
        });
  }

  private void outline(
      padwright.drawing.DrawnOutline drawn,
      String name,
      Consumer<String> problem,
      Consumer<String> said) {
    Optional<InputRefused> refused =
        desk.change(
            p ->
                desk.edit()
                    .with(
                        p,
                        padwright.desk.edit.OutlineChange.step(
                            drawn.outline(), desk.job().units())),
            "outline from " + name,
            "");
    refused.ifPresent(r -> problem.accept(r.getMessage()));
    if (refused.isEmpty()) {
      said.accept(String.join(" ", drawn.report().lines()));
    }
  }
}
