package padwright.desk.screen;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import padwright.desk.model.Desk;
import padwright.desk.model.FigureRows;
import padwright.desk.model.FigureRows.Row;

/** The sizes of the part as a table that can be copied. */
final class FiguresPane extends BorderPane {
  private final Seen seen = new Seen();
  private final Desk desk;
  private final TableView<Row> table = new TableView<>();

  FiguresPane(Desk desk) {
    this.desk = desk;
    table.setId("figures");
    table.setAccessibleText("Sizes of this part");
    column("", Row::what, 220);
    column("length", Row::length, 90);
    column("width", Row::width, 90);
    column("height", Row::height, 90);
    table.setPlaceholder(new Label("No figures yet."));
    Button copy = new Button("Copy as a table");
    copy.setId("copy-figures");
    copy.setOnAction(e -> copy());
    HBox foot = new HBox(copy);
    foot.getStyleClass().add("pane-head");
    setCenter(table);
    setBottom(foot);
    desk.onChange(
        () -> {
          if (seen.changed(desk.bench().result().orElse(null), desk.job().units())) {
            refresh();
          }
        });
    refresh();
  }

  private void column(String title, Function<Row, String> cell, double width) {
    TableColumn<Row, String> c = new TableColumn<>(title);
    c.setCellValueFactory(r -> new ReadOnlyStringWrapper(cell.apply(r.getValue())));
    c.setSortable(false);
    c.setReorderable(false);
    c.setPrefWidth(width);
    table.getColumns().add(c);
  }

  /** Puts the rows where other programs can take them from. */
  void copy() {
    ClipboardContent content = new ClipboardContent();
    content.putString(FigureRows.tabbed(List.copyOf(table.getItems())));
    Clipboard.getSystemClipboard().setContent(content);
  }

  private void refresh() {
    List<Row> rows =
        desk.bench().result().map(r -> FigureRows.of(r, desk.job().units())).orElse(List.of());
    if (!table.getItems().equals(rows)) {
      table.getItems().setAll(rows);
    }
  }
}
