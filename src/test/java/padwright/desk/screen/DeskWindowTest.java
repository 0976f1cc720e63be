package padwright.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import padwright.desk.edit.PartEdit.Step;
import padwright.desk.model.Demo;
import padwright.desk.model.Desk;
import padwright.desk.model.DeskFiles;
import padwright.desk.model.FaultLog;
import padwright.desk.model.Settings;
import padwright.jobfile.JobReader;
import padwright.jobfile.JobWriter;
import padwright.pattern.Pads;

/** The whole window, driven as a maker drives it. Sizes by hand, from the demo's own. */
@ExtendWith(ApplicationExtension.class)
class DeskWindowTest {
  private static final long DEAD = 999_999_999_999_999_999L;

  private final ExecutorService work = Executors.newSingleThreadExecutor();
  private final ExecutorService disk = Executors.newSingleThreadExecutor();
  private final NoDialogs dialogs = new NoDialogs();
  private Path folder;
  private Desk desk;
  private DeskFiles files;
  private DeskWindow window;

  @Start
  void start(Stage stage) throws Exception {
    folder = Files.createTempDirectory("desk");
    // What a workbench that was killed left behind; no process has that number.
    JobReader reader = new JobReader(Pads.CATALOGUE);
    String left = JobWriter.write(Demo.job(reader)).replace("Reading nook", "Left behind");
    Files.writeString(folder.resolve("unsaved-" + DEAD + ".json"), left, StandardCharsets.UTF_8);
    Settings settings = new Settings(folder);
    desk =
        new Desk(Pads.CATALOGUE, Demo.job(reader), Platform::runLater, work, new FaultLog(folder));
    files = new DeskFiles(desk, settings, Platform::runLater, disk, 1);
    window = new DeskWindow(desk, files, settings, new Look(settings), dialogs, disk);
    stage.setScene(new Scene(window, 1280, 800));
    stage.show();
  }

  @AfterEach
  void stop() {
    work.shutdown();
    disk.shutdown();
  }

  private static void until(Callable<Boolean> holds) throws Exception {
    WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, holds);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void worked() throws Exception {
    until(() -> !desk.bench().stale() && desk.bench().asked().equals(desk.pad()));
  }

  private double cutLength() {
    return desk.bench().result().orElseThrow().figures().cover().cutLength();
  }

  @Test
  void undoGoesBackAcrossPartsAndEachPartShowsItsOwn(FxRobot robot) throws Exception {
    worked();
    double before = cutLength();
    robot.interact(
        () -> desk.type(desk.field("base.outline.rectangle.length").orElseThrow(), "610"));
    worked();
    assertThat(cutLength()).isCloseTo(before + 10, org.assertj.core.api.Assertions.within(1e-6));
    ListView<?> parts = robot.lookup("#parts").queryListView();
    robot.interact(() -> parts.getSelectionModel().select(1));
    worked();
    assertThat(desk.pad().id()).isEqualTo("stool-top");
    robot.interact(() -> desk.type(desk.field("quantity").orElseThrow(), "6"));
    worked();
    robot.interact(desk::undo);
    worked();
    assertThat(desk.pad().quantity()).isEqualTo(4);
    robot.interact(desk::undo);
    worked();
    assertThat(desk.pad().id()).isEqualTo("desk-rest");
    assertThat(parts.getSelectionModel().getSelectedIndex()).isZero();
    assertThat(cutLength()).isEqualTo(before);
    assertThat(desk.unsaved()).isFalse();
    ComboBox<?> drawing = robot.lookup("#drawing").queryComboBox();
    assertThat(drawing.getItems()).asString().contains("cover", "base", "section", "wrap-map");
  }

  @Test
  void aStopIsListedAndItsRemedyTakenThere(FxRobot robot) throws Exception {
    worked();
    // A leg of 16 through one layer of 1 in a board of 12 comes out on the other side.
    robot.interact(() -> desk.type(desk.field("staples.leg").orElseThrow(), "16"));
    until(() -> robot.lookup("#remedy-staple-breakthrough").tryQuery().isPresent());
    assertThat(desk.bench().result().orElseThrow().stopped()).isTrue();
    robot.interact(
        () ->
            robot
                .lookup("#remedy-staple-breakthrough")
                .queryAs(javafx.scene.control.Button.class)
                .fire());
    worked();
    assertThat(desk.bench().result().orElseThrow().stopped()).isFalse();
    robot.push(KeyCode.SHORTCUT, KeyCode.Z);
    until(() -> desk.pad().staples().leg().isPresent());
  }

  @Test
  void workLeftByAKilledProgramIsBroughtBack(FxRobot robot) throws Exception {
    worked();
    robot.interact(
        () -> robot.lookup("#recover").queryAs(javafx.scene.control.Button.class).fire());
    until(() -> desk.job().title().equals("Left behind"));
    assertThat(desk.unsaved()).isTrue();
    disk.submit(() -> {}).get(30, TimeUnit.SECONDS);
    WaitForAsyncUtils.waitForFxEvents();
    disk.submit(() -> {}).get(30, TimeUnit.SECONDS);
    // It has a copy of its own by now, and the old one is gone.
    assertThat(folder.resolve("unsaved-1.json")).exists();
    assertThat(folder.resolve("unsaved-" + DEAD + ".json")).doesNotExist();
    dialogs.save = Optional.of(folder.resolve("saved.json"));
    robot.interact(window.actions()::save);
    until(() -> !desk.unsaved());
    assertThat(Files.readString(folder.resolve("saved.json"))).contains("Left behind");
    assertThat(folder.resolve("unsaved-1.json")).doesNotExist();
  }

  @Test
  void leavingUnsavedWorkAsksFirst(FxRobot robot) throws Exception {
    worked();
    robot.interact(() -> desk.type(desk.field("name").orElseThrow(), "Another name"));
    dialogs.unsaved = Dialogs.Unsaved.STAY;
    boolean[] closed = new boolean[1];
    window.onClose(() -> closed[0] = true);
    robot.interact(window::quit);
    assertThat(closed[0]).isFalse();
    assertThat(dialogs.said).anyMatch(s -> s.startsWith("unsaved: "));
    dialogs.unsaved = Dialogs.Unsaved.LEAVE;
    robot.interact(window::quit);
    assertThat(closed[0]).isTrue();
  }

  @Test
  void allPartsAreDraftedIntoAFolder(FxRobot robot) throws Exception {
    worked();
    // One small part is enough for a folder.
    robot.interact(
        () -> {
          while (desk.job().parts().size() > 1) {
            desk.look(desk.job().parts().size() - 1);
            window.parts().remove();
          }
        });
    worked();
    Path out = folder.resolve("patterns");
    dialogs.folder = Optional.of(out);
    robot.interact(window::draft);
    until(() -> robot.lookup("#write-all").tryQuery().isPresent());
    robot.interact(
        () -> robot.lookup("#write-all").queryAs(javafx.scene.control.Button.class).fire());
    until(() -> robot.lookup("#drafted").queryAs(Label.class).getText().contains("files in"));
    assertThat(out.resolve("desk-rest/desk-rest.pdf")).exists();
    assertThat(out.resolve("pieces.json")).exists();
    byte[] head = Files.readAllBytes(out.resolve("desk-rest/desk-rest.pdf"));
    assertThat(new String(head, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    robot.interact(() -> robot.lookup("#write-all").query().getScene().getWindow().hide());
  }

  @Test
  void partsAreAddedMirroredMovedAndAJobOfFortyIsListed(FxRobot robot) throws Exception {
    worked();
    robot.interact(window.parts()::mirror);
    assertThat(desk.pad().quantity()).isEqualTo(2);
    assertThat(desk.pad().mirrored()).isEqualTo(2);
    robot.interact(
        () -> {
          while (desk.job().parts().size() < 40) {
            window.parts().duplicate();
          }
          desk.change(
              p ->
                  desk.edit()
                      .with(
                          p,
                          Step.put(
                              "name",
                              "A pad with a name as long as it may be, to see where it ends, in the back room of the library, left")),
              "name",
              "");
        });
    worked();
    assertThat(desk.job().parts().stream().map(p -> p.id()).distinct()).hasSize(40);
    int at = desk.now().part();
    robot.interact(() -> window.parts().move(-1));
    assertThat(desk.now().part()).isEqualTo(at - 1);
    until(() -> java.util.stream.IntStream.range(0, 40).allMatch(i -> desk.answer(i).isPresent()));
  }
}
