package padwright.pattern;

import static padwright.design.Finding.Level.CAUTION;
import static padwright.design.Finding.Level.STOP;

import java.util.ArrayList;
import java.util.List;
import padwright.design.Finding;
import padwright.geometry.Offset;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.Outlines;
import padwright.shape.PadShape;

/**
 * Kinks too slight to be corners: alone the covering gives there, but several in a row, nearer to
 * each other than the covering is wide from face to trim line, turn it as one corner would.
 */
final class OutlineRules {
  /** Kinks that turn so many times what a corner does are a stop; own choice. */
  private static final double LARGE = 2;

  private final List<Segment> segments;
  private final List<String> names;
  private final double reach;

  private OutlineRules(PadShape shape) {
    segments = shape.outline().segments();
    names = shape.sideNames();
    reach = shape.section().taut().developed();
  }

  /** Slight kinks in a row: from after one segment to after another, and what they turn in all. */
  private record Kinks(int first, int last, double turn) {}

  static List<Finding> of(PadShape shape) {
    return new OutlineRules(shape).findings();
  }

  private List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (Kinks k : worst()) {
      double degrees = Math.toDegrees(Math.abs(k.turn()));
      boolean large = Math.abs(k.turn()) > LARGE * Outlines.CORNER;
      findings.add(
          Finding.of(
              "outline-kinks",
              large ? STOP : CAUTION,
              FindingRules.text(
                  "From %s to %s the outline turns %.1f degrees in steps too slight to be corners,"
                      + " within %.0f; nothing is done there for the covering that is %s.",
                  names.get(k.first()),
                  names.get((k.last() + 1) % names.size()),
                  degrees,
                  reach,
                  k.turn() > 0 ? "too much" : "lacking"),
              degrees,
              Math.toDegrees(Outlines.CORNER),
              "degrees",
              FindingRules.OWN,
              "Draw it as one arc or curve, or as one corner"));
    }
    return findings;
  }

  /** Of every row of slight kinks the stretch that turns most within the covering's width. */
  private List<Kinks> worst() {
    int n = segments.size();
    List<Kinks> all = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double turn = slight(i);
      double run = 0;
      int last = i;
      double sum = turn;
      for (int step = 1; step < n && turn != 0; step++) {
        int j = (i + step) % n;
        run += segments.get(j).length();
        if (run > reach || slight(j) * turn <= 0) {
          break;
        }
        sum += slight(j);
        last = j;
      }
      if (last != i && Math.abs(sum) > Outlines.CORNER) {
        keep(all, new Kinks(i, last, sum));
      }
    }
    return all;
  }

  /** Stretches that share kinks are one; the one that turns most is told. */
  private void keep(List<Kinks> all, Kinks next) {
    if (!all.isEmpty()) {
      Kinks before = all.get(all.size() - 1);
      if (Math.floorMod(before.last() - next.first(), segments.size()) < segments.size() / 2) {
        if (Math.abs(next.turn()) > Math.abs(before.turn())) {
          all.set(all.size() - 1, next);
        }
        return;
      }
    }
    all.add(next);
  }

  /** The turn after a segment where that is a kink and no corner, radians; else 0. */
  private double slight(int i) {
    Vec2 u = segments.get(i).directionAt(1);
    Vec2 v = segments.get((i + 1) % segments.size()).directionAt(0);
    double turn = Math.atan2(u.cross(v), u.dot(v));
    return Math.abs(turn) > Offset.SMOOTH && Math.abs(turn) <= Outlines.CORNER ? turn : 0;
  }
}
