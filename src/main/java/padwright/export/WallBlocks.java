package padwright.export;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padwright.cover.LaidCover;
import padwright.cover.LaidCover.Wall;
import padwright.cover.StrainField;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.WrapMap.Block;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PartResult;
import padwright.shape.EdgeEnds.EdgeEnd;

/** The sides of a wrap map, unrolled one by one; a long plain one is broken in its middle. */
final class WallBlocks {
  private static final double TALLEST = 26;

  /** Steps of strain lie closer than layers do. */
  private static final double STRAINED = 52;

  private static final double HALF_ROW = 86;

  /** A side of many pleats may take a whole row. */
  private static final double ROW = 180;

  private static final double BREAK = 4;
  private static final double LEAST_WIDE = 50;

  /** Sides that differ by less are drawn alike, mm. */
  private static final double SAME = 0.05;

  private final PartResult result;
  private final StrainField strain;
  private final List<Wall> walls;

  /** Sides that look alike, in the order they are drawn, and the scale that they are drawn at. */
  private final Map<List<Object>, List<Wall>> alike = new LinkedHashMap<>();

  private double tall;

  WallBlocks(PartResult result, LaidCover laid, StrainField strain) {
    this.result = result;
    this.strain = strain;
    walls = laid.walls();
    if (!walls.isEmpty()) {
      group();
    }
  }

  private void group() {
    int front = 0;
    for (int i = 0; i < walls.size(); i++) {
      front = walls.get(i).name().equals("front") ? i : front;
    }
    tall = walls.stream().mapToDouble(w -> bounds(w).height()).max().orElse(0);
    double scale = WrapMap.scale(tall, TALLEST);
    for (int i = 0; i < walls.size(); i++) {
      Wall w = walls.get((front + i) % walls.size());
      alike.computeIfAbsent(look(w, scale), x -> new ArrayList<>()).add(w);
    }
  }

  void addTo(List<Block> blocks) {
    for (List<Wall> group : alike.values()) {
      Wall w = group.get(0);
      String gives = strain.on(w).isEmpty() ? gives(strain.of(w)) : "";
      blocks.add(block(group, TALLEST, "", said(w) + gives, window -> layers(w, window)));
    }
  }

  /** Each side that the covering has to give on. */
  void addStrainTo(List<Block> blocks) {
    for (List<Wall> group : alike.values()) {
      Wall w = group.get(0);
      StrainPaint paint = new StrainPaint(strain.on(w));
      if (!paint.none()) {
        String flaps =
            paint.flaps() > 0 ? "; flaps under the folds up to " + percent(paint.flaps()) : "";
        String words = gives(strain.of(w)) + flaps;
        blocks.add(
            block(group, STRAINED, "Strain of ", words, window -> paint.within(window)::items));
      }
    }
  }

  /** What is to be seen in a window of a side. */
  private interface Seen {
    StrainPaint.Painter in(Bounds window);
  }

  private static StrainPaint.Painter layers(Wall w, Bounds window) {
    return (k, shift, shown) ->
        LayerHatching.of(
                WrapMap.scaled(LayerField.within(w.sheets(), window), k, shift),
                shown,
                LineStyle.MARK)
            .items();
  }

  /** What a side looks like and says: sides that agree in it share one picture. */
  private List<Object> look(Wall w, double most) {
    List<Object> look = new ArrayList<>();
    look.add(said(w));
    look.add(gives(strain.of(w)));
    boolean broken = broken(w, most);
    double half = w.length() / 2;
    // The two ends of a broken side look the same whatever lies between them.
    look.add(broken ? 0L : rounded(w.length()));
    List<List<Vec2>> all = new ArrayList<>(w.gusset());
    all.add(w.outline());
    w.sheets().forEach(s -> all.add(s.polygon()));
    for (List<Vec2> polygon : all) {
      for (Vec2 p : polygon) {
        look.add(rounded(broken && p.x() > half ? p.x() - w.length() : p.x()));
        look.add(rounded(p.y()));
      }
      look.add(polygon.size());
    }
    w.sheets().forEach(s -> look.add(s.layers()));
    return look;
  }

  private static long rounded(double mm) {
    return Math.round(mm / SAME);
  }

  private static boolean broken(Wall w, double k) {
    return bounds(w).width() / k > HALF_ROW && w.plain();
  }

  private static Bounds bounds(Wall w) {
    return Path.polygon(w.outline()).bounds();
  }

  private Block block(List<Wall> group, double room, String what, String said, Seen seen) {
    Wall w = group.get(0);
    Bounds b = bounds(w);
    double k = WrapMap.scale(tall, room);
    List<Item> items = new ArrayList<>();
    double width = b.width() / k;
    boolean broken = broken(w, k);
    double high = b.height() / k;
    if (broken) {
      double part = (HALF_ROW - BREAK) / 2;
      items.addAll(
          part(w, new Bounds(b.minX(), b.minY(), b.minX() + part * k, b.maxY()), k, 0, seen));
      double right = b.maxX() - part * k;
      items.addAll(part(w, new Bounds(right, b.minY(), b.maxX(), b.maxY()), k, part + BREAK, seen));
      items.add(breakLine(part + BREAK / 4, high));
      items.add(breakLine(part + BREAK * 3 / 4, high));
      width = HALF_ROW;
    } else {
      k = Math.max(k, WrapMap.scale(b.width(), ROW));
      width = b.width() / k;
      high = b.height() / k;
      items.addAll(part(w, b, k, 0, seen));
    }
    String words =
        what
            + WrapMap.listed(group.stream().map(Wall::name).toList())
            + ", from outside, "
            + WrapMap.scaleWords(k)
            + (broken ? ", broken in the middle" : "")
            + said;
    return WrapMap.captioned(items, Math.max(width, LEAST_WIDE), high, words);
  }

  /** A zigzag down the height of a broken side. */
  private static Item breakLine(double x, double tall) {
    return new Stroke(
        Path.polyline(
            new Vec2(x, 0),
            new Vec2(x, -0.4 * tall),
            new Vec2(x - 0.7, -0.45 * tall),
            new Vec2(x + 0.7, -0.55 * tall),
            new Vec2(x, -0.6 * tall),
            new Vec2(x, -tall)),
        LineStyle.DIMENSION);
  }

  private static List<Item> part(Wall w, Bounds window, double k, double x, Seen seen) {
    Vec2 shift = new Vec2(x - window.minX() / k, -window.maxY() / k);
    Bounds frame = new Bounds(x, -window.height() / k, x + window.width() / k, 0);
    List<Vec2> whole = onPaper(w.outline(), k, shift);
    List<Item> items =
        new ArrayList<>(seen.in(window).items(k, shift, LayerField.clipped(whole, frame)));
    items.addAll(WrapMap.inFrame(whole, frame.grown(1e-6)));
    for (List<Vec2> g : w.gusset()) {
      List<Vec2> there = LayerField.clipped(onPaper(g, k, shift), frame);
      if (there.size() >= 3) {
        items.add(new Stroke(Path.polygon(there), LineStyle.SEAM));
      }
    }
    return items;
  }

  private static List<Vec2> onPaper(List<Vec2> polygon, double k, Vec2 shift) {
    return polygon.stream().map(p -> p.times(1 / k).plus(shift)).toList();
  }

  /** How the side ends. */
  private String said(Wall w) {
    StringBuilder s = new StringBuilder();
    EdgeEnd end = result.shape().ends().of(w.name());
    if (end.bare()) {
      s.append(": left bare");
    } else if (!end.turned()) {
      s.append(": glued to the side, cut off at the back");
    }
    if (!w.gusset().isEmpty()) {
      s.append("; a gusset beyond the seam line");
    }
    return s.toString();
  }

  /** What the covering of a side has to give. */
  private String gives(StrainField.OfSide most) {
    StringBuilder s = new StringBuilder();
    if (most.eased() > 0 || most.easedUnder() > 0) {
      s.append("; eased ").append(percent(most.eased())).append(" at the back arris");
      if (most.easedUnder() > most.eased()) {
        s.append(" and ").append(percent(most.easedUnder()));
        s.append(most.atTrim() ? " at the trim line" : " on the back");
      }
      s.append(taken(Math.max(most.eased(), most.easedUnder()), WrapMap.easeTaken(result)));
    }
    if (most.stretched() > 0) {
      s.append("; stretched up to ")
          .append(
              Double.isInfinite(most.stretched())
                  ? "what no cloth takes"
                  : percent(most.stretched()));
      s.append(taken(most.stretched(), WrapMap.stretchTaken(result)));
    }
    return s.toString();
  }

  private static String taken(double most, double takes) {
    return (most > takes ? ", too much: the covering takes " : ", the covering takes ")
        + percent(takes);
  }

  static String percent(double fraction) {
    return PieceNotes.plainNumber(Math.round(1000 * fraction) / 10.0) + " %";
  }
}
