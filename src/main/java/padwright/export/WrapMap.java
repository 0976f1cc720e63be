package padwright.export;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.LaidCover;
import padwright.cover.LaidCover.Sheet;
import padwright.cover.StrainField;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PartResult;

/**
 * What the wrap proof found, as a picture: the layers of covering on the back, as seen from behind,
 * with each kind of corner once more at a larger scale; the sides unrolled with their layers and
 * then where the covering is eased, stretched or strained and by how much; the verdict and its
 * numbers. Regions are those of the sheets that the folds make, not samples. mm on paper.
 */
public final class WrapMap {
  /** One mm of paper shows so many of the pad. */
  private static final double[] SCALES = {
    0.5, 1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 100
  };

  static final double WIDE = 180;
  private static final double EDGE = 6;
  private static final double GAP = 8;
  private static final double PITCH = Lettering.NOTE * Lettering.LEADING;

  /** How far chords leave the arcs of the cover's lines here, mm on the pad. */
  private static final double CHORD_ERROR = 0.05;

  private final PartHeader header;
  private final PartResult result;
  private final List<Block> blocks = new ArrayList<>();
  private boolean strained;

  /** Something with its upper left corner at the origin. */
  record Block(double width, double height, List<Item> items) {}

  private WrapMap(PartHeader header, PartResult result) {
    this.header = header;
    this.result = result;
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
    if (!result.cover().overlaps()) {
      List<Vec2> trim = result.cover().trim().flattened(CHORD_ERROR);
      LaidCover laid = new LaidCover(trim, result.cover().skeleton());
      StrainField strain =
          new StrainField(
              trim,
              result.cover(),
              laid,
              result.shape().ends(),
              easeTaken(result),
              stretchTaken(result));
      BackBlocks back = new BackBlocks(result, laid.back(), strain.back());
      WallBlocks walls = new WallBlocks(result, laid, strain);
      back.addTo(blocks);
      walls.addTo(blocks);
      legend();
      int layers = blocks.size();
      back.addStrainTo(blocks);
      walls.addStrainTo(blocks);
      strained = blocks.size() > layers;
      if (strained) {
        blocks.add(StrainPaint.legend());
      }
    }
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
        "Layers and strain of the covering on the back and the sides, from the wrap proof; scales as"
            + " written.",
        extent.grown(EDGE),
        items);
  }

  static Item moved(Item i, Vec2 by) {
    if (i instanceof Stroke s) {
      return new Stroke(s.path().translated(by), s.style(), s.sample());
    }
    if (i instanceof Drawing.Lines l) {
      return l.translated(by);
    }
    if (i instanceof Drawing.Fill f) {
      return new Drawing.Fill(f.path().translated(by), f.grey());
    }
    Text t = (Text) i;
    return new Text(t.at().plus(by), t.height(), t.angle(), t.anchor(), t.bold(), t.text());
  }

  /** The part of its length that the covering can be eased by. */
  static double easeTaken(PartResult result) {
    return result.spec().covering().ease();
  }

  /** The part of its length that it stretches by whichever way a curve runs. */
  static double stretchTaken(PartResult result) {
    return Math.min(
        result.spec().covering().stretchAlong(), result.spec().covering().stretchAcross());
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
    if (w.worstFlapStrain() > 0) {
      lines.add(
          "Flaps folded out of sight give by up to "
              + WallBlocks.percent(w.worstFlapStrain())
              + " where their fold is not straight.");
    }
    if (result.cover().overlaps()) {
      lines.add("Not mapped: the covering of two sides would have to be in one place on the flat.");
    }
    if (!strained && !result.cover().overlaps()) {
      lines.add("Nothing that is mapped has to be eased, stretched or strained by 0.5 % or more.");
    }
    if (header.mirrored() > 0) {
      lines.add("Hand as drawn; the mirrored part's map is the mirror image.");
    }
    return lines;
  }

  private String length(double mm) {
    return PieceNotes.depth(mm, header.units());
  }

  static List<Sheet> scaled(List<Sheet> sheets, double k, Vec2 shift) {
    return sheets.stream()
        .map(
            s ->
                new Sheet(
                    s.polygon().stream().map(p -> p.times(1 / k).plus(shift)).toList(), s.layers()))
        .toList();
  }

  static Block captioned(List<Item> items, double width, double height, String words) {
    List<Item> all = new ArrayList<>(items);
    double y = -height - 2;
    for (String line : CornerDiagram.wrapped(words, width)) {
      y -= PITCH;
      all.add(new Text(new Vec2(0, y), Lettering.NOTE, 0, Anchor.START, false, line));
    }
    return new Block(width, -y + 1, all);
  }

  /** What of a closed line lies in an upright frame. */
  static List<Item> inFrame(List<Vec2> polygon, Bounds frame) {
    Box box = new Box(frame.centre(), frame.width(), frame.height(), 0);
    List<Item> items = new ArrayList<>();
    List<Vec2> line = new ArrayList<>();
    for (int i = 0; i <= polygon.size(); i++) {
      Vec2 p = polygon.get(i % polygon.size());
      Vec2 q = polygon.get((i + 1) % polygon.size());
      double[] span = i == polygon.size() ? null : box.span(p, q);
      boolean whole = span != null && span[0] == 0;
      if (!whole && line.size() > 1) {
        items.add(new Stroke(Path.polyline(line), LineStyle.SOLID));
      }
      if (!whole) {
        line.clear();
      }
      if (span != null && span[1] > span[0]) {
        if (line.isEmpty()) {
          line.add(p.along(q.minus(p), span[0]));
        }
        line.add(p.along(q.minus(p), span[1]));
      }
    }
    return items;
  }

  static String scaleWords(double k) {
    return k < 1 ? PieceNotes.plainNumber(1 / k) + " : 1" : "1 : " + PieceNotes.plainNumber(k);
  }

  /** Names with commas and an "and". */
  static String listed(List<String> names) {
    int last = names.size() - 1;
    return last == 0
        ? names.get(0)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  private void legend() {
    String[] words = {"1 layer", "2 layers", "3 layers", "4 or more"};
    List<Item> items = samples(words);
    blocks.add(
        captioned(
            items,
            WIDE,
            9,
            "Thin lines part regions where the number of layers changes; dash and dots: the trim"
                + " line. White on a side: bare, or the gap at a break. Regions are worked out from"
                + " the folds, not sampled. Not mapped: the gather within 5 mm of a pleated back"
                + " corner, counted as two layers more; a gusset's seam allowances on the sides;"
                + " clips; what is turned through cut-outs."));
  }

  private static List<Item> samples(String[] words) {
    List<Item> items = new ArrayList<>();
    double x = 0;
    for (int i = 0; i < words.length; i++) {
      items.addAll(LayerHatching.sample(new Bounds(x, -8, x + 12, 0), i + 1));
      items.add(new Text(new Vec2(x + 14, -5.2), Lettering.NOTE, 0, Anchor.START, false, words[i]));
      x += 14 + Lettering.width(words[i], Lettering.NOTE) + 8;
    }
    return items;
  }
}
