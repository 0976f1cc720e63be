package padwright.desk.screen;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.paint.Color;
import padwright.desk.solid.Palette;

/** The program's own sign: a section through a covered pad, its covering turned under the board. */
final class Icon {
  private Icon() {}

  /** In the sizes that windows and lists of programs ask for. */
  static List<Image> all() {
    return Stream.of(16, 32, 48, 128).map(Icon::of).toList();
  }

  private static Image of(int size) {
    Palette colours = Palette.light();
    Canvas canvas = new Canvas(size, size);
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.scale(size / 16.0, size / 16.0);
    g.setFill(colour(colours.covering()));
    g.fillRoundRect(1, 2, 14, 12, 6, 6);
    g.setFill(colour(colours.foam()));
    g.fillRoundRect(2.5, 3.5, 11, 9, 4, 4);
    g.setFill(colour(colours.board()));
    g.fillRect(2.5, 9, 11, 3.5);
    // The back is open between the two turn-unders.
    g.clearRect(5.5, 12.5, 5, 2);
    g.setFill(colour(colours.line()));
    g.fillRect(3.4, 10.6, 0.8, 3.4);
    g.fillRect(11.8, 10.6, 0.8, 3.4);
    SnapshotParameters clear = new SnapshotParameters();
    clear.setFill(Color.TRANSPARENT);
    return canvas.snapshot(clear, null);
  }

  private static Color colour(int argb) {
    return Color.rgb(argb >> 16 & 255, argb >> 8 & 255, argb & 255);
  }
}
