package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.Skeleton.Element;
import padwright.cover.Skeleton.Side;
import padwright.cover.Skeleton.Sweep;
import padwright.geometry.Bounds;
import padwright.geometry.Boxes;
import padwright.geometry.EdgeBands;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * Counts the layers of covering over a place on the back of the base, by asking which flat points
 * of the cut cover land there: of every strip's turn-under, and of the flaps folded at its corners.
 */
public final class LayerCounter {
  /** A corner that turns more than this, radians, gathers at the back; own choice. */
  static final double GATHERS = Math.PI / 8;

  private final EdgeBands cut;
  private final Skeleton skeleton;
  private final double furthest;
  // Asked for at every staple, so worked out once.
  private final double[] backOut;
  private final Vec2[] along;
  private final double[] length;

  /** About each element's middle as far as its covering may come. */
  private final Boxes about;

  /** As for {@link WrapProof}: the trimmed cover, and the folds and sections of the solid. */
  public LayerCounter(List<Vec2> cut, Skeleton skeleton) {
    this.cut = new EdgeBands(cut);
    this.skeleton = skeleton;
    furthest = CoverReach.of(cut, skeleton);
    int n = skeleton.elements().size();
    backOut = new double[n];
    along = new Vec2[n];
    length = new double[n];
    List<Bounds> boxes = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      backOut[i] = skeleton.path(i).out(skeleton.path(i).backStart());
      Segment s = skeleton.segment(i);
      // Neither along a side nor in from it does covering come further than it is long there.
      double within = s.length() / 2 + 2 * (furthest + CornerCut.JOINED);
      boxes.add(Bounds.of(s.pointAt(0.5)).grown(within));
      if (skeleton.elements().get(i) instanceof Side side) {
        along[i] = side.along();
        length[i] = side.length();
      }
    }
    about = new Boxes(boxes);
  }

  /** Layers over a place of the back, given in the frame of the base seen from the face. */
  public int at(Vec2 place) {
    // Gathered first and looked up after, so that the look-up stands at one place in the code.
    List<Vec2> landing = new ArrayList<>();
    int layers = 0;
    for (int i : about.near(place, 0)) {
      Element e = skeleton.elements().get(i);
      if (e instanceof Side side) {
        layers += onSide(i, side, place, landing);
      } else if (e instanceof Sweep sweep) {
        layers += onSweep(i, sweep, place, landing);
      }
    }
    for (Vec2 flat : landing) {
      if (cut.contains(flat)) {
        layers++;
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

  /** Adds the flat points that land there; returns the layers that lie there whatever the cut. */
  private int onSide(int i, Side side, Vec2 place, List<Vec2> landing) {
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
    double start = edge(Math.floorMod(i - 1, n), false, s);
    double end = edge(i, true, s);
    // Past the slit of a hollow corner the flat covering belongs to the other side.
    if (t >= -start && t <= length[i] + end && ownSide(i, t, s)) {
      landing.add(flat(i, side, t, s));
    }
    // Along the stretches of a passage the flaps of the corners beside it lie over several.
    int after = i;
    double past = t - length[i];
    while (skeleton.goesStraightOn(after) && past > -furthest) {
      after = (after + 1) % n;
      past -= length[after];
    }
    int before = Math.floorMod(i - 1, n);
    double ahead = -t;
    while (skeleton.goesStraightOn(before) && ahead > -furthest) {
      ahead -= length[before];
      before = Math.floorMod(before - 1, n);
    }
    return atCorner(after, true, past, s, landing) + atCorner(before, false, ahead, s, landing);
  }

  /** What a corner's fold or gusset adds over the back of one of its sides. */
  private int atCorner(int corner, boolean first, double past, double s, List<Vec2> landing) {
    Fold fold = skeleton.elements().get(corner).after();
    if (fold == Fold.NONE) {
      return 0;
    }
    CornerFrame f = skeleton.frame(corner);
    if (fold == Fold.GUSSET) {
      return s <= f.pathBefore().developed() ? gusset(f, first, past, s) : 0;
    }
    return flaps(f, fold, first, past, s, landing);
  }

  /**
   * Layers of a gusset's turn-under: its own and two allowances on the covering beside its seam,
   * and its own alone from there to where its halves part.
   */
  private static int gusset(CornerFrame f, boolean first, double past, double s) {
    double fromSlit = s * f.mitre() - past;
    if (fromSlit >= 0) {
      return fromSlit < 2 * Gusset.ALLOWANCE ? 2 : 0;
    }
    return past <= f.fold(first, s) ? 1 : 0;
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

  /** The flat points of a corner's flaps over the back of one of its sides. */
  private static int flaps(
      CornerFrame f, Fold fold, boolean first, double past, double s, List<Vec2> landing) {
    double onFold = f.fold(first, s);
    double fromFold = onFold - past;
    if (fromFold < 0) {
      return 0;
    }
    double mirrored = onFold + fromFold;
    if (fold == Fold.DOUBLE) {
      doubled(f, first, mirrored, s, landing);
    } else if (fold.firstOver() == first && mirrored <= f.bisector(first, s)) {
      // Under the strip on top lie both halves of the surplus, as far as they were left.
      Vec2 near = f.flat(first, mirrored, s);
      landing.add(near);
      landing.add(f.acrossBisector(near));
    }
    // Within the gather at the back corner two more layers are counted, as it does not lie flat.
    boolean gathered =
        s - f.path(first).backStart() < CornerCut.JOINED && fromFold < CornerCut.JOINED;
    return gathered && f.turn() > GATHERS && first ? 2 : 0;
  }

  private static void doubled(
      CornerFrame f, boolean first, double mirrored, double s, List<Vec2> landing) {
    FoldMap map = new FoldMap(f, Fold.DOUBLE);
    Vec2 near = f.flat(first, mirrored, s);
    if (map.beyondCrease(first, near)) {
      return;
    }
    if (mirrored <= f.bisector(first, s)) {
      landing.add(near);
    }
    landing.add(map.mirroredAboutCrease(first, near));
  }

  private int onSweep(int i, Sweep sweep, Vec2 place, List<Vec2> landing) {
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
    if (sweep.into(angle) <= Math.abs(sweep.turn()) && sweep.radiusAt(s) > 0) {
      landing.add(sweep.flat(angle, s));
    }
    // At a sharp end the corner lies as it does beside a side that touches the curve there.
    Vec2 past = place.minus(sweep.end());
    double toEnd = past.dot(sweep.directionAtEnd());
    if (sweep.after() != Fold.NONE && Math.abs(toEnd) < furthest) {
      layers +=
          atCorner(i, true, toEnd, level(i, past.dot(sweep.directionAtEnd().left())), landing);
    }
    Vec2 start = sweep.flat(sweep.fromAngle(), 0);
    double fromStart = place.minus(start).dot(sweep.directionAtStart());
    int before = Math.floorMod(i - 1, skeleton.elements().size());
    if (skeleton.elements().get(before).after() != Fold.NONE && Math.abs(fromStart) < furthest) {
      double deep = place.minus(start).dot(sweep.directionAtStart().left());
      layers += atCorner(before, false, -fromStart, level(i, deep), landing);
    }
    return layers;
  }
}
