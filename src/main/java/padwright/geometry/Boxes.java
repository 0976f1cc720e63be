package padwright.geometry;

import java.util.Arrays;
import java.util.List;

/**
 * Boxes along a path, each run of neighbours held by a box of its own, so that those about a place
 * are found without a look at every one. Worth making where many places are asked for.
 */
public final class Boxes {
  /** Boxes in a run; own choice: of a hundred there are then about as many runs as in one run. */
  private static final int RUN = 8;

  private final Bounds[] each;
  private final Bounds[] runs;

  public Boxes(List<Bounds> boxes) {
    each = boxes.toArray(Bounds[]::new);
    runs = new Bounds[(each.length + RUN - 1) / RUN];
    for (int i = 0; i < each.length; i++) {
      runs[i / RUN] = i % RUN == 0 ? each[i] : runs[i / RUN].union(each[i]);
    }
  }

  /** Those of segments, in their order. */
  public static Boxes of(List<Segment> segments) {
    return new Boxes(segments.stream().map(Segment::bounds).toList());
  }

  /** Indices of the boxes that share a point with another box, in order. */
  public int[] meeting(Bounds box) {
    int[] found = new int[RUN];
    int count = 0;
    for (int run = 0; run < runs.length; run++) {
      if (!runs[run].overlaps(box)) {
        continue;
      }
      for (int i = run * RUN; i < Math.min(each.length, (run + 1) * RUN); i++) {
        if (each[i].overlaps(box)) {
          found = count == found.length ? Arrays.copyOf(found, 2 * count) : found;
          found[count++] = i;
        }
      }
    }
    return Arrays.copyOf(found, count);
  }

  /** Indices of the boxes that come within a distance of a place, up, down or sideways. */
  public int[] near(Vec2 place, double distance) {
    return meeting(Bounds.of(place).grown(distance));
  }
}
