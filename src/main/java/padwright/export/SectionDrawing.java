package padwright.export;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import padwright.design.EdgeShape;
import padwright.design.PadSpec;
import padwright.design.Units;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.Fill;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Lines;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.measure.LengthText;
import padwright.measure.LengthUnit;
import padwright.measure.Rounding;
import padwright.shape.Section;
import padwright.shape.Section.Layer;
import padwright.shape.Section.LayerKind;

/**
 * The pad cut across its edge, to a stated scale: layers hatched and named, the covering at its
 * true thickness, a staple driven through the turn-under, and the sizes that matter. Sizes come
 * from the section and the figures, never from the picture. mm on paper.
 */
public final class SectionDrawing {
  private static final double EDGE = 5;
  private static final double ROW = 7;
  private static final double ASIDE = 10;

  private final PartHeader header;
  private final Section section;
  private final PadSpec spec;
  private final Facts facts;
  private final String where;
  private final double scale;
  private final Bounds body;
  private final List<Item> items = new ArrayList<>();
  private final LabelColumn names = new LabelColumn();
  private final LabelColumn sizes = new LabelColumn();

  /**
   * Sizes the section itself does not hold.
   *
   * @param leg nominal leg of the staple drawn; 0 = none
   * @param penetration into the board through one layer
   * @param margin board left under the point, where the board is thinnest
   */
  record Facts(
      double finishedHeight, double standOff, double leg, double penetration, double margin) {}

  private SectionDrawing(
      PartHeader header, Section section, String where, PadSpec spec, Facts facts) {
    this.where = where;
    this.header = header;
    this.section = section;
    this.spec = spec;
    this.facts = facts;
    Bounds b = Bounds.of(Vec2.ZERO);
    for (Layer l : section.layers()) {
      b = b.union(l.shape().bounds());
    }
    b = b.union(section.taut().neutral().bounds().grown(spec.coverThickness() / 2));
    this.scale = SectionPicture.scaleFor(b);
    this.body = new Bounds(b.minX() * scale, b.minY() * scale, b.maxX() * scale, b.maxY() * scale);
  }

  /**
   * @param where which edge of the part, empty where all are alike
   */
  static Drawing of(PartHeader header, Section section, String where, PadSpec spec, Facts facts) {
    return new SectionDrawing(header, section, where, spec, facts).drawn();
  }

  private Drawing drawn() {
    layers();
    covering();
    items.addAll(SectionPicture.tornEdge(body));
    staple();
    items.add(
        new Stroke(
            Path.line(at(0, -3 / scale), at(0, section.top() + 6 / scale)), LineStyle.CENTRE));
    double right = heights();
    overhangs();
    backSizes();
    items.addAll(names.drawn(body.minX() - ASIDE, Anchor.END));
    items.addAll(sizes.drawn(right + ASIDE, Anchor.START));
    finishedHeight(right);
    captions();
    Bounds extent = body;
    for (Item i : items) {
      extent = extent.union(bounds(i));
    }
    return new Drawing(
        header.partName() + ": section",
        "Section across the edge, scale " + scaleText() + ".",
        extent.grown(EDGE),
        items);
  }

  static Bounds bounds(Item item) {
    if (item instanceof Stroke s) {
      return s.path().bounds();
    }
    if (item instanceof Lines lines) {
      return lines.bounds();
    }
    return item instanceof Fill f ? f.path().bounds() : Lettering.box((Text) item).bounds();
  }

  private Vec2 at(double x, double y) {
    return new Vec2(x * scale, y * scale);
  }

  private void layers() {
    int foam = 0;
    for (Layer l : section.layers()) {
      Path shape = l.shape().scaled(scale, scale, 0);
      Bounds b = shape.bounds();
      String name;
      switch (l.kind()) {
        case BOARD -> {
          SectionPicture.fill(items, shape, 0.82, Math.PI / 4, 2.5);
          name = "board: " + l.name();
        }
        case FOAM -> {
          SectionPicture.fill(
              items, shape, foam % 2 == 0 ? 0.95 : 0.9, foam % 2 == 0 ? -Math.PI / 4 : 0.35, 5);
          foam++;
          name = "foam layer " + foam + ": " + l.name();
        }
        case WADDING -> {
          SectionPicture.fill(items, shape, 0.98, Math.PI / 2, 1.5);
          name = "wadding: " + l.name();
        }
        default -> throw new IllegalStateException("layer " + l.kind());
      }
      double y =
          l.kind() == LayerKind.WADDING
              ? b.maxY() - l.thickness() * scale / 2
              : (b.minY() + b.maxY()) / 2;
      names.add(new Vec2(b.minX() + 6, y), true, name);
    }
  }

  /** The neutral line widened to the covering's thickness, carried on over the flat top. */
  private void covering() {
    double t = spec.coverThickness();
    Path neutral = section.taut().neutral();
    List<Segment> line = new ArrayList<>();
    Vec2 inside = new Vec2(body.minX() / scale, neutral.start().y());
    line.add(Segment.line(inside, neutral.start()));
    line.addAll(neutral.segments());
    if (t == 0) {
      items.add(new Stroke(new Path(line, false).scaled(scale, scale, 0), LineStyle.FRONT));
    } else {
      items.add(new Fill(SectionPicture.band(line, t / 2).scaled(scale, scale, 0), 0));
    }
    names.add(
        new Vec2(body.minX() + 6, inside.y() * scale),
        false,
        "covering: " + spec.covering().name() + ", " + thickness(t));
  }

  /** One leg, seen along the crown, from the outside of the turn-under to its point. */
  private void staple() {
    if (facts.leg <= 0) {
      return;
    }
    double w = spec.staple().wireWidth() / 2;
    double x = -spec.edgeDistance();
    double foot = facts.penetration - facts.leg;
    double tip = facts.penetration;
    double shoulder = Math.max(foot, tip - 2 * w);
    Path leg =
        Path.polygon(
            at(x - w, foot), at(x + w, foot), at(x + w, shoulder), at(x, tip), at(x - w, shoulder));
    items.add(new Fill(leg, 1));
    items.add(new Stroke(leg, LineStyle.SOLID));
    sizes.add(
        at(x, tip),
        true,
        PieceNotes.depth(facts.margin, header.units()) + " of board left under the point");
    sizes.add(
        at(x, foot / 2 + tip / 2 - Math.max(0, tip) / 4),
        true,
        "staple, leg "
            + thickness(facts.leg)
            + ", "
            + thickness(spec.edgeDistance())
            + " from the edge");
  }

  /** The chain of thicknesses at the right; returns where it stands. */
  private double heights() {
    double x = body.maxX() + 7;
    List<Double> steps = new ArrayList<>(List.of(0.0, section.boardThickness()));
    sizes.add(
        new Vec2(x, section.boardThickness() / 2 * scale),
        false,
        "board " + thickness(section.boardThickness()));
    double z = section.boardThickness();
    int foam = 0;
    for (Layer l : section.layers()) {
      if (l.kind() == LayerKind.FOAM) {
        foam++;
        sizes.add(
            new Vec2(x, (z + l.thickness() / 2) * scale),
            false,
            "foam layer " + foam + ", " + thickness(l.thickness()));
        z += l.thickness();
        steps.add(z);
      }
    }
    if (section.top() > z + 1e-9) {
      sizes.add(
          new Vec2(x, (z + section.top()) / 2 * scale),
          false,
          "wadding, pressed " + thickness(section.top() - z));
      steps.add(section.top());
    }
    for (int i = 0; i < steps.size(); i++) {
      double y = steps.get(i) * scale;
      items.add(Dimensions.stroke(new Vec2(body.maxX() + 1.5, y), new Vec2(x + 1.5, y)));
      if (i > 0) {
        items.addAll(Dimensions.bar(new Vec2(x, steps.get(i - 1) * scale), new Vec2(x, y)));
      }
    }
    edgeShape();
    return x;
  }

  private void edgeShape() {
    List<Layer> foam = section.layers().stream().filter(l -> l.kind() == LayerKind.FOAM).toList();
    if (foam.isEmpty()) {
      return;
    }
    Layer top = foam.get(foam.size() - 1);
    // At the edge: a layer laid over a crown lies higher in its middle.
    double z = top.shape().bounds().minY() + top.thickness();
    double x = top.overhang();
    if (section.edge() instanceof EdgeShape.Round r) {
      double in = r.radius() * (1 - Math.sqrt(0.5));
      sizes.add(at(x - in, z - in), true, "edge rounded to " + thickness(r.radius()));
    } else if (section.edge() instanceof EdgeShape.Bevel v) {
      sizes.add(
          at(x - v.size() / 2, z - v.size() / 2), true, "edge bevelled " + thickness(v.size()));
    } else if (section.edge() instanceof EdgeShape.FullRound) {
      double r = (z - section.boardThickness()) / 2;
      sizes.add(
          at(x - r * (1 - Math.sqrt(0.5)), z - r * (1 - Math.sqrt(0.5))), true, "edge full round");
    }
  }

  private void overhangs() {
    double row = body.maxY() + 6;
    // The furthest out stands lowest, so that no line up to a higher row runs through a text.
    List<Layer> sorted = new ArrayList<>(section.layers());
    sorted.sort(Comparator.comparingDouble((Layer l) -> -l.overhang()));
    for (Layer l : sorted) {
      if (l.kind() == LayerKind.FOAM && Math.abs(l.overhang()) > 1e-9) {
        double x = l.overhang() * scale;
        double z = l.shape().bounds().maxY() * scale;
        items.add(Dimensions.stroke(new Vec2(x, z), new Vec2(x, row + 1.5)));
        items.add(Dimensions.stroke(new Vec2(0, body.maxY()), new Vec2(0, row + 1.5)));
        String word = l.overhang() > 0 ? "overhang " : "stepped back ";
        items.addAll(Dimensions.level(0, x, row, word + thickness(Math.abs(l.overhang()))));
        row += ROW;
      }
    }
  }

  private void backSizes() {
    double w = section.taut().neutral().end().x();
    double y = body.minY() - 8;
    items.add(Dimensions.stroke(at(w, 0), new Vec2(w * scale, y - 1.5)));
    items.add(Dimensions.stroke(new Vec2(0, body.minY() - 1), new Vec2(0, y - 1.5)));
    items.addAll(Dimensions.level(w * scale, 0, y, "turn-under " + size(-w)));
    if (facts.standOff > 0) {
      Vec2 gap =
          new Vec2(w * scale - 4, -Math.min(facts.standOff, spec.coverThickness()) / 2 * scale);
      names.add(
          gap,
          true,
          (facts.standOff > spec.coverThickness() + 1e-9
                  ? "turn-under stands up to "
                  : "turn-under stands ")
              + thickness(facts.standOff)
              + " off the back");
    }
  }

  private void finishedHeight(double chain) {
    double x = chain + ASIDE;
    for (Item i : sizes.drawn(chain + ASIDE, Anchor.START)) {
      x = Math.max(x, bounds(i).maxX());
    }
    x += ASIDE;
    double y = facts.finishedHeight * scale;
    items.addAll(Dimensions.upright(x, 0, y, "finished height " + size(facts.finishedHeight)));
  }

  private void captions() {
    Bounds b = body;
    for (Item i : items) {
      b = b.union(bounds(i));
    }
    List<String> notes = new ArrayList<>();
    notes.add("scale " + scaleText() + "; read the sizes, do not measure them here");
    notes.add(
        "cover, per side: "
            + size(section.taut().developed())
            + " from the base's edge on the top, over and round, to the end of the turn-under");
    if (facts.leg > 0) {
      notes.add(
          "the board left under the point is counted where the board is thinnest: "
              + PieceNotes.depth(spec.leastThickness(), header.units()));
    }
    NoteBlock block =
        NoteBlock.of(header.partName() + ": section across the " + where + "edge", notes, 1);
    Vec2 middle = new Vec2(b.minX() + block.width() / 2, b.minY() - 7 - block.height() / 2);
    items.addAll(block.drawn(new Box(middle, block.width(), block.height(), 0)));
  }

  private String scaleText() {
    return scale >= 1
        ? PieceNotes.plainNumber(scale) + " : 1"
        : "1 : " + PieceNotes.plainNumber(1 / scale);
  }

  private String size(double mm) {
    return header.units() == Units.MM
        ? LengthText.mm(mm)
        : LengthText.in(LengthUnit.INCH, mm, Rounding.NEAREST);
  }

  private String thickness(double mm) {
    return PieceNotes.thickness(mm, header.units());
  }
}
