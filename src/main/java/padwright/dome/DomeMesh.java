package padwright.dome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.dome.DomedTop.Level;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.geometry.mesh.SurfaceMesher;
import padwright.geometry.mesh.TriangleMesh;

/**
 * Meshes a domed top with points along every row where its slope changes and along the hips over
 * its sharp corners and the valleys at its hollow ones, so that no triangle lies across a crease.
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

  private final DomedTop top;
  private final List<HipTracer.Line> lines;
  private final double size;
  private final Path edge;
  private final List<List<Vec2>> kept = new ArrayList<>();

  /** Places on the face's edge from which a hip or a row runs in. */
  private final List<Vec2> onEdge = new ArrayList<>();

  private DomeMesh(DomedTop top, Path edge, List<HipTracer.Line> lines, double size) {
    this.top = top;
    this.edge = edge;
    this.lines = lines;
    this.size = size;
  }

  /** Length of a triangle's edge over a face of such an area, mm. */
  static double size(double area) {
    double fewest = Math.sqrt(area / (FEWEST * EVEN));
    double most = Math.sqrt(area / (MOST * EVEN));
    return Math.max(most, Math.min(fewest, PATCH * Patches.RADIUS));
  }

  static TriangleMesh of(DomedTop top, Path edge, List<HipTracer.Line> lines, double size) {
    DomeMesh mesh = new DomeMesh(top, edge, lines, size);
    lines.forEach(mesh::keep);
    List<Level> levels = top.levels();
    for (int k = 0; k + 1 < levels.size(); k++) {
      mesh.row(k);
    }
    return SurfaceMesher.mesh(mesh.withPlaces(), size, top::height, mesh.kept);
  }

  /** The points of a hip. */
  private void keep(HipTracer.Line line) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i + 1 < line.points().size(); i++) {
      Vec2 from = line.points().get(i);
      Vec2 to = line.points().get(i + 1);
      int parts = parts(from.distance(to), size, 1);
      // In a rounding of the edge the mesher's vertices stand elsewhere than the seam.
      boolean free = i == 0 && line.curve();
      for (int k = free ? 1 : 0; k < parts; k++) {
        points.add(from.plus(to.minus(from).times((double) k / parts)));
      }
    }
    points.add(line.points().get(line.points().size() - 1));
    kept.add(points);
    if (!line.curve()) {
      points.set(0, onEdge(points.get(0)));
    }
  }

  /** The points of a row; of one that not all sides have, along those that have it. */
  private void row(int k) {
    Level level = top.levels().get(k);
    Optional<Path> path = top.at(level);
    if (path.isEmpty()) {
      return;
    }
    double apart = apart(k);
    List<Vec2> points = new ArrayList<>();
    for (Segment s : path.get().segments()) {
      if (!runs(s, level)) {
        finish(points);
        points = new ArrayList<>();
        continue;
      }
      int parts = parts(s.length(), apart, s.isArc() ? 2 * Math.max(1, HipTracer.seams(s)) : 1);
      for (int i = points.isEmpty() ? 0 : 1; i <= parts; i++) {
        points.add(
            i % parts == 0 ? snapped(i == 0 ? s.start() : s.end()) : s.pointAt((double) i / parts));
      }
    }
    finish(points);
  }

  private void finish(List<Vec2> points) {
    if (points.isEmpty()) {
      return;
    }
    points.set(0, onEdge(points.get(0)));
    int last = points.size() - 1;
    points.set(last, onEdge(points.get(last)));
    kept.add(points);
  }

  /**
   * An end of a line: the joint of the edge that it is, or a place where it may run in. Over an
   * even convex top all lines begin at the edge's joints.
   */
  private Vec2 onEdge(Vec2 p) {
    if (top.alike() && top.sides().convex()) {
      return p;
    }
    for (Segment s : edge.segments()) {
      if (s.start().distance(p) <= DomedTop.JOINED) {
        return s.start();
      }
    }
    onEdge.add(p);
    return p;
  }

  /** How far apart points of a row are, as its neighbours in plan ask for. */
  private double apart(int k) {
    if (!top.alike()) {
      return size;
    }
    double[] outs = top.levels().stream().mapToDouble(level -> level.outs()[0]).toArray();
    double gap = outs[k + 1] - outs[k];
    double within = k == 0 ? gap : Math.min(gap, outs[k] - outs[k - 1]);
    return Math.max(CLOSEST * size, Math.min(size, within));
  }

  /** Whether the slope changes along a piece of a row inside the face. */
  private boolean runs(Segment s, Level level) {
    if (top.alike()) {
      return true;
    }
    int side = top.sides().from(s, level.outs(), DomedTop.JOINED);
    return side >= 0
        && top.profile(side).creased(level.height())
        && level.outs()[side] < top.profile(side).edge().out() - DomedTop.SAME;
  }

  /** The point of a hip that a row's joint is, where it is one. */
  private Vec2 snapped(Vec2 p) {
    for (HipTracer.Line line : lines) {
      for (Vec2 q : line.points()) {
        if (q.distance(p) <= DomedTop.JOINED) {
          return q;
        }
      }
    }
    return p;
  }

  /** The face's edge as a polygon, with a corner wherever a line runs in. */
  private List<Vec2> withPlaces() {
    List<Segment> pieces = new ArrayList<>(edge.segments());
    for (Vec2 p : onEdge) {
      for (int i = 0; i < pieces.size(); i++) {
        Segment s = pieces.get(i);
        if (s.distanceTo(p) <= DomedTop.JOINED) {
          if (Math.min(p.distance(s.start()), p.distance(s.end())) > DomedTop.JOINED) {
            double first = s.isArc() ? share(s, p) : 0;
            pieces.set(i, new Segment(s.start(), p, Math.tan(s.sweep() * first / 4)));
            pieces.add(i + 1, new Segment(p, s.end(), Math.tan(s.sweep() * (1 - first) / 4)));
          }
          break;
        }
      }
    }
    return new Path(pieces, true).flattened(CHORD_ERROR);
  }

  /** How far along an arc a place on it is, as a part of the whole. */
  private static double share(Segment arc, Vec2 p) {
    Vec2 middle = arc.pointAt(0.5).minus(arc.centre());
    Vec2 v = p.minus(arc.centre());
    return 0.5 + Math.atan2(middle.cross(v), middle.dot(v)) / arc.sweep();
  }

  private static int parts(double length, double apart, int multiple) {
    int parts = (int) Math.ceil(length / (ALONG * apart * multiple));
    return Math.max(1, parts) * multiple;
  }
}
