package padwright.desk.screen;

import java.util.List;
import javafx.scene.control.ButtonType;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.stage.Window;
import padwright.design.Job;
import padwright.design.Units;
import padwright.desk.edit.JobEdit;
import padwright.desk.model.Desk;
import padwright.jobfile.JobWriter;
import padwright.measure.InputRefused;

/** Title, client, date and units of the job. */
final class HeadingDialog {
  private final Desk desk;
  private final Dialog<ButtonType> dialog = new Dialog<>();
  private final TextField title = new TextField();
  private final TextField client = new TextField();
  private final TextField date = new TextField();
  private final ComboBox<String> units = new ComboBox<>();
  private final Label refused = new Label();

  HeadingDialog(Desk desk, Look look, Window owner) {
    this.desk = desk;
    Job job = desk.job();
    title.setText(job.title());
    client.setText(job.client().orElse(""));
    date.setText(job.date().orElse(""));
    date.setPromptText("2026-03-07, or empty for today");
    units.getItems().setAll(List.of("mm", "inches"));
    units.setValue(job.units() == Units.MM ? "mm" : "inches");
    date.setId("heading-date");
    units.setId("heading-units");
    refused.setId("heading-refused");
    refused.setWrapText(true);
    refused.getStyleClass().add("level-stop");
    GridPane grid = new GridPane();
    grid.setHgap(8);
    grid.setVgap(8);
    grid.addRow(0, label("Title", title), title);
    grid.addRow(1, label("Client", client), client);
    grid.addRow(2, label("Date", date), date);
    grid.addRow(3, label("Plain numbers are", units), units);
    grid.add(refused, 0, 4, 2, 1);
    dialog.initOwner(owner);
    dialog.setTitle("Heading and units");
    dialog.getDialogPane().setContent(grid);
    dialog.getDialogPane().getButtonTypes().addAll(ButtonType.OK, ButtonType.CANCEL);
    look.dressDialog(dialog.getDialogPane());
    dialog
        .getDialogPane()
        .lookupButton(ButtonType.OK)
        .addEventFilter(
            javafx.event.ActionEvent.ACTION,
            e -> {
              if (!taken()) {
                e.consume();
              }
            });
  }

  private static Label label(String text, javafx.scene.Node field) {
    Label label = new Label(text);
    label.setLabelFor(field);
    return label;
  }

  void show() {
    dialog.showAndWait();
  }

  /** Read back like a job file, so that what is refused there is refused here. */
  private boolean taken() {
    Units chosen = units.getValue().equals("mm") ? Units.MM : Units.INCH;
    Job next =
        JobEdit.headed(desk.job(), title.getText(), client.getText(), date.getText(), chosen);
    try {
      desk.reader().read("", JobWriter.write(next));
    } catch (InputRefused r) {
      refused.setText(r.problem() + ". " + r.remedy() + ".");
      return false;
    }
    desk.change(next, desk.now().part(), "heading", "");
    return true;
  }
}
