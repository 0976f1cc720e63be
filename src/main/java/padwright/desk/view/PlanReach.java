package padwright.desk.view;

import java.util.List;
import java.util.Optional;
import padwright.desk.view.PlanModel.Hit;
import padwright.desk.view.PlanModel.Leg;
import padwright.desk.view.PlanModel.Mark;
import padwright.desk.view.PlanModel.Opening;
import padwright.desk.view.PlanModel.Place;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/** Finds what of a plan lies under a pointer. */
final class PlanReach {
  /** Chords may leave an arc by this where it is asked whether a place is inside, mm. */
  private static final double FLAT = 0.1;

  private final PlanModel plan;
  private final Vec2 at;
  private final double reach;
  private Optional<Hit> best = Optional.empty();
  private double nearest;

  PlanReach(PlanModel plan, Vec2 at, double reach) {
    this.plan = plan;
    this.at = at;
    this.reach = reach;
  }

  Optional<Hit> nearest() {
    nearest = reach;
    for (Mark m : plan.points()) {
      offer(m.at().distance(at), new Hit.Point(m.number()));
    }
    if (best.isPresent()) {
      return best;
    }
    for (Leg l : plan.legs()) {
      if (plan.bends(l, reach)) {
        offer(l.middle().distance(at), new Hit.Middle(l.number()));
      }
    }
    if (best.isPresent()) {
      return best;
    }
    for (Place p : plan.places()) {
      if (within(p.path())) {
        return Optional.of(new Hit.Member(p.member()));
      }
    }
    for (Opening o : plan.openings()) {
      if (within(o.path())) {
        return Optional.of(new Hit.Member(o.member()));
      }
    }
    for (Leg l : plan.legs()) {
      if (!l.side().isEmpty()) {
        offer(distance(l.way()), new Hit.Side(l.side()));
      }
    }
    return best;
  }

  private void offer(double away, Hit hit) {
    if (away <= nearest) {
      nearest = away;
      best = Optional.of(hit);
    }
  }

  private boolean within(Path path) {
    return Polygons.contains(path.flattened(FLAT), at) || distance(path.segments()) < reach / 2;
  }

  private double distance(List<Segment> way) {
    return way.stream().mapToDouble(s -> s.distanceTo(at)).min().orElse(Double.MAX_VALUE);
  }
}
