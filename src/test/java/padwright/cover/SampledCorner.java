package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * A folded corner for the second wrap: it folds points of the flat along the arris of the sampled
 * section and along the creases that the plan prints, and says how far behind the fold they land.
 */
final class SampledCorner {
  /** The last of the bend round the back arris shows as the arris itself, mm. */
  private static final double ARRIS = 1;

  private final Vec2 apex;
  private final Vec2 before;
  private final Vec2 after;
  private final double mitre;
  private final SampledSection section;
  private final boolean doubled;
  private final List<Segment> creases = new ArrayList<>();
  private final List<Vec2> arrisLines = new ArrayList<>();

  /**
   * @param plan the corner as printed; null for one of the pleats of a rounding
   */
  SampledCorner(
      SampledOutline.Piece a, SampledOutline.Piece b, SampledSection section, CornerPlan plan) {
    apex = a.to();
    before = a.atEnd();
    after = b.atStart();
    mitre = Math.tan(Math.atan2(before.cross(after), before.dot(after)) / 2);
    this.section = section;
    doubled = a.fold() == Fold.DOUBLE;
    if (plan == null) {
      return;
    }
    for (int i = 0; i < plan.folds().size(); i++) {
      Path line = plan.folds().get(i).line();
      if (plan.folds().get(i).sense() == CornerPlan.Sense.INWARD) {
        creases.addAll(line.segments());
      } else if (!doubled || i > 0) {
        // The first outward fold of a double pleat is its bisector.
        arrisLines.add(line.start());
        line.segments().forEach(s -> arrisLines.add(s.end()));
      }
    }
  }

  /** How far the printed folds lie from the arris as the section has it, mm. */
  double foldError() {
    double worst = 0;
    for (Vec2 p : arrisLines) {
      double off = Double.POSITIVE_INFINITY;
      for (boolean first : new boolean[] {true, false}) {
        double[] at = seen(first, p);
        off = Math.min(off, Math.abs(at[0] - section.fold(at[1]) * mitre));
      }
      worst = Math.max(worst, off);
    }
    return worst;
  }

  /**
   * How far behind the fold a point of the flat lies on a wall; infinite where it lies on none, or
   * is no part of what is folded away.
   */
  double behindFold(Vec2 p) {
    double least = Double.POSITIVE_INFINITY;
    for (boolean first : new boolean[] {true, false}) {
      double[] at = seen(first, p);
      double aside = at[0] - section.fold(at[1]) * mitre;
      if (at[1] < section.startX || aside < -1e-3 || at[0] > at[1] * mitre + 1e-6) {
        continue;
      }
      if (doubled) {
        at = creased(first, p);
        aside = at[0] - section.fold(at[1]) * mitre;
      }
      double bend = section.backStart - section.wallEnd;
      if (at[1] < section.backStart - Math.max(0.01, Math.min(ARRIS, bend))) {
        least = Math.min(least, Math.max(0, aside));
      }
    }
    return least;
  }

  /** How far past the corner along one side and how far out from it. */
  private double[] seen(boolean first, Vec2 p) {
    Vec2 v = p.minus(apex);
    Vec2 u = first ? before : after;
    return new double[] {first ? v.dot(u) : -v.dot(u), v.cross(u)};
  }

  /** The half of a double pleat beyond its crease is turned over about it. */
  private double[] creased(boolean first, Vec2 p) {
    for (Segment crease : creases) {
      double[] end = seen(true, crease.end());
      boolean own = (end[0] < end[1] * mitre) == first;
      if (!own) {
        continue;
      }
      Vec2 d = crease.end().minus(crease.start());
      Vec2 v = p.minus(crease.start());
      Vec2 bisector = before.right().plus(after.right());
      if (d.cross(v) * d.cross(bisector) > 0) {
        double k = 2 * v.dot(d) / d.dot(d);
        return seen(first, crease.start().plus(d.times(k).minus(v)));
      }
    }
    return seen(first, p);
  }
}
