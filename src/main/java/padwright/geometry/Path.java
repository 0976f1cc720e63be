package padwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A chain of lines and arcs in which each segment starts where the one before it ends. A closed
 * path comes back to its start; a base outline is closed and runs anticlockwise seen from the face.
 *
 * @param segments at least one
 * @param closed whether the last segment ends at the first one's start
 */
public record Path(List<Segment> segments, boolean closed) {
  public Path {
    segments = List.copyOf(segments);
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("a path needs at least one segment");
    }
  }

  /** A closed path of straight lines. */
  public static Path polygon(List<Vec2> corners) {
    List<Segment> list = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      list.add(Segment.line(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return new Path(list, true);
  }

  public static Path polygon(Vec2... corners) {
    return polygon(Arrays.asList(corners));
  }

  /** An open path of straight lines. */
  public static Path polyline(List<Vec2> points) {
    List<Segment> list = new ArrayList<>();
    for (int i = 0; i + 1 < points.size(); i++) {
      list.add(Segment.line(points.get(i), points.get(i + 1)));
    }
    return new Path(list, false);
  }

  public static Path polyline(Vec2... points) {
    return polyline(Arrays.asList(points));
  }

  public static Path line(Vec2 from, Vec2 to) {
    return new Path(List.of(Segment.line(from, to)), false);
  }

  /** A full circle as two half circles, anticlockwise. */
  public static Path circle(Vec2 centre, double radius) {
    return new Path(
        List.of(
            Segment.arc(centre, radius, 0, Math.PI),
            Segment.arc(centre, radius, Math.PI, 2 * Math.PI)),
        true);
  }

  public double length() {
    double sum = 0;
    for (Segment s : segments) {
      sum += s.length();
    }
    return sum;
  }

  /** The area inside a closed path, mm2; positive when it runs anticlockwise. */
  public double signedArea() {
    double sum = 0;
    for (Segment s : segments) {
      sum += s.start().cross(s.end()) / 2;
      if (s.isArc()) {
        double r = s.radius();
        double a = s.sweep();
        sum += r * r * (a - Math.sin(a)) / 2;
      }
    }
    return sum;
  }

  public double area() {
    return Math.abs(signedArea());
  }

  public Bounds bounds() {
    Bounds b = segments.get(0).bounds();
    for (Segment s : segments) {
      b = b.union(s.bounds());
    }
    return b;
  }

  public Vec2 start() {
    return segments.get(0).start();
  }

  public Vec2 end() {
    return segments.get(segments.size() - 1).end();
  }

  public Path reversed() {
    List<Segment> list = new ArrayList<>();
    for (int i = segments.size() - 1; i >= 0; i--) {
      list.add(segments.get(i).reversed());
    }
    return new Path(list, closed);
  }

  public Path translated(Vec2 by) {
    return new Path(segments.stream().map(s -> s.translated(by)).toList(), closed);
  }

  public Path rotated(double angle) {
    return new Path(segments.stream().map(s -> s.rotated(angle)).toList(), closed);
  }

  /** Mirrored left to right (x to -x), and run the other way so that its area keeps its sign. */
  public Path mirrored() {
    Path m = new Path(segments.stream().map(Segment::mirrored).toList(), closed);
    return closed ? m.reversed() : m;
  }

  /**
   * Scaled by a factor along each axis. With unequal factors an arc is no longer an arc, so it is
   * first cut into chords that stay within {@code chordError}.
   */
  public Path scaled(double sx, double sy, double chordError) {
    if (sx == 1 && sy == 1) {
      return this;
    }
    List<Segment> list = new ArrayList<>();
    for (Segment s : segments) {
      if (sx == sy || !s.isArc()) {
        list.add(new Segment(scale(s.start(), sx, sy), scale(s.end(), sx, sy), s.bulge()));
      } else {
        List<Vec2> points = new ArrayList<>();
        points.add(s.start());
        s.flattenInto(points, chordError);
        for (int i = 0; i + 1 < points.size(); i++) {
          list.add(Segment.line(scale(points.get(i), sx, sy), scale(points.get(i + 1), sx, sy)));
        }
      }
    }
    return new Path(list, closed);
  }

  private static Vec2 scale(Vec2 p, double sx, double sy) {
    return new Vec2(p.x() * sx, p.y() * sy);
  }

  /**
   * The corner points of chords that stay within {@code chordError} of the path. A closed path's
   * start is not repeated at the end.
   */
  public List<Vec2> flattened(double chordError) {
    List<Vec2> points = new ArrayList<>();
    points.add(start());
    for (Segment s : segments) {
      s.flattenInto(points, chordError);
    }
    if (closed && points.size() > 1) {
      points.remove(points.size() - 1);
    }
    return points;
  }
}
