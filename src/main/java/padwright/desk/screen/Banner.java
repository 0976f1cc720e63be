package padwright.desk.screen;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import padwright.desk.model.DeskFiles;
import padwright.desk.model.DeskFiles.Unsaved;

/** Offers work that was not saved when the program or the machine stopped. */
final class Banner extends HBox {
  private final DeskFiles files;
  private final List<Unsaved> left;
  private final Dialogs dialogs;
  private final Label text = new Label();
  private Runnable done = () -> {};

  Banner(DeskFiles files, List<Unsaved> left, Dialogs dialogs) {
    this.files = files;
    this.left = new ArrayList<>(left);
    this.dialogs = dialogs;
    getStyleClass().add("banner");
    text.setWrapText(true);
    text.setMinWidth(0);
    HBox.setHgrow(text, Priority.ALWAYS);
    text.setMaxWidth(Double.MAX_VALUE);
    Button take = new Button("Bring it back");
    take.setId("recover");
    take.setMinWidth(USE_PREF_SIZE);
    take.setOnAction(e -> take());
    Button forget = new Button("Throw it away");
    forget.setId("forget");
    forget.setMinWidth(USE_PREF_SIZE);
    forget.setOnAction(e -> forget());
    getChildren().addAll(text, take, forget);
    show();
  }

  void onDone(Runnable action) {
    done = action;
  }

  private void show() {
    if (left.isEmpty()) {
      done.run();
      return;
    }
    Unsaved next = left.get(0);
    text.setText(
        "Work that was not saved is left from "
            + next.when()
            + next.file().map(f -> ", of " + f.getFileName()).orElse(", of a job without a file")
            + ".");
  }

  private void take() {
    files.recover(left.remove(0), problem -> dialogs.say("That did not work", problem));
    show();
  }

  private void forget() {
    Unsaved next = left.get(0);
    if (dialogs.confirm(
        "Throw it away?", "What was not saved then is lost for good.", "Throw it away")) {
      files.forget(next);
      left.remove(0);
      show();
    }
  }
}
