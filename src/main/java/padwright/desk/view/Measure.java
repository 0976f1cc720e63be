package padwright.desk.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import padwright.design.Units;
import padwright.export.Drawing;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.measure.LengthText;
import padwright.measure.LengthUnit;
import padwright.measure.Rounding;

/**
 * Measures between two places of a full-size drawing, mm, and finds the places a maker means: the
 * staples, corners, ends, middles and circles' centres of its lines, else the nearest point of a
 * line. Hatchings, leaders, frames and samples of a legend are no lines of the piece.
 */
public final class Measure {
  /** Two lines that turn by less than this run on into each other, radians: about a degree. */
  private static final double TURN = 0.02;

  /** Places nearer to each other than this are one, mm: far below what a rule can tell. */
  private static final double SAME = 0.01;

  /** What a place is; where two fall together the earlier one names it. */
  public enum Kind {
    STAPLE("staple"),
    CORNER("corner"),
    CENTRE("centre"),
    END("end of a line"),
    MIDDLE("middle of a line"),
    ON_LINE("on a line"),
    FREE("free");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** A place that was found. */
  public record Place(Vec2 at, Kind kind) {}

  /**
   * What was measured, mm.
   *
   * @param across how far to the right, as drawn; negative to the left
   * @param up how far up, as drawn
   */
  public record Measured(Vec2 from, Vec2 to, double distance, double across, double up) {
    /** Such as {@code 50.0 mm: 40.0 mm across, 30.0 mm up or down}. */
    public String sentence(Units units) {
      return text(units, distance)
          + ": "
          + text(units, Math.abs(across))
          + " across, "
          + text(units, Math.abs(up))
          + " up or down";
    }

    private static String text(Units units, double mm) {
      LengthUnit unit = units == Units.MM ? LengthUnit.MM : LengthUnit.INCH;
      return LengthText.in(unit, mm, Rounding.NEAREST);
    }
  }

  private final List<Place> places;
  private final List<Segment> segments = new ArrayList<>();

  private Measure(Drawing drawing) {
    Map<Long, Place> found = new HashMap<>();
    for (Item item : drawing.items()) {
      if (item instanceof Stroke s && !s.sample() && measured(s.style())) {
        if (s.style() == LineStyle.STAPLE_BODY) {
          add(found, s.path().segments().get(0).pointAt(0.5), Kind.STAPLE);
        } else {
          add(found, s.path());
        }
      }
    }
    places =
        found.values().stream()
            .sorted(
                Comparator.comparingDouble((Place p) -> -p.at.y())
                    .thenComparingDouble(p -> p.at.x()))
            .toList();
  }

  public static Measure of(Drawing drawing) {
    return new Measure(drawing);
  }

  private static boolean measured(LineStyle style) {
    return switch (style) {
      case HATCH, LEADER, FRAME, DIMENSION, ARROW -> false;
      default -> true;
    };
  }

  private void add(Map<Long, Place> found, Path path) {
    List<Segment> all = path.segments();
    segments.addAll(all);
    boolean circle = path.closed() && all.stream().allMatch(Segment::isArc);
    if (circle && all.stream().allMatch(s -> s.centre().distance(all.get(0).centre()) < SAME)) {
      add(found, all.get(0).centre(), Kind.CENTRE);
    }
    for (int i = 0; i < all.size(); i++) {
      Segment s = all.get(i);
      if (s.length() < SAME) {
        continue;
      }
      if (!circle) {
        add(found, s.pointAt(0.5), Kind.MIDDLE);
      }
      boolean last = i == all.size() - 1;
      if (last && !path.closed()) {
        add(found, s.end(), Kind.END);
      } else {
        Segment next = all.get((i + 1) % all.size());
        boolean turns = next.length() < SAME || turn(s, next) > TURN;
        if (turns || s.isArc() != next.isArc()) {
          add(found, s.end(), turns ? Kind.CORNER : Kind.END);
        }
      }
    }
    if (!path.closed()) {
      add(found, path.start(), Kind.END);
    }
  }

  private static double turn(Segment s, Segment next) {
    Vec2 a = s.directionAt(1);
    Vec2 b = next.directionAt(0);
    return Math.abs(Math.atan2(a.cross(b), a.dot(b)));
  }

  private static void add(Map<Long, Place> found, Vec2 at, Kind kind) {
    long key = Math.round(at.x() / SAME) * 0x1_0000_0000L + Math.round(at.y() / SAME);
    found.merge(key, new Place(at, kind), (a, b) -> a.kind.compareTo(b.kind) <= 0 ? a : b);
  }

  /** All places with a name of their own, row by row from the top. */
  public List<Place> places() {
    return places;
  }

  /**
   * The place meant by a point: the nearest with a name of its own within {@code reach} mm, else
   * the nearest on a line within it, else the point itself.
   */
  public Place snap(Vec2 point, double reach) {
    Place best = null;
    double least = reach;
    for (Place p : places) {
      double d = p.at.distance(point);
      if (d <= least) {
        least = d;
        best = p;
      }
    }
    if (best != null) {
      return best;
    }
    for (Segment s : segments) {
      Vec2 on = s.nearest(point);
      double d = on.distance(point);
      if (d <= least) {
        least = d;
        best = new Place(on, Kind.ON_LINE);
      }
    }
    return best == null ? new Place(point, Kind.FREE) : best;
  }

  public static Measured between(Vec2 from, Vec2 to) {
    return new Measured(from, to, from.distance(to), to.x() - from.x(), to.y() - from.y());
  }
}
