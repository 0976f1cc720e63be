package padwright.desk.screen;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.HBox;
import javafx.stage.Stage;
import javafx.util.Duration;
import javax.imageio.ImageIO;
import padwright.desk.solid.Camera;
import padwright.desk.solid.Solid;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;

/**
 * A window with the same solid twice, painted and drawn by the graphics card, saved to {@code
 * target/solid} part by part: to be looked at on a real screen.
 */
public final class SolidWindow extends Application {
  private static final int WIDE = 600;
  private static final int HIGH = 400;

  public static void main(String[] args) {
    launch(args);
  }

  @Override
  public void start(Stage stage) {
    System.out.println("3D: " + Platform.isSupported(ConditionalFeature.SCENE3D));
    Catalogue catalogue = CatalogueReader.builtIn();
    var job = new JobReader(catalogue).read(Path.of("demo", "reading-nook.json"));
    SolidPane painted = new SolidPane(true);
    SolidPane card = new SolidPane(false);
    painted.setPrefSize(WIDE, HIGH);
    card.setPrefSize(WIDE, HIGH);
    stage.setScene(new Scene(new HBox(painted, card)));
    stage.show();
    next(stage, List.of(painted, card), new PatternEngine(catalogue).run(job).parts(), 0);
  }

  private static void next(Stage stage, List<SolidPane> panes, List<PartResult> parts, int n) {
    if (n == 2 * parts.size()) {
      Platform.exit();
      return;
    }
    Solid solid = Solid.of(parts.get(n / 2));
    for (SolidPane pane : panes) {
      pane.show(solid);
      pane.setDark(n % 4 > 1);
      pane.openingProperty().set(n % 2 == 0 ? 0 : 2);
      pane.lookFrom(n % 2 == 0 ? Camera.View.BACK_CORNER : Camera.View.CORNER);
    }
    PauseTransition wait = new PauseTransition(Duration.millis(400));
    wait.setOnFinished(
        e -> {
          save(stage.getScene().snapshot(null), "window-" + n);
          next(stage, panes, parts, n + 1);
        });
    wait.play();
  }

  private static void save(WritableImage image, String name) {
    int wide = (int) image.getWidth();
    int high = (int) image.getHeight();
    BufferedImage copy = new BufferedImage(wide, high, BufferedImage.TYPE_INT_ARGB);
    for (int y = 0; y < high; y++) {
      for (int x = 0; x < wide; x++) {
        copy.setRGB(x, y, image.getPixelReader().getArgb(x, y));
      }
    }
    try {
      ImageIO.write(copy, "png", new File("target/solid/" + name + ".png"));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
