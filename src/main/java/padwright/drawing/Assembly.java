package padwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.drawing.Chain.Source;
import padwright.drawing.DrawnOutline.Opening;
import padwright.geometry.Bounds;
import padwright.geometry.Crossings;
import padwright.geometry.Crossings.Crossing;
import padwright.geometry.Vec2;
import padwright.measure.LengthText;
import padwright.measure.Rounding;

/**
 * Makes an outline with its openings from all chains of a drawing: the loop with the largest box is
 * the outline, loops inside it are openings, everything else is left.
 */
final class Assembly {
  /** Control points of a curve may stand this many times further out than the curve may. */
  private static final double CONTROL = 4;

  private final Budget budget;
  private final Tally tally;
  private final Set<Source> read = new HashSet<>();
  private final Set<Object> left = new HashSet<>();

  Assembly(Budget budget, Tally tally) {
    this.budget = budget;
    this.tally = tally;
  }

  DrawnOutline outline(List<Chain> chains, String format, String scale, List<String> said) {
    Joiner joiner = new Joiner(chains, budget);
    joiner.open().forEach(c -> left(c, "open: an end meets no other"));
    joiner.twice().forEach(c -> left(c, "drawn twice"));
    List<Loop.Drawn> drawn = drawn(joiner.closed());
    if (drawn.isEmpty()) {
      throw none(chains);
    }
    Bounds box = drawn.get(0).box();
    checkSize(drawn.get(0).chain(), box, DrawingLimits.LARGEST);
    List<Loop> loops = loops(drawn, new Vec2(-box.minX(), -box.minY()));
    if (loops.isEmpty() || loops.get(0).chain() != drawn.get(0).chain()) {
      throw none(chains);
    }
    Loop outline = loops.get(0);
    check(outline, "the outline");
    read(outline);
    List<Loop> inner = inner(outline, loops.subList(1, loops.size()));
    List<String> notes = new ArrayList<>(said);
    int dropped = outline.dropped() + inner.stream().mapToInt(Loop::dropped).sum();
    if (dropped > 0) {
      notes.add(
          dropped
              + (dropped == 1 ? " side" : " sides")
              + " shorter than "
              + LengthText.mm(DrawingLimits.SHORTEST, 1, Rounding.NEAREST)
              + " left out");
    }
    Bounds size = outline.box();
    return new DrawnOutline(
        outline.path(),
        Loop.round(size.width()),
        Loop.round(size.height()),
        inner.stream().map(l -> opening(l, size.centre())).toList(),
        new DrawingReport(format, scale, tally.read(), tally.left(), joiner.gaps(), notes));
  }

  /** The closed chains, the largest box first; tiny ones are left. */
  private List<Loop.Drawn> drawn(List<Chain> closed) {
    List<Loop.Drawn> drawn = new ArrayList<>();
    for (Chain c : closed) {
      budget.time();
      checkPoints(c);
      Loop.Drawn d = Loop.Drawn.of(c);
      if (d.tooSmall()) {
        left(c, "smaller than 1 mm");
      } else {
        drawn.add(d);
      }
    }
    drawn.sort(Comparator.comparingDouble((Loop.Drawn d) -> -d.area()));
    return drawn;
  }

  /** The same made fit for a job file, in the same order. */
  private List<Loop> loops(List<Loop.Drawn> drawn, Vec2 by) {
    List<Loop> loops = new ArrayList<>();
    for (Loop.Drawn d : drawn) {
      budget.time();
      Loop loop = Loop.of(d.chain(), by);
      if (loop == null) {
        left(d.chain(), "encloses nothing");
      } else {
        loops.add(loop);
      }
    }
    return loops;
  }

  /**
   * Before it is laid out, which would take long for a loop of far too many or too large curves.
   */
  private void checkPoints(Chain c) {
    int n = c.points().size();
    if (n > DrawingLimits.MOST_POINTS) {
      throw budget.refuse(
          c.line(),
          "a closed outline has " + n + " points",
          "Simplify it: at most " + DrawingLimits.MOST_POINTS);
    }
    Bounds box = Bounds.of(c.end());
    for (Point p : c.points()) {
      box = box.with(p.at());
      if (p.leg() instanceof Leg.Cubic cubic) {
        box = box.with(cubic.first()).with(cubic.second());
      }
    }
    checkSize(c, box, CONTROL * DrawingLimits.LARGEST);
  }

  private RuntimeException none(List<Chain> chains) {
    String lefts =
        tally.left().stream()
            .limit(4)
            .map(DrawingReport.Count::words)
            .collect(Collectors.joining(", "));
    return budget.refuse(
        chains.isEmpty() ? 0 : chains.get(0).line(),
        "no closed outline was found" + (lefts.isEmpty() ? "" : "; left: " + lefts),
        "Draw the outline as one closed path, or so that its ends meet within "
            + LengthText.mm(DrawingLimits.JOIN));
  }

  private void checkSize(Chain chain, Bounds box, double largest) {
    if (Math.max(box.width(), box.height()) > largest) {
      throw budget.refuse(
          chain.line(),
          "the outline measures "
              + LengthText.mm(box.width())
              + " x "
              + LengthText.mm(box.height())
              + ", and no length is over 10 m",
          "Check the unit of the drawing");
    }
  }

  private void check(Loop loop, String what) {
    int pieces = loop.laid().segments().size();
    if (pieces > DrawingLimits.MOST_PIECES) {
      throw budget.refuse(
          loop.chain().line(),
          what + " has curves that come to " + pieces + " arcs and lines",
          "Draw it with fewer or plainer curves: at most " + DrawingLimits.MOST_PIECES);
    }
    Optional<Crossing> crossing = Crossings.first(loop.laid());
    if (crossing.isPresent()) {
      int a = loop.outline().sides().get(crossing.get().first());
      int b = loop.outline().sides().get(crossing.get().second());
      Vec2 at = crossing.get().at();
      throw budget.refuse(
          loop.chain().line(),
          what
              + " crosses or touches itself, side "
              + Math.min(a, b)
              + " and side "
              + Math.max(a, b)
              + ", "
              + LengthText.mm(at.x())
              + " right of the outline's left end and "
              + LengthText.mm(at.y())
              + " above its lowest point",
          "Draw it so that it goes round once");
    }
    if (Math.min(loop.box().width(), loop.box().height()) < DrawingLimits.LEAST
        || loop.laid().area() < DrawingLimits.LEAST) {
      throw budget.refuse(
          loop.chain().line(), what + " encloses no area", "Draw it so that it goes round once");
    }
  }

  private List<Loop> inner(Loop outline, List<Loop> others) {
    List<Loop> inner = new ArrayList<>();
    for (Loop loop : others) {
      budget.time();
      List<Loop> before = new ArrayList<>(List.of(outline));
      before.addAll(inner);
      for (Loop b : before) {
        if (b.crosses(loop)) {
          throw budget.refuse(
              loop.chain().line(),
              "two closed outlines cross or touch each other (the other one is in line "
                  + b.chain().line()
                  + ")",
              "Save the outline alone in a file of its own");
        }
      }
      if (!outline.contains(loop)) {
        left(loop.chain(), "outside the outline");
      } else if (inner.stream().anyMatch(l -> l.contains(loop))) {
        left(loop.chain(), "inside an opening");
      } else {
        check(loop, "an opening");
        inner.add(loop);
        read(loop);
      }
      if (inner.size() > DrawingLimits.MOST_INNER) {
        throw budget.refuse(
            loop.chain().line(),
            "there are more than " + DrawingLimits.MOST_INNER + " openings inside the outline",
            "Save the outline without them");
      }
    }
    return inner;
  }

  private static Opening opening(Loop loop, Vec2 middle) {
    Bounds box = loop.box();
    Vec2 at = box.centre().minus(middle);
    return new Opening(
        loop.path(),
        Loop.round(box.width()),
        Loop.round(box.height()),
        new Vec2(Loop.round(at.x()), Loop.round(at.y())));
  }

  private void read(Loop loop) {
    loop.chain().source().stream().filter(read::add).forEach(tally::read);
  }

  private void left(Chain chain, String why) {
    for (Source s : chain.source()) {
      if (left.add(List.of(s, why))) {
        tally.left(s, why);
      }
    }
  }
}
