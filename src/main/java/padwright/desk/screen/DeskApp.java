package padwright.desk.screen;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;
import padwright.desk.model.Demo;
import padwright.desk.model.Desk;
import padwright.desk.model.DeskFiles;
import padwright.desk.model.FaultLog;
import padwright.desk.model.Settings;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;

/** The workbench as a program with a window. */
public final class DeskApp extends Application {
  private static final double WIDE = 1280;
  private static final double HIGH = 800;

  private final Catalogue catalogue;
  private final Optional<Path> job;
  private final Settings settings;
  private final ExecutorService work = worker("padwright-engine");
  private final ExecutorService disk = worker("padwright-disk");

  /**
   * @param job to open at once; without one the demo's parts are there to look at
   */
  public DeskApp(Catalogue catalogue, Optional<Path> job, Settings settings) {
    this.catalogue = catalogue;
    this.job = job;
    this.settings = settings;
  }

  private static ExecutorService worker(String name) {
    return Executors.newSingleThreadExecutor(
        task -> {
          Thread thread = new Thread(null, task, name, 16L * 1024 * 1024);
          // What is on its way to the disk is waited for when the window closes.
          thread.setDaemon(true);
          return thread;
        });
  }

  @Override
  public void start(Stage stage) {
    FaultLog log = new FaultLog(settings.folder());
    Thread.currentThread().setUncaughtExceptionHandler((thread, fault) -> log.add(fault));
    Desk desk =
        new Desk(catalogue, Demo.job(new JobReader(catalogue)), Platform::runLater, work, log);
    DeskFiles files =
        new DeskFiles(desk, settings, Platform::runLater, disk, ProcessHandle.current().pid());
    Look look = new Look(settings);
    WindowDialogs dialogs =
        new WindowDialogs(stage, look, address -> getHostServices().showDocument(address));
    DeskWindow window = new DeskWindow(desk, files, settings, look, dialogs, disk);
    Rectangle2D room = Screen.getPrimary().getVisualBounds();
    stage.setScene(
        new Scene(window, Math.min(WIDE, room.getWidth()), Math.min(HIGH, room.getHeight())));
    stage.getIcons().setAll(Icon.all());
    stage.setTitle(window.title());
    desk.onChange(() -> stage.setTitle(window.title()));
    window.onClose(
        () -> {
          stage.close();
          Platform.exit();
        });
    stage.setOnCloseRequest(
        e -> {
          e.consume();
          window.quit();
        });
    stage.show();
    job.ifPresent(window.actions()::open);
  }

  @Override
  public void stop() {
    work.shutdownNow();
    disk.shutdown();
    try {
      disk.awaitTermination(5, java.util.concurrent.TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
