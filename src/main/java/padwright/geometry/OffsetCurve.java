package padwright.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Moves any simple closed anticlockwise path of lines and arcs outwards or inwards, with a distance
 * for each segment. Lines stay lines, arcs stay concentric arcs; corners that open are mitred.
 *
 * <p>Every segment is moved on its own and joined to the next into one raw closed chain, which may
 * cross itself. The chain is cut at its crossings; what lies nearer to a segment of the outline
 * than that segment was moved is dropped, and the rest is joined up again (the usual way of
 * offsetting pocket outlines, as in Kim and Jeong, "Trimming local and global self-intersections in
 * offset curves", 2004).
 */
public final class OffsetCurve {
  /** Ends this near to each other belong together, mm: crossings are found within 1e-6. */
  private static final double SAME = 1e-5;

  /** A shorter piece, mm, is rounding. */
  private static final double SHORTEST = 1e-7;

  /** A piece so short, mm, joins nothing that its neighbours do not: rounding of a smooth joint. */
  private static final double CRUMB = 1e-4;

  /** A corner that turns less, as the sine of its turn, is none: neighbours are all but in line. */
  private static final double BLUNT = 1e-6;

  private final Path outline;
  private final List<Segment> segments;
  private final double[] starts;
  private final double[] ends;
  private final double sign;
  private final Segment[] moved;
  private final Segment[] bridges;
  private final OffsetMitres mitres = new OffsetMitres();
  private boolean bridging;

  private OffsetCurve(Path outline, double[] starts, double[] ends) {
    this.outline = outline;
    this.segments = outline.segments();
    this.starts = starts;
    this.ends = ends;
    double sum = 0;
    for (double d : starts) {
      sum += d;
    }
    this.sign = sum >= 0 ? 1 : -1;
    int n = segments.size();
    moved = new Segment[n];
    for (int i = 0; i < n; i++) {
      moved[i] = moved(segments.get(i), starts[i], ends[i]);
    }
    bridges = new Segment[n];
    for (int i = 0; i < n; i++) {
      bridge(i, (i + 1) % n);
    }
  }

  /**
   * At a blunt corner between sides that were moved unlike, one side ends before the corner, where
   * the other one meets it once it is lengthened.
   */
  private void bridge(int i, int j) {
    if (i == j || moved[i] == null || moved[j] == null || ends[i] == starts[j]) {
      return;
    }
    Vec2 from = moved[i].end();
    Vec2 to = moved[j].start();
    Vec2 da = moved[i].directionAt(1);
    Vec2 db = moved[j].directionAt(0);
    double cross = da.cross(db);
    if (Math.abs(cross) <= BLUNT || opens(da, db, from, to)) {
      return;
    }
    Vec2 gap = to.minus(from);
    double back = da.cross(gap) / cross;
    if (back >= 0 == gap.cross(db) / cross >= 0) {
      return;
    }
    double reach = 2 * gap.length() / Math.abs(cross);
    Segment longer =
        back >= 0
            ? Segment.line(to.along(db, -reach), to)
            : Segment.line(from, from.along(da, reach));
    Segment cut = back >= 0 ? moved[i] : moved[j];
    Vec2 near = back >= 0 ? from : to;
    Vec2 meet =
        Intersections.between(cut, longer).stream()
            .min(Comparator.comparingDouble(p -> p.distance(near)))
            .orElse(null);
    if (meet == null) {
      return;
    }
    bridging = true;
    double at = fraction(cut, meet);
    if (back >= 0) {
      moved[i] = part(cut, cut.start(), meet, at);
      bridges[i] = Segment.line(meet, to);
    } else {
      moved[j] = part(cut, meet, cut.end(), 1 - at);
      bridges[i] = Segment.line(from, meet);
    }
  }

  /**
   * The loops that are left, the largest first; inwards there may be several, where a neck closes.
   * Loops that run clockwise, such as a pocket that an outward move closes, are left out.
   *
   * @param outline closed, simple, anticlockwise
   * @param distances one for each segment, all outwards (0 or more) or all inwards (0 or less)
   */
  public static List<Path> loops(Path outline, double[] distances) {
    return loops(outline, distances, distances);
  }

  /** The same with a distance for each end of each segment; both of an arc are equal. */
  static List<Path> loops(Path outline, double[] starts, double[] ends) {
    OffsetCurve curve = new OffsetCurve(outline, starts, ends);
    List<Segment> raw = curve.raw();
    List<List<Vec2>> cuts = cuts(raw);
    List<Segment> kept = curve.kept(raw, cuts);
    // A chain that meets itself nowhere and lies far enough out everywhere is the loop itself.
    boolean whole = kept.size() == raw.size() && cuts.stream().allMatch(List::isEmpty);
    List<Path> loops =
        whole
            ? new ArrayList<>(List.of(closed(kept)))
            : new ArrayList<>(stitch(withoutLooseEnds(kept)));
    loops.removeIf(p -> p.signedArea() <= SAME);
    loops.sort(Comparator.comparingDouble(Path::signedArea).reversed());
    return loops;
  }

  /** The moved segments with what joins them, one closed chain. */
  private List<Segment> raw() {
    int n = segments.size();
    List<Segment> chain = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      if (moved[i] != null) {
        chain.add(moved[i]);
      }
      join(chain, i, j);
    }
    chain.removeIf(s -> s.chord() < SHORTEST && !s.isArc());
    return chain;
  }

  /** Null where an arc's radius is used up. */
  private static Segment moved(Segment s, double d, double atEnd) {
    Vec2 from = end(s, d, false);
    Vec2 to = end(s, atEnd, true);
    if (!s.isArc()) {
      return Segment.line(from, to);
    }
    double left = s.radius() + Math.signum(s.bulge()) * d;
    return left <= SAME ? null : new Segment(from, to, s.bulge());
  }

  /** Where an end of a moved segment comes to lie, also where the segment itself has gone. */
  private static Vec2 end(Segment s, double d, boolean last) {
    Vec2 at = last ? s.end() : s.start();
    return at.along(s.directionAt(last ? 1 : 0).right(), d);
  }

  private void join(List<Segment> chain, int i, int j) {
    if (bridges[i] != null) {
      chain.add(bridges[i]);
      return;
    }
    Segment a = segments.get(i);
    Segment b = segments.get(j);
    Vec2 from = end(a, ends[i], true);
    Vec2 to = end(b, starts[j], false);
    if (i != j && gone(a, starts[i])) {
      // What is left of a swallowed arc: a line across, which is dropped as too near.
      chain.add(Segment.line(end(a, starts[i], false), from));
    }
    if (from.distance(to) < SHORTEST) {
      return;
    }
    Vec2 da = a.directionAt(1);
    Vec2 db = b.directionAt(0);
    double turn = Math.atan2(da.cross(db), da.dot(db));
    if (turn * sign > 0 && opens(da, db, from, to)) {
      mitres.join(chain, a.end(), from, da, to, db, turn);
    } else {
      // The moved sides cross before they get here: round by the corner itself, which is too near.
      chain.add(Segment.line(from, a.end()));
      chain.add(Segment.line(a.end(), to));
    }
  }

  private static boolean gone(Segment s, double d) {
    return s.isArc() && s.radius() + Math.signum(s.bulge()) * d <= SAME;
  }

  /** Whether the sides have to be lengthened to meet. */
  private static boolean opens(Vec2 da, Vec2 db, Vec2 from, Vec2 to) {
    double cross = da.cross(db);
    if (Math.abs(cross) < 1e-12) {
      return false;
    }
    Vec2 gap = to.minus(from);
    return gap.cross(db) / cross >= 0 && da.cross(gap) / cross >= 0;
  }

  /** The pieces between crossings that are as far out as they were moved. */
  private List<Segment> kept(List<Segment> raw, List<List<Vec2>> cuts) {
    List<Segment> kept = new ArrayList<>();
    OffsetNearness near = new OffsetNearness(outline, starts, ends);
    for (int i = 0; i < raw.size(); i++) {
      for (Segment piece : pieces(raw.get(i), cuts.get(i))) {
        int corner = bridged(raw.get(i));
        Vec2 middle = piece.pointAt(0.5);
        if (near.clear(middle, corner) && !mitres.takeIn(middle)) {
          kept.add(piece);
        }
      }
    }
    return kept;
  }

  /** The side before the corner that a segment of the chain bridges; -1 where it does not. */
  private int bridged(Segment s) {
    for (int i = 0; bridging && i < bridges.length; i++) {
      if (bridges[i] == s) {
        return i;
      }
    }
    return -1;
  }

  /** Where each segment of the chain meets others, but for the joints with its neighbours. */
  private static List<List<Vec2>> cuts(List<Segment> raw) {
    Boxes boxes = Boxes.of(raw);
    int n = raw.size();
    List<List<Vec2>> cuts = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      cuts.add(new ArrayList<>());
    }
    for (int a = 0; a < n; a++) {
      Segment s = raw.get(a);
      for (int b : boxes.meeting(s.bounds().grown(SAME))) {
        for (Vec2 p : b > a ? Intersections.between(s, raw.get(b)) : List.<Vec2>of()) {
          if (!joint(raw, a, b, p)) {
            cuts.get(a).add(p);
            cuts.get(b).add(p);
          }
        }
      }
    }
    return cuts;
  }

  private static boolean joint(List<Segment> chain, int a, int b, Vec2 p) {
    boolean after = b == a + 1 && p.distance(chain.get(a).end()) <= SAME;
    boolean round = a == 0 && b == chain.size() - 1 && p.distance(chain.get(a).start()) <= SAME;
    return after || round;
  }

  private static List<Segment> pieces(Segment s, List<Vec2> cuts) {
    List<double[]> at = new ArrayList<>();
    List<Vec2> points = new ArrayList<>();
    for (Vec2 p : cuts) {
      double f = fraction(s, p);
      if (f * s.length() > SAME && (1 - f) * s.length() > SAME) {
        at.add(new double[] {f, points.size()});
        points.add(p);
      }
    }
    at.sort(Comparator.comparingDouble(f -> f[0]));
    List<Segment> pieces = new ArrayList<>();
    double from = 0;
    Vec2 start = s.start();
    for (double[] f : at) {
      if ((f[0] - from) * s.length() > SAME) {
        Vec2 end = points.get((int) f[1]);
        pieces.add(part(s, start, end, f[0] - from));
        start = end;
        from = f[0];
      }
    }
    pieces.add(part(s, start, s.end(), 1 - from));
    return pieces;
  }

  private static Segment part(Segment s, Vec2 from, Vec2 to, double share) {
    return s.isArc()
        ? new Segment(from, to, Math.tan(s.sweep() * share / 4))
        : Segment.line(from, to);
  }

  private static double fraction(Segment s, Vec2 p) {
    if (!s.isArc()) {
      Vec2 d = s.end().minus(s.start());
      return p.minus(s.start()).dot(d) / d.dot(d);
    }
    Vec2 c = s.centre();
    Vec2 from = s.start().minus(c);
    Vec2 to = p.minus(c);
    double turned = Math.atan2(from.cross(to), from.dot(to)) / s.sweep();
    double whole = 2 * Math.PI / Math.abs(s.sweep());
    return turned < -SAME ? turned + whole : turned;
  }

  /**
   * Drops pieces that lead nowhere: at a corner that hardly turns, both sides run on past their
   * crossing by less than can be told from the right distance.
   */
  private static List<Segment> withoutLooseEnds(List<Segment> pieces) {
    List<Segment> left = pieces;
    int before;
    do {
      before = left.size();
      OffsetJoints starts = new OffsetJoints(left, 4 * SAME);
      List<Segment> turned = left.stream().map(Segment::reversed).toList();
      OffsetJoints ends = new OffsetJoints(turned, 4 * SAME);
      boolean[] none = new boolean[before];
      List<Segment> kept = new ArrayList<>();
      for (int i = 0; i < before; i++) {
        if (starts.next(i, none) >= 0 && ends.next(i, none) >= 0) {
          kept.add(left.get(i));
        }
      }
      left = kept;
    } while (left.size() < before);
    return left;
  }

  /** Joins pieces end to start; of several that go on from a point, the one turning most left. */
  private static List<Path> stitch(List<Segment> pieces) {
    List<Path> loops = new ArrayList<>();
    OffsetJoints joints = new OffsetJoints(pieces, 4 * SAME);
    boolean[] used = new boolean[pieces.size()];
    for (int i = 0; i < pieces.size(); i++) {
      if (used[i]) {
        continue;
      }
      List<Segment> loop = new ArrayList<>();
      int at = i;
      while (at >= 0 && !used[at]) {
        used[at] = true;
        loop.add(pieces.get(at));
        if (pieces.get(at).end().distance(pieces.get(i).start()) < 4 * SAME) {
          loops.add(closed(loop));
          break;
        }
        at = joints.next(at, used);
      }
    }
    return loops;
  }

  /** A loop whose joints meet exactly, and with pieces of one line or arc made whole again. */
  private static Path closed(List<Segment> loop) {
    List<Segment> whole = new ArrayList<>();
    boolean crumbs = loop.stream().filter(s -> s.chord() > CRUMB).count() > 2;
    for (Segment s : loop) {
      if (crumbs && s.chord() <= CRUMB && Math.abs(s.bulge()) < 1) {
        // Where a kink is all but smooth: what is left over there would cross its neighbours.
        continue;
      }
      Segment last = whole.isEmpty() ? null : whole.get(whole.size() - 1);
      if (last != null && last.end().distance(s.start()) > 0) {
        s = new Segment(last.end(), s.end(), s.bulge());
      }
      if (last != null && continues(last, s)) {
        whole.set(whole.size() - 1, together(last, s));
      } else {
        whole.add(s);
      }
    }
    Segment first = whole.get(0);
    Segment last = whole.get(whole.size() - 1);
    last = new Segment(last.start(), first.start(), last.bulge());
    if (whole.size() > 2 && continues(last, first)) {
      whole.remove(whole.size() - 1);
      whole.set(0, together(last, first));
    } else {
      whole.set(whole.size() - 1, last);
    }
    return new Path(whole, true);
  }

  private static boolean continues(Segment a, Segment b) {
    if (a.isArc() != b.isArc() || Math.abs(a.directionAt(1).cross(b.directionAt(0))) > 1e-7) {
      return false;
    }
    if (a.directionAt(1).dot(b.directionAt(0)) < 0) {
      return false;
    }
    return !a.isArc()
        || (a.centre().distance(b.centre()) < SAME
            && Math.signum(a.bulge()) == Math.signum(b.bulge())
            && Math.abs(a.sweep() + b.sweep()) < Math.PI);
  }

  private static Segment together(Segment a, Segment b) {
    return new Segment(a.start(), b.end(), a.isArc() ? Math.tan((a.sweep() + b.sweep()) / 4) : 0);
  }
}
