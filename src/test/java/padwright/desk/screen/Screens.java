package padwright.desk.screen;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Parent;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;
import padwright.design.Job;
import padwright.desk.model.Desk;
import padwright.desk.model.FaultLog;
import padwright.jobfile.JobReader;
import padwright.pattern.Pads;

/** What tests of screens share: a desk with a job, the window's thread, pictures. */
final class Screens {
  private Screens() {}

  static Job demo() {
    return new JobReader(Pads.CATALOGUE).read(Path.of("demo", "reading-nook.json"));
  }

  /** A desk that works everything out at once, on the window's thread. */
  static Desk desk(Job job, Path log) {
    Executor here = Runnable::run;
    return new Desk(Pads.CATALOGUE, job, here, here, new FaultLog(log));
  }

  static <T> T onWindow(Supplier<T> task) {
    CompletableFuture<T> done = new CompletableFuture<>();
    Platform.runLater(
        () -> {
          try {
            done.complete(task.get());
          } catch (RuntimeException | AssertionError e) {
            done.completeExceptionally(e);
          }
        });
    try {
      return done.get(30, TimeUnit.SECONDS);
    } catch (InterruptedException | ExecutionException | TimeoutException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A picture of what is shown, below the folder of built things. */
  static void keep(Parent shown, String name) {
    WritableImage image = shown.snapshot(null, null);
    int w = (int) image.getWidth();
    int h = (int) image.getHeight();
    BufferedImage copy = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB);
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        copy.setRGB(x, y, image.getPixelReader().getArgb(x, y));
      }
    }
    Path folder = Path.of("target", "screens");
    try {
      Files.createDirectories(folder);
      ImageIO.write(copy, "png", folder.resolve(name + ".png").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
