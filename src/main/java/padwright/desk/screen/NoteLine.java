package padwright.desk.screen;

import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import padwright.desk.edit.Remedy;
import padwright.desk.model.FindingRow;

/** A sentence below fields, with its sign, and a button for its remedy where there is one. */
final class NoteLine extends HBox {
  private NoteLine(String sign, String style, String words) {
    super(6);
    Label mark = new Label(sign);
    mark.getStyleClass().add(style);
    mark.setMinWidth(USE_PREF_SIZE);
    Label text = new Label(words);
    text.getStyleClass().add("form-note");
    text.setWrapText(true);
    HBox.setHgrow(text, Priority.ALWAYS);
    getChildren().addAll(mark, text);
  }

  static NoteLine refused(String words) {
    return new NoteLine("\u2715", "note-stop", words);
  }

  /**
   * @param take called with the remedy when its button is pressed
   */
  static NoteLine of(FindingRow row, Consumer<Remedy> take) {
    String level = FieldEditor.word(row.finding().level());
    NoteLine line =
        new NoteLine(
            FieldEditor.sign(row.finding().level()),
            "note-" + level,
            level + ": " + row.sentence());
    row.remedy()
        .ifPresent(
            remedy -> {
              Button button = new Button(remedy.label());
              button.getStyleClass().add("form-remedy");
              button.setAccessibleText("Remedy: " + remedy.label());
              button.setId("remedy-" + row.finding().rule());
              button.setMinWidth(USE_PREF_SIZE);
              button.setOnAction(e -> take.accept(remedy));
              line.getChildren().add(button);
            });
    return line;
  }
}
