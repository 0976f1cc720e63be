package padwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Bounds;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * How far the lines that run along a rectangular piece lie from its cut edges, in words: what a
 * maker needs to draw them with a straight edge.
 */
final class EdgeOffsets {
  private static final List<String> SIDES = List.of("front", "right", "back", "left");

  /** mm; lines nearer to parallel than a pencil's width. */
  private static final double PARALLEL = 0.1;

  private EdgeOffsets() {}

  /** One sentence where all sides are alike, else one a side that has any. */
  static List<String> of(PieceLines lines) {
    List<String> perSide = new ArrayList<>();
    for (int side = 0; side < 4; side++) {
      String trim = offsets(lines, side, LineStyle.TRIM);
      String fold = offsets(lines, side, LineStyle.FOLD);
      List<String> said = new ArrayList<>();
      if (!trim.isEmpty()) {
        said.add("trim line " + trim);
      }
      if (!fold.isEmpty()) {
        said.add("fold lines " + fold);
      }
      perSide.add(String.join(", ", said));
    }
    if (perSide.stream().distinct().count() == 1) {
      return perSide.get(0).isEmpty()
          ? List.of()
          : List.of("From every cut edge: " + perSide.get(0));
    }
    List<String> list = new ArrayList<>();
    for (int side = 0; side < 4; side++) {
      int first = perSide.indexOf(perSide.get(side));
      if (first == side && !perSide.get(side).isEmpty()) {
        String names = SIDES.get(side);
        for (int other = side + 1; other < 4; other++) {
          if (perSide.get(other).equals(perSide.get(side))) {
            names += " and " + SIDES.get(other);
          }
        }
        list.add("From the " + names + " cut edge: " + perSide.get(side));
      }
    }
    return list;
  }

  private static String offsets(PieceLines lines, int side, LineStyle style) {
    Bounds b = lines.bounds();
    boolean level = side % 2 == 0;
    double across = level ? b.height() : b.width();
    double middle = level ? b.centre().x() : b.centre().y();
    boolean atMax = side == 2 || side == (lines.mirrored() ? 3 : 1);
    TreeSet<Long> tenths = new TreeSet<>();
    for (Stroke s : lines.strokes()) {
      if (s.style() != style) {
        continue;
      }
      for (Segment g : s.path().segments()) {
        Vec2 d = g.end().minus(g.start());
        double off = Math.abs(level ? d.y() : d.x());
        double v = level ? g.start().y() : g.start().x();
        double min = level ? b.minY() : b.minX();
        double max = level ? b.maxY() : b.maxX();
        double from = atMax ? max - v : v - min;
        double p = level ? g.start().x() : g.start().y();
        double q = level ? g.end().x() : g.end().y();
        // A line that does not pass the middle of its side is a corner's, not the side's.
        boolean sides = Math.min(p, q) < middle && middle < Math.max(p, q);
        if (!g.isArc() && off < PARALLEL && sides && from < across / 2) {
          tenths.add(Math.round(from * 10));
        }
      }
    }
    return String.join(", ", tenths.stream().map(t -> Sizes.mm(t / 10.0)).toList());
  }
}
