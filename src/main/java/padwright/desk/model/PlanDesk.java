package padwright.desk.model;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.desk.edit.OutlineChange;
import padwright.desk.edit.OutlineEdit;
import padwright.desk.edit.PartEdit;
import padwright.desk.edit.PartField;
import padwright.desk.edit.PlanItem;
import padwright.desk.edit.Remedy;
import padwright.desk.view.PlanModel;
import padwright.desk.view.PlanModel.Hit;
import padwright.desk.view.PlanSnap;
import padwright.desk.view.PlanSnap.Grid;
import padwright.desk.view.PlanSnap.Rest;
import padwright.geometry.Vec2;
import padwright.measure.InputRefused;

/**
 * The plan of the part on the bench, what is chosen on it, and what can be done there. Used on the
 * window's thread.
 */
public final class PlanDesk {
  /** Bent less than this a side is straight, mm: the thickness of a pencil line. */
  private static final double STRAIGHT = 0.25;

  private final Desk desk;
  private final PlanSource source;
  private PlanModel plan;
  private List<PlanItem> items = List.of();
  private Units units;
  private PlanItem chosen = new PlanItem.Outline();
  private Optional<Grid> grid = Optional.empty();
  private Optional<InputRefused> refusal = Optional.empty();
  private Optional<Drag> drag = Optional.empty();

  /** What is dragged, from which part, where it rests now, and how far off it was taken hold of. */
  private record Drag(Hit what, WrappedPad from, Rest rest, Optional<Vec2> held) {
    Drag to(Rest next, Optional<Vec2> by) {
      return new Drag(what, from, next, by);
    }
  }

  public PlanDesk(Desk desk) {
    this.desk = desk;
    this.source = new PlanSource(desk, this);
    refresh();
  }

  /** Looks again at the part on the bench: call it whenever the desk has changed. */
  public void refresh() {
    WrappedPad pad = desk.pad();
    if (plan == null || plan.pad() != pad || units != desk.job().units()) {
      if (plan != null && !plan.pad().id().equals(pad.id())) {
        chosen = new PlanItem.Outline();
        refusal = Optional.empty();
        drag = Optional.empty();
      }
      units = desk.job().units();
      plan = new PlanModel(pad, units);
      items = PlanItem.of(pad);
      if (!items().contains(chosen)) {
        chosen = new PlanItem.Outline();
      }
    }
  }

  public PlanModel plan() {
    return plan;
  }

  /** All that can be chosen, in order. */
  public List<PlanItem> items() {
    return items;
  }

  public PlanItem chosen() {
    return chosen;
  }

  public void choose(PlanItem item) {
    if (!item.equals(chosen)) {
      desk.settle();
      chosen = item;
      refusal = Optional.empty();
    }
  }

  /** Chooses what comes so many after what is chosen; after the last the first. */
  public void step(int by) {
    List<PlanItem> all = items();
    choose(all.get(Math.floorMod(all.indexOf(chosen) + by, all.size())));
  }

  /** What a place under a pointer stands for. */
  public Optional<PlanItem> item(Hit hit) {
    return items().stream().filter(i -> meant(i, hit)).findFirst();
  }

  private static boolean meant(PlanItem item, Hit hit) {
    if (hit instanceof Hit.Point p) {
      return item instanceof PlanItem.Point own && own.number() == p.number();
    } else if (hit instanceof Hit.Middle m) {
      return item instanceof PlanItem.Side own && own.number() == m.leg();
    } else if (hit instanceof Hit.Side s) {
      return item instanceof PlanItem.Side own && own.name().equals(s.name());
    }
    return item instanceof PlanItem.Member own && own.member().equals(((Hit.Member) hit).name());
  }

  /** What dragged points come to rest on. */
  public Grid grid() {
    return grid.orElse(units == Units.MM ? Grid.MM_5 : Grid.INCH_8);
  }

  public void setGrid(Grid to) {
    grid = Optional.of(to);
  }

  /** Why the last change was not made, where it was not. */
  public Optional<InputRefused> refusal() {
    return refusal;
  }

  // Points and sides.

  private OutlineEdit outline(WrappedPad pad) {
    return new OutlineEdit(desk.edit(), pad);
  }

  private Optional<InputRefused> change(
      Function<WrappedPad, WrappedPad> step, String label, String group) {
    refusal = desk.change(step::apply, label, group);
    refresh();
    return refusal;
  }

  /** Takes a remedy. */
  public void take(Remedy remedy) {
    refusal = desk.take(remedy);
    refresh();
  }

  /** Draws an outline that has sizes by its points. */
  public void byPoints() {
    change(p -> outline(p).byPoints(), "draw the outline by its points", "");
  }

  public boolean canAdd() {
    return plan.drawn() && !(chosen instanceof PlanItem.Member);
  }

  public boolean canRemove() {
    return plan.drawn() && chosen instanceof PlanItem.Point;
  }

  /** Puts a point into the middle of the side that is chosen, or that begins at the point. */
  public void add() {
    if (canAdd()) {
      int leg =
          chosen instanceof PlanItem.Side s
              ? s.number()
              : chosen instanceof PlanItem.Point p ? p.number() : 0;
      split(leg, 0.5);
    }
  }

  /** Puts a point into a side, as near to a place as it can be. */
  public void add(int leg, Vec2 near) {
    if (plan.drawn()) {
      split(leg, OutlineChange.share(outline(plan.pad()).path(), leg, near));
    }
  }

  private void split(int leg, double share) {
    desk.settle();
    if (change(p -> outline(p).split(leg, share), "add a point", "").isEmpty()) {
      choose(new PlanItem.Point(leg + 1));
    }
  }

  /** Takes out the point that is chosen; the one before it is chosen then. */
  public void remove() {
    if (canRemove()) {
      int point = ((PlanItem.Point) chosen).number();
      desk.settle();
      if (change(p -> outline(p).without(point), "remove a point", "").isEmpty()) {
        choose(new PlanItem.Point(Math.max(0, point - 1)));
      }
    }
  }

  /** Begins to drag a point, or a side's middle; what is done until its end is one step to undo. */
  public void press(Hit what) {
    item(what).ifPresent(this::choose);
    desk.settle();
    refusal = Optional.empty();
    if (!(what instanceof Hit.Side)) {
      Rest none = new Rest(Vec2.ZERO, List.of());
      drag = Optional.of(new Drag(what, desk.pad(), none, Optional.empty()));
    }
  }

  /**
   * Drags on; what is refused leaves the part as it last was.
   *
   * @param to where the pointer is, mm
   * @param reach how near a point must be to what it is drawn to, mm
   */
  public void drag(Vec2 to, double reach) {
    drag.ifPresent(
        d -> {
          Rest rest;
          if (d.what() instanceof Hit.Member) {
            dragMember(d, to);
            return;
          } else if (d.what() instanceof Hit.Point p) {
            int k = p.number();
            rest = PlanSnap.of(plan, k, to, grid(), reach);
            change(pad -> outline(pad).moved(k, rest.at()), "move point " + (k + 1), "plan drag");
          } else {
            int k = ((Hit.Middle) d.what()).leg();
            rest = new Rest(PlanSnap.middle(plan, k, to, grid()), List.of());
            String label = "bend " + OutlineEdit.side(k);
            change(pad -> outline(pad).bent(k, rest.at(), STRAIGHT), label, "plan drag");
          }
          drag = Optional.of(d.to(rest, d.held()));
        });
  }

  /** What lies on the board keeps as far from the pointer as where it was taken hold of. */
  private void dragMember(Drag d, Vec2 to) {
    String member = ((Hit.Member) d.what()).name();
    Optional<Vec2> now = place();
    if (now.isEmpty()) {
      return;
    }
    Vec2 held = d.held().orElse(to.minus(now.get()));
    Vec2 at = to.minus(held);
    Vec2 next = new Vec2(grid().nearest(at.x()), grid().nearest(at.y()));
    change(
        pad ->
            desk.edit()
                .with(
                    pad,
                    PartEdit.Step.mm(member + ".x", next.x()),
                    PartEdit.Step.mm(member + ".y", next.y())),
        "move " + chosen.words(),
        "plan drag");
    Vec2 rest = plan.middle().plus(place().orElse(next));
    drag = Optional.of(d.to(new Rest(rest, List.of()), Optional.of(held)));
  }

  /** Where what is chosen lies from the middle of the outline, mm; empty where it has no place. */
  public Optional<Vec2> place() {
    if (!(chosen instanceof PlanItem.Member m)) {
      return Optional.empty();
    }
    Optional<Double> x = desk.field(m.member() + ".x").flatMap(desk::value);
    Optional<Double> y = desk.field(m.member() + ".y").flatMap(desk::value);
    return x.isPresent() && y.isPresent()
        ? Optional.of(new Vec2(x.get(), y.get()))
        : Optional.empty();
  }

  public boolean dragging() {
    return drag.isPresent();
  }

  /** Where what is dragged would lie, and why there; empty where nothing is. */
  public Optional<Rest> rest() {
    return drag.map(Drag::rest);
  }

  /** Ends a drag. What was dragged too far was never done: nothing is left to put right. */
  public void release() {
    drag = Optional.empty();
    refusal = Optional.empty();
    desk.settle();
  }

  /** Ends a drag and puts back what it moved. */
  public void putBack() {
    Optional<Drag> was = drag;
    release();
    if (was.isPresent() && !was.get().from().equals(desk.pad())) {
      desk.undo();
      refresh();
    }
  }

  /**
   * Moves the point or what lies on the board that is chosen by so many steps, or bends the side
   * outwards; false where what is chosen cannot be moved.
   */
  public boolean nudge(int right, int up) {
    List<PartField> fields = plan.drawn() ? source.fields() : List.of();
    if (chosen instanceof PlanItem.Point && plan.drawn()) {
      refusal = right != 0 ? source.nudge(fields.get(0), right) : source.nudge(fields.get(1), up);
      return true;
    }
    if (chosen instanceof PlanItem.Member m && place().isPresent()) {
      String axis = right != 0 ? ".x" : ".y";
      PartField field = desk.field(m.member() + axis).orElseThrow();
      refusal = source.nudge(field, right != 0 ? right : up);
      return true;
    }
    Optional<PartField> rise =
        fields.stream().filter(f -> f.place().equals("leg.rise") && up != 0).findFirst();
    rise.ifPresent(f -> refusal = source.nudge(f, up));
    return rise.isPresent();
  }

  /** The fields of what is chosen. */
  public PlanSource source() {
    return source;
  }

  /** What is chosen and what it has, to be read out. */
  public String sentence() {
    StringBuilder words = new StringBuilder(chosen.words());
    for (PartField f : source.fields()) {
      String value = source.typed(f);
      if (!value.isEmpty()) {
        words.append(", ").append(f.label()).append(' ').append(value);
      }
    }
    return words.toString();
  }
}
