package padwright.desk.screen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import padwright.desk.model.Desk;
import padwright.desk.model.DeskFiles;
import padwright.desk.model.FaultLog;
import padwright.desk.model.Settings;
import padwright.desk.view.Picture;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;

/**
 * Draws the workbench's screens without a screen, for README, guide and for looking at: {@code
 * DeskPictures FOLDER JOB WIDTHxHEIGHT light|dark PART NAME [DRAWING [PANE [STEPS]]]} ..., each
 * picture ended by a semicolon. STEPS is what is chosen on the plan, counted from the outline.
 */
final class DeskPictures {
  private DeskPictures() {}

  public static void main(String[] words) throws Exception {
    Path folder = Path.of(words[0]);
    Files.createDirectories(folder);
    CountDownLatch started = new CountDownLatch(1);
    Platform.startup(started::countDown);
    started.await();
    Platform.setImplicitExit(false);
    try {
      int at = 1;
      while (at < words.length) {
        int end = at;
        while (!words[end].equals(";")) {
          end++;
        }
        picture(folder, java.util.Arrays.copyOfRange(words, at, end));
        at = end + 1;
      }
    } finally {
      // A job that is refused must not leave the toolkit running behind it.
      Platform.exit();
    }
  }

  private static void picture(Path folder, String[] w) throws Exception {
    String[] size = w[1].split("x", -1);
    Settings settings = new Settings(Files.createTempDirectory("screens"));
    settings.put("look", w[2]);
    ExecutorService work = Executors.newSingleThreadExecutor();
    ExecutorService disk = Executors.newSingleThreadExecutor();
    Catalogue catalogue = CatalogueReader.builtIn();
    JobReader reader = new JobReader(catalogue);
    DeskWindow[] window = new DeskWindow[1];
    Stage[] stage = new Stage[1];
    on(
        () -> {
          Desk desk =
              new Desk(
                  catalogue,
                  reader.read(Path.of(w[0])),
                  Platform::runLater,
                  work,
                  new FaultLog(settings.folder()));
          DeskFiles files = new DeskFiles(desk, settings, Platform::runLater, disk, 1);
          window[0] =
              new DeskWindow(desk, files, settings, new Look(settings), new NoDialogs(), disk);
          desk.look(Integer.parseInt(w[3]));
          stage[0] = new Stage();
          stage[0].setScene(
              new Scene(window[0], Double.parseDouble(size[0]), Double.parseDouble(size[1])));
          stage[0].show();
        });
    // Results come from another thread, and what shows them is laid out on the pulse after.
    for (int i = 0; i < 4; i++) {
      work.submit(() -> {}).get(60, TimeUnit.SECONDS);
      on(() -> window[0].layout());
    }
    if (w.length > 5) {
      on(() -> window[0].pieces().choose(w[5]));
    }
    if (w.length > 6) {
      on(() -> window[0].go(Integer.parseInt(w[6])));
    }
    if (w.length > 7) {
      on(() -> window[0].plan().choose(Integer.parseInt(w[7])));
    }
    work.submit(() -> {}).get(60, TimeUnit.SECONDS);
    Thread.sleep(400);
    on(() -> save(window[0].getScene(), folder.resolve(w[4] + ".png")));
    on(() -> stage[0].close());
    work.shutdown();
    disk.shutdown();
  }

  private static void save(Scene scene, Path file) {
    WritableImage image = scene.snapshot(null);
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    int[] argb = new int[width * height];
    image
        .getPixelReader()
        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), argb, 0, width);
    try {
      Files.write(file, Picture.of(width, height, argb).png());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static void on(Runnable task) throws Exception {
    CountDownLatch done = new CountDownLatch(1);
    Throwable[] fault = new Throwable[1];
    Platform.runLater(
        () -> {
          try {
            task.run();
          } catch (RuntimeException | Error e) {
            fault[0] = e;
          } finally {
            done.countDown();
          }
        });
    if (!done.await(60, TimeUnit.SECONDS)) {
      throw new IllegalStateException("the window does not answer");
    }
    if (fault[0] != null) {
      throw new IllegalStateException(fault[0]);
    }
  }
}
