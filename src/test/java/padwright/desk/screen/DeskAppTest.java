package padwright.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.framework.junit5.Stop;
import padwright.desk.edit.JobEdit;
import padwright.desk.model.Demo;
import padwright.desk.model.Settings;
import padwright.jobfile.JobReader;
import padwright.jobfile.JobWriter;
import padwright.pattern.Pads;

/** The program as it is started with a job: its window has that job, and it can be closed. */
@ExtendWith(ApplicationExtension.class)
class DeskAppTest {
  private DeskApp app;
  private Stage stage;

  @Start
  void start(Stage stage) throws Exception {
    Path folder = Files.createTempDirectory("desk");
    JobReader reader = new JobReader(Pads.CATALOGUE);
    Path job = folder.resolve("one rest.json");
    Files.writeString(
        job,
        JobWriter.write(
            JobEdit.headed(Demo.job(reader), "One rest", "", "", Demo.job(reader).units())));
    this.stage = stage;
    app = new DeskApp(Pads.CATALOGUE, Optional.of(job), new Settings(folder));
    app.start(stage);
  }

  @Stop
  void stop() {
    app.stop();
  }

  @Test
  void itsWindowShowsTheJobItWasStartedWith(FxRobot robot) throws Exception {
    OpenDesk.until(() -> stage.getTitle().equals("one rest.json \u2013 Padwright"));
    assertThat(stage.isShowing()).isTrue();
    assertThat(stage.getIcons()).hasSize(4);
    robot.interact(
        () -> Screens.keep(new javafx.scene.Group(view(stage.getIcons().get(3))), "icon"));
    assertThat(robot.lookup("#parts").queryListView().getItems()).hasSizeGreaterThan(5);
  }

  private static javafx.scene.image.ImageView view(javafx.scene.image.Image image) {
    return new javafx.scene.image.ImageView(image);
  }
}
