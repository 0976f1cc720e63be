package padwright.desk.screen;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.stage.Window;

/**
 * Starts the program as {@code padwright desk} does, its own words passed on, and says how long
 * after the start of the Java runtime the window was painted. No test: run by hand.
 */
final class DeskUp {
  private DeskUp() {}

  public static void main(String[] words) throws Exception {
    Thread program = new Thread(() -> padwright.cli.Main.main(words), "program");
    program.setDaemon(true);
    program.start();
    while (!watched()) {
      TimeUnit.MILLISECONDS.sleep(2);
    }
    program.join();
  }

  private static boolean watched() {
    try {
      Platform.runLater(DeskUp::watch);
      return true;
    } catch (IllegalStateException e) {
      // The toolkit is not there yet.
      return false;
    }
  }

  private static void watch() {
    new AnimationTimer() {
      private int pulses;

      @Override
      public void handle(long now) {
        if (Window.getWindows().stream().anyMatch(Window::isShowing) && ++pulses == 2) {
          stop();
          System.out.printf(
              Locale.ROOT,
              "window painted %d ms after the runtime's start%n",
              ManagementFactory.getRuntimeMXBean().getUptime());
          Runtime.getRuntime().halt(0);
        }
      }
    }.start();
  }
}
