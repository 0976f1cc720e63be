package padwright.export;

import java.util.ArrayList;
import java.util.List;
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
    for (int i = 0; i < walls.size(); i++) {
      Wall w = walls.get((front + i) % walls.size());
      blocks.add(block(w, k));
    }
  }

  private static Bounds bounds(Wall w) {
    return Path.polygon(w.outline()).bounds();
  }

  private Block block(Wall w, double most) {
    Bounds b = bounds(w);
    double k = most;
    List<Item> items = new ArrayList<>();
    double width = b.width() / k;
    boolean broken = width > HALF_ROW && w.plain();
    if (broken) {
      double part = (HALF_ROW - BREAK) / 2 * k;
      items.addAll(part(w, new Bounds(b.minX(), b.minY(), b.minX() + part, b.maxY()), k, 0));
      double right = b.maxX() - part;
      items.addAll(
          part(w, new Bounds(right, b.minY(), b.maxX(), b.maxY()), k, (HALF_ROW + BREAK) / 2));
      width = HALF_ROW;
    } else {
      k = Math.max(k, WrapMap.scale(b.width(), ROW));
      width = b.width() / k;
      items.addAll(part(w, b, k, 0));
    }
    String words =
        w.name()
            + ", from outside, 1 : "
            + PieceNotes.plainNumber(k)
            + (broken ? ", broken in the middle" : "")
            + said(w);
    return WrapMap.captionedBlock(items, Math.max(width, 50), b.height() / k, words);
  }

  private static List<Item> part(Wall w, Bounds window, double k, double x) {
    Vec2 shift = new Vec2(x - window.minX() / k, -window.maxY() / k);
    List<Sheet> sheets = WrapMap.scaled(LayerField.within(w.sheets(), window), k, shift);
    List<Item> items = new ArrayList<>(LayerHatching.of(sheets, LineStyle.MARK, LineStyle.MARK));
    for (Sheet s : LayerField.within(List.of(new Sheet(w.outline(), 1)), window)) {
      items.add(
          new Stroke(
              Path.polygon(WrapMap.scaled(List.of(s), k, shift).get(0).polygon()),
              LineStyle.SOLID));
    }
    for (List<Vec2> g : w.gusset()) {
      for (Sheet s : LayerField.within(List.of(new Sheet(g, 1)), window)) {
        items.add(
            new Stroke(
                Path.polygon(WrapMap.scaled(List.of(s), k, shift).get(0).polygon()),
                LineStyle.SEAM));
      }
    }
    return items;
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
      s.append("; a gusset inside the seam line");
    }
    if (w.eased() > 0) {
      s.append("; eased ").append(percent(w.eased())).append(", the covering takes ");
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

  private static String percent(double fraction) {
    return PieceNotes.plainNumber(Math.round(1000 * fraction) / 10.0) + " %";
  }
}
