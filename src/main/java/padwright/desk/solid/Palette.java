package padwright.desk.solid;

/**
 * Colours of a painted solid, 0xAARRGGBB. Bodies differ in lightness, so that they are told apart
 * without their hue, and arrises are drawn.
 *
 * @param foam of the lowest layer, and every other one above it
 * @param foamBetween of the layers between
 */
public record Palette(
    int background,
    int line,
    int board,
    int foam,
    int foamBetween,
    int wadding,
    int covering,
    int back) {
  public static Palette light() {
    return new Palette(
        0xFFF7F5F1,
        0xFF2B2A28,
        0xFFB98F5E,
        0xFFE6D9A2,
        0xFFCFC08A,
        0xFFF3F1EC,
        0xFF6B9AA1,
        0xFF9A968D);
  }

  public static Palette dark() {
    return new Palette(
        0xFF2B2E31,
        0xFF0E0F10,
        0xFF9C7446,
        0xFFD8C98C,
        0xFFB5A671,
        0xFFE6E4DE,
        0xFF6AA5AE,
        0xFF8F8C84);
  }

  /** The colour of a body in full light. */
  public int of(Body body) {
    return switch (body.kind()) {
      case BOARD -> board;
      case FOAM -> body.layer() % 2 == 1 ? foam : foamBetween;
      case WADDING -> wadding;
      case COVERING -> covering;
      case DUST_COVER, PACKING -> back;
    };
  }
}
