package padwright.export;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padwright.cover.CornerPlan;
import padwright.cover.LaidCover.Sheet;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.WrapMap.Block;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;

/** The back of a wrap map as seen from behind: the whole, then each kind of corner larger. */
final class BackBlocks {
  private static final double TALLEST = 170;
  private static final double LEAST_WIDE = 60;

  /** Width of a corner's picture, mm. */
  private static final double DETAIL = 60;

  /** Chords of the outline on paper, mm. */
  private static final double CHORD_ERROR = 0.02;

  private final PartResult result;
  private final List<Sheet> back;
  private final Path outline;

  BackBlocks(PartResult result, List<Sheet> seenFromFace) {
    this.result = result;
    back =
        seenFromFace.stream()
            .map(
                s ->
                    new Sheet(
                        s.polygon().stream().map(p -> new Vec2(-p.x(), p.y())).toList(),
                        s.layers()))
            .toList();
    outline = result.shape().outline().mirrored();
  }

  void addTo(List<Block> blocks) {
    blocks.add(whole());
    corners(blocks);
  }

  private Block whole() {
    Bounds b = outline.bounds();
    double k = Math.max(WrapMap.scale(b.width(), WrapMap.WIDE), WrapMap.scale(b.height(), TALLEST));
    Vec2 shift = new Vec2(-b.minX() / k, -b.maxY() / k);
    Path drawn = onPaper(outline, k, shift);
    List<Item> items =
        new ArrayList<>(
            LayerHatching.of(
                    WrapMap.scaled(back, k, shift), drawn.flattened(CHORD_ERROR), LineStyle.TRIM)
                .items());
    items.add(new Stroke(drawn, LineStyle.SOLID));
    result
        .piece(PatternPiece.Kind.BASE)
        .ifPresent(
            base ->
                base.innerCuts()
                    .forEach(
                        c ->
                            items.add(
                                new Stroke(onPaper(c.mirrored(), k, shift), LineStyle.INNER_CUT))));
    return WrapMap.captioned(
        items,
        Math.max(b.width() / k, LEAST_WIDE),
        b.height() / k,
        "The back, seen from behind, front edge below, " + WrapMap.scaleWords(k));
  }

  private static Path onPaper(Path p, double k, Vec2 shift) {
    return p.scaled(1 / k, 1 / k, 0).translated(shift);
  }

  /** Each kind of corner once, near enough for its layers to be told apart. */
  private void corners(List<Block> blocks) {
    double deep = result.cover().turnUnder().stream().mapToDouble(t -> t).max().orElse(0);
    Map<String, List<CornerPlan>> alike = new LinkedHashMap<>();
    for (CornerPlan c : result.cover().corners()) {
      boolean folded = c.turn() > 0 && (c.pleats() > 0 || c.radius() == 0);
      if (folded && deep > 0) {
        // Where sides differ every corner may.
        String own = result.asked().runs().isEmpty() ? "" : c.name();
        String key =
            c.treatment() + " " + Math.round(1000 * c.turn()) + " " + Math.round(c.radius()) + own;
        alike.computeIfAbsent(key, x -> new ArrayList<>()).add(c);
      }
    }
    for (List<CornerPlan> group : alike.values()) {
      corner(group, deep, blocks);
    }
  }

  private void corner(List<CornerPlan> group, double deep, List<Block> blocks) {
    CornerPlan c = group.get(0);
    Vec2 at = onOutline(new Vec2(-c.apex().x(), c.apex().y()));
    boolean pleated = c.pleats() > 0 && c.radius() > deep;
    // Pleats are narrow and alike, so that a few of them are shown larger.
    double half = pleated ? 0.55 * deep + 1 : 0.95 * deep + 4;
    double k = WrapMap.scale(2 * half, DETAIL);
    Bounds window = Bounds.of(at.along(inward(at), 0.5 * deep)).grown(half);
    Vec2 shift = new Vec2(-window.minX() / k, -window.maxY() / k);
    List<Sheet> near = WrapMap.scaled(LayerField.within(back, window), k, shift);
    List<Vec2> base = onPaper(outline, k, shift).flattened(CHORD_ERROR);
    double size = 2 * half / k;
    Bounds frame = new Bounds(0, -size, size, 0);
    LayerHatching.Drawn drawn =
        LayerHatching.of(near, LayerField.clipped(base, frame), LineStyle.TRIM);
    List<Item> items = new ArrayList<>(drawn.items());
    items.addAll(WrapMap.inFrame(base, frame));
    items.add(new Stroke(Path.polygon(LayerField.corners(frame)), LineStyle.FRAME));
    String also =
        group.size() == 1
            ? ""
            : "; "
                + WrapMap.listed(group.stream().skip(1).map(CornerPlan::name).toList())
                + " likewise or mirrored";
    blocks.add(
        WrapMap.captioned(
            items,
            DETAIL,
            size,
            c.name()
                + " from behind, "
                + WrapMap.scaleWords(k)
                + also
                + ": up to "
                + drawn.most()
                + (drawn.most() == 1 ? " layer" : " layers")));
  }

  private Vec2 onOutline(Vec2 p) {
    Vec2 best = p;
    double least = Double.POSITIVE_INFINITY;
    for (Segment s : outline.segments()) {
      double away = s.distanceTo(p);
      if (away < least) {
        least = away;
        best = s.nearest(p);
      }
    }
    return best;
  }

  /** From a place on the outline into the base; at a corner so far that it is as deep for both. */
  private Vec2 inward(Vec2 at) {
    Vec2 sum = Vec2.ZERO;
    for (Segment s : outline.segments()) {
      if (s.start().distance(at) < 1e-6) {
        sum = sum.plus(s.directionAt(0).left());
      } else if (s.end().distance(at) < 1e-6) {
        sum = sum.plus(s.directionAt(1).left());
      } else if (s.distanceTo(at) < 1e-6) {
        Vec2 in =
            s.isArc()
                ? s.centre().minus(at).unit().times(Math.signum(s.bulge()))
                : s.directionAt(0).left();
        return in;
      }
    }
    return sum;
  }
}
