package padwright.pattern;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Run;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.EdgeSections;
import padwright.shape.Outlines;
import padwright.shape.Section;
import padwright.shape.Stack;

/**
 * The layers along each side: those of the part, but for the runs that ask for another edge shape
 * or overhang. A rounded corner that joins two sides takes their layers where both have the same.
 */
final class RunStacks {
  private final Stack usual;
  private final Map<String, Stack> special = new HashMap<>();

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
        }
      }
    }
  }

  Stack usual() {
    return usual;
  }

  Stack of(String side) {
    return special.getOrDefault(side, usual);
  }

  /** The layers along every segment of an outline. */
  List<Stack> along(Outlines.Named outline) {
    List<Segment> segments = outline.path().segments();
    int n = segments.size();
    List<Stack> stacks = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      String name = outline.names().get(i);
      boolean joins = segments.get(i).isArc() && !name.startsWith("side ") && n > 2;
      Stack before = of(outline.names().get(Math.floorMod(i - 1, n)));
      Stack after = of(outline.names().get((i + 1) % n));
      stacks.add(joins && before.equals(after) ? before : of(name));
    }
    return stacks;
  }

  /** The sections along an outline, each kind of layers made into one section only once. */
  EdgeSections sections(Outlines.Named outline, Function<Stack, Section> maker) {
    Section plain = maker.apply(usual);
    if (special.isEmpty()) {
      return EdgeSections.all(plain);
    }
    Map<Stack, Section> made = new HashMap<>();
    made.put(usual, plain);
    Map<String, Section> bySide = new HashMap<>();
    List<Stack> stacks = along(outline);
    for (int i = 0; i < stacks.size(); i++) {
      Section section = made.computeIfAbsent(stacks.get(i), maker);
      if (section != plain) {
        bySide.put(outline.names().get(i), section);
      }
    }
    return new EdgeSections(plain, bySide);
  }

  /** A place where one section passes into another. */
  record Change(String before, String after, double turn) {
    boolean sharp() {
      return turn > LEAST_TURN;
    }

    boolean hollow() {
      return turn < -LEAST_TURN;
    }
  }

  /** A joint that turns less, radians (3 degrees), has no corner to change at. */
  private static final double LEAST_TURN = 0.05;

  /** Every place of an outline where one section passes into another. */
  static List<Change> changes(Outlines.Named outline, EdgeSections sections) {
    List<Change> changes = new ArrayList<>();
    List<Segment> segments = outline.path().segments();
    for (int i = 0; i < segments.size() && !sections.special().isEmpty(); i++) {
      int next = (i + 1) % segments.size();
      String before = outline.names().get(i);
      String after = outline.names().get(next);
      if (sections.of(before) != sections.of(after)) {
        Vec2 u = segments.get(i).directionAt(1);
        Vec2 v = segments.get(next).directionAt(0);
        changes.add(new Change(before, after, Math.atan2(u.cross(v), u.dot(v))));
      }
    }
    return changes;
  }
}
