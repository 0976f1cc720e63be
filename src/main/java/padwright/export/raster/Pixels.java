package padwright.export.raster;

/**
 * Dots of a picture, row by row from the top.
 *
 * @param argb each dot as 0xAARRGGBB; the array is shared and must not be changed
 */
public record Pixels(int width, int height, int[] argb) {
  public Pixels {
    if (width < 1 || height < 1 || (long) width * height != argb.length) {
      throw new IllegalArgumentException(
          "no picture: " + width + " x " + height + " with " + argb.length + " dots");
    }
  }
}
