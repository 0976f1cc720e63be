package padwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import padwright.design.WrappedPad;
import padwright.desk.view.SectionForm.Dimension;
import padwright.desk.view.SectionForm.Line;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

/** The sizes on the back of the board, in boxes below the section from the inside outwards. */
final class BackRow {
  private static final double LINE = 1.25;
  private static final double BAR = 0.85;
  private static final double GAP = 5;

  private final SectionBody body;
  private final WrappedPad pad;
  private final SectionCut cut;
  private final BiFunction<Double, Double, Vec2> at;
  private final double t;
  private final double lowest;

  BackRow(
      SectionBody body,
      WrappedPad pad,
      SectionCut cut,
      BiFunction<Double, Double, Vec2> at,
      double t,
      double lowest) {
    this.body = body;
    this.pad = pad;
    this.cut = cut;
    this.at = at;
    this.t = t;
    this.lowest = lowest;
  }

  private record Cell(String place, String member, String label, Vec2 from, Vec2 to, Line drop) {}

  void place(double low, double high, double floor, List<Dimension> dimensions) {
    List<Cell> cells = cells();
    double wide = (SectionLayout.BOX_WIDTH + SectionLayout.MARK) * t;
    List<Double> wanted = cells.stream().map(c -> c.drop().from().x()).toList();
    double[] x = Spread.along(wanted, wide + GAP, low + wide / 2, high - wide / 2);
    double top = floor + 2 * BAR * t + 6;
    for (int i = 0; i < x.length; i++) {
      Cell c = cells.get(i);
      double from = x[i] - wide / 2;
      Bounds words = new Bounds(from, top, from + wide, top + LINE * t - 1);
      Bounds box =
          new Bounds(
              from, top + LINE * t, from + wide, top + (LINE + SectionLayout.BOX_HEIGHT) * t);
      List<Line> lines = new ArrayList<>();
      if (c.from().y() == c.to().y() && c.from().x() != c.to().x()) {
        lines.add(new Line(at.apply(mm(c.from()), 0.0), c.from()));
        lines.add(new Line(at.apply(mm(c.to()), 0.0), c.to()));
      }
      lines.add(new Line(c.drop().from(), new Vec2(x[i], top)));
      dimensions.add(
          new Dimension(
              c.place(),
              c.member(),
              c.label(),
              c.from(),
              c.to(),
              lines,
              Optional.of(words),
              box,
              Optional.empty()));
    }
  }

  private double mm(Vec2 p) {
    double zero = at.apply(0.0, 0.0).x();
    return (p.x() - zero) / (at.apply(1.0, 0.0).x() - zero);
  }

  private List<Cell> cells() {
    double y = at.apply(0.0, lowest).y();
    List<Cell> cells = new ArrayList<>();
    Vec2 end = new Vec2(at.apply(-body.turnUnder(), 0.0).x(), y + 2 * BAR * t);
    Vec2 edge = new Vec2(at.apply(0.0, 0.0).x(), y + 2 * BAR * t);
    cells.add(
        new Cell(
            cut.place(pad, "cover.turnUnder"),
            "cover",
            "turn-under",
            end,
            edge,
            new Line(end, end)));
    double ed = body.edgeDistance();
    Vec2 in = new Vec2(at.apply(-ed, 0.0).x(), y + BAR * t);
    Vec2 out = new Vec2(at.apply(0.0, 0.0).x(), y + BAR * t);
    if (body.leg() > 0) {
      Vec2 foot = at.apply(-ed, body.penetration() - body.leg());
      Vec2 tip = at.apply(-ed, body.penetration());
      cells.add(new Cell("staples.leg", "staples", "staple leg", foot, tip, new Line(foot, foot)));
    } else {
      cells.add(new Cell("staples.leg", "staples", "staple leg", in, in, new Line(in, in)));
    }
    Vec2 middle = in.midpoint(out);
    cells.add(
        new Cell(
            "staples.edgeDistance", "staples", "from edge", in, out, new Line(middle, middle)));
    double r = body.backArris();
    Vec2 arris = at.apply(-r * (1 - Math.sqrt(0.5)), r * (1 - Math.sqrt(0.5)));
    cells.add(
        new Cell(
            "base.backArris",
            "base",
            "back arris",
            at.apply(-r, 0.0),
            at.apply(0.0, 0.0),
            new Line(arris, arris)));
    return cells;
  }
}
