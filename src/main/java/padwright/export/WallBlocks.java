package padwright.export;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padwright.cover.LaidCover;
import padwright.cover.LaidCover.Sheet;
import padwright.cover.LaidCover.Wall;
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
  private static final double HALF_ROW = 86;

  /** A side of many pleats may take a whole row. */
  private static final double ROW = 180;

  private static final double BREAK = 4;
  private static final double LEAST_WIDE = 50;

  /** Sides that differ by less are drawn alike, mm. */
  private static final double SAME = 0.05;

  private final PartResult result;
  private final List<Wall> walls;

  WallBlocks(PartResult result, LaidCover laid) {
    this.result = result;
    walls = laid.walls(result.shape().ends());
  }

  void addTo(List<Block> blocks) {
    if (walls.isEmpty()) {
      return;
    }
    int front = 0;
    for (int i = 0; i < walls.size(); i++) {
      front = walls.get(i).name().equals("front") ? i : front;
    }
    double tall = walls.stream().mapToDouble(w -> bounds(w).height()).max().orElse(0);
    double k = WrapMap.scale(tall, TALLEST);
    Map<List<Object>, List<Wall>> alike = new LinkedHashMap<>();
    for (int i = 0; i < walls.size(); i++) {
      Wall w = walls.get((front + i) % walls.size());
      alike.computeIfAbsent(look(w, k), x -> new ArrayList<>()).add(w);
    }
    alike.values().forEach(group -> blocks.add(block(group, k)));
  }

  /** What a side looks like and says: sides that agree in it share one picture. */
  private List<Object> look(Wall w, double most) {
    List<Object> look = new ArrayList<>();
    look.add(said(w));
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

  private Block block(List<Wall> group, double most) {
    Wall w = group.get(0);
    Bounds b = bounds(w);
    double k = most;
    List<Item> items = new ArrayList<>();
    double width = b.width() / k;
    boolean broken = broken(w, k);
    double tall = b.height() / k;
    if (broken) {
      double part = (HALF_ROW - BREAK) / 2;
      items.addAll(part(w, new Bounds(b.minX(), b.minY(), b.minX() + part * k, b.maxY()), k, 0));
      double right = b.maxX() - part * k;
      items.addAll(part(w, new Bounds(right, b.minY(), b.maxX(), b.maxY()), k, part + BREAK));
      items.add(breakLine(part + BREAK / 4, tall));
      items.add(breakLine(part + BREAK * 3 / 4, tall));
      width = HALF_ROW;
    } else {
      k = Math.max(k, WrapMap.scale(b.width(), ROW));
      width = b.width() / k;
      tall = b.height() / k;
      items.addAll(part(w, b, k, 0));
    }
    String words =
        WrapMap.listed(group.stream().map(Wall::name).toList())
            + ", from outside, "
            + WrapMap.scaleWords(k)
            + (broken ? ", broken in the middle" : "")
            + said(w);
    return WrapMap.captioned(items, Math.max(width, LEAST_WIDE), tall, words);
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

  private static List<Item> part(Wall w, Bounds window, double k, double x) {
    Vec2 shift = new Vec2(x - window.minX() / k, -window.maxY() / k);
    Bounds frame = new Bounds(x, -window.height() / k, x + window.width() / k, 0);
    List<Sheet> sheets = WrapMap.scaled(LayerField.within(w.sheets(), window), k, shift);
    List<Vec2> whole = onPaper(w.outline(), k, shift);
    List<Item> items =
        new ArrayList<>(
            LayerHatching.of(sheets, LayerField.clipped(whole, frame), LineStyle.MARK).items());
    items.addAll(WrapMap.inFrame(whole, frame.grown(1e-6)));
    for (List<Vec2> g : w.gusset()) {
      List<Vec2> seen = LayerField.clipped(onPaper(g, k, shift), frame);
      if (seen.size() >= 3) {
        items.add(new Stroke(Path.polygon(seen), LineStyle.SEAM));
      }
    }
    return items;
  }

  private static List<Vec2> onPaper(List<Vec2> polygon, double k, Vec2 shift) {
    return polygon.stream().map(p -> p.times(1 / k).plus(shift)).toList();
  }

  /** How the side ends, and what its covering has to give. */
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
    if (w.eased() > 0) {
      s.append("; eased ").append(percent(w.eased())).append(" at the back arris");
      if (w.easedUnder() > w.eased()) {
        s.append(" and ").append(percent(w.easedUnder())).append(" at the trim line");
      }
      s.append(", the covering takes ");
      s.append(percent(result.spec().covering().ease()));
    }
    if (w.stretched() > 0) {
      double takes =
          Math.min(
              result.spec().covering().stretchAlong(), result.spec().covering().stretchAcross());
      s.append("; stretched ")
          .append(Double.isInfinite(w.stretched()) ? "more than any cloth" : percent(w.stretched()))
          .append(", the covering takes ")
          .append(percent(takes));
    }
    return s.toString();
  }

  static String percent(double fraction) {
    return PieceNotes.plainNumber(Math.round(1000 * fraction) / 10.0) + " %";
  }
}
