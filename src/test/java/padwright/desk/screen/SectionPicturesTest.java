package padwright.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import padwright.desk.model.Desk;

/** Every part of the demo at three sizes, light and dark: fields on the screen do not meet. */
@ExtendWith(ApplicationExtension.class)
class SectionPicturesTest {
  private static final int[][] SIZES = {{460, 420}, {700, 600}, {1500, 1000}};

  @TempDir static Path folder;

  @Start
  void start(Stage stage) {
    stage.show();
  }

  @Test
  void noTwoFieldsMeetAndNoneLeavesTheDrawing() {
    Desk desk = Screens.desk(Screens.demo(), folder);
    int parts = desk.job().parts().size();
    for (int part = 0; part < parts; part++) {
      int at = part;
      for (int[] size : SIZES) {
        List<Bounds> boxes =
            Screens.onWindow(
                () -> {
                  desk.look(at);
                  SectionPane pane = new SectionPane(desk);
                  boolean dark = at % 2 == 1;
                  pane.setDark(dark);
                  shown(pane, size, "section-" + desk.pad().id() + "-" + size[0]);
                  pane.setDark(!dark);
                  if (at < 2) {
                    shown(pane, size, "section-" + desk.pad().id() + "-other-" + size[0]);
                  }
                  return boxes(pane);
                });
        for (int i = 0; i < boxes.size(); i++) {
          for (int k = 0; k < i; k++) {
            assertThat(boxes.get(i).intersects(boxes.get(k)))
                .as("part %d at %d: %s, %s", part, size[0], boxes.get(i), boxes.get(k))
                .isFalse();
          }
        }
      }
    }
  }

  @Test
  void theGaugeIsShownWhole() {
    Desk desk = Screens.desk(Screens.demo(), folder);
    for (int part = 0; part < desk.job().parts().size(); part++) {
      int at = part;
      String words =
          Screens.onWindow(
              () -> {
                desk.look(at);
                StapleGaugePane pane = new StapleGaugePane(desk);
                pane.setDark(at % 2 == 1);
                int[] size = at == 2 ? new int[] {800, 500} : new int[] {420, 260};
                shown(pane, size, "gauge-" + desk.pad().id());
                return pane.getAccessibleText();
              });
      assertThat(words).contains("into the board").contains("holds");
    }
  }

  private static void shown(Region pane, int[] size, String name) {
    if (pane.getScene() == null) {
      new Scene(pane, size[0], size[1]);
    }
    pane.resize(size[0], size[1]);
    for (int i = 0; i < 3; i++) {
      pane.applyCss();
      pane.layout();
    }
    Screens.keep(pane, name);
  }

  private static List<Bounds> boxes(SectionPane pane) {
    List<Bounds> boxes = new ArrayList<>();
    for (Node n : pane.fieldsInOrder()) {
      Bounds b = n.localToScene(n.getLayoutBounds());
      boxes.add(
          new javafx.geometry.BoundingBox(
              b.getMinX() + 0.5, b.getMinY() + 0.5, b.getWidth() - 1, b.getHeight() - 1));
    }
    return boxes;
  }
}
