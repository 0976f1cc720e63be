package padwright.desk.screen;

import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;
import padwright.desk.edit.PlanItem;
import padwright.desk.view.PlanLabels.Label;
import padwright.desk.view.PlanModel;
import padwright.desk.view.PlanSnap.Guide;
import padwright.desk.view.PlanSnap.Rest;
import padwright.desk.view.Viewport;
import padwright.geometry.Bounds;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;

/** Paints a plan: board, sides told apart by their lines, handles, words, what is chosen. */
final class PlanPainter {
  private static final double CHORD_POINTS = 0.3;
  private static final double SQUARE = 4.5;
  private static final double ROUND = 4.5;
  private static final double BOARD = 0.93;
  private static final double SIGN = 0.62;
  private static final double SIGN_OFF = 1;

  /** Lines of the first, second ... run; whatever is in none has a whole line. */
  private static final double[][] RUNS = {{12, 4}, {3, 3}, {12, 3, 3, 3}, {6, 6}};

  private final GraphicsContext gc;
  private final Viewport view;
  private final Inks inks;
  private final double letters;

  PlanPainter(GraphicsContext gc, Viewport view, Inks inks, double letters) {
    this.gc = gc;
    this.view = view;
    this.inks = inks;
    this.letters = letters;
  }

  void board(PlanModel plan) {
    gc.setFill(inks.paper());
    gc.fillRect(0, 0, view.width(), view.height());
    gc.setLineJoin(StrokeLineJoin.ROUND);
    gc.setLineCap(StrokeLineCap.BUTT);
    gc.beginPath();
    Vec2 at = view.toScreen(plan.legs().get(0).way().get(0).start());
    gc.moveTo(at.x(), at.y());
    // Legs of an outline drawn clockwise are each the other way round, and so is their order.
    inOrder(plan).forEach(s -> to(s));
    gc.closePath();
    gc.setFill(inks.tone(BOARD));
    gc.fill();
  }

  private static List<Segment> inOrder(PlanModel plan) {
    List<PlanModel.Leg> legs = new java.util.ArrayList<>(plan.legs());
    if (legs.size() > 1 && !meets(legs.get(0), legs.get(1))) {
      java.util.Collections.reverse(legs.subList(1, legs.size()));
    }
    return legs.stream().flatMap(l -> l.way().stream()).toList();
  }

  private static boolean meets(PlanModel.Leg a, PlanModel.Leg b) {
    Vec2 end = a.way().get(a.way().size() - 1).end();
    return end.distance(b.way().get(0).start()) < 1e-6;
  }

  private void to(Segment s) {
    int n = s.chords(CHORD_POINTS / view.scale());
    for (int i = 1; i <= n; i++) {
      Vec2 p = view.toScreen(s.pointAt((double) i / n));
      gc.lineTo(p.x(), p.y());
    }
  }

  private void stroke(List<Segment> way, Color colour, double width, double... dashes) {
    gc.beginPath();
    Vec2 from = view.toScreen(way.get(0).start());
    gc.moveTo(from.x(), from.y());
    way.forEach(this::to);
    gc.setStroke(colour);
    gc.setLineWidth(width);
    gc.setLineDashes(dashes);
    gc.stroke();
    gc.setLineDashes();
  }

  void sides(PlanModel plan, PlanItem chosen, Optional<PlanItem> pointed) {
    for (PlanModel.Leg l : plan.legs()) {
      boolean own = is(chosen, l);
      if (own || pointed.filter(p -> is(p, l)).isPresent()) {
        stroke(l.way(), inks.pointer(), own ? 6 : 4);
      }
      int run = l.side().isEmpty() ? -1 : plan.run(l.side());
      double[] dashes = run < 0 ? new double[0] : RUNS[run % RUNS.length];
      if (run >= 0) {
        stroke(l.way(), inks.tone(BOARD), own ? 3 : 2);
      }
      stroke(l.way(), own ? inks.paper().interpolate(inks.ink(), 0.9) : inks.ink(), 2, dashes);
    }
  }

  private static boolean is(PlanItem item, PlanModel.Leg l) {
    return item instanceof PlanItem.Side s && !l.side().isEmpty() && s.number() == l.number();
  }

  void members(PlanModel plan, PlanItem chosen, Optional<PlanItem> pointed) {
    for (PlanModel.Opening o : plan.openings()) {
      member(o.member(), o.path().segments(), chosen, pointed, inks.paper(), 1.5);
    }
    for (PlanModel.Place p : plan.places()) {
      member(p.member(), p.path().segments(), chosen, pointed, inks.tone(BOARD), 1);
    }
  }

  private void member(
      String name,
      List<Segment> way,
      PlanItem chosen,
      Optional<PlanItem> pointed,
      Color ground,
      double width) {
    gc.beginPath();
    Vec2 from = view.toScreen(way.get(0).start());
    gc.moveTo(from.x(), from.y());
    way.forEach(this::to);
    gc.setFill(ground);
    gc.fill();
    boolean own = is(chosen, name);
    if (own || pointed.filter(p -> is(p, name)).isPresent()) {
      stroke(way, inks.pointer(), own ? 5 : 3.5);
    }
    stroke(way, inks.ink(), width);
  }

  private static boolean is(PlanItem item, String member) {
    return item instanceof PlanItem.Member m && m.member().equals(member);
  }

  /**
   * @param reach how far from a handle the pointer still means it, mm
   */
  void handles(PlanModel plan, PlanItem chosen, Optional<PlanItem> pointed, double reach) {
    for (PlanModel.Leg l : plan.legs()) {
      if (plan.bends(l, reach)) {
        Vec2 p = view.toScreen(l.middle());
        gc.setFill(inks.paper());
        gc.fillOval(p.x() - ROUND, p.y() - ROUND, 2 * ROUND, 2 * ROUND);
        gc.setStroke(is(chosen, l) ? inks.pointer() : inks.ink());
        gc.setLineWidth(is(chosen, l) ? 2.5 : 1.3);
        gc.strokeOval(p.x() - ROUND, p.y() - ROUND, 2 * ROUND, 2 * ROUND);
      }
    }
    for (PlanModel.Mark m : plan.points()) {
      PlanItem own = new PlanItem.Point(m.number());
      Vec2 p = view.toScreen(m.at());
      boolean at = own.equals(chosen);
      double h = at ? SQUARE + 1.5 : SQUARE;
      gc.setFill(at ? inks.pointer() : inks.paper());
      gc.fillRect(p.x() - h, p.y() - h, 2 * h, 2 * h);
      gc.setStroke(inks.ink());
      gc.setLineWidth(pointed.filter(own::equals).isPresent() ? 3 : 1.5);
      gc.strokeRect(p.x() - h, p.y() - h, 2 * h, 2 * h);
      if (at) {
        gc.setStroke(inks.pointer());
        gc.setLineWidth(1.5);
        gc.strokeRect(p.x() - h - 3.5, p.y() - h - 3.5, 2 * h + 7, 2 * h + 7);
      }
    }
  }

  void labels(List<Label> labels, PlanItem chosen) {
    for (Label l : labels) {
      boolean own = l.of().equalsIgnoreCase(chosen.words()) || is(chosen, l.of());
      double line = l.box().height() / l.lines().size();
      for (int i = 0; i < l.lines().size(); i++) {
        Vec2 at = new Vec2(l.box().centre().x(), l.box().minY() + line * (i + 0.5));
        words(l.lines().get(i), at, own ? inks.pointer() : inks.ink());
      }
    }
  }

  private void words(String words, Vec2 at, Color colour) {
    gc.setFont(DrawingFonts.of(letters));
    gc.setTextAlign(TextAlignment.CENTER);
    gc.setTextBaseline(VPos.CENTER);
    gc.setFill(colour);
    gc.fillText(words, at.x(), at.y());
    gc.setTextBaseline(VPos.BASELINE);
  }

  /** The room of a finding's sign beside a place of the view. */
  static Bounds sign(Vec2 at, double letters) {
    Vec2 beside = at.plus(new Vec2(letters * SIGN_OFF, letters * SIGN_OFF));
    return Bounds.of(beside).grown(letters * SIGN);
  }

  /** A sign of a finding beside what it is about, on a ground of its own. */
  void sign(String sign, Vec2 place) {
    Bounds box = sign(view.toScreen(place), letters);
    gc.setFill(inks.paper());
    gc.fillOval(box.minX(), box.minY(), box.width(), box.height());
    gc.setStroke(inks.ink());
    gc.setLineWidth(1);
    gc.strokeOval(box.minX(), box.minY(), box.width(), box.height());
    words(sign, box.centre(), inks.ink());
  }

  /** Why what is dragged rests where it does. */
  void rest(Rest rest) {
    gc.setStroke(inks.pointer());
    gc.setLineWidth(1.2);
    gc.setLineDashes(6, 4);
    for (Guide g : rest.guides()) {
      Vec2 a = view.toScreen(g.from());
      Vec2 b = view.toScreen(g.to());
      gc.strokeLine(a.x(), a.y(), b.x(), b.y());
    }
    gc.setLineDashes();
    Vec2 p = view.toScreen(rest.at());
    gc.strokeLine(p.x() - 12, p.y(), p.x() + 12, p.y());
    gc.strokeLine(p.x(), p.y() - 12, p.x(), p.y() + 12);
  }

  /** A line of words at the foot of the view, on the paper. */
  void foot(String words) {
    gc.setFont(DrawingFonts.of(letters));
    gc.setTextAlign(TextAlignment.LEFT);
    gc.setTextBaseline(VPos.BOTTOM);
    gc.setFill(inks.tone(0.35));
    gc.fillText(words, 6, view.height() - 4, view.width() - 12);
    gc.setTextBaseline(VPos.BASELINE);
  }

  void focus() {
    new OverlayPainter(gc, view, inks).focus();
  }
}
