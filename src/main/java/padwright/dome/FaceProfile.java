package padwright.dome;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.TautPath;

/**
 * How the face falls from the level middle to its edge, along one section: straight ramps between
 * rows. The face ends where the covering has turned down by 45 degrees, or where a narrow bend
 * takes it further: what is steeper is wall, and its fullness is the corners' concern (our own
 * division). A narrow bend is taken as a crease, a wide one as a row of chords. mm.
 *
 * @param rows from where the level middle ends to the edge of the face, at least one
 * @param surplus on the face for each radian that the outline turns: s - x(s)
 */
record FaceProfile(List<Row> rows, double surplus) {
  /** Where the covering is steeper than this, radians, it lies on the wall; own choice. */
  static final double WALL = Math.PI / 4;

  /** A bend no longer than this, mm, is a crease, and a wider one has chords no longer; own. */
  static final double NARROW = 10;

  /** Rows nearer to each other in plan, mm, are one: chords of a narrow bend are no closer. */
  private static final double CLOSEST = 4;

  /** Slack in an angle; arithmetic only. */
  private static final double SAME = 1e-6;

  /** Heights this near, mm, are one; arithmetic only. */
  static final double LEVEL = 1e-9;

  /**
   * Rows of two sides that differ less in height, mm, are made level: foam is cut far less true,
   * and triangles between them would be slivers.
   */
  private static final double NEARLY_LEVEL = 0.05;

  FaceProfile {
    rows = List.copyOf(rows);
  }

  /**
   * Where the slope changes: so far out of the outline in plan, so high over the back of the board.
   */
  record Row(double out, double height) {}

  static FaceProfile of(TautPath taut) {
    List<Row> rows = new ArrayList<>();
    double s = taut.startX();
    Vec2 end = taut.neutral().start();
    for (Segment piece : taut.neutral().segments()) {
      double before = -piece.directionAt(0).angle();
      double after = -piece.directionAt(1).angle();
      boolean narrow = piece.isArc() && piece.length() <= NARROW;
      if (before > WALL - SAME || narrow && after > WALL) {
        break;
      }
      double part = after <= WALL ? 1 : (WALL - before) / (after - before);
      if (narrow) {
        // The corner that the straight pieces beside it make.
        double reach = piece.radius() * Math.tan(Math.abs(piece.sweep()) / 2);
        add(rows, piece.start().along(piece.directionAt(0), reach));
      } else if (piece.isArc()) {
        int chords = (int) Math.ceil(part * piece.length() / NARROW);
        for (int k = 0; k <= chords; k++) {
          add(rows, piece.pointAt(part * k / chords));
        }
      } else if (rows.isEmpty()) {
        add(rows, piece.start());
      }
      s += part * piece.length();
      end = piece.pointAt(part);
      if (part < 1) {
        break;
      }
    }
    // The edge is where it is: what would make a row too close to it gives way.
    while (rows.size() > 1 && end.x() < rows.get(rows.size() - 1).out() + CLOSEST) {
      rows.remove(rows.size() - 1);
    }
    rows.add(new Row(end.x(), end.y()));
    return new FaceProfile(rows, s - end.x());
  }

  private static void add(List<Row> rows, Vec2 at) {
    if (rows.isEmpty() || at.x() > rows.get(rows.size() - 1).out() + CLOSEST) {
      rows.add(new Row(at.x(), at.y()));
    }
  }

  /** The same with rows raised or lowered to heights of other sides that are nearly theirs. */
  FaceProfile levelWith(List<Double> heights) {
    List<Row> level = new ArrayList<>();
    for (int r = 0; r < rows.size(); r++) {
      Row row = rows.get(r);
      double above = r == 0 ? Double.POSITIVE_INFINITY : rows.get(r - 1).height() - row.height();
      double below =
          r + 1 == rows.size() ? Double.POSITIVE_INFINITY : row.height() - rows.get(r + 1).height();
      double moved = row.height();
      // Two rows of one side are never moved past each other.
      double least = Math.min(NEARLY_LEVEL, Math.min(above, below) / 2);
      for (double height : heights) {
        if (Math.abs(height - row.height()) < least) {
          least = Math.abs(height - row.height());
          moved = height;
        }
      }
      // The edge slides along its ramp, so that the ramps stay in the planes they are in.
      boolean slides = r > 0 && r + 1 == rows.size() && above > 0;
      double along = slides ? (row.height() - moved) * (row.out() - rows.get(r - 1).out()) : 0;
      level.add(new Row(slides ? row.out() + along / above : row.out(), moved));
    }
    return new FaceProfile(level, surplus);
  }

  Row edge() {
    return rows.get(rows.size() - 1);
  }

  /** Height of the level middle. */
  double top() {
    return rows.get(0).height();
  }

  /** The steepest fall in plan, mm a mm. */
  double steepest() {
    double most = 0;
    for (int r = 1; r < rows.size(); r++) {
      Row a = rows.get(r - 1);
      Row b = rows.get(r);
      most = Math.max(most, Math.abs(a.height() - b.height()) / (b.out() - a.out()));
    }
    return most;
  }

  /** Height so far out of the outline, level on both sides of the rows. */
  double height(double out) {
    Row low = rows.get(0);
    if (out <= low.out()) {
      return low.height();
    }
    for (Row high : rows) {
      if (out <= high.out()) {
        double part = (out - low.out()) / (high.out() - low.out());
        return low.height() + part * (high.height() - low.height());
      }
      low = high;
    }
    return low.height();
  }

  /** How far out the face comes down to a height; its edge where it does not come so low. */
  double out(double height) {
    int r = rows.size() - 1;
    while (r > 0 && rows.get(r).height() < height - LEVEL) {
      r--;
    }
    Row at = rows.get(r);
    if (r == rows.size() - 1 || at.height() <= height + LEVEL) {
      return at.out();
    }
    Row next = rows.get(r + 1);
    double part = (at.height() - height) / (at.height() - next.height());
    return at.out() + part * (next.out() - at.out());
  }

  /** Whether the slope changes at a height. */
  boolean creased(double height) {
    return rows.stream().anyMatch(row -> Math.abs(row.height() - height) <= LEVEL);
  }
}
