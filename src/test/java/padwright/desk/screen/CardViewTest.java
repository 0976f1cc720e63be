package padwright.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.HBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import padwright.desk.edit.Shipped;
import padwright.desk.solid.Camera;
import padwright.desk.solid.Palette;
import padwright.desk.solid.Solid;
import padwright.pattern.Pads;
import padwright.pattern.PatternEngine;

/**
 * The solid drawn by the graphics card beside the painted one: two programs, one camera. Needs a
 * real window with 3D.
 */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class CardViewTest {
  private static final int WIDE = 480;
  private static final int HIGH = 320;

  /** The mark of the focus, and the caption at the foot, are no body. */
  private static final int EDGE = 4;

  private static final int FOOT = 30;

  private SolidPane painted;
  private SolidPane card;

  @Start
  void start(Stage stage) {
    painted = new SolidPane(true);
    card = new SolidPane(false);
    for (SolidPane p : List.of(painted, card)) {
      p.setPrefSize(WIDE, HIGH);
    }
    stage.setScene(new Scene(new HBox(painted, card)));
    stage.show();
  }

  @Test
  void bothShowTheSameSolidFromEveryPlaceOpenedOrNot(FxRobot robot) {
    assertThat(Platform.isSupported(ConditionalFeature.SCENE3D)).as("3D in this window").isTrue();
    for (String id : List.of("desk-rest", "stool-top", "corner-bench")) {
      Solid solid = Solid.of(new PatternEngine(Pads.CATALOGUE).run(Shipped.demo(id)));
      for (Camera.View view : Camera.View.values()) {
        for (int opening : new int[] {0, 2}) {
          robot.interact(() -> shown(solid, view, opening));
          WaitForAsyncUtils.waitForFxEvents();
          String as = id + " " + view + " " + opening;
          robot.interact(() -> Screens.keep(painted.getParent(), "solid-painted-and-card"));
          robot.interact(() -> same(as));
        }
      }
    }
    robot.interact(() -> Screens.keep(painted.getParent(), "solid-painted-and-card"));
  }

  private void shown(Solid solid, Camera.View view, int opening) {
    for (SolidPane p : List.of(painted, card)) {
      p.show(solid);
      p.lookFrom(view);
      p.openingProperty().set(opening);
    }
  }

  /** Nearly every dot is body in both or background in both, and the bodies are about as light. */
  private void same(String as) {
    WritableImage a = picture(painted);
    WritableImage b = picture(card);
    int background = Palette.light().background();
    int both = 0;
    int either = 0;
    double lightA = 0;
    double lightB = 0;
    for (int y = EDGE; y < HIGH - FOOT; y++) {
      for (int x = EDGE; x < WIDE - EDGE; x++) {
        int ca = a.getPixelReader().getArgb(x, y);
        int cb = b.getPixelReader().getArgb(x, y);
        boolean inA = far(ca, background);
        boolean inB = far(cb, background);
        both += inA && inB ? 1 : 0;
        either += inA || inB ? 1 : 0;
        lightA += inA && inB ? light(ca) : 0;
        lightB += inA && inB ? light(cb) : 0;
      }
    }
    assertThat(either).as(as).isGreaterThan(2000);
    assertThat((double) both / either).as(as).isGreaterThan(0.95);
    assertThat(lightB / lightA).as(as).isBetween(0.8, 1.25);
  }

  private static WritableImage picture(Node node) {
    return node.snapshot(null, new WritableImage(WIDE, HIGH));
  }

  private static boolean far(int a, int b) {
    return Math.abs((a >> 16 & 255) - (b >> 16 & 255))
            + Math.abs((a >> 8 & 255) - (b >> 8 & 255))
            + Math.abs((a & 255) - (b & 255))
        > 24;
  }

  private static double light(int argb) {
    return (argb >> 16 & 255) + (argb >> 8 & 255) + (argb & 255);
  }
}
