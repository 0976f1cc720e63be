package padwright.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javafx.geometry.VerticalDirection;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import padwright.desk.view.Highlight;
import padwright.desk.view.Picture;
import padwright.desk.view.Viewport;
import padwright.export.Drawing;
import padwright.export.Drawing.Fill;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

@ExtendWith(ApplicationExtension.class)
class DrawingPaneTest {
  /** A board of 400 x 200 with a grey area left of its middle. */
  private static final Drawing BOARD =
      new Drawing(
          "Bench: Base",
          "Full-size pattern, 1:1, in mm.",
          new Bounds(-210, -110, 210, 110),
          List.of(
              new Fill(rectangle(-150, -50, -50, 50), 0.8),
              new Stroke(rectangle(-200, -100, 200, 100), LineStyle.CUT)));

  private DrawingPane pane;

  private static Path rectangle(double x1, double y1, double x2, double y2) {
    return Path.polygon(new Vec2(x1, y1), new Vec2(x2, y1), new Vec2(x2, y2), new Vec2(x1, y2));
  }

  @Start
  void start(Stage stage) {
    pane = new DrawingPane();
    pane.show(BOARD);
    stage.setScene(new Scene(pane, 500, 350));
    stage.show();
    pane.requestFocus();
  }

  @Test
  void by_keys_alone_it_is_zoomed_moved_fitted_and_measured(FxRobot robot) {
    double fitted = pane.viewport().scale();
    robot.write("+");
    assertThat(pane.viewport().scale()).isCloseTo(fitted * Math.pow(2, 0.25), within(1e-9));
    double left = pane.viewport().left();
    robot.push(KeyCode.RIGHT);
    assertThat(pane.viewport().left()).isCloseTo(left - 40, within(1e-9));
    robot.write("-").write("0");
    assertThat(pane.viewport().scale()).isCloseTo(fitted, within(1e-9));

    robot.write("m");
    assertThat(pane.isMeasuring()).isTrue();
    // From the middle, the nearest named places are the middles of the long sides.
    robot.write("n").push(KeyCode.ENTER);
    robot.write("n").push(KeyCode.ENTER);
    assertThat(pane.measuredProperty().get()).endsWith("up or down").contains("200.0 mm across");
    assertThat(pane.getAccessibleText()).isEqualTo(pane.measuredProperty().get());
    robot.push(KeyCode.ESCAPE);
    assertThat(pane.isMeasuring()).isFalse();
    assertThat(pane.getAccessibleText()).startsWith("Bench: Base. Full-size pattern");
  }

  @Test
  void the_wheel_zooms_about_the_pointer_a_drag_moves_and_clicks_measure(FxRobot robot) {
    robot.moveTo(pane);
    Vec2 middle = new Vec2(250, 175);
    Vec2 under = pane.viewport().toDrawing(middle);
    robot.scroll(2, VerticalDirection.UP);
    assertThat(pane.viewport().toDrawing(middle).distance(under)).isLessThan(1e-6);
    double left = pane.viewport().left();
    robot.drag(pane).moveBy(50, 20).drop();
    assertThat(pane.viewport().left()).isCloseTo(left + 50, within(1.0));

    robot.interact(pane::fit);
    WaitForAsyncUtils.waitForFxEvents();
    robot.write("m");
    click(robot, new Vec2(-199, 99));
    click(robot, new Vec2(199, 99));
    assertThat(pane.measuredProperty().get())
        .isEqualTo("400.0 mm: 400.0 mm across, 0.0 mm up or down");
  }

  private void click(FxRobot robot, Vec2 place) {
    Vec2 p = pane.viewport().toScreen(place);
    var at = pane.localToScreen(p.x(), p.y());
    robot.clickOn(at.getX(), at.getY());
  }

  @Test
  void its_picture_is_black_on_white_or_light_on_dark_at_any_number_of_dots(FxRobot robot)
      throws IOException {
    for (int dots : new int[] {1, 2}) {
      BufferedImage light = picture(robot, dots, false);
      BufferedImage dark = picture(robot, dots, true);
      assertThat(light.getWidth()).isEqualTo(500 * dots);
      assertThat(light.getHeight()).isEqualTo(350 * dots);
      Viewport v = pane.viewport();
      Vec2 line = v.toScreen(new Vec2(0, 100)).times(dots);
      Vec2 area = v.toScreen(new Vec2(-100, 0)).times(dots);
      Vec2 free = v.toScreen(new Vec2(100, 0)).times(dots);
      assertThat(grey(light, free)).isEqualTo(255);
      assertThat(grey(light, area)).isCloseTo(204, within(1)); // 0.8 of 255
      assertThat(darkest(light, line)).isLessThan(140);
      assertThat(grey(dark, free)).isLessThan(50);
      assertThat(grey(dark, area)).isGreaterThan(grey(dark, free));
      assertThat(grey(dark, area)).isLessThan(120);
    }
  }

  private BufferedImage picture(FxRobot robot, int dots, boolean dark) throws IOException {
    Picture[] made = new Picture[1];
    robot.interact(
        () -> {
          pane.setDark(dark);
          made[0] = pane.picture(dots);
        });
    return ImageIO.read(new ByteArrayInputStream(made[0].png()));
  }

  private static int grey(BufferedImage image, Vec2 at) {
    return image.getRGB((int) at.x(), (int) at.y()) & 0xFF;
  }

  private static int darkest(BufferedImage image, Vec2 at) {
    int least = 255;
    for (int d = -3; d <= 3; d++) {
      least = Math.min(least, grey(image, at.plus(new Vec2(0, d))));
    }
    return least;
  }

  @Test
  void what_is_pointed_at_comes_into_view_and_a_part_of_it_is_exported(FxRobot robot) {
    robot.interact(() -> pane.look(pane.viewport().zoomed(pane.viewport().toScreen(Vec2.ZERO), 8)));
    WaitForAsyncUtils.waitForFxEvents();
    Vec2 corner = new Vec2(200, 100);
    assertThat(pane.viewport().visible().contains(corner)).isFalse();
    robot.interact(() -> pane.highlight(Highlight.at(corner)));
    assertThat(pane.viewport().visible().contains(corner)).isTrue();

    Drawing part = pane.snapshotDrawing();
    assertThat(part.extent()).isNotEqualTo(BOARD.extent());
    assertThat(part.extent().maxX()).isBetween(200.0, 210.0);
    assertThat(part.extent().minX()).isGreaterThan(0);
    assertThat(pane.svg()).contains("<title>Bench: Base</title>").contains("class=\"cut-line\"");
  }

  @Test
  void a_picture_that_is_not_at_full_size_is_not_measured(FxRobot robot) {
    robot.interact(() -> pane.show(BOARD, false));
    robot.write("m");
    assertThat(pane.isMeasuring()).isFalse();
    assertThat(pane.measuredProperty().get()).contains("not at full size");
  }
}
