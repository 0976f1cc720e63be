package padwright.desk.screen;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.stage.Stage;
import padwright.desk.model.Settings;
import padwright.material.Catalogue;

/**
 * Starts the workbench and waits until it is closed. Not the application itself: the toolkit lies
 * on the class path, and refuses to start from one.
 */
public final class DeskStart {
  private static final String PLAIN_GROUNDS = "prism.disableRegionCaching";

  private DeskStart() {}

  /** What the toolkit has to be told before it starts. */
  static void prepare() {
    // It warns of the class path at every start; it works from there.
    Logger.getLogger("javafx").setLevel(Level.SEVERE);
    // Without a graphics card it would stretch a picture of every plain background, in each frame
    // anew, which takes longer than all else that is drawn; filling them takes next to nothing.
    if (System.getProperty(PLAIN_GROUNDS) == null) {
      System.setProperty(PLAIN_GROUNDS, "true");
    }
  }

  /**
   * @param job to open at once, if any
   * @throws UnsupportedOperationException where there is no screen to show a window on
   */
  public static void run(Catalogue catalogue, Optional<Path> job, Settings settings)
      throws InterruptedException {
    prepare();
    CountDownLatch closed = new CountDownLatch(1);
    DeskApp app = new DeskApp(catalogue, job, settings);
    Platform.startup(
        () -> {
          Stage stage = new Stage();
          stage.setOnHidden(e -> closed.countDown());
          app.start(stage);
        });
    closed.await();
    app.stop();
    Platform.exit();
  }
}
