package padwright.cover;

import java.util.List;
import padwright.cover.Skeleton.Element;
import padwright.cover.Skeleton.Side;
import padwright.cover.Skeleton.Sweep;
import padwright.geometry.Bounds;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * Counts the layers of covering over a place on the back of the base, by asking which flat points
 * of the cut cover land there: of every strip's turn-under, and of the flaps folded at its corners.
 */
public final class LayerCounter {
  private final List<Vec2> cut;
  private final Skeleton skeleton;
  private final double furthest;
  // Asked for at every staple, so worked out once.
  private final double[] backOut;
  private final Vec2[] along;
  private final double[] length;
  private final Vec2[] middle;
  private final double[] within;

  /** As for {@link WrapProof}: the trimmed cover, and the folds and sections of the solid. */
  public LayerCounter(List<Vec2> cut, Skeleton skeleton) {
    this.cut = cut;
    this.skeleton = skeleton;
    double most = 0;
    Bounds base = skeleton.outline().bounds();
    for (Vec2 p : cut) {
      double dx = Math.max(base.minX() - p.x(), p.x() - base.maxX());
      double dy = Math.max(base.minY() - p.y(), p.y() - base.maxY());
      most = Math.max(most, Math.max(dx, dy));
    }
    furthest = most;
    int n = skeleton.elements().size();
    backOut = new double[n];
    along = new Vec2[n];
    length = new double[n];
    middle = new Vec2[n];
    within = new double[n];
    for (int i = 0; i < n; i++) {
      backOut[i] = skeleton.path(i).out(skeleton.path(i).backStart());
      Segment s = skeleton.elements().get(i).segment();
      middle[i] = s.pointAt(0.5);
      // Neither along a side nor in from it does covering come further than it is long there.
      within[i] = s.length() / 2 + 2 * (furthest + CornerCut.JOINED);
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
      double dx = place.x() - middle[i].x();
      double dy = place.y() - middle[i].y();
      if (dx * dx + dy * dy > within[i] * within[i]) {
        continue;
      }
      Element e = skeleton.elements().get(i);
      if (e instanceof Side side) {
        layers += onSide(i, side, place);
      } else if (e instanceof Sweep sweep) {
        layers += onSweep(i, sweep, place);
      }
    }
    return layers;
  }

  /**
   * Path length at which the covering lies {@code in} inside the base outline, on the back; over a
   * rounded back arris, that at which it comes to lie flat.
   */
  private double level(int i, double in) {
    return skeleton.path(i).backStart() + Math.max(0, in + backOut[i]);
  }

  private int onSide(int i, Side side, Vec2 place) {
    Vec2 v = place.minus(side.from());
    double t = v.dot(along[i]);
    double in = -v.dot(along[i].right());
    if (in < 0) {
      return 0;
    }
    double s = level(i, in);
    // Nothing of the cover lies further out than this, so nothing of it comes further in.
    if (s > furthest + CornerCut.JOINED || t < -furthest || t > length[i] + furthest) {
      return 0;
    }
    int n = skeleton.elements().size();
    int layers = 0;
    double start = edge(Math.floorMod(i - 1, n), false, s);
    double end = edge(i, true, s);
    // Past the slit of a hollow corner the flat covering belongs to the other side.
    if (t >= -start && t <= length[i] + end && ownSide(i, t, s) && covered(flat(i, side, t, s))) {
      layers++;
    }
    return layers
        + atCorner(i, true, t - length[i], s)
        + atCorner(Math.floorMod(i - 1, n), false, -t, s);
  }

  /** What a corner's fold or gusset adds over the back of one of its sides. */
  private int atCorner(int corner, boolean first, double past, double s) {
    Fold fold = skeleton.elements().get(corner).after();
    if (fold == Fold.NONE) {
      return 0;
    }
    CornerFrame f = skeleton.frame(corner);
    if (fold == Fold.GUSSET) {
      // Beside the seam of a gusset its own layer and two allowances lie on the turn-under.
      double fromSlit = s * f.mitre() - past;
      return fromSlit >= 0 && fromSlit < 2 * Gusset.ALLOWANCE ? 2 : 0;
    }
    return flaps(f, fold, first, past, s);
  }

  private boolean ownSide(int i, double t, double s) {
    int before = Math.floorMod(i - 1, skeleton.elements().size());
    boolean afterSlit =
        skeleton.elements().get(before).after() != Fold.GUSSET
            || -t <= s * skeleton.frame(before).mitre();
    boolean beforeSlit =
        skeleton.elements().get(i).after() != Fold.GUSSET
            || t - length[i] <= s * skeleton.frame(i).mitre();
    return afterSlit && beforeSlit;
  }

  private Vec2 flat(int i, Side side, double t, double s) {
    return side.from().along(along[i], t).along(along[i].right(), s);
  }

  private double edge(int corner, boolean first, double s) {
    return skeleton.elements().get(corner).after() == Fold.NONE
        ? 0
        : skeleton.frame(corner).fold(first, s);
  }

  private boolean covered(Vec2 flat) {
    return Polygons.contains(cut, flat);
  }

  /** Layers of a corner's flaps over the back of one of its sides. */
  private int flaps(CornerFrame f, Fold fold, boolean first, double past, double s) {
    double fromFold = f.fold(first, s) - past;
    if (fromFold < 0) {
      return 0;
    }
    int layers = 0;
    double mirrored = f.fold(first, s) + fromFold;
    boolean gathered =
        s - f.path(first).backStart() < CornerCut.JOINED && fromFold < CornerCut.JOINED;
    if (fold == Fold.DOUBLE) {
      layers += doubled(f, first, mirrored, s);
    } else if (fold.firstOver() == first) {
      // Under the strip on top lie both halves of the surplus, as far as they were left.
      boolean inSurplus = mirrored <= f.bisector(first, s);
      if (inSurplus && covered(f.flat(first, mirrored, s))) {
        layers++;
      }
      if (inSurplus && covered(f.acrossBisector(f.flat(first, mirrored, s)))) {
        layers++;
      }
    }
    // Within the gather at the back corner two more layers are counted, as it does not lie flat.
    return gathered && f.turn() > Math.PI / 8 && first ? layers + 2 : layers;
  }

  private int doubled(CornerFrame f, boolean first, double mirrored, double s) {
    FoldMap map = new FoldMap(f, Fold.DOUBLE);
    int layers = 0;
    Vec2 near = f.flat(first, mirrored, s);
    if (mirrored <= f.bisector(first, s) && !map.beyondCrease(first, near) && covered(near)) {
      layers++;
    }
    Vec2 far = map.mirroredAboutCrease(first, near);
    if (!map.beyondCrease(first, near) && covered(far)) {
      layers++;
    }
    return layers;
  }

  private int onSweep(int i, Sweep sweep, Vec2 place) {
    double in = -sweep.out(place);
    if (in < 0) {
      return 0;
    }
    double s = level(i, in);
    if (s > furthest + CornerCut.JOINED) {
      return 0;
    }
    int layers = 0;
    double angle = sweep.angle(place);
    if (sweep.into(angle) <= Math.abs(sweep.turn())
        && sweep.radiusAt(s) > 0
        && covered(sweep.flat(angle, s))) {
      layers++;
    }
    // At a sharp end the corner lies as it does beside a side that touches the curve there.
    Vec2 past = place.minus(sweep.end());
    double toEnd = past.dot(sweep.directionAtEnd());
    if (sweep.after() != Fold.NONE && Math.abs(toEnd) < furthest) {
      layers += atCorner(i, true, toEnd, level(i, past.dot(sweep.directionAtEnd().left())));
    }
    Vec2 start = sweep.flat(sweep.fromAngle(), 0);
    double fromStart = place.minus(start).dot(sweep.directionAtStart());
    int before = Math.floorMod(i - 1, skeleton.elements().size());
    if (skeleton.elements().get(before).after() != Fold.NONE && Math.abs(fromStart) < furthest) {
      double deep = place.minus(start).dot(sweep.directionAtStart().left());
      layers += atCorner(before, false, -fromStart, level(i, deep));
    }
    return layers;
  }
}
