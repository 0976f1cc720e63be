package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.shape.Outlines;
import padwright.shape.Stack;

/** Cuts the sides of an outline where a passage begins and ends on them. */
final class PassageLayer {
  /** A side keeps at least this much of its own section beside its passages, mm; own choice. */
  static final double LEFT = 10;

  private final List<Segment> segments = new ArrayList<>();
  private final List<String> names = new ArrayList<>();
  private final List<Stack> starts = new ArrayList<>();
  private final List<Stack> ends = new ArrayList<>();
  private final Stack usual;

  PassageLayer(Stack usual) {
    this.usual = usual;
  }

  /** Whether passages find room on a side. */
  static boolean fits(double side, double head, double tail) {
    return head + tail + LEFT <= side;
  }

  /**
   * Adds a side.
   *
   * @param head length of a passage at its start, empty without; one that finds no room is left out
   * @param before layers that the one at the start comes from
   * @param tail length of a passage at its end
   * @param after layers that the one at the end goes into
   */
  void add(
      Segment side,
      String name,
      Stack own,
      OptionalDouble head,
      Stack before,
      OptionalDouble tail,
      Stack after) {
    double first = head.orElse(0);
    double last = tail.orElse(0);
    if (first + last == 0 || !fits(side.length(), first, last)) {
      put(side, name, own, own);
      return;
    }
    var from = side.pointAt(first / side.length());
    var to = side.pointAt(1 - last / side.length());
    if (first > 0) {
      put(Segment.line(side.start(), from), Outlines.passage(name, false), before, own);
    }
    put(Segment.line(from, to), name, own, own);
    if (last > 0) {
      put(Segment.line(to, side.end()), Outlines.passage(name, first > 0), own, after);
    }
  }

  private void put(Segment segment, String name, Stack start, Stack end) {
    segments.add(segment);
    names.add(name);
    starts.add(start);
    ends.add(end);
  }

  Laid laid() {
    return new Laid(new Outlines.Named(new Path(segments, true), names), usual, starts, ends);
  }
}
