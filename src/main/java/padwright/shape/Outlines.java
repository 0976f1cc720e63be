package padwright.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import padwright.design.FreeOutline;
import padwright.design.OutlineShape;
import padwright.geometry.EllipseArcs;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * Makes a closed anticlockwise path from a named plan shape, the middle of its bounding box at the
 * origin and the front at the bottom, with a name for every segment.
 */
public final class Outlines {
  /** Names of the four sides, in the path's order. */
  public static final List<String> SIDES = List.of("front", "right", "back", "left");

  /** A joint that turns less, radians (3 degrees), is no corner: the covering gives there. */
  public static final double CORNER = 0.05;

  private static final List<String> CORNERS =
      List.of("front left", "front right", "back right", "back left");

  private static final String SIDE = "side ";

  private static final String PASSAGE = " passage";

  private static final String TO = " to ";

  /** A corner of a smaller radius is sharp, mm: less than a knife's edge. */
  private static final double SHARP = 0.01;

  private Outlines() {}

  /** A path with a name for each of its segments. */
  public record Named(Path path, List<String> names) {
    public Named {
      names = List.copyOf(names);
    }

    /** The name of the segment nearest to a point. */
    public String nearest(Vec2 p) {
      String best = "";
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < names.size(); i++) {
        double away = path.segments().get(i).distanceTo(p);
        if (away < least) {
          least = away;
          best = names.get(i);
        }
      }
      return best;
    }
  }

  /** The shape as given. */
  public static Named of(OutlineShape shape) {
    if (shape instanceof OutlineShape.Rectangle r) {
      return rectangle(r.length(), r.width(), r.radii());
    }
    if (shape instanceof OutlineShape.Trapezoid t) {
      double y = t.depth() / 2;
      return new Named(
          Path.polygon(
              new Vec2(-t.front() / 2, -y),
              new Vec2(t.front() / 2, -y),
              new Vec2(t.back() / 2, y),
              new Vec2(-t.back() / 2, y)),
          SIDES);
    }
    if (shape instanceof OutlineShape.FreePath free) {
      FreeOutline laid = FreeOutline.of(free);
      return new Named(laid.path(), laid.sides().stream().map(k -> SIDE + k).toList());
    }
    Path path =
        shape instanceof OutlineShape.Circle c
            ? EllipseArcs.of(c.diameter() / 2, c.diameter() / 2)
            : ellipse((OutlineShape.Ellipse) shape);
    return new Named(path, roundNames(path));
  }

  private static Path ellipse(OutlineShape.Ellipse e) {
    return EllipseArcs.of(e.length() / 2, e.width() / 2);
  }

  /** Names by which way each segment faces; for outlines that have no corners. */
  static List<String> roundNames(Path path) {
    List<String> names = new ArrayList<>();
    for (Segment s : path.segments()) {
      names.add(facing(s.directionAt(0.5).right().angle()));
    }
    return names;
  }

  /** A rectangle with its corner radii, front left, front right, back right, back left. */
  static Named rectangle(double length, double width, List<Double> radii) {
    Vec2[] corner = {
      new Vec2(-length / 2, -width / 2),
      new Vec2(length / 2, -width / 2),
      new Vec2(length / 2, width / 2),
      new Vec2(-length / 2, width / 2)
    };
    List<Segment> segments = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (int side = 0; side < 4; side++) {
      Vec2 a = corner[side];
      Vec2 b = corner[(side + 1) % 4];
      double ra = rounded(radii.get(side));
      double rb = rounded(radii.get((side + 1) % 4));
      Vec2 along = b.minus(a).unit();
      Vec2 from = a.along(along, ra);
      Vec2 to = b.along(along, -rb);
      if (from.distance(to) > 1e-9) {
        segments.add(Segment.line(from, to));
        names.add(SIDES.get(side));
      }
      if (rb > 0) {
        double start = along.right().angle();
        segments.add(Segment.arc(to.along(along.left(), rb), rb, start, start + Math.PI / 2));
        names.add(CORNERS.get((side + 1) % 4) + " corner");
      }
    }
    return new Named(new Path(segments, true), names);
  }

  /** A radius too small to cut is none. */
  private static double rounded(double radius) {
    return radius < SHARP ? 0 : radius;
  }

  /**
   * The numbers in a name such as "side 3", or "side 3 to 9", of a free outline; none where the
   * name has none.
   */
  private static int[] numbers(String name) {
    if (!name.startsWith(SIDE)) {
      return new int[0];
    }
    int at = name.indexOf(PASSAGE);
    String own = (at < 0 ? name : name.substring(0, at)).substring(SIDE.length());
    return Arrays.stream(own.split(TO)).mapToInt(Integer::parseInt).toArray();
  }

  /**
   * The name of sides of a free outline that are one curve, from the lower number to the higher but
   * where they go over the last one.
   *
   * @param sides how many there are
   */
  public static String joined(String first, String last, int sides) {
    int[] from = numbers(first);
    int[] to = numbers(last);
    if (first.equals(last) || from.length == 0 || to.length == 0) {
      return first;
    }
    int low = from[0];
    int high = to[to.length - 1];
    // An outline given clockwise is laid out from its last side.
    int lowFalling = to[0];
    int highFalling = from[from.length - 1];
    boolean rises = high - low + 1 == sides;
    boolean falls = highFalling - lowFalling + 1 == sides;
    return rises || !falls && low > high
        ? SIDE + low + TO + high
        : SIDE + lowFalling + TO + highFalling;
  }

  /** How many sides of a free outline a name stands for. */
  public static int sidesIn(String name) {
    int[] of = numbers(name);
    return of.length < 2 ? 1 : Math.abs(of[1] - of[0]) + 1;
  }

  /** The name of a passage along a side: the first of it, or one at its far end as well. */
  public static String passage(String side, boolean second) {
    return side + PASSAGE + (second ? " 2" : "");
  }

  /**
   * The side that a stretch of the outline belongs to: its own name, but of a passage, and of sides
   * that are one curve the first.
   */
  public static String sideOf(String name) {
    int at = name.indexOf(PASSAGE);
    int to = name.startsWith(SIDE) ? name.indexOf(TO) : -1;
    return at >= 0 ? sideOf(name.substring(0, at)) : to >= 0 ? name.substring(0, to) : name;
  }

  /** Which of the four sides a segment is: by its name, else by which way it faces. */
  public static String facing(String name, Segment segment) {
    return SIDES.contains(sideOf(name))
        ? sideOf(name)
        : facing(segment.directionAt(0.5).right().angle());
  }

  /** The one of the four sides that an outward normal points to. */
  public static String facing(double normal) {
    int quarter = (int) Math.floor((normal + 0.75 * Math.PI) / (Math.PI / 2) + 1e-9);
    return SIDES.get(Math.floorMod(quarter, 4));
  }

  /**
   * The name of the corner between two sides, such as "front right"; between two sides of a free
   * outline the number of the point they share, such as "point 3", or the name of the side between
   * them that they were lengthened over.
   *
   * @param names of all sides of the outline
   */
  public static String cornerName(String before, String after, List<String> names) {
    int[] from = numbers(before);
    int[] to = numbers(after);
    if (from.length > 0 && to.length > 0) {
      int all = names.stream().flatMapToInt(n -> Arrays.stream(numbers(n))).max().orElse(0);
      for (int over = 1; over <= 2; over++) {
        for (int a : from) {
          for (int b : to) {
            // Side k starts from point k; the last one ends at the first point.
            int first = next(a, over, all) == b ? a : next(b, over, all) == a ? b : 0;
            if (first > 0) {
              return over == 1 ? "point " + next(first, 1, all) : SIDE + next(first, 1, all);
            }
          }
        }
      }
      return "point "
          + Math.min(Arrays.stream(from).min().orElse(0), Arrays.stream(to).min().orElse(0));
    }
    int turn = Math.floorMod(SIDES.indexOf(after) - SIDES.indexOf(before), 4);
    if (turn == 2) {
      // Two roundings that take up a whole side between them.
      return SIDES.get((SIDES.indexOf(before) + 1) % 4) + " end";
    }
    boolean level = before.equals("front") || before.equals("back");
    return level ? before + " " + after : after + " " + before;
  }

  /** The number of the side so many on from another, of so many in all. */
  private static int next(int side, int on, int all) {
    return (side - 1 + on) % all + 1;
  }
}
