package padwright.desk.screen;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Executor;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import padwright.desk.model.Desk;
import padwright.desk.model.DeskFiles;
import padwright.desk.model.FindingRow;
import padwright.desk.model.NewStops;
import padwright.desk.model.Settings;
import padwright.desk.view.FindingSpot;

/**
 * The workbench's one window: parts at the left, the section that is filled in beside them with
 * what there is to know under it, the pieces flat and the solid at the right.
 */
final class DeskWindow extends BorderPane {
  private final Desk desk;
  private final DeskFiles files;
  private final Settings settings;
  private final Look look;
  private final Dialogs dialogs;
  private final Executor disk;
  private final DeskActions actions;
  private final PartsPane parts;
  private final PiecesPane pieces;
  private final FindingsPane findings;
  private final FiguresPane figures;
  private final SectionPane section;
  private final SolidPane solid = new SolidPane();
  private final PlanPane plan;
  private final StapleGaugePane gauge;
  private final ViewWriter views;
  private final Tab findingsTab;
  private final TabPane facts = new TabPane();
  private final TabPane bodies = new TabPane();
  private final Seen shownSolid = new Seen();
  private final Seen looked = new Seen();
  private final NewStops stops = new NewStops();
  private final Label status = new Label();
  private final Button cancel = new Button("Leave it for now");
  private final VBox top = new VBox();
  private Runnable close = () -> {};

  DeskWindow(
      Desk desk, DeskFiles files, Settings settings, Look look, Dialogs dialogs, Executor disk) {
    this.desk = desk;
    this.files = files;
    this.settings = settings;
    this.look = look;
    this.dialogs = dialogs;
    this.disk = disk;
    actions = new DeskActions(desk, files, dialogs, this::say);
    parts = new PartsPane(desk, look);
    pieces = new PiecesPane(desk, look);
    findings = new FindingsPane(desk, this::reveal);
    figures = new FiguresPane(desk);
    section = new SectionPane(desk);
    gauge = new StapleGaugePane(desk);
    plan = new PlanPane(desk);
    look.onChange(section::setDark);
    look.onChange(solid::setDark);
    look.onChange(gauge::setDark);
    look.onChange(plan::setDark);
    look.onResize(times -> section.setTextSize(SectionPane.TEXT * times));
    look.onResize(times -> gauge.setTextSize(StapleGaugePane.TEXT * times));
    look.onResize(plan::setTextSize);
    pieces.onStaple(this::staple);
    gauge.onStep(pieces::showStaple);
    views = new ViewWriter(desk, pieces, dialogs, this::say);
    views.add("section", section);
    views.add("solid", solid);
    views.add("staple gauge", gauge);
    views.add("plan", plan.sheet());
    sceneProperty().addListener((o, was, is) -> Optional.ofNullable(is).ifPresent(views::follow));
    findingsTab = tab("Findings", findings);
    facts.getTabs().addAll(findingsTab, tab("Figures", figures), tab("Staple gauge", gauge));
    bodies.getTabs().addAll(tab("Solid", solid), tab("Plan", plan));
    top.getChildren().add(new DeskMenus(desk, this, settings, look));
    setTop(top);
    setCenter(panes());
    setBottom(foot());
    look.dress(this);
    addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    setOnDragOver(this::dragged);
    setOnDragDropped(this::dropped);
    desk.onChange(this::refresh);
    refresh();
    offerUnsaved();
  }

  private static Tab tab(String title, Node content) {
    Tab tab = new Tab(title, content);
    tab.setClosable(false);
    return tab;
  }

  private SplitPane panes() {
    SplitPane left = split(Orientation.VERTICAL, 0.62, section, facts);
    SplitPane right = split(Orientation.VERTICAL, 0.52, pieces, bodies);
    SplitPane both = split(Orientation.HORIZONTAL, 0.5, left, right);
    SplitPane all = split(Orientation.HORIZONTAL, 0.16, parts, both);
    SplitPane.setResizableWithParent(parts, false);
    return all;
  }

  private static SplitPane split(Orientation way, double at, Region first, Region second) {
    first.setMinSize(0, 0);
    second.setMinSize(0, 0);
    SplitPane pane = new SplitPane(first, second);
    pane.setOrientation(way);
    pane.setDividerPositions(at);
    return pane;
  }

  private HBox foot() {
    status.setId("status");
    status.setMinWidth(0);
    HBox.setHgrow(status, Priority.ALWAYS);
    status.setMaxWidth(Double.MAX_VALUE);
    cancel.setOnAction(e -> desk.cancel());
    cancel.managedProperty().bind(cancel.visibleProperty());
    HBox foot = new HBox(8, status, cancel);
    foot.getStyleClass().add("status");
    return foot;
  }

  DeskActions actions() {
    return actions;
  }

  PartsPane parts() {
    return parts;
  }

  PiecesPane pieces() {
    return pieces;
  }

  SectionPane section() {
    return section;
  }

  /** What closes the window, once nothing can be lost by it. */
  void onClose(Runnable action) {
    close = action;
  }

  void quit() {
    actions.quit(close);
  }

  private void say(String sentence) {
    status.setText(sentence);
  }

  /** Said in the foot, and to a screen reader wherever the focus is. */
  private void announce(String sentence) {
    say(sentence);
    status.notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
  }

  private void refresh() {
    findingsTab.setText(findings.title());
    boolean busy = desk.progress() >= 0;
    cancel.setVisible(busy);
    if (busy) {
      say(desk.progress() + " of " + desk.job().parts().size() + " parts worked out");
    } else if (status.getText().endsWith("parts worked out")) {
      say("");
    }
    if (looked.changed(desk.bench())) {
      stops
          .look(desk.bench())
          .filter(said -> !said.isEmpty() || status.getText().startsWith("New stop"))
          .ifPresent(this::announce);
    }
    if (shownSolid.changed(desk.bench().solid().orElse(null))) {
      desk.bench().solid().ifPresent(solid::show);
    }
  }

  /** What the title bar says; a mark before it where there is something to save. */
  String title() {
    return (desk.unsaved() ? "\u2022 " : "") + files.name() + " \u2013 Padwright";
  }

  /** Lists and tabs have a use of their own for these keys, which the menu promises for parts. */
  private void key(KeyEvent e) {
    int by =
        switch (e.getCode()) {
          case PAGE_DOWN -> 1;
          case PAGE_UP -> -1;
          default -> 0;
        };
    if (by != 0 && e.isShortcutDown() && !e.isShiftDown()) {
      stepPart(by);
      e.consume();
    }
  }

  void stepPart(int by) {
    desk.look(Math.floorMod(desk.now().part() + by, desk.job().parts().size()));
  }

  PlanPane plan() {
    return plan;
  }

  /** Shows the field that a finding is about, and where it is on the piece. */
  private void reveal(FindingRow row) {
    plan.reveal(row);
    section.focusField(row.place());
    desk.bench()
        .result()
        .map(r -> FindingSpot.of(row.finding(), r))
        .ifPresent(
            spot -> {
              pieces.choose(spot.drawing());
              pieces.highlight(spot.at());
            });
  }

  void go(int pane) {
    switch (pane) {
      case 1 -> parts.lookup("#parts").requestFocus();
      case 2 -> section.requestFocus();
      case 3 -> pieces.view().requestFocus();
      case 4 -> shown(bodies, 0, solid);
      case 5 -> shown(facts, 0, findings.getCenter());
      case 6 -> shown(facts, 1, figures.getCenter());
      case 7 -> shown(facts, 2, gauge);
      default -> shown(bodies, 1, plan);
    }
  }

  private static void shown(TabPane tabs, int tab, Node content) {
    tabs.getSelectionModel().select(tab);
    content.requestFocus();
  }

  /** A staple that was clicked on a piece is cut through in the gauge. */
  private void staple(int number) {
    gauge.setPosition(OptionalInt.of(number - 1));
    pieces.showStaple(number);
    facts.getSelectionModel().select(2);
  }

  void copyFigures() {
    figures.copy();
    say("The figures can be pasted as a table.");
  }

  void heading() {
    new HeadingDialog(desk, look, getScene().getWindow()).show();
  }

  void draft() {
    new DraftDialog(desk, settings, look, dialogs, disk, this::say).show(getScene().getWindow());
  }

  void keys() {
    dialogs.say("Keys", KeyList.TEXT);
  }

  ViewWriter views() {
    return views;
  }

  private void dragged(DragEvent e) {
    if (e.getDragboard().hasFiles()) {
      e.acceptTransferModes(TransferMode.COPY);
    }
    e.consume();
  }

  private void dropped(DragEvent e) {
    List<Path> paths = e.getDragboard().getFiles().stream().map(java.io.File::toPath).toList();
    e.setDropCompleted(actions.dropped(paths));
    e.consume();
  }

  /** Work that an earlier start left behind is offered before anything else. */
  private void offerUnsaved() {
    List<DeskFiles.Unsaved> left = files.unsaved();
    if (!left.isEmpty()) {
      Banner banner = new Banner(files, left, dialogs);
      banner.onDone(() -> top.getChildren().remove(banner));
      top.getChildren().add(banner);
    }
  }
}
