package padwright.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import padwright.desk.solid.Body;
import padwright.desk.solid.Camera;
import padwright.desk.solid.Solid;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;
import padwright.pattern.PatternEngine;

@ExtendWith(ApplicationExtension.class)
class SolidPaneTest {
  private final List<String> picked = new ArrayList<>();
  private SolidPane pane;

  @Start
  void start(Stage stage) {
    Catalogue catalogue = CatalogueReader.builtIn();
    var job = new JobReader(catalogue).read(Path.of("patterns", "kneeler.json"));
    pane = new SolidPane(true);
    pane.show(Solid.of(new PatternEngine(catalogue).run(job).parts().get(0)));
    pane.setOnPicked((Body b) -> picked.add(b.name()));
    stage.setScene(new Scene(pane, 480, 320));
    stage.show();
  }

  @Test
  void keysTurnZoomAndOpenAndTheTextSaysWhatIsSeen(FxRobot robot) {
    robot.interact(pane::requestFocus);
    assertThat(pane.getAccessibleText())
        .isEqualTo("Kneeler, seen from the front and above. Covered, as finished.");
    WritableImage covered = picture(robot);
    robot.type(KeyCode.PAGE_DOWN, 2);
    assertThat(pane.getAccessibleText()).contains("Covering taken off");
    WritableImage opened = picture(robot);
    // The middle of the face: covering at first, the foam under it then.
    assertThat(colour(opened)).isNotEqualTo(colour(covered));
    robot.type(KeyCode.PAGE_DOWN, 9);
    assertThat(pane.openingProperty().get()).isEqualTo(pane.stages().orElseThrow().steps());
    robot.type(KeyCode.PAGE_UP, 9);
    assertThat(pane.openingProperty().get()).isZero();
    double before = pane.camera().azimuth();
    robot.type(KeyCode.LEFT);
    assertThat(pane.camera().azimuth()).isGreaterThan(before);
    double zoom = pane.camera().zoom();
    robot.type(KeyCode.EQUALS);
    assertThat(pane.camera().zoom()).isGreaterThan(zoom);
    robot.type(KeyCode.DIGIT4);
    assertThat(pane.getAccessibleText()).contains("from under the back of the board");
  }

  @Test
  void aDragTurnsAndAClickPicks(FxRobot robot) {
    Camera before = pane.camera();
    robot.drag(pane, MouseButton.PRIMARY).moveBy(60, 30).drop();
    assertThat(pane.camera().azimuth()).isLessThan(before.azimuth());
    assertThat(pane.camera().elevation()).isGreaterThan(before.elevation());
    assertThat(picked).isEmpty();
    robot.clickOn(pane);
    assertThat(picked).containsExactly("covering");
    robot.interact(() -> pane.setDark(true));
    assertThat(picture(robot).getPixelReader().getColor(5, 100).getBrightness()).isLessThan(0.3);
  }

  private WritableImage picture(FxRobot robot) {
    WaitForAsyncUtils.waitForFxEvents();
    WritableImage[] taken = new WritableImage[1];
    robot.interact(() -> taken[0] = pane.snapshot(null, null));
    return taken[0];
  }

  private static Color colour(WritableImage image) {
    return image.getPixelReader().getColor(240, 150);
  }
}
