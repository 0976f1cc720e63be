package padwright.desk.screen;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;
import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.desk.edit.PartEdit;
import padwright.desk.model.Desk;
import padwright.desk.model.DeskFiles;
import padwright.desk.model.FaultLog;
import padwright.desk.model.Settings;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;

/**
 * Measures the workbench in its real window: {@code DeskSpeed WIDTHxHEIGHT PART}. No test: run by
 * hand, its figures are in {@code docs/performance.md}.
 *
 * <p>A frame is counted as painted at the beginning of the second pulse after it was laid out: the
 * toolkit does not begin a pulse before the last but one frame is handed to the screen, so the
 * figures are late by up to one pulse of 17 ms, never early.
 */
final class DeskSpeed {
  private static final int EDITS = 300;
  private static final int WARM = 100;
  private static final int MANY = 100;

  private final Desk desk;
  private final DeskWindow window;
  private final List<Double> edits = new ArrayList<>();
  private final List<Double> frames = new ArrayList<>();

  private DeskSpeed(Desk desk, DeskWindow window) {
    this.desk = desk;
    this.window = window;
  }

  public static void main(String[] words) throws Exception {
    String[] size = words[0].split("x", -1);
    int part = Integer.parseInt(words[1]);
    Catalogue catalogue = CatalogueReader.builtIn();
    Job demo = new JobReader(catalogue).read(Path.of("demo", "reading-nook.json"));
    ExecutorService work = Executors.newSingleThreadExecutor();
    ExecutorService disk = Executors.newSingleThreadExecutor();
    CountDownLatch done = new CountDownLatch(1);
    Settings settings = new Settings(Files.createTempDirectory("speed"));
    DeskStart.prepare();
    Platform.startup(
        () -> {
          Desk desk =
              new Desk(catalogue, demo, Platform::runLater, work, new FaultLog(settings.folder()));
          DeskFiles files = new DeskFiles(desk, settings, Platform::runLater, disk, 1);
          DeskWindow window =
              new DeskWindow(desk, files, settings, new Look(settings), new NoDialogs(), disk);
          desk.look(part);
          Stage stage = new Stage();
          stage.setScene(
              new Scene(window, Double.parseDouble(size[0]), Double.parseDouble(size[1])));
          stage.show();
          new DeskSpeed(desk, window).start(demo, done::countDown);
        });
    done.await();
    Platform.exit();
    work.shutdown();
    disk.shutdown();
  }

  /** Edits one at a time, each from the change to the frame that shows its pieces. */
  private void start(Job demo, Runnable done) {
    new AnimationTimer() {
      private int at = -WARM;
      private long from;
      private int pulses;

      @Override
      public void handle(long now) {
        if (from != 0 && desk.bench().result().isPresent() && desk.bench().asked() == desk.pad()) {
          pulses++;
          if (pulses == 2) {
            if (at >= 0) {
              edits.add((System.nanoTime() - from) / 1e6);
            }
            from = 0;
            at++;
          }
          return;
        }
        if (from != 0) {
          return;
        }
        if (at == EDITS) {
          stop();
          drag(demo, done);
          return;
        }
        pulses = 0;
        from = System.nanoTime();
        // Lengths that have not been worked out before.
        set(12 + 0.01 * (at + WARM + 1));
      }
    }.start();
  }

  private void set(double thickness) {
    desk.field("foam[0].thickness")
        .ifPresent(
            f ->
                desk.set(f, thickness, "")
                    .ifPresent(
                        r -> {
                          throw r;
                        }));
  }

  /** A dimension dragged: a new length at every pulse, as a hand does. */
  private void drag(Job demo, Runnable done) {
    new AnimationTimer() {
      private int at = -WARM;
      private long last;

      @Override
      public void handle(long now) {
        long time = System.nanoTime();
        if (last != 0 && at >= 0) {
          frames.add((time - last) / 1e6);
        }
        last = time;
        if (at++ == EDITS) {
          stop();
          many(demo, done);
          return;
        }
        set(20 + 0.013 * (at + WARM));
      }
    }.start();
  }

  /** A job of a hundred parts, no two alike, until every one is worked out. */
  private void many(Job demo, Runnable done) {
    List<PaddedPart> parts = new ArrayList<>();
    var edit = desk.edit();
    for (int k = 0; k < MANY; k++) {
      var pad = (padwright.design.WrappedPad) demo.parts().get(k % demo.parts().size());
      parts.add(
          edit.with(
              pad,
              PartEdit.Step.put("id", "part-" + k),
              PartEdit.Step.mm("foam[0].thickness", 10 + 0.1 * k)));
    }
    Job job = new Job("Many", demo.client(), demo.date(), demo.units(), parts);
    long from = System.nanoTime();
    desk.start(job);
    new AnimationTimer() {
      private int pulses;
      private double first;

      @Override
      public void handle(long now) {
        if (first == 0 && desk.bench().result().isPresent()) {
          pulses++;
          if (pulses == 2) {
            first = (System.nanoTime() - from) / 1e6;
          }
        }
        boolean all = true;
        for (int k = 0; k < MANY; k++) {
          all &= desk.answer(k).isPresent();
        }
        if (all && first > 0) {
          stop();
          say(first, (System.nanoTime() - from) / 1e6);
          window.getScene().getWindow().hide();
          done.run();
        }
      }
    }.start();
  }

  private void say(double first, double all) {
    System.out.printf(
        Locale.ROOT,
        "edit to painted, %d edits: median %.1f, 95th percentile %.1f, worst %.1f ms%n",
        edits.size(),
        at(edits, 0.5),
        at(edits, 0.95),
        at(edits, 1));
    System.out.printf(
        Locale.ROOT,
        "frames while dragged, %d: median %.1f, 95th percentile %.1f, worst %.1f ms%n",
        frames.size(),
        at(frames, 0.5),
        at(frames, 0.95),
        at(frames, 1));
    System.out.printf(
        Locale.ROOT, "%d parts: first shown %.0f, all worked out %.0f ms%n", MANY, first, all);
  }

  private static double at(List<Double> values, double share) {
    double[] sorted = values.stream().mapToDouble(d -> d).sorted().toArray();
    return sorted[Math.max(0, (int) Math.ceil(share * sorted.length) - 1)];
  }
}
