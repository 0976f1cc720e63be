package padwright.material;

/**
 * A paper to print on, upright.
 *
 * @param width mm
 * @param height mm; 0 for a roll, which is as long as the drawing
 */
public record Paper(String id, String name, double width, double height, Sourced origin) {
  public boolean isRoll() {
    return height == 0;
  }
}
