package padwright.desk.screen;

import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.WeakHashMap;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import padwright.design.WrappedPad;
import padwright.desk.edit.JobEdit;
import padwright.desk.edit.PartEdit;
import padwright.desk.edit.PartField;
import padwright.desk.model.Desk;
import padwright.jobfile.ReadyPart;
import padwright.jobfile.StartNumbers;
import padwright.jobfile.Starter;

/** The parts of the job, in its order, each with a small picture and how it stands. */
final class PartsPane extends BorderPane {
  private final Desk desk;
  private final ListView<Integer> list = new ListView<>();
  private final ObservableList<Integer> numbers = FXCollections.observableArrayList();
  private final Button up = new Button("Up");
  private final Button down = new Button("Down");
  private final Button remove = new Button("Remove");
  private final Button fewer = new Button("\u2212 1");
  private final Set<PartCell> cells = Collections.newSetFromMap(new WeakHashMap<>());
  private final Look look;
  private boolean refreshing;

  /** The part whose row was brought into sight last, or was chosen in the list. */
  private int shown;

  PartsPane(Desk desk, Look look) {
    this.desk = desk;
    this.look = look;
    Label title = new Label("Parts");
    title.getStyleClass().add("pane-title");
    title.setLabelFor(list);
    list.setItems(numbers);
    list.setId("parts");
    list.setAccessibleText("Parts of the job");
    list.addEventFilter(KeyEvent.KEY_TYPED, this::key);
    list.setCellFactory(
        v -> {
          PartCell cell = new PartCell(desk, look);
          cells.add(cell);
          return cell;
        });
    list.getSelectionModel()
        .selectedIndexProperty()
        .addListener(
            (o, was, now) -> {
              if (!refreshing && now.intValue() >= 0) {
                shown = now.intValue();
                desk.look(now.intValue());
              }
            });
    setTop(title);
    setCenter(list);
    setBottom(buttons());
    setMinWidth(150);
    look.onChange(dark -> list.refresh());
    desk.onChange(this::refresh);
    refresh();
  }

  private FlowPane buttons() {
    MenuButton add = new MenuButton("Add");
    add.setId("add-part");
    add.setAccessibleText("Add a part from the ready-made ones");
    Starter starter = new Starter(desk.catalogue());
    for (ReadyPart ready : starter.parts()) {
      MenuItem item = new MenuItem(ready.name());
      item.setOnAction(e -> add(starter, ready));
      add.getItems().add(item);
    }
    Button duplicate = new Button("Duplicate");
    duplicate.setOnAction(e -> duplicate());
    Button mirror = new Button("Mirror");
    mirror.setTooltip(
        new Tooltip(
            "As many mirrored ones as well; where there are some, they change places with those drawn"));
    mirror.setOnAction(e -> mirror());
    up.setOnAction(e -> move(-1));
    up.setAccessibleText("Move the part up in the list");
    down.setOnAction(e -> move(1));
    down.setAccessibleText("Move the part down in the list");
    remove.setOnAction(e -> remove());
    Button more = new Button("+ 1");
    more.setAccessibleText("One more of the part as drawn");
    more.setOnAction(e -> more(1));
    fewer.setAccessibleText("One fewer of the part as drawn");
    fewer.setOnAction(e -> more(-1));
    FlowPane pane = new FlowPane(4, 4, add, duplicate, mirror, more, fewer, up, down, remove);
    pane.setStyle("-fx-padding: 6;");
    return pane;
  }

  private int at() {
    return desk.now().part();
  }

  private void add(Starter starter, ReadyPart ready) {
    WrappedPad part =
        (WrappedPad)
            starter.start(ready.id(), StartNumbers.none(), desk.job().units()).parts().get(0);
    desk.change(
        JobEdit.inserted(desk.job(), at() + 1, part, desk.reader()),
        at() + 1,
        "add " + ready.name(),
        "");
  }

  void duplicate() {
    desk.change(
        JobEdit.duplicated(desk.job(), at(), desk.reader()),
        at() + 1,
        "duplicate " + desk.pad().name(),
        "");
  }

  /** A pad and its mirror image are a pair; a job has at least one of each part as drawn. */
  void mirror() {
    int drawn = desk.pad().quantity();
    int mirrored = desk.pad().mirrored();
    desk.change(
        p ->
            desk.edit()
                .with(
                    p,
                    PartEdit.Step.put("quantity", mirrored > 0 ? mirrored : drawn),
                    PartEdit.Step.put("mirrored", drawn)),
        "mirror " + desk.pad().name(),
        "");
  }

  /** More or fewer as drawn; a job has at least one of each part. */
  void more(int by) {
    PartField quantity = desk.field("quantity").orElseThrow();
    if (desk.pad().quantity() + by >= 1) {
      desk.nudge(quantity, by);
    }
  }

  private void key(KeyEvent e) {
    switch (e.getCharacter()) {
      case "+" -> more(1);
      case "-" -> more(-1);
      default -> {
        return;
      }
    }
    e.consume();
  }

  void move(int by) {
    int to = at() + by;
    if (to >= 0 && to < desk.job().parts().size()) {
      desk.change(JobEdit.moved(desk.job(), at(), to), to, "move " + desk.pad().name(), "");
    }
  }

  void remove() {
    if (desk.job().parts().size() > 1) {
      desk.change(
          JobEdit.removed(desk.job(), at()),
          Math.max(0, at() - 1),
          "remove " + desk.pad().name(),
          "");
    }
  }

  private void refresh() {
    refreshing = true;
    int count = desk.job().parts().size();
    if (numbers.size() != count) {
      numbers.setAll(java.util.stream.IntStream.range(0, count).boxed().toList());
    }
    list.getSelectionModel().select(at());
    // Only what has changed: to make all rows anew takes longer than to draw the part itself.
    cells.forEach(PartCell::follow);
    if (at() != shown) {
      shown = at();
      list.scrollTo(shown);
    }
    up.setDisable(at() == 0);
    down.setDisable(at() == count - 1);
    remove.setDisable(count == 1);
    fewer.setDisable(desk.pad().quantity() <= 1);
    refreshing = false;
  }

  /** What is said of a part in one line. */
  static String words(WrappedPad pad, Optional<padwright.pattern.PartResult> result) {
    String many =
        pad.quantity()
            + " as drawn"
            + (pad.mirrored() > 0 ? ", " + pad.mirrored() + " mirrored" : "");
    if (result.isEmpty()) {
      return many;
    }
    long stops = PartCell.count(result.get(), padwright.design.Finding.Level.STOP);
    long cautions = PartCell.count(result.get(), padwright.design.Finding.Level.CAUTION);
    return many
        + (stops > 0 ? "; " + PartCell.many(stops, "stop") : "")
        + (cautions > 0 ? "; " + PartCell.many(cautions, "caution") : "");
  }
}
