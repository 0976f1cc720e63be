package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.cover.CornerPlan.Sense;
import padwright.cover.Facet.Frame;
import padwright.cover.Skeleton.Element;
import padwright.cover.Skeleton.Side;
import padwright.cover.Skeleton.Sweep;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;
import padwright.shape.TautPath;

/**
 * Cuts the flat cover along its folds and says where each part goes, so that another program can
 * wrap it and check. The face is one facet; each side has one for every straight or round piece of
 * its section; each folded corner has its flaps.
 */
public final class FacetMaker {
  /** A fold that strays less than this, mm, is upright but for the covering's own bend. */
  private static final double UPRIGHT = 1;

  private static final double LEAST_AREA = 1e-3;

  private final List<Vec2> cut;
  private final Skeleton skeleton;
  private final List<Facet> facets = new ArrayList<>();

  private FacetMaker(List<Vec2> cut, Skeleton skeleton) {
    this.cut = cut;
    this.skeleton = skeleton;
  }

  /** The facets of a cover at its trim line, stretch allowance undone. */
  public static List<Facet> of(List<Vec2> cut, Skeleton skeleton) {
    FacetMaker maker = new FacetMaker(cut, skeleton);
    maker.face();
    for (int i = 0; i < skeleton.elements().size(); i++) {
      Element e = skeleton.elements().get(i);
      if (e instanceof Side side) {
        maker.strip(i, side);
      } else if (e instanceof Sweep sweep) {
        maker.sweep(i, sweep);
      }
    }
    return List.copyOf(maker.facets);
  }

  private void face() {
    List<Vec2> outline = skeleton.flatTop().map(p -> p.flattened(0.01)).orElse(List.of());
    double z = skeleton.path(0).neutral().start().y();
    Frame frame = new Frame(Vec2.ZERO, new Vec2(1, 0), new Vec2(0, 1));
    add(
        "face",
        outline,
        new Facet.Plane(frame, new Vec3(0, 0, z), new Vec3(1, 0, 0), new Vec3(0, 1, 0), true),
        1,
        Sense.OUTWARD);
  }

  private double fold(int i, boolean first, double s) {
    int k = Math.floorMod(i, skeleton.elements().size());
    return skeleton.elements().get(k).after() == Fold.NONE ? 0 : skeleton.frame(k).fold(first, s);
  }

  private void strip(int i, Side side) {
    boolean over =
        side.after() == Fold.SINGLE_FIRST_OVER
            || side.after() == Fold.DOUBLE
            || skeleton.previous(i).after() == Fold.SINGLE_SECOND_OVER
            || skeleton.previous(i).after() == Fold.DOUBLE;
    for (SectionBand band : SectionBand.of(skeleton.path(i))) {
      double width = side.length() + fold(i - 1, false, band.from()) + fold(i, true, band.from());
      if (width < 0) {
        // Over an edge shaped deeper than a corner's rounding the facet has not begun yet.
        continue;
      }
      List<Vec2> region = new ArrayList<>();
      region.add(side.flat(-fold(i - 1, false, band.from()), band.from()));
      region.add(side.flat(-fold(i - 1, false, band.to()), band.to()));
      region.add(side.flat(side.length() + fold(i, true, band.to()), band.to()));
      region.add(side.flat(side.length() + fold(i, true, band.from()), band.from()));
      List<Vec2> polygon = Polygons.inside(cut, Polygons.anticlockwise(region));
      Frame frame = new Frame(side.flat(0, band.pieceStart()), side.along(), side.along().right());
      add(
          side.name() + " " + band.name(),
          ownSide(i, polygon),
          surface(side, band, frame, true),
          over ? 3 : 1,
          Sense.OUTWARD);
    }
    flaps(i, side);
  }

  /** Where a piece of a side's section lies in space, for flat points taken through a frame. */
  private Facet.Surface surface(Side side, SectionBand band, Frame frame, boolean exact) {
    Vec2 out = side.along().right();
    Vec3 along = new Vec3(side.along().x(), side.along().y(), 0);
    Segment piece = band.piece();
    if (!piece.isArc()) {
      Vec2 d = piece.directionAt(0);
      return new Facet.Plane(
          frame,
          lift(side.from(), out, piece.start()),
          along,
          new Vec3(out.x() * d.x(), out.y() * d.x(), d.y()),
          exact);
    }
    Vec2 c = piece.centre();
    Vec2 e1 = piece.start().minus(c).unit();
    // The path turns clockwise, so the second axis is the first turned to the right.
    Vec2 e2 = e1.right();
    return new Facet.Cylinder(
        frame,
        lift(side.from(), out, c),
        along,
        new Vec3(out.x() * e1.x(), out.y() * e1.x(), e1.y()),
        new Vec3(out.x() * e2.x(), out.y() * e2.x(), e2.y()),
        piece.radius(),
        exact);
  }

  private static Vec3 lift(Vec2 from, Vec2 out, Vec2 xz) {
    Vec2 p = from.along(out, xz.x());
    return new Vec3(p.x(), p.y(), xz.y());
  }

  /** The two halves of a corner's surplus, each within the bands of its own side's section. */
  private void flaps(int i, Side side) {
    if (side.after() == Fold.NONE || side.after() == Fold.GUSSET) {
      return;
    }
    CornerFrame f = skeleton.frame(i);
    Element after = skeleton.next(i);
    Side next = after instanceof Sweep sweep ? SweepFacets.tangentAtStart(sweep) : (Side) after;
    for (boolean first : new boolean[] {true, false}) {
      for (SectionBand band : SectionBand.of(f.path(first))) {
        flap(f, side, next, first, band);
      }
    }
  }

  private void flap(CornerFrame f, Side side, Side next, boolean first, SectionBand band) {
    double from = f.fold(first, band.from());
    double to = f.fold(first, band.to());
    List<Vec2> region = new ArrayList<>();
    region.add(f.flat(first, from, band.from()));
    region.add(f.flat(first, Math.max(from, f.bisector(first, band.from())), band.from()));
    region.add(f.flat(first, Math.max(to, f.bisector(first, band.to())), band.to()));
    region.add(f.flat(first, to, band.to()));
    List<Vec2> polygon = Polygons.inside(cut, Polygons.anticlockwise(region));
    String name = side.name() + " to " + next.name() + " flap " + band.name();
    boolean exact = exact(f, first, side.after(), band);
    Side own = first ? side : next;
    if (side.after() == Fold.DOUBLE) {
      doubled(f, first, own, band, polygon, name, exact);
      return;
    }
    boolean firstOver = side.after().firstOver();
    boolean onTop = firstOver == first;
    add(
        name,
        polygon,
        beside(f, first, firstOver, firstOver ? side : next, band, exact),
        onTop ? 2 : 1,
        onTop ? Sense.INWARD : Sense.OUTWARD);
  }

  /**
   * Whether a flap keeps its lengths in a band: where its fold is straight, and not on the back,
   * where the two sides of the surplus would have to be in two places and are gathered. A double
   * pleat's halves meet on the arris only where the whole wall is upright. Between two sections the
   * halves are no mirror images.
   */
  private static boolean exact(CornerFrame f, boolean first, Fold fold, SectionBand band) {
    TautPath path = f.path(first);
    boolean straight = Math.abs(f.fold(first, band.from()) - f.fold(first, band.to())) < 1e-9;
    boolean onWall = band.from() < path.backStart() - 1e-9;
    double lean = Math.abs(f.fold(first, f.tipLevel(first)) - f.fold(first, path.wallEnd()));
    return f.even() && straight && onWall && (fold != Fold.DOUBLE || lean < UPRIGHT);
  }

  /**
   * The wall of a side for a flap beside its fold: on it a flap lies as far from the arris as it
   * does from its fold, at the same level. Where the fold runs aslant its frame is sheared.
   *
   * @param atEnd whether the fold is at the end of the side, else at its start
   */
  private Facet.Surface beside(
      CornerFrame f, boolean first, boolean atEnd, Side wall, SectionBand band, boolean exact) {
    Frame frame = besideFrame(f, first, atEnd, band);
    double start =
        f.fold(first, band.from()) - slope(f, first, band) * (band.from() - band.pieceStart());
    double corner = atEnd ? wall.length() + start : -start;
    return shifted(surface(wall, band, frame, exact), wall, corner);
  }

  private Frame besideFrame(CornerFrame f, boolean first, boolean atEnd, SectionBand band) {
    double slope = slope(f, first, band);
    double start = f.fold(first, band.from()) - slope * (band.from() - band.pieceStart());
    Vec2 past = first ? f.before() : f.after().times(-1);
    Vec2 out = first ? f.before().right() : f.after().right();
    Vec2 along = past.plus(out.times(-2 * slope));
    return new Frame(f.flat(first, start, band.pieceStart()), along.times(atEnd ? -1 : 1), out);
  }

  /** How far the fold runs past the corner for each mm of path. */
  private static double slope(CornerFrame f, boolean first, SectionBand band) {
    return (f.fold(first, band.to()) - f.fold(first, band.from())) / (band.to() - band.from());
  }

  /** The same surface with its a axis starting so far along the side. */
  private static Facet.Surface shifted(Facet.Surface s, Side side, double along) {
    Vec3 by = new Vec3(side.along().x(), side.along().y(), 0).times(along);
    if (s instanceof Facet.Plane p) {
      return new Facet.Plane(p.frame(), p.origin().plus(by), p.u(), p.v(), p.exact());
    }
    Facet.Cylinder c = (Facet.Cylinder) s;
    return new Facet.Cylinder(
        c.frame(), c.centre().plus(by), c.axis(), c.e1(), c.e2(), c.radius(), c.exact());
  }

  private void doubled(
      CornerFrame f,
      boolean first,
      Side own,
      SectionBand band,
      List<Vec2> polygon,
      String name,
      boolean exact) {
    FoldMap map = new FoldMap(f, Fold.DOUBLE);
    Vec2 crease = map.crease(first);
    Vec2 tip = f.tip();
    // Between fold and crease: turned once.
    Vec2 side = first ? crease.right() : crease.left();
    List<Vec2> near = Polygons.below(polygon, side.times(-1), side.times(-1).dot(tip));
    add(name + " near", near, beside(f, first, first, own, band, exact), 2, Sense.INWARD);
    Frame once = besideFrame(f, first, first, band);
    double corner =
        first
            ? own.length()
                + f.fold(first, band.from())
                - slope(f, first, band) * (band.from() - band.pieceStart())
            : -f.fold(first, band.from())
                + slope(f, first, band) * (band.from() - band.pieceStart());
    // Between crease and bisector: turned back about the crease as well, to where this band is.
    List<Vec2> far = turnedBack(f, first, band, map, side, tip);
    Frame twice =
        new Frame(
            map.mirroredAboutCrease(first, once.origin()),
            mirrored(crease, once.along()),
            mirrored(crease, once.across()));
    add(
        name + " far",
        far,
        shifted(surface(own, band, twice, exact), own, corner),
        1,
        Sense.OUTWARD);
  }

  /** The cover between crease and bisector that, turned back about the crease, lies in a band. */
  private List<Vec2> turnedBack(
      CornerFrame f, boolean first, SectionBand band, FoldMap map, Vec2 side, Vec2 tip) {
    double wide = 2 * SectionBand.end(f.path(first)) * (1 + f.mitre());
    List<Vec2> whole =
        List.of(
            f.flat(first, -wide, band.from()),
            f.flat(first, -wide, band.to()),
            f.flat(first, wide, band.to()),
            f.flat(first, wide, band.from()));
    List<Vec2> turned =
        Polygons.below(whole, side.times(-1), side.times(-1).dot(tip)).stream()
            .map(p -> map.mirroredAboutCrease(first, p))
            .toList();
    // The bisector parts the halves of the surplus.
    Vec2 bisector = f.before().right().plus(f.after().right()).unit();
    Vec2 beyond = first ? bisector.left() : bisector.right();
    return Polygons.below(
        Polygons.inside(cut, Polygons.anticlockwise(turned)), beyond, beyond.dot(tip));
  }

  private static Vec2 mirrored(Vec2 axis, Vec2 v) {
    return axis.times(2 * v.dot(axis)).minus(v);
  }

  private void sweep(int i, Sweep sweep) {
    for (SectionBand band : SectionBand.of(skeleton.path(i))) {
      for (List<Vec2> region : SweepFacets.regions(sweep, band.from(), band.to())) {
        add(
            sweep.name() + " " + band.name(),
            ownSide(i, Polygons.inside(cut, Polygons.anticlockwise(region))),
            new Facet.Eased(sweep.centre(), sweep.radius(), sweep.hollow(), skeleton.path(i)),
            1,
            Sense.OUTWARD);
      }
    }
    flaps(i, SweepFacets.tangent(sweep));
  }

  /** What of a strip lies on its own side of the slits beside it. */
  private List<Vec2> ownSide(int i, List<Vec2> polygon) {
    int before = Math.floorMod(i - 1, skeleton.elements().size());
    List<Vec2> own = polygon;
    if (skeleton.elements().get(i).after() == Fold.GUSSET) {
      own = Gusset.beforeSlit(own, skeleton.frame(i), true);
    }
    if (skeleton.elements().get(before).after() == Fold.GUSSET) {
      own = Gusset.beforeSlit(own, skeleton.frame(before), false);
    }
    return own;
  }

  private void add(String name, List<Vec2> polygon, Facet.Surface surface, int layer, Sense sense) {
    if (polygon.size() >= 3 && Polygons.signedArea(polygon) > LEAST_AREA) {
      facets.add(new Facet(name, polygon, surface, layer, sense));
    }
  }
}
