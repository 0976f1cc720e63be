package padwright.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import padwright.cover.CornerPlan;
import padwright.cover.CoverPlan;
import padwright.cover.Gusset;
import padwright.cover.Skeleton;
import padwright.fastening.StaplePlan;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece.StapleMark;
import padwright.shape.PadShape;
import padwright.shape.TautPath;

/**
 * Where the staples of the back go through the flat cover: as far past the line where the back
 * begins as they stand in from the edge. Those that hold the folds of two strips at once have no
 * one place on the flat; they are numbered on the base alone.
 */
final class CoverStaples {
  private static final double CHORD_ERROR = 0.05;

  private static final double SAME = 1e-6;

  /** A facet lies no further outside its rounding than this, mm. */
  private static final double TOUCHES = 1;

  /** As near to two strips, mm, a staple holds both. */
  private static final double BOTH = 0.01;

  private final PadShape shape;
  private final CoverPlan cover;
  private final List<Vec2> trim;
  private final UnaryOperator<Path> stretched;
  private final List<Segment> strips;

  /**
   * @param stretched takes a line of the cover to the blank that is cut smaller for stretch
   */
  CoverStaples(PadShape shape, CoverPlan cover, UnaryOperator<Path> stretched) {
    this.shape = shape;
    this.cover = cover;
    this.trim = cover.trim().flattened(CHORD_ERROR);
    this.stretched = stretched;
    strips =
        cover.skeleton().elements().stream()
            .filter(e -> e instanceof Skeleton.Side facet && facet.facet())
            .map(Skeleton.Element::segment)
            .toList();
  }

  /** In the order and with the numbers of the base's. */
  List<StapleMark> of(StaplePlan staples) {
    List<StapleMark> marks = new ArrayList<>();
    int number = 1;
    for (StaplePlan.Position p : staples.positions()) {
      int side = side(p);
      if (side >= 0 && !betweenFacets(side, p.at())) {
        Vec2 flat = flat(side, p.at());
        if (Polygons.contains(trim, flat) && !onGusset(side, flat)) {
          Path crown = Path.line(flat, flat.along(Vec2.polar(p.angle()), 1));
          Path drawn = stretched.apply(crown);
          double angle = drawn.end().minus(drawn.start()).angle();
          marks.add(new StapleMark(number, drawn.start(), angle, p.layers()));
        }
      }
      number++;
    }
    return marks;
  }

  /** The segment of its side that it stands along; -1 where its side is none. */
  private int side(StaplePlan.Position p) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < shape.sideNames().size(); i++) {
      if (!shape.sideNames().get(i).equals(p.side())) {
        continue;
      }
      double away = shape.outline().segments().get(i).distanceTo(p.at());
      if (away < least) {
        least = away;
        best = i;
      }
    }
    return best;
  }

  /**
   * Beside a hollow corner the turn-under is the gusset's: all that lies beyond the cover's own
   * seam, seen from the middle of the staple's side.
   */
  private boolean onGusset(int side, Vec2 flat) {
    Segment s = shape.outline().segments().get(side);
    for (Gusset g : cover.gussets()) {
      Vec2 apex = apex(g);
      boolean ends = meets(s.end(), s.directionAt(1), apex);
      boolean starts = meets(s.start(), s.directionAt(0).times(-1), apex);
      if (s.isArc()
          && meets(s.start(), s.directionAt(0), apex)
          && meets(s.end(), s.directionAt(1).times(-1), apex)) {
        // A hollow rounding that is made as a corner is all gusset.
        return true;
      }
      if (!ends && !starts) {
        continue;
      }
      Path seam = g.seamsOnCover().get(ends ? 0 : 1);
      Vec2 along = seam.end().minus(seam.start());
      double own = along.cross(s.pointAt(0.5).minus(seam.start()));
      if (own * along.cross(flat.minus(seam.start())) < 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether the way straight on from the end of a side comes to a place. */
  private static boolean meets(Vec2 end, Vec2 onwards, Vec2 place) {
    Vec2 way = place.minus(end);
    return way.dot(onwards) > -SAME && Math.abs(way.cross(onwards)) < SAME;
  }

  private Vec2 apex(Gusset g) {
    return cover.corners().stream()
        .filter(c -> c.name().equals(g.corner()))
        .map(CornerPlan::apex)
        .findFirst()
        .orElseThrow();
  }

  /**
   * The flat strips of a pleated rounding beside a staple, the nearest first: on the back strips
   * meet where they are as far from it. None where the rounding is eased.
   */
  private List<Segment> facets(Segment arc, Vec2 at) {
    if (!arc.isArc() || arc.bulge() < 0) {
      return List.of();
    }
    double most = arc.distanceTo(at) + TOUCHES;
    List<Segment> near = new ArrayList<>();
    for (Segment s : strips) {
      if (s.distanceTo(at) < most) {
        near.add(s);
      }
    }
    near.sort(Comparator.comparingDouble(s -> s.distanceTo(at)));
    return near;
  }

  /** Whether a staple goes through the end of one strip and the next, under a pleat. */
  private boolean betweenFacets(int side, Vec2 at) {
    List<Segment> facets = facets(shape.outline().segments().get(side), at);
    return facets.size() > 1 && facets.get(1).distanceTo(at) - facets.get(0).distanceTo(at) < BOTH;
  }

  private Vec2 flat(int side, Vec2 at) {
    Segment s = shape.outline().segments().get(side);
    TautPath path = shape.sections().path(shape.sideNames().get(side));
    double back = path.backStart();
    Vec2 foot;
    Vec2 out;
    List<Segment> facets = facets(s, at);
    if (!facets.isEmpty()) {
      Segment facet = facets.get(0);
      // Pleats make flat strips of a rounding; past its end a strip lies under the next one.
      Vec2 along = facet.directionAt(0);
      double t = at.minus(facet.start()).dot(along);
      foot = facet.start().along(along, Math.max(0, Math.min(facet.length(), t)));
      out = along.right();
    } else if (s.isArc()) {
      Vec2 away = at.minus(s.centre()).unit();
      foot = s.centre().along(away, s.radius());
      out = s.bulge() > 0 ? away : away.times(-1);
    } else {
      Vec2 along = s.directionAt(0);
      foot = s.start().along(along, at.minus(s.start()).dot(along));
      out = along.right();
    }
    double in = foot.minus(at).dot(out);
    return foot.along(out, back + path.out(back) + in);
  }
}
