package padwright.export;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * What is still free on a piece. Lines and boxes are entered as obstacles; a box fits where it
 * touches none of them. Obstacles lie in a coarse grid of buckets, so that a question only meets
 * the ones near it. One room serves one drawing; it is not shared between threads.
 */
final class Room {
  /** Chords of an arc as an obstacle: a fifth of the least clearance. */
  private static final double CHORD_ERROR = 0.2;

  /** Bucket size: about a label's height, so that most buckets hold nothing. */
  private static final double LEAST_BUCKET = 12;

  private static final int MOST_BUCKETS = 48;

  /** Positions tried along each axis: a finer search finds little more and costs its square. */
  private static final int STEPS = 40;

  private static final double LEAST_STEP = 1.25;

  private final Bounds bounds;
  private final double[] polygon;
  private final List<double[]> holes = new ArrayList<>();
  private final int columns;
  private final int rows;
  private final double bucket;
  private final int[][] buckets;
  private double[] lines = new double[512];
  private int count;
  private int[] asked = new int[128];
  private int question;
  private final List<Box> boxes = new ArrayList<>();

  Room(Path cutLine, List<Path> innerCuts) {
    this.bounds = cutLine.bounds();
    this.polygon = points(cutLine);
    double size = Math.max(bounds.width(), bounds.height());
    this.bucket = Math.max(LEAST_BUCKET, size / MOST_BUCKETS);
    this.columns = 1 + (int) (bounds.width() / bucket);
    this.rows = 1 + (int) (bounds.height() / bucket);
    this.buckets = new int[columns * rows][];
    add(cutLine);
    for (Path p : innerCuts) {
      holes.add(points(p));
      add(p);
    }
  }

  Bounds bounds() {
    return bounds;
  }

  /** Enters a line as an obstacle. */
  void add(Path path) {
    for (Segment s : path.segments()) {
      if (s.isArc()) {
        List<Vec2> points = new ArrayList<>();
        points.add(s.start());
        s.flattenInto(points, CHORD_ERROR);
        for (int i = 0; i + 1 < points.size(); i++) {
          addLine(points.get(i), points.get(i + 1));
        }
      } else {
        addLine(s.start(), s.end());
      }
    }
  }

  /** Enters a box as an obstacle. */
  void add(Box box) {
    boxes.add(box);
  }

  private void addLine(Vec2 p, Vec2 q) {
    if (4 * count + 4 > lines.length) {
      lines = Arrays.copyOf(lines, 2 * lines.length);
      asked = Arrays.copyOf(asked, 2 * asked.length);
    }
    int at = 4 * count;
    lines[at] = p.x();
    lines[at + 1] = p.y();
    lines[at + 2] = q.x();
    lines[at + 3] = q.y();
    Bounds b = Bounds.of(p).with(q);
    for (int r = row(b.minY()); r <= row(b.maxY()); r++) {
      for (int c = column(b.minX()); c <= column(b.maxX()); c++) {
        enter(r * columns + c);
      }
    }
    count++;
  }

  /** A bucket's first entry is how many lines follow. */
  private void enter(int index) {
    int[] b = buckets[index];
    if (b == null) {
      b = new int[8];
    } else if (b[0] + 1 == b.length) {
      b = Arrays.copyOf(b, 2 * b.length);
    }
    b[++b[0]] = count;
    buckets[index] = b;
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) ((x - bounds.minX()) / bucket)));
  }

  private int row(double y) {
    return Math.max(0, Math.min(rows - 1, (int) ((y - bounds.minY()) / bucket)));
  }

  /** True where nothing entered comes nearer to the box than {@code clearance}. */
  boolean clear(Box box, double clearance) {
    Box g = box.grown(clearance);
    for (int i = boxes.size() - 1; i >= 0; i--) {
      if (boxes.get(i).meets(g)) {
        return false;
      }
    }
    double ux = Math.cos(g.angle());
    double uy = Math.sin(g.angle());
    double x = g.centre().x();
    double y = g.centre().y();
    Bounds b = g.bounds();
    question++;
    int lastColumn = column(b.maxX());
    int lastRow = row(b.maxY());
    for (int r = row(b.minY()); r <= lastRow; r++) {
      for (int c = column(b.minX()); c <= lastColumn; c++) {
        int[] near = buckets[r * columns + c];
        for (int k = 1; near != null && k <= near[0]; k++) {
          if (asked[near[k]] == question) {
            continue;
          }
          asked[near[k]] = question;
          int at = 4 * near[k];
          double px = lines[at] - x;
          double py = lines[at + 1] - y;
          double qx = lines[at + 2] - x;
          double qy = lines[at + 3] - y;
          if (Box.crosses(
              px * ux + py * uy,
              py * ux - px * uy,
              qx * ux + qy * uy,
              qy * ux - qx * uy,
              g.width() / 2,
              g.height() / 2)) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /** True where the box lies on the piece, clear of everything. */
  boolean holds(Box box, double clearance) {
    return bounds.contains(box.centre()) && clear(box, clearance) && onPiece(box.centre());
  }

  /** True where the box lies off the piece, clear of everything. */
  boolean clearOutside(Box box, double clearance) {
    return clear(box, clearance) && !inPolygon(polygon, box.centre());
  }

  /** True where a straight line meets no box that was entered. */
  boolean passes(Vec2 from, Vec2 to) {
    for (Box b : boxes) {
      if (b.meets(from, to)) {
        return false;
      }
    }
    return true;
  }

  boolean onPiece(Vec2 p) {
    if (!inPolygon(polygon, p)) {
      return false;
    }
    for (double[] hole : holes) {
      if (inPolygon(hole, p)) {
        return false;
      }
    }
    return true;
  }

  /** The place nearest to {@code wish}, ring by ring of a grid, where a box of this size fits. */
  Optional<Box> nearest(double width, double height, double angle, Vec2 wish, double clearance) {
    Bounds need = new Box(Vec2.ZERO, width, height, angle).bounds();
    double slackX = bounds.width() - need.width() - 2 * clearance;
    double slackY = bounds.height() - need.height() - 2 * clearance;
    if (slackX < 0 || slackY < 0) {
      return Optional.empty();
    }
    double dx = Math.max(LEAST_STEP, slackX / STEPS);
    double dy = Math.max(LEAST_STEP, slackY / STEPS);
    int rings = 1 + (int) Math.ceil(Math.max(bounds.width() / dx, bounds.height() / dy));
    rings = Math.min(rings, 2 * STEPS);
    for (int ring = 0; ring <= rings; ring++) {
      for (int i = -ring; i <= ring; i++) {
        int step = Math.abs(i) == ring || ring == 0 ? 1 : 2 * ring;
        for (int j = -ring; j <= ring; j += step) {
          Vec2 at = new Vec2(wish.x() + i * dx, wish.y() + j * dy);
          Box box = new Box(at, width, height, angle);
          if (holds(box, clearance)) {
            return Optional.of(box);
          }
        }
      }
    }
    return Optional.empty();
  }

  private static double[] points(Path path) {
    List<Vec2> list = path.flattened(CHORD_ERROR);
    double[] xy = new double[2 * list.size()];
    for (int i = 0; i < list.size(); i++) {
      xy[2 * i] = list.get(i).x();
      xy[2 * i + 1] = list.get(i).y();
    }
    return xy;
  }

  /** Counts how often a ray to the right crosses the edges. */
  private static boolean inPolygon(double[] xy, Vec2 p) {
    boolean inside = false;
    int n = xy.length;
    for (int i = 0, j = n - 2; i < n; j = i, i += 2) {
      double yi = xy[i + 1];
      double yj = xy[j + 1];
      if (yi > p.y() != yj > p.y() && p.x() < (xy[j] - xy[i]) * (p.y() - yi) / (yj - yi) + xy[i]) {
        inside = !inside;
      }
    }
    return inside;
  }
}
