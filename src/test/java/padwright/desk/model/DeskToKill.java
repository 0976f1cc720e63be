package padwright.desk.model;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import padwright.desk.edit.Shipped;

/**
 * A workbench in a process of its own, for a test to kill: it changes a name, again and again, and
 * says on standard output once the copy is on the disk.
 */
final class DeskToKill {
  private DeskToKill() {}

  public static void main(String[] words) throws Exception {
    Path folder = Path.of(words[0]);
    ExecutorService window = Executors.newSingleThreadExecutor();
    ExecutorService work = Executors.newSingleThreadExecutor();
    ExecutorService disk = Executors.newSingleThreadExecutor();
    window
        .submit(
            () -> {
              Desk desk =
                  new Desk(Shipped.CATALOGUE, Shipped.demo(), window, work, new FaultLog(folder));
              new DeskFiles(
                  desk, new Settings(folder), window, disk, ProcessHandle.current().pid());
              rename(desk, window, 0);
            })
        .get();
    Path copy = folder.resolve("unsaved-" + ProcessHandle.current().pid() + ".json");
    while (!Files.exists(copy)) {
      Thread.sleep(5);
    }
    System.out.println("kept");
  }

  /** One change follows the other, so that the kill comes in the midst of writing. */
  private static void rename(Desk desk, ExecutorService window, int n) {
    desk.type(desk.field("name").orElseThrow(), "Rest number " + n);
    window.execute(() -> rename(desk, window, n + 1));
  }
}
