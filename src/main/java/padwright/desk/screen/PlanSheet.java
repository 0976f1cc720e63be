package padwright.desk.screen;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import padwright.design.Finding.Level;
import padwright.desk.edit.PlanItem;
import padwright.desk.model.Desk;
import padwright.desk.model.FindingRow;
import padwright.desk.model.PlanDesk;
import padwright.desk.view.PlanFindings;
import padwright.desk.view.PlanLabels;
import padwright.desk.view.PlanModel;
import padwright.desk.view.PlanModel.Hit;
import padwright.desk.view.PlanSnap.Guide;
import padwright.desk.view.PlanSnap.Rest;
import padwright.desk.view.Viewport;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

/** The drawn plan, to point at, drag in, zoom and move. */
final class PlanSheet extends Region {
  /** What its keys do, to be read out and listed. */
  static final String KEYS =
      "N and Shift N choose the next and the one before; arrows move a point or bend a side, with"
          + " Shift ten steps; Insert or A adds a point, Delete removes it; Enter goes to the"
          + " fields, Escape to the outline as a whole, where arrows move the plan; plus and minus"
          + " zoom, 0 fits.";

  /** How far from the pointer a handle or side is still meant, points. */
  private static final double REACH = 8;

  private static final double LEAST_SEEN = 30;
  private static final double CALLOUT = 300;
  private static final double LEADING = 1.25;

  private final Desk desk;
  private final PlanDesk plan;
  private final Canvas canvas = new Canvas();
  private final Label callout = new Label();
  private Viewport view = new Viewport(1, 0, 0, 1, 1);
  private PlanModel shown;
  private final Map<String, Double> widths = new HashMap<>();
  private boolean fitted = true;
  private Inks inks = Inks.LIGHT;
  private double letters = PlanPane.TEXT;
  private Optional<PlanItem> pointed = Optional.empty();

  PlanSheet(Desk desk, PlanDesk plan) {
    this.desk = desk;
    this.plan = plan;
    setId("plan-sheet");
    canvas.setManaged(false);
    callout.setId("plan-refused");
    callout.getStyleClass().add("form-callout");
    callout.setWrapText(true);
    callout.setMouseTransparent(true);
    callout.setVisible(false);
    getChildren().addAll(canvas, callout);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleHelp(KEYS);
    setMinSize(0, 0);
    focusedProperty().addListener((of, was, is) -> paint());
  }

  void setDark(boolean dark) {
    inks = dark ? Inks.DARK : Inks.LIGHT;
    paint();
  }

  void setTextSize(double points) {
    letters = points;
    widths.clear();
    requestLayout();
  }

  /** The whole plan in the middle of the view; so it stays when the view changes its size. */
  void fit() {
    fitted = true;
    shown = null;
    requestLayout();
  }

  Viewport viewport() {
    return view;
  }

  /** Looks at another part of the plan; some of it always stays in the view. */
  void look(Viewport at) {
    view = at.holding(plan.plan().bounds(), LEAST_SEEN);
    fitted = false;
    paint();
  }

  /** How far off the pointer may be, mm. */
  double reach() {
    return REACH / view.scale();
  }

  /** What is under a point of the view. */
  Optional<Hit> hit(Vec2 point) {
    return plan.plan().at(view.toDrawing(point), reach());
  }

  void point(Optional<PlanItem> at) {
    if (!at.equals(pointed)) {
      pointed = at;
      paint();
    }
  }

  /** Shows the plan as it is now. */
  void show() {
    String where = plan.sentence();
    setAccessibleText("Plan of " + desk.pad().name() + ", seen from the face. " + where);
    requestLayout();
    paint();
  }

  @Override
  protected void layoutChildren() {
    paint();
  }

  private double width(String words) {
    return widths.computeIfAbsent(
        words,
        w -> {
          Text text = new Text(w);
          text.setFont(DrawingFonts.of(letters));
          return text.getLayoutBounds().getWidth();
        });
  }

  /** A fitted view stays while all is seen, so that nothing jumps under a hand that works there. */
  private void place() {
    boolean resized = canvas.getWidth() != getWidth() || canvas.getHeight() != getHeight();
    if (resized) {
      canvas.setWidth(getWidth());
      canvas.setHeight(getHeight());
      view = view.resized(getWidth(), getHeight());
    }
    PlanModel now = plan.plan();
    boolean other = shown == null || !shown.pad().id().equals(now.pad().id());
    fitted |= other;
    Bounds seen = view.visible();
    Bounds all = now.bounds();
    boolean out =
        !seen.contains(new Vec2(all.minX(), all.minY()))
            || !seen.contains(new Vec2(all.maxX(), all.maxY()));
    if (fitted && (resized || other || out) && !plan.dragging()) {
      view = PlanLabels.fit(now, getWidth(), getHeight(), lettering());
    }
    shown = now;
  }

  private void paint() {
    if (getWidth() < 1 || getHeight() < 1) {
      return;
    }
    place();
    PlanModel now = plan.plan();
    PlanPainter p = new PlanPainter(canvas.getGraphicsContext2D(), view, inks, letters);
    p.board(now);
    p.members(now, plan.chosen(), pointed);
    p.sides(now, plan.chosen(), pointed);
    p.handles(now, plan.chosen(), pointed, reach());
    Map<Vec2, Level> signs = signs();
    p.labels(labels(signs), plan.chosen());
    signs.forEach((at, level) -> p.sign(FieldEditor.sign(level), at));
    plan.rest().filter(r -> plan.dragging()).ifPresent(p::rest);
    p.foot(foot());
    if (isFocused()) {
      p.focus();
    }
    callOut();
  }

  private PlanLabels.Letters lettering() {
    return new PlanLabels.Letters(letters * LEADING, this::width);
  }

  private List<PlanLabels.Label> labels(Map<Vec2, Level> signs) {
    List<Bounds> kept = new ArrayList<>();
    double high = letters * LEADING + 4;
    kept.add(new Bounds(0, getHeight() - high, width(foot()) + 12, getHeight()));
    signs.keySet().forEach(at -> kept.add(PlanPainter.sign(view.toScreen(at), letters)));
    String first =
        plan.chosen() instanceof PlanItem.Member m
            ? m.member()
            : plan.chosen().words().toLowerCase(Locale.ROOT);
    return PlanLabels.of(plan.plan(), view, lettering(), first, kept);
  }

  /** The gravest level of what is found at a place of the plan; notes have no sign. */
  private Map<Vec2, Level> signs() {
    Map<Vec2, Level> signs = new LinkedHashMap<>();
    List<PlanItem> items = plan.items();
    for (FindingRow row : desk.bench().findings()) {
      Level level = row.finding().level();
      if (level != Level.NOTE) {
        for (PlanItem item : PlanFindings.named(row.finding(), items)) {
          PlanFindings.place(item, plan.plan())
              .ifPresent(at -> signs.merge(at, level, (a, b) -> a.compareTo(b) < 0 ? a : b));
        }
      }
    }
    return signs;
  }

  /** Where what is dragged lies, and why; else how the plan is seen. */
  private String foot() {
    Optional<Rest> rest = plan.rest().filter(r -> plan.dragging());
    if (rest.isEmpty() || plan.refusal().isPresent()) {
      return "Seen from the face, front below";
    }
    if (plan.place().isPresent()) {
      Vec2 p = plan.place().get();
      return plan.chosen().words()
          + ": "
          + plan.plan().length(p.x())
          + " to the right of the middle, "
          + plan.plan().length(p.y())
          + " behind it";
    }
    Vec2 at = rest.get().at();
    String words =
        plan.chosen().words()
            + ": "
            + plan.plan().drawn(at.x())
            + " to the right, "
            + plan.plan().drawn(at.y())
            + " to the back";
    List<String> why = rest.get().guides().stream().map(Guide::words).distinct().toList();
    return why.isEmpty() ? words : words + " (" + String.join(", ", why) + ")";
  }

  /** Why a drag or a key did nothing, in the half of the view that lies away from it. */
  private void callOut() {
    callout.setVisible(plan.refusal().isPresent());
    plan.refusal()
        .ifPresent(
            r -> {
              callout.setText("\u2715 " + FieldEditor.said(r));
              double w = Math.min(CALLOUT * letters / PlanPane.TEXT, getWidth() - 12);
              double h = Math.min(callout.prefHeight(w), getHeight() - 12);
              Optional<Vec2> at =
                  plan.rest()
                      .map(Rest::at)
                      .or(() -> PlanFindings.place(plan.chosen(), plan.plan()));
              boolean high = at.filter(p -> view.screenY(p.y()) < getHeight() / 2).isPresent();
              callout.resizeRelocate(6, high ? getHeight() - h - 6 : 6, w, h);
            });
  }
}
