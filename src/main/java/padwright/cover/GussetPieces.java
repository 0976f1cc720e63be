package padwright.cover;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/** Draws the pieces of a gusset about its seam lines: allowances, cut lines, what is slit. mm. */
final class GussetPieces {
  /** The tip's cut stands this far above the seam, mm: something to hold while sewing. */
  private static final double ABOVE_TIP = 8;

  /** Seam allowance down the arris where two halves are sewn together, mm; own choice. */
  static final double DOWN_THE_ARRIS = 8;

  /** A line is drawn through no more points than keep it this near, mm. */
  private static final double DRAWN = 0.003;

  private final GussetHalf half;
  private final double backStart;
  private final double turn;
  private final double grip;

  /**
   * @param backStart path length at which the back begins
   * @param turn of the corner, radians
   * @param grip how far the cut line lies beyond the trim line
   */
  GussetPieces(GussetHalf half, double backStart, double turn, double grip) {
    this.half = half;
    this.backStart = backStart;
    this.turn = turn;
    this.grip = grip;
  }

  /** One piece, creased down its middle. */
  Gusset.Piece whole(GussetHalf.Straight s) {
    List<Vec2> right = new ArrayList<>();
    List<Vec2> edge = new ArrayList<>();
    edge.add(new Vec2(Gusset.ALLOWANCE / 2, -ABOVE_TIP));
    for (int i : kept(s.seam())) {
      Vec2 p = s.seam().get(i);
      right.add(p);
      // Never narrower than can be held, so that the tip is not cut to a needle.
      edge.add(new Vec2(Math.max(p.x() + allowance(i), Gusset.ALLOWANCE / 2), p.y()));
    }
    Vec2 last = edge.get(edge.size() - 1);
    edge.add(new Vec2(last.x(), last.y() + grip));
    double bottom = s.down().get(s.down().size() - 1) + grip;
    List<Vec2> seam = mirrored(right);
    Collections.reverse(seam);
    seam.addAll(right.subList(1, right.size()));
    List<Vec2> cut = mirrored(edge);
    cut.add(new Vec2(0, bottom));
    for (int i = edge.size() - 1; i >= 0; i--) {
      cut.add(edge.get(i));
    }
    double joined = Math.min(bottom, half.along(backStart) + CornerCut.JOINED);
    return new Gusset.Piece(
        Path.polyline(down(seam)),
        Path.polyline(down(List.of(Vec2.ZERO, new Vec2(0, joined)))),
        closed(cut),
        Optional.of(Path.polyline(down(List.of(new Vec2(0, joined), new Vec2(0, bottom))))));
  }

  /** Two pieces, that of the side before the corner first. */
  List<Gusset.Piece> halves() {
    int n = half.level().size();
    List<Vec2> arris = half.arris();
    // A line that leans is moved by as much more that its allowance is nowhere less.
    double steepest = 1;
    for (int i = 1; i < n; i++) {
      Vec2 step = arris.get(i).minus(arris.get(i - 1));
      steepest = Math.max(steepest, step.length() / step.y());
    }
    double beside = DOWN_THE_ARRIS * steepest;
    List<Vec2> right = new ArrayList<>();
    List<Vec2> edge = new ArrayList<>();
    edge.add(new Vec2(Gusset.ALLOWANCE / 2, -ABOVE_TIP));
    for (int i : kept(half.seam())) {
      Vec2 p = half.seam().get(i);
      right.add(p);
      edge.add(
          new Vec2(Math.max(p.x() + allowance(i), arris.get(i).x() + Gusset.ALLOWANCE / 2), p.y()));
    }
    double bottom = right.get(right.size() - 1).y() + grip;
    edge.add(new Vec2(edge.get(edge.size() - 1).x(), bottom));
    double joined = Math.min(bottom, backStart - half.level().get(0) + CornerCut.JOINED);
    List<Vec2> sewn = new ArrayList<>();
    List<Vec2> inner = new ArrayList<>();
    inner.add(new Vec2(-beside, -ABOVE_TIP));
    for (int i : kept(arris)) {
      Vec2 p = arris.get(i);
      if (p.y() < joined) {
        sewn.add(p);
        inner.add(new Vec2(p.x() - beside, p.y()));
      }
    }
    // Past the back arris the halves part, so there is no allowance there.
    double parts = arris.get(n - 1).x();
    sewn.add(new Vec2(parts, joined));
    inner.add(new Vec2(parts - beside, joined));
    inner.add(new Vec2(parts, joined));
    inner.add(new Vec2(parts, bottom));
    for (int i = inner.size() - 1; i >= 0; i--) {
      edge.add(inner.get(i));
    }
    return List.of(
        piece(mirrored(right), mirrored(sewn), mirrored(edge)), piece(right, sewn, edge));
  }

  private static Gusset.Piece piece(List<Vec2> seam, List<Vec2> arris, List<Vec2> cut) {
    return new Gusset.Piece(
        Path.polyline(down(seam)), Path.polyline(down(arris)), closed(cut), Optional.empty());
  }

  /** Seam allowance of a rung: nothing at the tip, all of it at the trim line. */
  private double allowance(int rung) {
    List<Double> level = half.level();
    double tip = level.get(0);
    double end = level.get(level.size() - 1);
    return Gusset.ALLOWANCE / Math.cos(turn / 2) * (level.get(rung) - tip) / (end - tip);
  }

  /** The points that a line cannot do without. */
  private static List<Integer> kept(List<Vec2> line) {
    List<Integer> kept = new ArrayList<>();
    kept.add(0);
    keep(line, 0, line.size() - 1, kept);
    return kept;
  }

  private static void keep(List<Vec2> line, int from, int to, List<Integer> kept) {
    Vec2 along = line.get(to).minus(line.get(from)).unit();
    double most = DRAWN;
    int at = -1;
    for (int i = from + 1; i < to; i++) {
      double away = Math.abs(along.cross(line.get(i).minus(line.get(from))));
      if (away > most) {
        most = away;
        at = i;
      }
    }
    if (at < 0) {
      kept.add(to);
      return;
    }
    keep(line, from, at, kept);
    keep(line, at, to, kept);
  }

  private static List<Vec2> mirrored(List<Vec2> points) {
    return new ArrayList<>(points.stream().map(p -> new Vec2(-p.x(), p.y())).toList());
  }

  /** Levels are counted down from the tip; a piece is drawn with its tip at the top. */
  private static List<Vec2> down(List<Vec2> points) {
    return points.stream().map(p -> new Vec2(p.x(), -p.y())).toList();
  }

  private static Path closed(List<Vec2> cut) {
    Path line = Path.polygon(down(CornerFrame.straightened(cut)));
    return line.signedArea() < 0 ? line.reversed() : line;
  }
}
