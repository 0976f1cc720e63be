package padwright.fastening;

import java.util.ArrayList;
import java.util.List;
import padwright.design.OutlineShape;
import padwright.fastening.TurnedThrough.Tongue;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * Where the covering over a cut-out is slit. A rectangle gets a slit along its middle that forks
 * towards each corner (a Y at either end); any other outline a star of slits from the place inside
 * it that leaves the shortest tongue longest. Slits go to every corner, and along curves so close
 * that a fold from slit to slit stays near the curve. Common practice; the figures are our own. mm.
 */
final class SlitPlanner {
  /** A slit stops this far short of the cut-out's edge, mm; practice: clip close, not to it. */
  static final double STOP = 3;

  /** Slits along a curve are no closer than this at its edge, mm; own choice. */
  static final double SPACING = 15;

  /** A tongue's straight fold leaves a curved edge by this at most where it can, mm; as pleats. */
  static final double SAGITTA = 0.5;

  /** The sine of the least turn that is a corner: 10 degrees. */
  private static final double CORNER = 0.17;

  /** A star of more slits has only so many that begin in its middle: it would be cut to shreds. */
  private static final int FEW = 8;

  private static final int MAIN = 4;

  /** The others begin where neighbours are this far apart, mm, and only in what is trimmed off. */
  private static final double NEAREST = 1.5;

  /** Targets nearer than this, mm, are one. */
  private static final double SAME = 1e-6;

  /** Ways tried from a middle to a better one, and the step at which it is good enough, mm. */
  private static final int WAYS = 16;

  private static final double FINEST = 0.01;

  private final Path hole;
  private final Vec2 centre;
  private final OutlineShape shape;

  SlitPlanner(OutlineShape shape, Path hole, Vec2 centre) {
    this.shape = shape;
    this.hole = hole;
    this.centre = centre;
  }

  /**
   * @param wall see {@link TurnedThrough}
   * @param wished the turn-under to trim the tongues to where they are long enough
   */
  TurnedThrough plan(double wall, double wished, double leastTurnUnder) {
    List<Vec2> targets = targets();
    List<Path> slits = new ArrayList<>();
    List<Vec2> sources = new ArrayList<>();
    Vec2[] middle = middle();
    if (middle[0].distance(middle[1]) > SAME) {
      slits.add(Path.line(middle[0], middle[1]));
    }
    boolean within = targets.size() >= 3;
    double apart = targets.size() > FEW ? targets.size() * NEAREST / (2 * Math.PI) : 0;
    double room = Math.max(0, Math.min(apart, least(middle[0]) - wall - leastTurnUnder));
    int each = (targets.size() + MAIN - 1) / MAIN;
    for (int i = 0; i < targets.size(); i++) {
      Vec2 target = targets.get(i);
      Vec2 from = target.distance(middle[0]) <= target.distance(middle[1]) ? middle[0] : middle[1];
      sources.add(from);
      Vec2 way = target.minus(from);
      double length = way.length() - STOP;
      if (length > 0) {
        double start = i % each == 0 ? 0 : Math.min(room, length / 2);
        slits.add(Path.line(from.along(way.unit(), start), from.along(way.unit(), length)));
      }
    }
    List<Tongue> tongues = new ArrayList<>();
    double reach = Double.POSITIVE_INFINITY;
    for (int i = 0; i < targets.size(); i++) {
      int j = (i + 1) % targets.size();
      Tongue t = new Tongue(targets.get(i), targets.get(j), sources.get(i), sources.get(j));
      tongues.add(t);
      reach = Math.min(reach, t.length());
    }
    double least = Math.min(reach, least(middle[0]));
    within &= least > 0 && inside(middle);
    return new TurnedThrough(
        slits,
        tongues,
        wall,
        Math.max(0, least),
        Math.min(wished, least - room - wall),
        leastTurnUnder,
        STOP,
        within);
  }

  private boolean inside(Vec2[] middle) {
    List<Vec2> chords = hole.flattened(FINEST);
    return Polygons.contains(chords, middle[0]) && Polygons.contains(chords, middle[1]);
  }

  /** The ends of the slit along the middle, or one place twice. */
  private Vec2[] middle() {
    if (shape instanceof OutlineShape.Rectangle r) {
      double half = Math.abs(r.length() - r.width()) / 2;
      Vec2 way = r.length() >= r.width() ? new Vec2(half, 0) : new Vec2(0, half);
      return new Vec2[] {centre.minus(way), centre.plus(way)};
    }
    boolean about = shape instanceof OutlineShape.Circle || shape instanceof OutlineShape.Ellipse;
    Vec2 best = about ? centre : bestStar();
    return new Vec2[] {best, best};
  }

  /**
   * The place whose least distance from the lines along the edge is greatest. That least is a
   * concave function of the place, so that climbing finds its top.
   */
  private Vec2 bestStar() {
    Vec2 at = hole.bounds().centre();
    double value = least(at);
    double step = Math.max(hole.bounds().width(), hole.bounds().height()) / 4;
    while (step > FINEST) {
      Vec2 better = null;
      for (int k = 0; k < WAYS; k++) {
        Vec2 next = at.along(Vec2.polar(2 * Math.PI * k / WAYS), step);
        double there = least(next);
        if (there > value + SAME) {
          better = next;
          value = there;
        }
      }
      if (better == null) {
        step /= 2;
      } else {
        at = better;
      }
    }
    return at;
  }

  /** How far inside all lines along the edge a place lies; not positive where no star is seen. */
  private double least(Vec2 p) {
    double least = Double.POSITIVE_INFINITY;
    for (Segment s : hole.segments()) {
      if (!s.isArc()) {
        least = Math.min(least, p.minus(s.start()).dot(s.directionAt(0).left()));
        continue;
      }
      // Nearest to an arc's tangent where the tangent faces it, else at an end.
      int steps = s.chords(FINEST);
      for (int k = 0; k <= steps; k++) {
        double t = (double) k / steps;
        least = Math.min(least, p.minus(s.pointAt(t)).dot(s.directionAt(t).left()));
      }
    }
    return least;
  }

  /**
   * The places on the edge that slits go towards, anticlockwise: every corner, both ends of a curve
   * and evenly along it.
   */
  private List<Vec2> targets() {
    List<Segment> all = hole.segments();
    int n = all.size();
    int first = 0;
    while (first < n && goesOn(all.get((first + n - 1) % n), all.get(first))) {
      first++;
    }
    List<Vec2> targets = new ArrayList<>();
    if (first == n) {
      along(targets, all);
      return targets;
    }
    for (int k = 0; k < n; ) {
      List<Segment> run = new ArrayList<>();
      do {
        run.add(all.get((first + k++) % n));
      } while (k < n && goesOn(run.get(run.size() - 1), all.get((first + k) % n)));
      along(targets, run);
    }
    return targets;
  }

  /** Whether a segment is of one curve, or one line, with the one before it. */
  private static boolean goesOn(Segment before, Segment next) {
    Vec2 u = before.directionAt(1);
    Vec2 v = next.directionAt(0);
    return before.isArc() == next.isArc() && u.dot(v) > 0 && Math.abs(u.cross(v)) <= CORNER;
  }

  /**
   * The start of a run and places along it; as many as keep chords within the sagitta, but none
   * shorter than the spacing. On an ellipse they lie closer where it is tighter.
   */
  private static void along(List<Vec2> targets, List<Segment> run) {
    add(targets, run.get(0).start());
    double whole = 0;
    for (Segment s : run) {
      whole += parts(s);
    }
    double step = whole / Math.max(1, Math.ceil(whole - 1e-9));
    double next = step;
    double before = 0;
    for (Segment s : run) {
      double here = parts(s);
      for (; next < before + here - 1e-9 && next < whole - step / 2; next += step) {
        add(targets, s.pointAt((next - before) / here));
      }
      before += here;
    }
  }

  /** How many chords a segment takes, not rounded; none for a line. */
  private static double parts(Segment s) {
    if (!s.isArc()) {
      return 0;
    }
    double r = s.radius();
    double chord = 2 * Math.sqrt(Math.max(0, SAGITTA * (2 * r - SAGITTA)));
    return s.length() / Math.max(SPACING, chord);
  }

  private static void add(List<Vec2> targets, Vec2 p) {
    if (targets.stream().noneMatch(q -> q.distance(p) < SAME)) {
      targets.add(p);
    }
  }
}
