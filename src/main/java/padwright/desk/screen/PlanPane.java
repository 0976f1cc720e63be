package padwright.desk.screen;

import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.util.StringConverter;
import padwright.desk.edit.PlanItem;
import padwright.desk.model.Desk;
import padwright.desk.model.FindingRow;
import padwright.desk.model.PlanDesk;
import padwright.desk.view.PlanFindings;
import padwright.desk.view.PlanSnap.Grid;

/**
 * The plan of the part on the bench: its outline to scale, with points and arcs to drag and every
 * side to be given its own edge. What is chosen has its fields below.
 */
final class PlanPane extends BorderPane {
  /** Usual size of letters, points. */
  static final double TEXT = 12;

  private static final double FIELDS_SHARE = 0.36;
  private static final double EDGE = 4;
  private static final double FIELDS_LEAST = 60;
  private static final double FIELDS_MOST = 190;

  private final PlanDesk plan;
  private final PlanSheet sheet;
  private final PlanStrip strip;
  private final FlowPane head = new FlowPane(4, 3);
  private final ScrollPane below;
  private final ComboBox<PlanItem> chosen = new ComboBox<>();
  private final ComboBox<Grid> grid = new ComboBox<>();
  private final Button byPoints = button("Draw by points", "plan-by-points");
  private final Button add = button("Add point", "plan-add");
  private final Button remove = button("Remove point", "plan-remove");
  private final Seen seen = new Seen();
  private final FormStyle style = new FormStyle();
  private boolean dark;
  private double text = TEXT;
  private boolean showing;

  PlanPane(Desk desk) {
    plan = new PlanDesk(desk);
    sheet = new PlanSheet(desk, plan);
    strip = new PlanStrip(desk, plan, remedy -> done(() -> plan.take(remedy)), this::reveal);
    new PlanControls(sheet, plan, this::show, strip::focus);
    setId("plan");
    getStyleClass().add("section-pane");
    head();
    below = new ScrollPane(strip);
    below.setFitToWidth(true);
    below.setFocusTraversable(false);
    setTop(head);
    setCenter(sheet);
    setBottom(below);
    setMinSize(0, 0);
    heightProperty().addListener(o -> room());
    restyle();
    desk.onChange(
        () -> {
          if (seen.changed(desk.bench(), desk.now())) {
            plan.refresh();
            show();
          }
        });
    show();
  }

  private static Button button(String words, String id) {
    Button b = new Button(words);
    b.setId(id);
    b.getStyleClass().add("form-action");
    b.setMinWidth(USE_PREF_SIZE);
    b.managedProperty().bind(b.visibleProperty());
    return b;
  }

  private void head() {
    chosen.setId("plan-chosen");
    chosen.setAccessibleText("What is chosen on the plan");
    chosen.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(PlanItem item) {
            return item == null ? "" : item.words();
          }

          @Override
          public PlanItem fromString(String words) {
            return null;
          }
        });
    chosen.valueProperty().addListener((o, was, is) -> picked(is));
    grid.setId("plan-grid");
    grid.setAccessibleText("What dragged points come to rest on");
    grid.getItems().setAll(Grid.values());
    grid.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(Grid g) {
            return g == null ? "" : "Grid " + g;
          }

          @Override
          public Grid fromString(String words) {
            return null;
          }
        });
    grid.valueProperty()
        .addListener(
            (o, was, is) -> {
              if (!showing && is != null) {
                plan.setGrid(is);
              }
            });
    byPoints.setOnAction(e -> done(plan::byPoints));
    add.setOnAction(e -> done(plan::add));
    remove.setOnAction(e -> done(plan::remove));
    Button fit = button("Fit", "plan-fit");
    fit.setOnAction(e -> sheet.fit());
    head.getStyleClass().add("pane-head");
    head.getChildren().addAll(chosen, byPoints, add, remove, grid, fit);
  }

  private void done(Runnable does) {
    does.run();
    show();
  }

  private void picked(PlanItem item) {
    if (!showing && item != null) {
      done(() -> plan.choose(item));
    }
  }

  private void show() {
    showing = true;
    try {
      List<PlanItem> items = plan.items();
      if (!chosen.getItems().equals(items)) {
        chosen.getItems().setAll(items);
      }
      chosen.setValue(plan.chosen());
      grid.setValue(plan.grid());
      boolean drawn = plan.plan().drawn();
      byPoints.setVisible(!drawn);
      add.setVisible(drawn);
      remove.setVisible(drawn);
      grid.setVisible(drawn);
      grid.setManaged(drawn);
      add.setDisable(!plan.canAdd());
      remove.setDisable(!plan.canRemove());
      strip.show();
      sheet.show();
    } finally {
      showing = false;
    }
  }

  void setDark(boolean on) {
    dark = on;
    restyle();
    sheet.setDark(on);
  }

  /**
   * @param times how many times its usual size the text is
   */
  void setTextSize(double times) {
    text = TEXT * times;
    restyle();
    strip.setTextSize(times);
    sheet.setTextSize(text);
    room();
  }

  private void restyle() {
    style.apply(this, FormColours.of(dark), text);
  }

  /** The fields have the same room whatever is chosen, so that the plan never jumps. */
  private void room() {
    double larger = text / TEXT;
    below.setPrefHeight(
        Math.max(
            FIELDS_LEAST * larger, Math.min(FIELDS_MOST * larger, getHeight() * FIELDS_SHARE)));
  }

  /** Scrolls the fields until one of them is seen whole. */
  private void reveal(Node field) {
    below.layout();
    Bounds at = strip.sceneToLocal(field.localToScene(field.getBoundsInLocal()));
    double hidden = strip.getHeight() - below.getViewportBounds().getHeight();
    if (hidden > 0) {
      double from = below.getVvalue() * hidden;
      double least = at.getMaxY() + EDGE - below.getViewportBounds().getHeight();
      double to = Math.max(least, Math.min(from, at.getMinY() - EDGE));
      below.setVvalue(Math.max(0, Math.min(1, to / hidden)));
    }
  }

  @Override
  public void requestFocus() {
    sheet.requestFocus();
  }

  PlanDesk plan() {
    return plan;
  }

  PlanSheet sheet() {
    return sheet;
  }

  /** Chooses what comes so many after the outline as a whole. */
  void choose(int number) {
    done(() -> plan.choose(plan.items().get(number)));
  }

  /** Chooses the first side or point that a finding names. */
  void reveal(FindingRow row) {
    PlanFindings.named(row.finding(), plan.items()).stream()
        .findFirst()
        .ifPresent(item -> done(() -> plan.choose(item)));
  }
}
