package padwright.desk.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import javafx.scene.Parent;
import padwright.desk.model.Settings;

/** Light or dark, and how large the text is; kept from one start to the next. */
final class Look {
  private static final double USUAL = 13;
  private static final double SMALLEST = 9;
  private static final double LARGEST = 28;
  private static final double STEP = 1;

  private final Settings settings;
  private final List<Consumer<Boolean>> listeners = new ArrayList<>();
  private final List<DoubleConsumer> sizes = new ArrayList<>();
  private Parent root;
  private boolean dark;
  private double size;

  Look(Settings settings) {
    this.settings = settings;
    dark = settings.get("look", "light").equals("dark");
    size = number(settings.get("text", ""));
  }

  private static double number(String text) {
    try {
      return Math.max(SMALLEST, Math.min(LARGEST, Double.parseDouble(text)));
    } catch (NumberFormatException none) {
      return USUAL;
    }
  }

  boolean dark() {
    return dark;
  }

  /** Also called at once, with how it is now. */
  void onChange(Consumer<Boolean> listener) {
    listeners.add(listener);
    listener.accept(dark);
  }

  /** Called with how many times its usual size the text is, at once and with every change. */
  void onResize(DoubleConsumer listener) {
    sizes.add(listener);
    listener.accept(size / USUAL);
  }

  void dress(Parent scene) {
    root = scene;
    scene.getStylesheets().add(Look.class.getResource("/padwright/desk/desk.css").toExternalForm());
    apply();
  }

  /** Dresses the root of a dialog like the window. */
  void dressDialog(Parent dialog) {
    dialog
        .getStylesheets()
        .add(Look.class.getResource("/padwright/desk/desk.css").toExternalForm());
    style(dialog);
  }

  void setDark(boolean on) {
    dark = on;
    settings.put("look", on ? "dark" : "light");
    apply();
    listeners.forEach(l -> l.accept(on));
  }

  /** Text one step larger or smaller; 0 is the usual size. */
  void resize(int steps) {
    size = steps == 0 ? USUAL : number(String.valueOf(size + steps * STEP));
    settings.put("text", String.valueOf(size));
    apply();
    sizes.forEach(l -> l.accept(size / USUAL));
  }

  private void apply() {
    if (root != null) {
      style(root);
    }
  }

  private void style(Parent node) {
    node.setStyle("-fx-font-size: " + size + "px;");
    node.getStyleClass().removeAll("dark", "root-look");
    if (dark) {
      node.getStyleClass().add("dark");
    }
  }
}
