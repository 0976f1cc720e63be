package padwright.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import padwright.desk.view.PagePreview;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;

@ExtendWith(ApplicationExtension.class)
class PreviewPaneTest {
  private final ExecutorService worker = Executors.newSingleThreadExecutor();

  @Start
  void start(Stage stage) {
    Catalogue c = CatalogueReader.builtIn();
    stage.setScene(
        new Scene(
            new PreviewPane(
                hooks ->
                    new PagePreview(
                        List.of(c.paper("a4").orElseThrow(), c.paper("a3").orElseThrow()),
                        (paper, correction) -> pages(correction.measuredX() == 100 ? 2 : 3),
                        worker,
                        hooks.window(),
                        hooks.changed())),
            700,
            600));
    stage.show();
  }

  @AfterEach
  void stop() {
    worker.shutdownNow();
  }

  private static byte[] pages(int count) throws IOException {
    try (PDDocument d = new PDDocument();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      for (int i = 0; i < count; i++) {
        d.addPage(new PDPage(PDRectangle.A4));
      }
      d.save(out);
      return out.toByteArray();
    }
  }

  private static void says(FxRobot robot, String id, String words) throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        10,
        TimeUnit.SECONDS,
        () -> robot.lookup(id).queryAs(Labeled.class).getText().contains(words));
  }

  @Test
  void pages_are_turned_and_a_correction_is_taken_or_refused_where_it_is_typed(FxRobot robot)
      throws TimeoutException {
    says(robot, "#preview-place", "Page 1 of 2");
    robot.clickOn("#preview-next");
    says(robot, "#preview-place", "Page 2 of 2");
    robot.clickOn("#preview-across").write("98").push(KeyCode.ENTER);
    says(robot, "#preview-place", "Page 2 of 3");
    robot.push(KeyCode.PAGE_DOWN);
    says(robot, "#preview-place", "Page 3 of 3");
    assertThat(robot.lookup("#preview-next").queryButton().isDisabled()).isTrue();
    robot.clickOn("#preview-across").write("1").push(KeyCode.ENTER);
    says(robot, "#preview-problem", "outside 85 to 115");
    says(robot, "#preview-place", "Page 3 of 3");
  }
}
