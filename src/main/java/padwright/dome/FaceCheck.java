package padwright.dome;

import java.util.Locale;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;
import padwright.geometry.mesh.MeshRefused;
import padwright.geometry.mesh.TriangleMesh;

/**
 * Holds the face over a hollow outline to what it must be. Its height is asked of the nearest side,
 * and its rows come from moving the outline: where ways in from hollow corners cross, the two may
 * differ, and then neither is trusted.
 */
final class FaceCheck {
  /** Slack in a height, mm; arithmetic only. */
  private static final double SAME = 1e-3;

  private FaceCheck() {}

  /**
   * Passes over convex outlines, where the distance has no such choice.
   *
   * @throws MeshRefused where a row is not level
   */
  static void rows(DomedTop top) {
    if (!top.sides().convex()) {
      for (DomedTop.Level level : top.levels()) {
        top.at(level).ifPresent(path -> row(top, level, path));
      }
    }
  }

  /**
   * Passes over convex outlines as well.
   *
   * @throws MeshRefused where the face has a step, or its slopes meet below its level middle
   */
  static void mesh(DomedTop top, TriangleMesh mesh) {
    if (top.sides().convex()) {
      return;
    }
    double steepest = 0;
    double middle = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < top.sides().count(); i++) {
      steepest = Math.max(steepest, top.profile(i).steepest());
      middle = Math.max(middle, top.profile(i).top());
    }
    boolean[] ends = new boolean[mesh.vertexCount()];
    java.util.Arrays.fill(ends, true);
    for (int h = 0; h < 3 * mesh.triangleCount(); h++) {
      Vec3 p = mesh.vertex(mesh.from(h));
      Vec3 q = mesh.vertex(mesh.to(h));
      double rise = q.z() - p.z();
      if (Math.abs(rise) > steepest * Math.hypot(q.x() - p.x(), q.y() - p.y()) + SAME) {
        throw crossing(new Vec2(p.x(), p.y()));
      }
      ends[mesh.from(h)] &= rise <= SAME / 1e3 && mesh.twin(h) >= 0;
    }
    for (int v = 0; v < ends.length; v++) {
      Vec3 p = mesh.vertex(v);
      if (ends[v] && p.z() < middle - SAME) {
        throw new MeshRefused(
            String.format(
                Locale.ROOT,
                "near (%.0f, %.0f) the slopes of the dome meet before they reach its level middle",
                p.x(),
                p.y()),
            "make the part wider there, or the dome narrower");
      }
    }
  }

  private static void row(DomedTop top, DomedTop.Level level, Path path) {
    for (Segment s : path.segments()) {
      for (Vec2 p : new Vec2[] {s.start(), s.pointAt(0.5)}) {
        if (Math.abs(top.excess(p, level.outs())) > SAME) {
          throw crossing(p);
        }
      }
    }
  }

  private static MeshRefused crossing(Vec2 at) {
    return new MeshRefused(
        String.format(
            Locale.ROOT,
            "near (%.0f, %.0f) ways in from hollow corners cross or a corner is too sharp, and the"
                + " height there is not known",
            at.x(),
            at.y()),
        "pin the covering over the foam");
  }
}
