package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/**
 * The piece let in at a hollow corner. The covering is slit there along the bisector and opens; the
 * gusset fills what opens on both walls and is creased along the arris between them. Its seam runs
 * straight from the tip of the slit, and takes its allowance out of the covering: nothing at the
 * tip, {@link #ALLOWANCE} at the trim line.
 *
 * <p>Both walls beside it have one section; where the job asks for two the part is stopped.
 *
 * <p>Its own frame: x across, 0 on the arris; y up, 0 at the tip and negative below it. Seen from
 * the outside.
 *
 * @param corner name of the corner
 * @param slit on the flat cover, from the tip out to the cut line
 * @param seam the two seam lines, bottom to tip to bottom, open
 * @param arris crease along its middle, from the tip to the back arris
 * @param back how far below the tip the back arris lies, mm
 * @param cut closed cut line
 * @param opening slit up its middle, so that its two halves turn under apart
 * @param seamsOnCover the two seam lines on the flat cover
 * @param half the half on the side before the corner in the wall's frame: x from the arris, y path
 *     length; closed polygon up to its seam line
 */
public record Gusset(
    String corner,
    Path slit,
    Path seam,
    Path arris,
    double back,
    Path cut,
    Path opening,
    List<Path> seamsOnCover,
    List<Vec2> half) {
  /** Seam allowance at the trim line, mm; own choice. */
  public static final double ALLOWANCE = 12;

  /** The tip's cut stands this far above the seam, mm: something to hold while sewing. */
  private static final double ABOVE_TIP = 8;

  /** The edge of a gusset is followed in steps no shorter than this, mm. */
  private static final double STEP = 0.5;

  /** The half laid against the wall follows each bend in so many parts. */
  static final int PER_ARC = 24;

  /** Where the covering opens less than this on one wall, mm, it stretches. */
  private static final double OPENS = 0.5;

  public Gusset {
    half = List.copyOf(half);
    seamsOnCover = List.copyOf(seamsOnCover);
  }

  /**
   * How much longer a seam line is on the cover than on the gusset, mm. Where the edge is square
   * they are alike; over a shaped one the arris curves on the flat and the gusset's is drawn
   * straight.
   */
  public double easing() {
    double cover = 0;
    for (Path line : seamsOnCover) {
      cover += line.length() / seamsOnCover.size();
    }
    return cover - seam.length() / 2;
  }

  /** How far the covering falls short of the arris on each wall at a path length. */
  private static double lack(CornerFrame f, double s) {
    return f.fold(true, s) - s * f.mitre();
  }

  /** Path length of the slit's tip. */
  static double tip(CornerFrame f) {
    TautPath path = f.pathBefore();
    double low = path.startX();
    double high = path.backStart();
    if (lack(f, high) <= OPENS) {
      return high;
    }
    for (int i = 0; i < 44; i++) {
      double mid = (low + high) / 2;
      if (lack(f, mid) < OPENS) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return low;
  }

  /** A seam line on the flat cover: from the tip along a strip, seen from one side. */
  static Vec2[] seamLine(CornerFrame f, boolean first) {
    double tip = tip(f);
    double end = f.pathBefore().developed();
    return new Vec2[] {
      f.flat(first, tip * f.mitre(), tip),
      f.flat(first, end * f.mitre() - ALLOWANCE / Math.cos(f.turn() / 2), end)
    };
  }

  /** What of a flat polygon lies on one side's part of a hollow corner, short of the slit. */
  static List<Vec2> beforeSlit(List<Vec2> polygon, CornerFrame f, boolean first) {
    Vec2 past = first ? f.before() : f.after().times(-1);
    Vec2 bisector = f.flat(first, f.mitre(), 1).minus(f.apex());
    Vec2 normal = bisector.left().dot(past) > 0 ? bisector.left() : bisector.right();
    return Polygons.below(polygon, normal, normal.dot(f.apex()));
  }

  private static Path seamPath(CornerFrame f, boolean first) {
    Vec2[] line = seamLine(f, first);
    return Path.line(line[0], line[1]);
  }

  static Gusset of(String corner, CornerFrame f, double grip) {
    TautPath path = f.pathBefore();
    double tip = tip(f);
    double end = path.developed();
    Vec2 slitTip = f.flat(true, tip * f.mitre(), tip);
    Path slit = Path.line(slitTip, f.flat(true, (end + grip) * f.mitre(), end + grip));
    List<Double> levels = new ArrayList<>();
    levels.add(tip);
    for (double s : path.breaks(8)) {
      if (s > levels.get(levels.size() - 1) + STEP && s < path.backStart() - STEP) {
        levels.add(s);
      }
    }
    levels.add(path.backStart());
    levels.add(end);
    List<Vec2> half = new ArrayList<>();
    half.add(new Vec2(0, end));
    half.add(new Vec2(0, tip));
    List<Vec2> right = new ArrayList<>();
    for (double s : levels) {
      right.add(new Vec2(width(f, s, tip, end), s - tip));
    }
    half.add(new Vec2(width(f, tip, tip, end), tip));
    for (double s : path.breaks(PER_ARC)) {
      if (s > tip + 1e-9 && s <= path.backStart()) {
        half.add(new Vec2(width(f, s, tip, end), s));
      }
    }
    half.add(new Vec2(width(f, end, tip, end), end));
    List<Vec2> seam = new ArrayList<>();
    for (int i = right.size() - 1; i >= 0; i--) {
      seam.add(new Vec2(-right.get(i).x(), right.get(i).y()));
    }
    seam.addAll(right.subList(1, right.size()));
    List<Vec2> cut = new ArrayList<>();
    double bottom = end + grip - tip;
    for (Vec2 p : right) {
      double a = allowance(f, p.y() + tip, tip, end);
      cut.add(new Vec2(p.x() + a, p.y()));
    }
    cut.set(0, new Vec2(cut.get(0).x(), 0));
    for (int i = 0; i < cut.size(); i++) {
      // Never narrower than can be held, so that the tip is not cut to a needle.
      cut.set(i, new Vec2(Math.max(cut.get(i).x(), ALLOWANCE / 2), cut.get(i).y()));
    }
    cut.add(0, new Vec2(ALLOWANCE / 2, -ABOVE_TIP));
    cut = new ArrayList<>(CornerFrame.straightened(cut));
    Vec2 last = cut.get(cut.size() - 1);
    cut.add(new Vec2(last.x(), bottom));
    List<Vec2> whole = new ArrayList<>();
    for (Vec2 p : cut) {
      whole.add(new Vec2(-p.x(), p.y()));
    }
    for (int i = cut.size() - 1; i >= 0; i--) {
      whole.add(cut.get(i));
    }
    double back = path.backStart() - tip;
    double joined = Math.min(bottom, back + CornerCut.JOINED);
    return new Gusset(
        corner,
        slit,
        down(Path.polyline(seam)),
        down(Path.line(Vec2.ZERO, new Vec2(0, joined))),
        back,
        anticlockwise(down(Path.polygon(whole))),
        down(Path.line(new Vec2(0, joined), new Vec2(0, bottom))),
        List.of(seamPath(f, true), seamPath(f, false)),
        half);
  }

  /** Levels are counted down from the tip; the piece is drawn with its tip at the top. */
  private static Path down(Path p) {
    return p.rotated(Math.PI);
  }

  private static Path anticlockwise(Path p) {
    return p.signedArea() < 0 ? p.reversed() : p;
  }

  private static double allowance(CornerFrame f, double s, double tip, double end) {
    return ALLOWANCE / Math.cos(f.turn() / 2) * Math.min(1, (s - tip) / (end - tip));
  }

  /** From the arris to the seam at a path length; on the back from where the arris would run on. */
  private static double width(CornerFrame f, double s, double tip, double end) {
    return Math.max(0, lack(f, s)) + allowance(f, s, tip, end);
  }
}
