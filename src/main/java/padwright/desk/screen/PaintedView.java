package padwright.desk.screen;

import java.nio.IntBuffer;
import javafx.scene.Node;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.stage.Window;
import padwright.desk.solid.Camera;
import padwright.desk.solid.Opening;
import padwright.desk.solid.Palette;
import padwright.desk.solid.Solid;
import padwright.desk.solid.SolidPainter;

/** The painted picture, at the resolution of the screen as far as it stays quick. */
final class PaintedView implements SolidView {
  /** More pixels than this are not painted: a picture of them takes some 20 ms. */
  private static final double MOST = 1_500_000;

  private final Picture picture = new Picture();
  private final SolidPainter painter = new SolidPainter();
  private int[] pixels;
  private PixelBuffer<IntBuffer> buffer;

  /** An image that fills whatever room it is given. */
  private static final class Picture extends ImageView {
    Picture() {
      setSmooth(true);
    }

    @Override
    public boolean isResizable() {
      return true;
    }

    @Override
    public void resize(double width, double height) {
      setFitWidth(width);
      setFitHeight(height);
    }
  }

  @Override
  public Node node() {
    return picture;
  }

  @Override
  public void show(
      Solid solid,
      Opening.Stage stage,
      Camera camera,
      Palette palette,
      double width,
      double height) {
    double scale = scale(width, height);
    int wide = (int) Math.max(1, Math.round(width * scale));
    int high = (int) Math.max(1, Math.round(height * scale));
    put(painter.paint(solid, stage, camera, palette, wide, high), wide, high);
  }

  @Override
  public void blank(Palette palette, double width, double height) {
    int[] one = {palette.background()};
    put(one, 1, 1);
  }

  private double scale(double width, double height) {
    Window window = picture.getScene() == null ? null : picture.getScene().getWindow();
    double screen = window == null ? 1 : Math.max(1, window.getRenderScaleX());
    return Math.min(screen, Math.sqrt(MOST / (width * height)));
  }

  private void put(int[] painted, int wide, int high) {
    if (painted != pixels) {
      pixels = painted;
      buffer =
          new PixelBuffer<>(
              wide, high, IntBuffer.wrap(painted), PixelFormat.getIntArgbPreInstance());
      picture.setImage(new WritableImage(buffer));
    } else {
      buffer.updateBuffer(b -> null);
    }
  }
}
