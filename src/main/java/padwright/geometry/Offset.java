package padwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Moves a closed, simple, anticlockwise path outwards or inwards by a distance. Lines stay lines,
 * arcs stay concentric arcs, sharp corners are mitred. An arc or line that a move would turn inside
 * out drops out and its neighbours are brought together. A convex path is moved here, joint by
 * joint; one that is not goes to {@link OffsetCurve}.
 */
public final class Offset {
  /** Two directions closer than this (radians) join smoothly: 1e-6 at 10 m is 0.01 mm. */
  public static final double SMOOTH = 1e-6;

  private static final double TINY = 1e-9;

  /**
   * Neighbours this near that do not cross are joined halfway, mm: a knife's width is ten times it.
   */
  private static final double SLIVER = 0.05;

  private Offset() {}

  /**
   * The path moved outwards (inwards where negative); the largest of the outlines where it comes
   * apart. Whoever must not lose the others asks {@link #all} or {@link MovedIn}.
   *
   * @return empty where nothing is left of it
   */
  public static Optional<Path> by(Path outline, double distance) {
    double[] each = new double[outline.segments().size()];
    java.util.Arrays.fill(each, distance);
    return by(outline, each);
  }

  /**
   * The same with a distance for each segment. An arc must move as far as the neighbours it joins
   * smoothly.
   */
  public static Optional<Path> by(Path outline, double[] distances) {
    return by(outline, distances, distances);
  }

  /**
   * The same with a distance for each end of each segment: a line that moves further at one end
   * comes to lie aslant. An arc moves as far at its end as at its start.
   */
  public static Optional<Path> by(Path outline, double[] starts, double[] ends) {
    return all(outline, starts, ends).stream().findFirst();
  }

  /** Every outline that is left, the largest first; none where nothing is. */
  public static List<Path> all(Path outline, double[] starts, double[] ends) {
    return convex(outline)
        ? convexMoved(outline, starts, ends).stream().toList()
        : OffsetCurve.loops(outline, starts, ends);
  }

  private static Optional<Path> convexMoved(Path outline, double[] starts, double[] ends) {
    List<Moved> moved = new ArrayList<>();
    List<Segment> segments = outline.segments();
    for (int i = 0; i < segments.size(); i++) {
      Moved m = Moved.of(segments.get(i), starts[i], ends[i]);
      if (m != null) {
        moved.add(m);
      }
    }
    return close(moved);
  }

  /** Whether a path turns left at every joint and along every arc. */
  public static boolean convex(Path outline) {
    List<Segment> segments = outline.segments();
    Segment last = segments.get(segments.size() - 1);
    for (Segment s : segments) {
      Vec2 u = last.directionAt(1);
      Vec2 v = s.directionAt(0);
      if (s.bulge() < 0 || u.cross(v) < -SMOOTH || (u.dot(v) < 0 && u.cross(v) < SMOOTH)) {
        return false;
      }
      last = s;
    }
    return true;
  }

  /** Joins the moved segments, dropping those that come out backwards, until all fit. */
  private static Optional<Path> close(List<Moved> moved) {
    while (moved.size() >= 2) {
      int n = moved.size();
      Vec2[] joints = new Vec2[n];
      int parted = -1;
      for (int i = 0; i < n; i++) {
        joints[i] = joint(moved.get(i), moved.get((i + 1) % n));
        if (joints[i] == null) {
          parted = i;
        }
      }
      if (parted >= 0) {
        // Neighbours that no longer meet: the tighter arc of the two has been swallowed as well.
        Moved a = moved.get(parted);
        Moved b = moved.get((parted + 1) % n);
        if (!a.arc && !b.arc) {
          return Optional.empty();
        }
        moved.remove(!b.arc || (a.arc && a.radius <= b.radius) ? parted : (parted + 1) % n);
        continue;
      }
      int worst = -1;
      double worstLife = -TINY;
      for (int i = 0; i < n; i++) {
        double life = moved.get(i).life(joints[(i + n - 1) % n], joints[i]);
        if (life < worstLife) {
          worstLife = life;
          worst = i;
        }
      }
      if (worst < 0) {
        return Optional.of(assemble(moved, joints)).filter(p -> p.signedArea() > TINY);
      }
      moved.remove(worst);
    }
    return Optional.empty();
  }

  private static Path assemble(List<Moved> moved, Vec2[] joints) {
    int n = moved.size();
    List<Segment> list = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Vec2 from = joints[(i + n - 1) % n];
      Vec2 to = joints[i];
      Moved m = moved.get(i);
      list.add(m.arc ? m.arcBetween(from, to) : Segment.line(from, to));
    }
    return new Path(list, true);
  }

  /** Where one moved segment hands over to the next; null where they no longer meet. */
  private static Vec2 joint(Moved a, Moved b) {
    if (a.segment.end().distance(b.segment.start()) < 1e-7) {
      return a.segment.end();
    }
    if (!a.arc && !b.arc) {
      Vec2 da = a.segment.directionAt(1);
      Vec2 db = b.segment.directionAt(0);
      double cross = da.cross(db);
      if (Math.abs(cross) < TINY) {
        return null;
      }
      double t = b.segment.start().minus(a.segment.end()).cross(db) / cross;
      return a.segment.end().along(da, t);
    }
    Vec2 near = a.segment.end().midpoint(b.segment.start());
    Vec2 meet =
        a.arc && b.arc
            ? circles(a.centre, a.radius, b.centre, b.radius, near)
            : a.arc ? lineCircle(b.segment, a, near) : lineCircle(a.segment, b, near);
    // Where a sliver between them has dropped out, two arcs may pass by each other by as little.
    return meet == null && a.segment.end().distance(b.segment.start()) < SLIVER ? near : meet;
  }

  private static Vec2 circles(Vec2 c1, double r1, Vec2 c2, double r2, Vec2 near) {
    Vec2 between = c2.minus(c1);
    double d = between.length();
    if (d < TINY) {
      return null;
    }
    double a = (r1 * r1 - r2 * r2 + d * d) / (2 * d);
    double h2 = r1 * r1 - a * a;
    if (h2 < -1e-6 * r1) {
      return null;
    }
    double h = Math.sqrt(Math.max(0, h2));
    Vec2 u = between.times(1 / d);
    Vec2 foot = c1.along(u, a);
    return nearer(foot.along(u.left(), h), foot.along(u.left(), -h), near);
  }

  private static Vec2 lineCircle(Segment line, Moved arc, Vec2 near) {
    Vec2 u = line.end().minus(line.start()).unit();
    double t = arc.centre.minus(line.start()).dot(u);
    Vec2 foot = line.start().along(u, t);
    double h2 = arc.radius * arc.radius - Math.pow(foot.distance(arc.centre), 2);
    if (h2 < -1e-6 * arc.radius) {
      return null;
    }
    double h = Math.sqrt(Math.max(0, h2));
    return nearer(foot.along(u, h), foot.along(u, -h), near);
  }

  private static Vec2 nearer(Vec2 a, Vec2 b, Vec2 to) {
    return a.distance(to) <= b.distance(to) ? a : b;
  }

  /** A segment after the move, not yet trimmed to its neighbours. */
  private record Moved(Segment segment, boolean arc, Vec2 centre, double radius) {
    static Moved of(Segment s, double distance, double atEnd) {
      if (!s.isArc()) {
        Vec2 out = s.directionAt(0).right();
        Segment line =
            distance == atEnd
                ? s.translated(out.times(distance))
                : Segment.line(s.start().along(out, distance), s.end().along(out, atEnd));
        return new Moved(line, false, Vec2.ZERO, 0);
      }
      Vec2 c = s.centre();
      double r = s.radius();
      double moved = r + distance;
      if (moved <= TINY) {
        return null;
      }
      double k = moved / r;
      Vec2 from = c.plus(s.start().minus(c).times(k));
      Vec2 to = c.plus(s.end().minus(c).times(k));
      return new Moved(new Segment(from, to, s.bulge()), true, c, moved);
    }

    /** How much of it lies between two joints, mm; negative where they come in the wrong order. */
    double life(Vec2 from, Vec2 to) {
      if (!arc) {
        return to.minus(from).dot(segment.directionAt(0));
      }
      return sweep(from, to) * radius;
    }

    private double sweep(Vec2 from, Vec2 to) {
      double mid = segment.pointAt(0.5).minus(centre).angle();
      double a = wrap(from.minus(centre).angle() - mid);
      double b = wrap(to.minus(centre).angle() - mid);
      return b - a;
    }

    Segment arcBetween(Vec2 from, Vec2 to) {
      return new Segment(from, to, Math.tan(sweep(from, to) / 4));
    }

    private static double wrap(double angle) {
      return Math.atan2(Math.sin(angle), Math.cos(angle));
    }
  }
}
