package padwright.export;

import java.util.List;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.HatchLines;
import padwright.geometry.Path;

/** Parallel lines inside a closed path, by the even-odd rule. */
final class Hatching {
  private static final double CHORD_ERROR = 0.05;

  private Hatching() {}

  /**
   * @param angle of the lines, radians
   * @param pitch between them, mm
   */
  static List<Item> of(Path path, double angle, double pitch) {
    return HatchLines.inside(path.flattened(CHORD_ERROR), angle, pitch).stream()
        .<Item>map(s -> new Stroke(Path.line(s.start(), s.end()), LineStyle.HATCH))
        .toList();
  }
}
