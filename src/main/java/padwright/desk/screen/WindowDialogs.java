package padwright.desk.screen;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Alert;
import javafx.scene.control.Alert.AlertType;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.stage.Window;

/** Dialogs over the workbench's window. */
final class WindowDialogs implements Dialogs {
  private static final double WIDE = 460;

  private final Window owner;
  private final Look look;
  private final Consumer<String> opener;

  /**
   * @param opener shows what an address names in the program that the system has for it
   */
  WindowDialogs(Window owner, Look look, Consumer<String> opener) {
    this.owner = owner;
    this.look = look;
    this.opener = opener;
  }

  @Override
  public void open(Path folder) {
    opener.accept(folder.toUri().toString());
  }

  private Alert alert(AlertType type, String title, String text, ButtonType... buttons) {
    Alert alert = new Alert(type, text, buttons);
    alert.initOwner(owner);
    alert.setTitle(title);
    alert.setHeaderText(title);
    Label words = new Label(text);
    words.setWrapText(true);
    words.setMaxWidth(WIDE);
    alert.getDialogPane().setContent(words);
    look.dressDialog(alert.getDialogPane());
    return alert;
  }

  @Override
  public Unsaved unsaved(String name) {
    ButtonType save = new ButtonType("Save", ButtonData.YES);
    ButtonType leave = new ButtonType("Do not save", ButtonData.NO);
    ButtonType stay = new ButtonType("Go back", ButtonData.CANCEL_CLOSE);
    Alert alert =
        alert(
            AlertType.CONFIRMATION,
            "Not saved",
            "\"" + name + "\" was changed since it was saved. Without saving the changes are lost.",
            save,
            leave,
            stay);
    ButtonType chosen = alert.showAndWait().orElse(stay);
    return chosen == save ? Unsaved.SAVE : chosen == leave ? Unsaved.LEAVE : Unsaved.STAY;
  }

  private static FileChooser chooser(String title, String kind, String... endings) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(title);
    chooser.getExtensionFilters().add(new ExtensionFilter(kind, endings));
    return chooser;
  }

  private static Optional<Path> path(File file) {
    return Optional.ofNullable(file).map(File::toPath);
  }

  @Override
  public Optional<Path> jobToOpen() {
    return path(chooser("Open a job", "Job files", "*.json").showOpenDialog(owner));
  }

  @Override
  public Optional<Path> jobToSave(String suggested) {
    FileChooser chooser = chooser("Save the job as", "Job files", "*.json");
    chooser.setInitialFileName(suggested);
    return path(chooser.showSaveDialog(owner));
  }

  @Override
  public Optional<Path> drawingToRead() {
    return path(
        chooser("Read an outline from a drawing", "Drawings", "*.svg", "*.dxf")
            .showOpenDialog(owner));
  }

  @Override
  public Optional<Path> fileToWrite(String suggested, String ending) {
    FileChooser chooser = chooser("Write this view", ending, "*" + ending);
    chooser.setInitialFileName(suggested + ending);
    return path(chooser.showSaveDialog(owner));
  }

  @Override
  public Optional<Path> folder(String title) {
    DirectoryChooser chooser = new DirectoryChooser();
    chooser.setTitle(title);
    return path(chooser.showDialog(owner));
  }

  @Override
  public void say(String title, String text) {
    alert(AlertType.INFORMATION, title, text, ButtonType.OK).showAndWait();
  }

  @Override
  public boolean confirm(String title, String text, String button) {
    ButtonType yes = new ButtonType(button, ButtonData.YES);
    ButtonType no = new ButtonType("Go back", ButtonData.CANCEL_CLOSE);
    return alert(AlertType.CONFIRMATION, title, text, yes, no).showAndWait().orElse(no) == yes;
  }
}
