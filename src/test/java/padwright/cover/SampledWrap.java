package padwright.cover;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import padwright.cover.SampledOutline.Piece;
import padwright.cover.SampledOutline.Place;
import padwright.design.PadSpec;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.shape.EdgeEnds;

/**
 * A second way to wrap a cover, for tests only and apart from the product's: it has a section of
 * its own from points of the solid, has JTS move the outline out to each level, walks over the pad
 * point by point and asks JTS whether the flat place that comes there is part of the cover. Raw
 * edges are folded in by {@link SampledCorner}, gussets laid in by {@link SampledGusset}.
 */
final class SampledWrap {
  /** Between two points along the pad, mm. */
  static final double ALONG = 2;

  /** Between two levels down the wall, mm; no more. */
  static final double DOWN = 1;

  /** Between two lines along which the turn-under is measured, mm. */
  static final double LINES = 0.5;

  /** The back is met this early, mm: what is called bare has to be bare by more. */
  private static final double EARLY = 0.06;

  private static final double FURTHEST = 150;
  private static final double NOTCH = 40;

  double bareArea;
  double leastHiding = Double.POSITIVE_INFINITY;
  double leastTurnUnder = Double.POSITIVE_INFINITY;
  double worstShort = Double.NEGATIVE_INFINITY;
  double foldError;

  private final Polygon cover;
  private final IndexedPointInAreaLocator in;
  private final SampledSection section;
  private final SampledOutline outline;
  private final EdgeEnds ends;
  private final Map<Integer, SampledGusset> gussets = new HashMap<>();

  /**
   * @param cut the trimmed cover
   * @param corners as printed
   */
  SampledWrap(
      List<Vec2> cut,
      Skeleton folds,
      PadSpec solid,
      EdgeEnds ends,
      List<CornerPlan> corners,
      List<Gusset> pieces,
      List<Path> clips) {
    cover = SampledOutline.polygon(cut);
    in = new IndexedPointInAreaLocator(cover);
    section = new SampledSection(solid);
    outline = new SampledOutline(folds);
    this.ends = ends;
    int next = 0;
    for (int i = 0; i < outline.pieces.size(); i++) {
      if (outline.pieces.get(i).fold() == Fold.GUSSET) {
        gussets.put(
            i,
            new SampledGusset(pieces.get(next++), outline.pieces.get(i), outline.next(i), section));
      }
    }
    face();
    sides();
    turnUnders();
    corners(cut, folds, corners);
    for (Path clip : clips) {
      if (out(clip.start()) < section.backStart - EARLY) {
        bareArea += 100;
      }
    }
  }

  private EdgeEnds.EdgeEnd end(int piece) {
    return ends.of(outline.pieces.get(piece).name());
  }

  private boolean has(Vec2 p) {
    return in.locate(new Coordinate(p.x(), p.y())) != Location.EXTERIOR;
  }

  private double out(Vec2 p) {
    return outline.pieces.stream().mapToDouble(k -> k.distance(p)).min().orElse(0);
  }

  private void face() {
    Geometry flat = outline.moved(section.startX);
    bareArea += OverlayNGRobust.overlay(flat, cover, OverlayNG.DIFFERENCE).getArea();
  }

  private void sides() {
    double deep = section.backStart - EARLY;
    int levels = (int) Math.ceil((deep - section.startX) / DOWN);
    double step = (deep - section.startX) / levels;
    for (int k = 0; k < levels; k++) {
      double s = section.startX + (k + 0.5) * step;
      for (Place at : outline.round(section.out(s), ALONG)) {
        EdgeEnds.EdgeEnd end = end(at.piece());
        boolean wanted = !end.bare() && (end.turned() || s < section.wallEnd - EARLY);
        if (wanted && !covered(at, s)) {
          bareArea += at.length() * step;
        }
      }
    }
  }

  private boolean covered(Place at, double s) {
    Piece piece = outline.pieces.get(at.piece());
    Vec2 flat = piece.flat(at.along(), s);
    SampledGusset after = gussets.get(at.piece());
    SampledGusset before = gussets.get(outline.before(at.piece()));
    if (after != null && s > after.tip && !after.shortOfSeam(true, flat, piece)) {
      return after.covers(true, arris(at.piece(), s) + piece.length() - at.along(), s);
    }
    if (before != null && s > before.tip && !before.shortOfSeam(false, flat, piece)) {
      return before.covers(false, arris(outline.before(at.piece()), s) + at.along(), s);
    }
    return has(flat);
  }

  /** How far the arris of the corner after a piece runs past the outline's corner at a level. */
  private double arris(int i, double s) {
    Vec2 u = outline.pieces.get(i).atEnd();
    Vec2 v = outline.next(i).atStart();
    return section.out(s) * Math.tan(Math.atan2(u.cross(v), u.dot(v)) / 2);
  }

  private void turnUnders() {
    TreeSet<Integer> roundings = new TreeSet<>();
    for (int i = 0; i < outline.pieces.size(); i++) {
      Piece piece = outline.pieces.get(i);
      if (!end(i).turned()) {
        continue;
      }
      if (gussets.containsKey(i)) {
        leastTurnUnder = Math.min(leastTurnUnder, section.depth(gussets.get(i).reach));
      }
      if (!piece.straight() && piece.turn() > 0) {
        roundings.add(piece.site());
        continue;
      }
      for (double t = LINES / 2; t < piece.length(); t += LINES) {
        line(i, t);
      }
    }
    for (int site : roundings) {
      rounding(site);
    }
  }

  /** From where the back begins straight on until the covering ends. */
  private void line(int i, double t) {
    Piece piece = outline.pieces.get(i);
    double s = section.backStart - EARLY;
    double from = s;
    while (s < from + FURTHEST && inOwn(i, piece.flat(t, s))) {
      s += 1;
    }
    if (s == from) {
      return;
    }
    double low = s - 1;
    double high = s;
    while (high - low > 1e-4) {
      double mid = (low + high) / 2;
      if (inOwn(i, piece.flat(t, mid))) {
        low = mid;
      } else {
        high = mid;
      }
    }
    double depth = section.depth(high);
    Vec2 place = piece.flat(t, -depth);
    for (int k = 0; k < outline.pieces.size(); k++) {
      if (k != i && !end(k).bare() && outline.pieces.get(k).distance(place) < depth - 0.1) {
        return;
      }
    }
    if (!has(piece.flat(t, high))) {
      reaches(i, depth);
    }
  }

  private boolean inOwn(int i, Vec2 flat) {
    Piece piece = outline.pieces.get(i);
    SampledGusset after = gussets.get(i);
    SampledGusset before = gussets.get(outline.before(i));
    return has(flat)
        && (after == null || after.shortOfSeam(true, flat, piece))
        && (before == null || before.shortOfSeam(false, flat, piece));
  }

  private void reaches(int i, double depth) {
    leastTurnUnder = Math.min(leastTurnUnder, depth);
    worstShort = Math.max(worstShort, end(i).turnUnder() - depth);
  }

  /**
   * A rounding's turn-under: down to where what lies there, drawn together, is still as long as the
   * circle it comes to lie on, and no gap is a missing piece.
   */
  private void rounding(int site) {
    List<Piece> arcs = outline.pieces.stream().filter(p -> p.site() == site).toList();
    int piece = outline.pieces.indexOf(arcs.get(0));
    double s = section.backStart - EARLY;
    while (s < section.backStart + FURTHEST && whole(arcs, s)) {
      s += 0.1;
    }
    if (s > section.backStart) {
      reaches(piece, section.depth(s - 0.05));
    }
  }

  private boolean whole(List<Piece> arcs, double s) {
    double there = 0;
    double needed = 0;
    double gap = 0;
    for (Piece arc : arcs) {
      double flat = arc.turn() * (arc.radius() + s);
      needed += arc.turn() * Math.max(0, arc.radius() + section.out(s));
      int n = (int) Math.ceil(flat / 0.25);
      for (int k = 0; k < n; k++) {
        if (has(arc.flat(arc.length() * (k + 0.5) / n, s))) {
          there += flat / n;
          gap = 0;
        } else {
          gap += flat / n;
        }
        if (gap > NOTCH) {
          return false;
        }
      }
    }
    return there >= needed - 0.5;
  }

  private boolean glued(int i) {
    return !end(i).turned() && !end(i).bare();
  }

  private void corners(List<Vec2> cut, Skeleton folds, List<CornerPlan> plans) {
    List<SampledCorner> corners = new ArrayList<>();
    for (int i = 0; i < outline.pieces.size(); i++) {
      Fold fold = outline.pieces.get(i).fold();
      if (fold != Fold.NONE && fold != Fold.GUSSET && !end(i).bare()) {
        CornerPlan plan = plans.get(folds.elements().get(i).corner());
        CornerPlan own = plan.radius() == 0 ? plan : null;
        SampledCorner corner =
            new SampledCorner(
                outline.pieces.get(i),
                outline.next(i),
                section,
                own,
                new boolean[] {glued(i), glued((i + 1) % outline.pieces.size())});
        foldError = Math.max(foldError, corner.foldError());
        corners.add(corner);
      }
    }
    for (int i = 0; i < cut.size(); i++) {
      Vec2 a = cut.get(i);
      Vec2 b = cut.get((i + 1) % cut.size());
      int steps = Math.max(1, (int) Math.ceil(a.distance(b) / 0.25));
      for (int k = 0; k < steps; k++) {
        Vec2 p = a.plus(b.minus(a).times((double) k / steps));
        for (SampledCorner corner : corners) {
          leastHiding = Math.min(leastHiding, corner.behindFold(p));
        }
      }
    }
  }
}
