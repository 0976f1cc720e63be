package padwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import padwright.design.FreeOutline;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.drawing.DrawnOutline;
import padwright.measure.LengthText;
import padwright.output.Sentences;

/** What was read of a drawing, in words. */
final class OutlineWords {
  private OutlineWords() {}

  /** A side of an outline. */
  record Side(String name, String kind, double length) {}

  /** The report, one fact a line. */
  static String report(Path file, DrawnOutline drawn) {
    StringBuilder text = new StringBuilder("Read from ").append(file).append('\n');
    drawn.report().lines().forEach(l -> text.append(Sentences.block("  ", "", 0, l)));
    return text.append('\n').toString();
  }

  /** Such as 300.0 mm x 200.0 mm. */
  static String size(double length, double width) {
    return LengthText.mm(length) + " x " + LengthText.mm(width);
  }

  /** The sides in order, with what each is. */
  static List<Side> sides(FreePath path) {
    FreeOutline laid = FreeOutline.of(path);
    double[] lengths = new double[path.points().size()];
    for (int i = 0; i < laid.sides().size(); i++) {
      lengths[laid.sides().get(i) - 1] += laid.path().segments().get(i).length();
    }
    List<Side> sides = new ArrayList<>();
    for (int k = 0; k < lengths.length; k++) {
      sides.add(new Side("side " + (k + 1), kind(path.points().get(k).leg()), lengths[k]));
    }
    return sides;
  }

  private static String kind(Leg leg) {
    if (leg instanceof Leg.Straight) {
      return "straight";
    }
    return leg instanceof Leg.Arc ? "arc" : "curve";
  }
}
