package padwright.desk.screen;

import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import padwright.desk.model.Bench;
import padwright.desk.model.Desk;
import padwright.desk.model.FindingRow;

/** What there is to know of the part, the gravest first; a click shows where. */
final class FindingsPane extends BorderPane {
  private final Seen seen = new Seen();
  private final Desk desk;
  private final ListView<FindingRow> list = new ListView<>();
  private final Label why = new Label();
  private final Consumer<FindingRow> shows;

  /**
   * @param shows called when the maker wants to see where a finding is
   */
  FindingsPane(Desk desk, Consumer<FindingRow> shows) {
    this.desk = desk;
    this.shows = shows;
    list.setId("findings");
    list.setAccessibleText("Findings of this part");
    list.setPlaceholder(new Label("Nothing to say: it can be built."));
    list.setCellFactory(v -> new Row());
    list.setOnMouseClicked(e -> show());
    list.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ENTER) {
            show();
          }
        });
    why.setWrapText(true);
    why.getStyleClass().add("level-stop");
    why.setId("refusal");
    setCenter(list);
    desk.onChange(
        () -> {
          if (seen.changed(desk.bench())) {
            refresh();
          }
        });
    refresh();
  }

  private void show() {
    FindingRow row = list.getSelectionModel().getSelectedItem();
    if (row != null) {
      shows.accept(row);
    }
  }

  private void refresh() {
    Bench bench = desk.bench();
    if (!list.getItems().equals(bench.findings())) {
      int selected = list.getSelectionModel().getSelectedIndex();
      list.getItems().setAll(bench.findings());
      list.getSelectionModel().select(Math.min(selected, list.getItems().size() - 1));
    }
    String text =
        bench
            .refusal()
            .map(r -> "\u25a0 Cannot be made: " + r.problem() + ". " + r.remedy() + ".")
            .or(() -> bench.fault().map(f -> "\u25a0 " + f))
            .orElse("");
    why.setText(
        text.isEmpty() || bench.result().isEmpty()
            ? text
            : text + " What is shown is the last result that could be made.");
    setTop(text.isEmpty() ? null : why);
  }

  /** How many findings of the two graver kinds there are, for the head of the list. */
  String title() {
    long grave =
        desk.bench().findings().stream()
            .filter(r -> r.finding().level() != padwright.design.Finding.Level.NOTE)
            .count();
    return grave == 0 ? "Findings" : "Findings (" + grave + ")";
  }

  /** A finding in words, with its level as a word and a sign, and a button where one clears it. */
  private final class Row extends ListCell<FindingRow> {
    private final Label level = new Label();
    private final Label text = new Label();
    private final Button remedy = new Button();
    private final VBox words = new VBox(3, text);
    private final HBox row = new HBox(8, level, words);

    Row() {
      text.setWrapText(true);
      text.setMinWidth(0);
      level.setMinWidth(84);
      HBox.setHgrow(words, javafx.scene.layout.Priority.ALWAYS);
      setPrefWidth(0);
      remedy.setMinWidth(0);
    }

    @Override
    protected void updateItem(FindingRow item, boolean empty) {
      super.updateItem(item, empty);
      if (empty || item == null) {
        setGraphic(null);
        return;
      }
      level.getStyleClass().removeAll("level-stop", "level-caution", "level-note");
      switch (item.finding().level()) {
        case STOP -> {
          level.setText("\u25a0 stop");
          level.getStyleClass().add("level-stop");
        }
        case CAUTION -> {
          level.setText("\u25b2 caution");
          level.getStyleClass().add("level-caution");
        }
        case NOTE -> {
          level.setText("\u25cb note");
          level.getStyleClass().add("level-note");
        }
      }
      text.setText(item.sentence());
      words.getChildren().setAll(text);
      item.remedy()
          .ifPresent(
              r -> {
                remedy.setText("Do it: " + r.label());
                remedy.setId("remedy-" + item.finding().rule());
                remedy.setOnAction(e -> desk.take(r));
                words.getChildren().add(remedy);
              });
      setAccessibleText(level.getText().substring(2) + ": " + item.sentence());
      setGraphic(row);
    }
  }
}
