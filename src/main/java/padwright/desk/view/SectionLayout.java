package padwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import padwright.design.EdgeShape;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.desk.view.SectionForm.Dimension;
import padwright.desk.view.SectionForm.Kind;
import padwright.desk.view.SectionForm.Label;
import padwright.desk.view.SectionForm.Line;
import padwright.desk.view.SectionForm.Member;
import padwright.desk.view.SectionForm.Room;
import padwright.geometry.Bounds;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.measure.LengthText;
import padwright.measure.LengthUnit;
import padwright.measure.Rounding;
import padwright.measure.Sentence;
import padwright.shape.Section.LayerKind;

/**
 * Lays a section form out: names left, the section in the middle, a row of boxes for each layer
 * right, boxes for what is on the back below. Boxes are measured in letters, so that they grow with
 * the text.
 */
final class SectionLayout {
  /** Sizes in letter heights. */
  static final double BOX_WIDTH = 5;

  static final double MARK = 1.4;
  static final double BOX_HEIGHT = 1.75;
  static final double PITCH = 1.84;
  static final double LINE = 1.25;
  private static final double BAR = 0.85;

  static final double MARGIN = 6;
  static final double GAP = 5;

  /** Width in which the measured lengths stand, points. */
  static final double CHAIN = 30;

  private static final double LEAST_BODY = 120;

  /** How much larger than life, at 96 points to the inch, largest first. */
  private static final double[] SCALES = {
    10, 8, 6, 5, 4, 3, 2.5, 2, 1.5, 1.25, 1, 0.8, 0.6, 0.5, 0.4, 0.3, 0.25, 0.2, 0.15, 0.1, 0.05
  };

  private static final double LIFE = 96 / 25.4;
  private static final double[] BARS = {1, 2, 5, 10, 20, 50, 100, 200, 500};

  private final SectionBody body;
  private final WrappedPad pad;
  private final SectionCut cut;
  private final Room room;
  private final double t;
  private final double width;
  private final double height;
  private final double names;
  private final double panel;
  private final double floor;
  private final double scale;
  private final double left;
  private final double x0;
  private final double y0;
  private final Bounds extent;
  private final List<Dimension> dimensions = new ArrayList<>();
  private final List<Label> labels = new ArrayList<>();

  SectionLayout(SectionBody body, WrappedPad pad, SectionCut cut, Room room) {
    this.body = body;
    this.pad = pad;
    this.cut = cut;
    this.room = room;
    this.t = room.text();
    double boxes = 2 * boxWidth() + GAP;
    this.names = Math.max(7 * t, Math.min(17 * t, room.width() * 0.24));
    this.width = Math.max(room.width(), names + boxes + CHAIN + LEAST_BODY + 2 * MARGIN + 2 * GAP);
    double below = below(t);
    this.height = Math.max(room.height(), leastHeight(body, t));
    this.panel = width - MARGIN - boxes;
    this.floor = height - below;
    double zoneWide = panel - CHAIN - names - MARGIN - 2 * GAP;
    double zoneHigh = floor - MARGIN - LINE * t;
    Bounds needed = body.bounds(body.needed());
    this.scale = room.scale().orElse(fit(needed, zoneWide, zoneHigh));
    double reach = needed.maxX() - zoneWide / scale;
    this.extent = body.bounds(reach);
    double right = panel - CHAIN;
    this.left = right - extent.width() * scale;
    this.x0 = right - extent.maxX() * scale;
    double slack = Math.max(0, zoneHigh - extent.height() * scale);
    this.y0 = floor - slack / 2 + extent.minY() * scale;
  }

  private double boxWidth() {
    return (BOX_WIDTH + MARK) * t;
  }

  private static double below(double t) {
    return (2 * BAR + LINE + BOX_HEIGHT + LINE + 0.4) * t + 2 * MARGIN;
  }

  /** Room for a row for each layer, the covering, the finished height and the edge's size. */
  static double leastHeight(SectionBody body, double t) {
    boolean shaped =
        body.edge() instanceof EdgeShape.Round || body.edge() instanceof EdgeShape.Bevel;
    int rows = 2 + body.pieces().size() + (shaped ? 1 : 0);
    return MARGIN + LINE * t + rows * PITCH * t + below(t);
  }

  private static double fit(Bounds b, double wide, double high) {
    for (double s : SCALES) {
      double k = s * LIFE;
      if (b.width() * k <= wide && b.height() * k <= high) {
        return k;
      }
    }
    return SCALES[SCALES.length - 1] * LIFE;
  }

  private Vec2 at(double x, double z) {
    return new Vec2(x0 + x * scale, y0 - z * scale);
  }

  private Vec2 at(Vec2 p) {
    return at(p.x(), p.y());
  }

  SectionForm form() {
    List<Member> members = members();
    names();
    new LayerRows(body, pad, cut, this::at, room, panel, floor).place(dimensions, labels);
    backBoxes();
    return new SectionForm(
        width,
        height,
        t,
        scale,
        members,
        dimensions,
        labels,
        SectionHandles.of(body, pad, cut, this::at, left, scale),
        caption(),
        scaleBar(),
        new Line(new Vec2(x0, MARGIN), new Vec2(x0, floor + 2 * BAR * t)),
        body.worked());
  }

  private List<Member> members() {
    List<Member> members = new ArrayList<>();
    int foam = 0;
    for (SectionBody.Piece p : body.pieces()) {
      Kind kind =
          p.kind() == LayerKind.BOARD
              ? Kind.BOARD
              : p.kind() == LayerKind.FOAM ? Kind.FOAM : Kind.WADDING;
      List<Vec2> seen = Polygons.below(p.outline(), new Vec2(-1, 0), -extent.minX());
      int number = kind == Kind.FOAM ? foam++ : 0;
      members.add(new Member(p.member(), p.title(), kind, number, screen(seen), true, 0));
    }
    members.add(
        new Member("edge", "edge of the foam", Kind.EDGE, 0, screen(body.edgeLine()), false, 2));
    List<Vec2> line = new ArrayList<>(body.covering());
    line.set(0, new Vec2(extent.minX(), line.get(0).y()));
    double thick = Math.max(1.5, body.coverThickness() * scale);
    members.add(new Member("cover", coverTitle(), Kind.COVER, 0, screen(line), false, thick));
    if (body.leg() > 0) {
      members.add(new Member("staples", "staple", Kind.STAPLES, 0, staple(), true, 0));
    }
    return members;
  }

  private String coverTitle() {
    return "covering: " + body.coverName();
  }

  private List<Vec2> screen(List<Vec2> line) {
    return line.stream().map(this::at).toList();
  }

  /** One leg, seen along the crown, from the outside of the turn-under to its point. */
  private List<Vec2> staple() {
    double w = Math.max(body.wire() / 2, 0.75 / scale);
    double x = -body.edgeDistance();
    double foot = body.penetration() - body.leg();
    double tip = body.penetration();
    double shoulder = Math.max(foot, tip - 2 * w);
    return screen(
        List.of(
            new Vec2(x - w, foot),
            new Vec2(x + w, foot),
            new Vec2(x + w, shoulder),
            new Vec2(x, tip),
            new Vec2(x - w, shoulder)));
  }

  private void names() {
    List<SectionBody.Piece> down = new ArrayList<>(body.pieces());
    java.util.Collections.reverse(down);
    List<Double> wanted = new ArrayList<>();
    List<Vec2> ends = new ArrayList<>();
    double inside = Math.min(10, extent.width() * scale / 8);
    ends.add(at(extent.minX(), body.covering().get(0).y()).plus(new Vec2(inside, 0)));
    for (SectionBody.Piece p : down) {
      ends.add(at(extent.minX(), (p.bottom() + p.top()) / 2).plus(new Vec2(inside, 0)));
    }
    ends.forEach(e -> wanted.add(e.y()));
    double[] y = Spread.along(wanted, LINE * t, MARGIN + t, floor);
    for (int i = 0; i < y.length; i++) {
      Bounds box =
          new Bounds(MARGIN, y[i] - LINE * t / 2, MARGIN + names, y[i] + LINE * t / 2 - 0.01);
      String words = i == 0 ? coverTitle() : down.get(i - 1).title();
      String member = i == 0 ? "cover" : down.get(i - 1).member();
      Vec2 from = new Vec2(box.maxX() + 1, y[i]);
      labels.add(new Label(member, words, box, new Line(from, ends.get(i))));
    }
  }

  private void backBoxes() {
    new BackRow(body, pad, cut, this::at, t, extent.minY())
        .place(MARGIN, width - MARGIN, floor, dimensions);
  }

  static String size(double mm, Units units) {
    return LengthText.in(units == Units.MM ? LengthUnit.MM : LengthUnit.INCH, mm, Rounding.NEAREST);
  }

  private String caption() {
    double ratio = scale / LIFE;
    String drawn =
        ratio >= 1
            ? Sentence.plain(Math.round(ratio * 100) / 100.0) + " : 1"
            : "1 : " + Sentence.plain(Math.round(100 / ratio) / 100.0);
    return (room.units() == Units.MM ? "in mm; scale " : "in inches; scale ")
        + drawn
        + (body.perSide().isPresent()
            ? "; cover per side " + size(body.perSide().getAsDouble(), room.units())
            : "; not worked out, as asked for");
  }

  private Label scaleBar() {
    double mm = BARS[0];
    for (double b : BARS) {
      mm = b * scale <= 90 ? b : mm;
    }
    double y = height - MARGIN;
    double right = width - MARGIN - 4 * t;
    Line bar = new Line(new Vec2(right - mm * scale, y - 3), new Vec2(right, y - 3));
    Bounds words = new Bounds(right + 4, y - t, width - MARGIN, y);
    return new Label("", Sentence.plain(mm) + " mm", words, bar);
  }
}
