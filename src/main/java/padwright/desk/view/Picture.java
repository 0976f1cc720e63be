package padwright.desk.view;

import padwright.export.raster.Pixels;
import padwright.export.raster.Png;

/** Dots of a picture, row by row from the top, each as 0xAARRGGBB; for the window and for files. */
public final class Picture {
  private final Pixels pixels;

  private Picture(Pixels pixels) {
    this.pixels = pixels;
  }

  static Picture of(Pixels pixels) {
    return new Picture(pixels);
  }

  /** Takes the dots over; the array must not be changed afterwards. */
  public static Picture of(int width, int height, int[] argb) {
    return new Picture(new Pixels(width, height, argb));
  }

  public int width() {
    return pixels.width();
  }

  public int height() {
    return pixels.height();
  }

  /** The dots themselves: not to be changed. */
  public int[] argb() {
    return pixels.argb();
  }

  /** The picture as a PNG file. */
  public byte[] png() {
    return Png.of(pixels);
  }
}
