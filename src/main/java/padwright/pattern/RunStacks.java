package padwright.pattern;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Run;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.EdgeSections;
import padwright.shape.Outlines;
import padwright.shape.Stack;

/**
 * The layers along each side: those of the part, but for the runs that ask for another edge shape
 * or overhang. A rounded corner that joins two sides takes their layers where both have the same,
 * and those of a run beside it that has a passage. The passage lies on the straight side beyond.
 */
final class RunStacks {
  private final Stack usual;
  private final Map<String, Stack> special = new HashMap<>();
  private final Map<String, Double> passage = new HashMap<>();

  RunStacks(WrappedPad pad, Stack usual) {
    this.usual = usual;
    for (Run run : pad.runs()) {
      Stack own = usual;
      if (run.overhang().isPresent()) {
        own = own.withOverhang(run.overhang().getAsDouble());
      }
      if (run.edge().isPresent()) {
        own = own.withEdge(run.edge().get());
      }
      if (!own.equals(usual)) {
        for (String side : run.sides()) {
          special.put(side, own);
          run.passage().ifPresent(length -> passage.put(side, length));
        }
      }
    }
  }

  /** Whether all sides have the part's own layers. */
  boolean alike() {
    return special.isEmpty();
  }

  Stack of(String side) {
    return special.getOrDefault(Outlines.sideOf(side), usual);
  }

  /** The layers along an outline, and the passages between them. */
  Laid along(Outlines.Named outline) {
    return special.isEmpty() ? Laid.alike(outline, usual) : lay(outline);
  }

  private Laid lay(Outlines.Named outline) {
    List<Segment> segments = outline.path().segments();
    List<String> names = outline.names();
    int n = segments.size();
    List<Stack> stacks = new ArrayList<>();
    List<OptionalDouble> lengths = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      String name = names.get(i);
      String before = names.get(Math.floorMod(i - 1, n));
      String after = names.get((i + 1) % n);
      boolean joins = segments.get(i).isArc() && !name.startsWith("side ") && n > 2;
      String like = name;
      if (joins && of(before).equals(of(after))) {
        like = before;
      } else if (joins && passage.containsKey(Outlines.sideOf(before))) {
        like = before;
      } else if (joins && passage.containsKey(Outlines.sideOf(after))) {
        like = after;
      }
      stacks.add(of(like));
      Double length = passage.get(Outlines.sideOf(like));
      lengths.add(length == null ? OptionalDouble.empty() : OptionalDouble.of(length));
    }
    PassageLayer layer = new PassageLayer(usual);
    for (int i = 0; i < n; i++) {
      int before = Math.floorMod(i - 1, n);
      int after = (i + 1) % n;
      Segment s = segments.get(i);
      // On the side beyond the run, not on the run itself: that was given its whole length.
      boolean straight = !s.isArc();
      OptionalDouble head =
          straight && passes(segments, stacks, before, i)
              ? lengths.get(before)
              : OptionalDouble.empty();
      OptionalDouble tail =
          straight && passes(segments, stacks, i, after) && !lengths.get(i).isPresent()
              ? lengths.get(after)
              : OptionalDouble.empty();
      layer.add(s, names.get(i), stacks.get(i), head, stacks.get(before), tail, stacks.get(after));
    }
    return layer.laid();
  }

  /** Whether the layers change between two segments where the outline has no corner. */
  private static boolean passes(List<Segment> segments, List<Stack> stacks, int a, int b) {
    return !stacks.get(a).equals(stacks.get(b))
        && Math.abs(turn(segments.get(a), segments.get(b))) <= Outlines.CORNER;
  }

  private static double turn(Segment a, Segment b) {
    Vec2 u = a.directionAt(1);
    Vec2 v = b.directionAt(0);
    return Math.atan2(u.cross(v), u.dot(v));
  }

  /** A place where one section passes into another. */
  record Change(String before, String after, double turn) {
    boolean sharp() {
      return turn > Outlines.CORNER;
    }

    boolean hollow() {
      return turn < -Outlines.CORNER;
    }
  }

  /** Every place of an outline where one section passes into another. */
  static List<Change> changes(Outlines.Named outline, EdgeSections sections) {
    List<Change> changes = new ArrayList<>();
    List<Segment> segments = outline.path().segments();
    for (int i = 0; i < segments.size() && !sections.special().isEmpty(); i++) {
      int next = (i + 1) % segments.size();
      String before = outline.names().get(i);
      String after = outline.names().get(next);
      if (sections.at(before, false) != sections.at(after, true)) {
        changes.add(new Change(before, after, turn(segments.get(i), segments.get(next))));
      }
    }
    return changes;
  }
}
