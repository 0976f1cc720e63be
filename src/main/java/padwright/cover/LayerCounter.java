package padwright.cover;

import java.util.List;
import padwright.cover.Skeleton.Element;
import padwright.cover.Skeleton.Side;
import padwright.cover.Skeleton.Sweep;
import padwright.geometry.Bounds;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/**
 * Counts the layers of covering over a place on the back of the base, by asking which flat points
 * of the cut cover land there: of every strip's turn-under, and of the flaps folded at its corners.
 */
public final class LayerCounter {
  private final List<Vec2> cut;
  private final Skeleton skeleton;
  private final TautPath path;
  private final double furthest;
  // Asked for at every staple, so worked out once.
  private final double backOut;
  private final Vec2[] along;
  private final double[] length;

  /** As for {@link WrapProof}: the trimmed cover, the folds and the solid. */
  public LayerCounter(List<Vec2> cut, Skeleton skeleton, TautPath path) {
    this.cut = cut;
    this.skeleton = skeleton;
    this.path = path;
    double most = 0;
    Bounds base = skeleton.outline().bounds();
    for (Vec2 p : cut) {
      double dx = Math.max(base.minX() - p.x(), p.x() - base.maxX());
      double dy = Math.max(base.minY() - p.y(), p.y() - base.maxY());
      most = Math.max(most, Math.max(dx, dy));
    }
    furthest = most;
    backOut = path.out(path.backStart());
    int n = skeleton.elements().size();
    along = new Vec2[n];
    length = new double[n];
    for (int i = 0; i < n; i++) {
      if (skeleton.elements().get(i) instanceof Side side) {
        along[i] = side.along();
        length[i] = side.length();
      }
    }
  }

  /** Layers over a place of the back, given in the frame of the base seen from the face. */
  public int at(Vec2 place) {
    int layers = 0;
    for (int i = 0; i < skeleton.elements().size(); i++) {
      Element e = skeleton.elements().get(i);
      if (e instanceof Side side) {
        layers += onSide(i, side, place);
      } else if (e instanceof Sweep sweep) {
        layers += onSweep(sweep, place);
      }
    }
    return layers;
  }

  /**
   * Path length at which the covering lies {@code in} inside the base outline, on the back; over a
   * rounded back arris, that at which it comes to lie flat.
   */
  private double level(double in) {
    return path.backStart() + Math.max(0, in + backOut);
  }

  private int onSide(int i, Side side, Vec2 place) {
    Vec2 v = place.minus(side.from());
    double t = v.dot(along[i]);
    double in = -v.dot(along[i].right());
    if (in < 0) {
      return 0;
    }
    double s = level(in);
    // Nothing of the cover lies further out than this, so nothing of it comes further in.
    if (s > furthest + CornerCut.JOINED || t < -furthest || t > length[i] + furthest) {
      return 0;
    }
    int n = skeleton.elements().size();
    int layers = 0;
    double start = edge(Math.floorMod(i - 1, n), s);
    double end = edge(i, s);
    if (t >= -start && t <= length[i] + end && covered(flat(i, side, t, s))) {
      layers++;
    }
    if (side.after() != Fold.NONE) {
      layers += flaps(skeleton.frame(i), side.after(), true, t - length[i], s);
    }
    if (skeleton.previous(i).after() != Fold.NONE) {
      int before = Math.floorMod(i - 1, n);
      layers += flaps(skeleton.frame(before), skeleton.previous(i).after(), false, -t, s);
    }
    return layers;
  }

  private Vec2 flat(int i, Side side, double t, double s) {
    return side.from().along(along[i], t).along(along[i].right(), s);
  }

  private double edge(int corner, double s) {
    return skeleton.elements().get(corner).after() == Fold.NONE
        ? 0
        : skeleton.frame(corner).fold(path, s);
  }

  private boolean covered(Vec2 flat) {
    return Polygons.contains(cut, flat);
  }

  /** Layers of a corner's flaps over the back of one of its sides. */
  private int flaps(CornerFrame f, Fold fold, boolean first, double past, double s) {
    double fromFold = f.fold(path, s) - past;
    if (fromFold < 0) {
      return 0;
    }
    int layers = 0;
    double mirrored = f.fold(path, s) + fromFold;
    boolean gathered = s - path.backStart() < CornerCut.JOINED && fromFold < CornerCut.JOINED;
    if (fold == Fold.DOUBLE) {
      layers += doubled(f, first, mirrored, s);
    } else if (fold.firstOver() == first) {
      // Under the strip on top lie both halves of the surplus, as far as they were left.
      boolean inSurplus = mirrored <= s * f.mitre();
      if (inSurplus && covered(f.flat(first, mirrored, s))) {
        layers++;
      }
      if (inSurplus && covered(f.flat(!first, mirrored, s))) {
        layers++;
      }
    }
    // Within the gather at the back corner two more layers are counted, as it does not lie flat.
    return gathered && f.turn() > Math.PI / 8 && first ? layers + 2 : layers;
  }

  private int doubled(CornerFrame f, boolean first, double mirrored, double s) {
    FoldMap map = new FoldMap(f, Fold.DOUBLE, path);
    int layers = 0;
    Vec2 near = f.flat(first, mirrored, s);
    if (mirrored <= s * f.mitre() && !map.beyondCrease(first, near) && covered(near)) {
      layers++;
    }
    Vec2 far = map.mirroredAboutCrease(first, near);
    if (!map.beyondCrease(first, near) && covered(far)) {
      layers++;
    }
    return layers;
  }

  private int onSweep(Sweep sweep, Vec2 place) {
    Vec2 v = place.minus(sweep.centre());
    double into = v.angle() - sweep.fromAngle();
    into -= 2 * Math.PI * Math.floor(into / (2 * Math.PI));
    double in = sweep.radius() - v.length();
    if (into > sweep.turn() || in < 0) {
      return 0;
    }
    double s = level(in);
    Vec2 flat = sweep.centre().along(v.unit(), sweep.radius() + s);
    return covered(flat) ? 1 : 0;
  }
}
