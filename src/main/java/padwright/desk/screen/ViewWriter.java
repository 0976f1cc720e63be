package padwright.desk.screen;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Scale;
import padwright.desk.model.Desk;
import padwright.desk.view.Picture;
import padwright.export.SvgWriter;
import padwright.output.WriteFailure;

/**
 * Writes the view that was used last into a file: the drawing shown flat as it is seen, every other
 * pane as a picture of dots.
 */
final class ViewWriter {
  /** Dots of a picture for each point of the window, so that small words can be read. */
  private static final double DOTS = 2;

  private static final String SECTION = "section";

  private final Desk desk;
  private final PiecesPane pieces;
  private final Dialogs dialogs;
  private final Consumer<String> say;
  private final Map<String, Node> others = new LinkedHashMap<>();
  private String last = "";

  ViewWriter(Desk desk, PiecesPane pieces, Dialogs dialogs, Consumer<String> say) {
    this.desk = desk;
    this.pieces = pieces;
    this.dialogs = dialogs;
    this.say = say;
  }

  /** A pane that can be written beside the pieces. */
  void add(String name, Node pane) {
    others.put(name, pane);
  }

  /** Remembers which pane was used last: menus take the focus from it. */
  void follow(Scene scene) {
    scene.focusOwnerProperty().addListener((o, was, is) -> used(is));
  }

  private void used(Node owner) {
    if (within(owner, pieces)) {
      last = "";
    }
    others.forEach((name, pane) -> last = within(owner, pane) ? name : last);
  }

  private static boolean within(Node node, Node pane) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (n == pane) {
        return true;
      }
    }
    return false;
  }

  void svg() {
    if (last.isEmpty() && pieces.view().drawing().isPresent()) {
      write(flat(), ".svg", pieces.view().svg().getBytes(StandardCharsets.UTF_8));
    } else if (last.equals(SECTION) && desk.bench().drawing(SECTION).isPresent()) {
      // As it is printed: the fields and handles of the form are for the window alone.
      String text = SvgWriter.write(desk.bench().drawing(SECTION).get());
      write(SECTION, ".svg", text.getBytes(StandardCharsets.UTF_8));
    } else if (!last.isEmpty()) {
      dialogs.say(
          "Not as an SVG", "The " + last + " is no drawing of lines. Write this view as PNG.");
    }
  }

  void png() {
    if (!last.isEmpty()) {
      write(last, ".png", picture(others.get(last)).png());
    } else if (pieces.view().drawing().isPresent()) {
      write(flat(), ".png", pieces.view().picture(DOTS).png());
    }
  }

  private String flat() {
    return pieces.chosenName().orElse("view");
  }

  private static Picture picture(Node pane) {
    SnapshotParameters larger = new SnapshotParameters();
    larger.setTransform(new Scale(DOTS, DOTS));
    WritableImage image = pane.snapshot(larger, null);
    int w = (int) image.getWidth();
    int h = (int) image.getHeight();
    int[] argb = new int[w * h];
    image.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), argb, 0, w);
    return Picture.of(w, h, argb);
  }

  private void write(String view, String ending, byte[] bytes) {
    Optional<Path> file = dialogs.fileToWrite(desk.pad().id() + "-" + view, ending);
    if (file.isEmpty()) {
      return;
    }
    try {
      Files.write(file.get(), bytes);
      say.accept("Written: " + file.get().getFileName() + ".");
    } catch (IOException e) {
      dialogs.say("That did not work", WriteFailure.sentence(e));
    }
  }
}
