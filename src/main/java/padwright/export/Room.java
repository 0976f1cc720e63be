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

  /** A ring is tried on both its sides in turn, each with obstacles of its own. */
  private static final int RECENT = 4;

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
  private final BoxSet boxes = new BoxSet();

  /** What stood in the way last: it mostly stands in the way of the next place tried, too. */
  private final int[] recent = new int[RECENT];

  private int found;

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
  boolean clear(Box b, double clearance) {
    return clear(
        b.centre().x(),
        b.centre().y(),
        Math.cos(b.angle()),
        Math.sin(b.angle()),
        b.width() / 2 + clearance,
        b.height() / 2 + clearance);
  }

  /** The same with the box as its middle, the direction of its width and its half sides. */
  private boolean clear(double x, double y, double ux, double uy, double hw, double hh) {
    for (int k = 0; k < Math.min(found, RECENT); k++) {
      if (meets(recent[k], x, y, ux, uy, hw, hh)) {
        return false;
      }
    }
    if (boxes.anyMeets(x, y, ux, uy, hw, hh)) {
      return false;
    }
    double reachX = Math.abs(ux) * hw + Math.abs(uy) * hh;
    double reachY = Math.abs(uy) * hw + Math.abs(ux) * hh;
    int firstColumn = column(x - reachX);
    int lastColumn = column(x + reachX);
    int lastRow = row(y + reachY);
    question++;
    for (int r = row(y - reachY); r <= lastRow; r++) {
      for (int c = firstColumn; c <= lastColumn; c++) {
        int[] near = buckets[r * columns + c];
        for (int k = 1; near != null && k <= near[0]; k++) {
          if (asked[near[k]] != question && meets(near[k], x, y, ux, uy, hw, hh)) {
            recent[found++ % RECENT] = near[k];
            return false;
          }
          asked[near[k]] = question;
        }
      }
    }
    return true;
  }

  private boolean meets(int i, double x, double y, double ux, double uy, double hw, double hh) {
    double px = lines[4 * i] - x;
    double py = lines[4 * i + 1] - y;
    double qx = lines[4 * i + 2] - x;
    double qy = lines[4 * i + 3] - y;
    return Box.crosses(
        px * ux + py * uy, py * ux - px * uy, qx * ux + qy * uy, qy * ux - qx * uy, hw, hh);
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
    return !boxes.anyOn(from, to);
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
    double ux = Math.cos(angle);
    double uy = Math.sin(angle);
    double hw = width / 2 + clearance;
    double hh = height / 2 + clearance;
    double reachX = Math.abs(ux) * hw + Math.abs(uy) * hh;
    double reachY = Math.abs(uy) * hw + Math.abs(ux) * hh;
    double slackX = bounds.width() - 2 * reachX;
    double slackY = bounds.height() - 2 * reachY;
    if (slackX < 0 || slackY < 0) {
      return Optional.empty();
    }
    double dx = Math.max(LEAST_STEP, slackX / STEPS);
    double dy = Math.max(LEAST_STEP, slackY / STEPS);
    int left = (int) Math.ceil((bounds.minX() + reachX - wish.x()) / dx);
    int right = (int) Math.floor((bounds.maxX() - reachX - wish.x()) / dx);
    int down = (int) Math.ceil((bounds.minY() + reachY - wish.y()) / dy);
    int up = (int) Math.floor((bounds.maxY() - reachY - wish.y()) / dy);
    int rings = Math.max(Math.max(-left, right), Math.max(-down, up));
    for (int ring = 0; ring <= rings; ring++) {
      for (int i = Math.max(left, -ring); i <= Math.min(right, ring); i++) {
        int step = Math.abs(i) == ring || ring == 0 ? 1 : 2 * ring;
        for (int j = step == 1 ? Math.max(down, -ring) : -ring;
            j <= Math.min(up, ring);
            j += step) {
          double x = wish.x() + i * dx;
          double y = wish.y() + j * dy;
          if (j >= down && clear(x, y, ux, uy, hw, hh) && onPiece(new Vec2(x, y))) {
            return Optional.of(new Box(new Vec2(x, y), width, height, angle));
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
