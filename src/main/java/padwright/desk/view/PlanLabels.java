package padwright.desk.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import padwright.design.OutlineShape;
import padwright.geometry.Bounds;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/**
 * Where the words of a plan stand in its view: beside what they name, clear of the outline, of the
 * handles and of each other. What finds no room says less, and then nothing. All in points, y down.
 */
public final class PlanLabels {
  /** Beyond a handle in the middle of a side. */
  private static final double GAP = 11;

  /** A side faces a way where its own is within 60 degrees of it. */
  private static final double FACES = 0.5;

  private static final double MOST_ROOM = 0.27;
  private static final double RIM = 7;
  private static final double HANDLE = 10;
  private static final double FURTHER = 6;
  private static final double CHORD = 0.5;
  private static final double[] SHARES = {0.5, 0.36, 0.64, 0.24, 0.76};

  private final PlanModel plan;
  private final Viewport view;
  private final Letters letters;
  private final List<Bounds> taken = new ArrayList<>();
  private final List<Label> placed = new ArrayList<>();

  /**
   * Words in a box.
   *
   * @param of side, point or member they belong to, as the plan names it
   */
  public record Label(String of, List<String> lines, Bounds box) {
    public Label {
      lines = List.copyOf(lines);
    }
  }

  private PlanLabels(PlanModel plan, Viewport view, Letters letters) {
    this.plan = plan;
    this.view = view;
    this.letters = letters;
  }

  /**
   * How large words are.
   *
   * @param line height of a line, points
   * @param width of words, points
   */
  public record Letters(double line, ToDoubleFunction<String> width) {
    private double wide(String words) {
      return width.applyAsDouble(words);
    }
  }

  /**
   * Places the words of sides, points and members.
   *
   * @param first side or member that is chosen: it is placed before all others
   * @param kept what no words may stand on, points
   */
  public static List<Label> of(
      PlanModel plan, Viewport view, Letters letters, String first, List<Bounds> kept) {
    PlanLabels labels = new PlanLabels(plan, view, letters);
    labels.taken.addAll(kept);
    plan.points().forEach(m -> labels.taken.add(around(view.toScreen(m.at()))));
    plan.legs().stream()
        .filter(l -> plan.bends(l, HANDLE / view.scale()))
        .forEach(l -> labels.taken.add(around(view.toScreen(l.middle()))));
    plan.places().forEach(p -> labels.taken.add(labels.seen(p.path().bounds())));
    plan.places().stream().filter(p -> p.member().equals(first)).forEach(labels::place);
    plan.openings().stream().filter(o -> o.member().equals(first)).forEach(labels::opening);
    plan.legs().stream()
        .sorted(
            Comparator.comparing((PlanModel.Leg l) -> !l.side().equals(first))
                .thenComparing(l -> -l.length()))
        .forEach(labels::leg);
    // A number finds room on any of four sides of its point, a length on few.
    plan.points().forEach(labels::point);
    plan.openings().forEach(labels::opening);
    plan.places().forEach(labels::place);
    labels.corners();
    return labels.placed;
  }

  private static Bounds around(Vec2 handle) {
    return Bounds.of(handle).grown(HANDLE);
  }

  /**
   * What is said of a leg: its side and length, its radius, what it has of its own. A circle or an
   * ellipse says its sizes once, a rounded corner its radius.
   */
  public static List<String> lines(PlanModel plan, PlanModel.Leg leg) {
    OutlineShape shape = plan.pad().base().outline();
    boolean first = leg.number() == 0;
    if (shape instanceof OutlineShape.Circle c) {
      return first ? List.of("diameter " + plan.drawn(c.diameter())) : List.of();
    } else if (shape instanceof OutlineShape.Ellipse e) {
      return first ? List.of(plan.drawn(e.length()) + " by " + plan.drawn(e.width())) : List.of();
    }
    String radius = leg.radius() > 0 ? "R " + plan.drawn(leg.radius()) : "";
    if (leg.side().isEmpty()) {
      return radius.isEmpty() ? List.of() : List.of(radius);
    }
    List<String> lines = new ArrayList<>();
    String length = leg.side() + ": " + plan.drawn(leg.length());
    lines.add(radius.isEmpty() ? length : length + ", " + radius);
    String own = plan.difference(leg.side());
    if (!own.isEmpty()) {
      lines.add(own);
    }
    return lines;
  }

  /** A point's number, and what its corner is folded to where corners differ. */
  private void point(PlanModel.Mark mark) {
    String number = String.valueOf(mark.number() + 1);
    PlanModel.Corner corner =
        plan.corners().stream()
            .filter(c -> c.at().equals(mark.at()))
            .findFirst()
            .orElse(new PlanModel.Corner(mark.at(), new Vec2(0, 1), ""));
    if (corner.words().isEmpty() || !about(corner, number + ": " + corner.words(), number)) {
      about(corner, number, number);
    }
  }

  private boolean about(PlanModel.Corner corner, String words, String number) {
    Vec2 out = flipped(corner.outward());
    for (Vec2 way : List.of(out, out.times(-1), out.left(), out.right())) {
      if (put("Point " + number, List.of(words), view.toScreen(corner.at()), way, HANDLE)) {
        return true;
      }
    }
    return false;
  }

  private void leg(PlanModel.Leg leg) {
    List<String> lines = lines(plan, leg);
    for (int n = lines.size(); n > 0; n--) {
      for (boolean outside : new boolean[] {true, false}) {
        for (double share : SHARES) {
          Vec2[] on = at(leg, share);
          Vec2 way = outside ? on[1] : on[1].times(-1);
          if (put(leg.side(), lines.subList(0, n), on[0], way, GAP)) {
            return;
          }
        }
      }
    }
  }

  /** The place at a share of a leg in the view, and the way out of the part there. */
  private Vec2[] at(PlanModel.Leg leg, double share) {
    double left = leg.length() * share;
    Segment at = leg.way().get(0);
    for (Segment s : leg.way()) {
      at = s;
      if (left <= s.length()) {
        break;
      }
      left -= s.length();
    }
    double t = Math.min(1, left / at.length());
    return new Vec2[] {view.toScreen(at.pointAt(t)), flipped(at.directionAt(t).right())};
  }

  private static Vec2 flipped(Vec2 way) {
    return new Vec2(way.x(), -way.y());
  }

  /** A box of the plan in the view. */
  private Bounds seen(Bounds mm) {
    return Bounds.of(view.toScreen(new Vec2(mm.minX(), mm.minY())))
        .with(view.toScreen(new Vec2(mm.maxX(), mm.maxY())));
  }

  private boolean said(String member) {
    return placed.stream().anyMatch(l -> l.of().equals(member));
  }

  /** In the middle of a cut-out, or beside it where it is smaller than its words. */
  private void opening(PlanModel.Opening o) {
    Bounds hole = seen(o.path().bounds());
    Bounds box = box(List.of(o.words()), hole.centre());
    if (said(o.member())) {
      return;
    } else if (box.width() >= hole.width() || box.height() >= hole.height()) {
      beside(o.member(), o.words(), hole);
    } else if (free(box)) {
      keep(o.member(), List.of(o.words()), box);
    }
  }

  private void place(PlanModel.Place p) {
    if (!said(p.member())) {
      beside(p.member(), p.words(), seen(p.path().bounds()));
    }
  }

  private void beside(String of, String words, Bounds hole) {
    Vec2 at = hole.centre();
    for (Vec2 way : List.of(new Vec2(0, 1), new Vec2(0, -1), new Vec2(1, 0), new Vec2(-1, 0))) {
      double half = way.x() == 0 ? hole.height() / 2 : hole.width() / 2;
      if (put(of, List.of(words), at, way, half + 2)) {
        return;
      }
    }
  }

  /** Of an outline whose corners are no points. */
  private void corners() {
    for (PlanModel.Corner c : plan.corners()) {
      if (!plan.drawn() && !c.words().isEmpty()) {
        about(c, c.words(), "");
      }
    }
  }

  /** Beside a place, whole box beyond a gap. */
  private boolean put(String of, List<String> lines, Vec2 at, Vec2 way, double gap) {
    Bounds size = box(lines, Vec2.ZERO);
    double reach =
        Math.min(
            Math.abs(way.x()) > 1e-9 ? size.width() / 2 / Math.abs(way.x()) : Double.MAX_VALUE,
            Math.abs(way.y()) > 1e-9 ? size.height() / 2 / Math.abs(way.y()) : Double.MAX_VALUE);
    double support = Math.abs(way.x()) * size.width() / 2 + Math.abs(way.y()) * size.height() / 2;
    for (double off : new double[] {reach, (reach + support) / 2, support, support + FURTHER}) {
      Bounds box = box(lines, at.along(way, gap + off));
      if (free(box)) {
        keep(of, lines, box);
        return true;
      }
    }
    return false;
  }

  private Bounds box(List<String> lines, Vec2 middle) {
    double w = lines.stream().mapToDouble(letters::wide).max().orElse(0) / 2 + 1;
    double h = lines.size() * letters.line() / 2;
    return new Bounds(middle.x() - w, middle.y() - h, middle.x() + w, middle.y() + h);
  }

  private void keep(String of, List<String> lines, Bounds box) {
    taken.add(box.grown(1));
    placed.add(new Label(of, lines, box));
  }

  private boolean free(Bounds box) {
    boolean seen =
        box.minX() >= 1
            && box.minY() >= 1
            && box.maxX() <= view.width() - 1
            && box.maxY() <= view.height() - 1;
    return seen && taken.stream().noneMatch(t -> t.overlaps(box)) && !crossed(box);
  }

  private boolean crossed(Bounds box) {
    return plan.legs().stream().flatMap(l -> l.way().stream()).anyMatch(s -> crosses(s, box))
        || plan.openings().stream()
            .flatMap(o -> o.path().segments().stream())
            .anyMatch(s -> crosses(s, box));
  }

  private boolean crosses(Segment s, Bounds box) {
    int n = s.chords(CHORD / view.scale());
    Vec2 from = view.toScreen(s.start());
    for (int i = 1; i <= n; i++) {
      Vec2 to = view.toScreen(s.pointAt((double) i / n));
      if (clips(from, to, box)) {
        return true;
      }
      from = to;
    }
    return false;
  }

  /** Whether a line passes through a box (slab by slab). */
  private static boolean clips(Vec2 a, Vec2 b, Bounds box) {
    Optional<double[]> x = slab(a.x(), b.x(), box.minX(), box.maxX());
    Optional<double[]> y = slab(a.y(), b.y(), box.minY(), box.maxY());
    return x.isPresent()
        && y.isPresent()
        && Math.max(0, Math.max(x.get()[0], y.get()[0]))
            <= Math.min(1, Math.min(x.get()[1], y.get()[1]));
  }

  private static Optional<double[]> slab(double from, double to, double low, double high) {
    double way = to - from;
    if (Math.abs(way) < 1e-12) {
      return from < low || from > high
          ? Optional.empty()
          : Optional.of(new double[] {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY});
    }
    double p = (low - from) / way;
    double q = (high - from) / way;
    return Optional.of(new double[] {Math.min(p, q), Math.max(p, q)});
  }

  /** The whole plan in a view, with the room on each side that the words there need. */
  public static Viewport fit(PlanModel plan, double wide, double high, Letters letters) {
    double left = room(plan, letters, new Vec2(-1, 0), wide);
    double right = room(plan, letters, new Vec2(1, 0), wide);
    double top = room(plan, letters, new Vec2(0, 1), high);
    double foot = room(plan, letters, new Vec2(0, -1), high);
    Viewport inner =
        Viewport.fit(plan.bounds(), wide - left - right, high - top - foot, 0).panned(left, top);
    return new Viewport(inner.scale(), inner.left(), inner.top(), wide, high);
  }

  /** What the words of the sides that face a way take there, never most of the view. */
  private static double room(PlanModel plan, Letters letters, Vec2 way, double view) {
    double most = 0;
    for (PlanModel.Leg l : plan.legs()) {
      List<String> lines = lines(plan, l);
      if (l.outward().dot(way) > FACES) {
        double wide = lines.stream().mapToDouble(letters::wide).max().orElse(0);
        most = Math.max(most, way.x() == 0 ? lines.size() * letters.line() : wide);
      }
    }
    return Math.min(Math.max(most, letters.line()) + GAP + RIM, view * MOST_ROOM);
  }
}
