package padwright.desk.screen;

import javafx.scene.paint.Color;
import padwright.desk.view.SectionForm.Kind;

/**
 * Tones of a section. Members differ in lightness and in hatching, so that they are told apart
 * without colour; the accent only repeats what a heavier line says.
 */
record FormColours(
    boolean dark,
    Color paper,
    Color ink,
    Color faint,
    Color accent,
    Color stop,
    Color caution,
    Color passes) {
  private static final FormColours LIGHT =
      new FormColours(
          false,
          Color.web("#fbfaf7"),
          Color.web("#1f2326"),
          Color.web("#6b7277"),
          Color.web("#0b5a82"),
          Color.web("#a3161a"),
          Color.web("#8a5200"),
          Color.web("#1d6b34"));
  private static final FormColours DARK =
      new FormColours(
          true,
          Color.web("#1d2124"),
          Color.web("#eceae4"),
          Color.web("#9aa2a8"),
          Color.web("#7cc7f2"),
          Color.web("#ff8f8a"),
          Color.web("#f2be5c"),
          Color.web("#86d99c"));

  static FormColours of(boolean dark) {
    return dark ? DARK : LIGHT;
  }

  /** The tone of a member's area; foam layers alternate. */
  Color tone(Kind kind, int number) {
    double grey =
        switch (kind) {
          case BOARD -> 0.76;
          case FOAM -> number % 2 == 0 ? 0.94 : 0.88;
          case WADDING -> 0.985;
          case COVER -> 0.2;
          case EDGE -> 0.35;
          case STAPLES -> 1;
        };
    if (dark) {
      // Light turns to dark, but the covering stays what stands out most.
      grey = kind == Kind.STAPLES ? 0.05 : 0.16 + (1 - grey) * 0.9;
    }
    return Color.gray(Math.min(1, grey));
  }

  /** As a colour of a style sheet. */
  static String web(Color c) {
    return String.format(
        java.util.Locale.ROOT,
        "#%02x%02x%02x",
        Math.round(c.getRed() * 255),
        Math.round(c.getGreen() * 255),
        Math.round(c.getBlue() * 255));
  }
}
