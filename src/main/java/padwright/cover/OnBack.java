package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.Skeleton.Sweep;
import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/** Takes sheets from their place on the flat strip to their place on the back of the base. mm. */
final class OnBack {
  /** A point this near to where the back begins, mm, begins there. */
  private static final double AT_BACK = 1e-9;

  private OnBack() {}

  /**
   * A sheet of a side.
   *
   * @param frame its start, the way along it and the way in from it
   */
  static List<Vec2> placed(TautPath path, List<Vec2> strip, Vec2[] frame) {
    List<Vec2> in = inwards(path, strip);
    in.replaceAll(p -> frame[0].along(frame[1], p.x()).along(frame[2], p.y()));
    return in;
  }

  /** A flap beside a corner, seen from one of its sides. */
  static List<Vec2> placed(CornerFrame f, boolean first, List<Vec2> flap) {
    Vec2 past = first ? f.before() : f.after().times(-1);
    Vec2 in = first ? f.before().left() : f.after().left();
    return placed(f.path(first), flap, new Vec2[] {f.apex(), past, in});
  }

  /** A rounding's own covering: x is the angle into it. */
  static List<Vec2> placed(TautPath path, Sweep sweep, List<Vec2> strip) {
    List<Vec2> in = inwards(path, strip);
    in.replaceAll(p -> sweep.flat(sweep.at(p.x()), -p.y()));
    return in;
  }

  /**
   * The back, in from the edge, for path lengths out from it. Over a rounded back arris everything
   * from the edge to where the covering comes to lie flat is as it is there.
   */
  private static List<Vec2> inwards(TautPath path, List<Vec2> polygon) {
    double begins = path.backStart();
    double round = -path.out(begins);
    List<Vec2> in = new ArrayList<>(polygon.size() + 4);
    for (int i = 0; i < polygon.size(); i++) {
      Vec2 p = polygon.get(i);
      Vec2 last = polygon.get((i + polygon.size() - 1) % polygon.size());
      Vec2 next = polygon.get((i + 1) % polygon.size());
      boolean at = round > 0 && atBack(p, begins);
      if (at && atBack(last, begins)) {
        in.add(new Vec2(p.x(), 0));
      }
      in.add(new Vec2(p.x(), p.y() - begins + round));
      if (at && atBack(next, begins)) {
        in.add(new Vec2(p.x(), 0));
      }
    }
    return in;
  }

  private static boolean atBack(Vec2 p, double begins) {
    return Math.abs(p.y() - begins) < AT_BACK;
  }
}
