package padwright.desk.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import padwright.design.PadSpec;
import padwright.design.Units;
import padwright.measure.LengthText;
import padwright.measure.LengthUnit;
import padwright.measure.Rounding;
import padwright.measure.Sentence;
import padwright.pattern.Figures;
import padwright.pattern.Figures.Box;
import padwright.pattern.Figures.StapleDepth;
import padwright.pattern.PartResult;

/**
 * The figures of a part as rows, in the job's unit. What is sawn is rounded down and what must
 * reach is rounded up, as in the command's tables.
 */
public final class FigureRows {
  private final Units units;
  private final List<Row> rows = new ArrayList<>();

  private FigureRows(Units units) {
    this.units = units;
  }

  /** A row: what, and up to three sizes; the last ones may be empty. */
  public record Row(String what, String length, String width, String height) {
    List<String> cells() {
      return List.of(what, length, width, height);
    }
  }

  public static List<Row> of(PartResult r, Units units) {
    FigureRows f = new FigureRows(units);
    f.sizes(r);
    f.lengths(r);
    f.staples(r);
    return List.copyOf(f.rows);
  }

  /** Rows with tabs between the cells, as spreadsheets take them. */
  public static String tabbed(List<Row> rows) {
    return rows.stream()
        .map(r -> String.join("\t", r.cells()))
        .collect(Collectors.joining("\n", "what\tlength\twidth\theight\n", "\n"));
  }

  private void sizes(PartResult r) {
    Figures f = r.figures();
    PadSpec spec = r.spec();
    box("Finished", f.finished(), Rounding.NEAREST);
    box("Base, " + spec.board().name(), f.base(), Rounding.DOWN);
    for (int i = 0; i < f.foam().size(); i++) {
      String name = i < spec.foam().size() ? ", " + spec.foam().get(i).foam().name() : "";
      box("Foam layer " + (i + 1) + name, f.foam().get(i), Rounding.NEAREST);
    }
    f.wadding().forEach(b -> box("Wadding, cut", b, Rounding.UP));
    Figures.CoverFigures c = f.cover();
    box("Cover, trim line", new Box(c.length(), c.width(), 0), Rounding.UP);
    box("Cover, cut size", new Box(c.cutLength(), c.cutWidth(), 0), Rounding.UP);
    f.dustCover().forEach(b -> box("Dust cover, cut", b, Rounding.NEAREST));
  }

  private void lengths(PartResult r) {
    Figures f = r.figures();
    one("Cover, each side", length(f.cover().perSide(), Rounding.NEAREST));
    one("Turn-under", length(f.cover().turnUnder(), Rounding.NEAREST));
    one("Turn-under stands proud of the back", length(f.standOff(), Rounding.NEAREST));
    String[] sides = {"front", "right", "back", "left"};
    for (int i = 0; i < f.bareGap().size() && i < sides.length; i++) {
      one("Bare gap, " + sides[i], length(f.bareGap().get(i), Rounding.NEAREST));
    }
    one("Cover, area", Sentence.decimal(f.cover().area() / 1e6, 4) + " m2");
    one("Weight of one", Sentence.decimal(f.weight(), 2) + " kg");
  }

  private void staples(PartResult r) {
    Figures.StapleFigures s = r.figures().staples();
    one("Staples", String.valueOf(s.count()));
    if (s.leg() > 0) {
      one("Staple leg", length(s.leg(), Rounding.NEAREST));
      depth("through " + s.single().layers() + " layer", s.single());
      depth("through " + s.corner().layers() + " layers", s.corner());
    }
  }

  private void depth(String where, StapleDepth d) {
    one("Left under the point, " + where, length(d.margin(), Rounding.NEAREST));
    one("Holds, " + where, length(d.hold(), Rounding.NEAREST));
  }

  private void box(String what, Box b, Rounding r) {
    rows.add(
        new Row(
            what,
            length(b.length(), r),
            length(b.width(), r),
            b.height() == 0 ? "" : length(b.height(), Rounding.NEAREST)));
  }

  private void one(String what, String value) {
    rows.add(new Row(what, value, "", ""));
  }

  private String length(double mm, Rounding rounding) {
    if (!Double.isFinite(mm)) {
      return "-";
    }
    return LengthText.in(units == Units.MM ? LengthUnit.MM : LengthUnit.INCH, mm, rounding);
  }
}
