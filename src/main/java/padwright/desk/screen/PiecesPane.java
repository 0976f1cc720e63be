package padwright.desk.screen;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.util.StringConverter;
import padwright.desk.model.Bench;
import padwright.desk.model.Desk;
import padwright.desk.view.Highlight;
import padwright.desk.view.StaplePlace;
import padwright.export.Drawing;
import padwright.export.NamedDrawing;
import padwright.pattern.PatternPiece;

/** The pieces flat, one at a time, as they are printed; also sections, corners and the wrap map. */
final class PiecesPane extends BorderPane {
  private final Seen seen = new Seen();
  private static final String COVER = "cover";

  private final Desk desk;
  private final DrawingPane view = new DrawingPane();
  private final ComboBox<String> choice = new ComboBox<>();
  private final Map<String, String> titles = new LinkedHashMap<>();
  private final ToggleButton measure = new ToggleButton("Measure");
  private final Label measured = new Label();
  private String part = "";
  private Drawing shown;
  private boolean refreshing;

  PiecesPane(Desk desk, Look look) {
    this.desk = desk;
    choice.setId("drawing");
    choice.setAccessibleText("Which drawing is shown");
    choice.setMaxWidth(Double.MAX_VALUE);
    choice.setMinWidth(60);
    choice.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(String name) {
            return name == null ? "" : titles.getOrDefault(name, name);
          }

          @Override
          public String fromString(String title) {
            return title;
          }
        });
    choice.setOnAction(e -> chosen());
    HBox.setHgrow(choice, Priority.ALWAYS);
    measure.setOnAction(e -> view.toggleMeasuring());
    measure.setId("measure");
    Button fit = new Button("Fit");
    fit.setOnAction(e -> view.fit());
    measured.textProperty().bind(view.measuredProperty());
    measured.setWrapText(true);
    measured.setId("measured");
    measured.visibleProperty().bind(view.measuredProperty().isNotEmpty());
    measured.managedProperty().bind(measured.visibleProperty());
    measured.getStyleClass().add("pane-title");
    Label title = new Label("Pieces");
    title.setMinWidth(USE_PREF_SIZE);
    title.setLabelFor(choice);
    fit.setMinWidth(USE_PREF_SIZE);
    measure.setMinWidth(USE_PREF_SIZE);
    HBox head = new HBox(title, choice, measure, fit);
    head.getStyleClass().add("pane-head");
    view.setId("pieces");
    setTop(head);
    setCenter(view);
    setBottom(measured);
    setMinSize(0, 0);
    look.onChange(view::setDark);
    desk.onChange(
        () -> {
          if (seen.changed(desk.bench(), desk.now())) {
            refresh();
          }
        });
    refresh();
  }

  DrawingPane view() {
    return view;
  }

  /** Shows a drawing of the part by its name. */
  void choose(String name) {
    if (titles.containsKey(name)) {
      choice.setValue(name);
      chosen();
    }
  }

  /** The next drawing of the part, or the one before. */
  void step(int by) {
    int count = choice.getItems().size();
    if (count > 0) {
      int at = choice.getItems().indexOf(choice.getValue());
      choose(choice.getItems().get(Math.floorMod(at + by, count)));
    }
  }

  Optional<String> chosenName() {
    return Optional.ofNullable(choice.getValue());
  }

  void highlight(Highlight at) {
    view.highlight(at);
  }

  /** Told the number of a staple that is clicked on a piece. */
  void onStaple(IntConsumer action) {
    view.onClick(
        place ->
            chosenName()
                .flatMap(this::piece)
                .map(p -> StaplePlace.at(p, place, view.reach()))
                .ifPresent(number -> number.ifPresent(action)));
  }

  /** Rings a staple where the piece that is shown has it; 0 rings none. */
  void showStaple(int number) {
    view.highlight(
        chosenName()
            .flatMap(this::piece)
            .flatMap(p -> StaplePlace.of(p, number))
            .map(Highlight::at)
            .orElse(Highlight.NONE));
  }

  private void chosen() {
    if (!refreshing) {
      desk.picture(Desk.WRAP_MAP.equals(choice.getValue()) ? Desk.WRAP_MAP : "");
      show();
    }
  }

  private void refresh() {
    Bench bench = desk.bench();
    view.setUnits(desk.job().units());
    measure.setSelected(view.isMeasuring());
    Map<String, String> now = new LinkedHashMap<>();
    for (NamedDrawing d : bench.drawings()) {
      now.put(d.name(), title(d.drawing(), bench));
    }
    if (!now.isEmpty()) {
      now.put(Desk.WRAP_MAP, "Wrap map: layers and strain");
    }
    if (!now.equals(titles)) {
      refreshing = true;
      String before = choice.getValue();
      titles.clear();
      titles.putAll(now);
      choice.getItems().setAll(now.keySet());
      boolean same = part.equals(desk.pad().id());
      choice.setValue(
          same && now.containsKey(before)
              ? before
              : now.containsKey(COVER) ? COVER : now.keySet().stream().findFirst().orElse(null));
      part = now.isEmpty() ? "" : desk.pad().id();
      refreshing = false;
    }
    show();
  }

  /** Without the part's name, which stands over the window already. */
  private static String title(Drawing drawing, Bench bench) {
    String before = bench.result().map(r -> r.asked().name()).orElse("") + ": ";
    String text =
        drawing.title().startsWith(before)
            ? drawing.title().substring(before.length())
            : drawing.title();
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
  }

  private void show() {
    Optional<Drawing> wanted =
        Optional.ofNullable(choice.getValue()).flatMap(desk.bench()::drawing);
    if (wanted.isPresent() && wanted.get() != shown) {
      shown = wanted.get();
      view.show(shown, piece(choice.getValue()).isPresent());
    }
  }

  /** The piece that a drawing is of; empty where it is a section, a corner or a map. */
  Optional<PatternPiece> piece(String name) {
    return desk.bench().result().stream()
        .flatMap(r -> r.pieces().stream())
        .filter(p -> p.id().equals(name))
        .findFirst();
  }

  /** Names of all drawings there are. */
  List<String> names() {
    return List.copyOf(choice.getItems());
  }
}
