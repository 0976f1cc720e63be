package padwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * A polygon's edges in runs of neighbours, each with the box that holds it, so that what lies far
 * from a place is passed over a run at a time. Worth making where many places are asked for.
 */
public final class EdgeRuns {
  /** Edges in a run; own choice: a thousand edges then make as many runs as lie near a place. */
  private static final int RUN = 16;

  private final List<Vec2> polygon;
  private final Bounds[] boxes;
  private final double[] longest;

  /** The polygon closes itself: its first point is not repeated at the end. */
  public EdgeRuns(List<Vec2> polygon) {
    this.polygon = polygon;
    boxes = new Bounds[(polygon.size() + RUN - 1) / RUN];
    longest = new double[boxes.length];
    for (int run = 0; run < boxes.length; run++) {
      Bounds box = Bounds.of(from(run * RUN));
      for (int edge = run * RUN; edge < past(run); edge++) {
        box = box.with(to(edge));
        longest[run] = Math.max(longest[run], from(edge).distance(to(edge)));
      }
      boxes[run] = box;
    }
  }

  private int past(int run) {
    return Math.min(polygon.size(), (run + 1) * RUN);
  }

  /** Where an edge starts. */
  public Vec2 from(int edge) {
    return polygon.get(edge);
  }

  /** Where an edge ends. */
  public Vec2 to(int edge) {
    return polygon.get(edge + 1 == polygon.size() ? 0 : edge + 1);
  }

  /**
   * The edges near a place, in their order: every one that comes as near as {@code reach} and its
   * own length, and others of their runs.
   */
  public int[] near(Vec2 place, double reach) {
    return edges(run -> boxes[run].grown(reach + longest[run]).contains(place));
  }

  /** The edges that come into a convex anticlockwise polygon, and others of their runs. */
  public int[] over(List<Vec2> convex) {
    return edges(run -> beyond(boxes[run], convex) < 0);
  }

  private int[] edges(IntPredicate runs) {
    int[] edges = new int[polygon.size()];
    int count = 0;
    for (int run = 0; run < boxes.length; run++) {
      if (runs.test(run)) {
        for (int edge = run * RUN; edge < past(run); edge++) {
          edges[count++] = edge;
        }
      }
    }
    return Arrays.copyOf(edges, count);
  }

  /** As {@link Polygons#inside}. */
  public List<Vec2> inside(List<Vec2> convex) {
    List<Vec2> rough = new ArrayList<>();
    int before = -1;
    for (int run = 0; run < boxes.length; run++) {
      int beyond = beyond(boxes[run], convex);
      if (beyond < 0) {
        rough.addAll(polygon.subList(run * RUN, past(run)));
      } else {
        // Beyond one line of the shape only where the way leaves and comes back counts.
        if (beyond == before) {
          rough.remove(rough.size() - 1);
        } else {
          rough.add(from(run * RUN));
        }
        rough.add(from(past(run) - 1));
      }
      before = beyond;
    }
    return Polygons.inside(rough, convex);
  }

  /** A line of the convex shape that a whole box lies beyond, -1 where there is none. */
  private static int beyond(Bounds box, List<Vec2> convex) {
    for (int i = 0; i < convex.size(); i++) {
      Vec2 a = convex.get(i);
      Vec2 right = convex.get((i + 1) % convex.size()).minus(a).right();
      double x = right.x() > 0 ? box.minX() : box.maxX();
      double y = right.y() > 0 ? box.minY() : box.maxY();
      if (right.x() * x + right.y() * y > right.dot(a)) {
        return i;
      }
    }
    return -1;
  }
}
