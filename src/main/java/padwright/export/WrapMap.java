package padwright.export;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.CornerPlan;
import padwright.cover.LaidCover;
import padwright.cover.LaidCover.Sheet;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;

/**
 * What the wrap proof found, as a picture: the layers of covering on the back, as seen from behind,
 * with each kind of corner once more at a larger scale; the sides unrolled with their layers and
 * what the covering gives on their curves; the verdict and its numbers. Regions are those of the
 * sheets that the folds make, not samples. mm on paper.
 */
public final class WrapMap {
  /** One mm of paper shows so many of the pad. */
  private static final double[] SCALES = {1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 100};

  private static final double WIDE = 180;
  private static final double BACK_TALL = 170;
  private static final double DETAIL = 56;
  private static final double EDGE = 6;
  private static final double GAP = 8;
  private static final double PITCH = Lettering.NOTE * Lettering.LEADING;

  /** How far chords leave the arcs of the cover's lines here, mm on the pad. */
  private static final double CHORD_ERROR = 0.05;

  private final PartHeader header;
  private final PartResult result;
  private final LaidCover laid;
  private final List<Block> blocks = new ArrayList<>();

  /** Something with its upper left corner at the origin. */
  record Block(double width, double height, List<Item> items) {}

  private WrapMap(PartHeader header, PartResult result) {
    this.header = header;
    this.result = result;
    laid = new LaidCover(result.cover().trim().flattened(CHORD_ERROR), result.cover().skeleton());
  }

  /** The map of a part as drawn; the mirrored hand's is its mirror image. */
  public static Drawing of(PartHeader header, PartResult result) {
    return new WrapMap(header, result).drawn();
  }

  /** The smallest of the round scales at which a length fits. */
  static double scale(double length, double room) {
    for (double k : SCALES) {
      if (length / k <= room) {
        return k;
      }
    }
    return Math.ceil(length / room);
  }

  private Drawing drawn() {
    List<Sheet> back = laid.back().stream().map(WrapMap::fromBehind).toList();
    whole(back);
    corners(back);
    new WallBlocks(result, laid).addTo(blocks);
    legend();
    List<Item> items = new ArrayList<>();
    String title = header.partName() + ": wrap map";
    double y = -Lettering.NAME * Lettering.ASCENT;
    items.add(new Text(new Vec2(0, y), Lettering.NAME, 0, Anchor.START, false, title));
    y -= 2;
    for (String line : verdict()) {
      for (String part : CornerDiagram.wrapped(line, WIDE)) {
        y -= PITCH;
        items.add(new Text(new Vec2(0, y), Lettering.NOTE, 0, Anchor.START, false, part));
      }
    }
    y -= GAP;
    double x = 0;
    double lowest = y;
    for (Block b : blocks) {
      if (x > 0 && x + b.width > WIDE + 1) {
        x = 0;
        y = lowest - GAP;
        lowest = y;
      }
      Vec2 by = new Vec2(x, y);
      b.items.forEach(i -> items.add(moved(i, by)));
      x += b.width + GAP;
      lowest = Math.min(lowest, y - b.height);
    }
    Bounds extent = new Bounds(0, lowest, WIDE, 0);
    for (Item i : items) {
      extent = extent.union(SectionDrawing.bounds(i));
    }
    return new Drawing(
        title,
        "Layers of covering on the back and the sides, from the wrap proof; scales as written.",
        extent.grown(EDGE),
        items);
  }

  static Item moved(Item i, Vec2 by) {
    if (i instanceof Stroke s) {
      return new Stroke(s.path().translated(by), s.style(), s.sample());
    }
    if (i instanceof Drawing.Fill f) {
      return new Drawing.Fill(f.path().translated(by), f.grey());
    }
    Text t = (Text) i;
    return new Text(t.at().plus(by), t.height(), t.angle(), t.anchor(), t.bold(), t.text());
  }

  private List<String> verdict() {
    List<String> lines = new ArrayList<>();
    var w = result.wrap();
    lines.add(
        w.proved()
            ? "The cover covers: laid back on the pad it leaves nothing bare and no raw edge in sight."
            : "The cover does NOT cover: " + String.join("; ", w.failures()) + ".");
    String hiding =
        Double.isInfinite(w.leastHiding())
            ? "no raw edge lies on a side"
            : "raw edges on a side lie at least "
                + length(w.leastHiding())
                + " behind the fold that hides them";
    lines.add(
        "Bare: "
            + (w.bareArea() > 0 ? PieceNotes.plainNumber(w.bareArea()) + " mm2" : "nothing")
            + ". Least turn-under "
            + length(w.leastTurnUnder())
            + "; "
            + hiding
            + ".");
    if (header.mirrored() > 0) {
      lines.add("Hand as drawn; the mirrored part's map is the mirror image.");
    }
    return lines;
  }

  private String length(double mm) {
    return PieceNotes.depth(mm, header.units());
  }

  private static Sheet fromBehind(Sheet s) {
    return new Sheet(s.polygon().stream().map(p -> new Vec2(-p.x(), p.y())).toList(), s.layers());
  }

  static List<Sheet> scaled(List<Sheet> sheets, double k, Vec2 shift) {
    return sheets.stream()
        .map(
            s ->
                new Sheet(
                    s.polygon().stream().map(p -> p.times(1 / k).plus(shift)).toList(), s.layers()))
        .toList();
  }

  private void whole(List<Sheet> back) {
    Path outline = result.shape().outline().mirrored();
    Bounds b = outline.bounds();
    for (Sheet s : back) {
      for (Vec2 p : s.polygon()) {
        b = b.with(p);
      }
    }
    double k = Math.max(scale(b.width(), WIDE), scale(b.height(), BACK_TALL));
    Vec2 shift = new Vec2(-b.minX() / k, -b.maxY() / k);
    List<Item> items =
        new ArrayList<>(LayerHatching.of(scaled(back, k, shift), LineStyle.MARK, LineStyle.TRIM));
    items.add(new Stroke(outline.scaled(1 / k, 1 / k, 0).translated(shift), LineStyle.SOLID));
    result
        .piece(PatternPiece.Kind.BASE)
        .ifPresent(
            base ->
                base.innerCuts()
                    .forEach(
                        c ->
                            items.add(
                                new Stroke(
                                    c.mirrored().scaled(1 / k, 1 / k, 0).translated(shift),
                                    LineStyle.INNER_CUT))));
    captioned(
        items,
        Math.max(b.width() / k, 60),
        b.height() / k,
        "The back, seen from behind, front edge below, 1 : " + PieceNotes.plainNumber(k));
  }

  private void captioned(List<Item> items, double width, double height, String words) {
    blocks.add(captionedBlock(items, width, height, words));
  }

  static Block captionedBlock(List<Item> items, double width, double height, String words) {
    List<Item> all = new ArrayList<>(items);
    double y = -height - 2;
    for (String line : CornerDiagram.wrapped(words, width)) {
      y -= PITCH;
      all.add(new Text(new Vec2(0, y), Lettering.NOTE, 0, Anchor.START, false, line));
    }
    return new Block(width, -y + 1, all);
  }

  /** Each kind of corner once, near enough for its layers to be told apart. */
  private void corners(List<Sheet> back) {
    List<String> done = new ArrayList<>();
    double deep = result.cover().turnUnder().stream().mapToDouble(t -> t).max().orElse(20);
    for (CornerPlan c : result.cover().corners()) {
      String key = c.treatment() + " " + Math.round(1000 * c.turn()) + " " + Math.round(c.radius());
      boolean flat = c.turn() > 0 && c.pleats() == 0 && c.radius() > 0;
      if (flat || done.contains(key) || deep <= 0) {
        continue;
      }
      done.add(key);
      Vec2 at = new Vec2(-onOutline(c.apex()).x(), onOutline(c.apex()).y());
      double half = 0.95 * deep + 4;
      double k = scale(2 * half, DETAIL);
      Vec2 in = inward(at).times(0.55 * deep);
      Bounds window = Bounds.of(at.plus(in)).grown(half);
      Vec2 shift = new Vec2(-window.minX() / k, -window.maxY() / k);
      List<Sheet> near = LayerField.within(back, window);
      if (near.isEmpty()) {
        // At a hollow corner the cover opens and only the gusset lies there.
        continue;
      }
      List<Item> items =
          new ArrayList<>(LayerHatching.of(scaled(near, k, shift), LineStyle.MARK, LineStyle.TRIM));
      double size = 2 * half / k;
      items.add(
          new Stroke(
              Path.polygon(
                  new Vec2(0, 0), new Vec2(0, -size), new Vec2(size, -size), new Vec2(size, 0)),
              LineStyle.FRAME));
      captioned(items, DETAIL, size, c.name() + " from behind, 1 : " + PieceNotes.plainNumber(k));
    }
  }

  private Vec2 onOutline(Vec2 p) {
    Vec2 best = p;
    double least = Double.POSITIVE_INFINITY;
    for (Segment s : result.shape().outline().segments()) {
      if (s.distanceTo(p) < least) {
        least = s.distanceTo(p);
        best = s.nearest(p);
      }
    }
    return best;
  }

  /** From a place on the outline into the base, seen from behind. */
  private Vec2 inward(Vec2 at) {
    Vec2 sum = Vec2.ZERO;
    for (Segment s : result.shape().outline().mirrored().segments()) {
      if (s.start().distance(at) < 1e-6) {
        sum = sum.plus(s.directionAt(0).left());
      } else if (s.end().distance(at) < 1e-6) {
        sum = sum.plus(s.directionAt(1).left());
      } else if (s.distanceTo(at) < 1e-6) {
        sum =
            sum.plus(
                s.isArc()
                    ? s.centre().minus(at).unit().times(Math.signum(s.bulge()))
                    : s.directionAt(0).left());
      }
    }
    return sum.length() < 1e-9 ? Vec2.ZERO : sum.times(1.4 / sum.length());
  }

  private void legend() {
    String[] words = {"1 layer", "2 layers", "3 layers", "4 or more"};
    List<Item> items = samples(words);
    blocks.add(
        captionedBlock(
            items,
            WIDE,
            9,
            "Lines part regions where the number of layers changes; dash and dots: the trim line."
                + " Regions are worked out from the folds, not sampled. A gusset's own layer is"
                + " left white. Within 5 mm of a pleated"
                + " back corner a gather is counted as two layers more. What is turned through"
                + " cut-outs is not counted."));
  }

  private static List<Item> samples(String[] words) {
    List<Item> items = new ArrayList<>();
    double x = 0;
    for (int i = 0; i < words.length; i++) {
      for (Item s : LayerHatching.sample(new Bounds(x, -8, x + 12, 0), i + 1)) {
        if (s instanceof Stroke line) {
          items.add(new Stroke(line.path(), line.style(), true));
        }
      }
      items.add(new Text(new Vec2(x + 14, -5.2), Lettering.NOTE, 0, Anchor.START, false, words[i]));
      x += 14 + Lettering.width(words[i], Lettering.NOTE) + 8;
    }
    return items;
  }
}
