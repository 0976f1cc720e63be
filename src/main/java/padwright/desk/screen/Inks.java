package padwright.desk.screen;

import javafx.scene.paint.Color;

/**
 * What a drawing is painted with. In the dark the ink is the lighter one: black lines on white
 * become light lines on dark, and an area that is greyer on paper stands out as much more from the
 * dark.
 *
 * @param pointer what the view itself draws over the drawing: cross, measure, rings
 */
record Inks(Color paper, Color ink, Color pointer) {
  static final Inks LIGHT = new Inks(Color.WHITE, Color.BLACK, Color.web("#a1340b"));
  static final Inks DARK =
      new Inks(Color.web("#1d2023"), Color.web("#e9e6df"), Color.web("#ffc46b"));

  /** A tone between the ink, 0, and the paper, 1. */
  Color tone(double grey) {
    return ink.interpolate(paper, grey);
  }
}
