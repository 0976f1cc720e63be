package padwright.desk.screen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.stage.Stage;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;
import padwright.desk.model.Demo;
import padwright.desk.model.Desk;
import padwright.desk.model.DeskFiles;
import padwright.desk.model.FaultLog;
import padwright.desk.model.Settings;
import padwright.jobfile.JobReader;
import padwright.pattern.Pads;

/** The whole window over the demo, with a folder of its own to keep things in. */
final class OpenDesk {
  final ExecutorService work = Executors.newSingleThreadExecutor();
  final ExecutorService disk = Executors.newSingleThreadExecutor();
  final NoDialogs dialogs = new NoDialogs();
  final Path folder;
  final Settings settings;
  final Look look;
  final Desk desk;
  final DeskFiles files;
  final DeskWindow window;

  OpenDesk(Stage stage, Path folder) {
    this.folder = folder;
    settings = new Settings(folder);
    look = new Look(settings);
    JobReader reader = new JobReader(Pads.CATALOGUE);
    desk =
        new Desk(Pads.CATALOGUE, Demo.job(reader), Platform::runLater, work, new FaultLog(folder));
    files = new DeskFiles(desk, settings, Platform::runLater, disk, 1);
    window = new DeskWindow(desk, files, settings, look, dialogs, disk);
    stage.setScene(new Scene(window, 1280, 800));
    stage.show();
  }

  static Path folder() {
    try {
      return Files.createTempDirectory("desk");
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  void stop() {
    work.shutdown();
    disk.shutdown();
  }

  static void until(Callable<Boolean> holds) throws Exception {
    WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, holds);
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Until what is on the bench is worked out. */
  void worked() throws Exception {
    until(() -> !desk.bench().stale() && desk.bench().asked().equals(desk.pad()));
  }

  /** Takes an item of the menus by the words at its beginning, underscores left out. */
  void menu(FxRobot robot, String... words) {
    robot.interact(() -> item(words).fire());
  }

  MenuItem item(String... words) {
    var items = ((DeskMenus) window.lookup("#menus")).getMenus();
    MenuItem at = named(items, words[0]);
    for (int i = 1; i < words.length; i++) {
      at = named(((Menu) at).getItems(), words[i]);
    }
    return at;
  }

  private static MenuItem named(java.util.List<? extends MenuItem> items, String words) {
    return items.stream()
        .filter(i -> i.getText() != null && i.getText().replace("_", "").startsWith(words))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no menu item " + words));
  }
}
