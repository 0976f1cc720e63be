package padwright.dome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.geometry.mesh.SurfaceMesher;
import padwright.geometry.mesh.TriangleMesh;
import padwright.shape.Outlines;

/**
 * Meshes a domed top with points along every row where its slope changes and along the hips over
 * its sharp corners, so that no triangle lies across a crease.
 */
final class DomeMesh {
  /** Chords of the face's edge leave its arcs by this much at most, mm. */
  private static final double CHORD_ERROR = 0.05;

  /** A triangle's edge as a part of a patch's radius. */
  private static final double PATCH = 0.6;

  /** Triangles of a small face, and of one so large that a patch would ask for more. */
  private static final int FEWEST = 1000;

  private static final int MOST = 2500;

  /** Area of an even triangle is this times its edge squared. */
  private static final double EVEN = Math.sqrt(3) / 4;

  /**
   * Points along a row are at most this part of the mesh's edge apart, and of the distance to the
   * next row, so that the triangles between stay even.
   */
  private static final double ALONG = 0.8;

  /** No closer than this part of the mesh's edge. */
  private static final double CLOSEST = 0.5;

  /** A rounding that turns less, radians, is not relieved by a seam; own choice. */
  private static final double LEAST_TURN = Math.PI / 6;

  /** A rounding has a seam for about each quarter turn; own choice. */
  private static final double SEAM_EACH = Math.PI / 2;

  /** Slack in a place on a row, mm; arithmetic only. */
  private static final double SAME = 1e-6;

  private DomeMesh() {}

  /**
   * A line on which a seam may run: points from the face's edge inwards.
   *
   * @param segment of the outline: the rounding it runs in from, or the side that ends at its
   *     corner
   */
  record Line(int segment, List<Vec2> points) {}

  /** Length of a triangle's edge over a face of such an area, mm. */
  static double size(double area) {
    double fewest = Math.sqrt(area / (FEWEST * EVEN));
    double most = Math.sqrt(area / (MOST * EVEN));
    return Math.max(most, Math.min(fewest, PATCH * Patches.RADIUS));
  }

  static TriangleMesh of(DomedTop top, Path edge, List<Line> lines, double size) {
    List<List<Vec2>> kept = new ArrayList<>();
    for (Line line : lines) {
      List<Vec2> points = new ArrayList<>();
      for (int i = 0; i + 1 < line.points().size(); i++) {
        Vec2 from = line.points().get(i);
        Vec2 to = line.points().get(i + 1);
        int parts = parts(from.distance(to), size, 1);
        // In a rounding of the edge the mesher's vertices stand elsewhere than the seam.
        boolean free = i == 0 && top.outline().segments().get(line.segment()).isArc();
        for (int k = free ? 1 : 0; k < parts; k++) {
          points.add(from.plus(to.minus(from).times((double) k / parts)));
        }
      }
      points.add(line.points().get(line.points().size() - 1));
      kept.add(points);
    }
    List<DomedTop.Row> rows = top.rows();
    for (int r = 0; r + 1 < rows.size(); r++) {
      double gap = rows.get(r + 1).out() - rows.get(r).out();
      double within = r == 0 ? gap : Math.min(gap, rows.get(r).out() - rows.get(r - 1).out());
      double apart = Math.max(CLOSEST * size, Math.min(size, within));
      Offset.by(top.outline(), rows.get(r).out()).ifPresent(p -> kept.add(along(p, apart)));
    }
    return SurfaceMesher.mesh(edge.flattened(CHORD_ERROR), size, top::height, kept);
  }

  private static int parts(double length, double apart, int multiple) {
    int parts = (int) Math.ceil(length / (ALONG * apart * multiple));
    return Math.max(1, parts) * multiple;
  }

  /** Points along a row, one of them wherever a seam crosses it. */
  private static List<Vec2> along(Path row, double apart) {
    List<Vec2> points = new ArrayList<>();
    for (Segment s : row.segments()) {
      int parts = parts(s.length(), apart, s.isArc() ? 2 * Math.max(1, seams(s)) : 1);
      for (int k = 0; k < parts; k++) {
        points.add(s.pointAt((double) k / parts));
      }
    }
    points.add(points.get(0));
    return points;
  }

  /** How many seams run in from a rounding. */
  private static int seams(Segment rounding) {
    double turn = Math.abs(rounding.sweep());
    return turn < LEAST_TURN ? 0 : Math.max(1, (int) Math.round(turn / SEAM_EACH));
  }

  /** Along the hips over sharp corners of straight sides, and from the middles of roundings. */
  static List<Line> lines(DomedTop top) {
    List<Line> lines = new ArrayList<>();
    List<Segment> sides = top.outline().segments();
    for (int i = 0; i < sides.size(); i++) {
      Segment side = sides.get(i);
      if (side.isArc()) {
        int seams = seams(side);
        for (int k = 0; k < seams; k++) {
          double part = (k + 0.5) / seams;
          line(top, i, side.pointAt(part), side.directionAt(part).right()).ifPresent(lines::add);
        }
      }
      Segment after = sides.get((i + 1) % sides.size());
      Vec2 u = side.directionAt(1);
      Vec2 v = after.directionAt(0);
      if (!side.isArc() && !after.isArc() && Math.atan2(u.cross(v), u.dot(v)) > Outlines.CORNER) {
        Vec2 out = u.right().plus(v.right());
        line(top, i, side.end(), out.times(2 / out.dot(out))).ifPresent(lines::add);
      }
    }
    return lines;
  }

  /** Inwards from the face's edge over one row after another, as far as the rows reach. */
  private static Optional<Line> line(DomedTop top, int segment, Vec2 foot, Vec2 out) {
    List<Vec2> points = new ArrayList<>();
    Segment side = top.outline().segments().get(segment);
    double round = side.isArc() ? side.radius() : Double.POSITIVE_INFINITY;
    boolean beyond = false;
    for (int r = top.rows().size() - 1; r >= 0; r--) {
      double level = top.rows().get(r).out();
      if (level < -round && !beyond) {
        // Further in the rounding has shrunk to a corner, and a hip runs on from its centre.
        points.add(side.centre());
        beyond = true;
      }
      Vec2 p = foot.plus(out.times(level));
      if (beyond) {
        Vec2 sides = side.directionAt(0).right().plus(side.directionAt(1).right());
        p = side.centre().plus(sides.times(2 * (level + round) / sides.dot(sides)));
      }
      if (!(Math.abs(top.out(p.x(), p.y()) - level) <= SAME)) {
        break;
      }
      points.add(p);
    }
    return points.size() > 1 ? Optional.of(new Line(segment, points)) : Optional.empty();
  }
}
