package padwright.pattern;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import padwright.shape.EdgeSections;
import padwright.shape.Outlines;
import padwright.shape.Passage;
import padwright.shape.Section;
import padwright.shape.Stack;
import padwright.shape.TautPath;

/**
 * An outline with the layers along it. A passage is a segment of its own, with other layers where
 * it begins than where it ends.
 *
 * @param starts layers where each segment begins
 * @param ends layers where each segment ends
 */
record Laid(Outlines.Named outline, Stack usual, List<Stack> starts, List<Stack> ends) {
  /** One stretch of a passage differs from the next by so much of the covering, mm. */
  private static final double STEP = 1;

  private static final int FEWEST = 4;
  private static final int MOST = 12;

  Laid {
    starts = List.copyOf(starts);
    ends = List.copyOf(ends);
  }

  /** The same layers all round. */
  static Laid alike(Outlines.Named outline, Stack stack) {
    List<Stack> all = Collections.nCopies(outline.names().size(), stack);
    return new Laid(outline, stack, all, all);
  }

  /** A number of the layers where every segment begins, or where it ends. */
  double[] each(boolean start, ToDoubleFunction<Stack> number) {
    return (start ? starts : ends).stream().mapToDouble(number).toArray();
  }

  /**
   * The sections along it, each kind of layers made into one section only once.
   *
   * @param maker of a section for layers
   * @param way of the covering over layers
   */
  EdgeSections sections(Function<Stack, Section> maker, Function<Stack, TautPath> way) {
    Map<Stack, Section> made = new HashMap<>();
    Section plain = maker.apply(usual);
    made.put(usual, plain);
    Map<String, Section> bySide = new HashMap<>();
    Map<String, Passage> passages = new HashMap<>();
    for (int i = 0; i < starts.size(); i++) {
      if (starts.get(i) == usual && ends.get(i) == usual) {
        continue;
      }
      String name = outline.names().get(i);
      Section from = made.computeIfAbsent(starts.get(i), maker);
      if (starts.get(i).equals(ends.get(i))) {
        if (from != plain) {
          bySide.put(name, from);
        }
        continue;
      }
      Section to = made.computeIfAbsent(ends.get(i), maker);
      double apart = Math.abs(to.taut().developed() - from.taut().developed());
      int count = (int) Math.max(FEWEST, Math.min(MOST, Math.ceil(apart / STEP)));
      List<TautPath> stations = new ArrayList<>();
      for (int k = 0; k < count; k++) {
        stations.add(way.apply(starts.get(i).towards(ends.get(i), (k + 0.5) / count)));
      }
      double length = outline.path().segments().get(i).length();
      passages.put(name, new Passage(from, to, stations, length));
    }
    return new EdgeSections(plain, bySide, passages);
  }
}
