package padwright.desk.screen;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.stage.Modality;
import javafx.stage.Stage;
import javafx.stage.Window;
import padwright.desk.model.Desk;
import padwright.desk.model.Drafting;
import padwright.desk.model.Settings;
import padwright.desk.view.PagePreview;
import padwright.material.Paper;
import padwright.measure.InputRefused;
import padwright.output.WriteFailure;

/** The printed pages of the part on the bench, and the way to write those of the whole job. */
final class DraftDialog {
  private final Desk desk;
  private final Settings settings;
  private final Look look;
  private final Dialogs dialogs;
  private final Executor disk;
  private final Consumer<String> say;
  private final Stage stage = new Stage();
  private final Button write = new Button("Write all parts into a folder\u2026");
  private final Button stop = new Button("Stop");
  private final ProgressBar bar = new ProgressBar(0);
  private final Label said = new Label();
  private final Button open = new Button("Open the folder");
  private AtomicBoolean cancelled = new AtomicBoolean();
  private PagePreview preview;
  private Path written;

  DraftDialog(
      Desk desk,
      Settings settings,
      Look look,
      Dialogs dialogs,
      Executor disk,
      Consumer<String> say) {
    this.desk = desk;
    this.settings = settings;
    this.look = look;
    this.dialogs = dialogs;
    this.disk = disk;
    this.say = say;
  }

  void show(Window owner) {
    if (desk.bench().result().isEmpty()) {
      dialogs.say("Nothing to print", "This part has no result yet: see its findings.");
      return;
    }
    BorderPane pane = new BorderPane();
    pane.setCenter(new PreviewPane(this::preview));
    pane.setBottom(foot());
    look.dressDialog(pane);
    stage.initOwner(owner);
    stage.initModality(Modality.WINDOW_MODAL);
    stage.setTitle("Print preview: " + desk.pad().name());
    stage.setScene(new Scene(pane, 900, 720));
    stage.setOnHidden(
        e -> {
          cancelled.set(true);
          settings.put("paper", preview.paper().id());
          preview.close();
        });
    stage.show();
  }

  private PagePreview preview(PreviewPane.Hooks hooks) {
    List<Paper> papers = desk.catalogue().papers();
    var result = desk.bench().result().orElseThrow();
    var job = desk.job();
    preview =
        new PagePreview(
            papers,
            (paper, correction) -> {
              ByteArrayOutputStream out = new ByteArrayOutputStream();
              Drafting.page(job, result, paper, correction, out);
              return out.toByteArray();
            },
            disk,
            hooks.window(),
            hooks.changed());
    String usual = settings.get("paper", "a4");
    papers.stream().filter(p -> p.id().equals(usual)).findFirst().ifPresent(preview::choose);
    return preview;
  }

  private HBox foot() {
    said.setMinWidth(0);
    said.setWrapText(true);
    said.setId("drafted");
    HBox.setHgrow(said, Priority.ALWAYS);
    said.setMaxWidth(Double.MAX_VALUE);
    write.setId("write-all");
    write.setOnAction(e -> write());
    stop.setOnAction(e -> cancelled.set(true));
    open.setOnAction(e -> dialogs.open(written));
    Button close = new Button("Close");
    close.setCancelButton(true);
    close.setOnAction(e -> stage.close());
    busy(false);
    open.setVisible(false);
    open.managedProperty().bind(open.visibleProperty());
    for (Button b : List.of(write, stop, open, close)) {
      b.setMinWidth(Button.USE_PREF_SIZE);
    }
    HBox foot = new HBox(8, write, bar, stop, said, open, close);
    foot.getStyleClass().add("banner");
    return foot;
  }

  private void busy(boolean on) {
    write.setDisable(on);
    for (javafx.scene.Node n : List.of(bar, stop)) {
      n.setVisible(on);
      n.setManaged(on);
    }
  }

  private void write() {
    Optional<Path> folder = dialogs.folder("Write the patterns of all parts into");
    folder.ifPresent(f -> write(f, false, false));
  }

  private void write(Path folder, boolean anyway, boolean replace) {
    AtomicBoolean own = new AtomicBoolean();
    cancelled = own;
    Drafting drafting =
        new Drafting(desk.catalogue(), desk.job(), preview.paper(), preview.correction());
    int parts = desk.job().parts().size();
    busy(true);
    said.setText("");
    disk.execute(
        () -> {
          try {
            Drafting.Outcome outcome =
                drafting.into(
                    folder,
                    anyway,
                    replace,
                    n -> Platform.runLater(() -> bar.setProgress((double) n / parts)),
                    own::get);
            Platform.runLater(() -> done(folder, outcome, replace));
          } catch (InputRefused r) {
            Platform.runLater(() -> refused(folder, anyway, replace, r));
          } catch (IOException e) {
            Platform.runLater(() -> failed(WriteFailure.sentence(e)));
          }
        });
  }

  private void done(Path folder, Drafting.Outcome outcome, boolean replace) {
    busy(false);
    if (outcome.written()) {
      written = folder;
      open.setVisible(true);
      said.setText(
          outcome.files()
              + " files in "
              + folder
              + ". Print at actual size, then measure both 100 mm lines before you cut.");
      say.accept("Patterns written into " + folder + ".");
    } else if (outcome.stopped().isEmpty()) {
      said.setText("Stopped; nothing was written.");
    } else if (dialogs.confirm(
        "Must not be built like this",
        "These parts have a stop: "
            + String.join(", ", outcome.stopped())
            + ". Nothing was written.",
        "Draw them anyway")) {
      write(folder, true, replace);
    } else {
      said.setText("Nothing was written: a part has a stop.");
    }
  }

  private void refused(Path folder, boolean anyway, boolean replace, InputRefused r) {
    busy(false);
    if (!replace
        && dialogs.confirm("Not written", r.problem() + ". " + r.remedy() + ".", "Replace them")) {
      write(folder, anyway, true);
    } else {
      failed(r.getMessage());
    }
  }

  private void failed(String sentence) {
    busy(false);
    said.setText("Nothing was written. " + sentence);
  }
}
