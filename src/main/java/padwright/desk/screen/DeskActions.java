package padwright.desk.screen;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import padwright.design.Job;
import padwright.desk.model.Desk;
import padwright.desk.model.DeskFiles;

/** What the menus do with whole jobs: each asks first where work could be lost. */
final class DeskActions {
  private final Desk desk;
  private final DeskFiles files;
  private final Dialogs dialogs;
  private final Consumer<String> say;

  /**
   * @param say shows a sentence at the foot of the window
   */
  DeskActions(Desk desk, DeskFiles files, Dialogs dialogs, Consumer<String> say) {
    this.desk = desk;
    this.files = files;
    this.dialogs = dialogs;
    this.say = say;
  }

  private void refused(String problem) {
    dialogs.say("That did not work", problem);
  }

  /** Runs what puts another job on the desk, once nothing can be lost by it. */
  void leaving(Runnable then) {
    if (!desk.unsaved()) {
      then.run();
      return;
    }
    switch (dialogs.unsaved(files.name())) {
      case SAVE -> save(then);
      case LEAVE -> then.run();
      case STAY -> {}
    }
  }

  void open() {
    leaving(() -> dialogs.jobToOpen().ifPresent(f -> files.open(f, this::refused)));
  }

  void open(Path file) {
    leaving(() -> files.open(file, this::refused));
  }

  void begin(Job job) {
    leaving(() -> files.begin(job));
  }

  void save() {
    save(() -> {});
  }

  private void save(Runnable then) {
    if (files.file().isPresent()) {
      files.save(this::refused, () -> saved(then));
    } else {
      saveAs(then);
    }
  }

  void saveAs() {
    saveAs(() -> {});
  }

  private void saveAs(Runnable then) {
    String name =
        desk.job().title().toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    Optional<Path> chosen = dialogs.jobToSave(name + ".json");
    chosen.ifPresent(f -> files.saveAs(f, this::refused, () -> saved(then)));
  }

  private void saved(Runnable then) {
    say.accept("Saved " + files.name() + ".");
    then.run();
  }

  void readDrawing() {
    dialogs.drawingToRead().ifPresent(this::readDrawing);
  }

  private void readDrawing(Path drawing) {
    files.draw(drawing, this::refused, said -> say.accept("Outline read. " + said));
  }

  /** Files dropped on the window: a job is opened, a drawing is the outline of the part shown. */
  boolean dropped(List<Path> paths) {
    if (paths.size() != 1 || DeskFiles.kind(paths.get(0)) == DeskFiles.Dropped.OTHER) {
      say.accept("Drop one job file, or one SVG or DXF drawing.");
      return false;
    }
    Path path = paths.get(0);
    if (DeskFiles.kind(path) == DeskFiles.Dropped.JOB) {
      open(path);
    } else {
      readDrawing(path);
    }
    return true;
  }

  /** Ends the desk's work once nothing can be lost by it. */
  void quit(Runnable then) {
    leaving(
        () -> {
          files.close();
          then.run();
        });
  }
}
