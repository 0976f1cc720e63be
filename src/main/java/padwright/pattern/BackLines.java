package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.shape.EdgeEnds.EdgeEnd;
import padwright.shape.PadShape;

/**
 * Lines on the back of a base that run along its edge: where staples go, and where the turn-under
 * ends. Whole where all sides are alike, else only along the sides that are stapled.
 */
final class BackLines {
  private final PadShape shape;

  BackLines(PadShape shape) {
    this.shape = shape;
  }

  List<Path> staples(double edgeDistance) {
    double[] in = new double[shape.sideNames().size()];
    for (int i = 0; i < in.length; i++) {
      in[i] = end(i).turned() ? -edgeDistance : 0;
    }
    return lines(in);
  }

  List<Path> trim() {
    double[] in = new double[shape.sideNames().size()];
    for (int i = 0; i < in.length; i++) {
      in[i] = -end(i).turnUnder();
    }
    return lines(in);
  }

  private EdgeEnd end(int i) {
    return shape.ends().of(shape.sideNames().get(i));
  }

  private List<Path> lines(double[] in) {
    List<Path> lines = Offset.all(shape.outline(), in, in);
    if (shape.ends().special().isEmpty()) {
      return lines;
    }
    List<Path> open = new ArrayList<>();
    for (Path line : lines) {
      for (Segment s : line.segments()) {
        if (end(nearest(s)).turned()) {
          open.add(new Path(List.of(s), false));
        }
      }
    }
    return open;
  }

  /** The side of the outline that a line inside it belongs to. */
  private int nearest(Segment line) {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    List<Segment> sides = shape.outline().segments();
    for (int i = 0; i < sides.size(); i++) {
      Segment s = sides.get(i);
      boolean alike = s.directionAt(0.5).dot(line.directionAt(0.5)) > 0.9;
      double away = s.distanceTo(line.pointAt(0.5)) - (end(i).turned() ? end(i).turnUnder() : 0);
      if (alike && Math.abs(away) < least) {
        least = Math.abs(away);
        best = i;
      }
    }
    return best;
  }
}
