package padwright.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import padwright.design.Job;
import padwright.desk.model.Desk;
import padwright.desk.view.SectionForm.Handle;
import padwright.geometry.Vec2;

/**
 * The forearm rest of the demo, 600 x 60 x 12 with two foam layers of 12, changed in its section.
 */
@ExtendWith(ApplicationExtension.class)
class SectionPaneTest {
  @TempDir static Path folder;

  private Desk desk;
  private SectionPane pane;

  @Start
  void start(Stage stage) {
    desk = Screens.desk(Screens.demo(), folder);
    pane = new SectionPane(desk);
    stage.setScene(new Scene(pane, 760, 640));
    stage.show();
  }

  /** Places of the job file are no names of a style sheet, so they are looked for one by one. */
  private List<Node> fields(String place) {
    return pane.lookupAll(".form-field").stream()
        .filter(n -> ("field-" + place).equals(n.getId()))
        .distinct()
        .toList();
  }

  private TextField field(String place) {
    return (TextField) fields(place).get(0);
  }

  private void write(FxRobot robot, String place, String text) {
    robot.interact(() -> pane.focusField(place));
    robot.interact(() -> field(place).selectAll());
    robot.write(text);
  }

  private double height() {
    return desk.bench().result().orElseThrow().figures().finished().height();
  }

  private double blank() {
    return desk.bench().result().orElseThrow().figures().cover().length();
  }

  @Test
  void aFoamLayerChangedInTheSectionGivesTheNewBlank(FxRobot robot) {
    double height = height();
    double blank = blank();
    write(robot, "foam[0].thickness", "12+8");
    robot.type(KeyCode.ENTER);
    assertThat(desk.bench().result().orElseThrow().spec().foam().get(0).thickness()).isEqualTo(20);
    assertThat(height()).isCloseTo(height + 8, within(1e-9));
    // 8 mm more of upright side at each end, whatever the edge and the back ask for.
    assertThat(blank()).isCloseTo(blank + 16, within(1e-6));
    assertThat(field("foam[0].thickness").getText()).isEqualTo("20");
    assertThat(pane.getSelectedMember()).isEqualTo("foam[0]");
  }

  @Test
  void whatIsRefusedStaysInItsFieldWithItsSentenceAndTheJobAsItWas(FxRobot robot) {
    Job before = desk.job();
    write(robot, "base.thickness", "plenty");
    robot.type(KeyCode.ENTER);
    assertThat(desk.job()).isEqualTo(before);
    assertThat(field("base.thickness").getText()).isEqualTo("plenty");
    Label sentence = robot.lookup("#refusal").query();
    assertThat(sentence.isVisible()).isTrue();
    assertThat(sentence.getText()).startsWith("\u2715").contains("plenty");
    assertThat(field("base.thickness").getAccessibleHelp()).contains("plenty");
    robot.interact(() -> Screens.keep(pane, "section-refused"));
    robot.type(KeyCode.ESCAPE);
    assertThat(field("base.thickness").getText()).isEqualTo("12");
    assertThat(sentence.isVisible()).isFalse();
  }

  @Test
  void aRowOfNudgesByKeysAndWheelIsOneStepToUndo(FxRobot robot) {
    Job before = desk.job();
    robot.interact(() -> pane.focusField("foam[1].thickness"));
    robot.type(KeyCode.UP, KeyCode.UP, KeyCode.UP);
    robot.moveTo(field("foam[1].thickness"));
    robot.scroll(1, javafx.geometry.VerticalDirection.UP);
    WaitForAsyncUtils.waitForFxEvents();
    double now = desk.pad().foam().get(1).thickness();
    // Three keys and one notch of the wheel, whichever way this system scrolls.
    assertThat(Math.abs(now - 15)).isEqualTo(1);
    robot.interact(desk::undo);
    assertThat(desk.job()).isEqualTo(before);
    assertThat(desk.toUndo()).isEmpty();
    assertThat(field("foam[1].thickness").getText()).isEqualTo("12");
  }

  @Test
  void aHandleDraggedChangesItsSizeInOneStep(FxRobot robot) {
    Job before = desk.job();
    Handle h =
        pane.form().handles().stream()
            .filter(x -> x.place().equals("foam[0].thickness"))
            .findFirst()
            .orElseThrow();
    double points = 5 * h.scale();
    SectionSheet sheet = robot.lookup("#section-sheet").query();
    var from = sheet.localToScreen(h.at().x(), h.at().y());
    robot.moveTo(from.getX(), from.getY()).press(MouseButton.PRIMARY);
    robot.moveBy(0, -points / 2).moveBy(0, -points + points / 2);
    robot.release(MouseButton.PRIMARY);
    assertThat(desk.pad().foam().get(0).thickness()).isEqualTo(17);
    robot.interact(desk::undo);
    assertThat(desk.job()).isEqualTo(before);
  }

  @Test
  void membersAreChosenByAClickAndEveryGroupByItsButton(FxRobot robot) {
    SectionSheet sheet = robot.lookup("#section-sheet").query();
    Vec2 in =
        pane.form().members().stream()
            .filter(m -> m.name().equals("base"))
            .map(m -> padwright.geometry.Bounds.of(m.outline()).centre())
            .findFirst()
            .orElseThrow();
    var at = sheet.localToScreen(in.x(), in.y());
    robot.clickOn(at.getX(), at.getY());
    assertThat(pane.getSelectedMember()).isEqualTo("base");
    assertThat(fields("base.board")).hasSize(1);
    for (var group : desk.fields()) {
      robot.interact(() -> pane.select(group.member()));
      for (var f : group.fields()) {
        assertThat(fields(f.place()))
            .as(f.place())
            .hasSize(1)
            .allSatisfy(n -> assertThat(n.getAccessibleText()).isNotBlank());
      }
    }
    robot.interact(() -> pane.select("foam[1]"));
    robot.interact(() -> robot.lookup("#action-add-a-layer-above").queryButton().fire());
    assertThat(desk.pad().foam()).hasSize(3);
    assertThat(pane.getSelectedMember()).isEqualTo("foam[2]");
  }

  @Test
  void aStopIsMarkedAtItsFieldAndItsRemedyTakenThere(FxRobot robot) {
    robot.interact(() -> desk.type(desk.field("staples.leg").orElseThrow(), "16"));
    robot.interact(() -> pane.focusField("staples.leg"));
    assertThat(field("staples.leg").getAccessibleHelp()).startsWith("stop: ");
    robot.interact(() -> Screens.keep(pane, "section-stop"));
    robot.interact(() -> robot.lookup("#remedy-staple-breakthrough").queryButton().fire());
    assertThat(desk.bench().result().orElseThrow().stopped()).isFalse();
    assertThat(field("staples.leg").getAccessibleHelp()).doesNotContain("stop");
  }
}
