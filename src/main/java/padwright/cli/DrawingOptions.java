package padwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import padwright.design.Fittings.CutOut;
import padwright.design.Fittings.Through;
import padwright.drawing.DrawingReader;
import padwright.drawing.DrawnOutline;
import padwright.jobfile.StartOutline;
import padwright.measure.InputRefused;
import padwright.measure.LengthUnit;
import picocli.CommandLine.Option;

/** How a drawing is to be read. */
final class DrawingOptions {
  @Option(
      names = "--drawn-in",
      paramLabel = "UNIT",
      description = "mm, cm, m, in or ft: what the drawing is drawn in, if it does not say so.")
  private String unit;

  @Option(
      names = "--outline-only",
      description = "Leave the loops inside the outline; they are cut-outs otherwise.")
  private boolean outlineOnly;

  DrawnOutline read(Path file) {
    return DrawingReader.read(file, unit());
  }

  /** The drawing as the start of a job. */
  StartOutline start(DrawnOutline drawn) {
    List<CutOut> cutOuts =
        openings(drawn).stream()
            .map(o -> new CutOut(o.path(), o.at().x(), o.at().y(), Through.TURNED))
            .toList();
    return new StartOutline(drawn.outline(), cutOuts);
  }

  List<DrawnOutline.Opening> openings(DrawnOutline drawn) {
    return outlineOnly ? List.of() : drawn.openings();
  }

  private Optional<LengthUnit> unit() {
    if (unit == null) {
      return Optional.empty();
    }
    for (LengthUnit known : LengthUnit.values()) {
      if (known.mark().equals(unit)) {
        return Optional.of(known);
      }
    }
    throw new InputRefused(
        "",
        0,
        "",
        "--drawn-in: \"" + unit + "\" is no unit of a drawing",
        "Give mm, cm, m, in or ft");
  }
}
