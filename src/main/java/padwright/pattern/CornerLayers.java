package padwright.pattern;

import java.util.List;
import padwright.cover.CornerPlan;
import padwright.shape.Outlines;

/** The most layers of covering on the wall of each side, from its two corners. */
final class CornerLayers {
  private CornerLayers() {}

  /** For front, right, back and left. */
  static int[] perSide(List<CornerPlan> corners) {
    int[] layers = {1, 1, 1, 1};
    for (CornerPlan c : corners) {
      if (c.name().equals("rim") || c.name().endsWith(" end") || free(c)) {
        int most = Math.max(c.layersFirst(), c.layersSecond());
        java.util.Arrays.setAll(layers, k -> Math.max(layers[k], most));
        continue;
      }
      int before = Outlines.SIDES.indexOf(sideBefore(c.name()));
      int after = (before + 1) % 4;
      layers[before] = Math.max(layers[before], c.layersFirst());
      layers[after] = Math.max(layers[after], c.layersSecond());
    }
    return layers;
  }

  /** A corner of a free outline belongs to no two of the four sides: it counts for all. */
  private static boolean free(CornerPlan c) {
    return c.name().startsWith("point ") || c.name().startsWith("side ");
  }

  private static String sideBefore(String corner) {
    return switch (corner) {
      case "front right" -> "front";
      case "back right" -> "right";
      case "back left" -> "back";
      default -> "left";
    };
  }
}
