package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * The cut line over a chain of arcs with V-notches set evenly over its turn. A notch may begin on
 * one arc and end on the next.
 */
final class NotchedArcs {
  /** Widest share of its part of the turn that a notch may take: a tongue is left between two. */
  private static final double WIDEST = 0.45;

  private final List<Segment> arcs;
  private final int notches;
  private final double tip;
  private final double mouth;

  /**
   * @param arcs of the base outline, anticlockwise
   * @param tip path length of the notches' tips
   * @param mouth all notch mouths together at the cut line, mm
   */
  NotchedArcs(List<Segment> arcs, int notches, double tip, double mouth) {
    this.arcs = arcs;
    this.notches = notches;
    this.tip = tip;
    this.mouth = mouth;
  }

  /**
   * @param cutStart part of the turn that a corner before the arcs takes off, radians; a notch that
   *     would fall into it is left out
   * @param cutEnd the same at their end
   */
  List<Segment> line(double edge, double cutStart, double cutEnd) {
    List<Segment> out = new ArrayList<>();
    double start = arcs.get(0).directionAt(0).right().angle();
    double turn = arcs.stream().mapToDouble(Segment::sweep).sum();
    double step = turn / notches;
    double at = start + cutStart;
    double end = start + turn - cutEnd;
    for (int j = 0; j < notches; j++) {
      double middle = start + (j + 0.5) * step;
      double radius = arcAt(middle - start).radius() + edge;
      double half = half(step, radius);
      if (middle - half < at || middle + half > end) {
        continue;
      }
      arcs(out, at, middle - half, start, edge);
      Vec2 apex = point(middle, start, tip);
      line(out, point(middle - half, start, edge), apex);
      line(out, apex, point(middle + half, start, edge));
      at = middle + half;
    }
    arcs(out, at, end, start, edge);
    return out;
  }

  private double half(double step, double radius) {
    return Math.min(WIDEST * step, mouth / notches / 2 / radius);
  }

  /** The mouth of the widest, straight across at the cut line, mm. */
  double widest(double edge) {
    double step = arcs.stream().mapToDouble(Segment::sweep).sum() / notches;
    double widest = 0;
    for (int j = 0; j < notches; j++) {
      double radius = arcAt((j + 0.5) * step).radius() + edge;
      widest = Math.max(widest, 2 * radius * Math.sin(half(step, radius)));
    }
    return widest;
  }

  private static void line(List<Segment> out, Vec2 a, Vec2 b) {
    out.add(Segment.line(a, b));
  }

  private Segment arcAt(double into) {
    double run = 0;
    for (Segment s : arcs) {
      run += s.sweep();
      if (into < run) {
        return s;
      }
    }
    return arcs.get(arcs.size() - 1);
  }

  /** The place at an angle, counted over the arcs' own turns alone: joints may turn a little. */
  private Vec2 point(double angle, double start, double s) {
    double run = start;
    for (Segment arc : arcs) {
      if (angle - run < arc.sweep() || arc == arcs.get(arcs.size() - 1)) {
        double own = arc.directionAt(0).right().angle() + angle - run;
        return arc.centre().along(Vec2.polar(own), arc.radius() + s);
      }
      run += arc.sweep();
    }
    throw new IllegalStateException("no arcs");
  }

  /** The chain's arcs between two angles, moved out. */
  private void arcs(List<Segment> out, double from, double to, double start, double edge) {
    double run = start;
    for (Segment s : arcs) {
      double a = Math.max(from, run);
      double b = Math.min(to, run + s.sweep());
      if (b - a > 1e-12) {
        double own = s.directionAt(0).right().angle() - run;
        Segment part = Segment.arc(s.centre(), s.radius() + edge, own + a, own + b);
        Segment last = out.isEmpty() ? null : out.get(out.size() - 1);
        if (last != null && last.end().distance(part.start()) > 1e-9) {
          out.add(Segment.line(last.end(), part.start()));
        }
        out.add(part);
      }
      run += s.sweep();
    }
  }
}
