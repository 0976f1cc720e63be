package padwright.desk.view;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import padwright.design.EdgeShape;
import padwright.design.WrappedPad;
import padwright.desk.view.SectionForm.Dimension;
import padwright.desk.view.SectionForm.Label;
import padwright.desk.view.SectionForm.Line;
import padwright.desk.view.SectionForm.Room;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;
import padwright.shape.Section.LayerKind;

/**
 * The rows right of a section, from the finished height down to the board: a box for each
 * thickness, and beside it one for the overhang of foam.
 */
final class LayerRows {
  private static final double PITCH = SectionLayout.PITCH;
  private static final double LINE = SectionLayout.LINE;
  private static final double MARGIN = SectionLayout.MARGIN;
  private static final double GAP = SectionLayout.GAP;
  private static final double CHAIN = SectionLayout.CHAIN;

  private final SectionBody body;
  private final WrappedPad pad;
  private final SectionCut cut;
  private final BiFunction<Double, Double, Vec2> at;
  private final Room room;
  private final double t;
  private final double panel;
  private final double floor;
  private List<Dimension> dimensions = List.of();
  private List<Label> labels = List.of();

  /**
   * @param panel where the boxes begin
   * @param floor below which none stands
   */
  LayerRows(
      SectionBody body,
      WrappedPad pad,
      SectionCut cut,
      BiFunction<Double, Double, Vec2> at,
      Room room,
      double panel,
      double floor) {
    this.body = body;
    this.pad = pad;
    this.cut = cut;
    this.at = at;
    this.room = room;
    this.t = room.text();
    this.panel = panel;
    this.floor = floor;
  }

  private Vec2 at(double x, double z) {
    return at.apply(x, z);
  }

  private Vec2 at(Vec2 p) {
    return at.apply(p.x(), p.y());
  }

  private static double boxWidth(double t) {
    return (SectionLayout.BOX_WIDTH + SectionLayout.MARK) * t;
  }

  private Optional<String> edgePlace() {
    if (body.edge() instanceof EdgeShape.Round) {
      return Optional.of(cut.place(pad, "edge.round"));
    }
    return body.edge() instanceof EdgeShape.Bevel
        ? Optional.of(cut.place(pad, "edge.bevel"))
        : Optional.empty();
  }

  /** The rows at the right: from the finished height down to the board. */
  void place(List<Dimension> dimensions, List<Label> labels) {
    this.dimensions = dimensions;
    this.labels = labels;
    List<SectionBody.Piece> down = new ArrayList<>(body.pieces());
    Collections.reverse(down);
    boolean shaped = edgePlace().isPresent();
    Vec2 arc = edgeMiddle();
    List<Double> wanted = new ArrayList<>();
    wanted.add(at(0, body.finishedHeight()).y() - t);
    if (shaped) {
      wanted.add(at(0, body.finishedHeight()).y() - t / 2);
    }
    wanted.add(at(0, (body.top() + body.finishedHeight()) / 2).y());
    down.forEach(p -> wanted.add(at(0, (p.bottom() + p.top()) / 2).y()));
    double half = PITCH * t / 2;
    double[] y = Spread.along(wanted, PITCH * t, MARGIN + LINE * t + half, floor - half);
    heads(y[0]);
    int row = 0;
    finished(y[row++]);
    if (shaped) {
      double own = y[row++];
      Bounds words = box(0, own);
      Line leader = new Line(at(arc), new Vec2(words.minX() - 2, own));
      String label = body.edge() instanceof EdgeShape.Round ? "edge round" : "edge bevel";
      Vec2 in = at(body.corner().plus(new Vec2(-body.edgeSize(), 0)));
      dimensions.add(
          new Dimension(
              edgePlace().get(),
              "edge",
              label,
              in,
              at(body.corner()),
              List.of(leader),
              Optional.of(words),
              box(1, own),
              Optional.empty()));
    }
    thickness("cover.thickness", "cover", "covering", body.top(), body.finishedHeight(), y[row++]);
    for (SectionBody.Piece p : down) {
      thickness(p.member() + ".thickness", p.member(), p.title(), p.bottom(), p.top(), y[row]);
      if (p.kind() == LayerKind.FOAM) {
        overhang(p, y[row]);
      }
      row++;
    }
  }

  private void heads(double first) {
    double bottom = first - PITCH * t / 2 - 1;
    for (int c = 0; c < 2; c++) {
      double x = panel + c * (boxWidth(t) + GAP);
      Bounds b = new Bounds(x, bottom - LINE * t + 1, x + boxWidth(t), bottom);
      Vec2 none = new Vec2(x, bottom);
      labels.add(new Label("", c == 0 ? "thickness" : "overhang", b, new Line(none, none)));
    }
  }

  private Bounds box(int column, double y) {
    double x = panel + column * (boxWidth(t) + GAP);
    double half = SectionLayout.BOX_HEIGHT * t / 2;
    return new Bounds(x, y - half, x + boxWidth(t), y + half);
  }

  private Vec2 edgeMiddle() {
    List<Vec2> line = body.edgeLine();
    return line.get(line.size() / 2).midpoint(line.get((line.size() - 1) / 2));
  }

  private void thickness(
      String place, String member, String label, double low, double high, double y) {
    double x = panel - CHAIN + 9;
    Vec2 from = new Vec2(x, at(0, low).y());
    Vec2 to = new Vec2(x, at(0, high).y());
    List<Line> lines = new ArrayList<>();
    double edge = panel - CHAIN + 2;
    lines.add(new Line(new Vec2(edge, from.y()), new Vec2(x + 3, from.y())));
    lines.add(new Line(new Vec2(edge, to.y()), new Vec2(x + 3, to.y())));
    lines.add(new Line(from.midpoint(to), new Vec2(panel - 2, y)));
    dimensions.add(
        new Dimension(
            place, member, label, from, to, lines, Optional.empty(), box(0, y), Optional.empty()));
  }

  private void overhang(SectionBody.Piece p, double y) {
    Vec2 edge = at(p.overhang(), p.outermost().y());
    Vec2 base = at(0, p.outermost().y());
    dimensions.add(
        new Dimension(
            cut.place(pad, p.member() + ".overhang"),
            p.member(),
            p.title() + ", beyond the base",
            base,
            edge,
            List.of(),
            Optional.empty(),
            box(1, y),
            Optional.empty()));
  }

  private void finished(double y) {
    double x = panel - CHAIN + 18;
    Vec2 from = new Vec2(x, at(0, 0).y());
    Vec2 to = new Vec2(x, at(0, body.finishedHeight()).y());
    Bounds words = box(0, y);
    double edge = panel - CHAIN + 2;
    List<Line> lines = new ArrayList<>();
    lines.add(new Line(new Vec2(edge, to.y()), new Vec2(x + 3, to.y())));
    lines.add(new Line(to, new Vec2(words.minX() - 2, y)));
    dimensions.add(
        new Dimension(
            "",
            "",
            "finished",
            from,
            to,
            lines,
            Optional.of(words),
            box(1, y),
            Optional.of(
                body.worked()
                    ? SectionLayout.size(body.finishedHeight(), room.units())
                    : "not worked out")));
  }
}
