package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Intersections;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.EdgeEnds;
import padwright.shape.EdgeSections;
import padwright.shape.Outlines;
import padwright.shape.TautPath;

/**
 * The trim line and the cut line of a cover: the outline moved out by what each of its sides is to
 * have, joined at every corner as that is folded.
 */
final class CutLine {
  /** A hollow's line is drawn down to this radius, mm; a knife cannot follow a smaller one. */
  static final double LEAST_RADIUS = 1;

  /** A corner is square where its turn differs from a right angle by less, radians. */
  private static final double EVEN = 1e-6;

  private final Path outline;
  private final List<String> names;
  private final List<CornerSite> sites;
  private final List<CornerChoice> choices;
  private final CornerChooser chooser;
  private final EdgeSections sections;
  private final EdgeEnds ends;
  private final double reliefStop;

  /**
   * @param choices for each of the sites
   * @param reliefStop how far a relief cut stops short of the fold that hides it
   */
  CutLine(
      Outlines.Named outline,
      List<CornerSite> sites,
      List<CornerChoice> choices,
      CornerChooser chooser,
      EdgeSections sections,
      EdgeEnds ends,
      double reliefStop) {
    this.outline = outline.path();
    this.names = outline.names();
    this.sites = sites;
    this.choices = choices;
    this.chooser = chooser;
    this.sections = sections;
    this.ends = ends;
    this.reliefStop = reliefStop;
  }

  private TautPath path(int segment) {
    return sections.path(names.get(segment));
  }

  /** Path length of the trim line where a segment begins or ends, and of the cut line with grip. */
  double edge(int i, boolean start, double grip) {
    EdgeEnds.EdgeEnd end = ends.of(names.get(i));
    double level = end.level(sections.at(names.get(i), start).taut());
    return level + (end.turned() ? grip : beyondFacets(i, level));
  }

  /** The closed trim line, or the cut line the grip beyond it, with its relief cuts. */
  Path line(double grip) {
    List<Segment> segments = outline.segments();
    int n = segments.size();
    List<List<Vec2>> joints = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double before = edge(i, false, grip);
      double after = edge((i + 1) % n, true, grip);
      List<Vec2> joint = joint(i, before, after);
      joint = cutShort(joint, segments.get(i), before, false);
      joints.add(cutShort(joint, segments.get((i + 1) % n), after, true));
    }
    List<Segment> out = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Segment s = segments.get(i);
      List<Vec2> from = joints.get((i + n - 1) % n);
      List<Vec2> to = joints.get(i);
      if (s.isArc()) {
        arc(out, i, edge(i, true, grip), joints);
      } else {
        add(out, from.get(from.size() - 1), to.get(0));
      }
      for (int k = 0; k + 1 < to.size(); k++) {
        add(out, to.get(k), to.get(k + 1));
      }
    }
    return new Path(out, true);
  }

  /** Pleats make flat facets: an end that shows lies as far out as their corners, where glued. */
  private double beyondFacets(int i, double level) {
    Segment s = outline.segments().get(i);
    int pleats = s.isArc() ? choices.get(siteOf(i)).pleats() : 0;
    if (pleats == 0 || ends.of(names.get(i)).bare()) {
      return 0;
    }
    double facet = sites.get(siteOf(i)).turn() / pleats;
    // The sides beside it run on over half a facet, and are to be covered down to the back.
    double back = path(i).backStart();
    return back - level + (s.radius() + back) * (1 / Math.cos(facet / 2) - 1);
  }

  /** A rounding's or hollow's part of the line, joined to the points before and after it. */
  private void arc(List<Segment> out, int i, double edge, List<List<Vec2>> joints) {
    List<Vec2> before = joints.get(Math.floorMod(i - 1, names.size()));
    Vec2 from = before.get(before.size() - 1);
    Vec2 to = joints.get(i).get(0);
    Segment s = outline.segments().get(i);
    int site = siteOf(i);
    if (choices.get(site).notches() > 0 && !sites.get(site).hollow()) {
      if (sites.get(site).first() == i) {
        CornerSite chain = sites.get(site);
        int last = (chain.first() + chain.arcs() - 1) % names.size();
        List<Vec2> end = joints.get(last);
        List<Segment> notched = notched(site, edge, from, end.get(0));
        if (notched.isEmpty()) {
          // The cuts of the corners beside it take all of a short rounding.
          add(out, from, end.get(0));
          return;
        }
        add(out, from, notched.get(0).start());
        out.addAll(notched);
        add(out, out.get(out.size() - 1).end(), end.get(0));
      }
      return;
    }
    double left = s.radius() + Math.signum(s.bulge()) * edge;
    if (left < LEAST_RADIUS) {
      add(out, from, to);
      return;
    }
    Vec2 c = s.centre();
    double k = left / s.radius();
    Vec2 a = c.plus(s.start().minus(c).times(k));
    Vec2 b = c.plus(s.end().minus(c).times(k));
    Segment moved = new Segment(a, b, s.bulge());
    // A joint may cut the arc short, or lie beyond its end.
    Vec2 start = moved.nearest(from);
    Vec2 end = moved.nearest(to);
    add(out, from, start);
    double sweep =
        start.equals(a) && end.equals(b)
            ? s.sweep()
            : turned(start.minus(c), end.minus(c), s.sweep());
    out.add(new Segment(start, end, Math.tan(sweep / 4)));
    add(out, end, to);
  }

  /**
   * A corner's cut that begins or ends short of the corner begins or ends on the arc itself, not on
   * its tangent there.
   */
  private static List<Vec2> cutShort(List<Vec2> joint, Segment arc, double edge, boolean after) {
    if (!arc.isArc() || joint.size() < 2) {
      return joint;
    }
    for (Segment moved : moved(arc, edge)) {
      for (int k = 0; k + 1 < joint.size(); k++) {
        int j = after ? joint.size() - 2 - k : k;
        Segment line = Segment.line(joint.get(j), joint.get(j + 1));
        for (Vec2 p : Intersections.between(line, moved)) {
          List<Vec2> cut = new ArrayList<>();
          if (after) {
            cut.addAll(joint.subList(0, j + 1));
            cut.add(p);
          } else {
            cut.add(p);
            cut.addAll(joint.subList(j + 1, joint.size()));
          }
          return cut;
        }
      }
    }
    return joint;
  }

  private static double turned(Vec2 from, Vec2 to, double like) {
    double turn = Math.atan2(from.cross(to), from.dot(to));
    return turn * like < 0 ? turn + Math.signum(like) * 2 * Math.PI : turn;
  }

  private static void add(List<Segment> out, Vec2 a, Vec2 b) {
    if (a.distance(b) > 1e-9) {
      out.add(Segment.line(a, b));
    }
  }

  /** The points of the cut line between segment i and the next. */
  private List<Vec2> joint(int i, double before, double after) {
    Segment s = outline.segments().get(i);
    Segment next = outline.segments().get((i + 1) % outline.segments().size());
    Vec2 u = s.directionAt(1);
    Vec2 v = next.directionAt(0);
    double turn = Math.atan2(u.cross(v), u.dot(v));
    if (Math.abs(turn) <= Offset.SMOOTH) {
      return step(s.end(), u, v, before, after);
    }
    CornerFrame f =
        CornerFrame.of(s.end(), u, v, path(i), path((i + 1) % outline.segments().size()));
    if (turn < 0) {
      return hollowJoint(s, next, f, before, after);
    }
    for (int k = 0; k < sites.size(); k++) {
      if (sites.get(k).sharp() && sites.get(k).first() == i) {
        return CornerCut.line(f, choices.get(k).fold(), reliefStop, before, after);
      }
    }
    boolean bare = ends.of(names.get(i)).bare();
    if (bare != ends.of(names.get((i + 1) % names.size())).bare() && turn < Math.PI / 2 - EVEN) {
      return besideBare(f, !bare, bare ? after : before, bare ? before : after);
    }
    return turn < Outlines.CORNER && before != after
        ? step(s.end(), u, v, before, after)
        : List.of(f.meet(before, after));
  }

  /**
   * At an obtuse corner beside a side that is left bare the strip ends square to its own side,
   * flush with the bare wall: along the bare side's line it would lack a corner of its own wall.
   *
   * @param first whether the strip is that of the side before the corner
   * @param own path length of the strip's end
   * @param bare path length of the bare side's
   */
  private static List<Vec2> besideBare(CornerFrame f, boolean first, double own, double bare) {
    Vec2 along = first ? f.after() : f.before();
    Vec2 edge = f.apex().along(along.right(), bare);
    double wall = f.path(!first).wallOut();
    double past = f.pastPlane(f.path(first).wallOut(), wall);
    Vec2 end = f.flat(first, past, own);
    Vec2 inwards = f.flat(first, past, own - 1).minus(end);
    double t = edge.minus(end).cross(along) / inwards.cross(along);
    Vec2 meet = end.along(inwards, t);
    return first ? List.of(end, meet) : List.of(meet, end);
  }

  /** Where the covering's end changes along a smooth edge the line steps, square to the edge. */
  private static List<Vec2> step(Vec2 at, Vec2 u, Vec2 v, double before, double after) {
    Vec2 first = at.along(u.right(), before);
    return before == after ? List.of(first) : List.of(first, at.along(v.right(), after));
  }

  /** Where the lines of two sides cross short of a hollow corner. */
  private static List<Vec2> hollowJoint(
      Segment a, Segment b, CornerFrame f, double before, double after) {
    if (-f.turn() < Outlines.CORNER && before != after) {
      return step(f.apex(), f.before(), f.after(), before, after);
    }
    Vec2 best = f.meet(before, after);
    if (a.isArc() || b.isArc()) {
      double nearest = Double.POSITIVE_INFINITY;
      for (Segment p : moved(a, before)) {
        for (Segment q : moved(b, after)) {
          for (Vec2 at : Intersections.between(p, q)) {
            if (at.distance(f.apex()) < nearest) {
              nearest = at.distance(f.apex());
              best = at;
            }
          }
        }
      }
    }
    return List.of(best);
  }

  private static List<Segment> moved(Segment s, double edge) {
    Vec2 from = s.start().along(s.directionAt(0).right(), edge);
    Vec2 to = s.end().along(s.directionAt(1).right(), edge);
    boolean gone = s.isArc() && s.radius() + Math.signum(s.bulge()) * edge < LEAST_RADIUS;
    return gone ? List.of() : List.of(new Segment(from, to, s.bulge()));
  }

  private int siteOf(int segment) {
    int n = outline.segments().size();
    for (int k = 0; k < sites.size(); k++) {
      CornerSite site = sites.get(k);
      if (!site.sharp() && Math.floorMod(segment - site.first(), n) < site.arcs()) {
        return k;
      }
    }
    throw new IllegalStateException("arc " + segment + " belongs to no corner");
  }

  /** The whole rounding of a corner with its V-notches. */
  private List<Segment> notched(int site, double edge, Vec2 from, Vec2 to) {
    List<Segment> arcs = arcs(site);
    return notches(site, edge)
        .line(edge, cutOff(arcs.get(0), from, true), cutOff(arcs.get(arcs.size() - 1), to, false));
  }

  /** The mouth of the widest notch of a rounding at the cut line, mm. */
  double mouth(int site, double grip) {
    double edge = edge(sites.get(site).first(), true, grip);
    return notches(site, edge).widest(edge);
  }

  private List<Segment> arcs(int site) {
    CornerSite s = sites.get(site);
    List<Segment> arcs = new ArrayList<>();
    int n = outline.segments().size();
    for (int k = 0; k < s.arcs(); k++) {
      arcs.add(outline.segments().get((s.first() + k) % n));
    }
    return arcs;
  }

  private NotchedArcs notches(int site, double edge) {
    CornerSite s = sites.get(site);
    TautPath path = path(s.first());
    double tip = path.backStart() + CornerCut.JOINED;
    double d = path.developed();
    // All that the notches take at the trim line: what lies on the back.
    double atTrim = chooser.fullness(s, d) - chooser.fullness(s, path.backStart());
    double mouth = Math.max(0, atTrim) * (edge - tip) / (d - tip);
    return new NotchedArcs(arcs(site), choices.get(site).notches(), tip, mouth);
  }

  /** How much of an arc's turn a corner beside it cuts off, radians. */
  private static double cutOff(Segment arc, Vec2 joint, boolean start) {
    Vec2 edge = (start ? arc.start() : arc.end()).minus(arc.centre());
    Vec2 at = joint.minus(arc.centre());
    double off = Math.atan2(edge.cross(at), edge.dot(at));
    return Math.max(0, start ? off : -off);
  }
}
