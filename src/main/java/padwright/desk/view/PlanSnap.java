package padwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.geometry.Vec2;

/**
 * Where a dragged point comes to rest: level with a neighbour or plumb over it, square to the leg
 * beyond a neighbour, else on a grid.
 */
public final class PlanSnap {
  /** Nearer than this two places are one, mm. */
  private static final double SAME = 1e-6;

  private PlanSnap() {}

  /** How fine the grid is. */
  public enum Grid {
    MM_1("1 mm", 1),
    MM_5("5 mm", 5),
    MM_10("10 mm", 10),
    /** An eighth of an inch. */
    INCH_8("1/8 in", 3.175);

    private final String words;
    private final double step;

    Grid(String words, double step) {
      this.words = words;
      this.step = step;
    }

    /** Between two lines, mm. */
    public double step() {
      return step;
    }

    public double nearest(double mm) {
      return Math.round(mm / step) * step;
    }

    @Override
    public String toString() {
      return words;
    }
  }

  /** A line that says why a point rests where it does. */
  public record Guide(Vec2 from, Vec2 to, String words) {}

  /** A place to rest, and why. */
  public record Rest(Vec2 at, List<Guide> guides) {
    public Rest {
      guides = List.copyOf(guides);
    }
  }

  /**
   * @param point that is dragged
   * @param to where the pointer is
   * @param reach how near it must be to what it is drawn to, mm
   */
  public static Rest of(PlanModel plan, int point, Vec2 to, Grid grid, double reach) {
    int n = plan.points().size();
    int[] beside = {Math.floorMod(point - 1, n), (point + 1) % n};
    Optional<Vec2> level = Optional.empty();
    Optional<Vec2> plumb = Optional.empty();
    for (int b : beside) {
      Vec2 p = plan.points().get(b).at();
      double off = Math.abs(p.y() - to.y());
      if (off < reach && level.stream().allMatch(l -> off < Math.abs(l.y() - to.y()))) {
        level = Optional.of(p);
      }
      double aside = Math.abs(p.x() - to.x());
      if (aside < reach && plumb.stream().allMatch(l -> aside < Math.abs(l.x() - to.x()))) {
        plumb = Optional.of(p);
      }
    }
    if (level.isEmpty() && plumb.isEmpty() && n > 3) {
      for (int side = 0; side < 2; side++) {
        int beyond = Math.floorMod(point + (side == 0 ? -2 : 2), n);
        Optional<Rest> square =
            square(
                plan.points().get(beside[side]).at(),
                plan.points().get(beyond).at(),
                to,
                grid,
                reach);
        if (square.isPresent()) {
          return square.get();
        }
      }
    }
    Vec2 at =
        new Vec2(
            plumb.map(Vec2::x).orElse(grid.nearest(to.x())),
            level.map(Vec2::y).orElse(grid.nearest(to.y())));
    List<Guide> guides = new ArrayList<>();
    level.ifPresent(p -> guides.add(new Guide(p, at, "level")));
    plumb.ifPresent(p -> guides.add(new Guide(p, at, "plumb")));
    return new Rest(at, guides);
  }

  /** On the line through a neighbour that is square to the leg beyond it. */
  private static Optional<Rest> square(
      Vec2 neighbour, Vec2 beyond, Vec2 to, Grid grid, double reach) {
    Vec2 leg = neighbour.minus(beyond);
    if (leg.length() < SAME) {
      return Optional.empty();
    }
    Vec2 way = leg.unit().left();
    double along = to.minus(neighbour).dot(way);
    if (neighbour.along(way, along).distance(to) >= reach || Math.abs(along) < reach) {
      return Optional.empty();
    }
    Vec2 at = neighbour.along(way, grid.nearest(along));
    return Optional.of(new Rest(at, List.of(new Guide(neighbour, at, "square"))));
  }

  /** Where a leg's middle comes to rest: its rise over the chord is on the grid. */
  public static Vec2 middle(PlanModel plan, int leg, Vec2 to, Grid grid) {
    Vec2 a = plan.points().get(leg).at();
    Vec2 b = plan.points().get((leg + 1) % plan.points().size()).at();
    Vec2 right = b.minus(a).unit().right();
    double rise = to.minus(a.midpoint(b)).dot(right);
    return a.midpoint(b).along(right, grid.nearest(rise));
  }
}
