package padwright.export;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padwright.cover.CornerPlan;
import padwright.cover.LaidCover.Sheet;
import padwright.cover.StrainField.Area;
import padwright.design.WrappedPad;
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
  private final StrainPaint strain;
  private final Path outline;

  BackBlocks(PartResult result, List<Sheet> seenFromFace, List<Area> strainedSeenFromFace) {
    this.result = result;
    back = seenFromFace.stream().map(s -> new Sheet(mirrored(s.polygon()), s.layers())).toList();
    strain =
        new StrainPaint(
            strainedSeenFromFace.stream()
                .map(a -> StrainPaint.with(a, mirrored(a.polygon())))
                .toList());
    outline = result.shape().outline().mirrored();
  }

  private static List<Vec2> mirrored(List<Vec2> polygon) {
    return polygon.stream().map(p -> new Vec2(-p.x(), p.y())).toList();
  }

  void addTo(List<Block> blocks) {
    blocks.add(whole("The back", (k, shift, shown) -> layers(back, k, shift, shown).items()));
    corners(blocks);
  }

  /** The back's strain, where there is any, and each rounding near enough to read it. */
  void addStrainTo(List<Block> blocks) {
    if (strain.none()) {
      return;
    }
    blocks.add(whole("Strain on the back", strain::items));
    double deep = deep();
    Map<String, List<CornerPlan>> alike = new LinkedHashMap<>();
    for (CornerPlan c : result.cover().corners()) {
      if (c.treatment() != WrappedPad.Treatment.PLEATS) {
        String key = c.treatment() + " " + Math.round(10 * c.radius());
        alike.computeIfAbsent(key, x -> new ArrayList<>()).add(c);
      }
    }
    for (List<CornerPlan> group : alike.values()) {
      Bounds window = window(group.get(0), 0.55 * deep + 1, deep);
      StrainPaint near = strain.within(window);
      if (!near.none()) {
        double k = WrapMap.scale(window.width(), DETAIL);
        List<Item> items = framed(window, k, near::items);
        String words = "Strain at " + names(group, k) + ": " + near.said();
        blocks.add(WrapMap.captioned(items, DETAIL, window.height() / k, words));
      }
    }
  }

  private static LayerHatching.Drawn layers(
      List<Sheet> sheets, double k, Vec2 shift, List<Vec2> shown) {
    return LayerHatching.of(WrapMap.scaled(sheets, k, shift), shown, LineStyle.TRIM);
  }

  private Block whole(String what, StrainPaint.Painter painter) {
    Bounds b = outline.bounds();
    double k = Math.max(WrapMap.scale(b.width(), WrapMap.WIDE), WrapMap.scale(b.height(), TALLEST));
    Vec2 shift = new Vec2(-b.minX() / k, -b.maxY() / k);
    Path drawn = onPaper(outline, k, shift);
    List<Item> items = new ArrayList<>(painter.items(k, shift, drawn.flattened(CHORD_ERROR)));
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
        what + ", seen from behind, front edge below, " + WrapMap.scaleWords(k));
  }

  private static Path onPaper(Path p, double k, Vec2 shift) {
    return p.scaled(1 / k, 1 / k, 0).translated(shift);
  }

  private double deep() {
    return result.cover().turnUnder().stream().mapToDouble(t -> t).max().orElse(0);
  }

  /** Each kind of corner once, near enough for its layers to be told apart. */
  private void corners(List<Block> blocks) {
    double deep = deep();
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
    boolean pleated = c.pleats() > 0 && c.radius() > deep;
    // Pleats are narrow and alike, so that a few of them are shown larger.
    Bounds window = window(c, pleated ? 0.55 * deep + 1 : 0.95 * deep + 4, deep);
    double k = WrapMap.scale(window.width(), DETAIL);
    int[] most = new int[1];
    List<Item> items =
        framed(
            window,
            k,
            (scale, shift, shown) -> {
              LayerHatching.Drawn drawn =
                  layers(LayerField.within(back, window), scale, shift, shown);
              most[0] = drawn.most();
              return drawn.items();
            });
    blocks.add(
        WrapMap.captioned(
            items,
            DETAIL,
            window.height() / k,
            names(group, k) + ": up to " + most[0] + (most[0] == 1 ? " layer" : " layers")));
  }

  private static String names(List<CornerPlan> group, double k) {
    String also =
        group.size() == 1
            ? ""
            : "; "
                + WrapMap.listed(group.stream().skip(1).map(CornerPlan::name).toList())
                + " likewise or mirrored";
    return group.get(0).name() + " from behind, " + WrapMap.scaleWords(k) + also;
  }

  /** A square about a corner's turn-under. */
  private Bounds window(CornerPlan c, double half, double deep) {
    Vec2 at = onOutline(new Vec2(-c.apex().x(), c.apex().y()));
    return Bounds.of(at.along(inward(at), 0.5 * deep)).grown(half);
  }

  /** What of the back is in a window, at a scale. */
  private List<Item> framed(Bounds window, double k, StrainPaint.Painter painter) {
    Vec2 shift = new Vec2(-window.minX() / k, -window.maxY() / k);
    List<Vec2> base = onPaper(outline, k, shift).flattened(CHORD_ERROR);
    Bounds frame = new Bounds(0, -window.height() / k, window.width() / k, 0);
    List<Item> items = new ArrayList<>(painter.items(k, shift, LayerField.clipped(base, frame)));
    items.addAll(WrapMap.inFrame(base, frame));
    items.add(new Stroke(Path.polygon(LayerField.corners(frame)), LineStyle.FRAME));
    return items;
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
    return sum.times(2 / sum.dot(sum));
  }
}
