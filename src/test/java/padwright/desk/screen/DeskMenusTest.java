package padwright.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static padwright.desk.screen.OpenDesk.until;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import padwright.design.Units;
import padwright.jobfile.JobReader;
import padwright.pattern.Pads;

/** Every menu, taken as a maker takes it. */
@ExtendWith(ApplicationExtension.class)
class DeskMenusTest {
  private OpenDesk open;

  @Start
  void start(Stage stage) {
    open = new OpenDesk(stage, OpenDesk.folder());
  }

  @AfterEach
  void stop() {
    open.stop();
  }

  private String status(FxRobot robot) {
    return robot.lookup("#status").queryAs(Label.class).getText();
  }

  @Test
  void jobsAreBegunSavedOpenedAndListedAsRecent(FxRobot robot) throws Exception {
    open.worked();
    Menu fresh = (Menu) open.item("Job", "New job from");
    assertThat(fresh.getItems()).hasSizeGreaterThan(5);
    robot.interact(() -> fresh.getItems().get(0).fire());
    until(() -> open.desk.job().parts().size() == 1);
    open.worked();
    Path file = open.folder.resolve("one.json");
    open.dialogs.save = Optional.of(file);
    open.menu(robot, "Job", "Save as");
    until(() -> status(robot).equals("Saved one.json."));
    assertThat(open.window.title()).isEqualTo("one.json \u2013 Padwright");
    open.menu(robot, "Job", "Open the demo");
    until(() -> open.desk.job().parts().size() > 1);
    assertThat(open.files.file()).isEmpty();
    robot.interact(() -> open.desk.type(open.desk.field("name").orElseThrow(), "Changed"));
    assertThat(open.window.title()).startsWith("\u2022 ");
    // Asked about what is not saved, the maker saves; the job is opened after that.
    open.dialogs.unsaved = Dialogs.Unsaved.SAVE;
    open.dialogs.save = Optional.of(open.folder.resolve("two.json"));
    open.dialogs.open = Optional.of(file);
    open.menu(robot, "Job", "Open\u2026");
    until(() -> open.desk.job().parts().size() == 1);
    assertThat(open.folder.resolve("two.json")).content().contains("Changed");
    Menu recent = (Menu) open.item("Job", "Open recent");
    robot.interact(() -> recent.getOnShowing().handle(null));
    assertThat(recent.getItems()).hasSize(2);
    robot.interact(() -> recent.getItems().get(1).fire());
    until(() -> open.window.title().equals("two.json \u2013 Padwright"));
    robot.interact(() -> open.desk.type(open.desk.field("name").orElseThrow(), "Once more"));
    open.menu(robot, "Job", "Save");
    until(() -> !open.desk.unsaved());
    assertThat(new JobReader(Pads.CATALOGUE).read(open.folder.resolve("two.json")))
        .isEqualTo(open.desk.job());
  }

  @Test
  void whatIsDroppedIsOpenedReadOrRefusedInWords(FxRobot robot) throws Exception {
    open.worked();
    boolean[] taken = new boolean[1];
    robot.interact(() -> taken[0] = open.window.actions().dropped(List.of(open.folder)));
    assertThat(taken[0]).isFalse();
    assertThat(status(robot)).startsWith("Drop one job file");
    Path drawing =
        Files.writeString(
            open.folder.resolve("rest.svg"),
            "<svg xmlns='http://www.w3.org/2000/svg' width='600mm' height='80mm'"
                + " viewBox='0 0 600 80'><rect x='0' y='0' width='600' height='80'/></svg>");
    robot.interact(() -> open.window.actions().dropped(List.of(drawing)));
    until(() -> status(robot).startsWith("Outline read. "));
    open.worked();
    var base = open.desk.bench().result().orElseThrow().figures().base();
    assertThat(base.width()).isEqualTo(80);
    open.dialogs.drawing = Optional.of(open.folder.resolve("none.dxf"));
    open.menu(robot, "Job", "Read an outline");
    until(() -> !open.dialogs.said.isEmpty());
    assertThat(open.dialogs.said.get(0)).startsWith("That did not work: ").contains("none.dxf");
    Path job = Files.writeString(open.folder.resolve("bad.json"), "[]");
    open.dialogs.said.clear();
    robot.interact(() -> open.window.actions().dropped(List.of(job)));
    until(() -> open.dialogs.said.size() == 2);
    assertThat(open.dialogs.said.get(1)).contains("bad.json");
  }

  @Test
  void theViewIsWrittenAndTheFiguresCopied(FxRobot robot) throws Exception {
    open.worked();
    Path svg = open.folder.resolve("cover.svg");
    open.dialogs.write = Optional.of(svg);
    open.menu(robot, "Job", "Write this view as SVG");
    assertThat(svg).content().startsWith("<?xml").contains("cut-line");
    Path png = open.folder.resolve("cover.png");
    open.dialogs.write = Optional.of(png);
    open.menu(robot, "Job", "Write this view as PNG");
    var image = ImageIO.read(new ByteArrayInputStream(Files.readAllBytes(png)));
    assertThat(image.getWidth()).isGreaterThan(400);
    open.dialogs.write = Optional.of(open.folder.resolve("no/such/cover.svg"));
    open.menu(robot, "Job", "Write this view as SVG");
    assertThat(open.dialogs.said).last().asString().contains("no such folder");
    open.dialogs.write = Optional.empty();
    open.menu(robot, "Job", "Write this view as SVG");
    otherViews(robot);
    open.menu(robot, "Job", "Copy figures");
    String[] text = new String[1];
    robot.interact(() -> text[0] = Clipboard.getSystemClipboard().getString());
    // 600 x 60 of board, 12 + 12 + 12 high, with 1 of covering on each face that shows.
    assertThat(text[0]).contains("Finished\t602.0 mm\t62.0 mm\t37.0 mm\n");
    assertThat(status(robot)).contains("pasted");
  }

  /** The view used last is the one that is written; a solid is no drawing of lines. */
  private void otherViews(FxRobot robot) throws Exception {
    open.menu(robot, "View", "Go to the section");
    Path section = open.folder.resolve("section.svg");
    open.dialogs.write = Optional.of(section);
    open.menu(robot, "Job", "Write this view as SVG");
    assertThat(section).content().contains("section");
    open.menu(robot, "View", "Go to the solid");
    open.menu(robot, "Job", "Write this view as SVG");
    assertThat(open.dialogs.said).last().asString().contains("no drawing of lines");
    Path solid = open.folder.resolve("solid.png");
    open.dialogs.write = Optional.of(solid);
    open.menu(robot, "Job", "Write this view as PNG");
    double[] wide = new double[1];
    robot.interact(
        () -> wide[0] = robot.lookup(".solid-pane").query().getLayoutBounds().getWidth());
    assertThat(
            (double) ImageIO.read(new ByteArrayInputStream(Files.readAllBytes(solid))).getWidth())
        .isCloseTo(2 * wide[0], org.assertj.core.api.Assertions.within(2.0));
    open.menu(robot, "View", "Go to pieces");
  }

  @Test
  void theLookIsChangedKeptAndEveryPaneReached(FxRobot robot) throws Exception {
    open.worked();
    CheckMenuItem dark = (CheckMenuItem) open.item("View", "Dark");
    robot.interact(
        () -> {
          dark.setSelected(true);
          dark.fire();
        });
    assertThat(open.window.getStyleClass()).contains("dark");
    assertThat(open.settings.get("look", "")).isEqualTo("dark");
    for (int i = 0; i < 4; i++) {
      open.menu(robot, "View", "Text larger");
    }
    assertThat(open.window.getStyle()).contains("17.0px");
    robot.interact(() -> Screens.keep(open.window, "window-large-text"));
    open.menu(robot, "View", "Text smaller");
    assertThat(open.window.getStyle()).contains("16.0px");
    open.menu(robot, "View", "Text as usual");
    assertThat(open.window.getStyle()).contains("13.0px");
    String first = open.window.pieces().chosenName().orElseThrow();
    open.menu(robot, "View", "Next drawing");
    assertThat(open.window.pieces().chosenName()).isNotEqualTo(Optional.of(first));
    open.menu(robot, "View", "Drawing before");
    assertThat(open.window.pieces().chosenName()).contains(first);
    for (String pane : List.of("parts", "the section", "pieces", "the solid", "findings")) {
      open.menu(robot, "View", "Go to " + pane);
      Node[] at = new Node[1];
      robot.interact(() -> at[0] = open.window.getScene().getFocusOwner());
      assertThat(at[0]).as(pane).isNotNull();
      assertThat(within(at[0], open.window)).as(pane).isTrue();
    }
    open.menu(robot, "View", "Go to figures");
    assertThat(shown(robot)).isEqualTo("Figures");
    open.menu(robot, "View", "Go to the staple gauge");
    assertThat(shown(robot)).isEqualTo("Staple gauge");
    open.menu(robot, "Help", "Keys");
    assertThat(open.dialogs.said).last().asString().startsWith("Keys: ").contains("Ctrl+Z undo");
  }

  private static boolean within(Node node, Node whole) {
    return node != null && (node == whole || within(node.getParent(), whole));
  }

  private static String shown(FxRobot robot) {
    return robot.lookup(".tab-pane").queryAllAs(TabPane.class).stream()
        .map(t -> t.getSelectionModel().getSelectedItem().getText())
        .filter(t -> t.equals("Figures") || t.equals("Staple gauge"))
        .findFirst()
        .orElse("");
  }

  @Test
  void partsAreSteppedMovedRemovedAndBroughtBack(FxRobot robot) throws Exception {
    open.worked();
    int parts = open.desk.job().parts().size();
    open.menu(robot, "Part", "Part before");
    assertThat(open.desk.now().part()).isEqualTo(parts - 1);
    open.menu(robot, "Part", "Next part");
    assertThat(open.desk.now().part()).isZero();
    open.menu(robot, "Part", "Duplicate");
    assertThat(open.desk.job().parts()).hasSize(parts + 1);
    open.menu(robot, "Part", "Move down");
    assertThat(open.desk.now().part()).isEqualTo(2);
    open.menu(robot, "Part", "Move up");
    open.menu(robot, "Part", "Remove");
    assertThat(open.desk.job().parts()).hasSize(parts);
    assertThat(open.item("Edit", "Undo").getText()).startsWith("_Undo: remove ");
    open.menu(robot, "Edit", "Undo");
    assertThat(open.desk.job().parts()).hasSize(parts + 1);
    open.menu(robot, "Edit", "Redo");
    assertThat(open.desk.job().parts()).hasSize(parts);
    assertThat(open.item("Edit", "Redo").isDisable()).isTrue();
  }

  /** Lists, tabs and fields have uses of their own for some keys; what the menus promise holds. */
  @Test
  void theKeysOfTheMenusWorkWhereverTheFocusIs(FxRobot robot) throws Exception {
    open.worked();
    int at = 0;
    for (String pane : List.of("parts", "findings", "the section", "pieces", "the solid")) {
      open.menu(robot, "View", "Go to " + pane);
      robot.push(KeyCode.SHORTCUT, KeyCode.PAGE_DOWN);
      assertThat(open.desk.now().part()).as(pane).isEqualTo(++at);
    }
    robot.push(KeyCode.SHORTCUT, KeyCode.PAGE_UP);
    assertThat(open.desk.now().part()).isEqualTo(at - 1);
    open.worked();
    double before = open.desk.pad().foam().get(0).thickness();
    robot.interact(() -> open.window.section().focusField("foam[0].thickness"));
    robot.push(KeyCode.SHORTCUT, KeyCode.A);
    robot.write("33").push(KeyCode.ENTER);
    assertThat(open.desk.pad().foam().get(0).thickness()).isEqualTo(33);
    robot.push(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(open.desk.pad().foam().get(0).thickness()).isEqualTo(before);
    robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.Z);
    assertThat(open.desk.pad().foam().get(0).thickness()).isEqualTo(33);
  }

  /** The staple that is clicked on the base, or gone to by keys, is the one that is cut through. */
  @Test
  void theGaugeIsLaidAtTheStapleThatIsChosen(FxRobot robot) throws Exception {
    open.worked();
    Node gauge = robot.from(open.window).lookup((Node n) -> n instanceof StapleGaugePane).query();
    assertThat(gauge.getAccessibleText()).contains("worst staple");
    open.menu(robot, "View", "Go to the staple gauge");
    robot.push(KeyCode.RIGHT).push(KeyCode.RIGHT);
    assertThat(gauge.getAccessibleText()).contains("staple no. 2").doesNotContain("worst");
    robot.push(KeyCode.LEFT).push(KeyCode.LEFT);
    int count = open.desk.bench().result().orElseThrow().staples().positions().size();
    assertThat(gauge.getAccessibleText()).contains("staple no. " + count);
    robot.push(KeyCode.HOME);
    assertThat(gauge.getAccessibleText()).contains("worst staple");
    robot.interact(() -> open.window.pieces().choose("base"));
    var base = open.window.pieces().piece("base").orElseThrow();
    var mark = base.staples().get(6);
    var view = open.window.pieces().view();
    robot.interact(
        () ->
            view.clicked(
                view.viewport().toScreen(padwright.desk.view.PiecePlace.drawn(base, mark.at()))));
    assertThat(gauge.getAccessibleText()).contains("staple no. " + mark.number() + ":");
    assertThat(shown(robot)).isEqualTo("Staple gauge");
    // Another part is shown at its worst again.
    robot.interact(() -> open.desk.look(1));
    open.worked();
    assertThat(gauge.getAccessibleText()).contains("worst staple");
  }

  /** The demo has two rests. */
  @Test
  void aPartIsWantedMoreOrFewerTimesByAKeyInTheList(FxRobot robot) throws Exception {
    open.worked();
    open.menu(robot, "View", "Go to parts");
    robot.write("+").write("+").write("-");
    assertThat(open.desk.pad().quantity()).isEqualTo(3);
    robot.write("-").write("-").write("-");
    assertThat(open.desk.pad().quantity()).isEqualTo(1);
    // All of them were one row of nudges.
    robot.interact(open.desk::undo);
    assertThat(open.desk.pad().quantity()).isEqualTo(2);
  }

  /** A finding shows its field and its place: the leg that comes through, in the gauge's field. */
  @Test
  void aFindingShowsWhereItIs(FxRobot robot) throws Exception {
    open.worked();
    robot.interact(() -> open.desk.type(open.desk.field("staples.leg").orElseThrow(), "16"));
    open.worked();
    javafx.scene.control.ListView<?> list = robot.lookup("#findings").queryListView();
    robot.interact(
        () -> {
          list.getSelectionModel().select(0);
          list.requestFocus();
        });
    robot.push(KeyCode.ENTER);
    assertThat(robot.lookup((Node n) -> "field-staples.leg".equals(n.getId())).query().isFocused())
        .isTrue();
  }

  @Test
  void theHeadingIsReadBackLikeAFile(FxRobot robot) throws Exception {
    open.worked();
    javafx.application.Platform.runLater(open.window::heading);
    until(() -> robot.lookup("#heading-date").tryQuery().isPresent());
    TextField date = robot.lookup("#heading-date").queryAs(TextField.class);
    robot.interact(() -> date.setText("7 March"));
    robot.interact(() -> ok(date).fire());
    Label refused = robot.lookup("#heading-refused").queryAs(Label.class);
    assertThat(refused.getText()).contains("7 March");
    assertThat(open.desk.unsaved()).isFalse();
    robot.interact(
        () -> {
          date.setText("2026-03-07");
          units(robot).setValue("inches");
        });
    robot.interact(() -> ok(date).fire());
    until(() -> open.desk.unsaved());
    assertThat(open.desk.job().date()).contains("2026-03-07");
    assertThat(open.desk.job().units()).isEqualTo(Units.INCH);
  }

  @SuppressWarnings("unchecked") // made by the dialog
  private static javafx.scene.control.ComboBox<String> units(FxRobot robot) {
    return robot.lookup("#heading-units").queryAs(javafx.scene.control.ComboBox.class);
  }

  private static javafx.scene.control.Button ok(Node in) {
    return (javafx.scene.control.Button)
        ((javafx.scene.control.DialogPane) in.getScene().getRoot())
            .lookupButton(javafx.scene.control.ButtonType.OK);
  }
}
