package padwright.desk.screen;

import javafx.scene.Node;
import padwright.desk.solid.Camera;
import padwright.desk.solid.Opening;
import padwright.desk.solid.Palette;
import padwright.desk.solid.Solid;

/** One way to show a solid. Sizes are those of the pane, in its own pixels. */
sealed interface SolidView permits PaintedView, CardView {
  Node node();

  void show(
      Solid solid,
      Opening.Stage stage,
      Camera camera,
      Palette palette,
      double width,
      double height);

  /** Shows the background alone. */
  void blank(Palette palette, double width, double height);
}
